package canner

import (
	"math"
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

	q, most     int64         // Last and Highest in quanta
	floor, roof int64         // while readings stay between these, none longer after the last than calm and none as late as due,
	calm, due   time.Duration // nothing new happens
}

// refresh works out what is not saved.
func (w *walk[T]) refresh(c *course[T]) {
	w.q, w.most = quanta(w.Last.Value), math.MinInt64
	if w.Highest.Given {
		w.most = quanta(w.Highest.Value.Value)
	}
	w.settle(c)
	if w.Count == 0 {
		w.roof = math.MinInt64
	}
}

// take goes on to the next reading of the record.
func (w *walk[T]) take(c *course[T], b series.Reading[T]) {
	q := quanta(b.Value)
	if w.floor <= q && q <= w.roof && b.At-w.Last.At <= w.calm && b.At < w.due {
		w.Count, w.Last, w.q = w.Count+1, b, q // nothing new
		return
	}
	a := w.Last
	pause := b.At - a.At
	if w.Count == 0 {
		a, pause = b, 0
		w.begin(c, b, q)
	} else {
		w.cross(c, a, b, q)
	}
	if pause > w.LargestGap.Length() {
		w.LargestGap = series.Stretch{From: a.At, To: b.At}
	}
	if b.At >= c.from && b.At <= c.to && q > w.most {
		w.Highest, w.most = units.State(b), q
	}
	w.pass(c, a, b)
	w.Count, w.Last, w.q = w.Count+1, b, q
	w.settle(c)
}

// settle works out in which band of readings, up to which pause and until which mark nothing new can happen.
func (w *walk[T]) settle(c *course[T]) {
	w.calm, w.due = min(c.maxGap, w.LargestGap.Length()), forever
	for _, mark := range c.run.Marks.all() {
		if mark.Given && mark.Value > w.Last.At {
			w.due = min(w.due, mark.Value)
		}
	}
	w.floor, w.roof = math.MinInt64, math.MaxInt64
	if w.Last.At >= c.from && w.Last.At <= c.to {
		w.roof = w.most
	}
	if w.Up {
		w.floor, w.calm = c.limit, min(w.calm, w.Gap.Length())
		return
	}
	w.roof = min(w.roof, c.limit-1)
	if w.Reached && !w.Gone.Given {
		w.floor = c.none + 1
	}
	if s := w.openSag(); s != nil {
		w.floor = max(w.floor, quanta(s.Lowest))
	}
}

// begin takes in the first reading. A record that begins under pressure is bridged back to the timer.
func (w *walk[T]) begin(c *course[T], first series.Reading[T], q int64) {
	if q < c.limit {
		return
	}
	w.rise(c, first.At, min(first.At, c.timer))
	w.Gap = series.Stretch{From: w.Bridged, To: first.At}
}

// cross takes in the line from one reading to the next.
func (w *walk[T]) cross(c *course[T], a, b series.Reading[T], q int64) {
	pause := b.At - a.At
	up, far := q >= c.limit, pause > c.maxGap
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
	if q <= c.none && w.Reached && !w.Gone.Given && b.At >= c.heatOff {
		w.empty(c, a, b)
	}
}

// empty takes in when no pressure was left.
func (w *walk[T]) empty(c *course[T], a, b series.Reading[T]) {
	gone := a.At
	if w.q > c.none {
		gone = b.At - series.Beyond(b.At-a.At, b.Value, a.Value, c.zero)
	}
	w.Gone = units.State(max(c.heatOff, gone))
}

// pass takes in the values at the marks that lie between two readings.
func (w *walk[T]) pass(c *course[T], a, b series.Reading[T]) {
	m := &c.run.Marks
	for _, p := range [...]struct {
		mark  units.Stated[time.Duration]
		value *units.Stated[T]
	}{{m.Timer, &w.AtTimer}, {m.WeightOff, &w.AtWeight}, {m.LidOff, &w.AtLid}} {
		if p.mark.Given && a.At <= p.mark.Value && p.mark.Value <= b.At {
			*p.value = units.State(series.Along(a, b, p.mark.Value))
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
	w.add(sag[T]{Stretch: series.Stretch{From: at}, Lowest: low, Count: 1})
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
