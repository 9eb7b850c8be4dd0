package main

import (
	"fmt"
	"math"
	"time"

	"example.org/lakelarder/examples/internal/sheet"
	"example.org/lakelarder/smoke"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
)

// printHolds is the longest hold by either limit, and what is against the alternative.
func (s study) printHolds(p *sheet.Sheet) {
	p.Heading("Details: the holds")
	for _, h := range []smoke.Hold{s.strict, s.other} {
		began := "never"
		if h.Held > 0 {
			began = "from " + s.clock(h.Began) + " to " + s.clock(h.Began+h.Held)
		}
		p.Line("%s, %s: all probes together %s without a break, %s", h.Limit.ID, h.Verdict, held(h.Held), began)
	}
	for _, f := range s.other.Findings {
		p.Item("%s: %s%s", s.other.Limit.ID, f.Text(p.System), p.From(f.Citation))
	}
	if s.takenOut.Given && !s.strict.Verdict.Passes() {
		p.Line("In the smoker until %s: %s the longest, %s without a break when it was taken out",
			s.clock(s.takenOut.Value), held(s.whenOut.Held), held(s.whenOut.Limit.Hold-s.whenOut.Owed))
	}
	p.Line("A sum of separate spells is no hold. Largest gap between readings: %s; believed up to %s.",
		units.Lasting(s.strict.LargestGap.Length()), units.Lasting(s.MaxGap))
}

// stretch is a part of the record on the kitchen's clock.
func (s study) stretch(when series.Stretch) string {
	if when.From == when.To {
		return s.clock(when.From)
	}
	return s.clock(when.From) + " to " + s.clock(when.To)
}

func (s study) printCooling(p *sheet.Sheet) {
	p.Heading("Details: the cooling")
	switch {
	case !s.takenOut.Given:
		p.Line("Not yet: the fish is still in the smoker.")
		return
	case !s.cooked():
		p.Line("Not judged: the rules are for fish that was cooked. Raw fish stays cold.")
		return
	}
	rule := s.cooling.Rule
	p.Line("%s: %s (%s, %s)%s", s.cooling.Verdict, rule.ID, rule.Fish, rule.Place, p.From(rule.Citation))
	for _, step := range s.cooling.Steps {
		from := "the end of the heating"
		if step.Step.From.IsSet() {
			from = sheet.Text(p, step.Step.From)
		}
		p.Line("  %s to %s: %s in %s of %s, slowest %s", from, sheet.Text(p, step.Step.To), step.Verdict,
			owed(step.Took), held(step.Step.Within), letters[step.Probe:step.Probe+1])
		s.printDue(p, step)
	}
}

// printDue says by when a core must be colder that was still on its way when the record ended.
func (s study) printDue(p *sheet.Sheet, step smoke.CoolingTook) {
	last, _ := s.cores[step.Probe].Series.Last()
	left := step.Step.Within - step.Took
	if step.Verdict == verdict.CannotTell && step.Took > 0 && left > 0 && last.Value.Above(step.Step.To) {
		p.Line("    the record ends on the way, at %s: be there by %s", sheet.Text(p, last.Value),
			s.clock((last.At + left).Truncate(time.Minute)))
	}
}

func (s study) printListeria(p *sheet.Sheet) {
	l := s.listeria
	p.Heading("Details: Listeria, to explain and never to decide")
	p.Line("By heat alone the record of the coldest probe comes to %s at %s. For a 6-log reduction in moist food, one in a million left, %s there are published%s.",
		minutesAt(l.Equivalent), sheet.Text(p, l.Reference), minutesAt(l.SixLog), p.From(l.Citation))
	p.Line("THAT IS NO PASS, whatever the figure: see the cautions.")
}

// minutesAt prints a time that may be under a minute or of many days, cut.
func minutesAt(d time.Duration) string {
	if d < time.Hour {
		return fmt.Sprintf("%.1f min", math.Floor(10*d.Minutes())/10)
	}
	return held(d)
}

// held prints a time in hours and whole minutes, cut: what was held is never rounded up.
func held(d time.Duration) string { return units.Lasting(d.Truncate(time.Minute)) }

// owed prints a time with a started minute counted whole: what is owed or was too long is never rounded down.
func owed(d time.Duration) string { return held(d + time.Minute - 1) }

// clock is a time after the start on the kitchen's clock.
func (d day) clock(at time.Duration) string {
	t := d.Started.Value + at.Round(time.Minute)
	days := ""
	if t >= 24*time.Hour {
		days = fmt.Sprintf(" (+%d d)", t/(24*time.Hour))
	}
	t %= 24 * time.Hour
	return fmt.Sprintf("%02d:%02d%s", t/time.Hour, t%time.Hour/time.Minute, days)
}
