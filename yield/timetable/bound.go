package timetable

import (
	"strconv"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Moment is the start or the end of a task, or of one of its steps. The zero Moment is the start of the plan.
type Moment struct {
	Task string
	Step string // empty is the whole task
	Edge Edge
}

// StartOf returns the moment at which a task starts.
func StartOf(task string) Moment { return Moment{Task: task, Edge: Start} }

// EndOf returns the moment at which the last step of a task ends.
func EndOf(task string) Moment { return Moment{Task: task, Edge: End} }

// String is the moment in words: "the end of salt", "the start of process in load 1", "the start of the plan".
func (m Moment) String() string {
	switch {
	case m == Moment{}:
		return "the start of the plan"
	case m.Step != "":
		return "the " + m.Edge.String() + " of " + m.Step + " in " + m.Task
	}
	return "the " + m.Edge.String() + " of " + m.Task
}

// Bound keeps two moments apart, or together: To comes not before, or not after, From and Gap. One bound is one
// limit, so that a conflict can name it. Gap is in whole seconds, −31 to 31 days; the two moments are of two tasks,
// or of a task and the plan.
type Bound struct {
	Name     string // may be empty
	To       Moment
	Sense    Sense
	From     Moment
	Gap      time.Duration
	Citation cite.Citation // where the gap is from; zero where it is the caller's own
}

// After returns the bound that a task starts not before another has ended.
func After(task, before string) Bound {
	return Bound{To: StartOf(task), Sense: NotBefore, From: EndOf(before)}
}

// Within returns the bound that a task starts at most so long after another has ended. It says nothing of which
// comes first: that is After.
func Within(task, before string, gap time.Duration) Bound {
	return Bound{To: StartOf(task), Sense: NotAfter, From: EndOf(before), Gap: gap}
}

// By returns the bound that a task has ended so long after the start of the plan: a deadline by the clock.
func By(task string, at time.Duration) Bound {
	return Bound{To: EndOf(task), Sense: NotAfter, Gap: at}
}

// String is the bound in words, with its name where it has one: "iced: the end of ice not after the end of gut + 2
// h".
func (b Bound) String() string {
	name := ""
	if b.Name != "" {
		name = b.Name + ": "
	}
	gap := ""
	switch {
	case b.Gap > 0:
		gap = " + " + units.Lasting(b.Gap)
	case b.Gap < 0:
		gap = " − " + units.Lasting(-b.Gap)
	}
	return name + b.To.String() + " " + b.Sense.String() + " " + b.From.String() + gap
}

// label is how an error names the bound with this index.
func (b Bound) label(i int) string {
	if b.Name != "" {
		return "bound " + strconv.Quote(b.Name)
	}
	return "bound " + strconv.Itoa(i+1)
}
