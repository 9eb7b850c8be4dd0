package smoke

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
)

// Whatever a recipe states: if it passes, it is hot smoke to 180 °F for 30 min, kept at 36 °F or below in an air pack for at most 14 days or frozen
// (Michigan 1997, items 01600579 and 01600580), in air hotter than its core.
func TestNothingBelowThePrintPasses(t *testing.T) {
	passed := 0
	for _, core := range []float64{145, 160, 179, 180, 205} {
		for _, air := range []float64{180, 200, 210, 230} {
			for _, hold := range []time.Duration{0, 29, 30, 90} {
				for _, length := range []time.Duration{10, 60, 12 * 60, 12*60 + 1} {
					for _, keep := range []float64{-5, 0, 1, 35, 36, 40} {
						for _, days := range []int{0, 10, 14, 15} {
							for pack := Pack(0); pack <= LowOxygenPack; pack++ {
								for method := Smoking(0); method <= ColdSmoked; method++ {
									a, err := Check(Claim{
										Smoking: method, Air: units.State(units.Fahrenheit(air)), Time: units.State(length * time.Minute), Core: units.State(units.Fahrenheit(core)),
										Hold: units.State(hold * time.Minute), Pack: pack, Keep: units.State(units.Fahrenheit(keep)), Days: units.State(days),
									})
									require.NoError(t, err)
									if !a.Verdict.Passes() {
										continue
									}
									passed++
									hot := method == HotSmoked && core >= 180 && hold >= 30 && air > core && length >= hold && length <= 12*60
									kept := keep <= 0 || keep <= 36 && (pack == AirPack && days <= 14 || pack == LowOxygenPack && days == 0)
									require.True(t, hot && kept, "%v %v %v %v %v %v %v %v", core, air, hold, length, keep, days, pack, method)
								}
							}
						}
					}
				}
			}
		}
	}
	require.Greater(t, passed, 100)
}
