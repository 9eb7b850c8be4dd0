package main

import (
	"fmt"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/smoke"
)

// judge holds every part against what is published, and then the parts against each other.
func (r recipe) judge(m measure) (result, error) {
	all := result{title: r.title, about: r.about}
	for _, part := range []func(measure, *result) error{r.judgeProcess, r.judgeCure, r.judgeSmoke} {
		if err := part(m, &all); err != nil {
			return result{}, err
		}
	}
	all.add(r.judgeTogether(), nil)
	return all, nil
}

func (r recipe) judgeProcess(m measure, all *result) error {
	s := step{name: "Process in jars"}
	if r.process == nil {
		all.add(s, nil)
		return nil
	}
	a, err := process.Check(*r.process)
	if err != nil {
		return fmt.Errorf("process: %w", err)
	}
	s.verdict = a.Verdict
	if a.Verdict == process.NotPublished {
		s.refusal = a.Refusal.Error()
	}
	if g := a.Governing; g != (process.Schedule{}) {
		s.note = fmt.Sprintf("%s in %s jars, %s gauge, %s", g.Product, g.Jar, g.Gauge, m.band(g.Band))
		if g.Pack != process.AsSmoked { // smoked fish has no other pack
			s.note = g.Pack.String() + " " + s.note
		}
		s.govern("pressure on the gauge", m.pressure(g.Pressure), g.Citation)
		s.govern("time at pressure", span(g.Process), g.Citation)
		s.govern("venting of steady steam", span(g.Vent), g.VentCitation)
		if g.ComeUp > 0 {
			s.govern("heating and venting together", "at least "+span(g.ComeUp), g.ComeUpCitation)
		}
		s.govern("headspace", m.length(g.Headspace), g.HeadspaceCitation)
		s.govern("water in the canner", m.water(g.Water), g.WaterCitation)
	} else if s.refusal == "" {
		s.note = "What the recipe states leaves more than one published process open."
	}
	for _, f := range a.Findings {
		s.findings = append(s.findings, finding{f.String(), f.What, f.Kind.String(), f.Stated, f.Published, f.Difference, f.Citation, f.Known})
	}
	all.add(s, a.Cautions())
	return nil
}

func (r recipe) judgeCure(m measure, all *result) error {
	s := step{name: "Cure"}
	if r.cure == nil {
		all.add(s, nil)
		return nil
	}
	claim := *r.cure
	claim.ForJars = r.forJars()
	a, err := brine.Check(claim)
	if err != nil {
		return fmt.Errorf("cure: %w", err)
	}
	s.verdict = verdict(a.Verdict)
	s.note = a.Method.String()
	switch {
	case a.SaltToFish > 0:
		s.note += fmt.Sprintf(", %s of salt to fish", percent(a.SaltToFish))
	case a.Strength > 0:
		s.note += fmt.Sprintf(", brine of %s", percent(a.Strength))
	}
	if r.forJars() {
		s.note += "; how much salt is not judged, as the process alone makes what is in the jar keep"
	} else {
		s.govern("water phase salt, measured in the loin", "at least "+a.Limit.Least.String(), a.Limit.Citation)
	}
	for _, rule := range brine.SaltingRules() {
		if rule.ID == "DRYSALT-COLD" && a.Method != brine.WetBrined || (rule.ID == "BRINE-START" || rule.ID == "BRINE-4H") && a.Method == brine.WetBrined {
			s.govern(rule.What, m.most(rule.Most), rule.Citation)
		}
	}
	if e := a.Estimate; !e.Citation.IsZero() {
		s.computed = append(s.computed, figure{"water phase salt by estimate, low (likely) high", fmt.Sprintf("%s (%s) %s", percent(e.Low), percent(e.Likely), percent(e.High)), e.Citation})
	}
	for _, f := range a.Findings {
		s.findings = append(s.findings, finding{line: f.String(), what: f.What, kind: f.Kind.String(), stated: f.Stated, published: f.Published, difference: f.Difference, citation: f.Citation})
	}
	all.add(s, a.Cautions())
	return nil
}

func (r recipe) judgeSmoke(m measure, all *result) error {
	s := step{name: "Smoke"}
	if r.smoke == nil {
		all.add(s, nil)
		return nil
	}
	a, err := r.checkSmoke()
	if err != nil {
		return fmt.Errorf("smoke: %w", err)
	}
	s.verdict, s.refusal = verdict(a.Verdict), a.Refusal
	if g := a.Governing; g.ID != "" {
		s.govern("core of the thickest piece", m.least(g.AtLeast), g.Citation)
		s.govern("held at that core", "at least "+span(g.Hold), g.Citation)
	}
	if r.forJars() {
		s.note = "For jars: smoked lightly, not cooked."
		s.govern("loss of weight in smoking", a.Jar.Least.String()+" to "+a.Jar.Most.String(), a.Jar.Citation)
		for _, rule := range smoke.ChamberRules() {
			if rule.ID == "LIGHT-140-160" {
				s.govern("air of the smoker", m.least(rule.AtLeast)+", "+m.most(rule.AtMost), rule.Citation)
				s.govern("time in the smoker", "at most "+span(rule.Within), rule.Citation)
			}
		}
	} else if a.Storage.Days > 0 {
		s.govern("storage", m.most(a.Storage.AtMost), a.Storage.Temperature.Citation)
	} else { // in a vacuum, or in a pack that is not stated
		s.govern("storage", "frozen", a.Storage.Cautions[0].Citation)
		s.govern("thawing, serving", m.most(a.Storage.AtMost), a.Storage.Temperature.Citation)
	}
	if a.Storage.Days > 0 {
		s.govern("days in the refrigerator", fmt.Sprintf("at most %d", a.Storage.Days), a.Storage.Time.Citation)
	}
	for _, f := range a.Findings {
		s.findings = append(s.findings, finding{f.String(), f.What, f.Kind.String(), f.Stated, f.Published, f.Difference, f.Citation, f.Known})
	}
	all.add(s, a.Cautions())
	return nil
}

func (r recipe) checkSmoke() (smoke.Assessment, error) {
	if r.forJars() {
		return smoke.CheckForJars(*r.smoke, r.loss)
	}
	return smoke.CheckAgainst(r.rule, *r.smoke)
}
