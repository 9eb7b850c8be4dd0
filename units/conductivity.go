package units

// Conductivity of heat is a whole number of 1e-9 W/(m K).
type Conductivity int64

// Unit of conductivity.
const (
	WattPerMetreKelvin Conductivity = 1_000_000_000
)

var conductivities = dimension{
	name: "conductivity",
	units: []unit{
		{int64(WattPerMetreKelvin), 1, []string{"W/(m K)", "W/mK", "W/(m·K)", "W/m/K"}},
	},
	short: []form{
		{size: int64(WattPerMetreKelvin), places: 9, symbol: "W/(m K)"},
	},
}

// ParseConductivity reads "0.5 W/(m K)" or "0.5 W/mK", rounded once to the nearest quantum.
// Text in an unknown unit, without a unit or with a number that is not understood is a
// ParseError; a value past the range a RangeError.
func ParseConductivity(s string) (Conductivity, error) {
	v, err := conductivities.parse(s)
	return Conductivity(v), err
}

// String prints the value so that ParseConductivity gives it back to the quantum.
func (k Conductivity) String() string { return conductivities.format(int64(k)) }

// MarshalText is String as bytes; it never fails.
func (k Conductivity) MarshalText() ([]byte, error) { return []byte(k.String()), nil }

// UnmarshalText is ParseConductivity; on an error the value stays as it was.
func (k *Conductivity) UnmarshalText(text []byte) error {
	return conductivities.unmarshal(text, (*int64)(k))
}
