package brine

import (
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/brine/solution"
	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
)

// Recipes by the cup: what strength they are with which salt.
func TestBrinesByVolume(t *testing.T) {
	printed.Table(t, "brine/brines-by-volume.csv").Each(t, func(t *testing.T, r printed.Row) {
		water, err := units.Of(r.Decimal("water_gal"), units.Gallon)
		require.NoError(t, err)
		x, err := strengthOf(units.Mass(r.Int("salt_cups"))*grams(t, r, "salt_g_per_cup"), water)
		require.NoError(t, err)
		printed.Within(t, r, "salt_pct", units.In(x, units.Percent, 10))
		s, err := solution.StrengthOf(x, units.Fahrenheit(60))
		require.NoError(t, err)
		printed.Within(t, r, "salometer", units.In(s.Salometer, units.Percent, 10))
	})
}

// What a recipe's brine is worked out with is what the scales of strength rest on.
func TestWaterAt60(t *testing.T) {
	density, err := solution.Density(0, units.Fahrenheit(60))
	require.NoError(t, err)
	litre, err := units.Prorate(units.Kilogram, density, units.GramPerMillilitre)
	require.NoError(t, err)
	require.Equal(t, litre, litreAt60)
	salt, err := weighings[0].MassOf(units.Cup)
	require.NoError(t, err)
	require.Equal(t, 288*units.Gram, salt)
	least, err := strengthOf(salt, units.Gallon)
	require.NoError(t, err)
	require.Equal(t, least, leastBrine)
}

func TestBrineEndRefused(t *testing.T) {
	for _, m := range [][3]units.Mass{{-1, 1, 1}, {1, -1, 1}, {1, 1, 0}, {units.Kilogram, units.Kilogram, units.Gram}} {
		_, err := BrineEnd(m[0], m[1], m[2])
		require.ErrorIs(t, err, units.ErrRange)
	}
}
