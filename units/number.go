package units

import (
	"math"
	"math/big"
	"strings"
	"unicode/utf8"
)

// number is a count read from text: num/den, or wide when more digits were written than 64 bits hold.
type number struct {
	num, den uint64
	wide     *big.Rat
}

// maxExponent bounds what a written exponent may ask for: no quantum is so small, no range so wide.
const maxExponent = 40

// scan reads a count at the start of s: "2,000", "121.1", "1.4e-7", "1/2", "3 1/2", "3-1/2", "½",
// "3½". It returns how many bytes it took, or a reason in words.
func scan(s string) (n number, used int, reason string) {
	n.den = 1
	whole, i, reason := scanDecimal(s, &n)
	if reason != "" {
		return n, 0, reason
	}
	if i > 0 && !whole {
		return n, i, ""
	}
	// A whole number may be the numerator of a fraction, or be followed by one.
	j := skipSpace(s, i)
	if num, den, size := vulgar(s[j:]); size > 0 {
		return n.plus(num, den, i > 0), j + size, ""
	}
	if i > 0 && i < len(s) && (s[i] == '/' || strings.HasPrefix(s[i:], "⁄")) {
		num, den, size := fraction(s)
		if size == 0 {
			return n, 0, "a fraction needs whole numbers of at most four digits above and below, as in 3/4"
		}
		return number{num: num, den: den}, size, ""
	}
	if i == 0 {
		return n, 0, "expected a number first"
	}
	if j < len(s) && (j > i || s[j] == '-') {
		k := j
		if s[k] == '-' {
			k++
		}
		if num, den, size := fraction(s[k:]); size > 0 && num < den {
			return n.plus(num, den, true), k + size, ""
		}
	}
	return n, i, ""
}

// plus adds num/den to a whole number.
func (n number) plus(num, den uint64, hasWhole bool) number {
	if !hasWhole {
		return number{num: num, den: den}
	}
	if n.wide == nil && n.num <= math.MaxUint64/den-1 {
		return number{num: n.num*den + num, den: den}
	}
	sum := new(big.Rat).SetFrac(new(big.Int).SetUint64(num), new(big.Int).SetUint64(den))
	return number{den: 1, wide: sum.Add(sum, n.rat())}
}

func (n number) rat() *big.Rat {
	if n.wide != nil {
		return n.wide
	}
	return new(big.Rat).SetFrac(new(big.Int).SetUint64(n.num), new(big.Int).SetUint64(n.den))
}

// of returns n units in quanta, rounded half up, and false when that passes int64.
func (n number) of(u unit) (uint64, bool) {
	if n.wide == nil && u.den == 1 {
		return mulDiv(n.num, uint64(u.num), n.den)
	}
	r := new(big.Rat).Mul(n.rat(), big.NewRat(u.num, u.den))
	v, ok := roundRat(r)
	return uint64(v), ok
}

// scanDecimal reads digits with grouping commas, a point and an exponent. It reports whether they
// were a plain whole number, and the bytes taken (none is not an error here: "½" has no digits).
func scanDecimal(s string, n *number) (whole bool, i int, reason string) {
	whole = true
	digits, places, group := 0, 0, -1 // group counts the digits since a comma
	wide := false
scan:
	for ; i < len(s); i++ {
		c := s[i]
		switch {
		case c >= '0' && c <= '9':
			d := uint64(c - '0')
			if n.num > (math.MaxUint64-d)/10 {
				wide = true
			}
			n.num = n.num*10 + d
			digits++
			if !whole {
				places++
			} else if group >= 0 {
				group++
			}
		case c == ',' && whole && digits > 0:
			if group >= 0 && group != 3 || group < 0 && digits > 3 || i+1 == len(s) || s[i+1] < '0' || s[i+1] > '9' {
				break scan
			}
			group = 0
		case c == '.' && whole:
			whole = false
		default:
			break scan
		}
	}
	if group >= 0 && group != 3 {
		return false, 0, "commas group thousands as in 2,000; a decimal mark is a point"
	}
	if digits == 0 {
		if !whole {
			return false, 0, "expected digits beside the decimal point"
		}
		return true, 0, ""
	}
	if i < len(s) && s[i] == ',' {
		return false, 0, "commas group thousands as in 2,000; a decimal mark is a point"
	}
	exponent, size, reason := scanExponent(s[i:])
	if reason != "" {
		return false, 0, reason
	}
	if wide || exponent != 0 || places > 19 {
		r, ok := new(big.Rat).SetString(strings.ReplaceAll(s[:i], ",", ""))
		if !ok || i > 64 {
			return false, 0, "a number may have at most 64 digits"
		}
		n.wide = scaleByTen(r, int32(exponent))
		return false, i + size, ""
	}
	n.den = powersOfTen[places]
	return whole, i, ""
}

// scanExponent reads "e-7" where digits follow the e; anything else is left to the unit.
func scanExponent(s string) (exponent, size int, reason string) {
	if len(s) < 2 || (s[0] != 'e' && s[0] != 'E') {
		return 0, 0, ""
	}
	i, neg := 1, false
	if s[1] == '-' || s[1] == '+' {
		i, neg = 2, s[1] == '-'
	}
	start := i
	for ; i < len(s) && s[i] >= '0' && s[i] <= '9'; i++ {
		if exponent = exponent*10 + int(s[i]-'0'); exponent > maxExponent {
			return 0, 0, "an exponent may be -40 to 40"
		}
	}
	if i == start {
		return 0, 0, ""
	}
	if neg {
		exponent = -exponent
	}
	return exponent, i, ""
}

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

// skipSpace returns the index of the first byte at or after i that is no space, plain or typographic.
func skipSpace(s string, i int) int {
	for i < len(s) {
		switch {
		case s[i] == ' ' || s[i] == '\t':
			i++
		case s[i] < utf8.RuneSelf:
			return i
		case strings.HasPrefix(s[i:], "\u00a0"):
			i += len("\u00a0")
		case strings.HasPrefix(s[i:], "\u202f") || strings.HasPrefix(s[i:], "\u2009"):
			i += len("\u202f")
		default:
			return i
		}
	}
	return i
}

var powersOfTen = [...]uint64{1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19}
