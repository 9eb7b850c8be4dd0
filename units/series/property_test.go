package series_test

import (
	"math"
	"math/big"
	"math/rand"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

type pressures = series.Series[units.Pressure]

// randomRecords are records of up to 30 readings, the same ones on every run: some with few values,
// so that readings fall on the limit and on each other, some over the whole range of int64.
func randomRecords(t *testing.T, judge func(rng *rand.Rand, s pressures, limit units.Pressure)) {
	t.Helper()
	rng := rand.New(rand.NewSource(1))
	for i := 0; i < 3_000; i++ {
		var rs []series.Reading[units.Pressure]
		step := []int64{1, 7, 1_000, int64(time.Minute), math.MaxInt64 / 32}[rng.Intn(5)]
		spread := []int64{1, 3, 1_000, int64(10 * units.PSI), 0}[rng.Intn(5)]
		draw := func() units.Pressure {
			if spread == 0 {
				return units.Pressure(rng.Uint64())
			}
			return units.Pressure(rng.Int63n(2*spread+1) - spread)
		}
		at := rng.Int63n(step + 1)
		for n := 1 + rng.Intn(30); n > 0; n-- {
			rs = append(rs, series.Reading[units.Pressure]{At: time.Duration(at), Value: draw()})
			at += 1 + rng.Int63n(step)
		}
		s, err := series.New(rs)
		require.NoError(t, err)
		limit := draw()
		if rng.Intn(2) == 0 {
			limit = rs[rng.Intn(len(rs))].Value
		}
		judge(rng, s, limit)
	}
}

// exact is the same arithmetic in fractions of any size: each interval's share of time at or above
// the limit, and the longest run of shares that touch.
type exact struct {
	held, above, longest *big.Rat
	met, passed          *big.Rat // nil for never
	crossings            int64
}

func exactly(s pressures, limit units.Pressure) exact {
	e := exact{held: new(big.Rat), above: new(big.Rat), longest: new(big.Rat)}
	rs := s.Readings()
	if rs[0].Value >= limit {
		e.met = rat(int64(rs[0].At))
	}
	if rs[0].Value > limit {
		e.passed = rat(int64(rs[0].At))
	}
	run := new(big.Rat)
	for i := 1; i < len(rs); i++ {
		start, end := overLimit(rs[i-1], rs[i], limit)
		if start == nil {
			run = new(big.Rat)
			continue
		}
		length := new(big.Rat).Sub(end, start)
		e.held.Add(e.held, length)
		if rs[i-1].Value > limit || rs[i].Value > limit {
			e.above.Add(e.above, length)
			if e.passed == nil {
				e.passed = start
			}
		}
		if e.met == nil {
			e.met = start
		}
		if start.Cmp(rat(int64(rs[i-1].At))) != 0 || rs[i-1].Value < limit {
			run = new(big.Rat)
		}
		run = new(big.Rat).Add(run, length)
		if run.Cmp(e.longest) > 0 {
			e.longest = run
		}
		if (rs[i-1].Value >= limit) != (rs[i].Value >= limit) || (rs[i-1].Value > limit) != (rs[i].Value > limit) {
			e.crossings++
		}
	}
	return e
}

// overLimit returns the part of an interval at or above the limit, nil for none.
func overLimit(a, b series.Reading[units.Pressure], limit units.Pressure) (start, end *big.Rat) {
	start, end = rat(int64(a.At)), rat(int64(b.At))
	if a.Value < limit && b.Value < limit {
		return nil, nil
	}
	if a.Value >= limit && b.Value >= limit {
		return start, end
	}
	part := new(big.Rat).Quo(
		new(big.Rat).Sub(rat(int64(limit)), rat(int64(a.Value))),
		new(big.Rat).Sub(rat(int64(b.Value)), rat(int64(a.Value))))
	crossing := part.Mul(part, new(big.Rat).Sub(end, start))
	crossing.Add(crossing, start)
	if a.Value >= limit {
		return start, crossing
	}
	return crossing, end
}

func rat(n int64) *big.Rat { return new(big.Rat).SetInt64(n) }

// within requires want − slack ≤ got ≤ want, or the mirror of it for a negative slack.
func within(t *testing.T, got time.Duration, want *big.Rat, slack int64, what string) {
	t.Helper()
	low := new(big.Rat).Sub(want, rat(max(slack, 0)))
	high := new(big.Rat).Sub(want, rat(min(slack, 0)))
	g := rat(int64(got))
	require.True(t, g.Cmp(low) >= 0 && g.Cmp(high) <= 0, "%s: got %v, exactly %s, slack %d", what, int64(got), want.FloatString(3), slack)
}

func TestTimesAgainstExactFractions(t *testing.T) {
	randomRecords(t, func(_ *rand.Rand, s pressures, limit units.Pressure) {
		want := exactly(s, limit)
		held, err := s.AtOrAbove(limit)
		require.NoError(t, err)
		within(t, held, want.held, want.crossings, "at or above")
		exposed, err := s.Above(limit)
		require.NoError(t, err)
		within(t, exposed, want.above, -want.crossings, "above")
		hold, err := s.LongestAtOrAbove(limit)
		require.NoError(t, err)
		within(t, hold.Length(), want.longest, 2, "longest")
		met, found, err := s.FirstAtOrAbove(limit)
		require.NoError(t, err)
		require.Equal(t, want.met != nil, found)
		if found {
			within(t, met, want.met, -1, "first at or above")
		}
		passed, found, err := s.FirstAbove(limit)
		require.NoError(t, err)
		require.Equal(t, want.passed != nil, found)
		if found {
			within(t, passed, want.passed, 1, "first above")
		}
	})
}

// What holds upward holds downward for the record turned upside down.
func TestBothSidesAgree(t *testing.T) {
	randomRecords(t, func(_ *rand.Rand, s pressures, limit units.Pressure) {
		rs := s.Readings()
		for i := range rs {
			rs[i].Value = ^rs[i].Value // turns the order round without overflow
		}
		down, err := series.New(rs)
		require.NoError(t, err)

		same(t, s.AtOrAbove, down.AtOrBelow, limit)
		same(t, s.Above, down.Below, limit)
		same(t, s.LongestAtOrAbove, down.LongestAtOrBelow, limit)
		same(t, firstOf(s.FirstAtOrAbove), firstOf(down.FirstAtOrBelow), limit)
		same(t, firstOf(s.FirstAbove), firstOf(down.FirstBelow), limit)
	})
}

func same[A any](t *testing.T, up, down func(units.Pressure) (A, error), limit units.Pressure) {
	t.Helper()
	a, err := up(limit)
	require.NoError(t, err)
	b, err := down(^limit)
	require.NoError(t, err)
	require.Equal(t, a, b)
}

func firstOf(find func(units.Pressure) (time.Duration, bool, error)) func(units.Pressure) ([2]any, error) {
	return func(limit units.Pressure) ([2]any, error) {
		at, found, err := find(limit)
		return [2]any{at, found}, err
	}
}

// A stricter limit never gives a longer hold or a longer exposure, and bands that touch add up to
// the span to the nanosecond.
func TestTimesFallAsTheLimitRises(t *testing.T) {
	randomRecords(t, func(rng *rand.Rand, s pressures, limit units.Pressure) {
		higher := limit + units.Pressure(rng.Int63n(1_000)) + 1
		if higher < limit {
			return // past the range
		}
		heldLow, heldHigh := answer(t, s.AtOrAbove, limit), answer(t, s.AtOrAbove, higher)
		overLow, overHigh := answer(t, s.Above, limit), answer(t, s.Above, higher)
		require.LessOrEqual(t, heldHigh, heldLow)
		require.LessOrEqual(t, overHigh, overLow)
		require.LessOrEqual(t, heldHigh, overLow)
		require.LessOrEqual(t, overLow, heldLow+time.Duration(s.Len())) // the two round apart
		require.LessOrEqual(t, answer(t, s.LongestAtOrAbove, limit).Length(), heldLow)
		require.LessOrEqual(t, answer(t, s.LongestAtOrAbove, higher).Length(), answer(t, s.LongestAtOrAbove, limit).Length())

		between, err := s.Between(limit, higher)
		require.NoError(t, err)
		require.GreaterOrEqual(t, between, time.Duration(0))
		require.Equal(t, s.Span(), answer(t, s.AtOrBelow, limit)+between+overHigh)
		require.Equal(t, s.Span(), answer(t, s.Below, limit)+heldLow)
	})
}

func answer[A any](t *testing.T, question func(units.Pressure) (A, error), limit units.Pressure) A {
	t.Helper()
	a, err := question(limit)
	require.NoError(t, err)
	return a
}

// Cut at a reading, the parts add up exactly. Cut anywhere else, the value at the cut is rounded by
// half a quantum at most, so the parts lie between the answers one quantum either side.
func TestSplittingChangesNothing(t *testing.T) {
	randomRecords(t, func(rng *rand.Rand, s pressures, limit units.Pressure) {
		first, _ := s.First()
		last, _ := s.Last()
		cut, _ := s.At(rng.Intn(s.Len()))
		head, err := s.Slice(first.At, cut.At)
		require.NoError(t, err)
		tail, err := s.Slice(cut.At, last.At)
		require.NoError(t, err)
		require.Equal(t, answer(t, s.AtOrAbove, limit), answer(t, head.AtOrAbove, limit)+answer(t, tail.AtOrAbove, limit))
		require.Equal(t, answer(t, s.Above, limit), answer(t, head.Above, limit)+answer(t, tail.Above, limit))

		at := first.At
		if s.Span() > 0 {
			at += time.Duration(rng.Int63n(int64(s.Span())))
		}
		if limit == math.MinInt64 || limit == math.MaxInt64 {
			return
		}
		head, err = s.Slice(first.At, at)
		require.NoError(t, err)
		tail, err = s.Slice(at, last.At)
		require.NoError(t, err)
		sum := answer(t, head.AtOrAbove, limit) + answer(t, tail.AtOrAbove, limit)
		slack := time.Duration(s.Len() + 1) // a nanosecond for each crossing
		require.LessOrEqual(t, answer(t, s.AtOrAbove, limit+1), sum+slack)
		require.LessOrEqual(t, sum, answer(t, s.AtOrAbove, limit-1)+slack)
	})
}

// Reading by reading gives exactly what the whole record gives, at every length on the way.
func TestRunningIsTheBatch(t *testing.T) {
	randomRecords(t, func(_ *rand.Rand, s pressures, limit units.Pressure) {
		r, err := series.Watch(limit)
		require.NoError(t, err)
		var soFar pressures
		for _, reading := range s.Readings() {
			r, err = r.Next(reading)
			require.NoError(t, err)
			soFar, err = soFar.Append(reading)
			require.NoError(t, err)
			require.Equal(t, answer(t, soFar.AtOrAbove, limit), r.Total())
			require.Equal(t, answer(t, soFar.LongestAtOrAbove, limit), r.Longest())
			require.Equal(t, soFar.LongestGap(), r.LongestGap())
			require.Equal(t, soFar.Len(), r.Len())
			last, _ := soFar.Last()
			seen, ok := r.Last()
			require.True(t, ok)
			require.Equal(t, last, seen)
			require.LessOrEqual(t, r.Current().Length(), r.Longest().Length())
			if reading.Value < limit {
				require.Zero(t, r.Current())
			} else {
				require.Equal(t, reading.At, r.Current().To)
			}
		}
	})
}
