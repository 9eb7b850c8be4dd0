package season

import (
	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/units/cite"
)

// Shape is which fish a possession rule counts, and against what. The zero Shape is not stated.
type Shape uint8

// The shapes that are published. Only their form is here: the figures of a Rule are the caller's.
const (
	Everything     Shape = iota + 1 // every fish counts, in the freezer and in jars, against a limit such as two days' catch
	OneDay                          // every fish counts, against the limit of one day
	ProcessedQuota                  // fresh fish count against the limit of one day, processed ones against their own quota
	Unpreserved                     // fish that are preserved do not count; the others count against a possession limit
)

var shapes = word.List[Shape]{
	What: "shape of a possession rule", Words: []string{"everything", "one day", "processed quota", "unpreserved"},
}

var shapeCitations = [...]cite.Citation{
	Everything:     {Source: cite.WisconsinPossession, Where: "page", Basis: cite.Read},
	OneDay:         {Source: cite.CaliforniaPossession, Where: "answer", Basis: cite.Read},
	ProcessedQuota: {Source: cite.MichiganHouseBill5481, Where: "news report", Basis: cite.Read},
	Unpreserved:    {Source: cite.AlaskaPossession5AAC, Where: "definition of possession", Basis: cite.Recalled},
}

// Citation returns one document in which a rule of this shape was found, an example and not the rule of the caller's
// water; the zero Citation for a Shape that is not set or not known.
func (s Shape) Citation() cite.Citation {
	if !shapes.Known(s) {
		return cite.Citation{}
	}
	return shapeCitations[s]
}

// ParseShape reads the words that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseShape(s string) (Shape, error) { return shapes.Parse(s) }

// String is the words that ParseShape reads: "one day".
func (s Shape) String() string { return shapes.Of(s) }

// MarshalText is String as bytes, empty when the shape is not set; an unknown one is a units.UnknownError.
func (s Shape) MarshalText() ([]byte, error) { return shapes.Marshal(s) }

// UnmarshalText is ParseShape, and the empty text is a shape that is not set.
func (s *Shape) UnmarshalText(text []byte) error { return shapes.Unmarshal(text, s) }
