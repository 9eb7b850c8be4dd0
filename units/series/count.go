package series

import (
	"strconv"
	"strings"
	"time"

	"github.com/shopspring/decimal"

	"example.org/lakelarder/units"
)

// timeUnits are the units that a plain record counts in.
var timeUnits = map[string]time.Duration{
	"ms": time.Millisecond,
	"s":  time.Second, "sec": time.Second, "second": time.Second, "seconds": time.Second,
	"min": time.Minute, "minute": time.Minute, "minutes": time.Minute,
	"h": time.Hour, "hr": time.Hour, "hour": time.Hour, "hours": time.Hour,
}

// timeUnit returns a unit of time as loggers write it, 0 for a word that is none.
func timeUnit(word string) time.Duration {
	switch word = strings.Trim(strings.ToLower(word), " ."); word {
	case "us", "µs", "microseconds":
		return time.Microsecond
	case "millis", "millisecond", "milliseconds", "msec":
		return time.Millisecond
	case "secs":
		return time.Second
	case "mins":
		return time.Minute
	case "hrs":
		return time.Hour
	case "d", "day", "days":
		return 24 * time.Hour
	}
	return timeUnits[word]
}

// expanded writes 2.1e+01 as 21: what statistics programs print for a plain decimal. False for anything else.
func expanded(cell string) (string, bool) {
	i := strings.IndexAny(cell, "eE")
	if i < 1 || len(cell) > longestNumber || !isNumber(cell[:i]) {
		return "", false
	}
	power, err := strconv.Atoi(cell[i+1:])
	if err != nil || power < -15 || power > 15 {
		return "", false
	}
	sign, number := "", cell[:i]
	if number[0] == '-' || number[0] == '+' {
		sign, number = number[:1], number[1:]
	}
	whole, after, _ := strings.Cut(number, ".")
	if power < 0 {
		all := strings.Repeat("0", -power) + whole
		whole, after = all[:len(all)+power], all[len(all)+power:]+after
	} else {
		all := after + strings.Repeat("0", power)
		whole, after = whole+all[:power], all[power:]
	}
	return sign + whole + "." + after, true
}

// elapsedTime reads a count of the unit, rounded once to the nanosecond.
func elapsedTime(cell string, unit time.Duration) (int64, error) {
	if ns, ok := (scale[units.Mass]{one: int64(unit)}).fast(cell); ok {
		return ns, nil
	}
	if !isNumber(cell) {
		return 0, notANumber(cell)
	}
	n, err := decimal.NewFromString(cell)
	if err != nil {
		return 0, wrap(ErrNotANumber, err.Error())
	}
	ns := n.Mul(decimal.NewFromInt(int64(unit))).Round(0).BigInt()
	if !ns.IsInt64() {
		return 0, units.RangeError{What: "time", Got: short(cell), Low: "0", High: "292 years"}
	}
	return ns.Int64(), nil
}
