package brine

import (
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/brine/solution"
	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
)

func share(t testing.TB, r printed.Row, col string) units.Ratio {
	t.Helper()
	x, err := units.Of(r.Decimal(col), units.Percent)
	require.NoError(t, err)
	return x
}

func grams(t testing.TB, r printed.Row, col string) units.Mass {
	t.Helper()
	m, err := units.Of(r.Decimal(col), units.Gram)
	require.NoError(t, err)
	return m
}

// USDA SR28: the sodium of smoked, dried and raw fish read as salt. Only the dried steelhead is past saturation,
// and then the error holds the figure.
func TestWaterPhaseSaltOfFishInTables(t *testing.T) {
	var past []string
	printed.Table(t, "brine/fish-salt.csv").Each(t, func(t *testing.T, r printed.Row) {
		if !r.Has("sodium_mg_100g") {
			require.False(t, r.Has("wps_pct"), "nothing to work from, nothing printed")
			return
		}
		salt, err := SaltFromSodium(units.Mass(r.Int("sodium_mg_100g")) * units.Milligram)
		require.NoError(t, err)
		printed.Within(t, r, "nacl_g_100g", units.In(salt, units.Gram, 6))
		share, err := WaterPhaseSalt(salt, grams(t, r, "water_g_100g"))
		var saturated solution.SaturatedError
		if err != nil {
			require.ErrorAs(t, err, &saturated)
			require.ErrorIs(t, err, units.ErrRange)
			share, past = saturated.Share, append(past, r.Text("ndb_no"))
		}
		printed.Within(t, r, "wps_pct", units.In(share, units.Percent, 6))
		// Ash holds all the salt, so it is never less; the one row that says otherwise carries a copied ash.
		require.Equal(t, r.Text("ndb_no") == "15179", salt > grams(t, r, "ash_g_100g"))
	})
	require.Equal(t, []string{"35180"}, past)
}

// Drip and flesh water at one strength: the share at the end of a cure, and after drying.
func TestWaterPhaseSaltOfEquilibriumCures(t *testing.T) {
	printed.Table(t, "brine/equilibrium-cure.csv").Each(t, func(t *testing.T, r printed.Row) {
		share, err := WaterPhaseSalt(grams(t, r, "salt_g"), grams(t, r, "water_g"))
		require.NoError(t, err)
		printed.Within(t, r, "wps_equilibrium_pct", units.In(share, units.Percent, 8))
		left := grams(t, r, "water_g") - grams(t, r, "drip_g") - grams(t, r, "drying_g")
		share, err = WaterPhaseSalt(grams(t, r, "salt_kept_g"), left)
		require.NoError(t, err)
		printed.Within(t, r, "wps_final_pct", units.In(share, units.Percent, 8))
	})
}

func TestSaltNeeded(t *testing.T) {
	printed.Table(t, "brine/salt-needed.csv").Each(t, func(t *testing.T, r printed.Row) {
		target, err := units.Of(r.Decimal("target_pct"), units.Percent)
		require.NoError(t, err)
		salt, err := SaltFor(target, grams(t, r, "water_g")-grams(t, r, "water_lost_g"))
		require.NoError(t, err)
		printed.Within(t, r, "salt_g", units.In(salt, units.Gram, 6))
	})
}

// The denominator is salt and water: 2.0 g in 70.0 g is neither 2.857 % of the water nor 2.0 % of the fish.
func TestWaterPhaseSaltByHand(t *testing.T) {
	share, err := WaterPhaseSalt(2*units.Gram, 70*units.Gram)
	require.NoError(t, err)
	require.Equal(t, 27_777_777_777*units.Ratio(1), share, "1/36, rounded down")
	share, err = WaterPhaseSalt(0, units.Gram)
	require.NoError(t, err)
	require.Zero(t, share)

	salt, err := SaltFor(35*units.PerMille, 65*units.Gram)
	require.NoError(t, err)
	require.Equal(t, "2.3575", units.In(salt, units.Gram, 4).String())
	salt, err = SaltFor(20*units.Percent, 4*units.Gram)
	require.NoError(t, err)
	require.Equal(t, units.Gram, salt, "exact where it is exact")
}

func TestSaturationIsTheEnd(t *testing.T) {
	limit, citation := solution.Saturation()
	require.Equal(t, "26.395 %", limit.String())
	require.NoError(t, citation.Check())

	at := 26_395 * units.Gram
	share, err := WaterPhaseSalt(at, 73_605*units.Gram)
	require.NoError(t, err)
	require.Equal(t, limit, share)
	_, err = WaterPhaseSalt(at+units.Gram, 73_605*units.Gram)
	require.Equal(t, solution.SaturatedError{What: inTheWater, Share: 263_957_360_426, Saturation: limit}, err)
	require.EqualError(t, err, "water phase salt 26.3957360426 % is out of range: expected at most 26.395 %, saturation; "+
		"part of the salt is not dissolved, or a figure is wrong")
}

// The molar mass of salt is the one that the table of coefficients has.
func TestMolarMass(t *testing.T) {
	for _, r := range printed.Table(t, "brine/activity-coefficients.csv") {
		if r.Text("equation") == "molar mass" && r.Text("name") == "salt" {
			printed.Within(t, r, "value", units.In(molarNaCl, units.Gram, 6))
		}
	}
}

func TestWaterPhaseSaltRefused(t *testing.T) {
	for name, c := range map[string]struct{ salt, water units.Mass }{
		"negative salt":  {-1, units.Gram},
		"no water":       {units.Gram, 0},
		"nothing at all": {0, 0},
		"negative water": {units.Gram, -1},
		"swapped":        {70 * units.Gram, 2 * units.Gram},
		"past the range": {1 << 62, 1 << 62},
	} {
		share, err := WaterPhaseSalt(c.salt, c.water)
		require.ErrorIs(t, err, units.ErrRange, name)
		require.Zero(t, share, name)
	}
	limit, _ := solution.Saturation()
	for name, c := range map[string]struct {
		target units.Ratio
		water  units.Mass
	}{
		"no target":             {0, units.Gram},
		"negative target":       {-units.Percent, units.Gram},
		"3.5 meant as percent":  {35 * units.One / 10, units.Gram},
		"past saturation":       {limit + 1, units.Gram},
		"no water":              {units.Percent, 0},
		"negative water":        {units.Percent, -units.Gram},
		"nothing asked of none": {0, 0},
	} {
		salt, err := SaltFor(c.target, c.water)
		require.ErrorIs(t, err, units.ErrRange, name)
		require.Zero(t, salt, name)
	}
	salt, err := SaltFor(limit, 1<<63-1)
	require.NoError(t, err, "no water is too much")
	require.Positive(t, salt)
}

// The inverse meets its target and a quantum less would not; more salt or less water is never a lower share.
func FuzzWaterPhaseSalt(f *testing.F) {
	f.Add(int64(35*units.PerMille), int64(65*units.Gram))
	f.Add(int64(1), int64(1))
	f.Add(int64(26*units.Percent), int64(units.Tonne))
	f.Fuzz(func(t *testing.T, target, water int64) {
		salt, err := SaltFor(units.Ratio(target), units.Mass(water))
		if err != nil {
			return
		}
		share, err := WaterPhaseSalt(salt, units.Mass(water))
		if err != nil { // a few quanta of water, or a target a hair below saturation: one quantum of salt is too much
			require.ErrorAs(t, err, &solution.SaturatedError{})
			return
		}
		require.GreaterOrEqual(t, int64(share), target)
		less, err := WaterPhaseSalt(salt-1, units.Mass(water))
		require.NoError(t, err)
		require.LessOrEqual(t, less, share)
		require.LessOrEqual(t, int64(less), target)
		if more, err := WaterPhaseSalt(salt, units.Mass(water)-1); err == nil {
			require.GreaterOrEqual(t, more, share)
		}
	})
}

func BenchmarkWaterPhaseSalt(b *testing.B) {
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		if _, err := WaterPhaseSalt(2*units.Gram, 70*units.Gram); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkSaltFor(b *testing.B) {
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		if _, err := SaltFor(35*units.PerMille, 65*units.Gram); err != nil {
			b.Fatal(err)
		}
	}
}
