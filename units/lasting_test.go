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
