package wire

import (
	"bytes"
	"unicode/utf8"
)

// Limits of what is read, and of what is written, so that it can be read.
const (
	deepest = 64       // levels of objects and lists
	longest = 64 << 20 // bytes
)

// reader walks through a text in JSON (RFC 8259).
type reader struct {
	data  []byte
	at    int
	depth int
}

// peek skips blanks and returns the next byte, 0 at the end.
func (r *reader) peek() byte {
	for ; r.at < len(r.data); r.at++ {
		switch c := r.data[r.at]; c {
		case ' ', '\t', '\r', '\n':
		default:
			return c
		}
	}
	return 0
}

// what says what stands at the reader, for errors.
func (r *reader) what() string {
	switch c := r.peek(); {
	case r.at >= len(r.data):
		return "the end"
	case c == '{':
		return "an object"
	case c == '[':
		return "a list"
	case c == '"':
		return "text"
	case c == '-' || c >= '0' && c <= '9':
		if literal, err := r.fork().number(); err == nil {
			return "the number " + shortened(string(literal))
		}
		return "a number"
	case bytes.HasPrefix(r.data[r.at:], []byte("true")) || bytes.HasPrefix(r.data[r.at:], []byte("false")):
		return "true or false"
	case bytes.HasPrefix(r.data[r.at:], []byte("null")):
		return "null"
	}
	c, _ := utf8.DecodeRune(r.data[r.at:])
	return "the character " + quoted(string(c))
}

// fork is a second reader at the same place.
func (r *reader) fork() *reader { other := *r; return &other }

// wanted is the error that something else stands at the reader.
func (r *reader) wanted(what string) error {
	found := r.what()
	return wrong(r.at, "expected %s, not %s", what, found)
}

// take reads one of the characters that structure a text.
func (r *reader) take(c byte, what string) error {
	if r.peek() != c {
		return r.wanted(what)
	}
	r.at++
	return nil
}

// end refuses what follows the value.
func (r *reader) end() error {
	if r.peek(); r.at < len(r.data) {
		return r.wanted("the end after one value")
	}
	return nil
}

// members reads an object, and each value through the function.
func (r *reader) members(each func(key string, at int) error) error {
	return r.nested('{', '}', func(int) error {
		if r.peek() != '"' {
			return r.wanted("the name of a field in quotes")
		}
		at := r.at
		key, err := r.phrase()
		if err != nil {
			return err
		}
		if err := r.take(':', `":" after the name of a field`); err != nil {
			return under(err, named(key))
		}
		if err := each(key, at); err != nil {
			return under(err, named(key))
		}
		return nil
	})
}

// elements reads a list, and each value through the function.
func (r *reader) elements(each func(i int) error) error {
	return r.nested('[', ']', func(i int) error {
		if err := each(i); err != nil {
			return under(err, indexed(i))
		}
		return nil
	})
}

func (r *reader) nested(open, shut byte, each func(i int) error) error {
	kind := map[byte]string{'{': "an object", '[': "a list"}[open]
	if err := r.take(open, kind); err != nil {
		return err
	}
	if r.depth++; r.depth > deepest {
		return wrong(r.at-1, "nested more than %d deep", deepest)
	}
	for i := 0; ; i++ {
		if i == 0 && r.peek() == shut {
			break
		}
		if err := each(i); err != nil {
			return err
		}
		if r.peek() == shut {
			break
		}
		if err := r.take(',', `"," or the end of `+kind); err != nil {
			return err
		}
	}
	r.at++
	r.depth--
	return nil
}

// skip reads over a value of any kind; null it refuses.
func (r *reader) skip() error {
	switch c := r.peek(); {
	case c == '{':
		return r.members(func(string, int) error { return r.skip() })
	case c == '[':
		return r.elements(func(int) error { return r.skip() })
	case c == '"':
		_, err := r.phrase()
		return err
	case c == '-' || c >= '0' && c <= '9':
		_, err := r.number()
		return err
	case c == 't' || c == 'f':
		_, err := r.boolean()
		return err
	}
	return r.wanted("a value")
}

func (r *reader) boolean() (bool, error) {
	for _, word := range [...]string{"false", "true"} {
		if r.peek(); bytes.HasPrefix(r.data[r.at:], []byte(word)) {
			r.at += len(word)
			return word == "true", nil
		}
	}
	return false, r.wanted("true or false")
}

// number reads the digits of a number as they stand.
func (r *reader) number() ([]byte, error) {
	start := r.at
	if r.peek() == '-' {
		r.at++
	}
	whole := r.digits()
	good := whole == 1 || whole > 1 && r.data[r.at-whole] != '0'
	if good && r.at < len(r.data) && r.data[r.at] == '.' {
		r.at++
		good = r.digits() > 0
	}
	if good && r.at < len(r.data) && (r.data[r.at] == 'e' || r.data[r.at] == 'E') {
		r.at++
		if r.at < len(r.data) && (r.data[r.at] == '+' || r.data[r.at] == '-') {
			r.at++
		}
		good = r.digits() > 0
	}
	if !good {
		return nil, wrong(start, "this is no number of JSON: no 0 before other digits, and digits on both sides of a point")
	}
	return r.data[start:r.at], nil
}

func (r *reader) digits() int {
	start := r.at
	for r.at < len(r.data) && r.data[r.at] >= '0' && r.data[r.at] <= '9' {
		r.at++
	}
	return r.at - start
}
