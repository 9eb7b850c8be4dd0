package units

import "strconv"

// FieldError says which field of a text in JSON could not be read, or which field of a value could not be written. Err
// says why, and errors.Is and errors.As find it. Line and Column count from 1, columns in characters; both are 0 where
// a value could not be written.
type FieldError struct {
	Field  string // its path, such as "findings[2].wanted.low"; empty for the whole
	Line   int
	Column int
	Err    error
}

// Error names the field and the place, and says what was wrong.
func (e FieldError) Error() string {
	s := e.Field
	if e.Line > 0 {
		place := "line " + strconv.Itoa(e.Line) + ", column " + strconv.Itoa(e.Column)
		if s == "" {
			s = place
		} else {
			s += " (" + place + ")"
		}
	}
	switch {
	case e.Err == nil:
		return s
	case s == "":
		return e.Err.Error()
	}
	return s + ": " + e.Err.Error()
}

// Unwrap returns Err.
func (e FieldError) Unwrap() error { return e.Err }
