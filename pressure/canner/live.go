package canner

import (
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// Live is a run while it goes on, one reading at a time and without storing them: at every moment its Report is that
// of an Audit of the readings so far. It is a plain value; Next and Mark return the next one. Start with Watch. The
// zero Live takes no reading.
type Live[T Record] struct {
	course *course[T] // never changed once made
	walk   walk[T]
}

// Watch returns the Live of a run that has no readings yet. The run is checked as by Audit, with the same errors.
func Watch[T Record](run Run) (Live[T], error) {
	c := new(course[T])
	if err := c.open(&run); err != nil {
		return Live[T]{}, err
	}
	l := Live[T]{course: c}
	l.walk.refresh(c)
	return l, nil
}

// Next returns the Live with one more reading. The reading must follow in time and be set, as for series.New;
// otherwise a series.ReadingError with the number of readings before it, and l as it was. A pause longer than MaxGap
// restarts the clock: nobody saw the pressure hold. A Live that Watch did not make is a units.UnsetError.
func (l Live[T]) Next(reading series.Reading[T]) (Live[T], error) {
	if l.course == nil {
		return l, units.UnsetError{What: "run"}
	}
	if fault := l.walk.refuses(reading); fault != nil {
		return l, series.ReadingError{Index: l.walk.Count, At: reading.At, Err: fault}
	}
	l.walk.take(l.course, reading)
	return l, nil
}

// refuses returns why a reading cannot follow.
func (w *walk[T]) refuses(r series.Reading[T]) error {
	if t, ok := any(r.Value).(units.Temperature); ok && !t.IsSet() {
		return series.ErrUnset
	}
	switch {
	case r.At < 0:
		return series.ErrNegative
	case w.Count == 0 || r.At > w.Last.At:
		return nil
	case r.At == w.Last.At:
		return series.ErrRepeated
	}
	return series.ErrBackward
}

// Report returns what Audit says of the readings so far; before the first, ok is false.
func (l Live[T]) Report() (report Report, ok bool) {
	if l.walk.Count == 0 {
		return Report{}, false
	}
	return l.walk.report(l.course), true
}

// Clock returns what the timer should say now: since when the pressure has stood, what is owed, and when the time is
// full if nothing sags. Before the first reading the whole time is owed.
func (l Live[T]) Clock() Clock {
	if l.course == nil {
		return Clock{}
	}
	return l.walk.clock(l.course)
}

// Now returns what to do now, in one step: that of Report. It never says that the time is full where the readings so
// far would not be judged Met once the heat is off and the rest is done and marked without fault.
func (l Live[T]) Now() Step {
	r, seen := l.Report()
	if !seen || r.Clock == (Clock{}) && !l.course.run.Marks.over() {
		return keepGoing(l.Clock()) // also where the pressure is gone and nobody turned off the heat
	}
	return r.Next[0]
}

// Mark returns the Live with other marks. A mark may be added that is no earlier than the last reading, and the timer
// started again then; what was marked before stays as it was. Anything else is a ContradictionError: audit the
// record, or watch it again from its start. Marks out of order are a ContradictionError as in Audit. On an error l
// stays as it was.
func (l Live[T]) Mark(marks Marks) (Live[T], error) {
	if l.course == nil {
		return l, units.UnsetError{What: "run"}
	}
	if err := marks.check(); err != nil {
		return l, err
	}
	if err := l.walk.accepts(&l.course.run.Marks, &marks); err != nil {
		return l, err
	}
	before, c := l.course, new(course[T])
	*c = *l.course
	c.mark(marks)
	l.course = c
	l.walk.remark(before, c)
	return l, nil
}

// LargestGap returns the longest pause between two readings so far, the zero Stretch for fewer than two.
func (l Live[T]) LargestGap() series.Stretch { return l.walk.LargestGap }

// saved is a Live as it is written.
type saved[T Record] struct {
	Run  Run `wire:"required"`
	Walk walk[T]
}

// MarshalJSON writes the run and what was seen of it, so that a watch goes on where it was saved. A Live that Watch
// did not make is a units.UnsetError.
func (l Live[T]) MarshalJSON() ([]byte, error) {
	if l.course == nil {
		return nil, units.UnsetError{What: "run"}
	}
	return wire.Marshal(saved[T]{l.course.run, l.walk})
}

// UnmarshalJSON reads what MarshalJSON writes, strictly; the run is checked as by Watch. On an error l stays as it
// was.
func (l *Live[T]) UnmarshalJSON(data []byte) error {
	var s saved[T]
	if err := wire.Unmarshal(data, &s); err != nil {
		return err
	}
	back, err := Watch[T](s.Run)
	if err != nil {
		return err
	}
	back.walk = s.Walk
	back.walk.refresh(back.course)
	*l = back
	return nil
}
