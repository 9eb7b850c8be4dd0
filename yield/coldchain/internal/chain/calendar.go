package chain

import "time"

// The calendar of the printed times.
const (
	Day   = 24 * time.Hour
	Month = 30 * Day // counted short
	Year  = 365 * Day
)
