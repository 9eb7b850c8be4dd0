package main

import (
	"fmt"
	"time"

	"example.org/lakelarder/examples/internal/sheet"
	"example.org/lakelarder/pressure"
	"example.org/lakelarder/pressure/canner"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
)

// judged is the run with everything that is said of it. All of it is judged before anything is printed.
type judged struct {
	night
	report  canner.Report
	setting canner.Setting
	air     pressure.Air
	margin  process.Margin
	plan    plan
}

func (n night) judge() (j judged, err error) {
	j.night = n
	if n.byPressure() {
		j.report, err = canner.Audit(n.run, n.pressures)
	} else {
		j.report, err = canner.Audit(n.run, n.temperatures)
	}
	if err != nil {
		return j, err
	}
	if j.setting, err = n.run.Gauge.Setting(n.run.Schedule); err != nil {
		return j, err
	}
	if j.air, err = n.standing(); err != nil {
		return j, err
	}
	if j.margin, err = n.run.Schedule.Margin(j.air); err != nil {
		return j, err
	}
	j.plan, err = n.planned()
	return j, err
}

// standing is the air that the canner stood in.
func (n night) standing() (pressure.Air, error) {
	if n.Barometer.Kind == canner.Station {
		return pressure.AirReading(n.Barometer.Reading)
	}
	return pressure.AirAt(n.Altitude.Value)
}

// print writes the verdict, why, and what to do; then what goes with it.
func (j judged) print(p *sheet.Sheet) {
	s, r := j.run.Schedule, j.report
	p.Verdict(r.Verdict, fmt.Sprintf("%s %s in %s jars, %s gauge, at %s", s.Pack, s.Product, s.Jar, s.Gauge,
		sheet.Text(p, j.Altitude.Value)))
	p.Findings(r.Report, j.stretch, func(rule verdict.Rule) string {
		step, any := r.StepFor(rule)
		switch {
		case any && r.Clock != (canner.Clock{}): // afterwards all have one answer, below
			return "now: " + step.Text
		case rule == canner.RuleSag:
			return "the clock restarts from zero when the pressure is back"
		}
		return ""
	})
	for _, step := range r.Next {
		p.Do("%s%s%s", j.when(step), step.Text, p.From(step.Citation))
	}
	p.Heading("What is published, and what was recorded")
	p.Line("Published: %s at %s or above, without a break%s. %s", units.Lasting(s.Process), sheet.Up(p, s.Pressure),
		p.From(s.Citation), j.gaugeText(p))
	p.Line("%s, record started %s. %s", j.Place, j.clock(0), j.About)
	j.printHeld(p)
	j.printGauge(p)
	j.printMoments(p)
	j.plan.print(p, j.night)
	p.Warn(j.setting.Cautions...)
	p.Warn(j.plan.load.Cautions()...)
	p.Warn(s.Cautions()...)
	p.Warn(j.air.Cautions()...)
	p.Close()
}

func (j judged) gaugeText(p *sheet.Sheet) string {
	if j.setting.Kind == process.Weighted {
		return "The weight is that of " + sheet.Text(p, j.setting.AtLeast) + "."
	}
	text := fmt.Sprintf("The needle stands at %s or above: that, and %s that it reads high%s.",
		sheet.Up(p, j.setting.AtLeast), sheet.Text(p, max(0, j.ReadsHigh)), p.From(j.setting.Citation))
	if j.setting.Corrected < j.setting.AtLeast {
		text += fmt.Sprintf(" It reads low; %s would do, but nothing is subtracted.", sheet.Up(p, j.setting.Corrected))
	}
	return text
}

func (j judged) printHeld(p *sheet.Sheet) {
	r := j.report
	p.Item("At %s or above without a break: %s of %s, from %s", r.Required.Text(p.System, units.Up), sheet.Down(p,
		r.Held.Length()),
		units.Lasting(r.Process), j.stretch(r.Held))
	if r.Clock != (canner.Clock{}) {
		p.Item("Still owed: %s", sheet.Up(p, r.Clock.Owed))
	}
	p.Item("Largest gap between readings: %s; believed up to %s", sheet.Up(p, r.LargestGap.Length()),
		units.Lasting(r.MaxGap))
	p.Item("%s", j.read)
}

// when says by what time a step is to be taken.
func (j judged) when(s canner.Step) string {
	switch s.Action {
	case canner.Reprocess, canner.Refrigerate:
		return "by " + j.clock(s.At) + ": "
	case canner.Discard:
		return "from " + j.clock(s.At) + ": "
	}
	return ""
}

func (j judged) printMoments(p *sheet.Sheet) {
	p.Heading("The run")
	m := j.run.Marks
	text := ""
	for i, one := range []struct {
		name string
		mark units.Stated[time.Duration]
	}{
		{"heat on", m.HeatOn}, {"steady steam", m.SteadySteam}, {"vent closed", m.VentClosed}, {"timer started",
			m.Timer},
		{"heat off", m.HeatOff}, {"pressure gone", m.Gone}, {"weight off", m.WeightOff}, {"lid off", m.LidOff},
	} {
		said := "not written down"
		if one.mark.Given {
			said = fmt.Sprintf("%s (minute %d)", j.clock(one.mark.Value), one.mark.Value/time.Minute)
		}
		text += fmt.Sprintf("%-14s %-24s", one.name, said)
		if i%2 == 1 {
			p.Line("%s", text)
			text = ""
		}
	}
}

func (j judged) printGauge(p *sheet.Sheet) {
	m := j.margin
	side, apart := "above", m.Above
	if apart < 0 {
		side, apart = "below", -apart
	}
	p.Line("Steam at the published pressure here: %s, %s %s %s%s; it explains the setting and decides nothing.",
		sheet.Text(p, m.Steam), sheet.Text(p, apart), side, sheet.Text(p, m.Reference), p.From(m.Citation))
}

// stretch is a part of the record on the kitchen's clock.
func (j judged) stretch(s series.Stretch) string {
	if s.From == s.To {
		return j.clock(s.From)
	}
	return j.clock(s.From) + " to " + j.clock(s.To)
}

// clock is a moment of the record on the kitchen's clock.
func (n night) clock(at time.Duration) string {
	t := n.Started.Value + at.Round(time.Minute)
	days := ""
	if t >= 24*time.Hour {
		days = fmt.Sprintf(" (+%d d)", t/(24*time.Hour))
	}
	t %= 24 * time.Hour
	return fmt.Sprintf("%02d:%02d%s", t/time.Hour, t%time.Hour/time.Minute, days)
}
