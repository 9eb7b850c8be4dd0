package word

import (
	"strconv"
	"strings"

	"example.org/lakelarder/units"
)

// List is the words of an enumeration, by value; the word of zero is for a value that is not set, and is never read. What names
// the enumeration in errors. Also has other spellings in print, in lower case.
type List struct {
	What  string
	Words []string
	Also  map[string]uint8
}

// Of returns the word of a value, and what it is with its number where it has none: "jar(9)".
func (l List) Of(v uint8) string {
	if int(v) < len(l.Words) {
		return l.Words[v]
	}
	return l.What + "(" + strconv.Itoa(int(v)) + ")"
}

// Known reports whether a value is set and has a word.
func (l List) Known(v uint8) bool { return v > 0 && int(v) < len(l.Words) }

// Parse reads a word, in capitals or not; anything else, the word of zero included, is a units.ParseError that lists the words.
func (l List) Parse(s string) (uint8, error) {
	s = strings.TrimSpace(s)
	for v := 1; v < len(l.Words); v++ {
		if strings.EqualFold(l.Words[v], s) {
			return uint8(v), nil
		}
	}
	if v, ok := l.Also[strings.ToLower(s)]; ok {
		return v, nil
	}
	return 0, units.ParseError{Quantity: l.What, Text: s, Reason: "expected " + Series(l.Words[1:], "or")}
}

// Marshal writes a word; a value that is not set is the empty text, and one without a word a units.ParseError.
func (l List) Marshal(v uint8) ([]byte, error) {
	switch {
	case v == 0:
		return []byte{}, nil
	case !l.Known(v):
		return nil, units.ParseError{Quantity: l.What, Text: l.Of(v), Reason: "it is none of " + Series(l.Words[1:], "or")}
	}
	return []byte(l.Words[v]), nil
}

// Unmarshal reads what Marshal writes. On an error the value stays as it was.
func (l List) Unmarshal(text []byte, v *uint8) error {
	if len(text) == 0 {
		*v = 0
		return nil
	}
	read, err := l.Parse(string(text))
	if err != nil {
		return err
	}
	*v = read
	return nil
}

// Series joins words as a sentence does: "a, b and c" with the last word "and".
func Series(words []string, last string) string {
	if len(words) < 2 {
		return strings.Join(words, "")
	}
	end := len(words) - 1
	return strings.Join(words[:end], ", ") + " " + last + " " + words[end]
}
