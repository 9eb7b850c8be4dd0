package main

import (
	"fmt"
	"io"
	"time"

	"example.org/lakelarder/examples/internal/form"
	"example.org/lakelarder/pressure/canner"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// file is the run as it is written: texts, so that a fault can be named by its field. Moments are clock times.
type file struct {
	About     string     `json:"about"`
	Place     string     `json:"place"`
	Altitude  string     `json:"altitude"`
	Product   string     `json:"product"`
	Pack      string     `json:"pack"`
	Jar       string     `json:"jar"`
	Gauge     string     `json:"gauge"`
	ReadsHigh string     `json:"readsHigh"`
	Started   string     `json:"started"`
	Log       string     `json:"log"`
	Record    string     `json:"record"`
	MaxGap    string     `json:"maxGap"`
	Marks     fileMarks  `json:"marks"`
	Vessel    fileVessel `json:"vessel"`
	Fill      string     `json:"fill"`
	Jars      int        `json:"jars"`
	Canners   int        `json:"canners"`
	Refill    string     `json:"refill"`
}

type fileMarks struct {
	HeatOn      string `json:"heatOn"`
	SteadySteam string `json:"steadySteam"`
	VentClosed  string `json:"ventClosed"`
	Timer       string `json:"timer"`
	HeatOff     string `json:"heatOff"`
	Gone        string `json:"pressureGone"`
	WeightOff   string `json:"weightOff"`
	LidOff      string `json:"lidOff"`
}

type fileVessel struct {
	Diameter  string `json:"diameter"`
	Height    string `json:"height"`
	Rack      string `json:"rack"`
	Divider   string `json:"divider"`
	Capacity  string `json:"capacity"`
	Clearance string `json:"clearance"`
	Jar       string `json:"jar"`
}

// night is what the file says, understood.
type night struct {
	about, place string
	started      time.Duration // after midnight
	run          canner.Run
	pressures    series.Series[units.Pressure]
	temperatures series.Series[units.Temperature]
	byPressure   bool
	vessel       canner.Vessel
	jar          canner.JarSize
	clearance    units.Length
	fill         units.Mass
	jars         int
	canners      int
	refill       time.Duration
}

// load reads the run and its log, which lies beside it; an error names the file and the field or line.
func load(path string) (night, error) {
	var f file
	if err := form.Read(path, &f); err != nil {
		return night{}, err
	}
	n, err := f.understand()
	if err != nil {
		return night{}, fmt.Errorf("%s: %w", path, err)
	}
	_, err = form.Log(path, f.Log, func(r io.Reader) (struct{}, error) { return struct{}{}, n.read(r) })
	return n, err
}

func (n *night) read(log io.Reader) (err error) {
	if n.byPressure {
		n.pressures, err = series.ReadColumn[units.Pressure](log, "")
	} else {
		n.temperatures, err = series.ReadColumn[units.Temperature](log, "")
	}
	return err
}

func (f file) understand() (night, error) {
	r := &form.Fields{}
	n := night{about: f.About, place: f.Place, byPressure: f.Record == "pressure", jars: f.Jars, canners: f.Canners}
	r.Require(f.About != "", "about", "say what this run is, and that it is invented if it is")
	r.Require(f.Record == "pressure" || f.Record == "temperature", "record", "expected pressure or temperature")
	want := process.Request{
		Product: form.Field(r, "product", f.Product, process.ParseProduct), Pack: form.Field(r, "pack", f.Pack, process.ParsePack),
		Jar: form.Field(r, "jar", f.Jar, process.ParseJar), Gauge: form.Field(r, "gauge", f.Gauge, process.ParseGauge),
		Altitude: form.Field(r, "altitude", f.Altitude, units.ParseLength),
	}
	n.run.Altitude, n.run.Gauge.Kind = want.Altitude, want.Gauge
	if f.ReadsHigh != "" {
		n.run.Gauge.ReadsHigh = form.Field(r, "readsHigh", f.ReadsHigh, units.ParsePressure)
	}
	n.run.MaxGap = form.Field(r, "maxGap", f.MaxGap, time.ParseDuration)
	n.refill = form.Field(r, "refill", f.Refill, time.ParseDuration)
	n.started = form.Field(r, "started", f.Started, parseClock)
	f.readMarks(r, &n)
	f.readVessel(r, &n)
	if r.Err != nil {
		return night{}, r.Err
	}
	var err error
	n.run.Schedule, err = process.Find(want)
	return n, err
}

func (f file) readMarks(r *form.Fields, n *night) {
	m := &n.run.Marks
	for _, one := range []struct {
		field, text string
		mark        *units.Stated[time.Duration]
	}{
		{"heatOn", f.Marks.HeatOn, &m.HeatOn}, {"steadySteam", f.Marks.SteadySteam, &m.SteadySteam}, {"ventClosed", f.Marks.VentClosed, &m.VentClosed},
		{"timer", f.Marks.Timer, &m.Timer}, {"heatOff", f.Marks.HeatOff, &m.HeatOff}, {"pressureGone", f.Marks.Gone, &m.Gone},
		{"weightOff", f.Marks.WeightOff, &m.WeightOff}, {"lidOff", f.Marks.LidOff, &m.LidOff},
	} {
		if one.text == "" {
			continue // nobody wrote it down
		}
		at := form.Field(r, "marks."+one.field, one.text, parseClock) - n.started
		if at < 0 {
			at += 24 * time.Hour // past midnight
		}
		*one.mark = units.State(at)
	}
}

func (f file) readVessel(r *form.Fields, n *night) {
	v := f.Vessel
	n.vessel = canner.Vessel{
		Diameter: form.Field(r, "vessel.diameter", v.Diameter, units.ParseLength), Height: form.Field(r, "vessel.height", v.Height, units.ParseLength),
		Rack: form.Field(r, "vessel.rack", v.Rack, units.ParseLength), Divider: form.Field(r, "vessel.divider", v.Divider, units.ParseLength),
		Capacity: form.Field(r, "vessel.capacity", v.Capacity, units.ParseVolume),
	}
	n.clearance = form.Field(r, "vessel.clearance", v.Clearance, units.ParseLength)
	n.jar = form.Field(r, "vessel.jar", v.Jar, canner.FindJarSize)
	n.fill = form.Field(r, "fill", f.Fill, units.ParseMass)
}

// parseClock reads 20:40 as the time since midnight.
func parseClock(text string) (time.Duration, error) {
	t, err := time.Parse("15:04", text)
	if err != nil {
		return 0, fmt.Errorf("cannot read %q as a clock time: expected one like 20:40", text)
	}
	return time.Duration(t.Hour())*time.Hour + time.Duration(t.Minute())*time.Minute, nil
}
