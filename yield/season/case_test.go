package season_test

import (
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/season"
)

func keeping(t time.Duration) season.Keeping {
	return season.Keeping{Time: t, Citation: cite.Citation{Where: "set by the test", Basis: cite.Practice}}
}

func ints(t *testing.T, text string) []int {
	t.Helper()
	var all []int
	for _, word := range strings.Fields(text) {
		n, err := strconv.Atoi(word)
		require.NoError(t, err)
		all = append(all, n)
	}
	return all
}

func optional(r printed.Row, col string) int {
	if !r.Has(col) {
		return 0
	}
	return int(r.Int(col))
}

// yearOf is the year of a row of cases.csv: whole fish of a kilogram, and nothing that spoils.
func yearOf(t *testing.T, r printed.Row) season.Year {
	t.Helper()
	shape, err := season.ParseShape(r.Text("shape"))
	require.NoError(t, err)
	y := season.Year{
		Fishing: season.Expected,
		Rule: season.Rule{
			Shape: shape, Anglers: int(r.Int("anglers")), Daily: int(r.Int("daily_limit_fish")),
			Possession: optional(r, "possession_limit_fish"), Processed: optional(r, "processed_quota_fish"),
		},
		Weeks: int(r.Int("horizon_weeks")), Lag: int(r.Int("lag_weeks")),
		Fish: units.Kilogram, Weekly: units.Mass(r.Int("eaten_per_week_fish")) * units.Kilogram,
		Fresh: keeping(100 * season.Week), Keeps: keeping(100 * season.Week),
	}
	catch := ints(t, r.Text("possible_catch_fish"))
	for i, week := range ints(t, r.Text("trip_weeks")) {
		y.Trips = append(y.Trips, season.Trip{Week: week, Days: 1, Expected: catch[i], Possible: catch[i]})
	}
	return y
}

// TestCases: the worked cases, season by season.
func TestCases(t *testing.T) {
	printed.Table(t, "season/cases.csv").Each(t, func(t *testing.T, r printed.Row) {
		plan, err := season.Keep(yearOf(t, r))
		require.NoError(t, err)
		require.Empty(t, cmp.Diff(ints(t, r.Text("kept_fish")), plan.Kept))
		require.EqualValues(t, r.Int("kept_total_fish"), plan.Fish())
		require.EqualValues(t, r.Int("peak_fish"), plan.Peak.All)
		printed.Within(t, r, "eaten_total_fish", units.In(plan.Eaten, units.Kilogram, 6))
		require.Len(t, plan.Short, int(r.Int("weeks_short")))
		require.False(t, plan.Feasible())
		require.EqualValues(t, r.Int("feasible_keep_vectors"), enumerate(yearOf(t, r)).vectors)
	})
}

// TestCaseWeeks: the same, week by week.
func TestCaseWeeks(t *testing.T) {
	plans := map[string]season.Plan{}
	for _, r := range printed.Table(t, "season/cases.csv") {
		plan, err := season.Keep(yearOf(t, r))
		require.NoError(t, err)
		plans[r.Text("case")] = plan
	}
	printed.Table(t, "season/weeks.csv").Each(t, func(t *testing.T, r printed.Row) {
		plan := plans[r.Text("case")]
		w := plan.Weeks[r.Int("week")]
		require.Equal(t, season.FreshFirst, plan.Order)
		for col, got := range map[string]int{
			"kept_fish": w.Kept, "stock_before_eating_fish": w.Held.All, "fresh_end_fish": w.End.Fresh,
			"preserved_end_fish": w.End.Preserved, "stock_end_fish": w.End.All,
		} {
			printed.Within(t, r, col, decimal.NewFromInt(int64(got)))
		}
		require.Equal(t, optional(r, "catch_possible_fish"), w.Caught)
	})
}

// TestShapes: every shape of the code is in the copy of published rules, and every printed rule has a shape of the code.
func TestShapes(t *testing.T) {
	seen := map[season.Shape]bool{}
	for _, r := range printed.Table(t, "season/possession-rules.csv") {
		shape, err := season.ParseShape(r.Text("shape"))
		require.NoError(t, err, r)
		c := shape.Citation()
		if c.Source.Key() == r.Text("source") && c.Where == r.Text("place") && c.Basis.String() == r.Text("basis") {
			seen[shape] = true
		}
	}
	for s := season.Everything; s <= season.Unpreserved; s++ {
		require.True(t, seen[s], "%s is cited from no printed row", s)
		require.NoError(t, s.Citation().Check())
	}
	require.True(t, season.Unpreserved.Citation().Unverified())
	require.True(t, season.Shape(9).Citation().IsZero())
}
