package canner

// ContradictionError says that two things given do not go together: a jar, gauge or altitude that is not the
// schedule's, or moments marked in an order in which they cannot have happened.
type ContradictionError struct {
	What     string
	Got      string
	Expected string
}

// Error says what contradicts, the value and what was expected.
func (e ContradictionError) Error() string {
	return e.What + " " + e.Got + " does not fit: expected " + e.Expected
}
