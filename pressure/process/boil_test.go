package process_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
)

// USDA Complete Guide, rev. 2015, For Safety's Sake, p. iii.
func TestBoilBeforeEating(t *testing.T) {
	printed.Table(t, "process/boil-before-eating.csv").Each(t, func(t *testing.T, r printed.Row) {
		altitude, err := units.ParseLength(r.Text("altitude"))
		require.NoError(t, err)
		boil, c, err := process.BoilBeforeEating(altitude)
		require.NoError(t, err)
		require.Equal(t, minutes(r, "boil_min"), boil)
		require.NoError(t, c.Check())
		require.Equal(t, citation(t, r).Source, c.Source)
	})
}

func TestBoilBeforeEatingRefuses(t *testing.T) {
	for _, altitude := range []units.Length{-1, -units.Foot, -4_350 * units.Foot} {
		boil, c, err := process.BoilBeforeEating(altitude)
		require.ErrorIs(t, err, units.ErrRange)
		require.Zero(t, boil)
		require.True(t, c.IsZero())
	}
}

// Never less than the print's own reading, never more than a minute above it, and never less on higher ground.
func TestBoilBeforeEatingIsOnTheSafeSide(t *testing.T) {
	last := time.Duration(0)
	for altitude := units.Length(0); altitude <= 14_000*units.Foot; altitude += 50 * units.Foot {
		boil, _, err := process.BoilBeforeEating(altitude)
		require.NoError(t, err)
		whole := 10*time.Minute + time.Duration(altitude/(1_000*units.Foot))*time.Minute
		require.GreaterOrEqual(t, boil, whole)
		require.LessOrEqual(t, boil, whole+time.Minute)
		require.GreaterOrEqual(t, boil, last)
		last = boil
	}
}
