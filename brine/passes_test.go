package brine

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
)

// Whatever a recipe states: if it passes, its water phase salt was measured, at 3.5 % (FDA guide, p. 260, and Torry for every pack);
// it lay at or below 38 °F (1 NYCRR 262.5(a)), a brine of at most 4 h at or below 60 °F (Michigan R 285.569.5(2)); and by either of its figures it has
// 30 g of salt to the kg (Foods 9:1048, table 2).
func TestNothingBelowThePrintPasses(t *testing.T) {
	passed := 0
	for n := 0; n < 3*3*3; n++ {
		method, smoked, pack := Method(n%3), Smoking(n/3%3), Pack(n/9)
		for _, measured := range []units.Ratio{0, 25, 30, 34, 35, 60} {
			for _, f := range []float64{36, 38, 39, 60, 61} {
				for _, hours := range []time.Duration{2, 4, 5, 48} {
					for _, dose := range []units.Ratio{20, 30, 31, 250, 333} {
						for _, salt := range []units.Mass{10, 30, 300} {
							c := Claim{Method: method, Smoked: smoked, Pack: pack, Temperature: units.State(units.Fahrenheit(f)), Time: units.State(hours * time.Hour)}
							c.Thickness, c.Faces, c.Loss = units.State(units.Inch/2), TwoFaces, units.State(20*units.Percent)
							if measured > 0 {
								c.WaterPhaseSalt = units.State(measured * units.PerMille)
							}
							if method == WetBrined {
								c.Strength, c.Salt, c.Water = units.State(dose*units.PerMille), units.State(salt*units.Gram), units.State(units.Litre)
							} else {
								c.SaltToFish, c.Salt, c.Fish = units.State(dose*units.PerMille), units.State(salt*units.Gram), units.State(units.Kilogram)
							}
							a, err := Check(c)
							require.NoError(t, err)
							if !a.Verdict.Passes() {
								continue
							}
							passed++
							limit := 35 * units.PerMille
							cold := f <= 38 || method == WetBrined && hours <= 4 && f <= 60
							salty := dose >= 30 && salt >= 30
							if method == WetBrined {
								salty = dose >= 70 && salt >= 70
							}
							require.True(t, measured > 0 && measured*units.PerMille >= limit && cold && salty, "%+v", c)
						}
					}
				}
			}
		}
	}
	require.Greater(t, passed, 100)
}
