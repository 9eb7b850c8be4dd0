package cite

import (
	"strconv"

	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/units"
)

// Source is one edition of one document, named by a constant of this package.
// The zero Source is not set. Its number may change between versions of the
// library; its key does not.
type Source uint16

// Sources returns every source in the order of the bibliography. The slice is
// the caller's own.
func Sources() []Source {
	all := make([]Source, 0, len(documents)-1)
	for s := Source(1); s.known(); s++ {
		all = append(all, s)
	}
	return all
}

// ParseSource returns the source whose key is exactly key, such as
// "USDAGuide5Rev1994". A key that is not in the bibliography, the empty one
// included, is an error. It searches the whole list: parse once, keep the
// Source.
func ParseSource(key string) (Source, error) {
	for s := Source(1); s.known(); s++ {
		if documents[s].Key == key {
			return s, nil
		}
	}
	return 0, units.UnknownError{What: "source", Got: key}
}

// Key returns the name of the Go constant, such as "USDAGuide5Rev1994", and
// the empty string for a Source that is not set or not known.
func (s Source) Key() string {
	return s.Document().Key
}

// Document returns the entry of the bibliography, and the zero Document for a
// Source that is not set or not known.
func (s Source) Document() Document {
	if !s.known() {
		return Document{}
	}
	return documents[s]
}

// String returns the document in one line, as Document.String does. A Source
// that is not set or not known says so.
func (s Source) String() string {
	switch {
	case s == 0:
		return word.NotStated
	case !s.known():
		return "source(" + strconv.Itoa(int(s)) + ")"
	}
	return documents[s].String()
}

// MarshalText writes the key. A Source that is not set is written as the empty
// text; a number that is no Source is an error.
func (s Source) MarshalText() ([]byte, error) {
	if s != 0 && !s.known() {
		return nil, units.UnknownError{What: "source", Got: s.String()}
	}
	return []byte(s.Key()), nil
}

// UnmarshalText reads what MarshalText writes: a key, or nothing for a Source
// that is not set. On an error s keeps its value.
func (s *Source) UnmarshalText(text []byte) error {
	if len(text) == 0 {
		*s = 0
		return nil
	}
	parsed, err := ParseSource(string(text))
	if err != nil {
		return err
	}
	*s = parsed
	return nil
}

// known reports whether s is set and has a document.
func (s Source) known() bool {
	return s > 0 && int(s) < len(documents)
}
