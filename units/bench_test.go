package units_test

import (
	"testing"

	"github.com/shopspring/decimal"

	"example.org/lakelarder/units"
)

func BenchmarkParseLength(b *testing.B) {
	for _, text := range []string{"2000 ft", "1326.5 m", "3 1/2 in"} {
		b.Run(text, func(b *testing.B) {
			b.ReportAllocs()
			for i := 0; i < b.N; i++ {
				if _, err := units.ParseLength(text); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

func BenchmarkParseTemperature(b *testing.B) {
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		if _, err := units.ParseTemperature("121.1 °C"); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkReadTyped(b *testing.B) {
	for _, text := range []string{"1.4 kg", "7 lbs. 4 oz.", "two and a half pounds", "1,500 kg"} {
		b.Run(text, func(b *testing.B) {
			b.ReportAllocs()
			for i := 0; i < b.N; i++ {
				if v, err := units.ReadTyped[units.Mass](text); (err == nil) != (v.Value != 0) {
					b.Fatal(err)
				}
			}
		})
	}
}

func BenchmarkString(b *testing.B) {
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		if (2000 * units.Foot).String() == "" {
			b.Fatal("empty")
		}
	}
}

func BenchmarkProrate(b *testing.B) {
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		if _, err := units.Prorate(30*units.Gram, 623*units.Gram, units.Kilogram); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkOf(b *testing.B) {
	b.ReportAllocs()
	n := decimal.RequireFromString("1326.5")
	for i := 0; i < b.N; i++ {
		if _, err := units.Of(n, units.Metre); err != nil {
			b.Fatal(err)
		}
	}
}
