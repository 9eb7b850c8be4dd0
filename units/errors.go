package units

import (
	"errors"
	"strconv"
	"strings"
	"time"
)

// ErrRange is what errors.Is finds in every RangeError and in every UnsetError: what is not set is in no range.
var ErrRange = errors.New("out of range")

// ErrUnset is what errors.Is finds in every UnsetError.
var ErrUnset = errors.New("not stated")

// ErrUnknown is what errors.Is finds in every UnknownError.
var ErrUnknown = errors.New("unknown")

// ErrSyntax is what errors.Is finds in every ParseError and in every UnknownError.
var ErrSyntax = errors.New("not understood")

// RangeError says that a value lies outside what a formula, a scale or a type holds for. The limits are text in the
// value's own unit; an empty limit is no limit. A limit is itself accepted unless it is exclusive.
type RangeError struct {
	What          string // the quantity, in words: "altitude"
	Got           string // the value refused
	Low           string // the lowest value accepted, or empty
	High          string // the highest value accepted, or empty
	LowExclusive  bool   // Low itself is refused: "more than 0 g"
	HighExclusive bool   // High itself is refused: "less than 0.25 in"
}

// Error says what was out of range, the value, and what was expected.
func (e RangeError) Error() string {
	return e.What + " " + e.Got + " is out of range: expected " + e.expected()
}

func (e RangeError) expected() string {
	low, high := "at least "+e.Low, "at most "+e.High
	if e.LowExclusive {
		low = "more than " + e.Low
	} else if strings.HasPrefix(e.Low, "more than ") { // said in words
		low = e.Low
	}
	if e.HighExclusive {
		high = "less than " + e.High
	}
	switch {
	case e.Low == "" && e.High == "":
		return "a value that is set"
	case e.High == "":
		return low
	case e.Low == "":
		return high
	case e.LowExclusive || e.HighExclusive:
		return low + " and " + high
	}
	return e.Low + " to " + e.High
}

// Is reports whether target is ErrRange.
func (e RangeError) Is(target error) bool { return target == ErrRange }

// UnsetError says that a value which must be stated is not.
type UnsetError struct {
	What string // what is missing, in words: "altitude"
}

// Error names what is not stated.
func (e UnsetError) Error() string { return e.What + " is not stated" }

// Is reports whether target is ErrUnset or ErrRange.
func (e UnsetError) Is(target error) bool { return target == ErrUnset || target == ErrRange }

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

// CheckTemperature returns an UnsetError naming what unless got is set, and a RangeError unless low ≤ got ≤ high. Both
// limits are named in one scale.
func CheckTemperature(what string, got, low, high Temperature) error {
	switch {
	case !got.IsSet():
		return UnsetError{What: what}
	case !got.AtLeast(low) || got.Above(high):
		scales := []Scale{CelsiusScale, FahrenheitScale}
		if !low.exactIn(CelsiusScale) || !high.exactIn(CelsiusScale) {
			scales[0], scales[1] = scales[1], scales[0]
		}
		return RangeError{What: what, Got: got.String(), Low: low.inOneOf(scales...), High: high.inOneOf(scales...)}
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
	d := dimensionOf[Q]()
	return RangeError{What: d.name, Got: got, Low: d.format(leastQuanta), High: d.format(maxQuanta)}
}

func utoa(n uint64) string { return strconv.FormatUint(n, 10) }

func itoa(n int64) string { return strconv.FormatInt(n, 10) }

func ftoa(x float64) string { return strconv.FormatFloat(x, 'g', -1, 64) }
