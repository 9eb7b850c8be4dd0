package series

import "time"

// Stretch is a part of the record, from one time since its start to another. The zero Stretch
// stands for none.
type Stretch struct {
	From, To time.Duration
}

// Length returns how long the stretch is.
func (s Stretch) Length() time.Duration { return s.To - s.From }

// LongestGap returns the first of the longest stretches between two readings that follow each
// other, the zero Stretch for fewer than two readings.
func (s Series[T]) LongestGap() (gap Stretch) {
	for i := 1; i < len(s.at); i++ {
		if s.at[i]-s.at[i-1] > int64(gap.Length()) {
			gap = Stretch{time.Duration(s.at[i-1]), time.Duration(s.at[i])}
		}
	}
	return gap
}

// LongestAtOrAbove returns the first of the longest unbroken stretches at or above a limit,
// straight lines between readings; touching the limit does not break it. Its ends round inward,
// each by less than a nanosecond: the safe side for a hold. The zero Stretch when the value never
// stays there for any time. A limit that is not set is a RangeError, an empty series ErrEmpty.
func (s Series[T]) LongestAtOrAbove(limit T) (Stretch, error) {
	q, err := s.limit(limit)
	if err != nil {
		return Stretch{}, err
	}
	return longest(s.at, s.q, q, upward), nil
}

// LongestAtOrBelow is LongestAtOrAbove on the other side, for a hold in the cold.
func (s Series[T]) LongestAtOrBelow(limit T) (Stretch, error) {
	q, err := s.limit(limit)
	if err != nil {
		return Stretch{}, err
	}
	return longest(s.at, s.q, q, downward), nil
}

// The side of a limit: v ^ side keeps the order of values or turns it round, without overflow.
const (
	upward   int64 = 0
	downward int64 = -1
)

func longest(at, q []int64, limit, side int64) Stretch {
	limit ^= side
	var best, from int64 // length and start of the longest; from is the start of the open one
	var bestFrom int64
	a := q[0] ^ side
	from = at[0]
	for i := 1; i < len(q) && i < len(at); i++ {
		b := q[i] ^ side
		switch {
		case a >= limit && b < limit:
			n := floorBeyond(at[i]-at[i-1], a, b, limit)
			if length := at[i-1] + n - from; length > best {
				best, bestFrom = length, from
			}
		case a < limit && b >= limit:
			n := floorBeyond(at[i]-at[i-1], b, a, limit)
			from = at[i] - n
		}
		a = b
	}
	if last := at[len(at)-1]; a >= limit && last-from > best {
		best, bestFrom = last-from, from
	}
	if best == 0 {
		return Stretch{}
	}
	return Stretch{time.Duration(bestFrom), time.Duration(bestFrom + best)}
}
