package canner

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// rise begins a stretch at or above the limit, at one time with gaps left out and at another with gaps bridged.
func (w *walk[T]) rise(c *course[T], b series.Reading[T], at, bridged time.Duration) {
	w.Up, w.Bridged = true, bridged
	w.stand(c, b, at)
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
		w.Pause = max(w.Pause, at-max(a.At, min(c.from, at)))
		w.hold(c, at)
	}
	w.span(c, at)
	w.Up, w.LastUp = false, at
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
	w.LastUp = w.Last.At
	if to-w.Last.At > w.Gap.Length() {
		w.Gap = series.Stretch{From: w.Last.At, To: to}
	}
	w.hold(c, w.Last.At)
	w.span(c, max(w.Last.At, to))
}

// hold and span keep the stretch that ends now, cut to the window, if it is the longest.
func (w *walk[T]) hold(c *course[T], to time.Duration) {
	if longer(&w.Held, max(c.from, w.Since), min(c.to, to)) {
		w.LowHeld, w.PauseHeld = w.Low, min(w.Pause, w.Held.Length())
	}
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
