package coldchain

import "example.org/lakelarder/internal/word"

// Use is what the fish is for, which decides the limits that govern it. The zero Use is not stated and counts as EatenRaw,
// the strictest: every limit governs.
type Use uint8

// The uses.
const (
	EatenRaw  Use = iota + 1 // cold-smoked, salted, marinated or dried as well
	HotSmoked                // to a published rule for the core
	CookedThrough
	Canned // by a published process under pressure
)

var uses = word.List[Use]{What: "use", Words: []string{"eaten raw", "hot-smoked", "cooked through", "canned"}}

// ParseUse reads the words that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseUse(s string) (Use, error) { return uses.Parse(s) }

// String is the use in words: "eaten raw"; "not stated" when it is not set.
func (u Use) String() string { return uses.Of(u) }

// MarshalText is String as bytes, empty when the use is not set; an unknown one is a units.UnknownError.
func (u Use) MarshalText() ([]byte, error) { return uses.Marshal(u) }

// UnmarshalText is ParseUse, and the empty text is one that is not set.
func (u *Use) UnmarshalText(text []byte) error { return uses.Unmarshal(text, u) }
