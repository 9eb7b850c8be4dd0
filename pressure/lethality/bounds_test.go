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

// Bare numbers for a D and for reductions are refused by their size, and the least is not.
func TestTargetOfBareNumbers(t *testing.T) {
	for _, c := range []struct {
		d       time.Duration
		logs    lethality.Logs
		refused string
	}{
		{5, lethality.Logs(12), "D 5 (5ns): was the unit left out?"},
		{time.Microsecond - 1, lethality.Logs(12 * lethality.One), "D 999 (999ns): was the unit left out?"},
		{time.Second, lethality.Logs(12), "log reductions 12 (0.000000000012): was the unit left out?"},
		{time.Second, lethality.Logs(lethality.One/1_000_000 - 1), "was the unit left out?"},
		{time.Second, lethality.Logs(lethality.One / 1_000_000), ""},
		{time.Microsecond, lethality.Logs(12 * lethality.One), ""},
		{time.Second, 0, ""},
		{0, lethality.Logs(12 * lethality.One), "D 0 min is out of range: expected more than 0 min"},
	} {
		_, err := lethality.Target(c.d, c.logs)
		if c.refused == "" {
			require.NoError(t, err)
			continue
		}
		require.ErrorIs(t, err, units.ErrRange)
		require.ErrorContains(t, err, c.refused)
		require.NotContains(t, err.Error(), "1ns to")
	}
}
