package main

import (
	"fmt"
	"time"

	"example.org/lakelarder/examples/internal/form"
	"example.org/lakelarder/pressure/canner"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
)

// fileRun is the households' canner and one run of it: the record of the steam, and the moments that somebody wrote down, since its start.
type fileRun struct {
	Log     string            `json:"log"`
	MaxGap  string            `json:"maxGap"`
	Marks   map[string]string `json:"marks"`
	Vessel  map[string]string `json:"vessel"`
	JarSize string            `json:"jarSize"`
	Gap     string            `json:"clearance"`
}

type vessel struct {
	canner.Vessel
	jar       canner.JarSize
	clearance units.Length
	maxGap    time.Duration
}

func (f fileRun) read(r *form.Fields, s *season) {
	known := map[string]*units.Stated[time.Duration]{
		"heatOn": &s.marks.HeatOn, "steadySteam": &s.marks.SteadySteam, "ventClosed": &s.marks.VentClosed, "timer": &s.marks.Timer,
		"heatOff": &s.marks.HeatOff, "pressureGone": &s.marks.Gone, "weightOff": &s.marks.WeightOff, "lidOff": &s.marks.LidOff,
	}
	for name, text := range f.Marks {
		mark, ok := known[name]
		r.Require(ok, "run.marks."+name, "no moment of a run")
		if ok {
			*mark = units.State(form.Field(r, "run.marks."+name, text, time.ParseDuration))
		}
	}
	v := &s.vessel
	for name, to := range map[string]*units.Length{"diameter": &v.Diameter, "height": &v.Height, "rack": &v.Rack, "divider": &v.Divider} {
		*to = form.Field(r, "run.vessel."+name, f.Vessel[name], units.ParseLength)
	}
	v.Capacity = form.Field(r, "run.vessel.capacity", f.Vessel["capacity"], units.ParseVolume)
	v.jar = form.Field(r, "run.jarSize", f.JarSize, canner.FindJarSize)
	v.clearance = form.Field(r, "run.clearance", f.Gap, units.ParseLength)
	v.maxGap = form.Field(r, "run.maxGap", f.MaxGap, time.ParseDuration)
}

// printCanner says what stands in the canner and judges the record of a run. It reports whether the run was good.
func (s season) printCanner(p *page, schedule process.Schedule) (met bool, err error) {
	p.Heading("Did the canner hold?")
	load, err := canner.Fit(schedule, s.vessel.Vessel, s.vessel.jar, s.vessel.clearance)
	if err != nil {
		return false, fmt.Errorf("run: %w", err)
	}
	p.Line("load: by its measure the canner takes %d %s jars, %d in a layer, %s %s; the households load %d", load.Jars, s.vessel.jar.Name, load.PerLayer,
		count(load.Layers, "layer"), p.From(load.Packing.Citation), s.jarsPerLoad)
	if load.Jars < s.jarsPerLoad {
		p.Line("  that is more than fits: measure again")
	}
	p.Warn(load.Cautions()...)
	run := canner.Run{Schedule: schedule, Altitude: s.altitude, Gauge: canner.Gauge{Kind: s.gauge}, Marks: s.marks, MaxGap: s.vessel.maxGap}
	report, err := canner.Audit(run, s.steam)
	if err != nil {
		return false, fmt.Errorf("run: %w", err)
	}
	p.Line("VERDICT of the recorded run: %s", report.Verdict)
	p.Line("  at %s or above without a break for %s, of %s owed %s", report.Required, minutes(report.Held.Length()), minutes(report.Process), p.From(schedule.Citation))
	for _, f := range report.Findings {
		p.Line("  %s %s", f, p.From(f.Citation))
	}
	for _, step := range report.Next {
		p.Line("now: %s %s", step, p.From(step.Citation))
	}
	p.Warn(report.Cautions...)
	return report.Verdict == canner.Met, nil
}
