package spoilage

import (
	"math"
	"time"

	"example.org/lakelarder/internal/portable"
	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// Law says how much faster than in melting ice a fish spoils at another temperature. It speaks of
// smell and taste, never of safety. The zero Law is not set.
type Law uint8

// The laws.
const (
	// FreshFish is the square root law of fish from temperate waters, r = (1 + 0.1 T)² with T in °C, and
	// zero at and below -10 °C.
	FreshFish Law = iota + 1
	// TropicalFish is ln r = 0.12 T, for fish from tropical waters.
	TropicalFish
	// ColdSmokedSalmon is ln r = 0.089 T, found on sliced cold-smoked salmon in vacuum packs.
	ColdSmokedSalmon
)

// The square root law in general is r = ((T - Tmin)/(Tref - Tmin))²; here Tmin is -10 °C and Tref melting ice.
const (
	spoilageMinimum   = -10  // °C
	spoilageReference = 0    // °C
	spoilageLow       = -3   // °C; below and above these two a rate is
	spoilageHigh      = 25   // marked as outside of the law
	tropicalSlope     = 0.12 // 1/°C
	smokedSlope       = 0.089
)

var (
	freshFishCitation = cite.Citation{Source: cite.FAO348, Where: "equation (1 + 0.1 T)^2", Basis: cite.Recalled}
	tropicalCitation  = cite.Citation{Source: cite.FAO348, Where: "sec. 6.1, ln r = 0.12 T", Basis: cite.Recalled}
	smokedCitation    = cite.Citation{Source: cite.Dalgaard2004, Where: "ch. 22", Basis: cite.Read}
)

var laws = word.List[Law]{
	What: "law of spoilage", Words: []string{"fresh fish", "tropical fish", "cold-smoked salmon"},
}

// ParseLaw reads the words that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseLaw(s string) (Law, error) { return laws.Parse(s) }

// String is the law in words: "fresh fish"; "not stated" when it is not set.
func (l Law) String() string { return laws.Of(l) }

// MarshalText is String as bytes, empty when the law is not set; an unknown one is a units.UnknownError.
func (l Law) MarshalText() ([]byte, error) { return laws.Marshal(l) }

// UnmarshalText is ParseLaw, and the empty text is a law that is not set.
func (l *Law) UnmarshalText(text []byte) error { return laws.Unmarshal(text, l) }

// Citation says where the law is from; the zero Citation for a law that is not known.
func (l Law) Citation() cite.Citation {
	switch l {
	case FreshFish:
		return freshFishCitation
	case TropicalFish:
		return tropicalCitation
	case ColdSmokedSalmon:
		return smokedCitation
	}
	return cite.Citation{}
}

// slope is k of ln r = k T, zero for the square root law.
func (l Law) slope() float64 {
	switch l {
	case TropicalFish:
		return tropicalSlope
	case ColdSmokedSalmon:
		return smokedSlope
	}
	return 0
}

// rate is r, with T in °C.
func (l Law) rate(celsius float64) float64 {
	if k := l.slope(); k != 0 {
		return portable.Exp(k * celsius)
	}
	root := (celsius - spoilageMinimum) / (spoilageReference - spoilageMinimum)
	if root <= 0 {
		return 0
	}
	return root * root
}

// Rate returns how many times as fast as on ice a fish spoils: 4 at 10 °C by FreshFish. It is
// rounded to 1e-12. The temperature must lie in -80 to 100 °C, the law be known: otherwise a
// units.RangeError. Outside -3 to 25 °C the law is stretched, and Holds says so.
func Rate(law Law, t units.Temperature) (units.Ratio, error) {
	if err := laws.Check(law); err != nil {
		return 0, err
	}
	if err := chain.CheckFish(t); err != nil {
		return 0, err
	}
	return units.OfFloat(law.rate(t.Celsius()), units.One)
}

// Holds reports whether a temperature lies in the -3 to 25 °C, ends included, in which the laws are
// trusted; false when it is not set.
func Holds(t units.Temperature) bool {
	return t.AtLeast(units.Celsius(spoilageLow)) && !t.Above(units.Celsius(spoilageHigh))
}

// LifeAt returns how long a life on ice lasts at another temperature, rounded down to the nanosecond: 14
// days on ice are 6.2 at 5 °C. Law and temperature must be as for Rate, and the temperature one at
// which the law knows of spoilage at all: a frozen fish lasts by other rules. The life must not be below
// zero, nor come out past 292 years. Anything else is a units.RangeError.
func LifeAt(onIce time.Duration, law Law, t units.Temperature) (time.Duration, error) {
	if err := units.CheckDuration("life on ice", onIce, 0, math.MaxInt64); err != nil {
		return 0, err
	}
	if err := laws.Check(law); err != nil {
		return 0, err
	}
	if err := chain.CheckFish(t); err != nil {
		return 0, err
	}
	rate := law.rate(t.Celsius())
	if rate == 0 {
		return 0, units.RangeError{
			What: "temperature for a life by the law of " + law.String(), Got: t.String(),
			Low: units.Celsius(spoilageMinimum).String(), LowExclusive: true,
		}
	}
	life := math.Floor(float64(onIce) / rate)
	if life >= math.MaxInt64 {
		return 0, units.RangeError{What: "life at " + t.String(), Got: "more than 292 years", High: "292 years"}
	}
	return time.Duration(life), nil
}
