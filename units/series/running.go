package series

import "time"

// Running is a record in the making: what Series would answer for the readings so far, kept up to
// date one reading at a time without storing them. It is a plain value; Next returns the next one.
// The zero value watches no limit and takes no reading: start with Watch.
type Running[T Value] struct {
	watching   bool // made by Watch
	limit      int64
	n          int
	at, q      int64 // the last reading
	from       int64 // start of the open stretch, when q ≥ limit
	total      int64
	longest    Stretch
	longestGap Stretch
}

// Watch returns a Running that has seen nothing yet and will count the time at or above a limit.
// A limit that is not set is a RangeError.
func Watch[T Value](limit T) (Running[T], error) {
	q, err := limitOf(limit)
	return Running[T]{watching: err == nil, limit: q}, err
}

// Next returns the Running with one more reading. The reading must follow in time and be set, as
// for New; otherwise a ReadingError with the number of readings before it, and r as it was, so
// that a faulty reading may be left out (it then shows in LongestGap). A Running not made by
// Watch is a RangeError.
func (r Running[T]) Next(reading Reading[T]) (Running[T], error) {
	if !r.watching {
		return r, errNoLimit
	}
	before := int64(-1)
	if r.n > 0 {
		before = r.at
	}
	q, err := reading.follow(before)
	if err != nil {
		return r, ReadingError{Index: r.n, At: reading.At, Err: err}
	}
	at := int64(reading.At)
	if r.n == 0 {
		r.from = at
	} else {
		r.step(at, q)
	}
	r.n, r.at, r.q = r.n+1, at, q
	return r, nil
}

// step takes in the interval from the last reading to the one given.
func (r *Running[T]) step(at, q int64) {
	dt := at - r.at
	if dt > int64(r.longestGap.Length()) {
		r.longestGap = Stretch{time.Duration(r.at), time.Duration(at)}
	}
	to := at
	switch {
	case r.q >= r.limit && q >= r.limit:
		r.total += dt
	case r.q >= r.limit:
		n := floorBeyond(dt, r.q, q, r.limit)
		r.total += n
		to = r.at + n
	case q >= r.limit:
		n := floorBeyond(dt, q, r.q, r.limit)
		r.total += n
		r.from = at - n
	default:
		return
	}
	if to-r.from > int64(r.longest.Length()) {
		r.longest = Stretch{time.Duration(r.from), time.Duration(to)}
	}
}

// Limit returns the limit watched.
func (r Running[T]) Limit() T { return ofQuanta[T](r.limit) }

// Len returns the number of readings so far.
func (r Running[T]) Len() int { return r.n }

// Last returns the last reading, and false before the first.
func (r Running[T]) Last() (Reading[T], bool) {
	if r.n == 0 {
		return Reading[T]{}, false
	}
	return Reading[T]{At: time.Duration(r.at), Value: ofQuanta[T](r.q)}, true
}

// Total returns the time at or above the limit so far, as Series.AtOrAbove.
func (r Running[T]) Total() time.Duration { return time.Duration(r.total) }

// Current returns the unbroken stretch at or above the limit that ends with the last reading, the
// zero Stretch when that reading is below.
func (r Running[T]) Current() Stretch {
	if r.n == 0 || r.q < r.limit {
		return Stretch{}
	}
	return Stretch{time.Duration(r.from), time.Duration(r.at)}
}

// Longest returns the longest unbroken stretch so far, as Series.LongestAtOrAbove.
func (r Running[T]) Longest() Stretch { return r.longest }

// LongestGap returns the longest gap between readings so far, as Series.LongestGap.
func (r Running[T]) LongestGap() Stretch { return r.longestGap }
