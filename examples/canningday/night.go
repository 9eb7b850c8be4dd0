package main

import (
	"fmt"
	"strings"
	"time"

	"example.org/lakelarder/pressure/canner"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
)

// print writes the verdict, why, and what to do; then what goes with it. Everything is judged before anything is printed.
func (n night) print(p *page) error {
	report, err := n.audit()
	if err != nil {
		return err
	}
	setting, err := n.run.Gauge.Setting(n.run.Schedule)
	if err != nil {
		return err
	}
	plan, err := n.plan()
	if err != nil {
		return err
	}
	p.Line("VERDICT: %s", strings.ToUpper(report.Verdict.String()))
	s := n.run.Schedule
	p.Line("%s %s in %s jars, %s gauge, at %s: %s at %s or above %s", s.Pack, s.Product, s.Jar, s.Gauge, p.length(n.run.Altitude),
		hours(s.Process), p.pressure(s.Pressure), p.From(s.Citation))
	p.Line("%s, record started %s. %s", n.place, n.clock(0), n.about)
	n.printWhy(p, report)
	p.Heading("What to do now")
	for _, step := range report.Next {
		at := ""
		switch step.Action {
		case canner.Reprocess, canner.Refrigerate:
			at = "by " + n.clock(step.At) + ": "
		case canner.Discard:
			at = "from " + n.clock(step.At) + ": "
		}
		p.Line("- %s%s %s", at, step, p.From(step.Citation))
	}
	n.printMoments(p, report)
	n.printGauge(p, setting)
	plan.print(p, n)
	p.Warn(report.Cautions...)
	p.Warn(setting.Cautions...)
	p.Warn(plan.load.Cautions()...)
	p.Warn(s.Cautions()...)
	p.Close()
	return nil
}

func (n night) audit() (canner.Report, error) {
	if n.byPressure {
		return canner.Audit(n.run, n.pressures)
	}
	return canner.Audit(n.run, n.temperatures)
}

func (n night) printWhy(p *page, r canner.Report) {
	p.Heading("Why")
	p.Line("At %s or above without a break: %s of %s, from %s to %s", r.Required, hours(r.Held.Length()), hours(r.Process), n.clock(r.Held.From), n.clock(r.Held.To))
	if r.Clock != (canner.Clock{}) {
		p.Line("Still owed: %s", hours(r.Clock.Owed+time.Minute-1))
	}
	if len(r.Findings) == 0 {
		p.Line("Nothing was found against it.")
	}
	for _, f := range r.Findings {
		when := n.clock(f.When.From)
		if f.When.To != f.When.From {
			when += " to " + n.clock(f.When.To)
		}
		weight := ""
		switch {
		case f.Kind == canner.Sagged:
			weight = " (the clock restarts)"
		case f.Verdict == canner.Met:
			weight = " (a remark)"
		}
		p.Line("- %s, %s%s: %s", when, f.Kind, weight, f.Observed)
		p.Line("    required: %s %s", f.Required, p.From(f.Citation))
		if f.Do.Action != 0 && r.Clock != (canner.Clock{}) { // afterwards all have one answer, below
			p.Line("    now: %s", f.Do)
		}
	}
	p.Line("Largest gap between readings: %s; believed up to %s", hours(r.LargestGap.Length()), hours(r.MaxGap))
}

func (n night) printMoments(p *page, r canner.Report) {
	p.Heading("The run")
	m := n.run.Marks
	for _, one := range []struct {
		name string
		mark units.Stated[time.Duration]
	}{
		{"heat on", m.HeatOn}, {"steady steam", m.SteadySteam}, {"vent closed", m.VentClosed}, {"timer started", m.Timer},
		{"heat off", m.HeatOff}, {"pressure gone", m.Gone}, {"weight off", m.WeightOff}, {"lid off", m.LidOff},
	} {
		if !one.mark.Given {
			p.Line("%-14s not written down", one.name)
			continue
		}
		p.Line("%-14s %s  minute %d", one.name, n.clock(one.mark.Value), one.mark.Value/time.Minute)
	}
}

func (n night) printGauge(p *page, set canner.Setting) {
	p.Heading("The gauge")
	if set.Kind == process.Weighted {
		p.Line("The weight of %s, by its rhythm %s", p.pressure(set.AtLeast), p.From(set.Citation))
		return
	}
	p.Line("The needle stands at %s or above: the schedule's %s, and %s that it reads high %s", p.pressure(set.AtLeast), p.pressure(n.run.Schedule.Pressure),
		p.pressure(max(0, n.run.Gauge.ReadsHigh)), p.From(set.Citation))
	if set.Corrected < set.AtLeast {
		p.Line("It reads low; %s would do, but nothing is subtracted here.", p.pressure(set.Corrected))
	}
}

// clock is a moment of the record on the kitchen's clock.
func (n night) clock(at time.Duration) string {
	t := n.started + at.Round(time.Minute)
	days := ""
	if t >= 24*time.Hour {
		days = fmt.Sprintf(" (+%d d)", t/(24*time.Hour))
	}
	t %= 24 * time.Hour
	return fmt.Sprintf("%02d:%02d%s", t/time.Hour, t%time.Hour/time.Minute, days)
}

// plan is the batch that the run belongs to.
type plan struct {
	load  canner.Load
	batch canner.Batch
	cycle canner.Cycle
	day   canner.Span
	fill  canner.Fill
	cut   canner.Cut
}

func (n night) plan() (d plan, err error) {
	if d.load, err = canner.Fit(n.run.Schedule, n.vessel, n.jar, n.clearance); err != nil {
		return d, fmt.Errorf("vessel: %w", err)
	}
	if d.batch, err = d.load.Loads(n.jars); err != nil {
		return d, fmt.Errorf("jars: %w", err)
	}
	if d.cycle, err = canner.CycleOf(n.run.Schedule); err != nil {
		return d, err
	}
	if d.day, err = d.cycle.Day(d.batch.Loads, n.canners, n.refill); err != nil {
		return d, err
	}
	if d.fill, err = n.jar.CheckFill(n.fill, n.run.Schedule.Headspace, canner.FleshDensity); err != nil {
		return d, fmt.Errorf("fill: %w", err)
	}
	d.cut, err = n.jar.Cut(n.run.Schedule.Headspace)
	return d, err
}

func (d plan) print(p *page, n night) {
	p.Heading("The load and the day")
	p.Line("%d jars a load: %d in a layer %s, %d layer(s), no more for %s, %s clearance", d.load.Jars, d.load.PerLayer, p.From(d.load.Packing.Citation), d.load.Layers,
		d.load.LayersBy, p.length(n.clearance))
	p.Line("%d jars are %d loads, the last of %d", n.jars, d.batch.Loads, d.batch.Last)
	p.Line("A load takes %s %s; all of them with %d canner(s) %s", d.span(d.cycle.Total), p.From(d.cycle.Total.Citation), n.canners, d.span(d.day))
	if !d.fill.Possible {
		p.Line("%s is not in a %s jar: at most %s below %s of headspace %s. Weigh again.", p.mass(n.fill), n.jar.Name, p.mass(d.fill.Most), p.length(n.run.Schedule.Headspace), p.From(d.fill.Citation))
	} else {
		p.Line("%s in a %s jar, at most %s below %s of headspace %s", p.mass(n.fill), n.jar.Name, p.mass(d.fill.Most), p.length(n.run.Schedule.Headspace), p.From(d.fill.Citation))
	}
	p.Line("cut the fish to %s %s", p.length(d.cut.Length), p.From(d.cut.Citation))
	if !n.jar.Citation.IsZero() {
		p.Line("jar sizes are typical ones %s: measure your own", p.From(n.jar.Citation))
	}
}

func (d plan) span(s canner.Span) string {
	if s.Open {
		return hours(s.Least) + " or more"
	}
	return hours(s.Least) + " to " + hours(s.Most)
}
