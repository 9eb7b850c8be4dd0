package series

import "time"

// FirstAtOrAbove returns the first time at or above a limit and whether there is one, straight
// lines between readings, rounded up to the nanosecond: the limit is met from then on, not before.
// A limit that is not set is a RangeError, an empty series ErrEmpty.
func (s Series[T]) FirstAtOrAbove(limit T) (at time.Duration, found bool, err error) {
	return s.firstMet(limit, upward)
}

// FirstAtOrBelow is FirstAtOrAbove on the other side, such as the end of cooling.
func (s Series[T]) FirstAtOrBelow(limit T) (at time.Duration, found bool, err error) {
	return s.firstMet(limit, downward)
}

// FirstAbove returns the time from which the value is first strictly above a limit and whether it
// ever is, straight lines between readings, rounded down to the nanosecond: the limit is passed no
// earlier. A limit that is not set is a RangeError, an empty series ErrEmpty.
func (s Series[T]) FirstAbove(limit T) (at time.Duration, found bool, err error) {
	return s.firstPassed(limit, upward)
}

// FirstBelow is FirstAbove on the other side, such as a pressure that falls short.
func (s Series[T]) FirstBelow(limit T) (at time.Duration, found bool, err error) {
	return s.firstPassed(limit, downward)
}

func (s Series[T]) firstMet(limit T, side int64) (time.Duration, bool, error) {
	q, err := s.limit(limit)
	if err != nil {
		return 0, false, err
	}
	q ^= side
	for i, v := range s.q {
		if v ^= side; v < q {
			continue
		}
		if i == 0 {
			return time.Duration(s.at[0]), true, nil
		}
		n := floorBeyond(s.at[i]-s.at[i-1], v, s.q[i-1]^side, q)
		return time.Duration(s.at[i] - n), true, nil
	}
	return 0, false, nil
}

func (s Series[T]) firstPassed(limit T, side int64) (time.Duration, bool, error) {
	q, err := s.limit(limit)
	if err != nil {
		return 0, false, err
	}
	q ^= side
	for i, v := range s.q {
		if v ^= side; v <= q {
			continue
		}
		if i == 0 {
			return time.Duration(s.at[0]), true, nil
		}
		n := ceilBeyond(s.at[i]-s.at[i-1], v, s.q[i-1]^side, q)
		return time.Duration(s.at[i] - n), true, nil
	}
	return 0, false, nil
}
