package canner

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// A walk goes once through a record, a reading at a time, and keeps what a report needs of it. It is a plain value. Its
// exported fields are what is saved; the others are worked out from them.
type walk[T Record] struct {
	Count      int
	Last       series.Reading[T]
	LargestGap series.Stretch // between two readings, the first of the longest

	Reached bool           // the limit was met before the window ended
	Up      bool           // now at or above it
	Since   time.Duration  // since when, gaps not bridged
	Bridged time.Duration  // since when, gaps bridged
	Held    series.Stretch // the longest, gaps not bridged
	Spanned series.Stretch // the longest, gaps bridged
	Gap     series.Stretch // the longest gap in the stretch since Bridged
	GapHeld series.Stretch // the longest gap in Spanned

	Sags     [mostSags]sag[T]
	SagCount int
	Highest  units.Stated[series.Reading[T]] // in the window
	Gone     units.Stated[time.Duration]     // when no pressure was left after it had been reached

	AtTimer, AtWeight, AtLid units.Stated[T] // the values at the marks

	q, most int64 // Last and Highest in quanta
}

// sag is a time below the limit after it was met. Ended is false while the record does not show the pressure coming back.
type sag[T Record] struct {
	series.Stretch
	Lowest T
	Ended  bool
	Count  int // of sags in one, where there were too many to tell apart
}

// mostSags are told apart; what comes after them is one with the last.
const mostSags = 4

// refresh works out what is not saved.
func (w *walk[T]) refresh() { w.q, w.most = quanta(w.Last.Value), quanta(w.Highest.Value.Value) }

// take goes on to the next reading of the record.
func (w *walk[T]) take(c *course[T], b series.Reading[T]) {
	a, q := w.Last, quanta(b.Value)
	if w.Count == 0 {
		if q >= c.limit {
			w.rise(c, b.At, min(b.At, c.timer))
			w.Gap = series.Stretch{From: w.Bridged, To: b.At}
		}
	} else {
		w.cross(c, a, b, q)
		w.empty(c, a, b, q)
	}
	w.see(c, b, q)
	w.pass(c, a, b)
	w.Count, w.Last, w.q = w.Count+1, b, q
}

// cross takes in the line from one reading to the next.
func (w *walk[T]) cross(c *course[T], a, b series.Reading[T], q int64) {
	pause := b.At - a.At
	if pause > w.LargestGap.Length() {
		w.LargestGap = series.Stretch{From: a.At, To: b.At}
	}
	up, far := q >= c.limit, pause > c.run.MaxGap
	if w.Up && pause > w.Gap.Length() && b.At > c.from {
		w.Gap = series.Stretch{From: a.At, To: b.At}
	}
	switch {
	case w.Up && !up:
		w.fall(c, a, b, far)
	case w.Up && far:
		w.hold(c, a.At)
		w.Since = b.At
	case !w.Up && up:
		at := b.At - series.Beyond(pause, b.Value, a.Value, c.atLeast)
		w.Gap = series.Stretch{From: a.At, To: b.At}
		if far {
			w.rise(c, b.At, at)
		} else {
			w.rise(c, at, at)
		}
	case !w.Up && b.At <= c.to:
		w.sink(b.Value)
	}
}

// see takes in a reading for the highest of the window.
func (w *walk[T]) see(c *course[T], r series.Reading[T], q int64) {
	if r.At >= c.from && r.At <= c.to && (!w.Highest.Given || q > w.most) {
		w.Highest, w.most = units.State(r), q
	}
}

// empty takes in when no pressure was left.
func (w *walk[T]) empty(c *course[T], a, b series.Reading[T], q int64) {
	if q > c.none || !w.Reached || w.Gone.Given || b.At < c.heatOff {
		return
	}
	gone := a.At
	if w.q > c.none {
		gone = b.At - series.Beyond(b.At-a.At, b.Value, a.Value, c.zero)
	}
	w.Gone = units.State(max(c.heatOff, gone))
}

// pass takes in the values at the marks that the record passes between two readings; before the first, a and b are one.
func (w *walk[T]) pass(c *course[T], a, b series.Reading[T]) {
	if w.Count == 0 {
		a = b
	}
	m := &c.run.Marks
	for _, one := range [...]struct {
		mark  *units.Stated[time.Duration]
		value *units.Stated[T]
	}{{&m.Timer, &w.AtTimer}, {&m.WeightOff, &w.AtWeight}, {&m.LidOff, &w.AtLid}} {
		if one.mark.Given && a.At <= one.mark.Value && one.mark.Value <= b.At {
			*one.value = units.State(series.Along(a, b, one.mark.Value))
		}
	}
}

// rise begins a stretch at or above the limit, at one time with gaps left out and at another with gaps bridged.
func (w *walk[T]) rise(c *course[T], at, bridged time.Duration) {
	w.Up, w.Since, w.Bridged = true, at, bridged
	if bridged > c.to {
		return
	}
	w.Reached, w.Gone = true, units.Stated[time.Duration]{}
	if s := w.openSag(); s != nil {
		s.To, s.Ended = bridged, true
	}
}

// fall ends a stretch and begins a sag, unless the heat is off by then.
func (w *walk[T]) fall(c *course[T], a, b series.Reading[T], far bool) {
	at := a.At + series.Beyond(b.At-a.At, a.Value, b.Value, c.atLeast)
	if far {
		w.hold(c, a.At)
	} else {
		w.hold(c, at)
	}
	w.span(c, at)
	w.Up = false
	if at < c.from || at >= c.to {
		return
	}
	low := b.Value
	if b.At > c.to {
		low = series.Along(a, b, c.to)
	}
	w.begin(sag[T]{Stretch: series.Stretch{From: at}, Lowest: low, Count: 1})
}

// begin keeps a sag; where there is no room for it, it becomes one with the last.
func (w *walk[T]) begin(s sag[T]) {
	if w.SagCount < mostSags {
		w.Sags[w.SagCount] = s
		w.SagCount++
		return
	}
	last := &w.Sags[mostSags-1]
	last.Ended, last.Count = false, last.Count+1
	w.sink(s.Lowest)
}

// openSag is the sag that the record does not show the end of, or nil.
func (w *walk[T]) openSag() *sag[T] {
	if w.SagCount == 0 || w.Sags[w.SagCount-1].Ended {
		return nil
	}
	return &w.Sags[w.SagCount-1]
}

// sink takes in a reading below the limit.
func (w *walk[T]) sink(value T) {
	if s := w.openSag(); s != nil && quanta(value) < quanta(s.Lowest) {
		s.Lowest = value
	}
}

// end closes what is open where the record ends, and cuts it to the window.
func (w *walk[T]) end(c *course[T]) {
	to := min(c.to, w.Last.At)
	if c.run.Marks.HeatOff.Given {
		to = c.to
	}
	if s := w.openSag(); s != nil {
		s.To = to
	}
	if !w.Up {
		return
	}
	if to-w.Last.At > w.Gap.Length() {
		w.Gap = series.Stretch{From: w.Last.At, To: to}
	}
	w.hold(c, w.Last.At)
	w.span(c, max(w.Last.At, to))
}

// hold and span keep the stretch that ends now, cut to the window, if it is the longest.
func (w *walk[T]) hold(c *course[T], to time.Duration) {
	longer(&w.Held, max(c.from, w.Since), min(c.to, to))
}

func (w *walk[T]) span(c *course[T], to time.Duration) {
	if longer(&w.Spanned, max(c.from, w.Bridged), min(c.to, to)) {
		w.GapHeld = w.Gap
	}
}

func longer(best *series.Stretch, from, to time.Duration) bool {
	if to-from <= best.Length() {
		return false
	}
	*best = series.Stretch{From: from, To: to}
	return true
}
