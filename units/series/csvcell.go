package series

import (
	"encoding"
	"math"
	"strings"
	"time"

	"github.com/shopspring/decimal"

	"example.org/lakelarder/units"
)

var timeUnits = map[string]time.Duration{
	"ms": time.Millisecond,
	"s":  time.Second, "sec": time.Second, "second": time.Second, "seconds": time.Second,
	"min": time.Minute, "minute": time.Minute, "minutes": time.Minute,
	"h": time.Hour, "hr": time.Hour, "hour": time.Hour, "hours": time.Hour,
}

// clock reads the time column and keeps it rising.
type clock struct {
	heading heading
	unit    time.Duration // of elapsed time
	layout  string        // of clock times, from the first row on
	zero    time.Time
	last    int64 // -1 before the first row
}

// The ways to write a clock time, as package time spells them; seconds may have a fraction.
var layouts = []string{
	"15:04", "15:04:05",
	"2006-01-02 15:04", "2006-01-02 15:04:05", "2006-01-02 15:04:05Z07:00",
	"2006-01-02T15:04", "2006-01-02T15:04:05", time.RFC3339,
}

func (c *clock) read(cell string) (at int64, err error) {
	cell = strings.TrimSpace(cell)
	if cell == "" {
		return 0, ErrMissing
	}
	if c.heading.kind == elapsed {
		at, err = elapsedTime(cell, c.unit)
	} else {
		at, err = c.sinceStart(cell)
	}
	if err != nil {
		return 0, err
	}
	if err := order(c.last, at); err != nil {
		return 0, err
	}
	c.last = at
	return at, nil
}

// elapsedTime reads a count of the unit, rounded once to the nanosecond.
func elapsedTime(cell string, unit time.Duration) (int64, error) {
	if !isNumber(cell) {
		return 0, notANumber(cell)
	}
	n, err := decimal.NewFromString(cell)
	if err != nil {
		return 0, wrap(ErrNotANumber, err.Error())
	}
	ns := n.Mul(decimal.NewFromInt(int64(unit))).Round(0).BigInt()
	if !ns.IsInt64() {
		return 0, units.RangeError{What: "time", Got: cell, Low: "0", High: "292 years"}
	}
	return ns.Int64(), nil
}

func (c *clock) sinceStart(cell string) (int64, error) {
	if c.layout == "" {
		for _, layout := range layouts {
			if t, err := time.ParseInLocation(layout, cell, time.UTC); err == nil {
				c.layout, c.zero = layout, t
				return 0, nil
			}
		}
		return 0, wrap(ErrNotAClock, "expected 21:05, 21:05:30, 2026-08-01 21:05:00 or RFC 3339")
	}
	t, err := time.ParseInLocation(c.layout, cell, time.UTC)
	if err != nil {
		return 0, wrap(ErrNotAClock, "the rows before are written as "+c.zero.Format(c.layout))
	}
	since := t.Sub(c.zero) // the longest durations stand for anything beyond
	if since == math.MaxInt64 || since == math.MinInt64 {
		return 0, units.RangeError{What: "time", Got: cell, High: "292 years after the first"}
	}
	if int64(since) >= c.last {
		return int64(since), nil
	}
	if strings.HasPrefix(c.layout, "15") {
		return 0, wrap(ErrBackward, "a record that runs past midnight needs dates, as in 2026-08-01 21:05")
	}
	return 0, ErrBackward
}

// number reads a cell in its column's unit, exactly as T's own parser would.
func number[T Value](cell, unit string) (int64, error) {
	cell = strings.TrimSpace(cell)
	if cell == "" {
		return 0, ErrMissing
	}
	if !isNumber(cell) {
		v, err := parse[T]([]byte(cell))
		if _, set := quantaOf(v); err == nil && set { // "not set" is no number
			return 0, wrap(ErrUnit, "the heading gives the unit; write the bare number")
		}
		return 0, notANumber(cell)
	}
	var buffer [64]byte
	v, err := parse[T](append(append(append(buffer[:0], cell...), ' '), unit...))
	if err != nil {
		return 0, err
	}
	q, ok := quantaOf(v)
	if !ok {
		return 0, ErrUnset
	}
	return q, nil
}

func parse[T Value](text []byte) (v T, err error) {
	err = any(&v).(encoding.TextUnmarshaler).UnmarshalText(text)
	return v, err
}

// longestNumber bounds what a cell may ask of the parsers.
const longestNumber = 40

// isNumber reports a plain decimal: a sign or none, digits, at most one point.
func isNumber(cell string) bool {
	digits, points := 0, 0
	for i, c := range cell {
		switch {
		case c >= '0' && c <= '9':
			digits++
		case c == '.':
			points++
		case i > 0 || c != '-' && c != '+':
			return false
		}
	}
	return digits > 0 && points <= 1 && len(cell) <= longestNumber
}

func notANumber(cell string) error {
	if strings.Contains(cell, ",") {
		return wrap(ErrNotANumber, "a decimal mark is a point, and thousands are not grouped")
	}
	return wrap(ErrNotANumber, "expected a plain decimal such as 121.1")
}
