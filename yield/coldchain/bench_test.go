package coldchain

import (
	"math"
	"testing"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// invented is an invented logger's week: a reading a minute, a swing of a few degrees and a saw of noise.
func invented(b *testing.B, mean, swing float64) series.Series[units.Temperature] {
	b.Helper()
	readings := make([]series.Reading[units.Temperature], 10_000)
	for i := range readings {
		f := mean + float64(swing*math.Sin(float64(i)/230)) + float64(i%7)/10
		readings[i] = series.Reading[units.Temperature]{At: time.Duration(i) * time.Minute, Value: units.Fahrenheit(f)}
	}
	s, err := series.New(readings)
	if err != nil {
		b.Fatal(err)
	}
	return s
}

func benchmark(b *testing.B, mean, swing float64) {
	s := invented(b, mean, swing)
	terms := Terms{MaxGap: time.Hour}
	b.ReportAllocs()
	b.ResetTimer()
	for i := 0; i < b.N; i++ {
		if _, err := Exposure(s, terms); err != nil {
			b.Fatal(err)
		}
	}
}

// Ten thousand readings against every limit: on ice, in a refrigerator that swings, and left out (every limit passed).
func BenchmarkExposureOnIce(b *testing.B)        { benchmark(b, 31, 0.5) }
func BenchmarkExposureRefrigerator(b *testing.B) { benchmark(b, 39, 3) }
func BenchmarkExposureLeftOut(b *testing.B)      { benchmark(b, 75, 30) }

// Ten thousand readings as time on ice: by the square root, through the frost, and by an exponential.
func BenchmarkIceDays(b *testing.B)       { benchmarkIceDays(b, FreshFish, 39) }
func BenchmarkIceDaysFrozen(b *testing.B) { benchmarkIceDays(b, FreshFish, 14) }
func BenchmarkIceDaysSmoked(b *testing.B) { benchmarkIceDays(b, ColdSmokedSalmon, 39) }

func benchmarkIceDays(b *testing.B, law SpoilageLaw, mean float64) {
	s := invented(b, mean, 3)
	b.ReportAllocs()
	b.ResetTimer()
	for i := 0; i < b.N; i++ {
		if _, err := IceDays(s, law, time.Hour); err != nil {
			b.Fatal(err)
		}
	}
}

// One more reading of a live probe, among all rules, with everything still kept.
func BenchmarkRunningExposureNext(b *testing.B) {
	running, err := WatchExposure(Terms{MaxGap: time.Hour})
	if err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		reading := series.Reading[units.Temperature]{At: time.Duration(i) * time.Minute, Value: units.Fahrenheit(29)}
		if running, err = running.Next(reading); err != nil {
			b.Fatal(err)
		}
	}
}

// Ten thousand readings as a share of the time to toxin, each line integrated by itself.
func BenchmarkToxinShare(b *testing.B) {
	s := invented(b, 50, 8)
	b.ReportAllocs()
	b.ResetTimer()
	for i := 0; i < b.N; i++ {
		if _, err := ToxinShare(s, time.Hour); err != nil {
			b.Fatal(err)
		}
	}
}
