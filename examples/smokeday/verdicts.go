package main

import (
	"fmt"
	"math"
	"time"

	"example.org/lakelarder/smoke"
)

func (s study) printWhy(p *page) {
	p.Heading("Why")
	for _, h := range []smoke.Hold{s.strict, s.other} {
		began := "never"
		if h.Held > 0 {
			began = "from " + s.clock(h.Began) + " to " + s.clock(h.Began+h.Held)
		}
		p.Line("%s, %s: all probes together %s without a break, %s", h.Limit.ID, h.Verdict, held(h.Held), began)
		for _, f := range h.Findings {
			s.printFinding(p, f)
		}
	}
	if s.takenOut.Given && s.strict.Verdict != smoke.Met {
		p.Line("In the smoker until %s: %s the longest, %s without a break when it was taken out", s.clock(s.takenOut.Value), held(s.whenOut.Held), held(s.whenOut.Limit.Hold-s.whenOut.Owed))
	}
	p.Line("A sum of separate spells is no hold. Largest gap between readings: %s; believed up to %s.", held(s.strict.LargestGap.Length()), held(s.maxGap))
}

func (s study) printFinding(p *page, f smoke.Finding) {
	when := s.clock(f.When.From)
	if f.When.To != f.When.From {
		when += " to " + s.clock(f.When.To)
	}
	text := ""
	if f.Observed.IsSet() {
		text = ": " + p.bare(f.Observed) + " of " + p.limit(f.Required)
	}
	p.Line("- %s %s, %s%s %s", letters[f.Probe:f.Probe+1], f.Kind, when, text, p.From(f.Citation))
}

func (s study) printCooling(p *page) {
	p.Heading("The cooling")
	switch {
	case !s.takenOut.Given:
		p.Line("Not yet: the fish is still in the smoker.")
		return
	case !s.cooked():
		p.Line("Not judged: the rules are for fish that was cooked. Raw fish stays cold.")
		return
	}
	rule := s.cooling.Rule
	p.Line("%s: %s (%s, %s) %s", s.cooling.Verdict, rule.ID, rule.Fish, rule.Place, p.From(rule.Citation))
	for _, step := range s.cooling.Steps {
		from := "the end of the heating"
		if step.Step.From.IsSet() {
			from = p.limit(step.Step.From)
		}
		p.Line("  %s to %s: %s in %s of %s, slowest %s", from, p.limit(step.Step.To), step.Verdict, owed(step.Took), held(step.Step.Within), letters[step.Probe:step.Probe+1])
		s.printDue(p, step)
	}
}

// printDue says by when a core must be colder that was still on its way when the record ended.
func (s study) printDue(p *page, step smoke.CoolingTook) {
	last, _ := s.cores[step.Probe].Series.Last()
	left := step.Step.Within - step.Took
	if step.Verdict == smoke.CannotTell && step.Took > 0 && left > 0 && last.Value.Above(step.Step.To) {
		p.Line("    the record ends on the way, at %s: be there by %s", p.Temperature(last.Value), s.clock((last.At + left).Truncate(time.Minute)))
	}
}

func (s study) printListeria(p *page) {
	l := s.listeria
	p.Heading("Listeria, to explain and never to decide")
	p.Line("By heat alone the record of the coldest probe comes to %s at %s. For a 6-log reduction in moist food, one in a million left, %s there are published %s.",
		minutesAt(l.Equivalent), p.Temperature(l.Reference), minutesAt(l.SixLog), p.From(l.Citation))
	p.Line("THAT IS NO PASS, whatever the figure:")
	for _, c := range l.Cautions {
		p.Line("- %s %s", c.Text, p.From(c.Citation))
	}
}

// minutesAt prints a time that may be under a minute or of many days, cut.
func minutesAt(d time.Duration) string {
	if d < time.Hour {
		return fmt.Sprintf("%.1f min", math.Floor(10*d.Minutes())/10)
	}
	return held(d)
}
