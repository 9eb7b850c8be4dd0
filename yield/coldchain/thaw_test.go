package coldchain

import (
	"testing"
	"time"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"github.com/stretchr/testify/require"
)

// Both ways. Sources: see the rows.
func TestThawRows(t *testing.T) {
	rows := printed.Table(t, "coldchain/thawing.csv")
	require.Len(t, thawRows, len(rows))
	for i, r := range rows {
		row := thawRows[i]
		require.Equal(t, r.Text("what"), row.what)
		require.Equal(t, fahrenheit(t, r, "at_most_f"), row.atMost)
		if r.Has("hours_above_41f") {
			require.Equal(t, hours(t, r, "hours_above_41f"), row.allowed)
		}
		require.Equal(t, provenance(r), provenanceOf(row.citation))
		require.NoError(t, row.citation.Check())
	}
}

func TestCheckThaw(t *testing.T) {
	above := func(d time.Duration) units.Stated[time.Duration] { return units.State(d) }
	f := units.Fahrenheit
	for name, c := range map[string]struct {
		plan ThawPlan
		want Verdict
	}{
		"refrigerator at 41":              {ThawPlan{Method: ThawInRefrigerator, Medium: f(41)}, Within},
		"refrigerator a quantum over":     {ThawPlan{Method: ThawInRefrigerator, Medium: f(41).Add(1)}, Exceeded},
		"refrigerator at 5 °C, or 41 °F":  {ThawPlan{Method: ThawInRefrigerator, Medium: units.Celsius(5)}, Within},
		"refrigerator, fish at 41":        {ThawPlan{Method: ThawInRefrigerator, Medium: f(40), FishAbove41: above(0)}, Within},
		"refrigerator, fish warmer":       {ThawPlan{Method: ThawInRefrigerator, Medium: f(40), FishAbove41: above(1)}, Exceeded},
		"sealed and opened":               {ThawPlan{Method: ThawInRefrigerator, Medium: f(38), SealedPack: true, Opened: true}, Within},
		"sealed and shut":                 {ThawPlan{Method: ThawInRefrigerator, Medium: f(34), SealedPack: true}, Exceeded},
		"water at 70, 4 h":                {ThawPlan{Method: ThawInRunningWater, Medium: f(70), FishAbove41: above(4 * time.Hour)}, Within},
		"water at 70, over 4 h":           {ThawPlan{Method: ThawInRunningWater, Medium: f(70), FishAbove41: above(4*time.Hour + 1)}, Exceeded},
		"water over 70":                   {ThawPlan{Method: ThawInRunningWater, Medium: f(70).Add(1), FishAbove41: above(time.Hour)}, Exceeded},
		"water, time not stated":          {ThawPlan{Method: ThawInRunningWater, Medium: f(60)}, CannotTell},
		"smoked in water, not warmed":     {ThawPlan{Method: ThawInRunningWater, Medium: f(60), FishAbove41: above(0), ReadyToEat: true}, Within},
		"smoked in water, warmed":         {ThawPlan{Method: ThawInRunningWater, Medium: f(60), FishAbove41: above(1), ReadyToEat: true}, Exceeded},
		"smoked in water, not stated":     {ThawPlan{Method: ThawInRunningWater, Medium: f(60), ReadyToEat: true}, CannotTell},
		"shut and not stated":             {ThawPlan{Method: ThawInRunningWater, Medium: f(60), SealedPack: true}, Exceeded},
		"still water":                     {ThawPlan{Method: ThawInStillWater, Medium: f(35), FishAbove41: above(0)}, Exceeded},
		"counter":                         {ThawPlan{Method: ThawOnCounter, Medium: f(68), FishAbove41: above(time.Hour)}, Exceeded},
		"for smoking at 38":               {ThawPlan{Method: ThawInRefrigerator, Medium: f(38), ForSmoking: true}, Within},
		"for smoking at 39":               {ThawPlan{Method: ThawInRefrigerator, Medium: f(39), ForSmoking: true}, CannotTell},
		"for smoking, warmed":             {ThawPlan{Method: ThawInRunningWater, Medium: f(60), FishAbove41: above(time.Minute), ForSmoking: true}, Exceeded},
		"for smoking, water, not stated":  {ThawPlan{Method: ThawInRunningWater, Medium: f(60), ForSmoking: true}, CannotTell},
		"for smoking, warmed afterwards":  {ThawPlan{Method: ThawInRunningWater, Medium: f(36), FishAbove41: above(3 * time.Hour), ForSmoking: true}, Exceeded},
		"for smoking, cold running water": {ThawPlan{Method: ThawInRunningWater, Medium: f(37), FishAbove41: above(0), ForSmoking: true}, Within},
	} {
		r, err := CheckThaw(c.plan)
		require.NoError(t, err, name)
		require.Equal(t, c.want, r.Verdict, "%s: %+v", name, r.Lines)
		require.NotEmpty(t, r.Cautions)
		if c.plan.SealedPack {
			require.Contains(t, r.Cautions, vacuumAt38)
		}
	}
}

// What fails is never told as the limit that it fails.
func TestThawByAHair(t *testing.T) {
	for celsius, want := range map[float64]string{5.02: "above it by less than 0.1 °F", 5.1: "41.2 °F", 5: "41.0 °F"} {
		r, err := CheckThaw(ThawPlan{Method: ThawInRefrigerator, Medium: units.Celsius(celsius)})
		require.NoError(t, err)
		require.Equal(t, want, r.Lines[0].Planned)
	}
}

// A warmer medium, a longer time or a pack left shut never makes a plan better.
func TestThawSafeDirection(t *testing.T) {
	rank := map[Verdict]int{Within: 0, CannotTell: 1, Exceeded: 2}
	for method := ThawInRefrigerator; method <= ThawOnCounter; method++ {
		for _, flags := range [][2]bool{{false, false}, {true, false}, {false, true}, {true, true}} {
			for _, sealed := range []bool{false, true} {
				check := func(medium float64, above time.Duration, opened bool) int {
					r, err := CheckThaw(ThawPlan{method, units.Fahrenheit(medium), units.State(above), sealed, opened, flags[0], flags[1]})
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
	for name, plan := range map[string]ThawPlan{
		"no method":       {Medium: units.Celsius(4)},
		"unknown method":  {Method: 5, Medium: units.Celsius(4)},
		"no medium":       {Method: ThawInRefrigerator},
		"a freezer":       {Method: ThawInRefrigerator, Medium: units.Celsius(-18)},
		"boiling":         {Method: ThawInRunningWater, Medium: units.Celsius(100)},
		"negative time":   {Method: ThawInRunningWater, Medium: units.Celsius(10), FishAbove41: units.State(-time.Hour)},
		"more than weeks": {Method: ThawInRunningWater, Medium: units.Celsius(10), FishAbove41: units.State(8 * day)},
	} {
		_, err := CheckThaw(plan)
		require.ErrorIs(t, err, units.ErrRange, name)
	}
	require.Equal(t, "unknown method", ThawMethod(9).String())
	require.Equal(t, "no method", ThawMethod(0).String())
}
