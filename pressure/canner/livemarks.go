package canner

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// accepts returns why marks cannot take the place of those before: what was walked through is not walked through
// again.
func (w *walk[T]) accepts(before, after *Marks) error {
	was, is := before.all(), after.all()
	for i := range is {
		if is[i] == was[i] {
			continue
		}
		timer := i == markOfTimer && is[i].Given && (!was[i].Given || is[i].Value > was[i].Value)
		if was[i].Given && !timer {
			return ContradictionError{
				What: "mark of " + markNames[i], Got: markText(is[i]),
				Expected: "as it was marked, " + markText(was[i]),
			}
		}
		if w.Count > 0 && is[i].Value < w.Last.At {
			return ContradictionError{
				What: "mark of " + markNames[i], Got: markText(is[i]),
				Expected: "no earlier than the last reading at " + units.Lasting(w.Last.At),
			}
		}
		if timer && was[i].Given && w.Backward {
			return ContradictionError{
				What: "mark of " + markNames[i], Got: markText(is[i]),
				Expected: "as it was marked: the record begins under pressure",
			}
		}
	}
	return nil
}

func markText(m units.Stated[time.Duration]) string {
	if !m.Given {
		return "not marked"
	}
	return units.Lasting(m.Value)
}

// remark takes in marks that lie no earlier than the last reading.
func (w *walk[T]) remark(before, after *course[T]) {
	if w.Count == 0 {
		w.refresh(after)
		return
	}
	if after.closed != before.closed {
		w.closeVent(after)
	}
	if after.heatOff != before.heatOff || after.run.Marks.HeatOff != before.run.Marks.HeatOff {
		w.Gone = units.Stated[time.Duration]{}
		if w.Reached && w.q <= after.none && w.Last.At >= after.heatOff {
			w.Gone = units.State(after.heatOff)
		}
	}
	if after.run.Marks.Timer != before.run.Marks.Timer {
		w.AtTimer = units.Stated[T]{}
	}
	w.pass(after, w.Last, w.Last)
	w.refresh(after)
}

// closeVent begins the window anew: nothing that was held before the vent was closed counts.
func (w *walk[T]) closeVent(c *course[T]) {
	w.Held, w.Spanned, w.GapHeld = series.Stretch{}, series.Stretch{}, series.Stretch{}
	w.LowHeld, w.PauseHeld = units.Stated[T]{}, 0
	w.Sags, w.SagCount, w.Doubt.Long = [mostSags]sag[T]{}, 0, 0
	w.Highest, w.Low, w.Pause, w.Gap = units.Stated[series.Reading[T]]{}, units.Stated[T]{}, 0, series.Stretch{}
	w.refresh(c)
	if w.Last.At != c.from {
		return
	}
	w.Highest = units.State(w.Last)
	if w.Up {
		w.Low = units.State(w.Last.Value)
	}
}
