package main

import (
	"fmt"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/smoke"
	"example.org/lakelarder/units/verdict"
)

// judged is a recipe and what was found: of each part that it has, of the parts together, and of all of it in one
// report.
type judged struct {
	Title string
	About string
	verdict.Report
	Process  *process.Assessment
	Cure     *brine.Assessment
	Smoke    *smoke.Assessment
	Together verdict.Report

	recipe recipe
}

// part is one part of a recipe, as it is printed; absent ones have no report.
type part struct {
	name    string
	absent  bool
	report  verdict.Report
	refusal string // what is not published
	of      string // what was judged
	governs []governing
}

// judge holds every part against what is published, and then the parts against each other.
func (r recipe) judge() (j judged, err error) {
	j = judged{Title: r.Title, About: r.About, recipe: r}
	if r.Process != nil {
		a, err := process.Check(*r.Process)
		if err != nil {
			return j, fmt.Errorf("process: %w", err)
		}
		j.Process = &a
	}
	if r.Cure != nil {
		a, err := brine.Check(r.Cure.Claim)
		if err != nil {
			return j, fmt.Errorf("cure: %w", err)
		}
		j.Cure = &a
	}
	if r.Smoke != nil {
		a, err := smoke.CheckAgainst(r.limit, r.Smoke.Claim)
		if err != nil {
			return j, fmt.Errorf("smoke: %w", err)
		}
		j.Smoke = &a
	}
	j.Together = r.together()
	var reports []verdict.Report
	for _, p := range j.parts() {
		if !p.absent {
			reports = append(reports, p.report)
		}
	}
	j.Report = verdict.Join(reports...)
	return j, nil
}

// parts are the parts of the recipe in the order of their making, and the parts together.
func (j judged) parts() []part {
	inJars, cure, smoked := part{name: "Process in jars", absent: true}, part{name: "Cure", absent: true},
		part{name: "Smoke", absent: true}
	if a := j.Process; a != nil {
		inJars = part{name: inJars.name, report: a.Judgement(), of: packed(a.Governing),
			governs: governsProcess(a.Governing)}
		if a.Verdict == verdict.NotPublished {
			inJars.refusal = a.Refusal.Error()
		} else if len(inJars.governs) == 0 {
			inJars.of = "What the recipe states leaves more than one published process open."
		}
	}
	if a := j.Cure; a != nil {
		cure = part{name: cure.name, report: a.Judgement(), of: a.Method.String(), governs: j.recipe.governsCure(*a)}
		if j.recipe.forJars() {
			cure.of += "; how much salt is not judged, as only the process makes what is in the jar keep"
		}
	}
	if a := j.Smoke; a != nil {
		smoked = part{name: smoked.name, report: a.Judgement(), refusal: a.Refusal.Text,
			governs: j.recipe.governsSmoke(*a)}
		if j.recipe.forJars() {
			smoked.of = "for jars: smoked lightly, not cooked"
		}
	}
	return []part{inJars, cure, smoked, {name: "The parts together", report: j.Together}}
}
