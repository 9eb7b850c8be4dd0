package keeping_test

import (
	"testing"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/yield/coldchain/internal/chain"
	"example.org/lakelarder/yield/coldchain/keeping"
)

func BenchmarkCheckKeeping(b *testing.B) {
	at := units.Fahrenheit(0)
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		if _, err := keeping.Check(keeping.RawTrout, keeping.InFreezer, at, 3*chain.Month); err != nil {
			b.Fatal(err)
		}
	}
}

// Ten thousand readings of a freezer that swings through two points of the table.
func BenchmarkStorageLifeUse(b *testing.B) {
	readings := make([]series.Reading[units.Temperature], 10_000)
	for i := range readings {
		readings[i] = reading(time.Duration(i)*10*time.Minute, -17+float64(i%97)/20-float64(i%31)/3)
	}
	record, err := series.New(readings)
	if err != nil {
		b.Fatal(err)
	}
	life := keeping.FrozenLives()[0]
	b.ReportAllocs()
	b.ResetTimer()
	for i := 0; i < b.N; i++ {
		if _, err := life.Audit(record, time.Hour); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkJudgeStore(b *testing.B) {
	at := units.Fahrenheit(43)
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		if _, err := keeping.CheckStore(keeping.InRefrigerator, at); err != nil {
			b.Fatal(err)
		}
	}
}
