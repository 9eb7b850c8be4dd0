package brine

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Makeup is what makes so much brine of one strength. Salt + Water is Mass to the quantum.
type Makeup struct {
	Strength    Strength
	Volume      units.Volume // of the brine
	Mass        units.Mass   // of the brine
	Salt, Water units.Mass
	WaterVolume units.Volume // at the temperature
}

// MakeBrine returns the salt and the water for a volume of brine. Share is salt/(salt + water) by mass, 0 % to Saturation, the temperature 0 to
// 25 °C, the volume above 0 to 1,000 L: otherwise a RangeError or a SaturatedError. On a scale round salt up. Salt and water
// together take less room than apart: 1 L of water and its salt make 1.06 L at 60 degrees.
func MakeBrine(volume units.Volume, share units.Ratio, temperature units.Temperature) (Makeup, error) {
	s, err := StrengthOf(share, temperature)
	if err != nil {
		return Makeup{}, err
	}
	if err := units.Check("volume of brine", volume, 1, largestBrine); err != nil {
		return Makeup{}, err
	}
	m := Makeup{Strength: s, Volume: volume}
	perLitre, err := units.Prorate(units.Kilogram, s.Density, units.GramPerMillilitre)
	if err != nil {
		return Makeup{}, err
	}
	if m.Mass, err = units.Prorate(perLitre, volume, units.Litre); err != nil {
		return Makeup{}, err
	}
	if m.Salt, err = share.Of(m.Mass); err != nil {
		return Makeup{}, err
	}
	m.Water = m.Mass - m.Salt
	m.WaterVolume, err = units.OfFloat(units.Float(m.Water, units.Gram)/density(0, temperature.Celsius()), units.Millilitre)
	return m, err
}

// BrineForFish returns the published amount of brine for a weight of fish, a US gallon to every 4 lb, and its citation. The print says 4 to
// 5 lb; more brine holds its strength better. Fish above 0 to 100 kg: otherwise a RangeError.
// Source: Michigan State University Extension 1997.
func BrineForFish(fish units.Mass) (units.Volume, cite.Citation, error) {
	if err := units.Check("fish", fish, 1, largestFillet); err != nil {
		return 0, cite.Citation{}, err
	}
	volume, err := units.Prorate(units.Gallon, fish, 4*units.Pound)
	return volume, leastBrineCitation, err
}

// BrineEnd returns the strength at which a brine and the water of the fish in it come to rest, salt/(salt + both waters): the most that a
// long brining can bring, above the water phase salt of any shorter one. Masses not negative, fish water above 0; stronger than Saturation is
// a SaturatedError. It is an estimate; see EstimateCautions.
func BrineEnd(salt, brineWater, fishWater units.Mass) (units.Ratio, error) {
	if err := units.Check("water of the brine", brineWater, 0, 100*units.Tonne); err != nil {
		return 0, err
	}
	if err := units.Check("water of the fish", fishWater, 1, largestFillet); err != nil {
		return 0, err
	}
	water, err := units.Sum(brineWater, fishWater)
	if err != nil {
		return 0, err
	}
	return WaterPhaseSalt(salt, water)
}
