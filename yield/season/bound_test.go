package season_test

import (
	"math/rand"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/season"
)

// A century of trips, preserved late under a quota, is planned in time: the search that stopped by its steps alone took a
// minute, and the limit only tells a search that has no bound.
func TestCenturyIsPlannedInTime(t *testing.T) {
	const longest = time.Minute
	for seed := int64(0); seed < 6; seed++ {
		rng := rand.New(rand.NewSource(seed))
		y := twoDays()
		y.Weeks, y.Trips = 5_300, nil
		y.Rule = season.Rule{Shape: season.ProcessedQuota, Anglers: 1, Daily: 1 + rng.Intn(3), Processed: 100 + rng.Intn(300)}
		for week := 0; week < y.Weeks; week++ {
			y.Trips = append(y.Trips, season.Trip{Week: week, Days: 1, Expected: 1 + rng.Intn(9), Possible: 10})
		}
		y.Weekly, y.Lag, y.Fresh.Time = units.Mass(1+rng.Intn(30))*units.Kilogram, 4, 5*season.Week
		start := time.Now()
		_, _, err := season.Steady(y)
		require.NoError(t, err)
		require.Less(t, time.Since(start), longest)
	}
}

// A state with a week before its beginning is held against no plan.
func TestPartedOfNoWeek(t *testing.T) {
	plan, err := season.Keep(twoDays())
	require.NoError(t, err)
	for _, week := range []int{-1, len(plan.Weeks), 1 << 30} {
		require.Empty(t, season.State{Weeks: []season.PastWeek{{Week: week, Kept: 3}}}.Parted(plan))
	}
	require.Len(t, season.State{Weeks: []season.PastWeek{{Week: -1}, {Week: 0, Kept: 3}}}.Parted(plan), 1)
}
