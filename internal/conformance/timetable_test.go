package conformance

import (
	"time"

	"example.org/lakelarder/yield/timetable"
)

var timetableExempt = map[string]string{"StartOf": build, "EndOf": build, "After": build, "Within": build, "By": build, "Exactly": build}

func timetableGrid(r *results) {
	for loads := 1; loads <= 4; loads++ {
		for closed := 6; closed <= 15; closed += 3 {
			p := timetable.Problem{
				Until: 36 * time.Hour,
				Resources: []timetable.Resource{
					{Name: "canner", Capacity: 1},
					{Name: "cook", Capacity: 1, Closed: []timetable.Window{{From: time.Duration(closed) * time.Hour, To: time.Duration(closed+8) * time.Hour}}},
				},
				Tasks: []timetable.Task{{
					Name: "cut", Uses: []timetable.Use{{Resource: "cook", Count: 1}},
					Steps: []timetable.Step{{Takes: timetable.Times{Least: 30 * time.Minute, Likely: 45 * time.Minute, Most: time.Hour}}},
				}},
			}
			for load := 1; load <= loads; load++ {
				name := string(rune('0' + load))
				p.Tasks = append(p.Tasks, timetable.Task{
					Name: name, Uses: []timetable.Use{{Resource: "canner", Count: 1}, {Resource: "cook", Count: 1}},
					Steps: []timetable.Step{
						{Name: "heat", Takes: timetable.Times{Least: 20 * time.Minute, Likely: 25 * time.Minute, Most: 30 * time.Minute}},
						{Name: "process", Takes: timetable.Exactly(100 * time.Minute)},
						{Name: "cool", Takes: timetable.Times{Least: 40 * time.Minute, Likely: 45 * time.Minute, Most: time.Hour}},
					},
				})
				p.Bounds = append(p.Bounds, timetable.After(name, "cut"), timetable.Within(name, "cut", time.Duration(2*closed)*time.Hour))
			}
			for _, table := range r.sweep("Plan", timetable.Plan, these(p)) {
				r.sweep("Timetable.Least", timetable.Timetable.Least, these(table))
			}
		}
	}
}
