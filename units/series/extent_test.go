package series_test

import (
	"fmt"
	"math"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

func ExampleSeries_Extent() {
	var readings []series.Reading[units.Temperature]
	for i, c := range []float64{4, 20, 45, 44, 61} {
		readings = append(readings, series.Reading[units.Temperature]{At: time.Duration(i*i) * time.Minute, Value: units.Celsius(c)})
	}
	s, _ := series.New(readings)
	e, ok := s.Extent()
	fmt.Println(e.Low, "to", e.High, ok)
	fmt.Println(e.Shortest, "to", e.Longest.Length(), "apart, up by", e.Rise, "and down by", e.Fall)
	// Output:
	// 4 °C to 61 °C true
	// 1m0s to 7m0s apart, up by 25 K and down by 1 K
}

func pressureEvery(t *testing.T, values ...units.Pressure) series.Series[units.Pressure] {
	t.Helper()
	var readings []series.Reading[units.Pressure]
	for i, v := range values {
		readings = append(readings, series.Reading[units.Pressure]{At: time.Duration(i) * time.Second, Value: v})
	}
	s, err := series.New(readings)
	require.NoError(t, err)
	return s
}

// The extent says what the single questions say; a value at the end of its type does not overflow.
func TestExtentAgreesWithTheQuestions(t *testing.T) {
	for _, values := range [][]units.Pressure{
		{7 * units.PSI}, {3, 3, 3}, {1, 5, 2, 9, -4, 9}, {9, 5, 1}, {-5, -1, 0}, {math.MaxInt64, math.MinInt64, 0},
	} {
		s := pressureEvery(t, values...)
		e, ok := s.Extent()
		require.True(t, ok)
		low, _ := s.Min()
		high, _ := s.Max()
		require.Equal(t, []units.Pressure{low.Value, high.Value}, []units.Pressure{e.Low, e.High})
		require.Equal(t, s.LongestGap(), e.Longest)
		if values[0] == math.MaxInt64 {
			require.False(t, e.Rise.IsStated() || e.Fall.IsStated())
			continue
		}
		rise, fall := units.Pressure(0), units.Pressure(0)
		for i := 1; i < len(values); i++ {
			rise, fall = max(rise, values[i]-values[i-1]), max(fall, values[i-1]-values[i])
		}
		require.Empty(t, cmp.Diff([]units.Amount{units.AmountOf(rise), units.AmountOf(fall)}, []units.Amount{e.Rise, e.Fall}))
	}
	_, ok := series.Series[units.Mass]{}.Extent()
	require.False(t, ok)
}

func TestExtentOfEveryValue(t *testing.T) {
	m, err := series.New([]series.Reading[units.Mass]{{Value: units.Gram}, {At: 1, Value: 3 * units.Gram}})
	require.NoError(t, err)
	mass, _ := m.Extent()
	require.Equal(t, units.AmountOf(2*units.Gram), mass.Rise)
	r, err := series.New([]series.Reading[units.Ratio]{{Value: units.Percent}, {At: 1, Value: 0}})
	require.NoError(t, err)
	ratio, _ := r.Extent()
	require.Equal(t, units.AmountOf(units.Percent), ratio.Fall)
}
