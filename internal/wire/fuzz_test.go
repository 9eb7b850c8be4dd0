package wire_test

import (
	"encoding/json"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

func FuzzUnmarshal(f *testing.F) {
	for _, c := range faults {
		if len(c.in) < 1000 {
			f.Add([]byte(c.in))
		}
	}
	for _, c := range forms {
		f.Add([]byte(c.want))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		for _, into := range []any{new(plain), new(kept), new(asked), new(result), new(holder), new([]finding), new(time.Duration)} {
			heldTo(t, data, into)
		}
		var ours, theirs string
		if wire.Unmarshal(data, &ours) == nil {
			require.NoError(t, json.Unmarshal(data, &theirs))
			require.Equal(t, theirs, ours)
		}
		var count, same int64
		if wire.Unmarshal(data, &count) == nil {
			require.NoError(t, json.Unmarshal(data, &same))
			require.Equal(t, same, count)
		}
	})
}

func FuzzTimes(f *testing.F) {
	for _, d := range []int64{0, 1, -1, 1e9, 6e12, 1<<63 - 1, -1 << 63, 1500e6} {
		f.Add(d, units.Lasting(time.Duration(d)))
	}
	f.Fuzz(func(t *testing.T, n int64, s string) {
		var back time.Duration
		out, err := wire.Marshal(time.Duration(n))
		require.NoError(t, err)
		require.NoError(t, wire.Unmarshal(out, &back))
		require.Equal(t, time.Duration(n), back)
		in, err := wire.Marshal(s)
		if err != nil || wire.Unmarshal(in, &back) != nil {
			return
		}
		if theirs, err := time.ParseDuration(s); err == nil { // where both read it, they read the same
			require.Equal(t, theirs, back, s)
		}
	})
}
