package yield

import "example.org/lakelarder/internal/word"

// Spread says what Low and High of a share are. The zero Spread is not stated: they equal Likely, and nothing is
// known of how fish differ.
type Spread uint8

// The kinds of spread.
const (
	PrintedRange      Spread = iota + 1 // Low and High are printed, Likely is their middle
	StandardDeviation                   // Low and High lie one standard deviation from the mean: one fish in three lies outside
	JudgedRange                         // as PrintedRange, but judged: nobody printed Low and High
)

var spreads = word.List[Spread]{What: "spread", Words: []string{"printed range", "standard deviation", "judged range"}}

// ParseSpread reads the words that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseSpread(s string) (Spread, error) { return spreads.Parse(s) }

// String is the kind in words: "standard deviation".
func (s Spread) String() string { return spreads.Of(s) }

// MarshalText is String as bytes, empty when it is not set; an unknown one is a units.UnknownError.
func (s Spread) MarshalText() ([]byte, error) { return spreads.Marshal(s) }

// UnmarshalText is ParseSpread, and the empty text is one that is not set.
func (s *Spread) UnmarshalText(text []byte) error { return spreads.Unmarshal(text, s) }
