package solution

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

var salometerCitation = cite.Citation{
	Source: cite.BCSaltbrine, Where: "correction of the salometer for temperature", Basis: cite.Read,
}

// FromSalometer returns the share by mass of a salometer reading at 60 °F; 60 degrees is 60*units.Percent. It must
// be 0 to 100: otherwise a RangeError. The scale whose 100 is 25 % is another one. A reading at another temperature
// goes through SalometerAt60 first.
func FromSalometer(degrees units.Ratio) (units.Ratio, error) {
	if err := units.Check("salometer reading", degrees, 0, units.One); err != nil {
		return 0, err
	}
	return units.Prorate(saturation, degrees, units.One) // P = 0.26395 SAL
}

// SalometerAt60 returns what a salometer made for 60 °F would read there, from its reading in a brine at another
// temperature: one degree more for every 10 °F above, one less for every 10 °F below, as published. The reading must
// be 0 to 100 degrees (one is units.Percent), the brine 0 to 25 °C, where the rule stays within 1.5 degrees of the
// density of brine; a corrected reading outside 0 to 100 is refused too: all RangeErrors. Source: Preparing a
// Saltbrine.
func SalometerAt60(reading units.Ratio, temperature units.Temperature) (units.Ratio, cite.Citation, error) {
	if err := units.Check("salometer reading", reading, 0, units.One); err != nil {
		return 0, cite.Citation{}, err
	}
	if err := units.CheckTemperature("brine temperature", temperature, coldest, warmest); err != nil {
		return 0, cite.Citation{}, err
	}
	warmer, err := temperature.Sub(sixty)
	if err != nil {
		return 0, cite.Citation{}, err
	}
	step, err := units.Prorate(units.Percent, warmer, 10*units.FahrenheitDegrees)
	if err != nil {
		return 0, cite.Citation{}, err
	}
	if err := units.Check("corrected salometer reading", reading+step, 0, units.One); err != nil {
		return 0, cite.Citation{}, err
	}
	return reading + step, salometerCitation, nil
}
