package wire

import (
	"strconv"
	"unicode/utf16"
	"unicode/utf8"
)

func quoted(s string) string { return strconv.Quote(shortened(s)) }

// phrase reads a text in quotes.
func (r *reader) phrase() (string, error) {
	if r.peek() != '"' {
		return "", r.wanted("text in quotes")
	}
	start := r.at + 1
	var plain []byte // what was read before an escape
	from := start
	for r.at = start; r.at < len(r.data); {
		switch c := r.data[r.at]; {
		case c == '"':
			last := r.data[from:r.at]
			r.at++
			if plain == nil {
				return string(last), nil
			}
			return string(append(plain, last...)), nil
		case c == '\\':
			plain = append(plain, r.data[from:r.at]...)
			letter, size := escape(r.data[r.at:])
			if size == 0 {
				return "", wrong(r.at, "this is no escape of JSON, or half of a pair")
			}
			plain = utf8.AppendRune(plain, letter)
			r.at += size
			from = r.at
		case c < ' ':
			return "", wrong(r.at, "a text cannot hold the control character %q as it is", c)
		case c < utf8.RuneSelf:
			r.at++
		default:
			letter, size := utf8.DecodeRune(r.data[r.at:])
			if letter == utf8.RuneError && size == 1 {
				return "", wrong(r.at, "the byte %#x is no UTF-8", c)
			}
			r.at += size
		}
	}
	return "", wrong(start-1, "the text has no closing quote")
}

// escape is the letter that an escape at the start of data stands for, and its size; 0 for what is none.
func escape(data []byte) (rune, int) {
	if len(data) < 2 {
		return 0, 0
	}
	switch data[1] {
	case '"', '\\', '/':
		return rune(data[1]), 2
	case 'b':
		return '\b', 2
	case 'f':
		return '\f', 2
	case 'n':
		return '\n', 2
	case 'r':
		return '\r', 2
	case 't':
		return '\t', 2
	}
	first := unit(data)
	switch {
	case first < 0:
		return 0, 0
	case !utf16.IsSurrogate(first):
		return first, 6
	}
	if pair := utf16.DecodeRune(first, unit(data[6:])); pair != utf8.RuneError {
		return pair, 12
	}
	return 0, 0
}

// unit is the UTF-16 unit of an escape in four hexadecimal digits, -1 where there is none.
func unit(data []byte) rune {
	if len(data) < 6 || data[0] != '\\' || data[1] != 'u' {
		return -1
	}
	n, err := strconv.ParseUint(string(data[2:6]), 16, 16)
	if err != nil {
		return -1
	}
	return rune(n)
}

// appendPhrase writes a text in quotes. Only what JSON forbids is escaped: °, < and & stay readable.
func appendPhrase(out []byte, s string) []byte {
	const hex = "0123456789abcdef"
	out = append(out, '"')
	from := 0
	for i := 0; i < len(s); i++ {
		c := s[i]
		if c >= ' ' && c != '"' && c != '\\' {
			continue
		}
		out = append(out, s[from:i]...)
		from = i + 1
		switch c {
		case '"', '\\':
			out = append(out, '\\', c)
		case '\n':
			out = append(out, '\\', 'n')
		case '\r':
			out = append(out, '\\', 'r')
		case '\t':
			out = append(out, '\\', 't')
		default:
			out = append(out, '\\', 'u', '0', '0', hex[c>>4], hex[c&15])
		}
	}
	return append(append(out, s[from:]...), '"')
}
