package keeping

import "example.org/lakelarder/internal/word"

// Concern is what a keeping time is about. The zero Concern is not set.
type Concern uint8

// The concerns. They are never mixed in one verdict.
const (
	Safety  Concern = iota + 1 // after it the food may make ill
	Quality                    // after it the food may be poor to eat
)

var concerns = word.List[Concern]{What: "concern", Words: []string{"safety", "quality"}}

// ParseConcern reads "safety" or "quality", in capitals or not; anything else is a units.UnknownError.
func ParseConcern(s string) (Concern, error) { return concerns.Parse(s) }

// String is the concern in a word; "not stated" when it is not set.
func (c Concern) String() string { return concerns.Of(c) }

// MarshalText is String as bytes, empty when the concern is not set; an unknown one is a units.UnknownError.
func (c Concern) MarshalText() ([]byte, error) { return concerns.Marshal(c) }

// UnmarshalText is ParseConcern, and the empty text is a concern that is not set.
func (c *Concern) UnmarshalText(text []byte) error { return concerns.Unmarshal(text, c) }
