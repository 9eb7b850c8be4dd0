package main

import (
	"fmt"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/timetable"
)

// The resources.
const (
	people = "people"
	canned = "canner"
	smoker = "smoker"
	fridge = "refrigerator"
)

// work is a number of fish with what becomes of them, and its timetable.
type work struct {
	fish, smoked, jarred int
	jars, loads, last    int
	batches              int
	problem              timetable.Problem
	table                timetable.Timetable
}

// perLoad is how many fish fill a load, the started one counted whole.
func (k *kitchen) perLoad() int {
	n := 1
	for jars, _ := k.jarsOf(n); jars < k.load.Jars; jars, _ = k.jarsOf(n) {
		n++
	}
	return n
}

// jarsOf is how many jars some fish fill, the started one counted.
func (k *kitchen) jarsOf(fish int) (int, error) {
	flesh, err := units.ProrateUp(k.Mass*units.Mass(fish), k.jarred.of, units.One)
	return int((flesh + k.Canner.Fill - 1) / k.Canner.Fill), err
}

// plan makes the timetable of some fish: the smoker's share of them first, the rest in jars.
func (k *kitchen) plan(fish int) (w work, err error) {
	w = work{fish: fish, smoked: min(fish, k.Smoker.Fish)}
	w.jarred = fish - w.smoked
	if w.jarred > 0 {
		if w.jars, err = k.jarsOf(w.jarred); err != nil {
			return w, err
		}
		batch, err := k.load.Loads(w.jars)
		if err != nil {
			return w, err
		}
		w.loads, w.last = batch.Loads, batch.Last
	}
	w.problem = k.problem(&w)
	w.table, err = timetable.Plan(w.problem)
	return w, err
}

// problem is the tasks, the kitchen and the deadlines. More fish are never fewer tasks, or shorter ones at their most, and
// of what grows with them no bound asks that it ends no sooner: what cannot be done with some fish cannot with more.
func (k *kitchen) problem(w *work) timetable.Problem {
	p := timetable.Problem{Until: k.horizon(), Resources: k.resources()}
	guts := k.gut(&p, w.fish)
	k.cans(&p, w, guts)
	k.smokes(&p, w, guts)
	if k.DoneBy.Given {
		for _, t := range p.Tasks {
			b := timetable.By(t.Name, k.DoneBy.On(k.Dock).Value)
			b.Name = wished
			p.Bounds = append(p.Bounds, b)
		}
	}
	return p
}

const wished = "done by"

// horizon leaves the last load of the two days its cooling.
func (k *kitchen) horizon() time.Duration {
	return cannedWithin - k.since + k.cycle.CoolDown.Most + k.cycle.Wait.Most
}

func (k *kitchen) resources() []timetable.Resource {
	nights := k.nights()
	all := []timetable.Resource{
		{Name: people, Capacity: k.Home.People, Closed: nights},
		{Name: canned, Capacity: k.Canner.Canners},
		{Name: fridge, Capacity: k.Home.Fridge},
	}
	if k.Smoker.Fish > 0 {
		all = append(all, timetable.Resource{Name: smoker, Capacity: 1, Closed: nights})
	}
	return all
}

// nights are the hours in which everybody sleeps and nothing is hot.
func (k *kitchen) nights() []timetable.Window {
	var all []timetable.Window
	long := k.Home.Wake.On(k.Home.Sleep).Value
	for from := k.Home.Sleep.On(k.Dock).Value - 24*time.Hour; from < k.horizon(); from += 24 * time.Hour {
		if from+long > 0 {
			all = append(all, timetable.Window{From: max(0, from), To: from + long})
		}
	}
	return all
}

// times are those of some pieces of the same work, one after the other.
func (t takes) times(pieces int) timetable.Times {
	n := time.Duration(pieces)
	return timetable.Times{Least: n * t.Least, Likely: n * (t.Least + t.Most) / 2, Most: n * t.Most}
}

func one(resource string) []timetable.Use { return []timetable.Use{{Resource: resource, Count: 1}} }

// gut is the fish shared out among the people, each of whom beds his own in ice.
func (k *kitchen) gut(p *timetable.Problem, n int) (names []string) {
	for i := 0; i < min(n, k.Home.People); i++ {
		share := n / k.Home.People
		if i < n%k.Home.People {
			share++
		}
		name := fmt.Sprintf("gut %d", i+1)
		p.Tasks = append(p.Tasks, timetable.Task{Name: name, Uses: one(people), Steps: []timetable.Step{
			{Name: "bleed and gut " + fish(share), Takes: k.Home.Gut.times(share)},
			{Name: "ice", Takes: k.Home.Ice.times(1)},
		}})
		p.Bounds = append(p.Bounds, k.deadline("gutted and on ice", timetable.EndOf(name), k.limits.gut))
		names = append(names, name)
	}
	return names
}

// deadline is a published time since the first fish was caught.
func (k *kitchen) deadline(name string, to timetable.Moment, l limit) timetable.Bound {
	return timetable.Bound{
		Name: name, To: to, Sense: timetable.NotAfter, Gap: l.within - k.since, Citation: l.citation,
	}
}

func after(p *timetable.Problem, task string, before ...string) {
	for _, b := range before {
		p.Bounds = append(p.Bounds, timetable.After(task, b))
	}
}

// cans is the cutting for each load and the load. All are taken as full ones; that they follow in their order loses
// nothing, as they are alike.
func (k *kitchen) cans(p *timetable.Problem, w *work, guts []string) {
	perLoad, share := k.perLoad(), w.jarred
	for i := 1; i <= w.loads; i++ {
		cut, load := fmt.Sprintf("cut %d", i), fmt.Sprintf("load %d", i)
		p.Tasks = append(p.Tasks, timetable.Task{Name: cut, Uses: one(people), Steps: []timetable.Step{
			{Name: "cut up", Takes: k.Home.Cut.times(min(perLoad, share))},
		}}, k.loadTask(load))
		after(p, cut, guts...)
		after(p, load, cut)
		soon := timetable.Within(load, cut, k.Home.Waits)
		soon.Name = "cut fish waits no longer than you stated"
		done := timetable.Moment{Task: load, Step: "process", Edge: timetable.End}
		p.Bounds = append(p.Bounds, soon, k.deadline("canned within two days", done, k.limits.jars))
		if i > 1 {
			p.Bounds = append(p.Bounds, inOrder(cut, fmt.Sprintf("cut %d", i-1)),
				inOrder(load, fmt.Sprintf("load %d", i-1)))
		}
		p.Restart.Tasks = append(p.Restart.Tasks, load)
	}
	if w.loads > 0 {
		p.Restart.Within = units.State(k.limits.again.within)
	}
}

func inOrder(task, before string) timetable.Bound {
	return timetable.Bound{
		Name: "in order", To: timetable.StartOf(task), Sense: timetable.NotBefore, From: timetable.StartOf(before),
	}
}

// loadTask is one load from the filling of its jars to the lid, in which nobody leaves the canner.
func (k *kitchen) loadTask(name string) timetable.Task {
	steps := []timetable.Step{{Name: "fill", Takes: k.Home.Refill.times(1)}}
	for _, part := range k.parts() {
		steps = append(steps, timetable.Step{Name: part.name, Takes: takes{part.span.Least, part.span.Most}.times(1)})
	}
	return timetable.Task{Name: name, Uses: append(one(canned), one(people)...), Steps: steps}
}

func counted(n int, what string) string { return fmt.Sprintf("%d %s", n, what) }
