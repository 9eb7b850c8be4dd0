package verdict

import "example.org/lakelarder/internal/word"

// Kind is how what was stated or recorded stands to what is wanted. The zero Kind is not stated.
type Kind uint8

// The kinds of finding.
const (
	Missing    Kind = iota + 1 // something that decides was not stated, not marked or not recorded
	Short                      // less than wanted
	Over                       // more than wanted, which is not better
	Different                  // another figure than wanted
	TooWarm                    // warmer than wanted
	TooCold                    // colder than wanted
	TooLong                    // longer than allowed
	TooSoon                    // before what it has to wait for
	Unobserved                 // a gap in the record hides it
	Impossible                 // it contradicts physics, itself, or what was marked
)

var kinds = word.List[Kind]{What: "kind of finding", Words: []string{
	"missing", "short", "over", "different", "too warm", "too cold", "too long", "too soon", "not observed", "impossible",
}}

// ParseKind reads the word that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseKind(s string) (Kind, error) { return kinds.Parse(s) }

// String is the kind in words: "too warm".
func (k Kind) String() string { return kinds.Of(k) }

// MarshalText is String as bytes, empty when the kind is not set; an unknown one is a units.UnknownError.
func (k Kind) MarshalText() ([]byte, error) { return kinds.Marshal(k) }

// UnmarshalText is ParseKind, and the empty text is a kind that is not set.
func (k *Kind) UnmarshalText(text []byte) error { return kinds.Unmarshal(text, k) }

// Verdict is what a finding of the kind usually comes to: Missing, Unobserved and Impossible CannotTell, Different
// Differs, Over More, every other NotMet. A judge may find worse, or that it was made good.
func (k Kind) Verdict() Verdict {
	switch k {
	case Missing, Unobserved, Impossible, 0:
		return CannotTell
	case Different:
		return Differs
	case Over:
		return More
	}
	return NotMet
}
