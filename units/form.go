package units

import (
	"math/bits"
	"strings"
)

// form is one way String may print: in this unit with at most places decimals.
type form struct {
	size   int64
	places int
	symbol string
	atMost int64 // used only while |q| is below this; 0 is no bound

	atLeast int64 // used only from this |q| on
}

// format prints q so that parse gives q back.
func (d *dimension) format(q int64) string {
	last := d.short[len(d.short)-1]
	var best []byte
	var symbol string
	for _, f := range d.short {
		if !f.fits(q) {
			continue
		}
		digits, exact := appendDecimal(nil, q, f.size, f.places)
		if !exact || best != nil && significant(digits) >= significant(best) {
			continue
		}
		best, symbol = digits, f.symbol
		if !d.shortest {
			break
		}
	}
	if best == nil {
		best, _ = appendDecimal(nil, q, last.size, last.places)
		symbol = last.symbol
	}
	return joined(best, symbol)
}

// fits reports whether a form is for values of this size.
func (f form) fits(q int64) bool {
	m, _ := magnitude(q)
	return m >= uint64(f.atLeast) && (f.atMost == 0 || m < uint64(f.atMost))
}

// significant is how many digits are left without the zeros around them.
func significant(digits []byte) int {
	return len(strings.Trim(strings.Replace(string(digits), ".", "", 1), "-0"))
}

func joined(digits []byte, symbol string) string {
	if symbol == "" {
		return string(digits)
	}
	return string(append(append(digits, ' '), symbol...))
}

// appendDecimal appends q/size with at most places decimals, rounded half away from zero and
// without trailing zeros, and reports whether that is exact.
func appendDecimal(dst []byte, q, size int64, places int) ([]byte, bool) {
	m, neg := magnitude(q)
	whole, rest := m/uint64(size), m%uint64(size)
	hi, lo := bits.Mul64(rest, powersOfTen[places])
	frac, left := bits.Div64(hi, lo, uint64(size))
	if left >= uint64(size)-left {
		frac++
	}
	if frac == powersOfTen[places] {
		whole, frac = whole+1, 0
	}
	if neg && (whole != 0 || frac != 0) {
		dst = append(dst, '-')
	}
	dst = append(dst, utoa(whole)...)
	if frac != 0 {
		digits := utoa(frac)
		dst = append(append(dst, '.'), strings.Repeat("0", places-len(digits))...)
		dst = append(dst, strings.TrimRight(digits, "0")...)
	}
	return dst, left == 0
}

func text[Q Quantity](q Q) string {
	d := dimensionOf[Q]()
	return d.format(int64(q))
}
