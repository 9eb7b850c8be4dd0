package season_test

import (
	"fmt"
	"math/rand"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/season"
)

// twoWeeks is a year in which fish is preserved after two weeks, two may be held fresh, and one is eaten each week. Any other
// order of eating leaves week 4 empty: the younger fish must be eaten in week 1, so that the older one is preserved in week 2 and
// makes room for two.
func twoWeeks() season.Year {
	y := season.Year{
		Rule:    season.Rule{Shape: season.ProcessedQuota, Anglers: 2, Daily: 1, Processed: 4},
		Fishing: season.Expected, Weeks: 5, Lag: 2, Fish: 3 * units.Kilogram, Weekly: 3 * units.Kilogram,
		Fresh: keeping(4 * season.Week), Keeps: keeping(6 * season.Week),
	}
	for week := 0; week < 3; week++ {
		y.Trips = append(y.Trips, season.Trip{Week: week, Days: 1, Expected: 3, Possible: 3})
	}
	return y
}

// Where fish is preserved after two weeks, which fish is eaten decides whether the year can be held.
func ExampleKeep_lag() {
	plan, err := season.Keep(twoWeeks())
	fmt.Println(plan, err)
	fmt.Println(plan.Order, plan.Proven, plan.Kept)
	for _, b := range plan.Begun {
		fmt.Println("week", b.Week, "begin one caught in week", b.Caught)
	}
	// Output:
	// feasible: 5 fish kept, at most 3 held <nil>
	// as listed true [2 1 2]
	// week 0 begin one caught in week 0
	// week 1 begin one caught in week 1
	// week 2 begin one caught in week 0
	// week 3 begin one caught in week 2
	// week 4 begin one caught in week 2
}

func TestSearchByHand(t *testing.T) {
	p := keep(t, twoWeeks())
	hold(t, twoWeeks(), p)
	require.True(t, p.Feasible())
	require.Empty(t, cmp.Diff([]int{2, 1, 2}, p.Kept))
	require.Equal(t, 15*units.Kilogram, p.Eaten)
	require.Equal(t, []season.Begun{
		{Week: 0, Caught: 0, Fish: 1}, {Week: 1, Caught: 1, Fish: 1}, {Week: 2, Caught: 0, Fish: 1, Preserved: true},
		{Week: 3, Caught: 2, Fish: 1}, {Week: 4, Caught: 2, Fish: 1, Preserved: true},
	}, p.Begun)
	share, _, err := season.Steady(twoWeeks())
	require.NoError(t, err)
	require.Equal(t, units.One, share)
}

// A year too large to be searched says that its plan is the best found and not the best there is.
func TestNotProvenIsSaid(t *testing.T) {
	rng := rand.New(rand.NewSource(5))
	found := 0
	for i := 0; i < 600; i++ {
		y := long(rng)
		if y.Lag == 1 {
			continue
		}
		p := keep(t, y)
		said := ids(p)
		if p.Proven {
			require.NotContains(t, said, cite.CautionID("season.not-proven"))
			continue
		}
		found++
		require.Contains(t, said, cite.CautionID("season.not-proven"))
		require.Contains(t, p.String(), "the largest supply found is")
		hold(t, y, p)
	}
	require.Greater(t, found, 3)
}

// Fish that may be kept and would be thrown away are let go, and a year that is short says so.
func TestLawfulFishAreSpared(t *testing.T) {
	y := twoDays()
	y.Keeps = keeping(2 * season.Week)
	p := keep(t, y)
	require.Equal(t, []int{2, 1, 1, 1, 2, 2}, p.Kept)
	require.Equal(t, 6*5-9, p.Spared, "ten may be held, five are caught on each trip, nine are eaten in time")
	require.Contains(t, ids(p), cite.CautionID("season.lawful-fish-spared"))
	y.Weeks = 3
	y.Trips = y.Trips[:2]
	require.NotContains(t, ids(keep(t, y)), cite.CautionID("season.lawful-fish-spared"), "nothing is missing")
}
