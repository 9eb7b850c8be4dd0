package timetable

import "example.org/lakelarder/internal/word"

// Sense is which way a Bound holds. The zero Sense is not set, and refused.
type Sense uint8

// The two senses of a bound.
const (
	NotBefore Sense = iota + 1 // the earliest: after what, and how long after
	NotAfter                   // the latest: a deadline
)

var senses = word.List{What: "sense", Words: []string{"no sense", "not before", "not after"}}

// ParseSense reads the word that String writes, in capitals or not; anything else is a units.ParseError that lists
// the words.
func ParseSense(s string) (Sense, error) {
	v, err := senses.Parse(s)
	return Sense(v), err
}

// String is the word that ParseSense reads; "no sense" when it is not set.
func (s Sense) String() string { return senses.Of(uint8(s)) }

// MarshalText is String as bytes, empty when the sense is not set; an unknown one is an error.
func (s Sense) MarshalText() ([]byte, error) { return senses.Marshal(uint8(s)) }

// UnmarshalText is ParseSense, and the empty text is a sense that is not set.
func (s *Sense) UnmarshalText(text []byte) error { return senses.Unmarshal(text, (*uint8)(s)) }

// Edge is the start or the end of a task or step. The zero Edge is not set, and belongs to the start of the plan
// only.
type Edge uint8

// The two edges.
const (
	Start Edge = iota + 1
	End
)

var edges = word.List{What: "edge", Words: []string{"no edge", "start", "end"}}

// ParseEdge reads the word that String writes, in capitals or not; anything else is a units.ParseError that lists the
// words.
func ParseEdge(s string) (Edge, error) {
	v, err := edges.Parse(s)
	return Edge(v), err
}

// String is the word that ParseEdge reads; "no edge" when it is not set.
func (e Edge) String() string { return edges.Of(uint8(e)) }

// MarshalText is String as bytes, empty when the edge is not set; an unknown one is an error.
func (e Edge) MarshalText() ([]byte, error) { return edges.Marshal(uint8(e)) }

// UnmarshalText is ParseEdge, and the empty text is an edge that is not set.
func (e *Edge) UnmarshalText(text []byte) error { return edges.Unmarshal(text, (*uint8)(e)) }

// Answer is what a search came to. The zero Answer is that nothing was asked, and never a pass.
type Answer uint8

// The answers.
const (
	Possible   Answer = iota + 1 // found, and shown
	Impossible                   // proven
	Undecided                    // neither, within the steps allowed
)

var answers = word.List{What: "answer", Words: []string{"not asked", "possible", "impossible", "undecided"}}

// ParseAnswer reads the word that String writes, in capitals or not; anything else is a units.ParseError that lists
// the words.
func ParseAnswer(s string) (Answer, error) {
	v, err := answers.Parse(s)
	return Answer(v), err
}

// String is the word that ParseAnswer reads; "not asked" when it is not set.
func (a Answer) String() string { return answers.Of(uint8(a)) }

// MarshalText is String as bytes, empty when nothing was asked; an unknown one is an error.
func (a Answer) MarshalText() ([]byte, error) { return answers.Marshal(uint8(a)) }

// UnmarshalText is ParseAnswer, and the empty text is that nothing was asked.
func (a *Answer) UnmarshalText(text []byte) error { return answers.Unmarshal(text, (*uint8)(a)) }
