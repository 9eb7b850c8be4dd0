package series

import (
	"math"
	"time"

	"example.org/lakelarder/units"
)

// Origin is what the clock of a record said at its time zero. The zero Origin is a record without a clock.
type Origin struct {
	Known bool
	Clock time.Time // in the location of the zone, in UTC where none was stated; a clock without a date is on 1 January of year 1
	Dated bool      // the date is known, not the time of day alone
	Zoned bool      // the instant is known: the clock had an offset or its zone was stated
}

// Origin returns what the clock said at time zero.
func (s Series[T]) Origin() Origin {
	if s.origin == nil {
		return Origin{}
	}
	return *s.origin
}

// kept is the origin as a series keeps it: never changed, and none of its size, for a series is copied in every loop.
func (o Origin) kept() *Origin {
	if o == (Origin{}) {
		return nil
	}
	return &o
}

// WithOrigin returns the same readings with another origin, for a record whose clock is known from elsewhere.
func (s Series[T]) WithOrigin(o Origin) Series[T] {
	s.origin = o.kept()
	return s
}

func (p *plan[T]) origin() Origin {
	t := &p.timer
	if !t.clocked || !t.began {
		return Origin{}
	}
	o := Origin{Known: true, Dated: t.shape&hasDate != 0 && t.oneDate == 0}
	for _, c := range t.columns {
		if c.part == DayCount {
			o.Dated = false
		}
	}
	zero := t.zero
	if t.counted {
		zero -= t.count // the clock at count zero
	}
	if !o.Dated {
		zero = ((zero % day) + day) % day
		o.Clock = time.Date(1, 1, 1, 0, 0, 0, 0, time.UTC).Add(time.Duration(zero))
		return o
	}
	o.Zoned = t.shape&hasOffset != 0 || t.zone.location != nil
	o.Clock = time.Unix(0, zero).UTC()
	if t.zone.location != nil {
		o.Clock = o.Clock.In(t.zone.location)
	}
	return o
}

// TimeOfDay returns when in the record the clock showed a time of day, counted from midnight: the mark "21:40"
// of a person. It is the one moment from the first reading to the last that shows it. A time of day before 0 or
// from 24 h on is a RangeError; ErrOrigin when the record has no clock or never shows it; ErrAmbiguous when it
// shows it twice; ErrEmpty without readings.
func (s Series[T]) TimeOfDay(clock time.Duration) (time.Duration, error) {
	if len(s.at) == 0 {
		return 0, ErrEmpty
	}
	if err := units.CheckDuration("time of day", clock, 0, 24*time.Hour-1); err != nil {
		return 0, err
	}
	if !s.Origin().Known {
		return 0, wrap(ErrOrigin, "the record counts its time without one")
	}
	first, last := time.Duration(s.at[0]), time.Duration(s.at[len(s.at)-1])
	if last-first > 49*time.Hour {
		return 0, wrap(ErrAmbiguous, "the record shows each time of day more than once")
	}
	var found []time.Duration
	zero := s.origin.Clock
	start := zero.Add(first)
	for d := -1; d <= 4; d++ {
		midnight := time.Date(start.Year(), start.Month(), start.Day()+d, 0, 0, 0, 0, zero.Location())
		for _, step := range []time.Duration{-time.Hour, -time.Hour / 2, 0, time.Hour / 2,
			time.Hour} { // where the day had a step of the zone
			moment := midnight.Add(clock + step)
			at := moment.Sub(zero)
			if at < first || at > last || sinceMidnight(moment) != clock || len(found) > 0 && found[len(found)-1] == at {
				continue
			}
			found = append(found, at)
		}
	}
	switch len(found) {
	case 0:
		return 0, wrap(ErrOrigin, "the record does not show that time of day")
	case 1:
		return found[0], nil
	}
	return 0, wrap(ErrAmbiguous, "the record shows that time of day more than once")
}

func sinceMidnight(t time.Time) time.Duration {
	h, m, s := t.Clock()
	return time.Duration(h)*time.Hour + time.Duration(m)*time.Minute + time.Duration(s)*time.Second + time.Duration(t.Nanosecond())
}

// Shift returns the record with all its times later by a duration, earlier by a negative one. The clock keeps
// what it said at each reading. A time below zero is a ReadingError, one past 292 years a RangeError.
func (s Series[T]) Shift(by time.Duration) (Series[T], error) {
	if len(s.at) == 0 {
		return s, nil
	}
	if first := time.Duration(s.at[0]); by < 0 && first < -by {
		return Series[T]{}, ReadingError{At: first, Err: ErrNegative}
	}
	if last := s.at[len(s.at)-1]; by > 0 && last > math.MaxInt64-int64(by) {
		return Series[T]{}, units.RangeError{What: "time", Got: time.Duration(last).String() + " and " + by.String(), High: "292 years"}
	}
	shifted := Series[T]{at: make([]int64, len(s.at)), q: s.q, origin: s.origin}
	for i, at := range s.at {
		shifted.at[i] = at + int64(by)
	}
	if o := s.Origin(); o.Known {
		o.Clock = o.Clock.Add(-by)
		shifted.origin = o.kept()
	}
	return shifted, nil
}

// Join returns the record followed by another, whose first reading must come after the last: the gap between
// them is one as any other. Where both have a dated clock, the clocks say how far apart they lie; where neither
// has a clock, the times are taken as they are. ErrOrigin for anything between: Shift it and give it an origin
// first. Overlap is a ReadingError; an empty record adds nothing.
func (s Series[T]) Join(next Series[T]) (Series[T], error) {
	if len(s.at) == 0 {
		return next, nil
	}
	if len(next.at) == 0 {
		return s, nil
	}
	a, b := s.Origin(), next.Origin()
	apart := time.Duration(0)
	switch {
	case a.Known && b.Known && a.Dated && b.Dated && a.Zoned == b.Zoned:
		apart = b.Clock.Sub(a.Clock)
	case a.Known || b.Known:
		return Series[T]{}, wrap(ErrOrigin, "the clocks of the two do not tell how far apart they lie")
	}
	if apart == math.MaxInt64 || apart == math.MinInt64 {
		return Series[T]{}, units.RangeError{What: "time", Got: b.Clock.String(), High: "292 years after the first"}
	}
	if apart != 0 {
		moved, err := next.Shift(apart)
		if err != nil {
			return Series[T]{}, err
		}
		next = moved
	}
	if err := order(s.at[len(s.at)-1], next.at[0]); err != nil {
		return Series[T]{}, ReadingError{At: time.Duration(next.at[0]), Err: err}
	}
	joined := Series[T]{origin: a.kept(), at: make([]int64, 0, len(s.at)+len(next.at)), q: make([]int64, 0,
		len(s.at)+len(next.at))}
	joined.at = append(append(joined.at, s.at...), next.at...)
	joined.q = append(append(joined.q, s.q...), next.q...)
	return joined, nil
}
