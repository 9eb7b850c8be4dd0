package season

import "strconv"

// Trip is one outing. Expected is what it brings on an ordinary day of fishing, Possible the best that may be hoped
// for; both count all anglers together.
type Trip struct {
	Week     int `wire:"required"` // from 0, the first week of the plan
	Days     int `wire:"required"` // of fishing, each with its daily limit; at most 7 in a week, all trips together
	Expected int `wire:"required"` // fish
	Possible int `wire:"required"` // fish
}

// catch is what the trip may bring home by the daily limit.
func (t Trip) catch(f Fishing, r Rule) int {
	caught := t.Expected
	if f == Possible {
		caught = t.Possible
	}
	return min(caught, r.Anglers*r.Daily*t.Days)
}

func (t Trip) check(n, first, weeks int) error {
	for _, c := range [...]struct {
		what           string
		got, low, high int
	}{
		{"week", t.Week, first, weeks - 1}, {"days", t.Days, 1, 7},
		{"possible catch", t.Possible, 0, most}, {"expected catch", t.Expected, 0, t.Possible},
	} {
		if c.got < c.low || c.got > c.high {
			return within("trip "+strconv.Itoa(n+1)+": "+c.what, c.got, c.low, c.high)
		}
	}
	return nil
}
