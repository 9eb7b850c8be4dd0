package season

import (
	"strconv"
	"time"

	"example.org/lakelarder/units"
)

// Day is a date without a clock and without a zone, as people write it on a lid. A later Day is the greater, and the
// difference of two is whole days. The zero Day is not stated.
type Day int32

const (
	epoch    Day = 719_163 // 1970-01-01, counted from 0001-01-01 as day 1
	firstDay Day = 693_596 // 1900-01-01
	lastDay  Day = 803_168 // 2199-12-31

	secondsInDay = 24 * 60 * 60
)

// ParseDay reads a date as String writes it: "2026-07-14". Anything else, a day that the calendar does not have, and a
// year before 1900 or after 2199 is a units.ParseError.
func ParseDay(s string) (Day, error) {
	reason := "expected a day of the calendar, year first, such as 2026-07-14"
	if len(s) == len(time.DateOnly) {
		if t, err := time.Parse(time.DateOnly, s); err == nil {
			d := Day(t.Unix()/secondsInDay) + epoch
			if firstDay <= d && d <= lastDay {
				return d, nil
			}
			reason = "expected a year from 1900 to 2199"
		}
	}
	return 0, units.ParseError{Quantity: "date", Text: s, Reason: reason}
}

// String is the date as ParseDay reads it; "not stated" for the zero Day, and a day that no ledger may hold with its
// number.
func (d Day) String() string {
	switch {
	case d == 0:
		return "not stated"
	case d < firstDay || d > lastDay:
		return "day(" + strconv.Itoa(int(d)) + ")"
	}
	return time.Unix(int64(d-epoch)*secondsInDay, 0).UTC().Format(time.DateOnly)
}

// MarshalText is String as bytes, empty when the day is not stated; a day that no ledger may hold is a
// units.RangeError.
func (d Day) MarshalText() ([]byte, error) {
	if d == 0 {
		return []byte{}, nil
	}
	if err := d.check("day"); err != nil {
		return nil, err
	}
	return []byte(d.String()), nil
}

// UnmarshalText is ParseDay, and the empty text is a day that is not stated. On an error the day stays as it was.
func (d *Day) UnmarshalText(text []byte) error {
	if len(text) == 0 {
		*d = 0
		return nil
	}
	read, err := ParseDay(string(text))
	if err == nil {
		*d = read
	}
	return err
}

func (d Day) check(what string) error {
	switch {
	case d == 0:
		return units.UnsetError{What: what}
	case d < firstDay || d > lastDay:
		return units.RangeError{What: what, Got: d.String(), Low: firstDay.String(), High: lastDay.String()}
	}
	return nil
}

// keepsUntil is the last day that is surely within a keeping time from a day on, whatever the hours: what is made on a
// day and keeps for two days is within its time on that day and the next. The day before it is made where it keeps for
// less than a day.
func (d Day) keepsUntil(keeping time.Duration) Day {
	return min(lastDay, d+Day(min(keeping/(24*time.Hour), time.Duration(lastDay)))-1)
}
