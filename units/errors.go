package units

import (
	"errors"
	"math"
	"strconv"
	"time"
)

// ErrRange is what errors.Is finds in every RangeError.
var ErrRange = errors.New("out of range")

// ErrSyntax is what errors.Is finds in every ParseError.
var ErrSyntax = errors.New("not understood")

// RangeError says that a value lies outside what a formula, a scale or a type holds for. The
// limits are text in the value's own unit; an empty limit is no limit.
type RangeError struct {
	What string // the quantity, in words: "altitude"
	Got  string // the value refused
	Low  string // the lowest value accepted, or empty
	High string // the highest value accepted, or empty
}

// Error says what was out of range, the value, and what was expected.
func (e RangeError) Error() string {
	s := e.What + " " + e.Got + " is out of range: expected "
	switch {
	case e.Low != "" && e.High != "":
		return s + e.Low + " to " + e.High
	case e.Low != "":
		return s + "at least " + e.Low
	case e.High != "":
		return s + "at most " + e.High
	}
	return s + "a value that is set"
}

// Is reports whether target is ErrRange.
func (e RangeError) Is(target error) bool { return target == ErrRange }

// ParseError says which text could not be read as a quantity, and why.
type ParseError struct {
	Quantity string // "length", "temperature" …
	Text     string // the text as given
	Reason   string // what was wrong and what was expected
}

// Error quotes the text and says why it was refused.
func (e ParseError) Error() string {
	return "cannot read " + strconv.Quote(e.Text) + " as a " + e.Quantity + ": " + e.Reason
}

// Is reports whether target is ErrSyntax.
func (e ParseError) Is(target error) bool { return target == ErrSyntax }

// Check returns a RangeError naming what unless low ≤ got ≤ high.
func Check[Q Quantity](what string, got, low, high Q) error {
	if low <= got && got <= high { // short, so that the compiler inlines it: it stands before every formula
		return nil
	}
	return outOfRange(what, got, low, high)
}

func outOfRange[Q Quantity](what string, got, low, high Q) error {
	return RangeError{What: what, Got: text(got), Low: text(low), High: text(high)}
}

// CheckTemperature returns a RangeError naming what unless got is set and low ≤ got ≤ high.
func CheckTemperature(what string, got, low, high Temperature) error {
	if !got.AtLeast(low) || got.Above(high) {
		return RangeError{What: what, Got: got.String(), Low: low.String(), High: high.String()}
	}
	return nil
}

// CheckDuration returns a RangeError naming what unless low ≤ got ≤ high.
func CheckDuration(what string, got, low, high time.Duration) error {
	if got < low || got > high {
		return RangeError{What: what, Got: Lasting(got), Low: Lasting(low), High: Lasting(high)}
	}
	return nil
}

// overflow is the RangeError of a result that the type of Q cannot hold.
func overflow[Q Quantity](negative bool, got string) error {
	if negative && got != "" && got[0] != '-' {
		got = "-" + got
	}
	return RangeError{What: dimensionOf[Q]().name, Got: got, Low: text(Q(int64(-math.MaxInt64))), High: text(Q(int64(math.MaxInt64)))}
}

func utoa(n uint64) string { return strconv.FormatUint(n, 10) }

func itoa(n int64) string { return strconv.FormatInt(n, 10) }

func ftoa(x float64) string { return strconv.FormatFloat(x, 'g', -1, 64) }
