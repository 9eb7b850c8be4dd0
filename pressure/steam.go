package pressure

import (
	"math"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// SteamSource returns where saturated steam comes from: the citation for any figure of SteamPressure,
// SteamTemperature and the methods of Air that rest on them.
func SteamSource() cite.Citation {
	return cite.Citation{
		Source: cite.IAPWSR797,
		Where:  "region 4, equations 29 to 31, table 34",
		Basis:  cite.Computed,
	}
}

// The range of region 4 in pressure; in temperature it is 273.15 K to 647.096 K, the critical point.
const (
	lowestSteam  = 611_212_677 * micropascal // 611.212 677 Pa
	highestSteam = 22_064 * units.Kilopascal

	coldestSteam = 273_150 * units.Kelvins / 1_000
	hottestSteam = 647_096 * units.Kelvins / 1_000
)

// SteamTemperature returns the temperature at which water boils and steam condenses under an absolute pressure, from
// 611.212677 Pa to 22.064 MPa; anything else is a RangeError. Between 60 °C and 130 °C it is within 0.0033 K (0.006
// °F) of the scientific standard (IAPWS-95), on the temperature scale of 1990, where one atmosphere boils at 99.9743
// °C; rounded to the nearest quantum. Source: SteamSource.
func SteamTemperature(absolute units.Pressure) (units.Temperature, error) {
	if err := units.Check("absolute steam pressure", absolute, lowestSteam, highestSteam); err != nil {
		return units.Temperature{}, err
	}
	kelvins := region4.temperature(float64(absolute) * (1 / float64(units.Megapascal)))
	return units.FromAbsoluteZero(units.TemperatureChange(float64(kelvins*float64(units.Kelvins)) + 0.5)), nil
}

// SteamPressure returns the absolute pressure of saturated steam at a temperature from 273.15 K to 647.096 K;
// anything else is a RangeError, a temperature that is not set a units.UnsetError. Accuracy as for SteamTemperature;
// rounded to the nearest micropascal, so that SteamTemperature gives the same temperature back (but refuses it in the
// last 2 µK below the critical point, where the equation passes 22.064 MPa by 0.3 Pa). Source: SteamSource.
func SteamPressure(t units.Temperature) (units.Pressure, error) {
	kelvins := t.AboveAbsoluteZero()
	if kelvins < coldestSteam || kelvins > hottestSteam {
		low, high := units.FromAbsoluteZero(coldestSteam), units.FromAbsoluteZero(hottestSteam)
		return 0, units.CheckTemperature("steam temperature", t, low, high)
	}
	return nearestMicropascal(float64(region4.pressure(float64(kelvins)*(1/float64(units.Kelvins))) * 1e6)), nil
}

// SteamPart returns what steam contributes to a total absolute pressure, 0 to 22.064 MPa, when trapped air is the
// given share of the mixture by volume, 0 to 100 %; anything else is a RangeError. Exact but for one rounding to the
// nearest quantum. It explains why a canner is vented: the gauge shows the total, the heat follows the steam's part.
// By Dalton's law; how much air is left in a canner nobody can read off it.
func SteamPart(total units.Pressure, trapped units.Ratio) (units.Pressure, error) {
	if err := units.Check("absolute pressure", total, 0, highestSteam); err != nil {
		return 0, err
	}
	if err := units.Check("share of air", trapped, 0, units.One); err != nil {
		return 0, err
	}
	return units.Prorate(total, units.One-trapped, units.One)
}

// pressure returns the saturation pressure in MPa at a temperature in kelvins.
func (n *coefficients) pressure(t float64) float64 {
	theta := t + n[9]/(t-n[10]) // equation 29b
	square := float64(theta * theta)
	a := square + float64(n[1]*theta) + n[2]
	b := float64(n[3]*square) + float64(n[4]*theta) + n[5]
	c := float64(n[6]*square) + float64(n[7]*theta) + n[8]
	root := 2 * c / (-b + math.Sqrt(float64(b*b)-float64(4*a*c)))
	return root * root * root * root // equation 30
}

// temperature returns the saturation temperature in kelvins at a pressure in MPa. It solves the same quadratic, so
// the two are exact inverses.
func (n *coefficients) temperature(p float64) float64 {
	square := math.Sqrt(p)
	beta := math.Sqrt(square) // equation 29a
	e := square + float64(n[3]*beta) + n[6]
	f := float64(n[1]*square) + float64(n[4]*beta) + n[7]
	g := float64(n[2]*square) + float64(n[5]*beta) + n[8]
	d := 2 * g / (-f - math.Sqrt(float64(f*f)-float64(4*e*g)))
	sum := n[10] + d
	inner := float64(sum*sum) - float64(4*float64(n[9]+float64(n[10]*d)))
	return (sum - math.Sqrt(inner)) / 2 // equation 31
}
