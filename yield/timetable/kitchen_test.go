package timetable_test

import (
	"fmt"
	"math/rand"
	"strconv"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/timetable"
)

// small is a random problem in minutes that can be enumerated.
func small(rng *rand.Rand) timetable.Problem {
	p := timetable.Problem{Until: time.Duration(7+rng.Intn(9)) * time.Minute}
	for i := 0; i < 1+rng.Intn(2); i++ {
		r := timetable.Resource{Name: "r" + strconv.Itoa(i), Capacity: 1 + rng.Intn(3)}
		for rng.Intn(3) == 0 {
			from := time.Duration(rng.Intn(10)) * time.Minute
			w := timetable.Window{From: from, To: from + time.Duration(1+rng.Intn(3))*time.Minute, Left: rng.Intn(r.Capacity)}
			r.Closed = append(r.Closed, w)
		}
		p.Resources = append(p.Resources, r)
	}
	combinations := 1
	for i := 0; i < 2+rng.Intn(3); i++ {
		t := timetable.Task{Name: "t" + strconv.Itoa(i), Uses: someUses(rng, p.Resources)}
		for k := 0; k == 0 || k < 3 && rng.Intn(3) == 0; k++ {
			least := 1 + rng.Intn(2)
			spread := rng.Intn(3)
			if combinations *= spread + 1; combinations > 12 {
				spread = 0
			}
			t.Steps = append(t.Steps, timetable.Step{
				Name: "s" + strconv.Itoa(k), Takes: between(least, least+spread), Uses: someUses(rng, p.Resources),
			})
		}
		if i > 0 && rng.Intn(3) == 0 { // one more of the same
			t.Uses, t.Steps = p.Tasks[i-1].Uses, p.Tasks[i-1].Steps
		}
		p.Tasks = append(p.Tasks, t)
	}
	for rng.Intn(3) > 0 {
		b := someBound(rng, p.Tasks)
		b.Name = "b" + strconv.Itoa(len(p.Bounds))
		p.Bounds = append(p.Bounds, b)
	}
	if rng.Intn(5) == 0 {
		for _, t := range p.Tasks[:1+rng.Intn(2)] {
			p.Restart.Tasks = append(p.Restart.Tasks, t.Name)
		}
		if rng.Intn(2) == 0 {
			p.Restart.Within = units.State(time.Duration(1+rng.Intn(8)) * time.Minute)
		}
		p.Until += 3 * time.Minute
	}
	return p
}

func between(least, most int) timetable.Times {
	return timetable.Times{
		Least: time.Duration(least) * time.Minute, Likely: time.Duration(least+most) * time.Minute / 2, Most: time.Duration(most) * time.Minute,
	}
}

func someUses(rng *rand.Rand, resources []timetable.Resource) []timetable.Use {
	var uses []timetable.Use
	for _, r := range resources {
		if rng.Intn(2) == 0 {
			uses = append(uses, timetable.Use{Resource: r.Name, Count: 1 + rng.Intn(min(2, r.Capacity))})
		}
	}
	return uses
}

func someBound(rng *rand.Rand, tasks []timetable.Task) timetable.Bound {
	order := rng.Perm(len(tasks))
	to, from := someMoment(rng, tasks[order[0]]), someMoment(rng, tasks[order[1]])
	switch rng.Intn(6) {
	case 0:
		from = timetable.Moment{}
	case 1:
		return timetable.By(tasks[order[0]].Name, time.Duration(3+rng.Intn(9))*time.Minute)
	case 2:
		return timetable.After(tasks[order[0]].Name, tasks[order[1]].Name)
	}
	if rng.Intn(2) == 0 {
		return timetable.Bound{To: to, From: from, Sense: timetable.NotBefore, Gap: time.Duration(rng.Intn(5)-2) * time.Minute}
	}
	return timetable.Bound{To: to, From: from, Sense: timetable.NotAfter, Gap: time.Duration(rng.Intn(12)) * time.Minute}
}

func someMoment(rng *rand.Rand, t timetable.Task) timetable.Moment {
	m := timetable.Moment{Task: t.Name, Edge: timetable.Edge(1 + rng.Intn(2))}
	if rng.Intn(3) == 0 {
		m.Step = t.Steps[rng.Intn(len(t.Steps))].Name
	}
	return m
}

// shown is a problem in a line, for a test that fails.
func shown(p timetable.Problem) string { return fmt.Sprintf("%+v", p) }
