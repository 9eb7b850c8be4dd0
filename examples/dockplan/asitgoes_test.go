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
