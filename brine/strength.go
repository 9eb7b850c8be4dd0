package brine

import "example.org/lakelarder/units"

// Salt per volume in the pounds and gallons of older brine tables, to the nearest 1e-9 g/L. Which volume, of water or of brine, is for the
// field that holds it to say.
const (
	PoundPerGallon         units.Density = 119_826_427_317 // US
	PoundPerImperialGallon units.Density = 99_776_372_663
)

// baumeModulus is that of the American scale for liquids heavier than water; 146.78 is another scale.
const baumeModulus = 145

// Strength is one strength of salt in water on every scale. Three different "grams per litre" are in use, and each has its own field; grams
// per kilogram of brine are the per mille of Share.
type Strength struct {
	Temperature     units.Temperature
	Share           units.Ratio   // salt/(salt + water) by mass, and so of the brine
	Salometer       units.Ratio   // of saturation: one degree is 1 %
	SpecificGravity units.Ratio   // at 60 °F against water at 60 °F
	Baume           units.Ratio   // one degree is units.One; modulus 145
	PerWater        units.Ratio   // salt to a mass of water
	PerVolumeWater  units.Density // salt to a volume of water at the temperature
	PerVolumeBrine  units.Density // salt in a volume of brine at the temperature
	Density         units.Density // of the brine at the temperature
}

// StrengthOf returns a strength on every scale. Share is salt/(salt + water) by mass, 0 % to Saturation, the temperature 0 to 25 °C:
// otherwise a SaturatedError or a RangeError. Figures are rounded to the quantum; what rests on density is as good as Density.
// A salometer reads sugar as salt. Sources: 26.395 % at 100 degrees (Preparing a Saltbrine), Baumé 145 − 145/sg.
func StrengthOf(share units.Ratio, temperature units.Temperature) (Strength, error) {
	x, t, err := solution(share, temperature)
	if err != nil {
		return Strength{}, err
	}
	limit, _ := Saturation()
	s := Strength{Temperature: temperature, Share: share}
	sg := gravity(x)
	for _, figure := range []struct {
		to    *units.Ratio
		value float64
	}{
		{&s.SpecificGravity, sg},
		{&s.Baume, baumeModulus - baumeModulus/sg},
		{&s.PerWater, x / (100 - x)},
	} {
		if *figure.to, err = units.OfFloat(figure.value, units.One); err != nil {
			return Strength{}, err
		}
	}
	if s.Salometer, err = units.RatioOf(share, limit); err != nil {
		return Strength{}, err
	}
	for _, figure := range []struct {
		to    *units.Density
		value float64
	}{
		{&s.Density, density(x, t)},
		{&s.PerVolumeBrine, perBrine(x, t)},
		{&s.PerVolumeWater, x / (100 - x) * density(0, t)},
	} {
		if *figure.to, err = units.OfFloat(figure.value, units.GramPerMillilitre); err != nil {
			return Strength{}, err
		}
	}
	return s, nil
}

// gravity is the specific gravity at 60/60 °F.
func gravity(x float64) float64 { return density(x, sixty.Celsius()) / density(0, sixty.Celsius()) }

// perBrine is salt in g per mL of brine.
func perBrine(x, t float64) float64 { return density(x, t) * x / 100 }

// FromSalometer returns the share by mass of a salometer reading at 60 °F; 60 degrees is 60*units.Percent. It must be 0 to 100: otherwise a
// RangeError. The scale whose 100 is 25 % is another one. A reading at another temperature goes through SalometerAt60 first.
func FromSalometer(degrees units.Ratio) (units.Ratio, error) {
	if err := units.Check("salometer reading", degrees, 0, units.One); err != nil {
		return 0, err
	}
	limit, _ := Saturation()
	return units.Prorate(limit, degrees, units.One) // P = 0.26395 SAL
}

// FromSpecificGravity returns the share by mass of a specific gravity at 60/60 °F, 1 to that of saturation: otherwise a RangeError.
func FromSpecificGravity(gravityAt60 units.Ratio) (units.Ratio, error) {
	return shareWhere("specific gravity", gravity, units.Float(gravityAt60, units.One), gravityAt60.String())
}

// FromBaume returns the share by mass of a Baumé reading at 60 °F on the scale of modulus 145; one degree is units.One. It must be 0 to
// that of saturation, about 24.6: otherwise a RangeError.
func FromBaume(degrees units.Ratio) (units.Ratio, error) {
	baume := func(x float64) float64 { return baumeModulus - baumeModulus/gravity(x) }
	return shareWhere("degrees Baumé", baume, units.Float(degrees, units.One), units.In(degrees, units.One, 3).String())
}

// FromPerWater returns the share by mass of salt to a mass of water, r/(1 + r): 188 g per kg is 188*units.PerMille. Below zero is a
// RangeError, more than dissolves a SaturatedError.
func FromPerWater(perWater units.Ratio) (units.Ratio, error) {
	if err := units.Check("salt to water", perWater, 0, units.One); err != nil {
		return 0, err
	}
	share, err := units.RatioOf(perWater, units.One+perWater)
	if err != nil {
		return 0, err
	}
	if err := checkShare(share); err != nil {
		return 0, err
	}
	return share, nil
}

// FromPerVolumeWater returns the share by mass of salt to a volume of water at a temperature of 0 to 25 °C, such as pounds to the gallon
// of water: which gallon is the caller's to say, PoundPerGallon or PoundPerImperialGallon. Errors as FromPerWater.
func FromPerVolumeWater(salt units.Density, temperature units.Temperature) (units.Ratio, error) {
	if err := units.CheckTemperature("water temperature", temperature, coldest, warmest); err != nil {
		return 0, err
	}
	perWater, err := units.OfFloat(units.Float(salt, units.GramPerMillilitre)/density(0, temperature.Celsius()), units.One)
	if err != nil {
		return 0, err
	}
	return FromPerWater(perWater)
}

// FromPerVolumeBrine returns the share by mass of salt in a volume of the brine itself at a temperature of 0 to 25 °C. More than a
// saturated brine holds, or below zero, is a RangeError.
func FromPerVolumeBrine(salt units.Density, temperature units.Temperature) (units.Ratio, error) {
	if err := units.CheckTemperature("brine temperature", temperature, coldest, warmest); err != nil {
		return 0, err
	}
	t := temperature.Celsius()
	return shareWhere("salt in brine", func(x float64) float64 { return perBrine(x, t) }, units.Float(salt, units.GramPerMillilitre),
		units.Text(salt, units.GramPerLitre, 3))
}

// shareWhere is strengthWhere as a Ratio, or a RangeError that names the figure.
func shareWhere(what string, figure func(float64) float64, value float64, got string) (units.Ratio, error) {
	x, ok := strengthWhere(figure, value)
	if !ok {
		return 0, units.RangeError{What: what, Got: got, Low: "that of water", High: "that of a saturated brine, 26.395 %"}
	}
	return units.OfFloat(x, units.Percent)
}
