package word

import (
	"strconv"
	"strings"

	"example.org/lakelarder/units"
)

// NotStated is the word for the zero value of every enumeration.
const NotStated = "not stated"

// List is the words of an enumeration of type E, from its value 1 on. What names the enumeration in errors. Also has
// other spellings that are in use, in lower case.
type List[E ~uint8] struct {
	What  string
	Words []string
	Also  map[string]E
}

// Of returns the word of a value: "not stated" for zero, and what it is with its number where it has none: "jar(9)".
func (l List[E]) Of(v E) string {
	switch {
	case v == 0:
		return NotStated
	case l.Known(v):
		return l.Words[v-1]
	}
	return l.What + "(" + strconv.Itoa(int(v)) + ")"
}

// Known reports whether a value is set and has a word.
func (l List[E]) Known(v E) bool { return v > 0 && int(v) <= len(l.Words) }

// Check returns nil for a value that has a word, a units.UnsetError for zero, and a units.UnknownError for any other.
func (l List[E]) Check(v E) error {
	if v == 0 {
		return units.UnsetError{What: l.What}
	}
	return l.CheckIfSet(v)
}

// CheckIfSet is Check, with zero accepted.
func (l List[E]) CheckIfSet(v E) error {
	if v == 0 || l.Known(v) {
		return nil
	}
	return units.UnknownError{What: l.What, Got: l.Of(v), Known: l.Words}
}

// Parse reads a word, in capitals or not; anything else, the word for zero included, is a units.UnknownError that lists
// the words.
func (l List[E]) Parse(s string) (E, error) {
	s = strings.TrimSpace(s)
	for i, word := range l.Words {
		if strings.EqualFold(word, s) {
			return E(i + 1), nil
		}
	}
	if v, ok := l.Also[strings.ToLower(s)]; ok {
		return v, nil
	}
	return 0, units.UnknownError{What: l.What, Got: s, Known: l.Words}
}

// Marshal writes a word; zero is the empty text, and a value without a word a units.UnknownError.
func (l List[E]) Marshal(v E) ([]byte, error) {
	if v == 0 {
		return []byte{}, nil
	}
	if err := l.CheckIfSet(v); err != nil {
		return nil, err
	}
	return []byte(l.Words[v-1]), nil
}

// Unmarshal reads what Marshal writes. On an error the value stays as it was.
func (l List[E]) Unmarshal(text []byte, v *E) error {
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
