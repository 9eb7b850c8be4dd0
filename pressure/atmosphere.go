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
	h := earthRadius * z / (earthRadius + z)               // equation 18
	colder := 1 - float64(lapseRate/seaLevelTemperature*h) // T/T0 by equation 23
	return ofColder(colder)                                // equation 33a
}

// ofColder is p0 x^exponent for x from 48/64 to 66/64, which the range of AirAt stays within: the power in the middle m
// of a 64th, times the binomial series of (x/m)^exponent, of which the first term left out is below 1e-19. Within 0.65 of
// a last digit.
func ofColder(x float64) float64 {
	const (
		c1 = exponent
		c2 = c1 * (exponent - 1) / 2
		c3 = c2 * (exponent - 2) / 3
		c4 = c3 * (exponent - 3) / 4
		c5 = c4 * (exponent - 4) / 5
		c6 = c5 * (exponent - 5) / 6
		c7 = c6 * (exponent - 6) / 7
	)
	part := int(x * 64)
	middle := float64(float64(2*part+1) / 128)
	t := (x - middle) / middle
	tt := float64(t * t)
	series := c1 + float64(t*c2) + float64(tt*(c3+float64(t*c4)+float64(tt*(c5+float64(t*c6)+float64(tt*c7)))))
	entry := standardAirTable[part-48]
	return entry.high + (entry.low + float64(entry.high*float64(t*series)))
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
