package pressure_test

import (
	"testing"

	"example.org/lakelarder/pressure"
	"example.org/lakelarder/units"
)

var kept units.Temperature

func BenchmarkSteamFromGaugeAndAltitude(b *testing.B) {
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		air, err := pressure.AirAt(2000*units.Foot + units.Length(i&1023))
		if err != nil {
			b.Fatal(err)
		}
		if kept, err = air.SteamUnder(11 * units.PSI); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkSteamFromGauge(b *testing.B) {
	b.ReportAllocs()
	air, err := pressure.AirAt(2000 * units.Foot)
	if err != nil {
		b.Fatal(err)
	}
	for i := 0; i < b.N; i++ {
		if kept, err = air.SteamUnder(11*units.PSI + units.Pressure(i&1023)); err != nil {
			b.Fatal(err)
		}
	}
}
