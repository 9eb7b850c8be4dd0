package series

import "math/bits"

// line returns the value at t strictly between two readings, rounded to the nearest quantum, ties
// towards the later reading.
func line(t1, t2, q1, q2, t int64) int64 {
	span, part := uint64(t2-t1), uint64(t-t1)
	if q2 >= q1 {
		return q1 + int64(nearest(part, uint64(q2)-uint64(q1), span))
	}
	return q1 - int64(nearest(part, uint64(q1)-uint64(q2), span))
}

// nearest returns a·b/c for a ≤ c, rounded half up through a 128-bit product.
func nearest(a, b, c uint64) uint64 {
	n, rest := scaled(a, b, c)
	if rest >= c-rest {
		n++
	}
	return n
}

// scaled returns a·b/c rounded down, and the rest. It needs a ≤ c, and b < c where a = c ends in
// a quotient of 64 bits all the same: the quotient is never above b.
func scaled(a, b, c uint64) (n, rest uint64) {
	hi, lo := bits.Mul64(a, b)
	if hi >= c { // only a = c: then the quotient is b
		return b, 0
	}
	return bits.Div64(hi, lo, c)
}

// timeBeyond returns how much of an interval dt the line spends beyond the limit, and the rest of
// the division: inside lies short of the limit, or beyond it, on the other side from outside.
func timeBeyond(dt, beyond, short, limit int64) (n, rest int64) {
	over, rise := uint64(beyond)-uint64(limit), uint64(beyond)-uint64(short)
	whole, left := scaled(over, uint64(dt), rise)
	return int64(whole), int64(left)
}
