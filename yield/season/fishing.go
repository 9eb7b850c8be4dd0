package season

import "example.org/lakelarder/internal/word"

// Fishing is the catch that a plan reckons with. The zero Fishing is not stated.
type Fishing uint8

// The two catches of a Trip. Expected is the safe side for a supply.
const (
	Expected Fishing = iota + 1
	Possible
)

var fishings = word.List[Fishing]{What: "catch to plan with", Words: []string{"expected", "possible"}}

// ParseFishing reads the word that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseFishing(s string) (Fishing, error) { return fishings.Parse(s) }

// String is the catch in a word: "expected".
func (f Fishing) String() string { return fishings.Of(f) }

// MarshalText is String as bytes, empty when it is not set; an unknown one is a units.UnknownError.
func (f Fishing) MarshalText() ([]byte, error) { return fishings.Marshal(f) }

// UnmarshalText is ParseFishing, and the empty text is one that is not set.
func (f *Fishing) UnmarshalText(text []byte) error { return fishings.Unmarshal(text, f) }
