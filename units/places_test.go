package units_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
)

// Places that nobody reads cost nothing: those beyond 40 count as 40.
func TestPlacesAreBounded(t *testing.T) {
	third, warm := units.Gram/3, units.Celsius(1./3)
	for _, places := range []int32{41, 1_000, math.MaxInt32} {
		require.Equal(t, units.In(third, units.Ounce, 40), units.In(third, units.Ounce, places))
		require.Equal(t, units.Text(third, units.Ounce, 40), units.Text(third, units.Ounce, places))
		require.Equal(t, warm.In(units.CelsiusScale, 40), warm.In(units.CelsiusScale, places))
		require.Equal(t, warm.Text(units.FahrenheitScale, 40), warm.Text(units.FahrenheitScale, places))
	}
	for _, places := range []int32{-41, math.MinInt32} {
		require.Equal(t, units.In(third, units.Ounce, -40), units.In(third, units.Ounce, places))
		require.Equal(t, warm.Text(units.CelsiusScale, -40), warm.Text(units.CelsiusScale, places))
	}
	require.NotEqual(t, units.In(third, units.Ounce, 39), units.In(third, units.Ounce, 40), "forty are kept")
}

// A last unit that is none prints as String does.
func TestKitchenWithoutAUnit(t *testing.T) {
	for _, last := range []units.Volume{0, -1, -units.Cup, math.MinInt64} {
		require.Equal(t, (3 * units.Cup).String(), units.Kitchen(3*units.Cup, 4, units.Cup, last))
	}
}
