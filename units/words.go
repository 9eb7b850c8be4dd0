package units

// words are the words of one of this package's own enumerations, from its value 0 on. The enumerations of other packages
// go by internal/word, which stands on this package.
type words struct {
	what  string
	words []string
}

func (w words) of(v uint8) string {
	if int(v) < len(w.words) {
		return w.words[v]
	}
	return w.what + "(" + utoa(uint64(v)) + ")"
}

func (w words) parse(s string) (uint8, error) {
	for v, word := range w.words {
		if s == word {
			return uint8(v), nil
		}
	}
	return 0, UnknownError{What: w.what, Got: s, Known: w.words}
}

func (w words) marshal(v uint8) ([]byte, error) {
	if int(v) >= len(w.words) {
		return nil, UnknownError{What: w.what, Got: w.of(v), Known: w.words}
	}
	return []byte(w.words[v]), nil
}

func (w words) unmarshal(text []byte, v *uint8) error {
	read, err := w.parse(string(text))
	if err == nil {
		*v = read
	}
	return err
}
