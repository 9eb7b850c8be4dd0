package main

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"time"

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
	data, err := os.ReadFile(path)
	if err != nil {
		return night{}, err
	}
	var f file
	decoder := json.NewDecoder(bytes.NewReader(data))
	decoder.DisallowUnknownFields()
	if err := decoder.Decode(&f); err != nil {
		return night{}, fmt.Errorf("%s: line %d: %w", path, lineOf(data, decoder, err), err)
	}
	n, err := f.understand()
	if err != nil {
		return night{}, fmt.Errorf("%s: %w", path, err)
	}
	log, err := os.Open(filepath.Join(filepath.Dir(path), f.Log))
	if err != nil {
		return night{}, fmt.Errorf("%s: log: %w", path, err)
	}
	defer log.Close()
	if err := n.read(log); err != nil {
		return night{}, fmt.Errorf("%s: %w", log.Name(), err)
	}
	return n, nil
}

func (n *night) read(log io.Reader) (err error) {
	if n.byPressure {
		n.pressures, err = series.ReadCSV[units.Pressure](log, "")
	} else {
		n.temperatures, err = series.ReadCSV[units.Temperature](log, "")
	}
	return err
}

// lineOf is the line that the decoder stood at.
func lineOf(data []byte, decoder *json.Decoder, err error) int {
	offset := decoder.InputOffset()
	var syntax *json.SyntaxError
	var kind *json.UnmarshalTypeError
	if errors.As(err, &syntax) {
		offset = syntax.Offset
	} else if errors.As(err, &kind) {
		offset = kind.Offset
	}
	return 1 + bytes.Count(data[:min(offset, int64(len(data)))], []byte("\n"))
}

func (f file) understand() (night, error) {
	r := &reader{}
	n := night{about: f.About, place: f.Place, byPressure: f.Record == "pressure", jars: f.Jars, canners: f.Canners}
	r.require(f.About != "", "about", "say what this run is, and that it is invented if it is")
	r.require(f.Record == "pressure" || f.Record == "temperature", "record", "expected pressure or temperature")
	want := process.Request{
		Product: parse(r, "product", f.Product, process.ParseProduct), Pack: parse(r, "pack", f.Pack, process.ParsePack),
		Jar: parse(r, "jar", f.Jar, process.ParseJar), Gauge: parse(r, "gauge", f.Gauge, process.ParseGauge),
		Altitude: parse(r, "altitude", f.Altitude, units.ParseLength),
	}
	n.run.Altitude, n.run.Gauge.Kind = want.Altitude, want.Gauge
	if f.ReadsHigh != "" {
		n.run.Gauge.ReadsHigh = parse(r, "readsHigh", f.ReadsHigh, units.ParsePressure)
	}
	n.run.MaxGap = parse(r, "maxGap", f.MaxGap, time.ParseDuration)
	n.refill = parse(r, "refill", f.Refill, time.ParseDuration)
	n.started = parse(r, "started", f.Started, parseClock)
	f.readMarks(r, &n)
	f.readVessel(r, &n)
	if r.err != nil {
		return night{}, r.err
	}
	var err error
	n.run.Schedule, err = process.Find(want)
	return n, err
}

func (f file) readMarks(r *reader, n *night) {
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
		at := parse(r, "marks."+one.field, one.text, parseClock) - n.started
		if at < 0 {
			at += 24 * time.Hour // past midnight
		}
		*one.mark = units.State(at)
	}
}

func (f file) readVessel(r *reader, n *night) {
	v := f.Vessel
	n.vessel = canner.Vessel{
		Diameter: parse(r, "vessel.diameter", v.Diameter, units.ParseLength), Height: parse(r, "vessel.height", v.Height, units.ParseLength),
		Rack: parse(r, "vessel.rack", v.Rack, units.ParseLength), Divider: parse(r, "vessel.divider", v.Divider, units.ParseLength),
		Capacity: parse(r, "vessel.capacity", v.Capacity, units.ParseVolume),
	}
	n.clearance = parse(r, "vessel.clearance", v.Clearance, units.ParseLength)
	n.jar = parse(r, "vessel.jar", v.Jar, canner.FindJarSize)
	n.fill = parse(r, "fill", f.Fill, units.ParseMass)
}

// reader parses field after field and keeps the first fault with the field's name.
type reader struct{ err error }

func parse[T any](r *reader, field, text string, parse func(string) (T, error)) T {
	v, err := parse(text)
	if err != nil && r.err == nil {
		r.err = fmt.Errorf("%s: %w", field, err)
	}
	return v
}

func (r *reader) require(ok bool, field, problem string) {
	if !ok && r.err == nil {
		r.err = fmt.Errorf("%s: %s", field, problem)
	}
}

// parseClock reads 20:40 as the time since midnight.
func parseClock(text string) (time.Duration, error) {
	t, err := time.Parse("15:04", text)
	if err != nil {
		return 0, fmt.Errorf("cannot read %q as a clock time: expected one like 20:40", text)
	}
	return time.Duration(t.Hour())*time.Hour + time.Duration(t.Minute())*time.Minute, nil
}
