package cite

import (
	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/units"
)

// Basis says how a figure came into this library. The zero Basis is Unstated, and a citation that carries it does not pass
// Citation.Check.
type Basis uint8

const (
	// Unstated is the zero Basis: how the figure was had is not stated.
	Unstated Basis = iota
	// Read: the printed value was seen, in the document or in a copy or transcription of it.
	Read
	// Quoted: the value was seen in another document that quotes this one. Check the document itself before relying on it.
	Quoted
	// Recalled: given from memory of the named document. Check the document before relying on the figure.
	Recalled
	// Practice: common practice of the trade, with no published source.
	Practice
	// Computed: worked out from stated equations, and no better than they and their inputs are.
	Computed
)

var bases = word.List[Basis]{What: "basis", Words: []string{"read", "quoted", "recalled", "practice", "computed"}}

// String returns the word for the basis: "read", "quoted", "recalled", "practice", "computed", or "not stated" for the zero
// value.
func (b Basis) String() string { return bases.Of(b) }

// ParseBasis returns the basis that s names, which must be exactly a word of String. Anything else, "not stated" and the
// empty string included, is a units.UnknownError.
func ParseBasis(s string) (Basis, error) {
	b, err := bases.Parse(s)
	if err == nil && b.String() != s { // as in testdata: no capitals, no blanks
		return Unstated, units.UnknownError{What: "basis", Got: s, Known: bases.Words}
	}
	return b, err
}

// MarshalText writes the basis as its word. Unstated is written as the empty text; a value that is no Basis is a
// units.UnknownError.
func (b Basis) MarshalText() ([]byte, error) { return bases.Marshal(b) }

// UnmarshalText reads what MarshalText writes: the words of ParseBasis, or nothing for Unstated. On an error b keeps its
// value.
func (b *Basis) UnmarshalText(text []byte) error {
	if len(text) == 0 {
		*b = Unstated
		return nil
	}
	parsed, err := ParseBasis(string(text))
	if err == nil {
		*b = parsed
	}
	return err
}
