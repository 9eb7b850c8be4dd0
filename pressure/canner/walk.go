package canner

import (
	"math"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// A walk goes once through a record, a reading at a time, and keeps what a report needs of it. It is a plain value.
// Its exported fields are what is saved; the others are worked out from them.
type walk[T Record] struct {
	Count      int
	First      time.Duration
	Last       series.Reading[T]
	LargestGap series.Stretch // between two readings, the first of the longest

	Reached  bool           // the limit was met before the window ended
	Up       bool           // now at or above it
	Since    time.Duration  // since when, gaps not bridged
	Bridged  time.Duration  // since when, gaps bridged
	Backward bool           // the record begins under pressure, and was bridged back to the timer
	Held     series.Stretch // the longest, gaps not bridged
	Spanned  series.Stretch // the longest, gaps bridged
	Gap      series.Stretch // the longest gap in the stretch since Bridged
	GapHeld  series.Stretch // the longest gap in Spanned
	LastUp   time.Duration  // when it last fell below the limit

	Low, LowHeld     units.Stated[T] // the lowest reading since Since, and in Held
	Pause, PauseHeld time.Duration   // the longest time between readings since Since, and in Held

	Sags     [mostSags]sag[T]
	SagCount int
	Highest  units.Stated[series.Reading[T]] // in the window
	Gone     units.Stated[time.Duration]     // when no pressure was left after it had been reached

	AtTimer, AtGone, AtWeight, AtLid units.Stated[T] // the values at the marks

	Doubt doubt[T]

	q, most, low int64 // Last, Highest and Low in quanta

	// While readings stay from floor to roof, none comes longer after the last than calm and none as late as due, nothing
	// new happens.
	floor, roof int64
	calm, due   time.Duration
}

// refresh works out what is not saved.
func (w *walk[T]) refresh(c *course[T]) {
	w.q, w.most, w.low = quanta(w.Last.Value), math.MinInt64, math.MaxInt64
	if w.Highest.Given {
		w.most = quanta(w.Highest.Value.Value)
	}
	if w.Low.Given {
		w.low = quanta(w.Low.Value)
	}
	w.settle(c)
}

// take goes on to the next reading of the record.
func (w *walk[T]) take(c *course[T], b series.Reading[T]) {
	q := quanta(b.Value)
	if w.floor <= q && q <= w.roof && b.At-w.Last.At <= w.calm && b.At < w.due {
		w.Count, w.Last, w.q = w.Count+1, b, q // nothing new
		return
	}
	a := w.Last
	if w.Count == 0 {
		a, w.First = b, b.At
		w.begin(c, b, q)
	} else {
		w.cross(c, a, b, q)
	}
	if pause := b.At - a.At; pause > w.LargestGap.Length() {
		w.LargestGap = series.Stretch{From: a.At, To: b.At}
	}
	if b.At >= c.from && b.At <= c.to && q > w.most {
		w.Highest, w.most = units.State(b), q
	}
	w.pass(c, a, b)
	w.Doubt.take(c, a, b, q)
	w.Count, w.Last, w.q = w.Count+1, b, q
	w.settle(c)
}

// settle works out in which band of readings, up to which pause and until which mark nothing new can happen.
func (w *walk[T]) settle(c *course[T]) {
	if w.Count == 0 {
		w.floor, w.roof = 1, 0
		return
	}
	last := w.Last.At
	w.calm, w.due = min(c.maxGap, w.LargestGap.Length()), forever
	for _, mark := range c.run.Marks.all() {
		if mark.Given && mark.Value > last {
			w.due = min(w.due, mark.Value)
		}
	}
	w.floor, w.roof = w.Doubt.settle(c, last, w.q)
	if last >= c.from && last <= c.to {
		w.roof = min(w.roof, w.most)
	}
	if w.Up {
		w.floor, w.calm = max(w.floor, c.limit), min(w.calm, w.Gap.Length(), w.Pause)
		if w.Low.Given {
			w.floor = max(w.floor, w.low)
		}
		return
	}
	w.roof = min(w.roof, c.limit-1)
	if w.Reached && !w.Gone.Given {
		w.floor = max(w.floor, c.none+1)
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
	from := min(first.At, c.timer)
	w.Backward = from < first.At
	if first.At > c.from {
		w.Gap = series.Stretch{From: from, To: first.At}
	}
	w.rise(c, first, first.At, from)
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
		w.stand(c, b, b.At)
	case w.Up:
		w.lower(c, b)
		if b.At > c.from && a.At < c.to {
			w.Pause = max(w.Pause, pause)
		}
	case up:
		at := b.At - series.Beyond(pause, b.Value, a.Value, c.atLeast)
		w.Doubt.reach(c, a, b, at)
		w.Gap = series.Stretch{}
		if b.At > c.from {
			w.Gap = series.Stretch{From: a.At, To: b.At}
		}
		if far {
			w.rise(c, b, b.At, at)
		} else {
			w.rise(c, b, at, at)
		}
	case b.At <= c.to:
		w.sink(b.Value)
	}
	if q <= c.none && w.Reached && !w.Gone.Given && b.At >= c.heatOff {
		w.empty(c, a, b)
	}
}

// stand begins a stretch in which no gap is longer than is believed, at a time up to the reading b.
func (w *walk[T]) stand(c *course[T], b series.Reading[T], since time.Duration) {
	w.Since, w.Pause, w.Low, w.low = since, b.At-max(since, min(c.from, b.At)), units.Stated[T]{}, math.MaxInt64
	w.lower(c, b)
}

// lower takes in a reading of the stretch that goes on, for its lowest.
func (w *walk[T]) lower(c *course[T], b series.Reading[T]) {
	if q := quanta(b.Value); b.At >= c.from && b.At <= c.to && q < w.low {
		w.Low, w.low = units.State(b.Value), q
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
	}{{m.Timer, &w.AtTimer}, {m.Gone, &w.AtGone}, {m.WeightOff, &w.AtWeight}, {m.LidOff, &w.AtLid}} {
		if p.mark.Given && a.At <= p.mark.Value && p.mark.Value <= b.At {
			*p.value = units.State(series.Along(a, b, p.mark.Value))
		}
	}
}
