package canner

import (
	"math/bits"
	"time"

	"example.org/lakelarder/units/series"
)

// A walk goes once through a record. The window is the time that counts: after the vent is closed, before the heat is off.
type walk[T Record] struct {
	limits[T]
	maxGap   time.Duration
	from, to time.Duration // the window
	heatOff  time.Duration // no pressure left counts from here on; zero when it was not marked
	timer    time.Duration // a record that begins under pressure is bridged back to here

	reached  bool           // the limit was met before the window ended
	up       bool           // now at or above it
	since    time.Duration  // since when, gaps not bridged
	bridged  time.Duration  // since when, gaps bridged
	held     series.Stretch // the longest, gaps not bridged
	spanned  series.Stretch // the longest, gaps bridged
	sags     []sag[T]
	highest  series.Reading[T] // in the window
	most     int64             // the highest in quanta
	observed bool              // highest is set
	gone     time.Duration     // when no pressure was left after it had been reached
	isGone   bool
}

// sag is a time below the limit after it was met. Ended is false when the record does not show the pressure coming back.
type sag[T Record] struct {
	series.Stretch
	lowest T
	ended  bool
}

func (w *walk[T]) through(record series.Series[T]) {
	limit, zero := quanta(w.atLeast), quanta(w.zero)
	a, _ := record.At(0)
	qa := quanta(a.Value)
	w.see(a, qa)
	if qa >= limit {
		w.rise(a.At, min(a.At, w.timer))
	}
	for i := 1; i < record.Len(); i++ {
		b, _ := record.At(i)
		qb := quanta(b.Value)
		far := b.At-a.At > w.maxGap
		switch {
		case w.up && qb < limit:
			fall := a.At + beyond(b.At-a.At, qa, qb, limit)
			low := b.Value
			if b.At > w.to && fall < w.to {
				low, _ = record.ValueAt(w.to) // between two readings
			}
			if far {
				w.fall(a.At, fall, low)
			} else {
				w.fall(fall, fall, low)
			}
		case w.up && far:
			w.hold(a.At)
			w.since = b.At
		case !w.up && qb >= limit:
			rise := b.At - beyond(b.At-a.At, qb, qa, limit)
			if far {
				w.rise(b.At, rise)
			} else {
				w.rise(rise, rise)
			}
		case !w.up && b.At <= w.to:
			w.sink(b.Value, qb)
		}
		if w.reached && !w.isGone && qb <= zero && b.At >= w.heatOff {
			w.gone, w.isGone = max(w.heatOff, a.At), true
			if qa > zero {
				w.gone = max(w.heatOff, b.At-beyond(b.At-a.At, ^qb, ^qa, ^zero)) // turned round
			}
		}
		w.see(b, qb)
		a, qa = b, qb
	}
	if w.up {
		w.hold(a.At)
		w.span(max(a.At, w.to))
	}
}

// see takes in a reading for the highest of the window.
func (w *walk[T]) see(r series.Reading[T], q int64) {
	if r.At >= w.from && r.At <= w.to && (!w.observed || q > w.most) {
		w.highest, w.most, w.observed = r, q, true
	}
}

// rise begins a stretch at or above the limit, at one time with gaps left out and at another with gaps bridged.
func (w *walk[T]) rise(at, bridged time.Duration) {
	w.up, w.since, w.bridged = true, at, bridged
	if bridged > w.to {
		return
	}
	w.reached, w.isGone = true, false
	if n := len(w.sags) - 1; n >= 0 && !w.sags[n].ended {
		w.sags[n].To, w.sags[n].ended = bridged, true
	}
}

// fall ends a stretch and begins a sag, unless the heat is off by then.
func (w *walk[T]) fall(at, bridged time.Duration, value T) {
	w.hold(at)
	w.span(bridged)
	w.up = false
	if bridged >= w.from && bridged < w.to {
		w.sags = append(w.sags, sag[T]{Stretch: series.Stretch{From: bridged, To: w.to}, lowest: value})
	}
}

// sink takes in a reading below the limit.
func (w *walk[T]) sink(value T, q int64) {
	if n := len(w.sags) - 1; n >= 0 && !w.sags[n].ended && q < quanta(w.sags[n].lowest) {
		w.sags[n].lowest = value
	}
}

// hold and span keep the stretch that ends now, cut to the window, if it is the longest.
func (w *walk[T]) hold(to time.Duration) { longer(&w.held, max(w.from, w.since), min(w.to, to)) }
func (w *walk[T]) span(to time.Duration) { longer(&w.spanned, max(w.from, w.bridged), min(w.to, to)) }

func longer(best *series.Stretch, from, to time.Duration) {
	if to-from > best.Length() {
		*best = series.Stretch{From: from, To: to}
	}
}

// beyond returns how much of dt the straight line from far to near spends at or beyond the limit, rounded down. Far is at the limit
// or beyond it, near is not.
func beyond(dt time.Duration, far, near, limit int64) time.Duration {
	hi, lo := bits.Mul64(uint64(far)-uint64(limit), uint64(dt))
	part, _ := bits.Div64(hi, lo, uint64(far)-uint64(near)) // far - limit < far - near, so the quotient is below dt
	return time.Duration(part)
}
