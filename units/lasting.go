package units

import (
	"strconv"
	"strings"
	"time"
)

var times = dimension{
	name:     "time",
	compound: true,
	units: []unit{
		{int64(time.Minute), 1, []string{"min", "m"}},
		{int64(time.Hour), 1, []string{"h"}},
		{int64(time.Second), 1, []string{"s"}},
		{int64(24 * time.Hour), 1, []string{"d", "day", "days"}},
		{int64(7 * 24 * time.Hour), 1, []string{"wk", "week", "weeks"}},
		{int64(time.Millisecond), 1, []string{"ms"}},
		{int64(time.Microsecond), 1, []string{"µs", "μs", "us"}},
		{int64(time.Nanosecond), 1, []string{"ns"}},
	},
	short: []form{
		{size: int64(time.Hour), places: 13, symbol: "h"},
	},
}

// Lasting returns a time as people write it, exact: "30 min", "100 min", "2 h", "4 h 30 min", "45 s". Below three hours what is
// not whole hours is in minutes, as processes are printed. A time that is not in whole seconds is written as time.Duration
// writes it, so that nothing is rounded away. Every time.Duration is valid; ParseLasting gives it back.
func Lasting(d time.Duration) string {
	if d%time.Second != 0 {
		return d.String()
	}
	sign := ""
	if d < 0 {
		sign, d = "-", -d
	}
	hours := d / time.Hour
	if d < inMinutes && d%time.Hour != 0 {
		hours = 0
	}
	minutes := (d - hours*time.Hour) / time.Minute
	var parts []string
	for _, part := range [...]struct {
		count time.Duration
		unit  string
	}{{hours, "h"}, {minutes, "min"}, {d % time.Minute / time.Second, "s"}} {
		if part.count != 0 {
			parts = append(parts, strconv.FormatInt(int64(part.count), 10)+" "+part.unit)
		}
	}
	if len(parts) == 0 {
		return "0 min"
	}
	return sign + strings.Join(parts, " ")
}

// inMinutes is up to where a time is counted in minutes.
const inMinutes = 3 * time.Hour

// ParseLasting reads what Lasting writes, "1 h 50 min" or "1h0m0.5s", and one unit alone, "100 min", "1 1/2 h", "36 h", "2 d", rounded once to the nearest
// nanosecond. Text in an unknown unit, without a unit or with a number that is not understood is a
// ParseError; a value past the range of time.Duration a RangeError. A clock such as "1:40" is a ParseError: ReadTyped names the choices.
func ParseLasting(s string) (time.Duration, error) {
	v, err := times.parse(s)
	return time.Duration(v), err
}
