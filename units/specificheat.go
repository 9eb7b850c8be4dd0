package units

// SpecificHeat is a whole number of 1e-6 J/(kg K). The international calorie and Btu both give 4186.8 J/(kg K).
type SpecificHeat int64

// Units of specific heat.
const (
	JoulePerKilogramKelvin       SpecificHeat = 1_000_000
	KilojoulePerKilogramKelvin   SpecificHeat = 1_000_000_000
	KilocaloriePerKilogramKelvin SpecificHeat = 4_186_800_000
)

var specificHeats = dimension{
	name: "specific heat",
	units: []unit{
		{int64(JoulePerKilogramKelvin), 1, []string{"J/(kg K)", "J/kgK", "J/(kg·K)"}},
		{int64(KilojoulePerKilogramKelvin), 1, []string{"kJ/(kg K)", "kJ/kgK", "kJ/(kg·K)"}},
		{int64(KilocaloriePerKilogramKelvin), 1, []string{"kcal/(kg K)", "kcal/kgK", "Btu/(lb °F)"}},
	},
	short: []form{
		{size: int64(JoulePerKilogramKelvin), places: 6, symbol: "J/(kg K)"},
	},
}

// ParseSpecificHeat reads "3600 J/(kg K)", "3.6 kJ/(kg K)", "0.86 Btu/(lb °F)", rounded once to the nearest quantum.
// Text in an unknown unit, without a unit or with a number that is not understood is a
// ParseError; a value past the range a RangeError.
func ParseSpecificHeat(s string) (SpecificHeat, error) {
	v, err := specificHeats.parse(s)
	return SpecificHeat(v), err
}

// String prints the value so that ParseSpecificHeat gives it back to the quantum.
func (c SpecificHeat) String() string { return specificHeats.format(int64(c)) }

// MarshalText is String as bytes; it never fails.
func (c SpecificHeat) MarshalText() ([]byte, error) { return []byte(c.String()), nil }

// UnmarshalText is ParseSpecificHeat; on an error the value stays as it was.
func (c *SpecificHeat) UnmarshalText(text []byte) error {
	return specificHeats.unmarshal(text, (*int64)(c))
}
