package smoke

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
)

// FuzzRunningHold: after every step the running hold says what AuditHold says of the record so far.
func FuzzRunningHold(f *testing.F) {
	f.Add([]byte{10, 120, 130, 140, 150, 160, 170, 180, 190, 200, 210, 220, 118}, []byte{200, 200, 200, 90, 200, 200, 220, 220, 200, 200, 200, 200, 200})
	f.Add([]byte{115, 115, 115, 115, 115, 115, 115, 115, 115}, []byte{115, 115, 114, 115, 116, 115, 115, 115, 115})
	f.Add([]byte{200, 200, 250, 200, 200, 200}, []byte{200, 200, 200, 200, 200, 200})
	f.Add([]byte("00x"), []byte("\x00\xffx")) // a low reading that swings is no bridge
	f.Add([]byte{200, 0, 200, 0, 255, 0, 200}, []byte{0, 200, 0, 255, 0, 200, 200})
	f.Fuzz(func(t *testing.T, one, two []byte) {
		n := min(len(one), len(two))
		if n == 0 || n > 60 {
			return
		}
		const maxGap = 4 * step
		h, err := WatchHold(pnwLimit, recorded(maxGap))
		require.NoError(t, err)
		require.Equal(t, []any{false, pnwLimit.Hold, time.Duration(0)}, []any{h.Met(), h.Owed(), h.Held()})
		var first, second []reading
		at := time.Duration(0)
		for i := 0; i < n; i++ {
			at += time.Duration(1+one[i]%4+two[i]%3) * step / 2
			if one[i] > 240 { // the logger slept
				at += 2 * maxGap
			}
			a := reading{At: at, Value: units.Fahrenheit(140 + 40*float64(one[i])/230)}
			b := reading{At: at, Value: units.Fahrenheit(140 + 40*float64(two[i])/230)}
			first, second = append(first, a), append(second, b)
			before := h
			h, err = h.Next(at, a.Value, b.Value)
			require.NoError(t, err)
			want, err := AuditHold(pnwLimit, recorded(maxGap, record(t, first...), record(t, second...)))
			require.NoError(t, err)
			require.Equal(t, want.Held, h.Held(), "step %d", i)
			require.Equal(t, want.Verdict == verdict.Met, h.Met())
			require.Equal(t, want.Owed, h.Owed())
			require.False(t, before.Met() && !h.Met(), "a hold that is met stays met")
			require.LessOrEqual(t, h.Current(), h.Held())
			require.True(t, h.Coldest() == a.Value || h.Coldest() == b.Value)
		}
	})
}

func TestRunningHoldRefuses(t *testing.T) {
	hot := units.Fahrenheit(185)
	for _, l := range []CoreLimit{{}, {AtLeast: units.Fahrenheit(140), Hold: time.Hour}, {AtLeast: hot, Hold: time.Minute}} {
		h, err := WatchHold(l, recorded(time.Minute))
		require.ErrorIs(t, err, units.ErrRange)
		require.Zero(t, h)
	}
	for _, gap := range []time.Duration{0, -1, 15*time.Minute + 1} {
		_, err := WatchHold(DefaultCoreLimit(), recorded(gap))
		require.ErrorIs(t, err, units.ErrRange)
	}
	_, err := RunningHold{}.Next(0, hot)
	require.ErrorIs(t, err, units.ErrRange)
	require.False(t, RunningHold{}.Met(), "what was never watched is not met")

	h, err := WatchHold(DefaultCoreLimit(), recorded(10*time.Minute))
	require.NoError(t, err)
	h, err = h.Next(time.Minute, hot, hot)
	require.NoError(t, err)
	for name, c := range map[string]struct {
		at    time.Duration
		cores []units.Temperature
		err   error
	}{
		"before the start": {-1, []units.Temperature{hot, hot}, series.ErrNegative},
		"the same time":    {time.Minute, []units.Temperature{hot, hot}, series.ErrRepeated},
		"back in time":     {time.Second, []units.Temperature{hot, hot}, series.ErrBackward},
		"no probe":         {time.Hour, nil, series.ErrEmpty},
		"a probe is gone":  {time.Hour, []units.Temperature{hot}, series.ErrMissing},
		"a probe too many": {time.Hour, []units.Temperature{hot, hot, hot}, series.ErrMissing},
		"not set":          {time.Hour, []units.Temperature{hot, {}}, series.ErrUnset},
		"in the air":       {time.Hour, []units.Temperature{units.Fahrenheit(212.1), hot}, units.ErrRange},
	} {
		after, err := h.Next(c.at, c.cores...)
		var fault ProbeError
		require.ErrorAs(t, err, &fault, name)
		require.ErrorIs(t, err, c.err, name)
		require.Equal(t, h, after, "%s: the hold stays as it was", name)
	}
}

func TestAGapBeginsAnew(t *testing.T) {
	h, err := WatchHold(DefaultCoreLimit(), recorded(15*time.Minute))
	require.NoError(t, err)
	for _, c := range []struct{ at, current, held time.Duration }{
		{0, 0, 0}, {15 * time.Minute, 15 * time.Minute, 15 * time.Minute}, {30*time.Minute + 1, 0, 15 * time.Minute}, {40*time.Minute + 1, 10 * time.Minute, 15 * time.Minute},
	} {
		h, err = h.Next(c.at, units.Fahrenheit(185))
		require.NoError(t, err)
		require.Equal(t, []time.Duration{c.current, c.held}, []time.Duration{h.Current(), h.Held()}, "%v", c.at)
	}
}

func TestWhatIsStillOwed(t *testing.T) {
	h, err := WatchHold(DefaultCoreLimit(), recorded(15*time.Minute))
	require.NoError(t, err)
	require.Equal(t, "30 minutes still owed", h.String())
	for _, c := range []struct {
		at   time.Duration
		core float64
		want string
	}{
		{0, 180, "30 minutes still owed"}, {10 * time.Minute, 181, "20 minutes still owed"}, {24 * time.Minute, 181, "6 minutes still owed"},
		{29*time.Minute - 1, 181, "2 minutes still owed"}, {29 * time.Minute, 181, "1 minute still owed"}, {30*time.Minute - 1, 180, "1 minute still owed"},
		{30 * time.Minute, 180, "the hold is met"}, {31 * time.Minute, 100, "the hold is met"},
	} {
		h, err = h.Next(c.at, units.Fahrenheit(c.core))
		require.NoError(t, err)
		require.Equal(t, c.want, h.String(), "%v", c.at)
	}
}
