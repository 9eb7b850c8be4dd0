package main

import (
	"example.org/lakelarder/brine"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/smoke"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// purpose is what fish is smoked for. The zero purpose is not stated.
type purpose uint8

const (
	eating purpose = iota + 1
	jars
)

// jarsOfSmoked reports whether the jars hold smoked fish.
func (r recipe) jarsOfSmoked() bool {
	return r.process != nil && r.process.Product == process.SmokedFish
}

// forJars reports whether the fish is smoked to go into the jars: jars of smoked fish say so themselves.
func (r recipe) forJars() bool { return r.smokedFor == jars || r.smokedFor == 0 && r.jarsOfSmoked() }

// judgeTogether judges what no part sees by itself: that smoked fish is salted and salted fish cooked, that what the jars hold was smoked for
// them, and that smoked fish is not canned as raw fish.
func (r recipe) judgeTogether() step {
	s := step{name: "The parts together", verdict: process.Meets}
	limit, core := brine.DefaultSaltLimit(), smoke.DefaultCoreLimit()
	hot := core.AtLeast.Text(units.FahrenheitScale, 0)
	if r.smoke != nil && r.cure == nil && !r.forJars() {
		s.lack("cure", "though the fish is smoked; "+limit.Least.String()+" of water phase salt published", limit.Least.String(), limit.Citation)
	}
	switch {
	case r.smoke == nil && r.jarsOfSmoked():
		s.lack("smoke", "though the jars hold smoked fish", "", tested().Citation)
	case r.smoke == nil && r.cure != nil:
		s.lack("smoke", "though the fish is salted; salt cooks nothing, "+hot+" published for hot smoke", hot, core.Citation)
	case r.smoke == nil:
	case r.forJars() && r.process == nil:
		s.lack("process", "though the fish is smoked for jars", "", lightly().Citation)
	case r.forJars() && r.process.Product != 0 && !r.jarsOfSmoked():
		s.verdict, s.refusal = process.NotPublished, "no process is published that cans smoked fish as another product; smoked fish has its own, with more minutes and its own water"
		s.govern("product in the jars", process.SmokedFish.String(), lightly().Citation)
	case r.smokedFor == eating && r.jarsOfSmoked():
		s.lack("smoke for jars", "though the jars hold smoked fish: what is smoked to be eaten is another product", "", lightly().Citation)
	case r.smokedFor == 0 && r.process != nil && !r.jarsOfSmoked():
		s.lack("what the fish is smoked for", "eating or jars; smoked fish is never canned as raw fish", "", lightly().Citation)
	}
	return s
}

// lightly says that fish for jars has a process of its own.
func lightly() cite.Caution { return tested().Cautions[0] }

// tested is what the process of smoked fish in jars was tested with.
func tested() smoke.JarLoss {
	j, _ := smoke.CheckJarLoss(10 * units.Percent) // a tested one, never refused
	return j
}
