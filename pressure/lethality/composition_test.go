package lethality_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/pressure/lethality"
	"example.org/lakelarder/units"
)

// Both ways: each row in use is in the library with its digits, and the library has no other.
func TestCoefficientsAreThePrintedOnes(t *testing.T) {
	have := lethality.Coefficients()
	for _, r := range printed.Table(t, "lethality/choi-okos.csv") {
		key := r.Text("component") + ", " + r.Text("property")
		row, ok := have[key]
		if r.Text("used") == "no" {
			require.NotEqual(t, row, [3]float64{r.Float("c0"), r.Float("c1_per_c"), r.Float("c2_per_c2")}, r.String())
			continue
		}
		require.True(t, ok, key)
		require.Equal(t, [3]float64{r.Float("c0"), r.Float("c1_per_c"), r.Float("c2_per_c2")}, row, r.String())
		delete(have, key)
	}
	require.Empty(t, have)
}

func TestFishProperties(t *testing.T) {
	printed.Table(t, "lethality/fish.csv").Each(t, func(t *testing.T, r printed.Row) {
		c := lethality.Composition{
			Water: of(t, r, "water_pct", units.Percent), Protein: of(t, r, "protein_pct", units.Percent),
			Fat: of(t, r, "fat_pct", units.Percent), Ash: of(t, r, "ash_pct", units.Percent),
		}
		p, err := c.At(at(t, r, "temp_c", units.CelsiusScale))
		require.NoError(t, err)
		printed.Within(t, r, "density_kg_m3", units.In(p.Density, units.KilogramPerCubicMetre, 9))
		printed.Within(t, r, "cp_j_kgk", units.In(p.SpecificHeat, units.JoulePerKilogramKelvin, 6))
		printed.Within(t, r, "k_parallel_w_mk", units.In(p.ConductivityHigh, units.WattPerMetreKelvin, 9))
		printed.Within(t, r, "k_series_w_mk", units.In(p.ConductivityLow, units.WattPerMetreKelvin, 9))
		printed.Within(t, r, "k_geometric_w_mk", units.In(p.ConductivityMiddle, units.WattPerMetreKelvin, 9))
		printed.Within(t, r, "alpha_parallel_m2_s", units.In(p.DiffusivityHigh, units.SquareMetrePerSecond, 18))
		printed.Within(t, r, "alpha_series_m2_s", units.In(p.DiffusivityLow, units.SquareMetrePerSecond, 18))
		require.True(t, p.ConductivityLow < p.ConductivityMiddle && p.ConductivityMiddle < p.ConductivityHigh)
	})
}

func TestCompositionRefuses(t *testing.T) {
	salmon := lethality.Composition{Water: 76 * units.Percent, Protein: 20 * units.Percent, Fat: 4 * units.Percent}
	for name, err := range map[string]error{
		"frozen":       second(salmon.At(units.Celsius(-0.1))),
		"too hot":      second(salmon.At(units.Celsius(150.1))),
		"unset":        second(salmon.At(units.Temperature{})),
		"nothing":      second(lethality.Composition{}.At(units.Celsius(20))),
		"too little":   second(lethality.Composition{Water: 94 * units.Percent}.At(units.Celsius(20))),
		"too much":     second(lethality.Composition{Water: 76 * units.Percent, Fat: 30 * units.Percent}.At(units.Celsius(20))),
		"below nought": second(lethality.Composition{Water: 101 * units.Percent, Fat: -units.Percent}.At(units.Celsius(20))),
	} {
		require.ErrorIs(t, err, units.ErrRange, name)
	}
}
