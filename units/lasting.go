package units

import (
	"strconv"
	"strings"
	"time"
)

// Lasting returns a time as people write it, exact: "30 min", "1 h 50 min", "36 h", "45 s". A time that is not in whole seconds is
// written as time.Duration writes it, so that nothing is rounded away. Every time.Duration is valid.
func Lasting(d time.Duration) string {
	if d%time.Second != 0 {
		return d.String()
	}
	sign := ""
	if d < 0 {
		sign, d = "-", -d
	}
	var parts []string
	for _, part := range [...]struct {
		count time.Duration
		unit  string
	}{{d / time.Hour, "h"}, {d % time.Hour / time.Minute, "min"}, {d % time.Minute / time.Second, "s"}} {
		if part.count != 0 {
			parts = append(parts, strconv.FormatInt(int64(part.count), 10)+" "+part.unit)
		}
	}
	if len(parts) == 0 {
		return "0 min"
	}
	return sign + strings.Join(parts, " ")
}
