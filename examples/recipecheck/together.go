package main

import (
	"example.org/lakelarder/brine"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/smoke"
	"example.org/lakelarder/units"
)

// forJars reports whether the smoked fish is what goes into the jars.
func (r recipe) forJars() bool { return r.process != nil && r.process.Product == process.SmokedFish }

// judgeTogether judges what no part sees by itself: that smoked fish is salted, that salted fish is cooked, and that what the jars hold was smoked.
func (r recipe) judgeTogether() step {
	s := step{name: "The parts together", verdict: process.Meets}
	limit, core := brine.DefaultSaltLimit(), smoke.DefaultCoreLimit()
	hot := core.AtLeast.Text(units.FahrenheitScale, 0)
	switch {
	case r.smoke != nil && r.cure == nil && !r.forJars():
		s.lack("cure", "though the fish is smoked; "+limit.Least.String()+" of water phase salt published", limit.Least.String(), limit.Citation)
	case r.smoke == nil && r.forJars():
		s.lack("smoke", "though the jars hold smoked fish", "", tested().Citation)
	case r.smoke == nil && r.cure != nil:
		s.lack("smoke", "though the fish is salted; salt cooks nothing, "+hot+" published for hot smoke", hot, core.Citation)
	}
	return s
}

// tested is what the process of smoked fish in jars was tested with.
func tested() smoke.JarLoss {
	j, _ := smoke.CheckJarLoss(10 * units.Percent) // a tested one, never refused
	return j
}
