package parasites

import "example.org/lakelarder/internal/word"

// Clock is from when the hold of a rule counts. The zero Clock is not set.
type Clock uint8

// The clocks. A fish takes hours to days to freeze through, which the first clock forgives and the others do not.
const (
	FromLoading Clock = iota + 1 // from when the fish goes into the freezer
	FromSolid                    // from when it is frozen solid
	FromCore                     // from when its coldest or, with heat, hottest part to get there has the temperature
)

var clocks = word.List[Clock]{What: "clock", Words: []string{
	"from loading the freezer", "from the fish being solid", "from the core being there",
}}

// ParseClock reads the words that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseClock(s string) (Clock, error) { return clocks.Parse(s) }

// String is the clock in words: "from loading the freezer"; "not stated" when it is not set.
func (c Clock) String() string { return clocks.Of(c) }

// MarshalText is String as bytes, empty when the clock is not set; an unknown one is a units.UnknownError.
func (c Clock) MarshalText() ([]byte, error) { return clocks.Marshal(c) }

// UnmarshalText is ParseClock, and the empty text is a clock that is not set.
func (c *Clock) UnmarshalText(text []byte) error { return clocks.Unmarshal(text, c) }

// Standing is what a rule is good for here. The zero Standing is not set.
type Standing uint8

// The standings. Where sources differ the strictest decide.
const (
	Deciding Standing = iota + 1 // meeting it is enough
	Named                        // judged and shown, but a stricter rule decides
	Refused                      // too weak for fish eaten raw: shown as such and never judged by
)

var standings = word.List[Standing]{What: "standing", Words: []string{"deciding", "named only", "not to be used"}}

// ParseStanding reads the words that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseStanding(s string) (Standing, error) { return standings.Parse(s) }

// String is the standing in words: "deciding"; "not stated" when it is not set.
func (s Standing) String() string { return standings.Of(s) }

// MarshalText is String as bytes, empty when the standing is not set; an unknown one is a units.UnknownError.
func (s Standing) MarshalText() ([]byte, error) { return standings.Marshal(s) }

// UnmarshalText is ParseStanding, and the empty text is a standing that is not set.
func (s *Standing) UnmarshalText(text []byte) error { return standings.Unmarshal(text, s) }
