package lethality

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// Running is F in the making: what F answers for the readings so far, one reading at a time and without storing them.
// It is a plain value; Next returns the next one. The zero value takes no reading: begin with Start.
type Running struct {
	reference Reference
	scale     scale
	n         int
	walk      walk
	gap       series.Stretch
}

// Start returns a Running that has seen nothing yet. The reference must be 40 to 150 °C with z of 1 to 50 K;
// otherwise a RangeError.
func Start(r Reference) (Running, error) {
	if err := r.check(); err != nil {
		return Running{}, err
	}
	return Running{reference: r, scale: r.scale()}, nil
}

// Next returns the Running with one more reading, which must be set, no hotter than 150 °C, at a time of zero or more
// and later than the one before; otherwise a series.ReadingError, and r as it was, so that a faulty reading may be
// left out (it then shows in LongestGap). A Running not made by Start is a units.UnsetError.
func (r Running) Next(reading series.Reading[units.Temperature]) (Running, error) {
	fault := func(err error) (Running, error) {
		return r, series.ReadingError{Index: r.n, At: reading.At, Err: err}
	}
	switch {
	case r.scale.perQuantum == 0:
		return r, units.UnsetError{What: "reference"}
	case reading.At < 0:
		return fault(series.ErrNegative)
	case r.n > 0 && int64(reading.At) == r.walk.at:
		return fault(series.ErrRepeated)
	case r.n > 0 && int64(reading.At) < r.walk.at:
		return fault(series.ErrBackward)
	case !reading.Value.IsSet():
		return fault(series.ErrUnset)
	case reading.Value.Above(hottest):
		return r, tooHot(r.n, reading)
	}
	next, q := r, quanta(reading.Value)
	next.n++
	if r.n == 0 {
		next.walk = walk{at: int64(reading.At), q: q, rate: r.scale.rate(q)}
		return next, nil
	}
	if last := time.Duration(r.walk.at); reading.At-last > r.gap.Length() {
		next.gap = series.Stretch{From: last, To: reading.At}
	}
	next.walk = r.walk.to(r.scale, r.n, int64(reading.At), q)
	if _, err := floored("F", next.walk.sum); err != nil {
		return r, err
	}
	return next, nil
}

// F returns the lethality so far, the same to the nanosecond as function F for a record of these readings; zero
// before the second.
func (r Running) F() Lethality {
	f, _ := floored("F", r.walk.sum) // Next refused what would not fit
	return Lethality{f, r.reference, r.gap, explainsRecord()}
}

// Len returns the number of readings so far.
func (r Running) Len() int { return r.n }

// LongestGap returns the first of the longest stretches between two readings so far.
func (r Running) LongestGap() series.Stretch { return r.gap }
