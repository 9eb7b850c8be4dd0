package units

import (
	"math/bits"
	"strconv"
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
	var room, better [48]byte
	var best []byte
	var symbol string
	for _, f := range d.short {
		if !f.fits(q) {
			continue
		}
		digits, exact := appendDecimal(room[:0], q, f.size, f.places)
		if !exact || best != nil && significant(digits) >= significant(best) {
			continue
		}
		best, symbol = append(better[:0], digits...), f.symbol
		if !d.shortest {
			break
		}
	}
	if best == nil {
		last := d.short[len(d.short)-1]
		best, _ = appendDecimal(room[:0], q, last.size, last.places)
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
func significant(digits []byte) (count int) {
	zeros := 0
	for _, c := range digits {
		switch {
		case c == '0':
			if count > 0 {
				zeros++
			}
		case '1' <= c && c <= '9':
			count += zeros + 1
			zeros = 0
		}
	}
	return count
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
	dst = strconv.AppendUint(dst, whole, 10)
	if frac != 0 {
		var digits [20]byte
		shown := strconv.AppendUint(digits[:0], frac, 10)
		dst = append(dst, '.')
		for n := len(shown); n < places; n++ {
			dst = append(dst, '0')
		}
		for shown[len(shown)-1] == '0' {
			shown = shown[:len(shown)-1]
		}
		dst = append(dst, shown...)
	}
	return dst, left == 0
}

func text[Q Quantity](q Q) string {
	d := dimensionOf[Q]()
	return d.format(int64(q))
}
