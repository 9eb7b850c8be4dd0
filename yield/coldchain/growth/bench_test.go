package growth_test

import (
	"testing"
	"time"

	"example.org/lakelarder/yield/coldchain/growth"
	"example.org/lakelarder/yield/coldchain/internal/logged"
)

// Ten thousand readings as a share of the time to toxin, each line integrated by itself.
func BenchmarkToxinShare(b *testing.B) {
	s := logged.Invented(b, 50, 8)
	b.ReportAllocs()
	b.ResetTimer()
	for i := 0; i < b.N; i++ {
		if _, err := growth.ToxinShare(s, time.Hour); err != nil {
			b.Fatal(err)
		}
	}
}
