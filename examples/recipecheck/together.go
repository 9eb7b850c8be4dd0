package main

import (
	"fmt"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/smoke"
	"example.org/lakelarder/units"
)

// forJars reports whether the smoked fish is what goes into the jars.
func (r recipe) forJars() bool { return r.process != nil && r.process.Product == process.SmokedFish }

// tested is what the process of smoked fish in jars was tested with.
func tested() smoke.JarLoss {
	j, _ := smoke.CheckJarLoss(10 * units.Percent) // the least, which is within it
	return j
}

// judgeLightSmoke judges fish that is smoked for jars: it stays raw, so no core is asked for, and the loss of weight decides whether
// the process was tested with it.
func (r recipe) judgeLightSmoke(s step, all *result) error {
	if _, err := smoke.Check(*r.smoke); err != nil { // figures that nothing can be are refused all the same
		return fmt.Errorf("smoke: %w", err)
	}
	loss := r.loss
	if !loss.Given {
		loss.Value = tested().Least
	}
	j, err := smoke.CheckJarLoss(loss.Value)
	if err != nil {
		return fmt.Errorf("smoke: %w", err)
	}
	within := percent(j.Least) + " to " + percent(j.Most)
	s.verdict = process.Meets
	s.note = "For jars: smoked lightly, not cooked. No figures for its air and time are judged."
	s.govern("loss of weight in smoking", within, j.Citation)
	lightly, soon := tested().Cautions[0], tested().Cautions[3]
	f := finding{what: "loss", citation: j.Citation, published: within}
	switch {
	case !r.loss.Given:
		f.kind, f.line = process.NotStated.String(), "loss: not stated, "+within+" tested"
		s.find(process.CannotTell, f)
	case !j.Tested:
		s.refusal = j.Cautions[0].Text
		f.kind, f.stated, f.line = process.Different.String(), percent(j.Loss), "loss: "+percent(j.Loss)+" stated, "+within+" tested"
		s.find(process.NotPublished, f)
	}
	if r.smoke.Core.Given {
		s.find(process.Differs, finding{line: "core: stated, none is published: fish for jars is not cooked in the smoke", what: "core", kind: process.Different.String(),
			stated: r.smoke.Core.Value.String(), citation: lightly.Citation})
	}
	if r.smoke.Days.Value > 1 {
		s.find(process.FallsShort, finding{line: fmt.Sprintf("days: %d stated before canning, at most 1 published, too long", r.smoke.Days.Value), what: "days",
			kind: smoke.TooLong.String(), stated: fmt.Sprint(r.smoke.Days.Value), published: "at most 1", citation: soon.Citation})
	}
	all.add(s, j.Cautions)
	return nil
}

// judgeTogether judges what no part sees by itself: that smoked fish is salted, and that salted fish is cooked.
func (r recipe) judgeTogether() step {
	s := step{name: "The parts together", verdict: process.Meets}
	limit, core := brine.DefaultSaltLimit(), smoke.DefaultCoreLimit()
	if r.smoke != nil && r.cure == nil && !r.forJars() {
		s.find(process.CannotTell, finding{line: "cure: not stated, though the fish is smoked; " + limit.Least.String() + " of water phase salt published", what: "cure",
			kind: process.NotStated.String(), published: limit.Least.String(), citation: limit.Citation})
	}
	if r.cure != nil && r.smoke == nil {
		s.find(process.CannotTell, finding{line: "smoke: not stated, though the fish is salted; salt cooks nothing, " + core.AtLeast.Text(units.FahrenheitScale, 0) + " published for hot smoke",
			what: "smoke", kind: process.NotStated.String(), published: core.AtLeast.Text(units.FahrenheitScale, 0), citation: core.Citation})
	}
	if r.forJars() && r.smoke == nil {
		s.find(process.CannotTell, finding{line: "smoke: not stated, though the jars hold smoked fish", what: "smoke", kind: process.NotStated.String(), citation: tested().Citation})
	}
	return s
}
