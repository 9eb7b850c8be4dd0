package series

import (
	"slices"
	"time"

	"example.org/lakelarder/units"
)

// Series is a record: at least one reading, times from zero up and strictly rising, values set.
// It is never changed after New, so it may be copied and shared. The zero value is empty: it has
// no readings, and every question about its values is ErrEmpty.
type Series[T Value] struct {
	at, q  []int64 // nanoseconds and quanta, plain numbers for the loops
	origin *Origin
}

// New returns the readings as a series, copied. They must be one or more, with times of zero or
// more, each later than the one before, and temperatures that are set. ErrEmpty for none;
// otherwise a ReadingError names the first reading refused.
func New[T Value](readings []Reading[T]) (Series[T], error) {
	if len(readings) == 0 {
		return Series[T]{}, ErrEmpty
	}
	return Series[T]{}.Append(readings...)
}

// Append returns a new series with the readings after those of s, which stays as it was. The
// readings must follow in time as for New; a ReadingError's index counts within the readings
// given. None returns s. It copies the whole record: for live use see Running.
func (s Series[T]) Append(readings ...Reading[T]) (Series[T], error) {
	if len(readings) == 0 {
		return s, nil
	}
	n := len(s.at)
	next := Series[T]{at: make([]int64, n, n+len(readings)), q: make([]int64, n, n+len(readings)), origin: s.origin}
	copy(next.at, s.at)
	copy(next.q, s.q)
	before := int64(-1)
	if n > 0 {
		before = s.at[n-1]
	}
	for i, r := range readings {
		q, err := r.follow(before)
		if err != nil {
			return Series[T]{}, ReadingError{Index: i, At: r.At, Err: err}
		}
		before = int64(r.At)
		next.at, next.q = append(next.at, before), append(next.q, q)
	}
	return next, nil
}

// Len returns the number of readings.
func (s Series[T]) Len() int { return len(s.at) }

// At returns reading i, counted from zero, and false when there is none.
func (s Series[T]) At(i int) (Reading[T], bool) {
	if i < 0 || i >= len(s.at) {
		return Reading[T]{}, false
	}
	return Reading[T]{At: time.Duration(s.at[i]), Value: ofQuanta[T](s.q[i])}, true
}

// Readings returns a fresh copy of all readings in order, nil for an empty series.
func (s Series[T]) Readings() []Reading[T] {
	if len(s.at) == 0 {
		return nil
	}
	readings := make([]Reading[T], len(s.at))
	for i := range readings {
		readings[i], _ = s.At(i)
	}
	return readings
}

// First returns the first reading, and false for an empty series.
func (s Series[T]) First() (Reading[T], bool) { return s.At(0) }

// Last returns the last reading, and false for an empty series.
func (s Series[T]) Last() (Reading[T], bool) { return s.At(len(s.at) - 1) }

// Span returns the time from the first reading to the last, zero for fewer than two.
func (s Series[T]) Span() time.Duration {
	if len(s.at) == 0 {
		return 0
	}
	return time.Duration(s.at[len(s.at)-1] - s.at[0])
}

// Min returns the first of the lowest readings, and false for an empty series.
func (s Series[T]) Min() (Reading[T], bool) {
	low := 0
	for i, q := range s.q {
		if q < s.q[low] {
			low = i
		}
	}
	return s.At(low)
}

// Max returns the first of the highest readings, and false for an empty series.
func (s Series[T]) Max() (Reading[T], bool) {
	high := 0
	for i, q := range s.q {
		if q > s.q[high] {
			high = i
		}
	}
	return s.At(high)
}

// Equal reports whether both hold the same readings; their origins may differ.
func (s Series[T]) Equal(other Series[T]) bool {
	return slices.Equal(s.at, other.at) && slices.Equal(s.q, other.q)
}

// ValueAt returns the value at a time of the record: a reading as it is, between two readings the
// straight line, rounded to the nearest quantum. A time before the first or after the last reading
// is a RangeError; an empty series is ErrEmpty.
func (s Series[T]) ValueAt(t time.Duration) (T, error) {
	q, err := s.quantaAt(t)
	if err != nil {
		var none T
		return none, err
	}
	return ofQuanta[T](q), nil
}

func (s Series[T]) quantaAt(t time.Duration) (int64, error) {
	if len(s.at) == 0 {
		return 0, ErrEmpty
	}
	first, last := time.Duration(s.at[0]), time.Duration(s.at[len(s.at)-1])
	if err := units.CheckDuration("time in the record", t, first, last); err != nil {
		return 0, err
	}
	i, onReading := slices.BinarySearch(s.at, int64(t))
	if onReading {
		return s.q[i], nil
	}
	return line(s.at[i-1], s.at[i], s.q[i-1], s.q[i], int64(t)), nil
}

// Slice returns the part of the record from one time to another, both included, as a new series
// with the times kept as they are. Ends between readings get the value of ValueAt, so what is
// asked of the parts differs from the whole by no more than half a quantum of value. Both times
// must lie within the record and not be in reverse: otherwise a RangeError; ErrEmpty when s is.
func (s Series[T]) Slice(from, to time.Duration) (Series[T], error) {
	head, err := s.quantaAt(from)
	if err != nil {
		return Series[T]{}, err
	}
	tail, err := s.quantaAt(to)
	if err != nil {
		return Series[T]{}, err
	}
	if from > to {
		return Series[T]{}, units.RangeError{What: "end of a slice", Got: to.String(), Low: from.String()}
	}
	if from == to {
		return Series[T]{at: []int64{int64(from)}, q: []int64{head}, origin: s.origin}, nil
	}
	i, _ := slices.BinarySearch(s.at, int64(from)+1) // the readings strictly inside are i to j-1
	j, _ := slices.BinarySearch(s.at, int64(to))
	part := Series[T]{at: make([]int64, 0, j-i+2), q: make([]int64, 0, j-i+2), origin: s.origin}
	part.at = append(append(append(part.at, int64(from)), s.at[i:j]...), int64(to))
	part.q = append(append(append(part.q, head), s.q[i:j]...), tail)
	return part, nil
}
