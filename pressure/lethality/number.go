package lethality

import (
	"strings"

	"github.com/shopspring/decimal"

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

// ParseNumber reads what String writes, a plain decimal number of at most twelve places: "2.04". Anything else is a
// units.ParseError, one past the range a RangeError.
func ParseNumber(s string) (Number, error) { return parse("number", s) }

// UnmarshalText is ParseNumber; on an error the value stays as it was.
func (n *Number) UnmarshalText(text []byte) error {
	read, err := ParseNumber(string(text))
	if err == nil {
		*n = read
	}
	return err
}

// parse reads a plain number.
func parse(what, s string) (Number, error) {
	fault := units.ParseError{Quantity: what, Text: s, Reason: "expected a decimal number of at most twelve places, such as 2.04"}
	if len(s) > 40 || strings.ContainsAny(s, "eE_+") {
		return 0, fault
	}
	d, err := decimal.NewFromString(s)
	if err != nil || !d.Equal(d.Truncate(12)) {
		return 0, fault
	}
	r, err := units.Of(d, units.One)
	return Number(r), err
}

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

// ParseLogs reads log reductions as MarshalText writes them: "12". Errors are those of ParseNumber.
func ParseLogs(s string) (Logs, error) {
	n, err := parse("log reductions", s)
	return Logs(n), err
}

// UnmarshalText is ParseLogs; on an error the value stays as it was.
func (l *Logs) UnmarshalText(text []byte) error {
	read, err := ParseLogs(string(text))
	if err == nil {
		*l = read
	}
	return err
}

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
