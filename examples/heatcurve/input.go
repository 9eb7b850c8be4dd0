package main

import (
	"fmt"
	"time"

	"example.org/lakelarder/examples/internal/form"
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

// load reads the file; an error names it and the field or line.
func load(path string) (jar, error) {
	var f file
	if err := form.Read(path, &f); err != nil {
		return jar{}, err
	}
	j, err := f.understand()
	if err != nil {
		return jar{}, fmt.Errorf("%s: %w", path, err)
	}
	return j, nil
}

func (f file) understand() (jar, error) {
	r := &form.Fields{}
	r.Require(f.About != "", "about", "say what this is, and that it is invented if it is")
	j := jar{
		about: f.About, place: f.Place,
		altitude: form.Field(r, "altitude", f.Altitude, units.ParseLength),
		gauge:    form.Field(r, "gauge", f.Gauge, process.ParseGauge),
		jar:      form.Field(r, "jar", f.Jar, process.ParseJar),
		radius:   form.Field(r, "radius", f.Radius, units.ParseLength),
		height:   form.Field(r, "height", f.Height, units.ParseLength),
		fish: lethality.Composition{
			Water:   form.Field(r, "fish.water", f.Fish.Water, units.ParseRatio),
			Protein: form.Field(r, "fish.protein", f.Fish.Protein, units.ParseRatio),
			Fat:     form.Field(r, "fish.fat", f.Fish.Fat, units.ParseRatio),
			Ash:     form.Field(r, "fish.ash", f.Fish.Ash, units.ParseRatio),
		},
		start:   form.Field(r, "start", f.Start, units.ParseTemperature),
		end:     form.Field(r, "end", f.End, units.ParseTemperature),
		comeUp:  form.Field(r, "comeUp", f.ComeUp, time.ParseDuration),
		cooling: form.Field(r, "coolingPerMinute", f.Cooling, units.ParseTemperatureChange),
	}
	return j, r.Err
}
