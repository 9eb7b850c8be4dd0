package main

import (
	"fmt"
	"time"

	"example.org/lakelarder/examples/internal/form"
	"example.org/lakelarder/pressure"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/smoke"
	"example.org/lakelarder/smoke/moistair"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// file is smokeday.json as it is written. What is left out or empty was not measured.
type file struct {
	About    string       `wire:"required" help:"what this day is, and that it is invented if it is"`
	Place    string       `wire:"required" help:"where"`
	Altitude units.Length `wire:"required" help:"of the smoker"`
	Outside  struct {
		Temperature units.Temperature `wire:"required" help:"air around the smoker"`
		Humidity    units.Ratio       `wire:"required" help:"relative, of that air"`
	} `wire:"required"`
	Batch       fileBatch                `wire:"required"`
	Started     form.Clock               `wire:"required" help:"when the first stage and the records begin"`
	Stages      []fileStage              `wire:"required"`
	Alternative smoke.CoreLimitID        `wire:"required" help:"a core limit to set beside the strictest"`
	Core        string                   `wire:"required" help:"the record of the probes in the fish, a CSV file beside this one; every column of temperatures is a probe"`
	CoreFormat  series.Format            `wire:"partial" help:"how it is written, as far as it does not say so itself" example:"{\"order\": \"day first\"}"`
	Air         string                   `help:"the record of the smoker's air, if there is one"`
	AirFormat   series.Format            `wire:"partial" help:"how it is written" example:"{\"order\": \"day first\"}"`
	Site        smoke.Site               `help:"where the worst of the probes sits" example:"\"thickest part\""`
	MaxGap      time.Duration            `wire:"required" help:"longest pause between readings across which a straight line is believed"`
	TakenOut    form.Clock               `help:"when the fish was taken out; empty while it is in the smoker"`
	InOven      form.Clock               `help:"when it went from the smoker into an oven, if it did" example:"\"15:30\""`
	Handled     form.Clock               `help:"when it was first boned, sliced or wrapped after the heat" example:"\"20:00\""`
	Weighed     units.Stated[units.Mass] `help:"the batch after the smoking"`
	Pack        smoke.Pack               `help:"air or low-oxygen"`
	Jar         process.Jar              `help:"jar that a part might go into"`
	Gauge       process.Gauge            `help:"of the canner for it"`
}

type fileBatch struct {
	Fish          string                   `wire:"required" help:"what it is"`
	Mass          units.Mass               `wire:"required"`
	Thin          units.Length             `wire:"required" help:"least thickness of the thickest part"`
	Thick         units.Length             `wire:"required" help:"greatest thickness of the thickest part"`
	Faces         smoke.Faces              `wire:"required" help:"two faces on a rack, one face on a board"`
	Start         units.Temperature        `wire:"required" help:"of the fish"`
	Area          units.Area               `wire:"required" help:"wet surface of all of it"`
	Water         units.Ratio              `wire:"required" help:"share of the mass"`
	WaterActivity units.Ratio              `wire:"required" help:"of the surface"`
	Salt          units.Stated[units.Mass] `help:"in all of it"`
}

type fileStage struct {
	Kind     smoke.StageKind             `wire:"required" help:"dry, smoke, cook, glaze or cool"`
	Air      units.Temperature           `wire:"required"`
	Humidity units.Stated[units.Ratio]   `help:"relative, measured in the smoker" example:"\"40 %\""`
	Damper   smoke.Damper                `help:"open, half open or closed"`
	For      time.Duration               `wire:"required" help:"how long"`
	Baste    time.Duration               `help:"between bastings"`
	DryAfter units.Stated[time.Duration] `help:"after the start of the stage, when the surface has dried"`
}

// day is what the file says, understood. The records' time zero is the start of the first stage.
type day struct {
	file
	schedule    smoke.Schedule
	alternative smoke.CoreLimit
	cores       []form.Log[units.Temperature]
	air         series.Series[units.Temperature] // empty when nobody recorded it
	read        []string                         // how the records were read
	takenOut    units.Stated[time.Duration]      // after the start
}

// letters name the probes, in the order of the record.
const letters = "ABCDEFGH"

// load reads the day and its records, which lie beside it; an error names the file and the field or line.
func load(path string) (day, error) {
	var d day
	if err := form.Read(path, &d.file); err != nil {
		return day{}, err
	}
	if err := d.understand(); err != nil {
		return day{}, fmt.Errorf("%s: %w", path, err)
	}
	var err error
	if d.cores, err = form.ReadLogs[units.Temperature](path, d.Core, "coreFormat", d.CoreFormat); err != nil {
		return day{}, err
	}
	if len(d.cores) > len(letters) {
		return day{}, fmt.Errorf("%s: %d probes: at most %d fit on the sheet", d.Core, len(d.cores), len(letters))
	}
	for _, c := range d.cores {
		d.read = append(d.read, c.Read)
	}
	if d.Air == "" {
		return d, nil
	}
	log, err := form.ReadLog[units.Temperature](path, d.Air, "airFormat", d.AirFormat)
	d.air, d.read = log.Series, append(d.read, log.Read)
	return d, err
}

func (d *day) understand() error {
	d.takenOut = d.TakenOut.On(d.Started)
	var err error
	if d.alternative, err = smoke.FindCoreLimit(d.Alternative); err != nil {
		return fmt.Errorf("alternative: %w", err)
	}
	around, err := pressure.AirAt(d.Altitude)
	if err != nil {
		return fmt.Errorf("altitude: %w", err)
	}
	outside, err := moistair.ByRelativeHumidity(d.Outside.Temperature, d.Outside.Humidity, around.Pressure())
	if err != nil {
		return fmt.Errorf("outside: %w", err)
	}
	if (d.Jar == 0) != (d.Gauge == 0) {
		return fmt.Errorf("jar and gauge: expected both or neither, got %s and %s", d.Jar, d.Gauge)
	}
	b := d.Batch
	d.schedule = smoke.Schedule{
		Batch: smoke.Batch{
			Slab: smoke.FilletSlab(b.Thin, b.Thick, b.Faces,
				b.Start), Mass: b.Mass, Area: b.Area, Water: b.Water, WaterActivity: b.WaterActivity,
		},
		Outside: outside, Film: moistair.SmokerFilm(), Limit: smoke.DefaultCoreLimit(),
	}
	for _, s := range d.Stages {
		d.schedule.Stages = append(d.schedule.Stages, smoke.Stage{
			Kind: s.Kind, Air: s.Air, Humidity: s.Humidity, Damper: s.Damper, For: s.For, Baste: s.Baste, DryAfter: s.DryAfter,
		})
	}
	return nil
}

// record is what was recorded of the fish, up to a time where one is given.
func (d day) record(end units.Stated[time.Duration]) (smoke.Record, error) {
	r := smoke.Record{MaxGap: d.MaxGap, Air: d.air, Site: d.Site}
	for _, c := range d.cores {
		part, err := until(c.Series, end)
		if err != nil {
			return r, fmt.Errorf("takenOut: %w", err)
		}
		r.Cores = append(r.Cores, part)
	}
	return r, nil
}

// until is the record up to its last reading before a time that lies in it: no straight line across a gap is taken
// for a reading.
func until(core series.Series[units.Temperature], end units.Stated[time.Duration]) (series.Series[units.Temperature],
	error) {
	if !end.Given {
		return core, nil
	}
	if _, err := core.ValueAt(end.Value); err != nil {
		return core, err
	}
	var before []series.Reading[units.Temperature]
	for _, r := range core.Readings() {
		if r.At <= end.Value {
			before = append(before, r)
		}
	}
	return series.New(before)
}
