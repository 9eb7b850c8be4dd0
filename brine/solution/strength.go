package solution

import (
	"strconv"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

// Salt per volume in the pounds and gallons of older brine tables, to the nearest 1e-9 g/L. The field that holds it
// says whether the volume is of water or of brine.
const (
	PoundPerGallon         units.Density = 119_826_427_317 // US
	PoundPerImperialGallon units.Density = 99_776_372_663
)

// baumeModulus is that of the American scale for liquids heavier than water; 146.78 is another scale.
const baumeModulus = 145

// Strength is one strength of salt in water on every scale. Three different "grams per litre" are in use, and each
// has its own field; grams per kilogram of brine are the per mille of Share.
type Strength struct {
	Temperature     units.Temperature
	Share           units.Ratio   `wire:"always"` // salt/(salt + water) by mass, and so of the brine
	Salometer       units.Ratio   `wire:"always"` // of saturation: one degree is 1 %
	SpecificGravity units.Ratio   // at 60 °F against water at 60 °F
	Baume           units.Ratio   `wire:"always"` // one degree is units.One; modulus 145
	PerWater        units.Ratio   `wire:"always"` // salt to a mass of water
	PerVolumeWater  units.Density `wire:"always"` // salt to a volume of water at the temperature
	PerVolumeBrine  units.Density `wire:"always"` // salt in a volume of brine at the temperature
	Density         units.Density // of the brine at the temperature
}

// MarshalJSON writes the strength as an app shows it, shares and degrees in per cent of one.
func (s Strength) MarshalJSON() ([]byte, error) { return wire.Marshal(s) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (s *Strength) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, s) }

// StrengthOf returns a strength on every scale. Share is salt/(salt + water) by mass, 0 % to Saturation, the
// temperature 0 to 25 °C: otherwise a SaturatedError or a RangeError. Figures are rounded to the quantum; what rests
// on density is as good as Density. A salometer reads sugar as salt. Sources: 26.395 % at 100 degrees (Preparing a
// Saltbrine), Baumé 145 − 145/sg.
func StrengthOf(share units.Ratio, temperature units.Temperature) (Strength, error) {
	x, t, err := plain(share, temperature)
	if err != nil {
		return Strength{}, err
	}
	s := Strength{Temperature: temperature, Share: share}
	for _, figure := range []struct {
		to    *units.Ratio
		value float64
	}{
		{&s.SpecificGravity, gravity(x)},
		{&s.Baume, baume(x)},
		{&s.PerWater, x / (100 - x)},
	} {
		if *figure.to, err = units.OfFloat(figure.value, units.One); err != nil {
			return Strength{}, err
		}
	}
	if s.Salometer, err = units.RatioOf(share, saturation); err != nil {
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

// baume is the American degree at 60 °F.
func baume(x float64) float64 { return baumeModulus - baumeModulus/gravity(x) }

// perBrine is salt in g per mL of brine.
func perBrine(x, t float64) float64 { return density(x, t) * x / 100 }

// FromSpecificGravity returns the share by mass of a specific gravity at 60/60 °F, 1 to that of saturation, about
// 1.204: otherwise a RangeError.
func FromSpecificGravity(gravityAt60 units.Ratio) (units.Ratio, error) {
	return scale{"specific gravity", "", 4}.share(gravity, units.Float(gravityAt60, units.One))
}

// FromBaume returns the share by mass of a Baumé reading at 60 °F on the scale of modulus 145; one degree is
// units.One. It must be 0 to that of saturation, about 24.6: otherwise a RangeError.
func FromBaume(degrees units.Ratio) (units.Ratio, error) {
	return scale{"degrees Baumé", "", 2}.share(baume, units.Float(degrees, units.One))
}

// FromPerWater returns the share by mass of salt to a mass of water, r/(1 + r): 188 g per kg is 188*units.PerMille.
// Below zero is a RangeError, more than dissolves a SaturatedError.
func FromPerWater(perWater units.Ratio) (units.Ratio, error) {
	if err := units.Check("salt to water", perWater, 0, units.One); err != nil {
		return 0, err
	}
	share, err := units.RatioOf(perWater, units.One+perWater)
	if err != nil {
		return 0, err
	}
	if err := CheckShare(saltByMass, share); err != nil {
		return 0, err
	}
	return share, nil
}

// FromPerVolumeWater returns the share by mass of salt to a volume of water at a temperature of 0 to 25 °C, such as
// pounds to the gallon of water: PoundPerGallon or PoundPerImperialGallon says which gallon. Errors as FromPerWater.
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

// FromPerVolumeBrine returns the share by mass of salt in a volume of the brine itself at a temperature of 0 to 25
// °C. More than a saturated brine holds, or below zero, is a RangeError.
func FromPerVolumeBrine(salt units.Density, temperature units.Temperature) (units.Ratio, error) {
	if err := units.CheckTemperature("brine temperature", temperature, coldest, warmest); err != nil {
		return 0, err
	}
	t := temperature.Celsius()
	inBrine := func(x float64) float64 { return 1000 * perBrine(x, t) }
	return scale{"salt in brine", " g/L", 1}.share(inBrine, units.Float(salt, units.GramPerLitre))
}

// scale names a figure that rises with strength, and says how errors print it.
type scale struct {
	what, unit string
	places     int
}

// share returns the share at which the figure is a value, or a RangeError with the figures of water and of
// saturation.
func (s scale) share(figure func(float64) float64, value float64) (units.Ratio, error) {
	x, ok := strengthWhere(figure, value)
	if !ok {
		return 0, units.RangeError{
			What: s.what, Got: s.text(value), Low: s.text(figure(0)), High: s.text(figure(mostPercent)),
		}
	}
	return units.OfFloat(x, units.Percent)
}

func (s scale) text(value float64) string {
	return strconv.FormatFloat(value, 'f', s.places, 64) + s.unit
}
