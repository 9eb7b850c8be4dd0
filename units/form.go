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
}

// format prints q so that parse gives q back.
func (d *dimension) format(q int64) string {
	last := d.short[len(d.short)-1]
	var room [48]byte
	for _, f := range d.short {
		if f.atMost != 0 && (q >= f.atMost || q <= -f.atMost) {
			continue
		}
		if digits, exact := appendDecimal(room[:0], q, f.size, f.places); exact {
			return joined(digits, f.symbol)
		}
	}
	digits, _ := appendDecimal(room[:0], q, last.size, last.places)
	return joined(digits, last.symbol)
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
