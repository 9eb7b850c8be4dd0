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
	Steps     int           // the most steps of the search, at most MostSteps; zero is what takes some 0.2 s
}

// MostSteps is the most steps that a problem may allow. A step of the search is one order of two tasks tried. The
// search never takes more of them than Problem.Steps allows, and what a step costs is bounded too, so that nobody
// waits without end. Where none are stated they are 3,000 for 60 tasks, and by the square of the tasks more for fewer
// and fewer for more, 1,000 to 100,000.
const MostSteps = 5_000_000

// budget is how many steps the search may take.
func (p Problem) budget() int {
	if p.Steps > 0 {
		return p.Steps
	}
	n := len(p.Tasks)
	return min(max(3_000*60*60/(n*n), 1_000), 100_000)
}

// Restart reserves room for any one of some tasks to be run again from zero: one spare slot, after the end of all of
// them, in which whichever failed fits. A bound between an end in the task and the plan, or a task that is not among
// them, holds for the second run: it has ended in time, and what comes after the task comes after the spare. A start
// was kept by the first run, and bounds among the tasks hold for first runs. A run restarted in place, at once, has
// its room in the Most of its own task.
type Restart struct {
	Tasks  []string                    // none reserves nothing
	Within units.Stated[time.Duration] // the second run has ended so long after the first; where stated 1 s to 31 days
}
