package timetable

import "strconv"

// InputError says which part of a Problem cannot be planned with, and what was expected. What is out of a range is a
// units.RangeError instead.
type InputError struct {
	What     string // "bound 3: task"
	Got      string
	Expected string
}

// Error names the part, what was given and what was expected.
func (e InputError) Error() string {
	return e.What + " " + strconv.Quote(e.Got) + ": expected " + e.Expected
}
