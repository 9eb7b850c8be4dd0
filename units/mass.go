package units

// Mass is a whole number of sixteenths of a nanogram, to about 576 tonnes. Exact in it: kilograms to
// nanograms, pounds, ounces to 1/16 and 0.01, hundredths of a pound, grains.
type Mass int64

// Units of mass. The pound is the avoirdupois pound, 0.453 592 37 kg exactly (NIST SP 811, B.8).
const (
	Nanogram   Mass = 16
	Microgram  Mass = 16_000
	Milligram  Mass = 16_000_000
	Gram       Mass = 16_000_000_000
	Kilogram   Mass = 16_000_000_000_000
	Tonne      Mass = 16_000_000_000_000_000
	Grain      Mass = 1_036_782_560
	Ounce      Mass = 453_592_370_000
	Pound      Mass = 7_257_477_920_000
	LabelOunce Mass = 448_000_000_000 // 28 g, as US food labels count (21 CFR 101.9(b)(5)(viii))
)

var masses = dimension{
	name:     "mass",
	compound: true,
	units: []unit{
		{int64(Gram), 1, []string{"g", "gram", "grams"}},
		{int64(Kilogram), 1, []string{"kg", "kilogram", "kilograms"}},
		{int64(Pound), 1, []string{"lb", "lbs", "pound", "pounds", "lb."}},
		{int64(Ounce), 1, []string{"oz", "ounce", "ounces", "oz."}},
		{int64(Milligram), 1, []string{"mg"}},
		{int64(Microgram), 1, []string{"µg", "μg", "ug"}},
		{int64(Nanogram), 1, []string{"ng"}},
		{int64(Tonne), 1, []string{"t", "tonne", "tonnes"}},
		{int64(Grain), 1, []string{"grain", "grains"}},
		{int64(LabelOunce), 1, []string{"label oz"}},
	},
	shortest: true,
	short: []form{
		{size: int64(Gram), places: 13, symbol: "g", atMost: int64(Kilogram)},
		{size: int64(Ounce), places: 4, symbol: "oz", atMost: int64(Pound)},
		{size: int64(Pound), places: 4, symbol: "lb", atLeast: int64(Pound)},
		{size: int64(Kilogram), places: 16, symbol: "kg"},
	},
}

// ParseMass reads "1.4 kg", "1 lb 6 oz", "½ lb", rounded once to the nearest quantum. It refuses "gr", which is grain
// to some and gram to others. Text in an unknown unit, without a unit or with a number that is not understood is a
// ParseError; a value past the range a RangeError.
func ParseMass(s string) (Mass, error) {
	v, err := masses.parse(s)
	return Mass(v), err
}

// String prints the value so that ParseMass gives it back to the quantum.
func (m Mass) String() string { return masses.format(int64(m)) }

// MarshalText is String as bytes; it never fails.
func (m Mass) MarshalText() ([]byte, error) { return []byte(m.String()), nil }

// UnmarshalText is ParseMass; on an error the value stays as it was.
func (m *Mass) UnmarshalText(text []byte) error { return masses.unmarshal(text, (*int64)(m)) }
