package lethality

import (
	"example.org/lakelarder/units"
)

// Number is a plain number, a whole number of 1e-12 like units.Ratio, of which it prints no percentage: a Biot or
// Fourier number, a lag of the formula method, a root. A Ratio r is Number(r).
type Number int64

// One is the number 1.
const One = Number(units.One)

// String prints the number with all its decimals, "2.04".
func (n Number) String() string { return units.In(units.Ratio(n), units.One, 12).String() }

// MarshalText is String as bytes; it never fails.
func (n Number) MarshalText() ([]byte, error) { return []byte(n.String()), nil }

// Logs are log10 reductions, a whole number of 1e-12: Logs(12*One) are twelve of them.
type Logs int64

// String prints the reductions with one decimal, rounded down: "6.0".
func (l Logs) String() string {
	const tenth = Logs(One / 10)
	whole := l / tenth
	if l%tenth < 0 {
		whole--
	}
	return units.In(units.Ratio(whole*tenth), units.One, 1).StringFixed(1)
}

// MarshalText prints the reductions with all their decimals; it never fails.
func (l Logs) MarshalText() ([]byte, error) { return []byte(Number(l).String()), nil }

// numberOf is x to the nearest 1e-12.
func numberOf(x float64) (Number, error) {
	r, err := units.OfFloat(x, units.One)
	return Number(r), err
}

func (n Number) float() float64 { return units.Float(units.Ratio(n), units.One) }

// check returns a RangeError naming what unless low ≤ n ≤ high.
func (n Number) check(what string, low, high Number) error {
	if low <= n && n <= high {
		return nil
	}
	return units.RangeError{What: what, Got: n.String(), Low: low.String(), High: high.String()}
}
