package moistair

import (
	"example.org/lakelarder/units"
)

// DryBulb returns what a dry thermometer shows in the air, exactly as given.
func (a Air) DryBulb() units.Temperature { return a.dryBulb }

// Pressure returns the pressure of the air, exactly as given; zero when the Air is not stated.
func (a Air) Pressure() units.Pressure { return a.pressure }

// HumidityRatio returns the water vapour to the dry air by mass, to the nearest 1e-12.
func (a Air) HumidityRatio() units.Ratio { return a.humidity }

// RelativeHumidity returns the pressure of the vapour as a share of that at saturation, to the nearest 1e-12. Above the boiling point
// it stays well below 100 % however much steam there is. An Air that is not stated is a units.UnsetError.
func (a Air) RelativeHumidity() (units.Ratio, error) {
	if err := a.check(); err != nil {
		return 0, err
	}
	return units.OfFloat(a.vapour()/saturation(a.dryBulb.Celsius()), units.One) // eq. 22
}

// DewPoint returns the temperature at which the air would be saturated, a frost point at and below 0.01 °C, to the nearest quantum: never above the
// wet bulb. Air without water, or with a dew point below -100 °C, is a units.RangeError, an Air that is not stated a
// units.UnsetError.
func (a Air) DewPoint() (units.Temperature, error) {
	if err := a.check(); err != nil {
		return units.Temperature{}, err
	}
	vapour := a.vapour()
	if vapour < saturation(coldest) {
		return units.Temperature{}, units.RangeError{What: "dew point", Got: "that of air with a humidity ratio of " + a.humidity.String(), Low: "-100 °C"}
	}
	return units.Celsius(saturationAt(vapour, a.dryBulb.Celsius())), nil // eq. 36
}

// WetBulb returns the thermodynamic wet bulb to the nearest quantum: the temperature at which a wet surface settles in this air, and so
// the ceiling for a wet fillet however hot the air is. It lies between dew point and dry bulb, and more water in the air never
// lowers it. An Air that is not stated is a units.UnsetError. Source: Source, equations 33 and 35.
func (a Air) WetBulb() (units.Temperature, error) {
	if err := a.check(); err != nil {
		return units.Temperature{}, err
	}
	return units.Celsius(a.wetSurface(1)), nil
}

// WetSurface returns the temperature at which a surface of a water activity settles in this air, to the nearest quantum:
// at an activity of 1 the wet bulb, below it warmer. The activity must be above the relative humidity, as for Evaporate:
// otherwise a units.RangeError, and a units.UnsetError for an Air that is not stated.
func (a Air) WetSurface(activity units.Ratio) (units.Temperature, error) {
	if err := checkWet(a, activity); err != nil {
		return units.Temperature{}, err
	}
	return units.Celsius(a.wetSurface(units.Float(activity, units.One))), nil
}

// Enthalpy returns the heat content per kilogram of dry air, counted from dry air and water at 0 °C, to the nearest millijoule.
// An Air that is not stated is a units.UnsetError.
func (a Air) Enthalpy() (units.SpecificEnergy, error) {
	if err := a.check(); err != nil {
		return 0, err
	}
	t := a.dryBulb.Celsius()
	w := units.Float(a.humidity, units.One)
	return units.OfFloat(float64(1.006*t)+float64(w*(2501+float64(1.86*t))), units.KilojoulePerKilogram) // eq. 30
}

// Volume returns the volume of moist air that holds one kilogram of dry air. An Air that is not stated is a units.UnsetError.
func (a Air) Volume() (units.Volume, error) {
	if err := a.check(); err != nil {
		return 0, err
	}
	return units.OfFloat(a.cubicMetres(), 1000*units.Litre)
}

// Density returns the mass of moist air, its vapour included, in a volume. An Air that is not stated is a units.UnsetError.
func (a Air) Density() (units.Density, error) {
	if err := a.check(); err != nil {
		return 0, err
	}
	return units.OfFloat((1+units.Float(a.humidity, units.One))/a.cubicMetres(), units.KilogramPerCubicMetre)
}

// Heated returns the same air, with the water in it, at another dry bulb: what outside air becomes in a smoker that adds no
// water. Limits as for ByHumidityRatio.
func (a Air) Heated(dryBulb units.Temperature) (Air, error) {
	if err := a.check(); err != nil {
		return Air{}, err
	}
	return ByHumidityRatio(dryBulb, a.humidity, a.pressure)
}

// cubicMetres is eq. 26, per kilogram of dry air.
func (a Air) cubicMetres() float64 {
	w := units.Float(a.humidity, units.One)
	return 0.287042 * (a.dryBulb.Celsius() + zeroCelsius) * (1 + float64(1.607858*w)) / units.Float(a.pressure, units.Kilopascal)
}

// vapour is the pressure of the water vapour in Pa (eq. 20 solved for it).
func (a Air) vapour() float64 {
	w := units.Float(a.humidity, units.One)
	return pascals(a.pressure) * w / (waterToAir + w)
}

// IsSet reports whether the air was made by one of the By… functions.
func (a Air) IsSet() bool { return a.dryBulb.IsSet() }

func (a Air) check() error {
	if !a.IsSet() {
		return units.UnsetError{What: "air"}
	}
	return nil
}
