package coldchain

import "example.org/lakelarder/internal/word"

// Reading is how the time in several bands of table A-2 adds up; the guide does not say. From the strictest: what
// passes one passes those after it. The zero Reading is not stated and counts as SumOfFractions.
type Reading uint8

// The readings.
const (
	// SumOfFractions adds the time in each band as a share of its limit; the sum may reach 100 %. The rows of exactly
	// 50 °F (S. aureus, V. cholerae) hold by themselves and are not added.
	SumOfFractions Reading = iota + 1
	// Nested holds the time at or above the floor of a band against the band's limit.
	Nested
	// EachBand holds the time in a band against its limit and forgets the other bands. It is the only one that may call
	// a record better after warming, because time moves on to a band with a limit of its own.
	EachBand
)

var readings = word.List[Reading]{
	What: "reading of table A-2", Words: []string{"sum of fractions", "nested", "each band"},
}

// ParseReading reads the words that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseReading(s string) (Reading, error) { return readings.Parse(s) }

// String is the reading in words: "sum of fractions"; "not stated" when it is not set.
func (r Reading) String() string { return readings.Of(r) }

// MarshalText is String as bytes, empty when the reading is not set; an unknown one is a units.UnknownError.
func (r Reading) MarshalText() ([]byte, error) { return readings.Marshal(r) }

// UnmarshalText is ParseReading, and the empty text is a reading that is not set.
func (r *Reading) UnmarshalText(text []byte) error { return readings.Unmarshal(text, r) }
