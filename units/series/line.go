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

// nearest returns a·b/c for 0 < c and a ≤ c, rounded half up through a 128-bit product.
func nearest(a, b, c uint64) uint64 {
	n, rest := scaled(a, b, c)
	if rest >= c-rest {
		n++
	}
	return n
}

// scaled returns a·b/c rounded down, and the rest, for 0 < c and a ≤ c: then the product's upper
// half is below c and the quotient is at most b.
func scaled(a, b, c uint64) (n, rest uint64) {
	hi, lo := bits.Mul64(a, b)
	return bits.Div64(hi, lo, c)
}

// floorBeyond returns how much of an interval dt the line spends on the far side of the limit,
// rounded down. The far end lies on the limit or beyond it, the near end short of far; differences
// are taken without sign, so none overflows.
func floorBeyond(dt, far, near, limit int64) int64 {
	n, _ := scaled(uint64(far)-uint64(limit), uint64(dt), uint64(far)-uint64(near))
	return int64(n)
}

// ceilBeyond is floorBeyond rounded up.
func ceilBeyond(dt, far, near, limit int64) int64 {
	n, rest := scaled(uint64(far)-uint64(limit), uint64(dt), uint64(far)-uint64(near))
	if rest > 0 {
		n++
	}
	return int64(n)
}

// moreThan reports whether a·b > c·d, through 128-bit products.
func moreThan(a, b, c, d uint64) bool {
	hi1, lo1 := bits.Mul64(a, b)
	hi2, lo2 := bits.Mul64(c, d)
	return hi1 > hi2 || hi1 == hi2 && lo1 > lo2
}
