package cite

import "strconv"

// Basis says how a figure came into this library. The zero Basis is Unstated,
// and a citation that carries it does not pass Citation.Check.
type Basis uint8

const (
	// Unstated is the zero Basis: nobody said where the figure is from.
	Unstated Basis = iota
	// Read: the printed value was seen, in the document or in a copy,
	// transcription or quotation of it.
	Read
	// Recalled: given from memory of the named document. Check the print before
	// relying on the figure.
	Recalled
	// Practice: common practice of the trade, with no published source.
	Practice
	// Computed: worked out from stated equations, and no better than they and
	// their inputs are.
	Computed
)

var basisNames = [...]string{
	Unstated: "unstated",
	Read:     "read",
	Recalled: "recalled",
	Practice: "practice",
	Computed: "computed",
}

// String returns the word for the basis: "read", "recalled", "practice",
// "computed", or "unstated" for the zero value.
func (b Basis) String() string {
	if int(b) < len(basisNames) {
		return basisNames[b]
	}
	return "Basis(" + strconv.Itoa(int(b)) + ")"
}

// ParseBasis returns the basis that s names, which must be exactly "read",
// "recalled", "practice" or "computed". Anything else, "unstated" and the empty
// string included, is an error.
func ParseBasis(s string) (Basis, error) {
	for b := Read; b <= Computed; b++ {
		if basisNames[b] == s {
			return b, nil
		}
	}
	return Unstated, ParseError{What: "basis", Text: s, Expected: "read, recalled, practice or computed"}
}

// MarshalText writes the basis as its word. Unstated is written as the empty
// text; a value that is no Basis is an error.
func (b Basis) MarshalText() ([]byte, error) {
	switch {
	case b == Unstated:
		return []byte{}, nil
	case b > Computed:
		return nil, ParseError{What: "basis", Text: b.String(), Expected: "one of the constants"}
	}
	return []byte(b.String()), nil
}

// UnmarshalText reads what MarshalText writes: the words of ParseBasis, or
// nothing for Unstated. On an error b keeps its value.
func (b *Basis) UnmarshalText(text []byte) error {
	if len(text) == 0 {
		*b = Unstated
		return nil
	}
	parsed, err := ParseBasis(string(text))
	if err != nil {
		return err
	}
	*b = parsed
	return nil
}
