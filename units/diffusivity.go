package units

// Diffusivity, of heat or of salt, is a whole number of 1e-18 m²/s, to about 9.2 m²/s. Exact in it: m²/s, cm²/s, mm²/s.
type Diffusivity int64

// Units of diffusivity.
const (
	SquareMetrePerSecond      Diffusivity = 1_000_000_000_000_000_000
	SquareCentimetrePerSecond Diffusivity = 100_000_000_000_000
	SquareMillimetrePerSecond Diffusivity = 1_000_000_000_000
)

var diffusivities = dimension{
	name: "diffusivity",
	units: []unit{
		{int64(SquareMetrePerSecond), 1, []string{"m²/s", "m2/s", "m^2/s"}},
		{int64(SquareMillimetrePerSecond), 1, []string{"mm²/s", "mm2/s", "mm^2/s"}},
		{int64(SquareCentimetrePerSecond), 1, []string{"cm²/s", "cm2/s", "cm^2/s"}},
	},
	short: []form{
		{size: int64(SquareMillimetrePerSecond), places: 12, symbol: "mm²/s"},
	},
}

// ParseDiffusivity reads "1.4e-7 m²/s", "0.14 mm2/s", rounded once to the nearest quantum.
// Text in an unknown unit, without a unit or with a number that is not understood is a
// ParseError; a value past the range a RangeError.
func ParseDiffusivity(s string) (Diffusivity, error) {
	v, err := diffusivities.parse(s)
	return Diffusivity(v), err
}

// String prints the value so that ParseDiffusivity gives it back to the quantum.
func (d Diffusivity) String() string { return diffusivities.format(int64(d)) }

// MarshalText is String as bytes; it never fails.
func (d Diffusivity) MarshalText() ([]byte, error) { return []byte(d.String()), nil }

// UnmarshalText is ParseDiffusivity; on an error the value stays as it was.
func (d *Diffusivity) UnmarshalText(text []byte) error {
	return diffusivities.unmarshal(text, (*int64)(d))
}
