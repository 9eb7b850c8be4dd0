package freezing

import (
	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/units/cite"
)

// IceLaw is how the share of ice grows below the freezing point T0, both in °C. The zero IceLaw is not stated and
// counts as IdealIce.
type IceLaw uint8

// The laws; see Flesh.IceAt for how near they come.
const (
	IdealIce    IceLaw = iota + 1 // of the water that can freeze, 1 - T0/T
	TchigeovIce                   // of all water, 1.105/(1 + 0.7138/ln(T0 - T + 1)), never more than can freeze
)

var iceLaws = word.List[IceLaw]{What: "law of ice", Words: []string{"ideal solution", "Tchigeov"}}

// ParseIceLaw reads the words that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseIceLaw(s string) (IceLaw, error) { return iceLaws.Parse(s) }

// String is the law in words: "ideal solution"; "not stated" when it is not set.
func (l IceLaw) String() string { return iceLaws.Of(l) }

// MarshalText is String as bytes, empty when the law is not set; an unknown one is a units.UnknownError.
func (l IceLaw) MarshalText() ([]byte, error) { return iceLaws.Marshal(l) }

// UnmarshalText is ParseIceLaw, and the empty text is a law that is not set.
func (l *IceLaw) UnmarshalText(text []byte) error { return iceLaws.Unmarshal(text, l) }

// Citation is where the law is from; both are from memory.
func (l IceLaw) Citation() cite.Citation {
	if l == TchigeovIce {
		return tchigeovCitation
	}
	return iceCitation
}
