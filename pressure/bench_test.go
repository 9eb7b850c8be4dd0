package pressure_test

import (
	"testing"

	"example.org/lakelarder/pressure"
	"example.org/lakelarder/units"
)

var (
	kept         units.Temperature
	keptPressure units.Pressure
)

func BenchmarkStandardAir(b *testing.B) {
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		air, err := pressure.AirAt(2000*units.Foot + units.Length(i&1023)*units.Metre)
		if err != nil {
			b.Fatal(err)
		}
		keptPressure = air.Pressure()
	}
}

func BenchmarkSteamPressure(b *testing.B) {
	b.ReportAllocs()
	t := units.Celsius(60)
	for i := 0; i < b.N; i++ {
		var err error
		if keptPressure, err = pressure.SteamPressure(t.Add(units.TemperatureChange(i&1023) * units.Kelvins / 16)); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkSteamTemperature(b *testing.B) {
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		var err error
		if kept, err = pressure.SteamTemperature(units.Atmosphere + units.Pressure(i&1023)*100*units.Pascal); err != nil {
			b.Fatal(err)
		}
	}
}

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
