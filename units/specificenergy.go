package units

// SpecificEnergy, such as a latent heat or an enthalpy, is a whole number of 1e-6 J/kg. Exact in it: kJ/kg, the
// International Table kcal/kg (4186.8 J/kg), Btu/lb (2326 J/kg).
type SpecificEnergy int64

// Units of specific energy.
const (
	JoulePerKilogram       SpecificEnergy = 1_000_000
	KilojoulePerKilogram   SpecificEnergy = 1_000_000_000
	KilocaloriePerKilogram SpecificEnergy = 4_186_800_000
	BTUPerPound            SpecificEnergy = 2_326_000_000
)

var specificEnergies = dimension{
	name: "specific energy",
	units: []unit{
		{int64(KilojoulePerKilogram), 1, []string{"kJ/kg"}},
		{int64(JoulePerKilogram), 1, []string{"J/kg"}},
		{int64(KilocaloriePerKilogram), 1, []string{"kcal/kg"}},
		{int64(BTUPerPound), 1, []string{"Btu/lb"}},
	},
	short: []form{
		{size: int64(KilojoulePerKilogram), places: 9, symbol: "kJ/kg"},
	},
}

// ParseSpecificEnergy reads "334 kJ/kg", "80 kcal/kg", "144 Btu/lb", rounded once to the nearest quantum.
// Text in an unknown unit, without a unit or with a number that is not understood is a
// ParseError; a value past the range a RangeError.
func ParseSpecificEnergy(s string) (SpecificEnergy, error) {
	v, err := specificEnergies.parse(s)
	return SpecificEnergy(v), err
}

// String prints the value so that ParseSpecificEnergy gives it back to the quantum.
func (e SpecificEnergy) String() string { return specificEnergies.format(int64(e)) }

// MarshalText is String as bytes; it never fails.
func (e SpecificEnergy) MarshalText() ([]byte, error) { return []byte(e.String()), nil }

// UnmarshalText is ParseSpecificEnergy; on an error the value stays as it was.
func (e *SpecificEnergy) UnmarshalText(text []byte) error {
	return specificEnergies.unmarshal(text, (*int64)(e))
}
