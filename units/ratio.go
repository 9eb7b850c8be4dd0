package units

// Ratio is a share, a whole number of 1e-12, to about ±9.2 million. Exact in it: percent to ten decimals, per mille,
// parts per million. A Ratio of masses says so where it is used; it carries no reference of its own.
type Ratio int64

// Units of ratio; One is the whole.
const (
	One             Ratio = 1_000_000_000_000
	Percent         Ratio = 10_000_000_000
	PerMille        Ratio = 1_000_000_000
	PartsPerMillion Ratio = 1_000_000
	PartsPerBillion Ratio = 1_000
)

var ratios = dimension{
	name: "ratio",
	units: []unit{
		{int64(Percent), 1, []string{"%", "percent", "pct"}},
		{int64(PerMille), 1, []string{"‰", "g/kg"}},
		{int64(PartsPerMillion), 1, []string{"ppm", "mg/kg"}},
		{int64(PartsPerBillion), 1, []string{"ppb", "µg/kg", "μg/kg", "ug/kg"}},
	},
	short: []form{
		{size: int64(Percent), places: 10, symbol: "%"},
	},
}

// ParseRatio reads "3.5 %", "35 g/kg", "200 ppm", rounded once to the nearest 1e-12. A bare number is refused: it
// could mean a share or a percentage.
// Text in an unknown unit, without a unit or with a number that is not understood is a
// ParseError; a value past the range a RangeError.
func ParseRatio(s string) (Ratio, error) {
	v, err := ratios.parse(s)
	return Ratio(v), err
}

// String prints the value so that ParseRatio gives it back to the quantum.
func (r Ratio) String() string { return ratios.format(int64(r)) }

// MarshalText is String as bytes; it never fails.
func (r Ratio) MarshalText() ([]byte, error) { return []byte(r.String()), nil }

// UnmarshalText is ParseRatio; on an error the value stays as it was.
func (r *Ratio) UnmarshalText(text []byte) error { return ratios.unmarshal(text, (*int64)(r)) }

// Of returns that share of a mass, rounded once to the nearest quantum, ties away from zero; a
// result past the range of Mass is a RangeError. For other quantities, Prorate(q, r, One).
func (r Ratio) Of(m Mass) (Mass, error) { return Prorate(m, r, One) }
