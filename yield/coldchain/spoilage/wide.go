package spoilage

import (
	"math"
	"math/bits"
)

// wide is a whole number of 128 bits, so that a sum over a record is exact and its order does not matter.
type wide struct{ high, low uint64 }

func (w wide) plus(v wide) wide {
	low, carry := bits.Add64(w.low, v.low, 0)
	high, _ := bits.Add64(w.high, v.high, carry)
	return wide{high, low}
}

func product(a, b uint64) wide {
	high, low := bits.Mul64(a, b)
	return wide{high, low}
}

// prorated is w·num/den rounded up, for num not above den.
func (w wide) prorated(num, den uint64) wide {
	upper, lower := product(w.high, num), product(w.low, num)
	middle, carry := bits.Add64(upper.low, lower.high, 0)
	high, rest := bits.Div64(upper.high+carry, middle, den)
	low, rest := bits.Div64(rest, lower.low, den)
	q := wide{high, low}
	if rest > 0 {
		return q.plus(wide{low: 1})
	}
	return q
}

// over is w/den rounded up, and false when that is past the longest time.Duration.
func (w wide) over(den uint64) (int64, bool) {
	if w.high >= den {
		return 0, false
	}
	q, rest := bits.Div64(w.high, w.low, den)
	if rest > 0 && q <= math.MaxInt64 {
		q++
	}
	return int64(q), q <= math.MaxInt64
}
