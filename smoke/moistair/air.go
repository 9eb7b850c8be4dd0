package moistair

import (
	"math"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Air is moist air: its dry bulb, its pressure and the water vapour in it. It is small and comparable; make one with a
// By… function. The zero Air is not stated, and every method returns a units.UnsetError for it.
//
// The equations are those of an ideal gas: humidity ratios at saturation come out 0.4 % (5 °C) to 1.2 % (85 °C) below the
// printed real-gas table. Over ice (dew or wet bulb below freezing) the ice branch holds.
type Air struct {
	dryBulb  units.Temperature
	pressure units.Pressure
	humidity units.Ratio
}

// The range of moist air. The equations of saturation run from -100 to 200 °C; above 2 kg of water to the kilogram of
// dry air (a wet bulb of 93 °C at sea level) it is steam rather than air.
var (
	coldestAir = units.Celsius(-50)
	hottestAir = units.Celsius(200)
)

const (
	lowestPressure  = 40 * units.Kilopascal
	highestPressure = 110 * units.Kilopascal
	wettestAir      = 2 * units.One
)

// Source returns where the moist-air equations are from: the citation for any figure of an Air.
func Source() cite.Citation {
	return cite.Citation{Source: cite.ASHRAEFundamentals2017, Where: "ch. 1, ideal-gas equations", Basis: cite.Computed}
}

// ByHumidityRatio returns air with so much water vapour to its dry air, by mass, from 0 to 2. The dry bulb must lie
// in -50 to 200 °C, the pressure (absolute, of the place: it falls with altitude) in 40 to 110 kPa, and the air must not be more than
// saturated: otherwise a units.RangeError. The other By… functions have the same limits.
func ByHumidityRatio(dryBulb units.Temperature, humidity units.Ratio, pressure units.Pressure) (Air, error) {
	if err := checkAir(dryBulb, pressure); err != nil {
		return Air{}, err
	}
	if err := units.Check("humidity ratio", humidity, 0, wettestAir); err != nil {
		return Air{}, err
	}
	a := Air{dryBulb, pressure, humidity}
	if most, saturates := a.saturated(); saturates && humidity > most {
		return Air{}, units.RangeError{What: "humidity ratio", Got: humidity.String(), High: most.String() + ", saturation at " + dryBulb.String()}
	}
	return a, nil
}

// ByRelativeHumidity returns air of a relative humidity from 0 to 100 %: the pressure of the vapour as a share of that at
// saturation. Above the boiling point saturation passes the pressure of the air, and what would leave no dry air is refused.
// Limits as for ByHumidityRatio.
func ByRelativeHumidity(dryBulb units.Temperature, humidity units.Ratio, pressure units.Pressure) (Air, error) {
	if err := checkAir(dryBulb, pressure); err != nil {
		return Air{}, err
	}
	if err := units.Check("relative humidity", humidity, 0, units.One); err != nil {
		return Air{}, err
	}
	vapour := units.Float(humidity, units.One) * saturation(dryBulb.Celsius())
	return airOf(dryBulb, pressure, ratioAt(vapour, pascals(pressure)))
}

// ByDewPoint returns air whose water would condense at a dew point (a frost point below 0.01 °C) from -100 °C up to the dry bulb.
// Limits as for ByHumidityRatio.
func ByDewPoint(dryBulb, dewPoint units.Temperature, pressure units.Pressure) (Air, error) {
	if err := checkAir(dryBulb, pressure); err != nil {
		return Air{}, err
	}
	if err := units.CheckTemperature("dew point", dewPoint, units.Celsius(coldest), dryBulb); err != nil {
		return Air{}, err
	}
	return airOf(dryBulb, pressure, ratioAt(saturation(dewPoint.Celsius()), pascals(pressure)))
}

// ByWetBulb returns air with this wet bulb, no higher than the dry bulb and not so low that the air would hold less than
// no water. It is also the answer to "how humid must the smoker be for a wet surface to reach this temperature": ask the
// result for its RelativeHumidity. Limits as for ByHumidityRatio.
func ByWetBulb(dryBulb, wetBulb units.Temperature, pressure units.Pressure) (Air, error) {
	if err := checkAir(dryBulb, pressure); err != nil {
		return Air{}, err
	}
	if err := units.CheckTemperature("wet bulb", wetBulb, units.Celsius(coldest), dryBulb); err != nil {
		return Air{}, err
	}
	t, tw := dryBulb.Celsius(), wetBulb.Celsius()
	at := ratioAt(saturation(tw), pascals(pressure))
	if tw < 0 { // eq. 35
		return airOf(dryBulb, pressure, (float64((2830-float64(0.24*tw))*at)-float64(1.006*(t-tw)))/(2830+float64(1.86*t)-float64(2.1*tw)))
	} // eq. 33
	return airOf(dryBulb, pressure, (float64((2501-float64(2.326*tw))*at)-float64(1.006*(t-tw)))/(2501+float64(1.86*t)-float64(4.186*tw)))
}

// ByEnthalpy returns air of an enthalpy per kilogram of dry air, counted from dry air and water at 0 °C. Limits as for
// ByHumidityRatio.
func ByEnthalpy(dryBulb units.Temperature, enthalpy units.SpecificEnergy, pressure units.Pressure) (Air, error) {
	if err := checkAir(dryBulb, pressure); err != nil {
		return Air{}, err
	}
	t := dryBulb.Celsius()
	h := units.Float(enthalpy, units.KilojoulePerKilogram)
	return airOf(dryBulb, pressure, (h-float64(1.006*t))/(2501+float64(1.86*t))) // eq. 30
}

// ByVolume returns air of which this volume holds one kilogram of dry air. Limits as for ByHumidityRatio.
func ByVolume(dryBulb units.Temperature, perKilogram units.Volume, pressure units.Pressure) (Air, error) {
	if err := checkAir(dryBulb, pressure); err != nil {
		return Air{}, err
	}
	v := units.Float(perKilogram, 1000*units.Litre)
	dry := 0.287042 * (dryBulb.Celsius() + zeroCelsius) / units.Float(pressure, units.Kilopascal)
	return airOf(dryBulb, pressure, (v/dry-1)/1.607858) // eq. 26
}

func checkAir(dryBulb units.Temperature, pressure units.Pressure) error {
	if err := units.CheckTemperature("dry bulb", dryBulb, coldestAir, hottestAir); err != nil {
		return err
	}
	return units.Check("air pressure", pressure, lowestPressure, highestPressure)
}

// airOf is ByHumidityRatio for a computed ratio, which may be anything.
func airOf(dryBulb units.Temperature, pressure units.Pressure, humidity float64) (Air, error) {
	w, err := units.OfFloat(humidity, units.One)
	if err != nil || humidity >= 0 && w > wettestAir {
		return Air{}, units.RangeError{What: "humidity ratio", Got: "that of pure steam", High: wettestAir.String()}
	}
	return ByHumidityRatio(dryBulb, w, pressure)
}

// ratioAt is the humidity ratio of air with this pressure of vapour, infinite where no dry air is left.
func ratioAt(vapour, total float64) float64 {
	if vapour >= total {
		return math.Inf(1)
	}
	return waterToAir * vapour / (total - float64(vapour)) // eq. 20
}

func pascals(p units.Pressure) float64 { return units.Float(p, units.Pascal) }

// saturated is the most vapour that the air can hold; false where it can hold any amount.
func (a Air) saturated() (units.Ratio, bool) {
	most := ratioAt(saturation(a.dryBulb.Celsius()), pascals(a.pressure))
	if most > units.Float(wettestAir, units.One) {
		return 0, false
	}
	w, err := units.OfFloat(most, units.One)
	return w, err == nil
}
