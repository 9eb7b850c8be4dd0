package units

import (
	"errors"
	"math"
	"strconv"
	"strings"
	"time"
)

// ErrRange is what errors.Is finds in every RangeError.
var ErrRange = errors.New("out of range")

// ErrSyntax is what errors.Is finds in every ParseError and UnknownError.
var ErrSyntax = errors.New("not understood")

// ErrUnset is what errors.Is finds in every UnsetError.
var ErrUnset = errors.New("not stated")

// ErrUnknown is what errors.Is finds in every UnknownError.
var ErrUnknown = errors.New("unknown")

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
	return "cannot read " + strconv.Quote(shortened(e.Text)) + " as a " + e.Quantity + ": " + e.Reason
}

// Is reports whether target is ErrSyntax.
func (e ParseError) Is(target error) bool { return target == ErrSyntax }

// UnsetError says that a value which must be stated is not. It is a range error too: no value lies in no range.
type UnsetError struct {
	What string // what is missing, in words: "altitude"
}

// Error says what is not stated.
func (e UnsetError) Error() string { return e.What + " is not stated" }

// Is reports whether target is ErrUnset or ErrRange.
func (e UnsetError) Is(target error) bool { return target == ErrUnset || target == ErrRange }

// UnknownError says that a name or word is none of those known.
type UnknownError struct {
	What  string   // what it should name: "jar"
	Got   string   // the name as given
	Known []string // the names known, in their order; empty where there are too many to list
}

// Error quotes the name and lists those known; a name that holds a comma is quoted.
func (e UnknownError) Error() string {
	s := "unknown " + e.What + " " + strconv.Quote(shortened(e.Got))
	if len(e.Known) == 0 {
		return s
	}
	listed := make([]string, len(e.Known))
	for i, name := range e.Known {
		listed[i] = name
		if strings.Contains(name, ",") {
			listed[i] = strconv.Quote(name)
		}
	}
	last := len(listed) - 1
	if last == 0 {
		return s + ": expected " + listed[0]
	}
	return s + ": expected " + strings.Join(listed[:last], ", ") + " or " + listed[last]
}

// Is reports whether target is ErrUnknown or ErrSyntax.
func (e UnknownError) Is(target error) bool { return target == ErrUnknown || target == ErrSyntax }

// longestEcho is how many bytes of a faulty text an error repeats.
const longestEcho = 60

// shortened cuts a faulty text to what an error message can bear.
func shortened(s string) string {
	if len(s) <= longestEcho {
		return s
	}
	return strings.ToValidUTF8(s[:longestEcho], "") + "…"
}

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
