package units

// Pressure is a whole number of 1/129,032,000,000 pascals, to about 71 MPa. Exact in it: pascals, kilopascals,
// bars, atmospheres, psi to 0.01 and to a quarter. The column units (inHg, mmHg, torr) are not whole: text in them is
// read through their exact ratio and rounded once, to within 4e-12 Pa. Whether a pressure is absolute or a
// gauge reading is for the function that takes it to say.
type Pressure int64

// Units of pressure. The psi is exactly 8 896 443 230 521/1 290 320 000 Pa, pound-force over square inch
// (NIST SP 811, B.8 and notes 13, 22, 23).
const (
	Pascal      Pressure = 129_032_000_000
	Hectopascal Pressure = 12_903_200_000_000
	Millibar    Pressure = 12_903_200_000_000
	Kilopascal  Pressure = 129_032_000_000_000
	Bar         Pressure = 12_903_200_000_000_000
	Megapascal  Pressure = 129_032_000_000_000_000
	PSI         Pressure = 889_644_323_052_100
	Atmosphere  Pressure = 13_074_167_400_000_000 // 101 325 Pa
)

// Columns of mercury, rounded to the nearest quantum (1e-15 of the value): conventional inch and
// millimetre, and the torr, which is 101 325/760 Pa (NIST SP 811, B.8).
const (
	InchOfMercury       Pressure = 436_952_499_040_480
	MillimetreOfMercury Pressure = 17_202_854_292_932
	Torr                Pressure = 17_202_851_842_105
)

var pressures = dimension{
	name: "pressure",
	units: []unit{
		{int64(PSI), 1, []string{"psi", "PSI", "lb/in²", "lb/in2", "lbf/in²", "lbf/in2"}},
		{int64(Kilopascal), 1, []string{"kPa", "kPA", "KPa"}},
		{int64(Pascal), 1, []string{"Pa"}},
		{int64(Hectopascal), 1, []string{"hPa"}},
		{int64(Bar), 1, []string{"bar"}},
		{int64(Millibar), 1, []string{"mbar", "mb"}},
		{int64(Megapascal), 1, []string{"MPa"}},
		{int64(Atmosphere), 1, []string{"atm"}},
		{int64(3386388640341 * 16129), 125, []string{"inHg", "in Hg"}},
		{int64(133322387415 * 16129), 125, []string{"mmHg", "mm Hg"}},
		{int64(16129000000 * 20265), 19, []string{"torr", "Torr"}},
	},
	short: []form{
		{size: int64(Kilopascal), places: 9, symbol: "kPa"},
		{size: int64(PSI), places: 6, symbol: "psi"},
		{size: int64(Kilopascal), places: 15, symbol: "kPa"},
	},
}

// ParsePressure reads "11 psi", "75.8 kPa", "29.92 inHg", rounded once to the nearest quantum. It refuses
// "psig" and "psia": the type does not keep the reference, so the text must not carry one.
// Text in an unknown unit, without a unit or with a number that is not understood is a
// ParseError; a value past the range a RangeError.
func ParsePressure(s string) (Pressure, error) {
	v, err := pressures.parse(s)
	return Pressure(v), err
}

// String prints the value so that ParsePressure gives it back to the quantum.
func (p Pressure) String() string { return pressures.format(int64(p)) }

// MarshalText is String as bytes; it never fails.
func (p Pressure) MarshalText() ([]byte, error) { return []byte(p.String()), nil }

// UnmarshalText is ParsePressure; on an error the value stays as it was.
func (p *Pressure) UnmarshalText(text []byte) error { return pressures.unmarshal(text, (*int64)(p)) }
