package units_test

import (
	"fmt"
	"math"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
)

func ExampleLasting() {
	for _, d := range []time.Duration{30 * time.Minute, 110 * time.Minute, 36 * time.Hour, 1500 * time.Millisecond} {
		fmt.Println(units.Lasting(d))
	}
	// Output:
	// 30 min
	// 110 min
	// 36 h
	// 1.5s
}

func TestLasting(t *testing.T) {
	for want, d := range map[string]time.Duration{
		"0 min": 0, "1 s": time.Second, "1 min 1 s": 61 * time.Second, "1 h": time.Hour, "60 min 1 s": time.Hour + time.Second, "2 h": 2 * time.Hour, "179 min": 179 * time.Minute, "4 h 10 min": 250 * time.Minute, "168 h": 7 * 24 * time.Hour,
		"-90 min": -90 * time.Minute, "-1 s": -time.Second, "1ns": 1, "1h0m0.5s": time.Hour + time.Second/2,
	} {
		require.Equal(t, want, units.Lasting(d))
	}
	for _, d := range []time.Duration{math.MaxInt64, math.MinInt64} { // never cut
		require.Equal(t, d.String(), units.Lasting(d))
	}
}

func ExampleParseLasting() {
	for _, text := range []string{"1 h 50 min", "100 min", "1 1/2 h", "36 h", "1.5s"} {
		d, err := units.ParseLasting(text)
		fmt.Println(d, err)
	}
	_, err := units.ParseLasting("1:40")
	fmt.Println(err)
	// Output:
	// 1h50m0s <nil>
	// 1h40m0s <nil>
	// 1h30m0s <nil>
	// 36h0m0s <nil>
	// 1.5s <nil>
	// cannot read "1:40" as a time: unknown unit ":"; expected one of min, h, s, d, wk, ms, µs, ns
}

// TestLastingReadsBack: every time reads back from what Lasting prints.
func TestLastingReadsBack(t *testing.T) {
	for _, d := range []time.Duration{
		0, 1, -1, 999, time.Microsecond, 1500 * time.Microsecond, time.Millisecond, time.Second, 59 * time.Second,
		-90 * time.Minute, time.Hour + time.Second/2, 168 * time.Hour, math.MaxInt64, math.MinInt64,
		math.MaxInt64 / time.Second * time.Second, math.MinInt64 / time.Hour * time.Hour,
	} {
		back, err := units.ParseLasting(units.Lasting(d))
		require.NoError(t, err, units.Lasting(d))
		require.Equal(t, d, back, units.Lasting(d))
	}
	for _, text := range []string{
		"", "5", "h", "1:40", "1 month", "1 y", "min 5", "40 min 1 h", "1 h 60 min", "1,5 h", "5 H", "5 mins", "1 h and 2 min",
	} {
		_, err := units.ParseLasting(text)
		require.ErrorIs(t, err, units.ErrSyntax, text)
	}
	for _, text := range []string{"2562048 h", "9223372036.854775808 s", "-9223372036.854775809 s", "1e30 d"} {
		_, err := units.ParseLasting(text)
		require.ErrorIs(t, err, units.ErrRange, text)
	}
}
