package series

import "time"

// Beyond returns how much of a time the straight line from far to near spends on the far side of a limit, the limit
// itself included, rounded down to the nanosecond: the safe side for a hold. Far is the value at the limit or beyond it,
// above or below, and near the value on the other side; which of the two came first does not matter. All of the time when
// near is at the limit or beyond it as well, none when far is short of it or the two are equal and not at the limit.
func Beyond[T Value](dt time.Duration, far, near, limit T) time.Duration {
	f, _ := quantaOf(far)
	n, _ := quantaOf(near)
	l, _ := quantaOf(limit)
	if f < n { // turned round, so that far is the higher one
		f, n, l = ^f, ^n, ^l
	}
	switch {
	case dt <= 0 || f < l || f == n && f != l:
		return 0
	case n >= l:
		return dt
	}
	return time.Duration(floorBeyond(int64(dt), f, n, l))
}

// Along returns the value at a time on the straight line between two readings, rounded to the nearest quantum, and
// beyond them the value of the nearer one.
func Along[T Value](a, b Reading[T], at time.Duration) T {
	if b.At < a.At {
		a, b = b, a
	}
	switch {
	case at <= a.At:
		return a.Value
	case at >= b.At:
		return b.Value
	}
	from, _ := quantaOf(a.Value)
	to, _ := quantaOf(b.Value)
	return ofQuanta[T](line(int64(a.At), int64(b.At), from, to, int64(at)))
}
