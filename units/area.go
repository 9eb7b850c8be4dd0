package units

// Area is a whole number of 1e-10 square metres, ten thousand to the square millimetre, to about 922 million
// square metres. Exact in it: square metres, centimetres and millimetres, square inches and feet.
type Area int64

// Units of area; the square inch and foot follow from the inch (NIST SP 811, B.8).
const (
	SquareMillimetre Area = 10_000
	SquareCentimetre Area = 1_000_000
	SquareMetre      Area = 10_000_000_000
	SquareInch       Area = 6_451_600
	SquareFoot       Area = 929_030_400
)

var areas = dimension{
	name: "area",
	units: []unit{
		{int64(SquareMetre), 1, []string{"m²", "m2", "m^2"}},
		{int64(SquareCentimetre), 1, []string{"cm²", "cm2", "cm^2"}},
		{int64(SquareMillimetre), 1, []string{"mm²", "mm2", "mm^2"}},
		{int64(SquareInch), 1, []string{"in²", "in2", "in^2", "sq in"}},
		{int64(SquareFoot), 1, []string{"ft²", "ft2", "ft^2", "sq ft"}},
	},
	short: []form{
		{size: int64(SquareCentimetre), places: 6, symbol: "cm²", atMost: int64(SquareMetre)},
		{size: int64(SquareMetre), places: 10, symbol: "m²"},
	},
}

// ParseArea reads "0.05 m²", "500 cm2", "80 sq in", rounded once to the nearest quantum.
// Text in an unknown unit, without a unit or with a number that is not understood is a
// ParseError; a value past the range a RangeError.
func ParseArea(s string) (Area, error) {
	v, err := areas.parse(s)
	return Area(v), err
}

// String prints the value so that ParseArea gives it back to the quantum.
func (a Area) String() string { return areas.format(int64(a)) }

// MarshalText is String as bytes; it never fails.
func (a Area) MarshalText() ([]byte, error) { return []byte(a.String()), nil }

// UnmarshalText is ParseArea; on an error the value stays as it was.
func (a *Area) UnmarshalText(text []byte) error { return areas.unmarshal(text, (*int64)(a)) }
