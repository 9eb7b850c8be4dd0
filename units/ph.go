package units

import "strings"

// PH is a point on the acidity scale, a whole number of thousandths. Its text is the bare number, with or without "pH".
type PH int64

// PHUnit is one unit of pH.
const (
	PHUnit PH = 1_000
)

var phs = dimension{
	name: "pH",
	units: []unit{
		{int64(PHUnit), 1, []string{""}},
	},
	short: []form{
		{size: int64(PHUnit), places: 3, symbol: ""},
	},
}

// ParsePH reads "6.2" or "pH 6.2", rounded once to the nearest thousandth.
// Text that is not a number is a ParseError; a value below 0 or above 14 a RangeError.
func ParsePH(s string) (PH, error) {
	v, err := phs.parse(strings.TrimPrefix(s, "pH"))
	if err != nil {
		return 0, err
	}
	if err := Check("pH", PH(v), 0, mostPH); err != nil {
		return 0, err
	}
	return PH(v), nil
}

// mostPH is where the scale of water ends.
const mostPH = 14 * PHUnit

// String prints the value so that ParsePH gives it back to the quantum.
func (p PH) String() string { return phs.format(int64(p)) }

// MarshalText is String as bytes; it never fails.
func (p PH) MarshalText() ([]byte, error) { return []byte(p.String()), nil }

// UnmarshalText is ParsePH; on an error the value stays as it was.
func (p *PH) UnmarshalText(text []byte) error {
	v, err := ParsePH(string(text))
	if err == nil {
		*p = v
	}
	return err
}
