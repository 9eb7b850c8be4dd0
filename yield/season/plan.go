package season

import (
	"fmt"
	"strings"
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Plan is one way through the Year: the one that eats the most where it is Proven, else the best that was found.
// Slices are the plan's own.
type Plan struct {
	Year   Year
	Weeks  []PlannedWeek
	Kept   []int        // fish to keep, by trip
	Ages   []units.Mass // what is eaten, by its age in weeks
	Short  []int        // the weeks in which there is less to eat than wanted
	Eaten  units.Mass
	Left   units.Mass // on the shelf at the end
	Thrown units.Mass // of what was there at the start: past its keeping time before it is eaten
	Order  Order
	Begun  []Begun // the fish to begin, in their order, where the Order is AsListed
	Proven bool    // whether no other choice of fish to keep and of fish to begin lets more be eaten
	Spared int     // fish that the limits let a trip keep, and that would not be eaten in time
	Peak   Stock   // the most held in any week, before eating; each of its three counts by itself
	Limits Stock   // of all anglers together; zero is no limit

	Cautions []cite.Caution
}

// MarshalJSON writes the plan as an object of its fields.
func (p Plan) MarshalJSON() ([]byte, error) { return wire.Marshal(p) }

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else is a units.FieldError.
func (p *Plan) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, p) }

// PlannedWeek is one week of a Plan, in the order of events.
type PlannedWeek struct {
	Moved     int        // fish preserved
	Preserved units.Mass // their mass, without what was eaten of them
	Caught    int        // fish that the trips of the week may bring home by the daily limit
	Kept      int        `wire:"always"` // fish kept of them
	Held      Stock      // before eating: what a warden would count
	Thrown    units.Mass
	Eaten     units.Mass `wire:"always"`
	End       Stock      // after eating
}

// Begun are fish of one week's catch that are begun in a week.
type Begun struct {
	Week      int `wire:"always"`
	Caught    int `wire:"always"` // the week of their catch
	Fish      int
	Preserved bool // when begun
}

func (p *Plan) add(week int) {
	w := p.Weeks[week]
	p.Eaten += w.Eaten
	p.Thrown += w.Thrown
	if w.Eaten < p.Year.Weekly {
		p.Short = append(p.Short, week)
	}
	p.Peak.All = max(p.Peak.All, w.Held.All)
	p.Peak.Fresh = max(p.Peak.Fresh, w.Held.Fresh)
	p.Peak.Preserved = max(p.Peak.Preserved, w.Held.Preserved)
}

// Feasible reports whether there is enough to eat in every week; of no plan, the zero Plan, it is false.
func (p Plan) Feasible() bool { return len(p.Weeks) > 0 && len(p.Short) == 0 }

// Fish returns how many fish are kept on all trips together.
func (p Plan) Fish() int {
	n := 0
	for _, k := range p.Kept {
		n += k
	}
	return n
}

// Trips returns on how many trips a fish is kept; the others can be spared.
func (p Plan) Trips() int {
	n := 0
	for _, k := range p.Kept {
		if k > 0 {
			n++
		}
	}
	return n
}

// Missing returns the round mass that is wanted and not there, all weeks together; zero when the plan is feasible.
func (p Plan) Missing() units.Mass { return p.Year.Weekly*units.Mass(len(p.Weeks)) - p.Eaten }

// Oldest returns the greatest age in weeks at which anything is eaten; 1 is the week after that of the catch.
func (p Plan) Oldest() int {
	oldest := 0
	for age, m := range p.Ages {
		if m > 0 {
			oldest = age
		}
	}
	return oldest
}

// EatenWithin returns the round mass that is eaten no older than a keeping time, reckoned from the first day of the
// week of the catch to the last of the week of eating: the most of this plan that may be smoked or frozen where that
// keeps so long. Less than a week is nothing.
func (p Plan) EatenWithin(keeping time.Duration) units.Mass {
	var sum units.Mass
	for age, m := range p.Ages {
		if age <= (Keeping{Time: keeping}).weeks() {
			sum += m
		}
	}
	return sum
}

// String says whether the year can be held; if not, how many weeks are short, the first of them, and the most that
// can be eaten. Week 0 is the first. "no plan" for the zero Plan.
func (p Plan) String() string {
	if len(p.Weeks) == 0 {
		return "no plan"
	}
	var b strings.Builder
	if p.Feasible() {
		fmt.Fprintf(&b, "feasible: %d fish kept, at most %d held", p.Fish(), p.Peak.All)
	} else {
		weeks := "weeks"
		if len(p.Short) == 1 {
			weeks = "week"
		}
		supply := "largest feasible supply"
		if !p.Proven {
			supply = "largest supply found"
		}
		fmt.Fprintf(&b, "infeasible: short %d %s, first in week %d; the %s is %s of round fish of %s wanted, from %d fish",
			len(p.Short), weeks, p.Short[0], supply, units.Text(p.Eaten, units.Kilogram, 1), units.Text(p.Eaten+p.Missing(), units.Kilogram, 1), p.Fish())
	}
	return b.String()
}
