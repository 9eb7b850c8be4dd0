package smoke

import "example.org/lakelarder/internal/word"

// Smoking is how fish is smoked. The zero Smoking is not stated.
type Smoking uint8

// Hot-smoked fish is cooked in the smoke, cold-smoked fish stays raw.
const (
	HotSmoked Smoking = iota + 1
	ColdSmoked
)

var smokings = word.List[Smoking]{
	What: "smoking", Words: []string{"hot-smoked", "cold-smoked"},
	Also: map[string]Smoking{"hot": HotSmoked, "hot smoke": HotSmoked, "cold": ColdSmoked, "cold smoke": ColdSmoked},
}

// ParseSmoking reads "hot-smoked" or "cold-smoked", in capitals or not; anything else is a units.UnknownError.
func ParseSmoking(s string) (Smoking, error) { return smokings.Parse(s) }

// String is the smoking in words: "hot-smoked".
func (s Smoking) String() string { return smokings.Of(s) }

// MarshalText is String as bytes, empty when it is not set; an unknown one is a units.UnknownError.
func (s Smoking) MarshalText() ([]byte, error) { return smokings.Marshal(s) }

// UnmarshalText is ParseSmoking, and the empty text is one that is not set.
func (s *Smoking) UnmarshalText(text []byte) error { return smokings.Unmarshal(text, s) }
