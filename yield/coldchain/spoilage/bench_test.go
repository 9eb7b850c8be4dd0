package spoilage_test

import (
	"testing"
	"time"

	"example.org/lakelarder/yield/coldchain/internal/logged"
	"example.org/lakelarder/yield/coldchain/spoilage"
)

// Ten thousand readings as time on ice: by the square root, through the frost, and by an exponential.
func BenchmarkIceDays(b *testing.B) { benchmarkIceDays(b, spoilage.FreshFish, 39) }

func BenchmarkIceDaysFrozen(b *testing.B) { benchmarkIceDays(b, spoilage.FreshFish, 14) }

func BenchmarkIceDaysSmoked(b *testing.B) { benchmarkIceDays(b, spoilage.ColdSmokedSalmon, 39) }

func benchmarkIceDays(b *testing.B, law spoilage.Law, mean float64) {
	s := logged.Invented(b, mean, 3)
	b.ReportAllocs()
	b.ResetTimer()
	for i := 0; i < b.N; i++ {
		if _, err := spoilage.IceDays(s, law, time.Hour); err != nil {
			b.Fatal(err)
		}
	}
}
