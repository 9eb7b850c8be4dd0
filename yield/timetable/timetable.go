package timetable

import (
	"sort"
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units/cite"
)

// Timetable is what Plan came to. All times are counted from the start of the plan.
type Timetable struct {
	Answer   Answer
	Slots    []Slot        // one a task, in order of their starts; none unless it is Possible
	Spare    Slot          // the room for a second run, where the problem asks for it
	Finish   time.Duration // by when all has ended, the spare included, whatever each takes
	NoSooner time.Duration // proven: no fixed starts finish sooner
	Steps    int           // of the search, taken

	Conflict Conflict // of an Impossible timetable
	Cautions []cite.Caution
}

// MarshalJSON writes the timetable with its times as text.
func (t Timetable) MarshalJSON() ([]byte, error) { return wire.Marshal(t) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (t *Timetable) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, t) }

// Least reports whether it is proven that nothing finishes sooner; otherwise the Finish is the best that was found.
func (t Timetable) Least() bool { return t.Answer == Possible && t.Finish == t.NoSooner }

// Slot is when a task is planned. It starts at Start, not before; its ends are how soon, how likely and how late that
// lets it end.
type Slot struct {
	Task    string
	Start   time.Duration `wire:"always"`
	Soonest time.Duration `wire:"always"` // its end, where every step takes its Least
	Likely  time.Duration
	Latest  time.Duration // its end, where every step takes its Most
	Steps   []Span
}

// Span is when a step of a slot starts and ends, at the earliest and at the latest.
type Span struct {
	Step     string
	Earliest time.Duration `wire:"always"` // start
	Latest   time.Duration // start
	Soonest  time.Duration // end
	End      time.Duration // at the latest
}

// timetable writes out what was found.
func (r *planner) timetable(f finding) Timetable {
	t := Timetable{Answer: f.answer, Steps: r.taken, Conflict: f.conflict, Cautions: cautions(f.answer)}
	if f.answer != Impossible {
		t.NoSooner = r.time(f.noSooner)
	}
	if f.answer != Possible {
		return t
	}
	t.Finish = r.time(f.end)
	for i, task := range r.p.Tasks {
		t.Slots = append(t.Slots, slotOf(task, r.time(f.starts[i+1])))
	}
	sort.SliceStable(t.Slots, func(i, j int) bool { return t.Slots[i].Start < t.Slots[j].Start })
	if r.spare > 0 {
		t.Spare = r.spareSlot(r.time(f.starts[r.spare]))
	}
	return t
}

// spareSlot is as short as the shortest of the tasks that it is for, and as long as the longest.
func (r *planner) spareSlot(start time.Duration) Slot {
	slot := Slot{Task: "spare", Start: start, Soonest: start + mostTaskSteps*longest, Likely: start, Latest: start}
	for _, task := range r.p.Tasks {
		for _, name := range r.p.Restart.Tasks {
			if task.Name == name {
				one := slotOf(task, start)
				slot.Soonest = min(slot.Soonest, one.Soonest)
				slot.Likely, slot.Latest = max(slot.Likely, one.Likely), max(slot.Latest, one.Latest)
			}
		}
	}
	return slot
}

func (m *model) time(whole int64) time.Duration { return time.Duration(whole) * m.unit }

func slotOf(t Task, start time.Duration) Slot {
	slot := Slot{Task: t.Name, Start: start, Soonest: start, Likely: start, Latest: start}
	for _, step := range t.Steps {
		span := Span{Step: step.Name, Earliest: slot.Soonest, Latest: slot.Latest}
		slot.Soonest += step.Takes.Least
		slot.Likely += step.Takes.Likely
		slot.Latest += step.Takes.Most
		span.Soonest, span.End = slot.Soonest, slot.Latest
		slot.Steps = append(slot.Steps, span)
	}
	return slot
}

// cautions are what must be shown beside a timetable.
func cautions(a Answer) []cite.Caution {
	switch a {
	case Impossible:
		return []cite.Caution{
			{ID: "timetable.fixed-starts", Text: "That no fixed starts exist is proven of what was put in. Starting a task by what the day brings may still do; " +
				"skipping or shortening a published time is not the way out."},
			{ID: "timetable.how-far", Text: "How far a bound would have to give way says nothing of whether it may: that is for its source."},
		}
	case Undecided:
		return []cite.Caution{{ID: "timetable.undecided", Deciding: true, Text: "Undecided is no plan: nothing was found within the steps of the search, and nothing was ruled out. " +
			"Plan fewer tasks, or allow more steps."}}
	}
	return []cite.Caution{
		{ID: "timetable.not-before", Deciding: true, Text: "A start is not before: the gauge, the probe or the scale says when a step has ended, " +
			"and no clock ends a hold or turns off heat."},
		{ID: "timetable.holds-while", Text: "The starts hold while every step takes between its least and its most. When one takes longer, plan again from there."},
	}
}
