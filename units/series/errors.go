package series

import (
	"errors"
	"fmt"
	"time"
)

// What can be wrong with a record; find them with errors.Is. The first five may come from any
// constructor, the rest from reading a file.
var (
	ErrEmpty    = errors.New("no readings")
	ErrRepeated = errors.New("the time repeats the one before")
	ErrBackward = errors.New("the time runs backward")
	ErrNegative = errors.New("the time lies before the start of the record")
	ErrUnset    = errors.New("the value is not set")

	ErrHeader        = errors.New("the header is not understood")
	ErrUnit          = errors.New("wrong unit")
	ErrRagged        = errors.New("the row has more or fewer cells than the header")
	ErrMissing       = errors.New("the cell is empty")
	ErrNotANumber    = errors.New("not a number")
	ErrNotAClock     = errors.New("not a clock time")
	ErrFault         = errors.New("the number is what a broken probe says")
	ErrTooLong       = errors.New("longer than a logger writes")
	ErrNotText       = errors.New("not a text file")
	ErrContradiction = errors.New("the file contradicts itself")
	ErrAmbiguous     = errors.New("the time can be read in two ways")
	ErrOrigin        = errors.New("the clock is not known")
	ErrOpen          = errors.New("something is not stated")
)

// ReadingError says which reading was refused and why. Index counts from zero in the readings
// given; Err is one of the package's errors.
type ReadingError struct {
	Index int
	At    time.Duration
	Err   error
}

// Error names the reading, its time and the fault.
func (e ReadingError) Error() string {
	return fmt.Sprintf("reading %d at %v: %v", e.Index, e.At, e.Err)
}

// Unwrap returns the fault.
func (e ReadingError) Unwrap() error { return e.Err }

// LineError says where in a CSV file something was refused and why. Line counts from 1 and counts
// comments, blank lines and the header; Column is the column's name and Text the cell, where there
// are any, cut to 60 bytes; errors.Is finds the package's error in Err.
type LineError struct {
	Line   int
	Column string
	Text   string
	Err    error
}

// Error names the line, the column, the cell and the fault.
func (e LineError) Error() string {
	s := fmt.Sprintf("line %d", e.Line)
	if e.Column != "" {
		s += fmt.Sprintf(", column %q", e.Column)
	}
	if e.Text != "" {
		s += fmt.Sprintf(", %q", e.Text)
	}
	return s + ": " + e.Err.Error()
}

// Unwrap returns the fault.
func (e LineError) Unwrap() error { return e.Err }

// FormatError says which field of a Format is not stated or cannot be, and what it wants.
type FormatError struct {
	Field string
	Wants string
}

// Error names the field and what it wants.
func (e FormatError) Error() string {
	return "format, " + e.Field + ": " + ErrOpen.Error() + ": expected " + e.Wants
}

// Is reports whether target is ErrOpen.
func (e FormatError) Is(target error) bool { return target == ErrOpen }
