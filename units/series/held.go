package series

import (
	"time"

	"example.org/lakelarder/units"
)

// AtOrAbove returns the total time at or above a limit, straight lines between readings. Each
// crossing rounds the time down, by less than a nanosecond: the safe side for a hold. A limit that
// is not set is a RangeError, an empty series ErrEmpty; a single reading has no time.
func (s Series[T]) AtOrAbove(limit T) (time.Duration, error) {
	q, err := s.limit(limit)
	if err != nil {
		return 0, err
	}
	return time.Duration(atOrAbove(s.at, s.q, q)), nil
}

// Above returns the total time strictly above a limit: a flat stretch exactly on it does not
// count. Each crossing rounds the time up, by less than a nanosecond: the safe side for an
// exposure. A limit that is not set is a RangeError, an empty series ErrEmpty.
func (s Series[T]) Above(limit T) (time.Duration, error) {
	q, err := s.limit(limit)
	if err != nil {
		return 0, err
	}
	return time.Duration(above(s.at, s.q, q)), nil
}

// AtOrBelow returns the total time at or below a limit, rounded down as AtOrAbove: the safe side
// for a hold in the cold. Together with Above it is the whole span.
func (s Series[T]) AtOrBelow(limit T) (time.Duration, error) {
	over, err := s.Above(limit)
	if err != nil {
		return 0, err
	}
	return s.Span() - over, nil
}

// Below returns the total time strictly below a limit, rounded up as Above: the safe side for a
// shortfall. Together with AtOrAbove it is the whole span.
func (s Series[T]) Below(limit T) (time.Duration, error) {
	held, err := s.AtOrAbove(limit)
	if err != nil {
		return 0, err
	}
	return s.Span() - held, nil
}

// Between returns the total time above one limit, up to and including another: Above(over) less
// Above(upTo), so that bands that touch add up to the span to the nanosecond. Over must not lie
// above upTo, and both be set: otherwise a RangeError; an empty series is ErrEmpty.
func (s Series[T]) Between(over, upTo T) (time.Duration, error) {
	low, err := s.limit(over)
	if err != nil {
		return 0, err
	}
	high, err := s.limit(upTo)
	if err != nil {
		return 0, err
	}
	if low > high {
		return 0, units.RangeError{What: "upper limit", Got: text(upTo), Low: text(over)}
	}
	return time.Duration(above(s.at, s.q, low) - above(s.at, s.q, high)), nil
}

// limit returns a limit's whole number for a question to s.
func (s Series[T]) limit(limit T) (int64, error) {
	if len(s.at) == 0 {
		return 0, ErrEmpty
	}
	return limitOf(limit)
}

var errNoLimit = units.RangeError{What: "limit", Got: "not set"}

func limitOf[T Value](limit T) (int64, error) {
	q, ok := quantaOf(limit)
	if !ok {
		return 0, errNoLimit
	}
	return q, nil
}

func atOrAbove(at, q []int64, limit int64) (total int64) {
	for i := 1; i < len(q) && i < len(at); i++ {
		dt, a, b := at[i]-at[i-1], q[i-1], q[i]
		switch {
		case a >= limit && b >= limit:
			total += dt
		case a >= limit:
			total += floorBeyond(dt, a, b, limit)
		case b >= limit:
			total += floorBeyond(dt, b, a, limit)
		}
	}
	return total
}

func above(at, q []int64, limit int64) (total int64) {
	for i := 1; i < len(q) && i < len(at); i++ {
		dt, a, b := at[i]-at[i-1], q[i-1], q[i]
		switch {
		case a > limit && b > limit:
			total += dt
		case a > limit:
			total += ceilBeyond(dt, a, b, limit)
		case b > limit:
			total += ceilBeyond(dt, b, a, limit)
		}
	}
	return total
}
