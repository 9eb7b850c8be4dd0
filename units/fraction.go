package units

import (
	"strings"
	"unicode/utf8"
)

// fraction reads "num/den", each of one to four digits.
func fraction(s string) (num, den uint64, size int) {
	num, i := smallWhole(s)
	if i == 0 || i == len(s) {
		return 0, 0, 0
	}
	slash := 1
	if strings.HasPrefix(s[i:], "⁄") {
		slash = len("⁄")
	} else if s[i] != '/' {
		return 0, 0, 0
	}
	den, j := smallWhole(s[i+slash:])
	if j == 0 || den == 0 {
		return 0, 0, 0
	}
	return num, den, i + slash + j
}

func smallWhole(s string) (v uint64, i int) {
	for ; i < len(s) && s[i] >= '0' && s[i] <= '9'; i++ {
		if i == 4 {
			return 0, 0
		}
		v = v*10 + uint64(s[i]-'0')
	}
	return v, i
}

// vulgar reads a one-character fraction.
func vulgar(s string) (num, den uint64, size int) {
	if s == "" || s[0] < utf8.RuneSelf {
		return 0, 0, 0
	}
	r, size := utf8.DecodeRuneInString(s)
	switch r {
	case '½':
		return 1, 2, size
	case '⅓':
		return 1, 3, size
	case '⅔':
		return 2, 3, size
	case '¼':
		return 1, 4, size
	case '¾':
		return 3, 4, size
	case '⅕':
		return 1, 5, size
	case '⅙':
		return 1, 6, size
	case '⅛':
		return 1, 8, size
	case '⅜':
		return 3, 8, size
	case '⅝':
		return 5, 8, size
	case '⅞':
		return 7, 8, size
	}
	return 0, 0, 0
}
