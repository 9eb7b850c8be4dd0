package keeping_test

import (
	"testing"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain/internal/chain"
	"example.org/lakelarder/yield/coldchain/internal/logged"
	"example.org/lakelarder/yield/coldchain/keeping"
	"github.com/stretchr/testify/require"
)

// What fails is never told as the limit that it fails.
func TestThawByAHair(t *testing.T) {
	for celsius, want := range map[float64]string{
		5.02: "around the fish: 41.1 °F stated, at most 41 °F published, too warm by 0.1 F°",
		5.1:  "around the fish: 41.2 °F stated, at most 41 °F published, too warm by 0.2 F°",
	} {
		r, err := keeping.CheckThaw(keeping.ThawPlan{Method: keeping.ThawInRefrigerator, Medium: units.Celsius(celsius)})
		require.NoError(t, err)
		require.Equal(t, want, r.Findings[0].Text(units.US))
	}
	r, err := keeping.CheckThaw(keeping.ThawPlan{Method: keeping.ThawInRefrigerator, Medium: units.Celsius(5)})
	require.NoError(t, err)
	require.Empty(t, r.Findings)
	require.Equal(t, "41 °F", r.Lines[0].Planned.Text(units.US))
}

// A warmer medium, a longer time or a pack left shut never makes a plan better.
func TestThawSafeDirection(t *testing.T) {
	rank := map[verdict.Verdict]int{verdict.Met: 0, verdict.CannotTell: 1, verdict.NotMet: 2}
	for method := keeping.ThawInRefrigerator; method <= keeping.ThawOnCounter; method++ {
		for _, flags := range [][2]bool{{false, false}, {true, false}, {false, true}, {true, true}} {
			for _, sealed := range []bool{false, true} {
				check := func(medium float64, above time.Duration, opened bool) int {
					r, err := keeping.CheckThaw(keeping.ThawPlan{method, units.Fahrenheit(medium), units.State(above), sealed, opened, flags[0], flags[1]})
					require.NoError(t, err)
					return rank[r.Verdict]
				}
				for _, medium := range []float64{30, 38, 41, 60, 70} {
					for _, above := range []time.Duration{0, time.Hour, 4 * time.Hour} {
						base := check(medium, above, true)
						require.GreaterOrEqual(t, check(medium+1, above, true), base)
						require.GreaterOrEqual(t, check(medium, above+1, true), base)
						require.GreaterOrEqual(t, check(medium, above, false), base)
					}
				}
			}
		}
	}
}

func TestThawRefuses(t *testing.T) {
	for name, plan := range map[string]keeping.ThawPlan{
		"no method":       {Medium: units.Celsius(4)},
		"unknown method":  {Method: 5, Medium: units.Celsius(4)},
		"no medium":       {Method: keeping.ThawInRefrigerator},
		"a freezer":       {Method: keeping.ThawInRefrigerator, Medium: units.Celsius(-18)},
		"boiling":         {Method: keeping.ThawInRunningWater, Medium: units.Celsius(100)},
		"negative time":   {Method: keeping.ThawInRunningWater, Medium: units.Celsius(10), FishAbove41: units.State(-time.Hour)},
		"more than weeks": {Method: keeping.ThawInRunningWater, Medium: units.Celsius(10), FishAbove41: units.State(8 * chain.Day)},
	} {
		_, err := keeping.CheckThaw(plan)
		logged.Refused(t, err, name)
	}
}
