package timetable

import "example.org/lakelarder/internal/word"

// PartKind is what a part of a Conflict is. The zero PartKind is not set.
type PartKind uint8

// The kinds of parts.
const (
	OfBound    PartKind = iota + 1 // one of the bounds
	OfCapacity                     // that there is no more of a resource
	OfHours                        // the windows of a resource
	OfEnd                          // the end of the plan, Problem.Until
	OfRestart                      // the room for a second run
)

var partKinds = word.List[PartKind]{What: "kind of part", Words: []string{
	"bound", "capacity", "hours", "end of the plan", "room to restart",
}}

// ParsePartKind reads the word that String writes, in capitals or not; anything else is a units.UnknownError that lists
// the words.
func ParsePartKind(s string) (PartKind, error) {
	return partKinds.Parse(s)
}

// String is the word that ParsePartKind reads; "not stated" when it is not set.
func (k PartKind) String() string { return partKinds.Of(k) }

// MarshalText is String as bytes, empty when the kind is not set; an unknown one is an error.
func (k PartKind) MarshalText() ([]byte, error) { return partKinds.Marshal(k) }

// UnmarshalText is ParsePartKind, and the empty text is a kind that is not set.
func (k *PartKind) UnmarshalText(text []byte) error { return partKinds.Unmarshal(text, k) }
