package units

import (
	"strconv"
	"strings"
	"time"
)

// Lasting returns a time as people write it, exact: "30 min", "100 min", "2 h", "4 h 30 min", "45 s". Below three hours what is
// not whole hours is in minutes, as processes are printed. A time that is not in whole seconds is written as time.Duration
// writes it, so that nothing is rounded away. Every time.Duration is valid.
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

// parseLasting reads what Lasting prints.
func parseLasting(s string) (time.Duration, error) {
	if !strings.Contains(s, " ") {
		return time.ParseDuration(s)
	}
	return time.ParseDuration(strings.ReplaceAll(strings.Replace(s, "min", "m", 1), " ", ""))
}

// parseCount reads a bare whole number.
func parseCount(s string) (Count, bool) {
	n, err := strconv.ParseInt(s, 10, 64)
	return Count(n), err == nil
}
