package main

import (
	"example.org/lakelarder/brine"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/smoke"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
)

// The rules of the parts together.
const (
	ruleCure    verdict.Rule = "recipe.cure"
	ruleSmoke   verdict.Rule = "recipe.smoke"
	ruleFor     verdict.Rule = "recipe.for"
	ruleProcess verdict.Rule = "recipe.process"
	ruleProduct verdict.Rule = "recipe.product"
)

// together judges what no part sees by itself: that smoked fish is salted and salted fish cooked, that what the jars
// hold was smoked for them, and that smoked fish is not canned as raw fish.
func (r recipe) together() verdict.Report {
	switch {
	case r.Smoke == nil:
		return verdict.Of(r.unsmoked(), nil)
	case r.forJars():
		return verdict.Of(r.smokedForJars(), nil)
	}
	return verdict.Of(r.smokedToEat(), nil)
}

func (r recipe) unsmoked() []verdict.Finding {
	core := smoke.DefaultCoreLimit()
	switch {
	case r.jarsOfSmoked():
		return []verdict.Finding{lack(ruleSmoke, "smoking of what the jars hold", units.Figure{}, ownProcess())}
	case r.Cure != nil:
		return []verdict.Finding{lack(ruleSmoke, "smoking of the salted fish",
			core.Printed.With("in hot smoke: salt cooks nothing"), core.Citation)}
	}
	return nil
}

func (r recipe) smokedForJars() []verdict.Finding {
	switch {
	case r.Process == nil:
		return []verdict.Finding{lack(ruleProcess, "process of the fish smoked for jars", units.Figure{}, ownProcess())}
	case r.Process.Product != 0 && !r.jarsOfSmoked():
		return []verdict.Finding{{
			Rule: ruleProduct, What: "product in the jars", Kind: verdict.Different, Verdict: verdict.NotPublished,
			Stated: units.InWords(r.Process.Product.String()), Citation: ownProcess(),
			Wanted: units.InWords("only smoked fish by its own process, with more minutes and its own water"),
		}}
	}
	return nil
}

func (r recipe) smokedToEat() (found []verdict.Finding) {
	if r.Cure == nil {
		limit := brine.DefaultSaltLimit()
		found = append(found, lack(ruleCure, "cure of the smoked fish",
			units.AtLeast(limit.Least).With("of water phase salt"), limit.Citation))
	}
	switch {
	case r.jarsOfSmoked():
		return append(found, lack(ruleFor, "smoking for jars of what the jars hold",
			units.InWords("another product than what is smoked to be eaten"), ownProcess()))
	case r.Process != nil && r.Smoke.For == 0:
		return append(found, lack(ruleFor, "what the fish is smoked for",
			units.InWords("eating or jars: smoked fish is never canned as raw fish"), ownProcess()))
	}
	return found
}

// lack is a part, or a word, that another part makes necessary.
func lack(rule verdict.Rule, what string, wanted units.Figure, from cite.Citation) verdict.Finding {
	return verdict.Finding{Rule: rule, What: what, Kind: verdict.Missing, Verdict: verdict.CannotTell, Wanted: wanted,
		Citation: from}
}

// ownProcess is where the process of smoked fish in jars is published.
func ownProcess() cite.Citation {
	for _, s := range process.Schedules() {
		if s.Product == process.SmokedFish {
			return s.Citation
		}
	}
	return cite.Citation{}
}
