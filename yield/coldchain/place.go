package coldchain

import "example.org/lakelarder/internal/word"

// Place is where fish lay for a time. The zero Place is not stated.
type Place uint8

// The places.
const (
	InIce Place = iota + 1 // in melting ice, which is at 0 °C
	InRefrigerator
	InFreezer
	Out // out of ice and refrigeration: deck, table, counter, smoker
)

var places = word.List[Place]{What: "place", Words: []string{"ice", "refrigerator", "freezer", "out"}}

// ParsePlace reads the words that String writes, in capitals or not; anything else is a units.UnknownError.
func ParsePlace(s string) (Place, error) { return places.Parse(s) }

// String is the place in words: "ice"; "not stated" when it is not set.
func (p Place) String() string { return places.Of(p) }

// MarshalText is String as bytes, empty when the place is not set; an unknown one is a units.UnknownError.
func (p Place) MarshalText() ([]byte, error) { return places.Marshal(p) }

// UnmarshalText is ParsePlace, and the empty text is one that is not set.
func (p *Place) UnmarshalText(text []byte) error { return places.Unmarshal(text, p) }
