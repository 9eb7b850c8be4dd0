package units

import (
	"math/big"
	"strings"
)

// scanDecimal reads digits with grouping commas, a point and an exponent. It reports whether they
// were a plain whole number, and the bytes taken (none is not an error here: "½" has no digits).
func scanDecimal(s string, n *number) (whole bool, used int, reason string) {
	value, i := run(s, 0, 0)
	count, after := i, 0
	if i > 0 && i < len(s) && s[i] == ',' {
		if value, i = groups(s, i, value); i == 0 {
			return false, 0, commaRule
		}
		count = i - i/4 // three digits in every four bytes behind the first group
	}
	whole = i == len(s) || s[i] != '.'
	if !whole {
		start := i + 1
		value, i = run(s, start, value)
		after = i - start
		count += after
	}
	if reason := faultAfter(s, i, count, whole); reason != "" || count == 0 {
		return count == 0, 0, reason
	}
	exponent, size, reason := scanExponent(s[i:])
	if reason != "" {
		return false, 0, reason
	}
	if count > maxPlaces || exponent != 0 {
		n.wide = scaled(s[:i], exponent)
		return false, i + size, ""
	}
	n.num, n.den = value, powersOfTen[after]
	return whole && size == 0, i + size, ""
}

// run reads digits from i on behind those that are in value; beyond nineteen of them value means nothing.
func run(s string, i int, value uint64) (uint64, int) {
	for ; i < len(s) && s[i]-'0' <= 9; i++ {
		value = value*10 + uint64(s[i]-'0')
	}
	return value, i
}

// groups reads groups of thousands: the first of one to three digits that do not start with zero ends at i, and three
// digits stand behind every comma. It returns 0 for the end where that is not so: "0,500" and "2,5" have a decimal
// comma.
func groups(s string, i int, value uint64) (uint64, int) {
	if i > 3 || s[0] == '0' {
		return 0, 0
	}
	for i < len(s) && s[i] == ',' {
		end := 0
		if value, end = run(s, i+1, value); end != i+4 {
			return 0, 0
		}
		i = end
	}
	return value, i
}

const commaRule = "commas group thousands as in 2,000; a decimal mark is a point"

// maxDigits bounds a number; every value of every type needs fewer.
const maxDigits = 64

// faultAfter says what is wrong with a decimal that ends at i.
func faultAfter(s string, i, count int, whole bool) string {
	switch {
	case count == 0 && !whole:
		return "expected digits beside the decimal point"
	case count > 0 && i < len(s) && s[i] == ',':
		return commaRule
	case i > maxDigits:
		return "a number may have at most 64 digits"
	}
	return ""
}

// scaled is a decimal of at most maxDigits bytes times a power of ten.
func scaled(decimal string, exponent int) *big.Rat {
	r, _ := new(big.Rat).SetString(strings.ReplaceAll(decimal, ",", "")) // digits and at most one point: understood
	return scaleByTen(r, int32(exponent))
}

// maxPlaces is how many digits, and so how many decimals, 64 bits can carry.
const maxPlaces = len(powersOfTen) - 1

// maxExponent bounds what a written exponent may ask for: no quantum is so small, no range so wide.
const maxExponent = 40

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

var powersOfTen = [...]uint64{
	1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9,
	1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19,
}
