package ice_test

import (
	"testing"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain/ice"
)

func BenchmarkIceFor(b *testing.B) {
	trip := ice.Trip{
		Fish: 25 * units.Kilogram, From: units.Celsius(14), To: units.Celsius(0), Box: ice.MeltRate{PerHour: 9 * units.Gram},
		Outside: units.Celsius(24), For: 10 * time.Hour, Spare: 25 * units.Percent,
	}
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		if _, err := ice.Plan(trip); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkChillTime(b *testing.B) {
	for name, shape := range chillShapes {
		fish := ice.FishOf(shape, 9*units.Centimetre, 11*units.Centimetre, units.Celsius(16))
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			for i := 0; i < b.N; i++ {
				if _, err := ice.ChillTime(fish, ice.CrushedFilm(), units.Celsius(0), units.Fahrenheit(38)); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
