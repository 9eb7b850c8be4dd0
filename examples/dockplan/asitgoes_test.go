package main

import (
	"fmt"
	"time"

	"example.org/lakelarder/yield/timetable"
)

// ran is a day as it went: when each step of a task started, and its end.
type ran struct{ from, to []time.Duration }

// day lets every step take what is drawn for it; a task starts at its slot's time and never waits.
func day(w work, draw func(timetable.Times) time.Duration) map[string]ran {
	days := map[string]ran{}
	for _, s := range w.table.Slots {
		at, r := s.Start, ran{}
		for _, step := range taskOf(w.problem, s.Task).Steps {
			r.from = append(r.from, at)
			at += draw(step.Takes)
			r.to = append(r.to, at)
		}
		days[s.Task] = r
	}
	return days
}

func taskOf(p timetable.Problem, name string) timetable.Task {
	for _, t := range p.Tasks {
		if t.Name == name {
			return t
		}
	}
	return timetable.Task{}
}

// of is when a moment was.
func of(p timetable.Problem, days map[string]ran, m timetable.Moment) time.Duration {
	if m.Task == "" {
		return 0
	}
	r := days[m.Task]
	from, to := 0, len(r.from)-1
	for i, step := range taskOf(p, m.Task).Steps {
		if m.Step != "" && step.Name == m.Step {
			from, to = i, i
		}
	}
	if m.Edge == timetable.Start {
		return r.from[from]
	}
	return r.to[to]
}

// holds checks every bound and every resource of a day, minute by minute, and reports what is broken.
func holds(w work, days map[string]ran) error {
	for _, b := range w.problem.Bounds {
		apart := of(w.problem, days, b.To) - of(w.problem, days, b.From)
		if b.Sense == timetable.NotBefore && apart < b.Gap || b.Sense == timetable.NotAfter && apart > b.Gap {
			return fmt.Errorf("%s: %s", b, apart)
		}
	}
	for _, r := range w.problem.Resources {
		for at := time.Duration(0); at < w.problem.Until; at += time.Minute {
			room := r.Capacity
			for _, c := range r.Closed {
				if c.From <= at && at < c.To {
					room = min(room, c.Left)
				}
			}
			for _, t := range w.problem.Tasks {
				d := days[t.Name]
				for i, step := range t.Steps {
					if d.from[i] > at || at >= d.to[i] {
						continue
					}
					for _, u := range append(append([]timetable.Use{}, t.Uses...), step.Uses...) {
						if u.Resource == r.Name {
							room -= u.Count
						}
					}
				}
			}
			if room < 0 {
				return fmt.Errorf("%s at %s: %d too many", r.Name, at, -room)
			}
		}
	}
	return nil
}

// byClock checks a day by what the household and the guides say, without a look at the problem's own bounds and windows.
func byClock(k *kitchen, w work, days map[string]ran) error {
	asleep := func(at time.Duration) bool {
		clock := (k.Dock.Value + at) % (24 * time.Hour)
		return clock >= 22*time.Hour+30*time.Minute || clock < 6*time.Hour+30*time.Minute
	}
	type span struct{ from, to time.Duration }
	var awake, loads []span
	for _, s := range w.table.Slots {
		d := days[s.Task]
		from, to := d.from[0], d.to[len(d.to)-1]
		var n int
		kind := ""
		fmt.Sscanf(s.Task, "%s %d", &kind, &n)
		switch kind {
		case "gut":
			if k.since+to > 2*time.Hour {
				return fmt.Errorf("%s: on ice after %s", s.Task, k.since+to)
			}
		case "load":
			loads = append(loads, span{from, to})
			if process := d.to[4]; k.since+process > 48*time.Hour {
				return fmt.Errorf("%s: process ended at %s", s.Task, process)
			}
			if cut := days[fmt.Sprintf("cut %d", n)]; cut.to[0] > from || from-cut.to[0] > k.Home.Waits {
				return fmt.Errorf("%s: cut fish waits %s", s.Task, from-cut.to[0])
			}
		case "salt":
			smoked := days[fmt.Sprintf("smoke %d", n)]
			if late := smoked.from[0] - to; late < 0 || late > k.Smoker.MayLie || k.since+smoked.from[3] > 24*time.Hour {
				return fmt.Errorf("%s: out of the salt by %s, cooked from %s", s.Task, late, k.since+smoked.from[3])
			}
			to = d.to[0] // it lies in salt at night
		case "smoke":
			to = d.to[4] // and is cold at night
		}
		awake = append(awake, span{from, to})
	}
	for _, a := range awake {
		for at := a.from; at < a.to; at += time.Minute {
			if asleep(at) {
				return fmt.Errorf("somebody is up at %s", at)
			}
		}
	}
	for i, a := range loads {
		together := 0
		for _, b := range loads[:i+1] {
			if b.from <= a.from && a.from < b.to {
				together++
			}
		}
		if together > k.Canner.Canners {
			return fmt.Errorf("%d loads at once", together)
		}
	}
	return nil
}
