package coldchain_test

import (
	"testing"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/yield/coldchain"
	"example.org/lakelarder/yield/coldchain/internal/logged"
)

func benchmark(b *testing.B, mean, swing float64) {
	s := logged.Invented(b, mean, swing)
	terms := coldchain.Terms{MaxGap: time.Hour}
	b.ReportAllocs()
	b.ResetTimer()
	for i := 0; i < b.N; i++ {
		if _, err := coldchain.Audit(s, terms); err != nil {
			b.Fatal(err)
		}
	}
}

// Ten thousand readings against every limit: on ice, in a refrigerator that swings, and left out (every limit passed).
func BenchmarkExposureOnIce(b *testing.B)        { benchmark(b, 31, 0.5) }
func BenchmarkExposureRefrigerator(b *testing.B) { benchmark(b, 39, 3) }
func BenchmarkExposureLeftOut(b *testing.B)      { benchmark(b, 75, 30) }

// One more reading of a live probe, among all rules, with everything still kept.
func BenchmarkRunningExposureNext(b *testing.B) {
	running, err := coldchain.Watch(coldchain.Terms{MaxGap: time.Hour})
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
