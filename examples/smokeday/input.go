package main

import (
	"fmt"
	"io"
	"time"

	"example.org/lakelarder/examples/internal/form"
	"example.org/lakelarder/pressure"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/smoke"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// file is smokeday.json as it is written: texts, so that a fault can be named by its field. What may be empty was not measured.
type file struct {
	About    string `json:"about"`
	Place    string `json:"place"`
	Altitude string `json:"altitude"`
	Outside  struct {
		Temperature string `json:"temperature"`
		Humidity    string `json:"humidity"`
	} `json:"outside"`
	Batch       fileBatch   `json:"batch"`
	Started     string      `json:"started"`
	Stages      []fileStage `json:"stages"`
	Alternative string      `json:"alternative"`
	Core        string      `json:"core"`
	Air         string      `json:"air"`
	MaxGap      string      `json:"maxGap"`
	TakenOut    string      `json:"takenOut"`
	Weighed     string      `json:"weighed"`
	Pack        string      `json:"pack"`
	Jar         string      `json:"jar"`
	Gauge       string      `json:"gauge"`
}

type fileBatch struct {
	Fish          string `json:"fish"`
	Mass          string `json:"mass"`
	Thin          string `json:"thin"`
	Thick         string `json:"thick"`
	Faces         string `json:"faces"`
	Start         string `json:"start"`
	Area          string `json:"area"`
	Water         string `json:"water"`
	WaterActivity string `json:"waterActivity"`
	Salt          string `json:"salt"`
}

type fileStage struct {
	Kind     string `json:"kind"`
	Air      string `json:"air"`
	Humidity string `json:"humidity"`
	Damper   string `json:"damper"`
	For      string `json:"for"`
	Baste    string `json:"baste"`
	DryAfter string `json:"dryAfter"`
}

// day is what the file says, understood. The records' time zero is the start of the first stage.
type day struct {
	about, place, fish string
	altitude           units.Length
	started            time.Duration // after midnight
	schedule           smoke.Schedule
	alternative        smoke.CoreLimit
	cores              []series.Column[units.Temperature]
	air                series.Series[units.Temperature] // empty when nobody recorded it
	maxGap             time.Duration
	takenOut           units.Stated[time.Duration] // after the start
	weighed, salt      units.Stated[units.Mass]
	pack               smoke.Pack
	jars               units.Stated[jars]
}

// jars are what a part of the fish might go into.
type jars struct {
	jar   process.Jar
	gauge process.Gauge
}

// load reads the day and its records, which lie beside it; an error names the file and the field or line.
func load(path string) (day, error) {
	var f file
	if err := form.Read(path, &f); err != nil {
		return day{}, err
	}
	d, err := f.understand()
	if err != nil {
		return day{}, fmt.Errorf("%s: %w", path, err)
	}
	if d.cores, err = form.Log(path, f.Core, readCores); err != nil || f.Air == "" {
		return d, err
	}
	d.air, err = form.Log(path, f.Air, func(r io.Reader) (series.Series[units.Temperature], error) {
		return series.ReadColumn[units.Temperature](r, "")
	})
	return d, err
}

// readCores takes every column of temperatures for a probe in the fish: one left out may be the coldest.
func readCores(r io.Reader) ([]series.Column[units.Temperature], error) {
	cores, err := series.ReadColumns[units.Temperature](r)
	if err == nil && len(cores) > len(letters) {
		err = fmt.Errorf("%d probes: at most %d fit on the sheet", len(cores), len(letters))
	}
	return cores, err
}

func (f file) understand() (day, error) {
	r := &form.Fields{}
	r.Require(f.About != "", "about", "say what this day is, and that it is invented if it is")
	d := day{
		about: f.About, place: f.Place, fish: f.Batch.Fish,
		altitude:    form.Field(r, "altitude", f.Altitude, units.ParseLength),
		started:     form.Field(r, "started", f.Started, parseClock),
		alternative: form.Field(r, "alternative", f.Alternative, smoke.FindCoreLimit),
		maxGap:      form.Field(r, "maxGap", f.MaxGap, time.ParseDuration),
		weighed:     stated(r, "weighed", f.Weighed, units.ParseMass),
		salt:        stated(r, "batch.salt", f.Batch.Salt, units.ParseMass),
		pack:        stated(r, "pack", f.Pack, smoke.ParsePack).Value,
	}
	if out := stated(r, "takenOut", f.TakenOut, parseClock); out.Given {
		d.takenOut = units.State((out.Value - d.started + 24*time.Hour) % (24 * time.Hour)) // it may be past midnight
	}
	if f.Jar != "" || f.Gauge != "" {
		d.jars = units.State(jars{form.Field(r, "jar", f.Jar, process.ParseJar), form.Field(r, "gauge", f.Gauge, process.ParseGauge)})
	}
	d.schedule = smoke.Schedule{Batch: f.Batch.understand(r), Film: smoke.SmokerFilm(), Limit: smoke.DefaultCoreLimit()}
	for i, s := range f.Stages {
		d.schedule.Stages = append(d.schedule.Stages, s.understand(r, fmt.Sprintf("stages[%d].", i)))
	}
	d.schedule.Outside = f.outside(r, d.altitude)
	return d, r.Err
}

// outside is the air around the smoker, at the pressure of a standard day at the altitude.
func (f file) outside(r *form.Fields, altitude units.Length) smoke.Air {
	temperature := form.Field(r, "outside.temperature", f.Outside.Temperature, units.ParseTemperature)
	humidity := form.Field(r, "outside.humidity", f.Outside.Humidity, units.ParseRatio)
	around, err := pressure.AirAt(altitude)
	if err != nil {
		r.Require(false, "altitude", err.Error())
		return smoke.Air{}
	}
	air, err := smoke.AirByRelativeHumidity(temperature, humidity, around.Pressure())
	if err != nil {
		r.Require(false, "outside", err.Error())
	}
	return air
}

func (f fileBatch) understand(r *form.Fields) smoke.Batch {
	return smoke.Batch{
		Slab: smoke.FilletSlab(form.Field(r, "batch.thin", f.Thin, units.ParseLength), form.Field(r, "batch.thick", f.Thick, units.ParseLength),
			form.Field(r, "batch.faces", f.Faces, parseFaces), form.Field(r, "batch.start", f.Start, units.ParseTemperature)),
		Mass:          form.Field(r, "batch.mass", f.Mass, units.ParseMass),
		Area:          form.Field(r, "batch.area", f.Area, units.ParseArea),
		Water:         form.Field(r, "batch.water", f.Water, units.ParseRatio),
		WaterActivity: form.Field(r, "batch.waterActivity", f.WaterActivity, units.ParseRatio),
	}
}

func (f fileStage) understand(r *form.Fields, name string) smoke.Stage {
	return smoke.Stage{
		Kind:     form.Field(r, name+"kind", f.Kind, smoke.ParseStageKind),
		Air:      form.Field(r, name+"air", f.Air, units.ParseTemperature),
		Humidity: stated(r, name+"humidity", f.Humidity, units.ParseRatio),
		Damper:   form.Field(r, name+"damper", f.Damper, smoke.ParseDamper),
		For:      form.Field(r, name+"for", f.For, time.ParseDuration),
		Baste:    stated(r, name+"baste", f.Baste, time.ParseDuration).Value,
		DryAfter: stated(r, name+"dryAfter", f.DryAfter, time.ParseDuration),
	}
}

// stated reads a field that may be empty.
func stated[T comparable](r *form.Fields, name, text string, parse func(string) (T, error)) units.Stated[T] {
	if text == "" {
		return units.Stated[T]{}
	}
	return units.State(form.Field(r, name, text, parse))
}

func parseFaces(text string) (smoke.Faces, error) {
	switch text {
	case "both":
		return smoke.BothFaces, nil
	case "one":
		return smoke.OneFace, nil
	}
	return 0, fmt.Errorf("cannot read %q as the faces that take heat: expected both (on a rack) or one (on a board)", text)
}

// parseClock reads 14:15 as the time since midnight.
func parseClock(text string) (time.Duration, error) {
	t, err := time.Parse("15:04", text)
	if err != nil {
		return 0, fmt.Errorf("cannot read %q as a clock time: expected one like 14:15", text)
	}
	return time.Duration(t.Hour())*time.Hour + time.Duration(t.Minute())*time.Minute, nil
}
