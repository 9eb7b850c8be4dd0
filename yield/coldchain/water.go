package coldchain

import "example.org/lakelarder/internal/word"

// Water is where the fish is from. The zero Water is not stated and counts as Marine: vibrios belong to marine and
// estuarine fish (FDA guide, p. 212).
type Water uint8

// The waters that fish is from.
const (
	Freshwater Water = iota + 1
	Marine           // estuaries included
)

var waters = word.List[Water]{What: "water", Words: []string{"freshwater", "marine"}}

// ParseWater reads the words that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseWater(s string) (Water, error) { return waters.Parse(s) }

// String is the water in words: "freshwater"; "not stated" when it is not set.
func (w Water) String() string { return waters.Of(w) }

// MarshalText is String as bytes, empty when the water is not set; an unknown one is a units.UnknownError.
func (w Water) MarshalText() ([]byte, error) { return waters.Marshal(w) }

// UnmarshalText is ParseWater, and the empty text is one that is not set.
func (w *Water) UnmarshalText(text []byte) error { return waters.Unmarshal(text, w) }
