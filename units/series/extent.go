package series

import (
	"math"
	"time"

	"example.org/lakelarder/units"
)

// Extent is what a record spans: its lowest and highest value, how far apart two readings that follow each other lie at
// least and at most in time, and by how much the value rose and fell at most from one to the next. Rise and Fall are
// changes: of a temperature a units.TemperatureChange, else an amount of T; not stated where they pass the range.
type Extent[T Value] struct {
	Low, High  T
	Shortest   time.Duration
	Longest    Stretch // the first of the longest
	Rise, Fall units.Amount
}

// Extent returns what the record spans, in one pass; false for an empty series. A single reading spans no time and does not
// change.
func (s Series[T]) Extent() (Extent[T], bool) {
	if len(s.at) == 0 || len(s.q) != len(s.at) {
		return Extent[T]{}, false
	}
	low, high, rise, fall := steps(s.q)
	shortest, longest, to := gaps(s.at)
	e := Extent[T]{Low: ofQuanta[T](low), High: ofQuanta[T](high)}
	if len(s.at) > 1 {
		e.Shortest, e.Longest = time.Duration(shortest), Stretch{time.Duration(to - longest), time.Duration(to)}
	}
	if low > -extreme && high < extreme { // then no difference has overflown
		e.Rise, e.Fall = amountOfChange[T](rise), amountOfChange[T](fall)
	}
	return e, true
}

// steps are the lowest and highest of some values, and the greatest change up and down from one to the next.
func steps(q []int64) (low, high, rise, fall int64) {
	before := q[0]
	low, high = before, before
	for _, v := range q[1:] {
		by := v - before
		rise, fall = max(rise, by), min(fall, by)
		low, high = min(low, v), max(high, v)
		before = v
	}
	return low, high, rise, -fall
}

// gaps are the shortest and the longest time between two of some times that rise, and the end of the first longest.
func gaps(at []int64) (shortest, longest, to int64) {
	shortest = math.MaxInt64
	before := at[0]
	for _, t := range at[1:] {
		dt := t - before
		if dt > longest {
			longest, to = dt, t
		}
		shortest = min(shortest, dt)
		before = t
	}
	return shortest, longest, to
}

// amountOfChange is a change of T as an amount.
func amountOfChange[T Value](q int64) units.Amount {
	v := ofQuanta[T](q)
	switch v := any(v).(type) {
	case units.Temperature:
		return units.AmountOf(units.TemperatureChange(q))
	case units.Pressure:
		return units.AmountOf(v)
	case units.Mass:
		return units.AmountOf(v)
	case units.Ratio:
		return units.AmountOf(v)
	}
	return units.Amount{}
}
