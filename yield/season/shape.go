package season

import (
	"strconv"
	"strings"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Shape is which fish a possession rule counts, and against what. The zero Shape is not set.
type Shape uint8

// The shapes that are published. Only their form is here: the figures of a Rule are the caller's.
const (
	Everything     Shape = iota + 1 // every fish counts, in the freezer and in jars, against a possession limit such as two days' catch
	OneDay                          // every fish counts, against the limit of one day
	ProcessedQuota                  // fresh fish count against the limit of one day, processed fish against a quota of their own
	Unpreserved                     // fish that are preserved do not count; the others count against a possession limit
)

var shapes = [...]struct {
	word     string
	citation cite.Citation
}{
	{word: "no shape"},
	{"everything", cite.Citation{Source: cite.WisconsinPossession, Where: "page", Basis: cite.Read}},
	{"one day", cite.Citation{Source: cite.CaliforniaPossession, Where: "answer", Basis: cite.Read}},
	{"processed quota", cite.Citation{Source: cite.MichiganHouseBill5481, Where: "news report", Basis: cite.Read}},
	{"unpreserved", cite.Citation{Source: cite.AlaskaPossession5AAC, Where: "definition of possession", Basis: cite.Recalled}},
}

// Citation returns one document in which a rule of this shape was found, an example and not the rule of the caller's water; the
// zero Citation for a Shape that is not set or not known.
func (s Shape) Citation() cite.Citation {
	if int(s) >= len(shapes) {
		return cite.Citation{}
	}
	return shapes[s].citation
}

// ParseShape reads the words that String writes, in capitals or not; anything else is a units.ParseError that lists them.
func ParseShape(s string) (Shape, error) {
	var words []string
	for v := 1; v < len(shapes); v++ {
		if strings.EqualFold(shapes[v].word, strings.TrimSpace(s)) {
			return Shape(v), nil
		}
		words = append(words, shapes[v].word)
	}
	return 0, units.ParseError{Quantity: "shape of a possession rule", Text: s, Reason: "expected one of: " + strings.Join(words, ", ")}
}

// String is the words that ParseShape reads; "no shape" when it is not set.
func (s Shape) String() string {
	if int(s) >= len(shapes) {
		return "shape(" + strconv.Itoa(int(s)) + ")"
	}
	return shapes[s].word
}

// MarshalText is String as bytes, empty when the shape is not set; an unknown one is an error.
func (s Shape) MarshalText() ([]byte, error) {
	switch {
	case s == 0:
		return []byte{}, nil
	case int(s) >= len(shapes):
		return nil, units.ParseError{Quantity: "shape of a possession rule", Text: s.String(), Reason: "it has no name"}
	}
	return []byte(s.String()), nil
}

// UnmarshalText is ParseShape, and the empty text is a shape that is not set; on an error the value stays as it was.
func (s *Shape) UnmarshalText(text []byte) error {
	if len(text) == 0 {
		*s = 0
		return nil
	}
	read, err := ParseShape(string(text))
	if err != nil {
		return err
	}
	*s = read
	return nil
}
