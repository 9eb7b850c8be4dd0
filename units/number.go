package units

import (
	"math"
	"math/big"
	"strings"
)

// number is a count read from text: num/den, or wide when more digits were written than 64 bits hold.
type number struct {
	num, den uint64
	wide     *big.Rat
}

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
		if j == i { // a hyphen joins the two only where it touches both: "3 -1/2" may be a difference
			j++
		}
		if num, den, size := fraction(s[j:]); size > 0 && num < den {
			return n.plus(num, den, true), j + size, ""
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

// of returns n units in quanta, rounded half up, and false when that passes 2^63.
func (n number) of(u *unit) (uint64, bool) {
	if n.wide == nil && u.den == 1 {
		return mulDiv(n.num, uint64(u.num), n.den)
	}
	r := new(big.Rat).Mul(n.rat(), big.NewRat(u.num, u.den))
	return roundUp(r)
}
