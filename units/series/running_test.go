package series_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

func TestRunningRefuses(t *testing.T) {
	limit := units.Celsius(60)
	r, err := series.Watch(limit)
	require.NoError(t, err)
	require.Equal(t, limit, r.Limit())
	_, ok := r.Last()
	require.False(t, ok)
	require.Zero(t, r.Current())

	r, err = r.Next(series.Reading[units.Temperature]{At: time.Minute, Value: units.Celsius(61)})
	require.NoError(t, err)
	for name, c := range map[string]struct {
		reading series.Reading[units.Temperature]
		want    error
	}{
		"repeated":  {series.Reading[units.Temperature]{At: time.Minute, Value: limit}, series.ErrRepeated},
		"backward":  {series.Reading[units.Temperature]{At: 0, Value: limit}, series.ErrBackward},
		"negative":  {series.Reading[units.Temperature]{At: -1, Value: limit}, series.ErrNegative},
		"not set":   {series.Reading[units.Temperature]{At: time.Hour}, series.ErrUnset},
		"not a sum": {series.Reading[units.Temperature]{At: time.Hour, Value: units.Celsius(-300)}, series.ErrUnset},
	} {
		after, err := r.Next(c.reading)
		require.ErrorIs(t, err, c.want, name)
		var fault series.ReadingError
		require.ErrorAs(t, err, &fault, name)
		require.Equal(t, 1, fault.Index, name)
		require.Equal(t, r, after, name) // so the faulty reading can be left out
	}
}

// A Running that nobody gave a limit must not count a time as held.
func TestRunningWithoutWatch(t *testing.T) {
	var hot series.Running[units.Temperature]
	_, err := hot.Next(series.Reading[units.Temperature]{Value: units.Celsius(80)})
	require.ErrorIs(t, err, units.ErrRange)
	var full series.Running[units.Pressure]
	_, err = full.Next(reading(0, 11))
	require.ErrorIs(t, err, units.ErrRange)
}
