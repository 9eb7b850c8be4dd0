package season

import (
	"strconv"

	"example.org/lakelarder/units"
)

// Rule is a possession rule as the caller reads it in the local regulations. Every limit is one angler's and counts
// for each of the Anglers. Where a sub-limit holds for the fish that are planned, it is the limit to give.
type Rule struct {
	Shape      Shape `wire:"required"`
	Anglers    int   `wire:"required"` // who fish and keep their own limit
	Daily      int   `wire:"required"` // fish a day
	Possession int   // fish held at once: Everything and Unpreserved only
	Processed  int   // processed fish held at once: ProcessedQuota only
	Annual     int   // fish a year, held for the whole plan however long; zero where there is no such cap
}

// Stock is a number of fish held at once. A fish eaten in part counts whole, in the state it was in when it was
// begun; as a limit, zero is no limit.
type Stock struct {
	All       int
	Fresh     int
	Preserved int
}

// most is the largest count that a rule or a trip may state; it keeps all sums within an int of 32 bits.
const most = 10_000

func within(what string, got, low, high int) error {
	if got < low || got > high {
		return units.RangeError{What: what, Got: strconv.Itoa(got), Low: strconv.Itoa(low), High: strconv.Itoa(high)}
	}
	return nil
}

func (r Rule) check() error {
	if err := shapes.Check(r.Shape); err != nil {
		return err
	}
	possession, processed := [2]int{}, [2]int{}
	switch r.Shape {
	case Everything, Unpreserved:
		possession = [2]int{1, most}
	case ProcessedQuota:
		processed = [2]int{1, most}
	}
	for _, c := range []struct {
		what           string
		got, low, high int
	}{
		{"number of anglers", r.Anglers, 1, 1000},
		{"daily limit", r.Daily, 1, most},
		{"possession limit under the shape " + r.Shape.String(), r.Possession, possession[0], possession[1]},
		{"processed quota under the shape " + r.Shape.String(), r.Processed, processed[0], processed[1]},
		{"annual cap", r.Annual, 0, most},
	} {
		if err := within(c.what, c.got, c.low, c.high); err != nil {
			return err
		}
	}
	return nil
}

// limits are what all anglers together may hold.
func (r Rule) limits() Stock {
	switch r.Shape {
	case Everything:
		return Stock{All: r.Anglers * r.Possession}
	case OneDay:
		return Stock{All: r.Anglers * r.Daily}
	case ProcessedQuota:
		return Stock{All: r.Anglers * (r.Daily + r.Processed), Fresh: r.Anglers * r.Daily, Preserved: r.Anglers * r.Processed}
	}
	return Stock{Fresh: r.Anglers * r.Possession}
}
