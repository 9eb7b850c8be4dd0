package main

import (
	"fmt"
	"strings"
	"time"

	"example.org/lakelarder/examples/internal/calendar"
	"example.org/lakelarder/yield/timetable"
)

// decidesEnd is what stands in every entry of a task: none has an end.
const decidesEnd = "The gauge, the probe or the scale decides when a step has ended. " +
	"If it takes longer than its latest, plan again."

// calendar is the timetable as entries that only begin. It is stamped with the dock's own hour: written again for the
// same day it is the same file.
func (a answer) calendar() (string, error) {
	if a.keep == 0 {
		return "", fmt.Errorf("no calendar: no fish are kept today, so there is no timetable")
	}
	c := calendar.Calendar{ID: "dockplan " + a.Place + " " + a.Date, Stamp: a.at(0)}
	slots := append([]timetable.Slot(nil), a.work.table.Slots...)
	if a.work.table.Spare.Task != "" {
		slots = append(slots, a.work.table.Spare)
	}
	for _, s := range slots {
		c.Events = append(c.Events, calendar.Event{
			Key: s.Task, Start: a.at(s.Start), Location: a.Place, Description: a.entry(s),
			Summary: fmt.Sprintf("not before %s: %s", a.at(s.Start).Format("15:04"), entryName(s)),
		})
	}
	for _, d := range a.deadlines() {
		c.Events = append(c.Events, calendar.Event{
			Key: "deadline " + d.bound.Name, Start: a.at(d.bound.Gap).Truncate(time.Minute), Location: a.Place,
			Summary: "deadline reached: " + d.bound.Name, Description: d.bound.Citation.String() + "\n" +
				"It ends no step. What has not come so far is not kept; do not shorten a step for it.",
		})
	}
	return c.Text()
}

func entryName(s timetable.Slot) string {
	if strings.HasPrefix(s.Task, "spare") {
		return "room for one load begun again from zero"
	}
	return "start " + s.Task
}

// entry is the steps of a slot, none of which a clock ends.
func (a answer) entry(s timetable.Slot) string {
	var lines []string
	for _, step := range s.Steps {
		name := step.Step
		if name == "" {
			name = s.Task
		}
		lines = append(lines, fmt.Sprintf("%s: not before %s", name, a.when(step.Earliest)))
	}
	return strings.Join(append(lines, decidesEnd, a.About), "\n")
}
