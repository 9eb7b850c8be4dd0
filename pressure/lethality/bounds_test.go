package lethality_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/pressure/lethality"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// A hundred days at nine seconds is answered, since nothing moves after the first hours; the same from a restless
// record is refused before it takes a second, and a shorter part of it is answered.
func TestLongRecords(t *testing.T) {
	const days = 100 * 24 * time.Hour
	quiet := line(t, units.Celsius(20), units.Celsius(30), days)
	out, err := pint.Warm(units.Celsius(10), quiet, lethality.Point{}, 9*time.Second)
	require.NoError(t, err)
	last, _ := out.Last()
	require.InDelta(t, 30, last.Value.Celsius(), 0.01)

	restless := func(d time.Duration) temperatures {
		var readings []series.Reading[units.Temperature]
		for at := time.Duration(0); at <= d; at += 9 * time.Second {
			readings = append(readings, series.Reading[units.Temperature]{At: at, Value: units.Celsius(100 + float64(at/time.Second%7))})
		}
		s, err := series.New(readings)
		require.NoError(t, err)
		return s
	}
	_, err = pint.Warm(units.Celsius(10), restless(days), lethality.Point{}, 9*time.Second)
	require.ErrorIs(t, err, units.ErrRange)
	_, err = pint.Warm(units.Celsius(10), restless(12*time.Hour), lethality.Point{}, 9*time.Second)
	require.NoError(t, err)
}
