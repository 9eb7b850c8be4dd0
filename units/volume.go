package units

// Volume is a whole number of 1/128 nanolitres, to about 72 million litres. Exact in it: litres to
// nanolitres, the US gallon down to the third of a cup and the quarter teaspoon, the Imperial gallon
// down to the fluid ounce, the cubic inch.
type Volume int64

// Metric volumes.
const (
	Nanolitre  Volume = 128
	Microlitre Volume = 128_000
	Millilitre Volume = 128_000_000
	Centilitre Volume = 1_280_000_000
	Decilitre  Volume = 12_800_000_000
	Litre      Volume = 128_000_000_000
)

// US customary volumes; the gallon is 231 cubic inches exactly (NIST Handbook 44, appendix C).
const (
	Gallon     Volume = 484_532_708_352
	Quart      Volume = 121_133_177_088
	Pint       Volume = 60_566_588_544 // the canning pint, 473.176473 mL
	HalfPint   Volume = 30_283_294_272
	Cup        Volume = 30_283_294_272
	FluidOunce Volume = 3_785_411_784
	Tablespoon Volume = 1_892_705_892
	Teaspoon   Volume = 630_901_964
	CubicInch  Volume = 2_097_544_192
	CubicFoot  Volume = 3_624_556_363_776 // 1728 cubic inches, as freezers are sold
)

// Imperial volumes; the gallon is 4.546 09 L exactly (NIST SP 811, B.8).
const (
	ImperialGallon     Volume = 581_899_520_000
	ImperialQuart      Volume = 145_474_880_000
	ImperialPint       Volume = 72_737_440_000
	ImperialFluidOunce Volume = 3_636_872_000
)

// Metric kitchen measures: Australian and Canadian usage, not SI; figures from memory of that usage.
const (
	MetricCup        Volume = 32_000_000_000 // 250 mL
	MetricTablespoon Volume = 1_920_000_000  // 15 mL; Australia uses 20 mL
	MetricTeaspoon   Volume = 640_000_000    // 5 mL
)

// US food-label measures (21 CFR 101.9(b)(5)(viii)).
const (
	LabelCup        Volume = 30_720_000_000 // 240 mL
	LabelTablespoon Volume = 1_920_000_000  // 15 mL
	LabelTeaspoon   Volume = 640_000_000    // 5 mL
	LabelFluidOunce Volume = 3_840_000_000  // 30 mL
)

var volumes = dimension{
	name:     "volume",
	compound: true,
	units: []unit{
		{int64(Millilitre), 1, []string{"mL", "ml", "millilitre", "millilitres", "milliliter", "milliliters"}},
		{int64(Litre), 1, []string{"L", "l", "litre", "litres", "liter", "liters"}},
		{int64(Gallon), 1, []string{"gal", "gallon", "gallons"}},
		{int64(Quart), 1, []string{"qt", "quart", "quarts"}},
		{int64(Pint), 1, []string{"pt", "pint", "pints"}},
		{int64(Cup), 1, []string{"cup", "cups"}},
		{int64(FluidOunce), 1, []string{"fl oz", "fl. oz.", "fluid ounce", "fluid ounces"}},
		{int64(Tablespoon), 1, []string{"tbsp", "tablespoon", "tablespoons"}},
		{int64(Teaspoon), 1, []string{"tsp", "teaspoon", "teaspoons"}},
		{int64(Microlitre), 1, []string{"µL", "μL", "uL"}},
		{int64(Decilitre), 1, []string{"dL", "dl"}},
		{int64(Centilitre), 1, []string{"cL", "cl"}},
		{int64(Nanolitre), 1, []string{"nL"}},
		{int64(CubicInch), 1, []string{"in³", "in3", "cu in", "cubic inch", "cubic inches"}},
		{int64(CubicFoot), 1, []string{"ft³", "ft3", "cu ft", "cubic foot", "cubic feet"}},
		{int64(ImperialGallon), 1, []string{"imp gal"}},
		{int64(ImperialQuart), 1, []string{"imp qt"}},
		{int64(ImperialPint), 1, []string{"imp pt"}},
		{int64(ImperialFluidOunce), 1, []string{"imp fl oz"}},
		{int64(MetricCup), 1, []string{"metric cup", "metric cups"}},
		{int64(MetricTablespoon), 1, []string{"metric tbsp"}},
		{int64(MetricTeaspoon), 1, []string{"metric tsp"}},
		{int64(LabelCup), 1, []string{"label cup", "label cups"}},
		{int64(LabelTablespoon), 1, []string{"label tbsp"}},
		{int64(LabelTeaspoon), 1, []string{"label tsp"}},
		{int64(LabelFluidOunce), 1, []string{"label fl oz"}},
	},
	shortest: true,
	short: []form{
		{size: int64(Millilitre), places: 13, symbol: "mL", atMost: int64(Litre)},
		{size: int64(Cup), places: 4, symbol: "cup", atMost: int64(Quart)},
		{size: int64(Quart), places: 4, symbol: "qt", atLeast: int64(Quart), atMost: int64(2 * Gallon)},
		{size: int64(Gallon), places: 4, symbol: "gal", atLeast: int64(2 * Gallon)},
		{size: int64(Litre), places: 16, symbol: "L"},
	},
}

// ParseVolume reads "500 mL", "½ cup", "1 1/2 tsp", "1 qt 1 cup", rounded once to the nearest quantum.
// A bare pint, cup or spoon is the US one; "imp", "metric" and "label" name the others.
// Text in an unknown unit, without a unit or with a number that is not understood is a
// ParseError; a value past the range a RangeError.
func ParseVolume(s string) (Volume, error) {
	v, err := volumes.parse(s)
	return Volume(v), err
}

// String prints the value so that ParseVolume gives it back to the quantum.
func (v Volume) String() string { return volumes.format(int64(v)) }

// MarshalText is String as bytes; it never fails.
func (v Volume) MarshalText() ([]byte, error) { return []byte(v.String()), nil }

// UnmarshalText is ParseVolume; on an error the value stays as it was.
func (v *Volume) UnmarshalText(text []byte) error { return volumes.unmarshal(text, (*int64)(v)) }
