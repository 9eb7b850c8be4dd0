package timetable

import "time"

// Task is work that starts once and then runs through its steps without a pause. Uses are occupied from its start
// until its last step has ended: whoever must stand by, or a canner that is never left alone.
type Task struct {
	Name  string // of its own; bounds go by it
	Steps []Step // at least one, at most 8; each starts when the one before it ends
	Uses  []Use
}

// Step is a part of a task with its own duration. Its Uses come on top of those of the task, while it runs.
type Step struct {
	Name  string // where a bound goes by it, of its own in the task; may be empty
	Takes Times
	Uses  []Use
}

// Times are how long a step takes: the plan holds from Least to Most, and Likely is for showing. Whole seconds,
// 0 < Least ≤ Likely ≤ Most ≤ 31 days; anything else is a units.RangeError.
type Times struct {
	Least  time.Duration
	Likely time.Duration
	Most   time.Duration
}

// Exactly returns the Times of a step that takes neither less nor more.
func Exactly(d time.Duration) Times { return Times{Least: d, Likely: d, Most: d} }

// Use is how much of a resource is occupied: racks of a smoker, one canner, one person. Count is 1 to 1000.
type Use struct {
	Resource string
	Count    int
}
