package canner

import "example.org/lakelarder/units/cite"

// ContradictionError says that two things given do not go together: a jar that is not the schedule's, a schedule that
// was changed, or moments marked in an order in which they cannot have happened.
type ContradictionError struct {
	What     string
	Got      string
	Expected string
}

// Error says what contradicts, the value and what was expected.
func (e ContradictionError) Error() string {
	return e.What + " " + e.Got + " does not fit: expected " + e.Expected
}

// UnsuitableError says that the published processes are not for this piece of equipment, whatever its figures: a
// vessel too small, a capacity that is not for smoked fish, a dial gauge too far off. It is not a units.RangeError.
type UnsuitableError struct {
	What     string // what is unsuitable: "vessel"
	Got      string
	Required string
	Citation cite.Citation // of what is required
}

// Error says what is unsuitable, what was required and where that is printed.
func (e UnsuitableError) Error() string {
	return e.What + " is unsuitable: " + e.Got + ", required " + e.Required + " (" + e.Citation.String() + ")"
}
