package season_test

import (
	"fmt"

	"github.com/shopspring/decimal"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/season"
)

var (
	onIce  = season.Keeping{Time: 2 * season.Week / 7, Citation: cite.Citation{Source: cite.FDAStorageChart, Where: "raw fish, refrigerator", Basis: cite.Read}}
	inJars = season.Keeping{Time: 365 * season.Week / 7, Citation: cite.Citation{Source: cite.USDAAnswerPage, Where: "canned fish, home canned", Basis: cite.Read}}
)

// twoDays is the worked case A: at most two days' catch held, everything counts, a fish a week for twenty weeks.
func twoDays() season.Year {
	y := season.Year{
		Rule:    season.Rule{Shape: season.Everything, Anglers: 1, Daily: 5, Possession: 10},
		Fishing: season.Expected, Weeks: 20, Lag: 1, Fish: 3 * units.Kilogram, Weekly: 3 * units.Kilogram, Fresh: onIce, Keeps: inJars,
	}
	for _, week := range []int{0, 1, 2, 3, 6, 9} {
		y.Trips = append(y.Trips, season.Trip{Week: week, Days: 1, Expected: 5, Possible: 5})
	}
	return y
}

func family() (season.Household, season.Want) {
	return season.Household{People: 4, Weeks: 52, Fish: 3400 * units.Gram}, season.Want{
		Name: "pints", Meals: units.One, Serving: 4 * units.Ounce, Pack: 400 * units.Gram, Served: 79 * units.Percent,
		Yield: 70 * units.Percent, Load: 9, Keeps: inJars,
	}
}

// A year that cannot be held under a limit of two days' catch.
func ExampleKeep() {
	plan, err := season.Keep(twoDays())
	fmt.Println(plan, err)
	fmt.Println(plan.Kept, plan.Peak.All, "of", plan.Limits.All)
	// Output:
	// infeasible: short 1 week, first in week 19; the largest feasible supply is 57.0 kg of round fish of 60.0 kg wanted, from 19 fish <nil>
	// [5 5 2 1 3 3] 10 of 10
}

func ExamplePlan_Feasible() {
	y := twoDays()
	y.Weeks = 19
	plan, _ := season.Keep(y)
	fmt.Println(plan.Feasible(), plan)
	// Output: true feasible: 19 fish kept, at most 10 held
}

func ExamplePlan_Fish() {
	plan, _ := season.Keep(twoDays())
	fmt.Println(plan.Fish(), "fish on", plan.Trips(), "trips")
	// Output: 19 fish on 6 trips
}

// In a short year the last trip can be spared.
func ExamplePlan_Trips() {
	y := twoDays()
	y.Weeks = 12
	plan, _ := season.Keep(y)
	fmt.Println(plan.Kept, plan.Trips())
	// Output: [5 5 2 0 0 0] 3
}

func ExamplePlan_Missing() {
	plan, _ := season.Keep(twoDays())
	fmt.Println(plan.Missing(), plan.Short)
	// Output: 3 kg [19]
}

func ExamplePlan_Oldest() {
	plan, _ := season.Keep(twoDays())
	fmt.Println("the oldest is eaten", plan.Oldest(), "weeks after the week of its catch")
	// Output: the oldest is eaten 12 weeks after the week of its catch
}

// How much of the plan may be smoked, where smoked fish keeps for two weeks?
func ExamplePlan_EatenWithin() {
	plan, _ := season.Keep(twoDays())
	fmt.Println(plan.EatenWithin(2*season.Week), "of", plan.Eaten)
	// Output: 18 kg of 57 kg
}

// What could be eaten every week of the year that cannot be held?
func ExampleSteady() {
	share, plan, err := season.Steady(twoDays())
	fmt.Println(share, err)
	fmt.Println(plan)
	// Output:
	// 90 % <nil>
	// feasible: 18 fish kept, at most 10 held
}

// A family of four, one meal of four ounces a week each, from pints.
func ExampleSize() {
	h, want := family()
	l, err := season.Size(h, want)
	s := l.Supplies[0]
	fmt.Println(units.Text(s.Need, units.Kilogram, 4), s.Containers, "jars in", s.Loads, "loads from", s.Fish, "fish", err)
	// Output: 23.5868 kg 75 jars in 9 loads from 13 fish <nil>
}

func ExampleCosts() {
	h, want := family()
	l, _ := season.Size(h, want)
	c, err := season.Costs(h, l.Supplies[0], season.Prices{
		Kilogram: decimal.RequireFromString("7"), Container: decimal.RequireFromString("0.40"), Load: decimal.RequireFromString("1"),
	}, 2)
	fmt.Println(c.Container, "a jar,", c.Meal, "a meal", err)
	// Output: 4.52 a jar, 1.63 a meal <nil>
}

// Which weeks does the canner run? A pint is filled whole, so what is over joins the next batch.
func ExampleCalendar() {
	h, want := family()
	l, _ := season.Size(h, want)
	y := twoDays()
	y.Weeks, y.Fish, y.Weekly = h.Weeks, h.Fish, l.Weekly
	plan, _ := season.Keep(y)
	batches, err := season.Calendar(plan, l)
	for _, b := range batches {
		fmt.Printf("week %d: %d fish, %d pints, %d loads\n", b.Week, b.Fish, b.Made[0].Containers, b.Made[0].Loads)
	}
	fmt.Println(plan, err)
	// Output:
	// week 1: 5 fish, 28 pints, 4 loads
	// week 2: 5 fish, 30 pints, 4 loads
	// week 7: 1 fish, 6 pints, 1 loads
	// week 10: 1 fish, 5 pints, 1 loads
	// infeasible: short 3 weeks, first in week 49; the largest feasible supply is 40.8 kg of round fish of 42.9 kg wanted, from 12 fish <nil>
}

func ExampleParseShape() {
	shape, err := season.ParseShape("processed quota")
	fmt.Println(shape, err)
	// Output: processed quota <nil>
}

// What only a secondary copy or memory vouches for says so.
func ExampleShape_Citation() {
	for s := season.Everything; s <= season.Unpreserved; s++ {
		fmt.Println(s, s.Citation().Source.Key(), s.Citation().Basis)
	}
	text, err := season.Unpreserved.MarshalText()
	fmt.Println(string(text), err)
	// Output:
	// everything WisconsinPossession read
	// one day CaliforniaPossession read
	// processed quota MichiganHouseBill5481 read
	// unpreserved AlaskaPossession5AAC recalled
	// unpreserved <nil>
}

func ExampleFishing() {
	fmt.Println(season.Expected, season.Possible)
	// Output: expected possible
}

func ExampleOrder() {
	fmt.Println(season.FreshFirst, season.OldestFirst)
	// Output: fresh first oldest first
}
