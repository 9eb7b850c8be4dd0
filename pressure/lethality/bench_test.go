package lethality_test

import (
	"math"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/pressure/lethality"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// tenThousand readings a second apart, up and down as a retort goes.
func tenThousand(b *testing.B) temperatures {
	readings := make([]series.Reading[units.Temperature], 10_000)
	for i := range readings {
		readings[i] = series.Reading[units.Temperature]{At: time.Duration(i) * time.Second, Value: units.Celsius(100 + 15*math.Sin(float64(i)/500))}
	}
	s, err := series.New(readings)
	require.NoError(b, err)
	return s
}

func BenchmarkF(b *testing.B) {
	s := tenThousand(b)
	ref := lethality.F0()
	b.ReportAllocs()
	b.ResetTimer()
	for i := 0; i < b.N; i++ {
		if _, err := lethality.F(s, ref); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkFloor is what the plain way costs at least: one exponential a reading, and reading it.
func BenchmarkFloor(b *testing.B) {
	s := tenThousand(b)
	b.Run("exponentials", func(b *testing.B) {
		sum := 0.
		for i := 0; i < b.N; i++ {
			for j := 0; j < 10_000; j++ {
				sum += math.Exp(-float64(j&1023) * 0.01)
			}
		}
		require.NotZero(b, sum)
	})
	b.Run("readings", func(b *testing.B) {
		var sum time.Duration
		for i := 0; i < b.N; i++ {
			for j := 0; j < s.Len(); j++ {
				r, _ := s.At(j)
				sum += r.At + time.Duration(r.Value.AboveAbsoluteZero())
			}
		}
		require.NotZero(b, sum)
	})
}

// BenchmarkFDropouts has a reading of a broken probe in every hundred.
func BenchmarkFDropouts(b *testing.B) {
	readings := tenThousand(b).Readings()
	for i := 50; i < len(readings); i += 100 {
		readings[i].Value = units.Celsius(-50)
	}
	s, err := series.New(readings)
	require.NoError(b, err)
	b.ReportAllocs()
	b.ResetTimer()
	for i := 0; i < b.N; i++ {
		if _, err := lethality.F(s, lethality.F0()); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkRunning(b *testing.B) {
	r, err := lethality.Start(lethality.F0())
	require.NoError(b, err)
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		if r, err = r.Next(series.Reading[units.Temperature]{At: time.Duration(i+1) * time.Second, Value: units.Celsius(90 + float64(i%20))}); err != nil {
			b.Fatal(err)
		}
	}
}

// A 240-minute curve of the centre at one-minute steps.
func BenchmarkWarm(b *testing.B) {
	medium, err := series.New([]series.Reading[units.Temperature]{
		{At: 0, Value: units.Celsius(10)}, {At: 15 * time.Minute, Value: units.Celsius(116)}, {At: 115 * time.Minute, Value: units.Celsius(116)},
		{At: 211 * time.Minute, Value: units.Celsius(20)}, {At: 240 * time.Minute, Value: units.Celsius(20)},
	})
	require.NoError(b, err)
	b.ReportAllocs()
	b.ResetTimer()
	for i := 0; i < b.N; i++ {
		if _, err := pint.Warm(units.Celsius(10), medium, lethality.Point{}, time.Minute); err != nil {
			b.Fatal(err)
		}
	}
}

// A hundred times at the centre of a jar whose medium is held.
func BenchmarkHundredTimes(b *testing.B) {
	medium, err := series.New([]series.Reading[units.Temperature]{{At: 0, Value: units.Celsius(116)}, {At: 100 * time.Minute, Value: units.Celsius(116)}})
	require.NoError(b, err)
	b.ReportAllocs()
	b.ResetTimer()
	for i := 0; i < b.N; i++ {
		if _, err := pint.Warm(units.Celsius(10), medium, lethality.Point{}, time.Minute); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkFollow(b *testing.B) {
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		if _, err := pint.Follow(pintRun, lethality.F0()); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkEigenvalues(b *testing.B) {
	for _, s := range []lethality.Shape{lethality.Slab, lethality.InfiniteCylinder, lethality.Sphere} {
		body := lethality.Transient{Shape: s, Biot: 75 * lethality.One / 10}
		b.Run(s.String(), func(b *testing.B) {
			b.ReportAllocs()
			for i := 0; i < b.N; i++ {
				if _, err := body.Eigenvalues(30); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
