package conformance

import (
	"strconv"
	"time"

	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/season"
)

var seasonExempt = map[string]string{"Shape.Citation": sources}

func seasonGrid(r *results) {
	onIce := season.Keeping{Time: 48 * time.Hour, Citation: cite.Citation{Source: cite.FDAStorageChart, Where: "raw fish, refrigerator", Basis: cite.Read}}
	inJars := season.Keeping{Time: 365 * 24 * time.Hour, Citation: cite.Citation{Source: cite.USDAAnswerPage, Where: "canned fish, home canned", Basis: cite.Read}}
	want := season.Want{
		Name: "pints", Meals: units.One, Serving: 4 * units.Ounce, Pack: 400 * units.Gram, Served: 79 * units.Percent, Yield: 70 * units.Percent, Load: 9, Keeps: inJars,
	}
	prices := season.Prices{Kilogram: decimal.New(7, 0), Container: decimal.New(40, -2), Load: decimal.New(1, 0)}
	for people := 1; people <= 5; people++ {
		h := season.Household{People: people, Weeks: 26 + 6*people, Fish: 3_400*units.Gram + units.Mass(people)}
		larders := r.sweep("Size", season.Size, these(h), these(want))
		for _, larder := range larders {
			l := larder.(season.Larder)
			r.sweep("Costs", season.Costs, these(h), these(l.Supplies[0]), these(prices), these(int32(2)))
			for shape := season.Everything; shape <= season.Unpreserved; shape++ {
				for order := int64(1); order <= 3; order++ {
					rule := season.Rule{Shape: shape, Anglers: 1 + people/3, Daily: 5}
					switch shape {
					case season.Everything, season.Unpreserved:
						rule.Possession = 10 + people
					case season.ProcessedQuota:
						rule.Processed = 5 + people
					}
					y := season.Year{
						Rule:    rule,
						Fishing: season.Fishing(1 + order%2), Weeks: h.Weeks, Lag: 1, Fish: h.Fish, Weekly: l.Weekly, Fresh: onIce, Keeps: inJars,
					}
					for week := int(order); week < h.Weeks-2; week += 1 + int(order*5)%7 {
						y.Trips = append(y.Trips, season.Trip{Week: week, Days: 1, Expected: 3 + week%3, Possible: 5})
					}
					plans := yearGrid(r, y, l)
					if order == 1 {
						ledgerGrid(r, y, l, plans, int64(people))
					}
				}
			}
		}
	}
}

// ledgerGrid has catches that become jars and bags, eaten week by week.
func ledgerGrid(r *results, y season.Year, l season.Larder, plans []any, seed int64) {
	start, err := season.ParseDay("2031-04-07")
	require.NoError(r.t, err)
	ledger := season.Ledger{
		Rule: y.Rule, Unsealed: season.UntilThrownOut, Start: start, Fresh: y.Fresh, Products: []season.Product{{Name: "pints", Keeps: y.Keeps, Quality: true}},
	}
	for week := int64(0); week < 6; week++ {
		on, number := start+season.Day(7*week), strconv.FormatInt(week, 10)
		ledger.Entries = append(ledger.Entries,
			season.Entry{Day: on, Event: season.Kept, Batch: "C" + number, Count: 2, Round: 6*units.Kilogram + units.Mass(seed*week)*units.Gram},
			season.Entry{Day: on + 1, Event: season.Canned, Batch: "P" + number, From: "C" + number, Taken: 2, Count: 9, Product: "pints", Audit: units.State(verdict.Met)},
			season.Entry{Day: on + 2, Event: season.Sealed, Batch: "P" + number, Count: 8},
			season.Entry{Day: on + 3, Event: season.Eaten, Batch: "P" + number, Count: int(1 + (seed+week)%7)},
		)
	}
	days := stepped(int64(start)+6, int64(start)+48, 21, season.Day(1))
	states := r.sweep("Audit", season.Audit, these(ledger), days)
	r.sweep("State.YearFrom", season.State.YearFrom, states, these(y))
	r.sweep("State.ToMake", season.State.ToMake, states, these(l))
	r.sweep("State.Parted", season.State.Parted, states, plans)
}

func yearGrid(r *results, y season.Year, l season.Larder) []any {
	r.sweep("Steady", season.Steady, these(y))
	plans := r.sweep("Keep", season.Keep, these(y))
	r.sweep("Calendar", season.Calendar, plans, these(l))
	r.sweep("Plan.Feasible", season.Plan.Feasible, plans)
	r.sweep("Plan.Fish", season.Plan.Fish, plans)
	r.sweep("Plan.Trips", season.Plan.Trips, plans)
	r.sweep("Plan.Missing", season.Plan.Missing, plans)
	r.sweep("Plan.Oldest", season.Plan.Oldest, plans)
	r.sweep("Plan.EatenWithin", season.Plan.EatenWithin, plans, stepped(3, 30, 9, season.Week))
	return plans
}
