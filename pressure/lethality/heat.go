package lethality

import "example.org/lakelarder/internal/word"

// Heat is how the record's food was heated.
type Heat uint8

// The kinds of heat. The zero Heat is not stated, and is refused.
const (
	Moist    Heat = iota + 1 // in water, in steam or sealed in its own moisture
	DrySmoke                 // in a smokehouse or oven
)

var heats = word.List[Heat]{What: "kind of heat", Words: []string{"moist heat", "dry smoke"}}

// ParseHeat reads the words that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseHeat(s string) (Heat, error) { return heats.Parse(s) }

// String is the heat in words: "moist heat".
func (h Heat) String() string { return heats.Of(h) }

// MarshalText is String as bytes, empty when it is not set; an unknown one is a units.UnknownError.
func (h Heat) MarshalText() ([]byte, error) { return heats.Marshal(h) }

// UnmarshalText is ParseHeat, and the empty text is one that is not set.
func (h *Heat) UnmarshalText(text []byte) error { return heats.Unmarshal(text, h) }
