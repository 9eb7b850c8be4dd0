package solution

import (
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

// largestBrine catches slips of units; practice, no source.
const largestBrine = 1_000 * units.Litre

// Makeup is what makes so much brine of one strength. Salt + Water is Mass to the quantum.
type Makeup struct {
	Strength    Strength
	Volume      units.Volume // of the brine
	Mass        units.Mass   // of the brine
	Salt        units.Mass   `wire:"always"`
	Water       units.Mass
	WaterVolume units.Volume // at the temperature
}

// MarshalJSON writes the makeup as an app shows it.
func (m Makeup) MarshalJSON() ([]byte, error) { return wire.Marshal(m) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (m *Makeup) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, m) }

// MakeBrine returns the salt and the water for a volume of solution. Share is salt/(salt + water) by mass, 0 % to
// Saturation, the temperature 0 to 25 °C, the volume above 0 to 1,000 L: otherwise a RangeError or a SaturatedError.
// On a scale round salt up. Salt and water together take less room than apart: 1 L of water and its salt make 1.06 L
// at 60 degrees.
func MakeBrine(volume units.Volume, share units.Ratio, temperature units.Temperature) (Makeup, error) {
	s, err := StrengthOf(share, temperature)
	if err != nil {
		return Makeup{}, err
	}
	if err := units.Check("volume of brine", volume, units.Millilitre, largestBrine); err != nil {
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
	millilitres := units.Float(m.Water, units.Gram) / density(0, temperature.Celsius())
	m.WaterVolume, err = units.OfFloat(millilitres, units.Millilitre)
	return m, err
}
