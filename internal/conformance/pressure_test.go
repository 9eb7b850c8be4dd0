package conformance

import (
	"example.org/lakelarder/pressure"
	"example.org/lakelarder/units"
)

var pressureExempt = map[string]string{"Air.Cautions": sources, "AtmosphereSource": sources, "SteamSource": sources}

func pressureGrid(r *results) {
	for feet := units.Length(-3_250); feet <= 36_000; feet += 250 {
		air, err := pressure.AirAt(feet*units.Foot + 123_456*feet)
		r.add("AirAt", err, one(air), feet*units.Foot+123_456*feet)
		if err == nil {
			airGrid(r, air)
		}
	}
	for kPa := units.Pressure(40); kPa <= 110; kPa += 5 {
		air, err := pressure.AirReading(kPa*units.Kilopascal + 777_777)
		r.add("AirReading", err, one(air), kPa*units.Kilopascal+777_777)
		airGrid(r, air)
	}
	for k := units.TemperatureChange(27_400); k <= 64_700; k += 60 {
		t := units.FromAbsoluteZero(k*units.Kelvins/100 + 1_234)
		p, err := pressure.SteamPressure(t)
		r.add("SteamPressure", err, one(p), t)
		back, err := pressure.SteamTemperature(p + 98_765_432)
		r.add("SteamTemperature", err, one(back), p+98_765_432)
	}
	for share := units.Ratio(0); share <= 100; share += 7 {
		for kPa := units.Pressure(0); kPa <= 400; kPa += 33 {
			part, err := pressure.SteamPart(kPa*units.Kilopascal+1, share*units.Percent)
			r.add("SteamPart", err, one(part), kPa*units.Kilopascal+1, share*units.Percent)
		}
	}
}

func airGrid(r *results, air pressure.Air) {
	r.add("Air.Pressure", nil, one(air.Pressure()), air)
	altitude, err := air.Altitude()
	r.add("Air.Altitude", err, one(altitude), air)
	boiling, err := air.BoilingPoint()
	r.add("Air.BoilingPoint", err, one(boiling), air)
	for psi := units.Pressure(0); psi <= 15; psi += 5 {
		gauge := psi * units.PSI
		absolute, err := air.Absolute(gauge)
		r.add("Air.Absolute", err, one(absolute), air, gauge)
		steam, err := air.SteamUnder(gauge)
		r.add("Air.SteamUnder", err, one(steam), air, gauge)
		back, err := air.Gauge(absolute)
		r.add("Air.Gauge", err, one(back), air, absolute)
		needed, err := air.GaugeFor(steam)
		r.add("Air.GaugeFor", err, one(needed), air, steam)
	}
}
