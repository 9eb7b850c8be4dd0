package process

import (
	"strconv"
	"strings"

	"example.org/lakelarder/units"
)

// names are the words of a small enumeration; the word of zero is for a value that is not set.
type names struct {
	what  string
	words []string
	also  map[string]uint8 // other spellings in print, in lower case
}

func (n names) word(v uint8) string {
	if int(v) < len(n.words) {
		return n.words[v]
	}
	return n.what + "(" + strconv.Itoa(int(v)) + ")"
}

// known reports whether v is set and has a word.
func (n names) known(v uint8) bool { return v > 0 && int(v) < len(n.words) }

func (n names) parse(s string) (uint8, error) {
	s = strings.TrimSpace(s)
	for v := 1; v < len(n.words); v++ {
		if strings.EqualFold(n.words[v], s) {
			return uint8(v), nil
		}
	}
	if v, ok := n.also[strings.ToLower(s)]; ok {
		return v, nil
	}
	return 0, units.ParseError{Quantity: n.what, Text: s, Reason: "expected " + list(n.words[1:], "or")}
}

// marshal writes a word; a value that is not set is the empty text.
func (n names) marshal(v uint8) ([]byte, error) {
	switch {
	case v == 0:
		return []byte{}, nil
	case !n.known(v):
		return nil, units.ParseError{Quantity: n.what, Text: n.word(v), Reason: "it is none of " + list(n.words[1:], "or")}
	}
	return []byte(n.words[v]), nil
}

// unmarshal reads what marshal writes; on an error the value stays as it was.
func (n names) unmarshal(text []byte, v *uint8) error {
	if len(text) == 0 {
		*v = 0
		return nil
	}
	read, err := n.parse(string(text))
	if err != nil {
		return err
	}
	*v = read
	return nil
}
