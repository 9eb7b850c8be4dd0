package pressure

import (
	"math"

	"example.org/lakelarder/internal/portable"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// AtmosphereSource returns where the standard air comes from: the citation for any figure of AirAt and Air.Altitude.
func AtmosphereSource() cite.Citation {
	return cite.Citation{
		Source: cite.USStandardAtmosphere1976,
		Where:  "equations 18, 23 and 33a, lowest layer",
		Basis:  cite.Computed,
	}
}

// Constants of the US Standard Atmosphere 1976 in SI units. ISO 2533 takes M0 as 28.964 420 kg/kmol; that moves the
// pressure by less than 5e-7 of its value below 5,000 m.
const (
	seaLevelPressure    = 101_325     // p0, Pa
	seaLevelTemperature = 288.15      // T0, K
	lapseRate           = 0.006_5     // -L, K per geopotential metre, 0 to 11,000 m
	standardGravity     = 9.806_65    // g0, m/s²
	molarMass           = 28.964_4    // M0, kg/kmol
	gasConstant         = 8_314.32    // R*, J/(kmol·K)
	earthRadius         = 6_356_766.0 // r0, m

	exponent = standardGravity * molarMass / (gasConstant * lapseRate) // 5.255 876 113…
)

// standardPressure returns the pressure in pascals at a geometric height in metres.
func standardPressure(z float64) float64 {
	h := earthRadius * z / (earthRadius + z)                              // equation 18
	colder := 1 - float64(lapseRate/seaLevelTemperature*h)                // T/T0 by equation 23
	return seaLevelPressure * portable.Exp(exponent*portable.Log(colder)) // equation 33a: p0 (T/T0)^exponent
}

// standardAltitude is its inverse: the geometric height in metres of a pressure in pascals.
func standardAltitude(p float64) float64 {
	cooling := portable.Log(p/seaLevelPressure) / exponent                   // equation 33a
	h := float64(-seaLevelTemperature / lapseRate * portable.Expm1(cooling)) // equation 23
	return earthRadius * h / (earthRadius - h)                               // equation 18 solved for Z
}

// micropascal is the step to which computed pressures are rounded.
const micropascal = units.Pascal / 1_000_000

// nearestMicropascal rounds pascals, zero or more: equations good to fourteen digits carry no more than that.
func nearestMicropascal(p float64) units.Pressure {
	return units.Pressure(float64(p*1e6)+0.5) * micropascal
}

// nearestMicrometre rounds metres: the air's pressure carries no more than that.
func nearestMicrometre(z float64) units.Length {
	return units.Length(math.Round(z*1e6)) * units.Micrometre
}
