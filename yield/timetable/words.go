package timetable

import "example.org/lakelarder/internal/word"

// Sense is which way a Bound holds. The zero Sense is not set, and refused.
type Sense uint8

// The two senses of a bound.
const (
	NotBefore Sense = iota + 1 // the earliest: after what, and how long after
	NotAfter                   // the latest: a deadline
)

var senses = word.List[Sense]{What: "sense", Words: []string{"not before", "not after"}}

// ParseSense reads the word that String writes, in capitals or not; anything else is a units.UnknownError that lists
// the words.
func ParseSense(s string) (Sense, error) {
	return senses.Parse(s)
}

// String is the word that ParseSense reads; "not stated" when it is not set.
func (s Sense) String() string { return senses.Of(s) }

// MarshalText is String as bytes, empty when the sense is not set; an unknown one is an error.
func (s Sense) MarshalText() ([]byte, error) { return senses.Marshal(s) }

// UnmarshalText is ParseSense, and the empty text is a sense that is not set.
func (s *Sense) UnmarshalText(text []byte) error { return senses.Unmarshal(text, s) }

// Edge is the start or the end of a task or step. The zero Edge is not set, and belongs to the start of the plan
// only.
type Edge uint8

// The two edges.
const (
	Start Edge = iota + 1
	End
)

var edges = word.List[Edge]{What: "edge", Words: []string{"start", "end"}}

// ParseEdge reads the word that String writes, in capitals or not; anything else is a units.UnknownError that lists the
// words.
func ParseEdge(s string) (Edge, error) {
	return edges.Parse(s)
}

// String is the word that ParseEdge reads; "not stated" when it is not set.
func (e Edge) String() string { return edges.Of(e) }

// MarshalText is String as bytes, empty when the edge is not set; an unknown one is an error.
func (e Edge) MarshalText() ([]byte, error) { return edges.Marshal(e) }

// UnmarshalText is ParseEdge, and the empty text is an edge that is not set.
func (e *Edge) UnmarshalText(text []byte) error { return edges.Unmarshal(text, e) }

// Answer is what a search came to. The zero Answer is that nothing was asked, and never a pass.
type Answer uint8

// The answers.
const (
	Possible   Answer = iota + 1 // found, and shown
	Impossible                   // proven
	Undecided                    // neither, within the steps allowed
)

var answers = word.List[Answer]{What: "answer", Words: []string{"possible", "impossible", "undecided"}}

// ParseAnswer reads the word that String writes, in capitals or not; anything else is a units.UnknownError that lists
// the words.
func ParseAnswer(s string) (Answer, error) {
	return answers.Parse(s)
}

// String is the word that ParseAnswer reads; "not stated" when it is not set.
func (a Answer) String() string { return answers.Of(a) }

// MarshalText is String as bytes, empty when nothing was asked; an unknown one is an error.
func (a Answer) MarshalText() ([]byte, error) { return answers.Marshal(a) }

// UnmarshalText is ParseAnswer, and the empty text is that nothing was asked.
func (a *Answer) UnmarshalText(text []byte) error { return answers.Unmarshal(text, a) }
