package coldchain

import (
	"strconv"
	"strings"

	"example.org/lakelarder/units"
)

// names are the words of a small enumeration; the word of zero is for a value that is not set.
type names struct {
	what  string
	words []string
}

func (n *names) word(v uint8) string {
	if int(v) < len(n.words) {
		return n.words[v]
	}
	return n.what + "(" + strconv.Itoa(int(v)) + ")"
}

func (n *names) parse(s string) (uint8, error) {
	s = strings.TrimSpace(s)
	for v := 1; v < len(n.words); v++ {
		if strings.EqualFold(n.words[v], s) {
			return uint8(v), nil
		}
	}
	return 0, units.ParseError{Quantity: n.what, Text: s, Reason: "expected one of: " + strings.Join(n.words[1:], ", ")}
}

// marshal writes a word; a value that is not set is the empty text.
func (n *names) marshal(v uint8) ([]byte, error) {
	switch {
	case v == 0:
		return []byte{}, nil
	case int(v) >= len(n.words):
		return nil, units.ParseError{Quantity: n.what, Text: n.word(v), Reason: "it has no name"}
	}
	return []byte(n.words[v]), nil
}

// unmarshal reads what marshal writes; on an error the value stays as it was.
func (n *names) unmarshal(text []byte, v *uint8) error {
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
