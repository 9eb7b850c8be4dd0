package keeping_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain/internal/chain"
	"example.org/lakelarder/yield/coldchain/internal/logged"
	"example.org/lakelarder/yield/coldchain/keeping"
)

func TestStoreReportsComeBack(t *testing.T) {
	for storage, at := range map[keeping.Storage][]float64{
		keeping.InRefrigerator: {-1, 2, 3.8, 6}, keeping.InFreezer: {-35, -18, -10, 2}, keeping.InCupboard: {-2, 5, 18, 25, 40},
	} {
		for _, c := range at {
			r, err := keeping.CheckStore(storage, units.Celsius(c))
			require.NoError(t, err)
			logged.Back(t, r)
			worst := verdict.Met
			for _, l := range r.Lines {
				worst = verdict.Worst(worst, l.Verdict)
			}
			require.Equal(t, worst, r.Verdict)
			for _, f := range r.Findings {
				require.NotEmpty(t, f.Text(units.Metric))
				require.NoError(t, f.Citation.Check())
			}
		}
	}
}

func TestThawPlanJSONRefuses(t *testing.T) {
	logged.Unreadable(t, keeping.ThawPlan{Opened: true}, map[string]string{
		`{"medium": "40 °F"}`:                                                       "method",
		`{"method": "in the refrigerator"}`:                                         "medium",
		`{"method": "in the sun", "medium": "40 °F"}`:                               "method",
		`{"method": 1, "medium": "40 °F"}`:                                          "method",
		`{"method": "in the refrigerator", "medium": "40"}`:                         "medium",
		`{"method": "in the refrigerator", "medium": "40 °F", "shut": true}`:        "shut",
		`{"method": "in the refrigerator", "medium": "40 °F", "medium": "38 °F"}`:   "medium",
		`{"method": "in the refrigerator", "medium": "40 °F", "fishAbove41": 4}`:    "fishAbove41",
		`{"method": "in the refrigerator", "medium": "40 °F", "fishAbove41": null}`: "fishAbove41",
		`{"method": "in the refrigerator", "medium": "40 °F", "readyToEat": "yes"}`: "readyToEat",
	})
}

func TestGolden(t *testing.T) {
	times, err := keeping.Find(keeping.Smoked, keeping.InRefrigerator)
	require.NoError(t, err)
	logged.Golden(t, "keeping-times", times)
	r, err := keeping.Check(keeping.Smoked, keeping.InRefrigerator, units.Fahrenheit(38), 9*chain.Day)
	require.NoError(t, err)
	logged.Golden(t, "keeping-report", r)
	stored, err := keeping.CheckStore(keeping.InRefrigerator, units.Fahrenheit(43))
	require.NoError(t, err)
	logged.Golden(t, "keeping-store", stored)
	thaw, err := keeping.CheckThaw(keeping.ThawPlan{Method: keeping.ThawInRunningWater, Medium: units.Fahrenheit(72), SealedPack: true})
	require.NoError(t, err)
	logged.Golden(t, "keeping-thaw", thaw)
	cut, err := keeping.CheckPowerCut(keeping.InFreezer, false, 30*time.Hour)
	require.NoError(t, err)
	logged.Golden(t, "keeping-power-cut", cut)
	jar, err := keeping.CheckJar(units.State(chain.Month), keeping.LidBulging)
	require.NoError(t, err)
	logged.Golden(t, "keeping-jar", jar)
	frozen, err := lifeNamed(t, "lean fish (1986)").Audit(store(t, reading(0, -18), reading(chain.Month, -10)), 2*chain.Month)
	require.NoError(t, err)
	logged.Golden(t, "keeping-frozen", frozen)
}
