package coldchain

import (
	"testing"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

func BenchmarkIceFor(b *testing.B) {
	trip := Trip{
		Fish: 25 * units.Kilogram, From: units.Celsius(14), To: units.Celsius(0), Box: MeltRate{PerHour: 9 * units.Gram},
		Outside: units.Celsius(24), For: 10 * time.Hour, Spare: 25 * units.Percent,
	}
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		if _, err := IceFor(trip); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkChillTime(b *testing.B) {
	for name, shape := range chillShapes {
		fish := FishToChill(shape, 9*units.Centimetre, 11*units.Centimetre, units.Celsius(16))
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			for i := 0; i < b.N; i++ {
				if _, err := ChillTime(fish, CrushedIceFilm(), units.Celsius(0), units.Fahrenheit(38)); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

func BenchmarkCheckKeeping(b *testing.B) {
	at := units.Fahrenheit(0)
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		if _, err := CheckKeeping(RawTrout, InFreezer, at, 3*month); err != nil {
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
	life := StorageLives()[0]
	b.ReportAllocs()
	b.ResetTimer()
	for i := 0; i < b.N; i++ {
		if _, err := life.Use(record, time.Hour); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkJudgeStore(b *testing.B) {
	at := units.Fahrenheit(43)
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		if _, err := JudgeStore(InRefrigerator, at); err != nil {
			b.Fatal(err)
		}
	}
}
