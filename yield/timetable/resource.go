package timetable

import "time"

// Resource is what tasks share: a canner (1), the racks of a smoker, people. Capacity is 1 to 1000.
type Resource struct {
	Name     string
	Capacity int
	Closed   []Window // when there is less of it, or none; at most 100
}

// Window is a time in which only Left of a resource may be occupied: none of a person who sleeps, one of two people
// when the other is away. What might still run at From counts, so a step must have ended by then even if it takes its
// Most. From and To are counted from the start of the plan, whole seconds, 0 ≤ From < To ≤ 62 days. Windows may
// overlap: the fewer left count.
type Window struct {
	From time.Duration
	To   time.Duration
	Left int // 0 ≤ Left < Capacity
}
