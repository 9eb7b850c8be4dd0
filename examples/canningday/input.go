package main

import (
	"fmt"
	"time"

	"example.org/lakelarder/examples/internal/form"
	"example.org/lakelarder/pressure/canner"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// file is the run as it is written. Moments are clock times.
type file struct {
	About     string                     `wire:"required" help:"what this run is, and that it is invented if it is"`
	Place     string                     `wire:"required" help:"where"`
	Altitude  units.Stated[units.Length] `help:"of the stove"`
	Product   process.Product            `help:"fish, smoked fish or tuna"`
	Pack      process.Pack               `help:"raw, precooked or as smoked"`
	Jar       process.Jar                `help:"size of the jars"`
	Gauge     process.Gauge              `help:"dial or weighted"`
	ReadsHigh units.Pressure             `help:"by how much the dial shows more than there is, negative for less; from its yearly test"`
	Started   form.Clock                 `wire:"required" help:"when the record begins"`
	Log       string                     `wire:"required" help:"the record, a CSV file beside this one"`
	Record    string                     `wire:"required" help:"what was recorded: pressure or temperature"`
	Format    series.Format              `wire:"partial" help:"how the record is written, as far as it does not say so itself" example:"{\"order\": \"day first\"}"`
	MaxGap    time.Duration              `help:"longest pause between readings across which a straight line is believed, up to 15 min"`
	Marks     fileMarks
	Contents  []canner.Contents `help:"what stood in the canner, kind by kind, if not only what is said above" example:"[{\"jar\": \"pint\", \"jars\": 9}]"`
	Barometer canner.Barometer  `help:"a barometer beside the canner" example:"{\"reading\": \"87 kPa\", \"kind\": \"station pressure\"}"`
	Recorder  canner.Recorder   `help:"by how far the recorder may be off" example:"{\"pressure\": \"0.2 psi\"}"`
	Noticed   canner.Noticed    `help:"what was seen" example:"{\"siphoned\": 2}"`
	Asked     form.Clock        `help:"when the question is put, for what can still be done" example:"\"23:50\""`
	Vessel    fileVessel
	Fill      units.Mass    `help:"fish in a jar"`
	Jars      int           `help:"jars of the whole batch"`
	Canners   int           `help:"canners side by side, 1 or 2"`
	Refill    time.Duration `help:"emptying and filling a canner between loads"`
}

type fileMarks struct {
	HeatOn       form.Clock `help:"the burner under the closed lid; empty here and below: not written down"`
	SteadySteam  form.Clock `help:"a steady stream from the open vent"`
	VentClosed   form.Clock `help:"petcock closed, or weight on"`
	Timer        form.Clock `help:"the last time the timer was started"`
	HeatOff      form.Clock
	PressureGone form.Clock `help:"gauge at zero, or lock dropped"`
	WeightOff    form.Clock `help:"or petcock opened"`
	LidOff       form.Clock
}

type fileVessel struct {
	Diameter  units.Length `help:"inside, where the jars stand"`
	Height    units.Length `help:"inside, from the bottom to the lid"`
	Rack      units.Length `help:"height of the rack under the jars"`
	Divider   units.Length `help:"thickness of the rack between two layers"`
	Capacity  units.Volume `help:"as the canner is sold"`
	Clearance units.Length `help:"room that the jars are to have across the layer"`
	Jar       string       `help:"size and mouth of the jars"`
}

// night is what the file says, understood.
type night struct {
	file
	run          canner.Run
	pressures    series.Series[units.Pressure]
	temperatures series.Series[units.Temperature]
	read         string // how the record was read
	jar          canner.JarSize
}

func (n night) byPressure() bool { return n.Record == "pressure" }

// load reads the run and its log, which lies beside it; an error names the file and the field or line.
func load(path string) (night, error) {
	var n night
	if err := form.Read(path, &n.file); err != nil {
		return night{}, err
	}
	if err := n.understand(); err != nil {
		return night{}, fmt.Errorf("%s: %w", path, err)
	}
	var err error
	if n.byPressure() {
		var log form.Log[units.Pressure]
		log, err = form.ReadLog[units.Pressure](path, n.Log, "format", n.Format)
		n.pressures, n.read = log.Series, log.Read
	} else {
		var log form.Log[units.Temperature]
		log, err = form.ReadLog[units.Temperature](path, n.Log, "format", n.Format)
		n.temperatures, n.read = log.Series, log.Read
	}
	return n, err
}

func (n *night) understand() (err error) {
	if n.Record != "pressure" && n.Record != "temperature" {
		return fmt.Errorf("record: %q: expected pressure or temperature", n.Record)
	}
	if n.jar, err = canner.FindJarSize(n.Vessel.Jar); err != nil {
		return fmt.Errorf("vessel.jar: %w", err)
	}
	n.run = canner.Run{
		Altitude: n.Altitude, Contents: n.Contents, Barometer: n.Barometer, Gauge: canner.Gauge{ReadsHigh: n.ReadsHigh}, Recorder: n.Recorder,
		Noticed: n.Noticed, MaxGap: n.MaxGap, Asked: n.Asked.On(n.Started), Marks: n.Marks.on(n.Started),
	}
	n.run.Schedule, err = process.Find(process.Request{Product: n.Product, Pack: n.Pack, Jar: n.Jar, Gauge: n.Gauge,
		Altitude: n.Altitude})
	return err
}

func (m fileMarks) on(started form.Clock) canner.Marks {
	return canner.Marks{
		HeatOn: m.HeatOn.On(started), SteadySteam: m.SteadySteam.On(started), VentClosed: m.VentClosed.On(started), Timer: m.Timer.On(started),
		HeatOff: m.HeatOff.On(started), Gone: m.PressureGone.On(started), WeightOff: m.WeightOff.On(started), LidOff: m.LidOff.On(started),
	}
}
