package timetable

import (
	"time"

	"example.org/lakelarder/units"
)

// Problem is what is to be planned. All times are counted from the start of the plan, in whole seconds.
// 1 to 120 tasks of at most 300 steps in all, at most 16 resources and 1000 bounds.
type Problem struct {
	Tasks     []Task
	Resources []Resource
	Bounds    []Bound
	Until     time.Duration // by when everything has ended, whatever it takes; above zero, at most 31 days
	Restart   Restart       // room for a second run; the zero Restart reserves none
	Steps     int           // the most steps of the search, at most MostSteps; zero is DefaultSteps
}

// A step of the search is one order of two tasks tried. The search never takes more of them than Problem.Steps, and what a step costs
// has a bound too, so a plan is never waited for without end.
const (
	DefaultSteps = 5_000
	MostSteps    = 5_000_000
)

// Restart reserves room for any one of some tasks to be run again from zero: one spare slot, after the end of all of them, in which
// whichever failed fits. Its second run keeps every bound that joins it with the plan or with a task that is not among them: it ends
// in time, and what comes after the task comes after the spare. Bounds among the tasks themselves hold for first runs only.
type Restart struct {
	Tasks  []string                    // none reserves nothing
	Within units.Stated[time.Duration] // the second run ends within this time of the end of the first; where stated above zero, at most 31 days
}
