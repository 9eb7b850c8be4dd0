package units

// Energy is a whole number of 1e-8 joules, to about 92 GJ. Exact in it: joules, the thermochemical kilocalorie of food
// tables (4184 J), the British thermal unit, the kilowatt hour.
type Energy int64

// Units of energy; the Btu is the International Table one, 1055.055 852 62 J (NIST SP 811, note 9).
const (
	Joule        Energy = 100_000_000
	Kilojoule    Energy = 100_000_000_000
	Kilocalorie  Energy = 418_400_000_000
	BTU          Energy = 105_505_585_262
	KilowattHour Energy = 360_000_000_000_000
)

var energies = dimension{
	name: "energy",
	units: []unit{
		{int64(Kilojoule), 1, []string{"kJ"}},
		{int64(Kilocalorie), 1, []string{"kcal", "Cal"}},
		{int64(Joule), 1, []string{"J"}},
		{int64(BTU), 1, []string{"Btu", "BTU"}},
		{int64(KilowattHour), 1, []string{"kWh"}},
	},
	short: []form{
		{size: int64(Kilojoule), places: 11, symbol: "kJ"},
	},
}

// ParseEnergy reads "250 kcal", "1046 kJ", "1 kWh", rounded once to the nearest quantum.
// Text in an unknown unit, without a unit or with a number that is not understood is a
// ParseError; a value past the range a RangeError.
func ParseEnergy(s string) (Energy, error) {
	v, err := energies.parse(s)
	return Energy(v), err
}

// String prints the value so that ParseEnergy gives it back to the quantum.
func (e Energy) String() string { return energies.format(int64(e)) }

// MarshalText is String as bytes; it never fails.
func (e Energy) MarshalText() ([]byte, error) { return []byte(e.String()), nil }

// UnmarshalText is ParseEnergy; on an error the value stays as it was.
func (e *Energy) UnmarshalText(text []byte) error { return energies.unmarshal(text, (*int64)(e)) }
