package units_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
)

// Two catches, each estimated.
func ExampleSumRanges() {
	both, err := units.SumRanges(
		units.Range[units.Mass]{Low: 9 * units.Kilogram, Likely: 10 * units.Kilogram, High: 12 * units.Kilogram},
		units.Range[units.Mass]{Low: 3 * units.Kilogram, Likely: 4 * units.Kilogram, High: 4 * units.Kilogram},
	)
	fmt.Println(both.Text(units.Metric), err)
	// Output: 12 kg to 16 kg, likely 14 kg <nil>
}

func TestSumsOfRanges(t *testing.T) {
	none, err := units.SumRanges[units.Mass]()
	require.NoError(t, err)
	require.Equal(t, units.Range[units.Mass]{}, none)
	for _, past := range []units.Range[units.Mass]{
		{Low: math.MaxInt64, Likely: 1, High: 1}, {Low: 1, Likely: math.MaxInt64, High: 1}, {Low: 1, Likely: 1, High: math.MaxInt64},
	} {
		got, err := units.SumRanges(past, units.Range[units.Mass]{Low: 1, Likely: 1, High: 1})
		require.ErrorIs(t, err, units.ErrRange)
		require.Equal(t, units.Range[units.Mass]{}, got)
	}
}
