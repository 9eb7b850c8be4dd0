package series_test

import (
	"math"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// gauge makes a record from pairs of minutes and psi.
func gauge(t testing.TB, pairs ...int64) series.Series[units.Pressure] {
	t.Helper()
	s, err := series.New(readings(pairs...))
	require.NoError(t, err)
	return s
}

func readings(pairs ...int64) []series.Reading[units.Pressure] {
	var rs []series.Reading[units.Pressure]
	for i := 0; i < len(pairs); i += 2 {
		rs = append(rs, reading(pairs[i], pairs[i+1]))
	}
	return rs
}

func reading(minutes, psi int64) series.Reading[units.Pressure] {
	return series.Reading[units.Pressure]{
		At:    time.Duration(minutes) * time.Minute,
		Value: units.Pressure(psi) * units.PSI,
	}
}

func TestNewKeepsReadings(t *testing.T) {
	for name, given := range map[string][]series.Reading[units.Pressure]{
		"one":                      readings(0, 11),
		"one, later than zero":     readings(7, 11),
		"two":                      readings(0, 11, 1, 12),
		"values may repeat":        readings(0, 11, 1, 11, 2, 11),
		"a pressure may be zero":   readings(0, 0, 1, 0),
		"a gauge may fall below 0": readings(0, -1, 1, 0),
		"a nanosecond apart":       {{At: 0}, {At: 1}},
		"the longest record":       {{At: 0}, {At: math.MaxInt64}},
	} {
		s, err := series.New(given)
		require.NoError(t, err, name)
		require.Equal(t, len(given), s.Len(), name)
		require.Empty(t, cmp.Diff(given, s.Readings()), name)
	}
}

func TestNewRefuses(t *testing.T) {
	type readingOf = series.Reading[units.Temperature]
	warm := units.Celsius(20)
	for name, c := range map[string]struct {
		given []readingOf
		index int
		want  error
	}{
		"a repeated time":          {[]readingOf{{0, warm}, {1, warm}, {1, warm}}, 2, series.ErrRepeated},
		"a repeated zero":          {[]readingOf{{0, warm}, {0, warm}}, 1, series.ErrRepeated},
		"a time running backward":  {[]readingOf{{5, warm}, {4, warm}}, 1, series.ErrBackward},
		"back below the start":     {[]readingOf{{5, warm}, {-4, warm}}, 1, series.ErrNegative},
		"a start before the start": {[]readingOf{{-1, warm}, {4, warm}}, 0, series.ErrNegative},
		"the earliest time":        {[]readingOf{{math.MinInt64, warm}}, 0, series.ErrNegative},
		"a first value not set":    {[]readingOf{{0, units.Temperature{}}}, 0, series.ErrUnset},
		"a last value not set":     {[]readingOf{{0, warm}, {1, units.Celsius(math.NaN())}}, 1, series.ErrUnset},
		"below absolute zero":      {[]readingOf{{0, warm}, {1, units.Celsius(-274)}, {2, warm}}, 1, series.ErrUnset},
	} {
		s, err := series.New(c.given)
		require.ErrorIs(t, err, c.want, name)
		var fault series.ReadingError
		require.ErrorAs(t, err, &fault, name)
		require.Equal(t, series.ReadingError{Index: c.index, At: c.given[c.index].At, Err: c.want}, fault, name)
		require.Zero(t, s.Len(), name)
	}
	for _, none := range [][]readingOf{nil, {}} {
		_, err := series.New(none)
		require.ErrorIs(t, err, series.ErrEmpty)
	}
}

func TestSeriesIsNotSharedWithItsReadings(t *testing.T) {
	given := readings(0, 11, 1, 12)
	s, err := series.New(given)
	require.NoError(t, err)
	given[0] = reading(9, 9)
	s.Readings()[1] = reading(9, 9)
	require.Empty(t, cmp.Diff(readings(0, 11, 1, 12), s.Readings()))
}

// Two records that grow from one must not see each other's readings.
func TestAppendLeavesTheOldSeries(t *testing.T) {
	root, err := gauge(t, 0, 11).Append(reading(1, 12))
	require.NoError(t, err)
	left, err := root.Append(reading(2, 13))
	require.NoError(t, err)
	right, err := root.Append(reading(3, 14), reading(4, 15))
	require.NoError(t, err)

	require.Empty(t, cmp.Diff(readings(0, 11, 1, 12), root.Readings()))
	require.Empty(t, cmp.Diff(readings(0, 11, 1, 12, 2, 13), left.Readings()))
	require.Empty(t, cmp.Diff(readings(0, 11, 1, 12, 3, 14, 4, 15), right.Readings()))

	same, err := root.Append()
	require.NoError(t, err)
	require.Empty(t, cmp.Diff(root, same))

	_, err = root.Append(reading(2, 13), reading(1, 13))
	var fault series.ReadingError
	require.ErrorAs(t, err, &fault)
	require.ErrorIs(t, err, series.ErrBackward)
	require.Equal(t, 1, fault.Index)
	_, err = root.Append(reading(1, 13))
	require.ErrorIs(t, err, series.ErrRepeated)
}

func TestEmptySeriesAnswersNothing(t *testing.T) {
	var s series.Series[units.Pressure]
	for name, question := range map[string]func() error{
		"ValueAt":          func() error { _, err := s.ValueAt(0); return err },
		"Slice":            func() error { _, err := s.Slice(0, 0); return err },
		"AtOrAbove":        func() error { _, err := s.AtOrAbove(0); return err },
		"Above":            func() error { _, err := s.Above(0); return err },
		"AtOrBelow":        func() error { _, err := s.AtOrBelow(0); return err },
		"Below":            func() error { _, err := s.Below(0); return err },
		"Between":          func() error { _, err := s.Between(0, 1); return err },
		"LongestAtOrAbove": func() error { _, err := s.LongestAtOrAbove(0); return err },
		"LongestAtOrBelow": func() error { _, err := s.LongestAtOrBelow(0); return err },
		"FirstAtOrAbove":   func() error { _, _, err := s.FirstAtOrAbove(0); return err },
		"FirstAtOrBelow":   func() error { _, _, err := s.FirstAtOrBelow(0); return err },
		"FirstAbove":       func() error { _, _, err := s.FirstAbove(0); return err },
		"FirstBelow":       func() error { _, _, err := s.FirstBelow(0); return err },
	} {
		require.ErrorIs(t, question(), series.ErrEmpty, name)
	}
	for name, question := range map[string]func() (series.Reading[units.Pressure], bool){
		"At":    func() (series.Reading[units.Pressure], bool) { return s.At(0) },
		"First": s.First, "Last": s.Last, "Min": s.Min, "Max": s.Max,
	} {
		_, ok := question()
		require.False(t, ok, name)
	}
	require.Zero(t, s.Span())
	require.Zero(t, s.LongestGap())
	require.Nil(t, s.Readings())
	require.True(t, s.Equal(series.Series[units.Pressure]{}))
}

func TestAtOutsideTheReadings(t *testing.T) {
	s := gauge(t, 0, 11, 1, 12)
	for _, i := range []int{-1, 2, math.MaxInt, math.MinInt} {
		_, ok := s.At(i)
		require.False(t, ok, i)
	}
}

func TestMinMaxTakeTheFirstOfEquals(t *testing.T) {
	s := gauge(t, 0, 11, 1, 9, 2, 12, 3, 9, 4, 12)
	low, _ := s.Min()
	high, _ := s.Max()
	require.Equal(t, reading(1, 9), low)
	require.Equal(t, reading(2, 12), high)
}

func TestEqual(t *testing.T) {
	s := gauge(t, 0, 11, 1, 12)
	require.True(t, s.Equal(gauge(t, 0, 11, 1, 12)))
	require.False(t, s.Equal(gauge(t, 0, 11, 2, 12)))
	require.False(t, s.Equal(gauge(t, 0, 11, 1, 13)))
	require.False(t, s.Equal(gauge(t, 0, 11)))
}

func TestValueAtRunsStraight(t *testing.T) {
	s := gauge(t, 10, 0, 20, 10, 30, 5)
	for minutes, psi := range map[int64]int64{10: 0, 11: 1, 19: 9, 20: 10, 22: 9, 30: 5} {
		v, err := s.ValueAt(time.Duration(minutes) * time.Minute)
		require.NoError(t, err)
		require.Equal(t, reading(minutes, psi).Value, v, minutes)
	}
	for _, at := range []time.Duration{-1, 0, 10*time.Minute - 1, 30*time.Minute + 1, math.MaxInt64, math.MinInt64} {
		_, err := s.ValueAt(at)
		require.ErrorIs(t, err, units.ErrRange, at)
	}
}

// The steepest line that fits: the difference of the ends passes int64, and so does the product.
func TestValueAtAcrossTheWholeRange(t *testing.T) {
	s, err := series.New([]series.Reading[units.Pressure]{{0, math.MinInt64}, {math.MaxInt64 - 1, math.MaxInt64}})
	require.NoError(t, err)
	v, err := s.ValueAt((math.MaxInt64 - 1) / 2)
	require.NoError(t, err)
	require.Equal(t, units.Pressure(0), v) // −½ lies in the middle and rounds towards the later reading
	down, err := series.New([]series.Reading[units.Pressure]{{0, math.MaxInt64}, {math.MaxInt64 - 1, math.MinInt64}})
	require.NoError(t, err)
	v, err = down.ValueAt((math.MaxInt64 - 1) / 2)
	require.NoError(t, err)
	require.Equal(t, units.Pressure(-1), v)
}

func TestSlice(t *testing.T) {
	s := gauge(t, 10, 0, 20, 10, 30, 5)
	for name, c := range map[string]struct {
		from, to time.Duration
		want     []series.Reading[units.Pressure]
	}{
		"the whole":             {10 * time.Minute, 30 * time.Minute, readings(10, 0, 20, 10, 30, 5)},
		"from reading to end":   {20 * time.Minute, 30 * time.Minute, readings(20, 10, 30, 5)},
		"from start to reading": {10 * time.Minute, 20 * time.Minute, readings(10, 0, 20, 10)},
		"across a reading":      {11 * time.Minute, 22 * time.Minute, readings(11, 1, 20, 10, 22, 9)},
		"within one interval":   {11 * time.Minute, 12 * time.Minute, readings(11, 1, 12, 2)},
		"one instant":           {11 * time.Minute, 11 * time.Minute, readings(11, 1)},
		"one reading":           {20 * time.Minute, 20 * time.Minute, readings(20, 10)},
	} {
		part, err := s.Slice(c.from, c.to)
		require.NoError(t, err, name)
		require.Empty(t, cmp.Diff(c.want, part.Readings()), name)
	}
	for name, c := range map[string][2]time.Duration{
		"before the record": {9 * time.Minute, 20 * time.Minute},
		"after the record":  {20 * time.Minute, 31 * time.Minute},
		"wholly outside":    {40 * time.Minute, 50 * time.Minute},
		"in reverse":        {20 * time.Minute, 11 * time.Minute},
		"negative":          {-1, 11 * time.Minute},
		"one too early":     {10*time.Minute - 1, 11 * time.Minute},
		"one too late":      {11 * time.Minute, 30*time.Minute + 1},
	} {
		_, err := s.Slice(c[0], c[1])
		require.ErrorIs(t, err, units.ErrRange, name)
	}
}
