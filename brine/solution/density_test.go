package solution

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
)

func share(t testing.TB, r printed.Row, col string) units.Ratio {
	t.Helper()
	x, err := units.Of(r.Decimal(col), units.Percent)
	require.NoError(t, err)
	return x
}

func celsius(t testing.TB, r printed.Row, col string) units.Temperature {
	t.Helper()
	temperature, err := units.TemperatureOf(r.Decimal(col), units.CelsiusScale)
	require.NoError(t, err)
	return temperature
}

// within checks a density in g/mL against a printed cell.
func within(t testing.TB, r printed.Row, col string, x units.Ratio, temperature units.Temperature) {
	t.Helper()
	d, err := Density(x, temperature)
	require.NoError(t, err)
	printed.Within(t, r, col, units.In(d, units.GramPerMillilitre, 12))
}

// The table of the International Critical Tables comes out of the interpolation, and every row of the code is in it.
func TestDensityTable(t *testing.T) {
	rows := 0
	printed.Table(t, "brine/densities.csv").Each(t, func(t *testing.T, r printed.Row) {
		within(t, r, "density_g_ml", share(t, r, "salt_pct"), celsius(t, r, "temperature_c"))
		rows++
		for i, x := range densityStrengths {
			for j, temperature := range densityTemperatures {
				if x == r.Float("salt_pct") && temperature == r.Float("temperature_c") {
					require.Equal(t, r.Float("density_g_ml"), densities[i][j])
					if x == 0 { // water, from a list of its own
						require.Equal(t, "WaterDataPage read", r.Text("source")+" "+r.Text("basis"))
						continue
					}
					require.Equal(t, r.Text("basis"), densityCitation.Basis.String())
				}
			}
		}
	})
	require.Equal(t, len(densityStrengths)*len(densityTemperatures), rows)
}

// Other tables, other equations.
func TestDensityElsewhere(t *testing.T) {
	printed.Table(t, "brine/densities-elsewhere.csv").Each(t, func(t *testing.T, r printed.Row) {
		within(t, r, "density_g_ml", share(t, r, "salt_pct"), celsius(t, r, "temperature_c"))
	})
	printed.Table(t, "brine/densities-molal.csv").Each(t, func(t *testing.T, r printed.Row) {
		m := r.Float("molality_mol_kg") * 0.0584428
		x, err := units.OfFloat(m/(1+m), units.One)
		require.NoError(t, err)
		within(t, r, "density_25_c_g_ml", x, warmest)
	})
	printed.Table(t, "brine/density-models.csv").Each(t, func(t *testing.T, r printed.Row) {
		x := share(t, r, "salt_pct")
		for col, temperature := range map[string]units.Temperature{
			"simion_0_c": coldest, "simion_10_c": units.Celsius(10), "simion_60_f": sixty, "simion_20_c": units.Celsius(20),
			"simion_25_c": warmest, "krumgalz_25_c": warmest,
		} {
			within(t, r, col, x, temperature)
		}
	})
	printed.Table(t, "brine/density-check.csv").Each(t, func(t *testing.T, r printed.Row) {
		x, err := FromSalometer(share(t, r, "salometer"))
		require.NoError(t, err)
		for col, temperature := range map[string]units.Temperature{"density_20_c_kg_m3": units.Celsius(20), "density_60_f_kg_m3": sixty} {
			d, err := Density(x, temperature)
			require.NoError(t, err)
			printed.Within(t, r, col, units.In(d, units.KilogramPerCubicMetre, 9))
		}
	})
}

// No step where one cubic hands over to the next; denser with salt, and lighter when warmer from 5 °C on.
func TestDensityRisesWithoutAStep(t *testing.T) {
	for temperature := 0.0; temperature <= 25; temperature += 2.5 {
		before := density(0, temperature)
		for x := 0.05; x <= 26.395; x += 0.05 {
			now := density(x, temperature)
			require.Greater(t, now, before, "%g %% at %g °C", x, temperature)
			require.Less(t, now-before, 0.00045, "%g %% at %g °C", x, temperature)
			before = now
		}
		for _, x := range densityStrengths {
			require.InDelta(t, density(x, temperature), density(math.Nextafter(x, 0), temperature), 1e-12)
		}
	}
	for x := 0.0; x <= 26; x++ {
		require.Less(t, density(x, 25), density(x, 15))
		require.Less(t, density(x, 15), density(x, 5))
	}
}

func TestDensityRefused(t *testing.T) {
	limit, _ := Saturation()
	for _, c := range []struct {
		x           units.Ratio
		temperature units.Temperature
	}{{-1, sixty}, {limit + 1, sixty}, {units.Percent, units.Celsius(-0.001)}, {units.Percent, units.Celsius(25.001)}, {units.Percent, units.Temperature{}}} {
		d, err := Density(c.x, c.temperature)
		require.ErrorIs(t, err, units.ErrRange)
		require.Zero(t, d)
		_, err = StrengthOf(c.x, c.temperature)
		require.ErrorIs(t, err, units.ErrRange)
		_, err = MakeBrine(units.Litre, c.x, c.temperature)
		require.ErrorIs(t, err, units.ErrRange)
	}
	_, err := Density(limit+1, sixty)
	require.ErrorAs(t, err, &SaturatedError{})
	require.NoError(t, DensityCitation().Check())
}

func BenchmarkDensity(b *testing.B) {
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		if _, err := Density(15*units.Percent, sixty); err != nil {
			b.Fatal(err)
		}
	}
}
