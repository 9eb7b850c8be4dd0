package main

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"os"
	"time"

	"example.org/lakelarder/pressure/lethality"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
)

// file is heatcurve.json as it is written: texts, so that a fault can be named by its field.
type file struct {
	About    string `json:"about"`
	Place    string `json:"place"`
	Altitude string `json:"altitude"`
	Gauge    string `json:"gauge"`
	Jar      string `json:"jar"`
	Radius   string `json:"radius"`
	Height   string `json:"height"`
	Fish     struct {
		Water   string `json:"water"`
		Protein string `json:"protein"`
		Fat     string `json:"fat"`
		Ash     string `json:"ash"`
	} `json:"fish"`
	Start   string `json:"start"`
	ComeUp  string `json:"comeUp"`
	Cooling string `json:"coolingPerMinute"`
	End     string `json:"end"`
}

// jar is what the file says, understood.
type jar struct {
	about, place   string
	altitude       units.Length
	gauge          process.Gauge
	jar            process.Jar
	radius, height units.Length
	fish           lethality.Composition
	start, end     units.Temperature
	comeUp         time.Duration
	cooling        units.TemperatureChange
}

// load reads the file; an error names it and the field.
func load(path string) (jar, error) {
	data, err := os.ReadFile(path)
	if err != nil {
		return jar{}, err
	}
	var f file
	decoder := json.NewDecoder(bytes.NewReader(data))
	decoder.DisallowUnknownFields()
	if err := decoder.Decode(&f); err != nil {
		return jar{}, fmt.Errorf("%s: %w", path, err)
	}
	if _, err := decoder.Token(); !errors.Is(err, io.EOF) {
		return jar{}, fmt.Errorf("%s: more than one JSON value", path)
	}
	j, err := f.understand()
	if err != nil {
		return jar{}, fmt.Errorf("%s: %w", path, err)
	}
	return j, nil
}

// parse keeps the first fault, with the field's name.
func parse[T any](first *error, field, text string, parse func(string) (T, error)) T {
	v, err := parse(text)
	if err != nil && *first == nil {
		*first = fmt.Errorf("%s: %w", field, err)
	}
	return v
}

func (f file) understand() (jar, error) {
	var err error
	if f.About == "" {
		err = errors.New("about: say what this is, and that it is invented if it is")
	}
	j := jar{
		about: f.About, place: f.Place,
		altitude: parse(&err, "altitude", f.Altitude, units.ParseLength),
		gauge:    parse(&err, "gauge", f.Gauge, process.ParseGauge),
		jar:      parse(&err, "jar", f.Jar, process.ParseJar),
		radius:   parse(&err, "radius", f.Radius, units.ParseLength),
		height:   parse(&err, "height", f.Height, units.ParseLength),
		fish: lethality.Composition{
			Water:   parse(&err, "fish.water", f.Fish.Water, units.ParseRatio),
			Protein: parse(&err, "fish.protein", f.Fish.Protein, units.ParseRatio),
			Fat:     parse(&err, "fish.fat", f.Fish.Fat, units.ParseRatio),
			Ash:     parse(&err, "fish.ash", f.Fish.Ash, units.ParseRatio),
		},
		start:   parse(&err, "start", f.Start, units.ParseTemperature),
		end:     parse(&err, "end", f.End, units.ParseTemperature),
		comeUp:  parse(&err, "comeUp", f.ComeUp, time.ParseDuration),
		cooling: parse(&err, "coolingPerMinute", f.Cooling, units.ParseTemperatureChange),
	}
	return j, err
}
