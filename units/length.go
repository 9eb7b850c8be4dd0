package units

// Length is a whole number of nanometres, from about -9.2 to 9.2 million kilometres. Exact in it: metres to
// millimetres, inches to 1/64 and 0.001, feet, yards and miles.
type Length int64

// Units of length. The foot is the international foot of 1959, 0.3048 m exactly (NIST SP 811, B.8).
const (
	Nanometre  Length = 1
	Micrometre Length = 1_000
	Millimetre Length = 1_000_000
	Centimetre Length = 10_000_000
	Metre      Length = 1_000_000_000
	Kilometre  Length = 1_000_000_000_000
	Inch       Length = 25_400_000
	Foot       Length = 304_800_000
	Yard       Length = 914_400_000
	Mile       Length = 1_609_344_000_000
)

var lengths = dimension{
	name:     "length",
	compound: true,
	units: []unit{
		{int64(Metre), 1, []string{"m", "metre", "metres", "meter", "meters"}},
		{int64(Foot), 1, []string{"ft", "feet", "foot", "'", "′"}},
		{int64(Millimetre), 1, []string{"mm"}},
		{int64(Centimetre), 1, []string{"cm"}},
		{int64(Inch), 1, []string{"in", "inch", "inches", "\"", "″", "in."}},
		{int64(Kilometre), 1, []string{"km"}},
		{int64(Yard), 1, []string{"yd", "yard", "yards"}},
		{int64(Mile), 1, []string{"mi", "mile", "miles"}},
		{int64(Micrometre), 1, []string{"µm", "μm", "um"}},
		{int64(Nanometre), 1, []string{"nm"}},
	},
	shortest: true,
	before:   map[string]int64{"'": int64(Inch), "′": int64(Inch)}, // "1'200 mm" is not 1 ft 200 mm
	short: []form{
		{size: int64(Millimetre), places: 6, symbol: "mm", atMost: int64(Metre)},
		{size: int64(Inch), places: 6, symbol: "in", atMost: int64(3 * Foot)},
		{size: int64(Foot), places: 6, symbol: "ft", atLeast: int64(Foot)},
		{size: int64(Metre), places: 9, symbol: "m"},
	},
}

// ParseLength reads "609.6 m", "2,000 ft", "3 1/2 in", "5 ft 3 in", rounded once to the nearest nanometre.
// Text in an unknown unit, without a unit or with a number that is not understood is a
// ParseError; a value past the range a RangeError.
func ParseLength(s string) (Length, error) {
	v, err := lengths.parse(s)
	return Length(v), err
}

// String prints the value so that ParseLength gives it back to the quantum.
func (l Length) String() string { return lengths.format(int64(l)) }

// MarshalText is String as bytes; it never fails.
func (l Length) MarshalText() ([]byte, error) { return []byte(l.String()), nil }

// UnmarshalText is ParseLength; on an error the value stays as it was.
func (l *Length) UnmarshalText(text []byte) error { return lengths.unmarshal(text, (*int64)(l)) }
