package season

import (
	"slices"
	"strconv"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

// Start is what is there when a plan begins. The zero Start is an empty shelf and a cap not yet used. State.YearFrom
// makes one of a ledger.
type Start struct {
	Holdings []Holding
	Used     int // fish kept before, which count against the annual cap
}

// Holding is fish of one catch that is there when a plan begins. Fish begun count whole; Each is what is left of each
// of them, on average, in round mass, and none where they are held and are not food. Last is the last week in which
// they are eaten.
type Holding struct {
	Caught    int  `wire:"required"` // the week of the catch, below 0
	Last      int  `wire:"required"` // below 0 where they are not food
	Fish      int  `wire:"required"`
	Preserved bool // else whole and fresh
	Each      units.Mass
}

// MarshalJSON writes the start as an object of its fields.
func (s Start) MarshalJSON() ([]byte, error) { return wire.Marshal(s) }

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else, a figure that is missing too, is a
// units.FieldError.
func (s *Start) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, s) }

// mostHeld is the most fish that a plan may begin with, and that may have been kept before it.
const mostHeld = 1_000_000

func (s Start) check() error {
	if err := within("fish kept before the plan", s.Used, 0, mostHeld); err != nil {
		return err
	}
	sum := 0
	for i, h := range s.Holdings {
		what := "holding " + strconv.Itoa(i+1) + ": "
		for _, c := range [...]struct {
			what           string
			got, low, high int
		}{
			{"week of the catch", h.Caught, -century, -1}, {"last week", h.Last, -century, 2 * century},
			{"fish", h.Fish, 1, mostHeld}, {"fish of all holdings", sum + h.Fish, 1, mostHeld},
		} {
			if c.got < c.low || c.got > c.high {
				return within(what+c.what, c.got, c.low, c.high)
			}
		}
		greatest := min(units.Tonne/10, 400*units.Tonne/units.Mass(h.Fish))
		if err := units.Check(what+"mass of each", h.Each, 0, greatest); err != nil {
			return err
		}
		sum += h.Fish
	}
	return nil
}

// food are the holdings that may be eaten, in the order of eating.
func (s Start) food() []Holding {
	var all []Holding
	for _, h := range s.Holdings {
		if h.Each > 0 && h.Last >= 0 {
			all = append(all, h)
		}
	}
	slices.SortFunc(all, func(a, b Holding) int { return slices.Compare(a.order(), b.order()) })
	return all
}

// order is by what holdings are ordered: preserved fish by its last week, then fresh fish by its catch.
func (h Holding) order() []int64 {
	if h.Preserved {
		return []int64{0, int64(h.Last), int64(h.Caught), int64(h.Each), int64(h.Fish)}
	}
	return []int64{1, int64(h.Caught), int64(h.Last), int64(h.Each), int64(h.Fish)}
}

// shelf is the shelf with which a plan begins. What is held and is not food counts, and is never eaten.
func (y Year) shelf() shelf {
	s := shelf{lots: make([]lot, 0, len(y.Start.Holdings)+len(y.Trips))}
	for _, h := range y.Start.Holdings {
		s.kept += h.Fish
		if h.Preserved {
			s.left += h.Fish
		}
	}
	s.before = s.kept - y.Start.Used
	for _, h := range y.Start.food() {
		l := lot{week: h.Caught, until: h.Last, each: h.Each, there: true}
		mass := h.Each * units.Mass(h.Fish)
		if s.food += mass; h.Preserved {
			l.preserved = h.Fish
		} else {
			l.fresh, s.raw = h.Fish, s.raw+mass
		}
		s.lots = append(s.lots, l)
	}
	return s
}

// even reports whether what is there is as what a plan has in the midst of it: whole fish of the mean mass that keep
// as long as others do. Only then is it known which choice lets the most be eaten.
func (y Year) even() bool {
	for i, h := range y.Start.Holdings {
		if h.Each != y.Fish || h.Last != h.Caught+y.keeps() {
			return false
		}
		for _, other := range y.Start.Holdings[:i] {
			if other.Caught == h.Caught {
				return false
			}
		}
	}
	return true
}

// largest is the mass of the largest fish.
func (y Year) largest() units.Mass {
	most := y.Fish
	for _, h := range y.Start.Holdings {
		most = max(most, h.Each)
	}
	return most
}

// oldest is how many weeks before the plan the oldest fish was caught.
func (s Start) oldest() int {
	oldest := 0
	for _, h := range s.Holdings {
		oldest = max(oldest, -h.Caught)
	}
	return oldest
}

// throw takes from the shelf what was there and has passed its keeping time, or waits for room longer than fresh fish
// keeps, and returns its mass.
func (s *shelf) throw(week, waits int) units.Mass {
	var thrown units.Mass
	for i := range s.lots {
		l := &s.lots[i]
		if !l.there {
			break
		}
		fresh, preserved := 0, 0
		if week > l.until {
			fresh, preserved = l.fresh, l.preserved
		} else if week-l.week > waits {
			fresh = l.fresh
		}
		l.fresh -= fresh
		l.preserved -= preserved
		s.done += fresh + preserved
		s.left += fresh
		s.raw -= l.each * units.Mass(fresh)
		thrown += l.each * units.Mass(fresh+preserved)
	}
	if s.open > 0 && s.openThere && (week > s.openUntil || s.openFresh && week-s.openWeek > waits) {
		thrown += s.open
		s.done++
		if s.openFresh {
			s.left++
			s.raw -= s.open
		}
		s.open = 0
	}
	s.food -= thrown
	return thrown
}
