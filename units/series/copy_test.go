package series_test

import (
	"fmt"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// A long record, two readings at a time.
func ExampleSeries_Copy() {
	record, _ := series.New([]series.Reading[units.Mass]{
		{At: 0, Value: 900 * units.Gram}, {At: time.Minute, Value: 880 * units.Gram}, {At: 2 * time.Minute, Value: 870 * units.Gram},
	})
	var at, quanta [2]int64
	for i := 0; ; i += len(at) {
		n := record.Copy(i, at[:], quanta[:])
		for j := range at[:n] {
			fmt.Println(time.Duration(at[j]), units.Mass(quanta[j]))
		}
		if n < len(at) {
			break
		}
	}
	// Output:
	// 0s 900 g
	// 1m0s 880 g
	// 2m0s 870 g
}

// Copy hands out what At does, never the record's own, and none outside it.
func TestCopy(t *testing.T) {
	var readings []series.Reading[units.Temperature]
	for i := 0; i < 10; i++ {
		readings = append(readings, series.Reading[units.Temperature]{At: time.Duration(i*i) * time.Second, Value: units.Celsius(float64(i * 7 % 5))})
	}
	s, err := series.New(readings)
	require.NoError(t, err)
	for from := -2; from < 13; from++ {
		for room := 0; room < 13; room++ {
			at, quanta := make([]int64, room), make([]int64, room+3)
			n := s.Copy(from, at, quanta)
			require.Equal(t, map[bool]int{true: min(room, 10-from), false: 0}[from >= 0 && from < 10], n, "%d %d", from, room)
			for j := 0; j < n; j++ {
				want, _ := s.At(from + j)
				require.Equal(t, want, series.Reading[units.Temperature]{
					At: time.Duration(at[j]), Value: units.FromAbsoluteZero(units.TemperatureChange(quanta[j])),
				})
				at[j], quanta[j] = -1, -1
			}
		}
	}
	require.Equal(t, readings, s.Readings())
	require.Zero(t, series.Series[units.Mass]{}.Copy(0, make([]int64, 1), make([]int64, 1)))
}
