package canner

import "example.org/lakelarder/units/series"

// sag is a time below the limit after it was met. Ended is false while the record does not show the pressure coming
// back.
type sag[T Record] struct {
	series.Stretch
	Lowest T
	Ended  bool
	Count  int // of sags in one, where there were too many to tell apart
}

// mostSags are told apart; what comes after them is one with the last.
const mostSags = 4

// add keeps a sag; where there is no room for it, it becomes one with the last.
func (w *walk[T]) add(s sag[T]) {
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
