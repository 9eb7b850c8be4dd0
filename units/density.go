package units

// Density is a whole number of 1e-9 kg/m³. Exact in it: kg/m³ and g/L, g/mL.
type Density int64

// Units of density.
const (
	KilogramPerCubicMetre Density = 1_000_000_000
	GramPerLitre          Density = 1_000_000_000
	GramPerMillilitre     Density = 1_000_000_000_000
)

var densities = dimension{
	name: "density",
	units: []unit{
		{int64(KilogramPerCubicMetre), 1, []string{"kg/m³", "kg/m3", "kg/m^3"}},
		{int64(GramPerMillilitre), 1, []string{"g/mL", "g/ml", "kg/L", "kg/l", "g/cm³", "g/cm3"}},
		{int64(GramPerLitre), 1, []string{"g/L", "g/l"}},
	},
	short: []form{
		{size: int64(KilogramPerCubicMetre), places: 9, symbol: "kg/m³"},
	},
}

// ParseDensity reads "1055 kg/m³", "1.055 g/mL", rounded once to the nearest quantum.
// Text in an unknown unit, without a unit or with a number that is not understood is a
// ParseError; a value past the range a RangeError.
func ParseDensity(s string) (Density, error) {
	v, err := densities.parse(s)
	return Density(v), err
}

// String prints the value so that ParseDensity gives it back to the quantum.
func (d Density) String() string { return densities.format(int64(d)) }

// MarshalText is String as bytes; it never fails.
func (d Density) MarshalText() ([]byte, error) { return []byte(d.String()), nil }

// UnmarshalText is ParseDensity; on an error the value stays as it was.
func (d *Density) UnmarshalText(text []byte) error { return densities.unmarshal(text, (*int64)(d)) }
