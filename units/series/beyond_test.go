package series_test

import (
	"fmt"
	"math"
	"math/rand"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

func ExampleBeyond() {
	held := series.Beyond(4*time.Minute, 14*units.PSI, 12*units.PSI, 13*units.PSI)
	fmt.Println(held)
	fmt.Println(series.Beyond(4*time.Minute, units.Fahrenheit(36), units.Fahrenheit(40), units.Fahrenheit(37))) // in the cold
	// Output:
	// 2m0s
	// 1m0s
}

func ExampleAlong() {
	a := series.Reading[units.Pressure]{At: 10 * time.Minute, Value: 12 * units.PSI}
	b := series.Reading[units.Pressure]{At: 14 * time.Minute, Value: 14 * units.PSI}
	fmt.Println(units.Text(series.Along(a, b, 11*time.Minute), units.PSI, 2))
	// Output: 12.50 psi
}

// What lies wholly on one side has all of the time or none of it, and a line that does not move has it only at the limit.
func TestBeyondOnOneSide(t *testing.T) {
	const dt = time.Minute
	for _, c := range []struct {
		far, near, limit units.Pressure
		want             time.Duration
	}{
		{14, 12, 15, 0}, {14, 12, 14, 0}, {14, 12, 12, dt}, {14, 12, 11, dt}, {14, 12, 13, dt / 2},
		{12, 14, 11, 0}, {12, 14, 12, 0}, {12, 14, 14, dt}, {12, 14, 15, dt}, {12, 14, 13, dt / 2},
		{13, 13, 13, dt}, {13, 13, 12, 0}, {13, 13, 14, 0}, {1, 0, 1, 0},
		{math.MaxInt64, math.MinInt64, 0, dt/2 - 1}, {math.MinInt64, math.MaxInt64, 0, dt / 2},
	} {
		require.Equal(t, c.want, series.Beyond(dt, c.far, c.near, c.limit), "%d to %d, limit %d", c.far, c.near, c.limit)
		require.Zero(t, series.Beyond(0, c.far, c.near, c.limit))
		require.Zero(t, series.Beyond(-dt, c.far, c.near, c.limit))
	}
}

// Beyond is what a series of the two readings holds at or above the limit, and at or below it to the rounding.
func TestBeyondAgreesWithASeries(t *testing.T) {
	random := rand.New(rand.NewSource(1))
	for i := 0; i < 5000; i++ {
		a, b := units.Mass(random.Int63n(2000)-1000), units.Mass(random.Int63n(2000)-1000)
		limit, dt := units.Mass(random.Int63n(2000)-1000), time.Duration(1+random.Int63n(1e9))
		if a == b {
			continue
		}
		s, err := series.New([]series.Reading[units.Mass]{{At: 0, Value: a}, {At: dt, Value: b}})
		require.NoError(t, err)
		above, err := s.AtOrAbove(limit)
		require.NoError(t, err)
		below, err := s.AtOrBelow(limit)
		require.NoError(t, err)
		require.Equal(t, above, series.Beyond(dt, max(a, b), min(a, b), limit))
		require.Equal(t, below, series.Beyond(dt, min(a, b), max(a, b), limit))
	}
}

// A line is the same read from either end, and is what a series has there.
func TestAlongAgreesWithASeries(t *testing.T) {
	random := rand.New(rand.NewSource(2))
	for i := 0; i < 2000; i++ {
		a := series.Reading[units.Pressure]{At: time.Duration(random.Int63n(1000)), Value: units.Pressure(random.Int63n(1e6))}
		b := series.Reading[units.Pressure]{At: a.At + 1 + time.Duration(random.Int63n(1000)), Value: units.Pressure(random.Int63n(1e6))}
		at := a.At + time.Duration(random.Int63n(int64(b.At-a.At)+1))
		s, err := series.New([]series.Reading[units.Pressure]{a, b})
		require.NoError(t, err)
		want, err := s.ValueAt(at)
		require.NoError(t, err)
		require.Equal(t, want, series.Along(a, b, at))
		require.Equal(t, want, series.Along(b, a, at))
		require.Equal(t, a.Value, series.Along(a, b, a.At-1))
		require.Equal(t, b.Value, series.Along(a, b, b.At+1))
	}
}
