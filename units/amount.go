package units

import (
	"strconv"
	"strings"
	"time"
)

// Count is a number of things: jars, loads, readings.
type Count int64

// String is the number.
func (c Count) String() string { return itoa(int64(c)) }

// Measure is whatever an Amount can hold.
type Measure interface {
	Quantity | Temperature | time.Duration | Count
}

// Amount is one value of any Measure together with what it measures, small and comparable: what a report shows is
// kept as a number until a person reads it. The zero Amount is not stated.
type Amount struct {
	of     measure
	quanta int64
}

// measure says which type an Amount holds. The order is that of amountOrder, which ParseAmount tries.
type measure uint8

const (
	ofNothing measure = iota
	ofLength
	ofArea
	ofMass
	ofVolume
	ofPressure
	ofTemperatureChange
	ofRatio
	ofDensity
	ofSpeed
	ofDiffusivity
	ofConductivity
	ofFilmCoefficient
	ofSpecificHeat
	ofEnergy
	ofSpecificEnergy
	ofPH
	ofTemperature
	ofDuration
	ofCount
)

// AmountOf returns v as an Amount, exact. A Temperature that is not set gives the Amount that is not stated.
func AmountOf[T Measure](v T) Amount {
	if t, ok := any(v).(Temperature); ok && !t.IsSet() {
		return Amount{}
	}
	return Amount{measureOf[T](), *quantaOf(&v)}
}

// As returns the value that the Amount holds, exact; false when it holds another type or nothing.
func As[T Measure](a Amount) (T, bool) {
	var v T
	if a.of != measureOf[T]() {
		return v, false
	}
	*quantaOf(&v) = a.quanta
	return v, true
}

// IsStated reports whether a holds a value.
func (a Amount) IsStated() bool { return a.of != ofNothing }

// Equal reports a == b; go-cmp compares by it.
func (a Amount) Equal(b Amount) bool { return a == b }

// Comparable reports whether a and b measure the same thing, so that Compare orders them.
func (a Amount) Comparable(b Amount) bool { return a.of == b.of && a.of != ofNothing }

// Compare returns -1, 0 or 1 as a is less than, equal to or greater than b; 0 and false when they do not measure the
// same thing.
func (a Amount) Compare(b Amount) (int, bool) {
	switch {
	case !a.Comparable(b):
		return 0, false
	case a.quanta < b.quanta:
		return -1, true
	case a.quanta > b.quanta:
		return 1, true
	}
	return 0, true
}

// Minus returns how much a is above b, of two temperatures as a TemperatureChange; not stated when they do not measure
// the same thing or the difference is past the range.
func (a Amount) Minus(b Amount) Amount {
	d := a.quanta - b.quanta
	if !a.Comparable(b) || (d < a.quanta) != (b.quanta > 0) {
		return Amount{}
	}
	if a.of == ofTemperature {
		return Amount{ofTemperatureChange, d}
	}
	return Amount{a.of, d}
}

// String prints a so that ParseAmount gives it back to the quantum; empty when it is not stated.
func (a Amount) String() string {
	switch a.of {
	case ofNothing:
		return ""
	case ofTemperature:
		return Temperature{a.quanta}.String()
	case ofDuration:
		return Lasting(time.Duration(a.quanta))
	case ofCount:
		return itoa(a.quanta)
	case ofPH:
		return "pH " + PH(a.quanta).String()
	}
	d := a.of.dimension()
	return d.format(a.quanta)
}

// ParseAmount reads what String prints: the unit says what is measured. "3 K" is a difference of temperatures, a bare
// whole number a Count, and the empty text an Amount that is not stated. Anything else is a ParseError.
func ParseAmount(s string) (Amount, error) {
	if s == "" {
		return Amount{}, nil
	}
	if c, ok := parseCount(s); ok {
		return AmountOf(c), nil
	}
	if strings.HasPrefix(s, "pH") {
		v, err := ParsePH(s)
		return AmountOf(v), err
	}
	for m := ofLength; m < ofPH; m++ {
		d := m.dimension()
		if v, err := d.parse(s); err == nil && (m != ofTemperatureChange || !pointOnScale(s)) {
			return Amount{m, v}, nil
		}
	}
	if t, err := ParseTemperature(s); err == nil && t.IsSet() {
		return AmountOf(t), nil
	}
	if d, err := ParseLasting(s); err == nil {
		return AmountOf(d), nil
	}
	return Amount{}, ParseError{Quantity: "amount", Text: s, Reason: "expected a number with a unit, such as 11 psi or 100 min"}
}

// parseCount reads a bare whole number.
func parseCount(s string) (Count, bool) {
	n, err := strconv.ParseInt(s, 10, 64)
	return Count(n), err == nil
}

// pointOnScale reports whether the text ends in a degree sign before its letter: "5 °F" is a temperature, "5 F°" a
// difference.
func pointOnScale(s string) bool { return strings.HasSuffix(s, "°F") || strings.HasSuffix(s, "°C") }

// MarshalText is String as bytes; it never fails.
func (a Amount) MarshalText() ([]byte, error) { return []byte(a.String()), nil }

// UnmarshalText is ParseAmount; on an error the value stays as it was.
func (a *Amount) UnmarshalText(text []byte) error {
	v, err := ParseAmount(string(text))
	if err == nil {
		*a = v
	}
	return err
}
