package series_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

const minute = time.Minute

// Each shape is drawn so that the answers are read off with a ruler; limit 10 psi throughout.
func TestTimesOfDrawnShapes(t *testing.T) {
	for name, c := range map[string]struct {
		pairs                           []int64
		held, above, longest            time.Duration // at or above; strictly above; longest at or above
		cold, longestCold               time.Duration // at or below; longest at or below
		metAt, passedAt, fellAt, coldAt time.Duration // first ≥, >, <, ≤; −1 for never
	}{
		"one reading on it":       {[]int64{5, 10}, 0, 0, 0, 0, 0, 5, -1, -1, 5},
		"flat on it":              {[]int64{0, 10, 10, 10}, 10, 0, 10, 10, 10, 0, -1, -1, 0},
		"flat above":              {[]int64{0, 11, 10, 11}, 10, 10, 10, 0, 0, 0, 0, -1, -1},
		"flat below":              {[]int64{0, 9, 10, 9}, 0, 0, 0, 10, 10, -1, -1, 0, 0},
		"up through it":           {[]int64{0, 5, 10, 15}, 5, 5, 5, 5, 5, 5, 5, 0, 0},
		"down through it":         {[]int64{0, 15, 10, 5}, 5, 5, 5, 5, 5, 0, 0, 5, 5},
		"up onto it":              {[]int64{0, 0, 10, 10}, 0, 0, 0, 10, 10, 10, -1, 0, 0},
		"up from it":              {[]int64{0, 10, 10, 20}, 10, 10, 10, 0, 0, 0, 0, -1, 0},
		"down from it":            {[]int64{0, 10, 10, 0}, 0, 0, 0, 10, 10, 0, -1, 0, 0},
		"touched from below":      {[]int64{0, 0, 10, 10, 20, 0}, 0, 0, 0, 20, 20, 10, -1, 0, 0},
		"touched from above":      {[]int64{0, 20, 10, 10, 20, 20}, 20, 20, 20, 0, 0, 0, 0, -1, 10},
		"a hill":                  {[]int64{0, 0, 10, 20, 20, 0}, 10, 10, 10, 10, 5, 5, 5, 0, 0},
		"a valley":                {[]int64{0, 20, 10, 0, 20, 20}, 10, 10, 5, 10, 10, 0, 0, 5, 5},
		"flat, then down":         {[]int64{0, 10, 10, 10, 20, 0}, 10, 0, 10, 20, 20, 0, -1, 10, 0},
		"up, flat on it, up":      {[]int64{0, 0, 10, 10, 20, 10, 30, 20}, 20, 10, 20, 20, 20, 10, 20, 0, 0},
		"two hills, second wider": {[]int64{0, 0, 10, 20, 20, 0, 40, 20, 60, 0}, 30, 30, 20, 30, 15, 5, 5, 0, 0},
	} {
		s, limit := gauge(t, c.pairs...), 10*units.PSI
		is := func(what string, want, got time.Duration, err error) {
			t.Helper()
			require.NoError(t, err, name)
			require.Equal(t, want*minute, got, "%s: %s", name, what)
		}
		got, err := s.AtOrAbove(limit)
		is("at or above", c.held, got, err)
		got, err = s.Above(limit)
		is("above", c.above, got, err)
		got, err = s.AtOrBelow(limit)
		is("at or below", c.cold, got, err)
		got, err = s.Below(limit)
		is("below", s.Span()/minute-c.held, got, err)
		stretch, err := s.LongestAtOrAbove(limit)
		is("longest at or above", c.longest, stretch.Length(), err)
		stretch, err = s.LongestAtOrBelow(limit)
		is("longest at or below", c.longestCold, stretch.Length(), err)
		for what, first := range map[string]struct {
			find func(units.Pressure) (time.Duration, bool, error)
			want time.Duration
		}{
			"first at or above": {s.FirstAtOrAbove, c.metAt}, "first above": {s.FirstAbove, c.passedAt},
			"first below": {s.FirstBelow, c.fellAt}, "first at or below": {s.FirstAtOrBelow, c.coldAt},
		} {
			at, found, err := first.find(limit)
			require.NoError(t, err)
			require.Equal(t, first.want >= 0, found, "%s: %s", name, what)
			is(what, max(first.want, 0), at, err)
		}
	}
}

// A third of a nanosecond: a hold loses it, an exposure is charged for it, and the hold's stretch
// lies inside the true one. The value rises from 0 to 3 over 1 ns, and falls again.
func TestRoundingTakesTheSafeSide(t *testing.T) {
	s, err := series.New([]series.Reading[units.Ratio]{{0, 0}, {1, 3}, {2, 0}})
	require.NoError(t, err)
	held, err := s.AtOrAbove(1) // truly 4/3 ns
	require.NoError(t, err)
	require.Equal(t, time.Duration(0), held)
	exposed, err := s.Above(1)
	require.NoError(t, err)
	require.Equal(t, time.Duration(2), exposed)
	cold, err := s.AtOrBelow(1) // truly 2/3 ns
	require.NoError(t, err)
	require.Equal(t, time.Duration(0), cold)
	short, err := s.Below(1)
	require.NoError(t, err)
	require.Equal(t, time.Duration(2), short)

	met, _, err := s.FirstAtOrAbove(1)
	require.NoError(t, err)
	require.Equal(t, time.Duration(1), met)
	passed, _, err := s.FirstAbove(1)
	require.NoError(t, err)
	require.Equal(t, time.Duration(0), passed)
}

func TestLongestNamesItsEnds(t *testing.T) {
	s := gauge(t, 0, 0, 10, 20, 20, 0, 40, 20, 60, 0, 70, 0)
	hold, err := s.LongestAtOrAbove(10 * units.PSI)
	require.NoError(t, err)
	require.Equal(t, series.Stretch{From: 30 * minute, To: 50 * minute}, hold)
	cold, err := s.LongestAtOrBelow(10 * units.PSI)
	require.NoError(t, err)
	require.Equal(t, series.Stretch{From: 50 * minute, To: 70 * minute}, cold)

	twice := gauge(t, 0, 10, 10, 10, 15, 0, 20, 10, 30, 10)
	first, err := twice.LongestAtOrAbove(10 * units.PSI)
	require.NoError(t, err)
	require.Equal(t, series.Stretch{From: 0, To: 10 * minute}, first)
}

func TestLongestGap(t *testing.T) {
	require.Equal(t, series.Stretch{From: 3 * minute, To: 6 * minute}, gauge(t, 0, 1, 1, 1, 3, 1, 6, 1, 8, 1, 11, 1).LongestGap())
	require.Zero(t, gauge(t, 4, 1).LongestGap())
}

func TestLimitsThatAreNotSet(t *testing.T) {
	s, err := series.New([]series.Reading[units.Temperature]{{0, units.Celsius(20)}, {time.Hour, units.Celsius(80)}})
	require.NoError(t, err)
	var unset units.Temperature
	warm := units.Celsius(60)
	for name, question := range map[string]func() error{
		"AtOrAbove":        func() error { _, err := s.AtOrAbove(unset); return err },
		"Above":            func() error { _, err := s.Above(unset); return err },
		"AtOrBelow":        func() error { _, err := s.AtOrBelow(unset); return err },
		"Below":            func() error { _, err := s.Below(unset); return err },
		"Between, low":     func() error { _, err := s.Between(unset, warm); return err },
		"Between, high":    func() error { _, err := s.Between(warm, unset); return err },
		"Between, reverse": func() error { _, err := s.Between(warm, units.Celsius(30)); return err },
		"LongestAtOrAbove": func() error { _, err := s.LongestAtOrAbove(unset); return err },
		"LongestAtOrBelow": func() error { _, err := s.LongestAtOrBelow(unset); return err },
		"FirstAtOrAbove":   func() error { _, _, err := s.FirstAtOrAbove(unset); return err },
		"FirstAtOrBelow":   func() error { _, _, err := s.FirstAtOrBelow(unset); return err },
		"FirstAbove":       func() error { _, _, err := s.FirstAbove(unset); return err },
		"FirstBelow":       func() error { _, _, err := s.FirstBelow(unset); return err },
		"Watch":            func() error { _, err := series.Watch(unset); return err },
	} {
		require.ErrorIs(t, question(), units.ErrRange, name)
	}
	none, err := s.Between(warm, warm) // above 60 °C, up to 60 °C
	require.NoError(t, err)
	require.Zero(t, none)
	// Not even a safe-looking figure stands beside the error.
	cold, err := s.AtOrBelow(unset)
	require.Error(t, err)
	require.Zero(t, cold)
	short, err := s.Below(unset)
	require.Error(t, err)
	require.Zero(t, short)
}
