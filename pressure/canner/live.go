package canner

import (
	"time"

	"example.org/lakelarder/units/series"
)

// Live is the clock of a run while it goes on, one reading at a time and without storing them: at every moment its Clock is
// that of an Audit of the readings so far. It is a plain value; Next returns the next one. Start with Watch.
type Live[T Record] struct {
	run     Run
	from    time.Duration
	running series.Running[T]
	gap     series.Stretch
}

// Watch returns the Live of a run that has no readings yet. The run is checked as by Audit, with the same errors. Marks
// other than that of closing the vent are not used: pressure before it does not count.
func Watch[T Record](run Run) (Live[T], error) {
	l, err := limitsOf[T](run)
	if err != nil {
		return Live[T]{}, err
	}
	running, err := series.Watch(l.atLeast)
	return Live[T]{run: run, from: run.Marks.VentClosed.Value, running: running}, err
}

// Next returns the Live with one more reading, as series.Running.Next: a reading out of order or not set is a
// series.ReadingError, and l stays as it was. A pause longer than MaxGap restarts the clock: nobody saw the pressure hold.
func (l Live[T]) Next(reading series.Reading[T]) (Live[T], error) {
	before, had := l.running.Last()
	next := l
	running, err := l.running.Next(reading)
	if err != nil {
		return l, err
	}
	next.running = running
	if pause := reading.At - before.At; had && pause > next.gap.Length() {
		next.gap = series.Stretch{From: before.At, To: reading.At}
	}
	if had && reading.At-before.At > l.run.MaxGap {
		if running, err = series.Watch(running.Limit()); err != nil {
			return l, err
		}
		if next.running, err = running.Next(reading); err != nil {
			return l, err
		}
	}
	return next, nil
}

// Clock returns what the timer should say now: since when the pressure has stood, what is owed, and when the time is full
// if nothing sags. Before the first reading the whole time is owed.
func (l Live[T]) Clock() Clock {
	last, ok := l.running.Last()
	up := ok && quanta(last.Value) >= quanta(l.running.Limit())
	return clock(l.run.Schedule.Process, up, max(l.from, l.running.Current().From), max(l.from, last.At))
}

// Now returns what to do now, in one step.
func (l Live[T]) Now() Step { return keepGoing(l.Clock()) }

// LargestGap returns the longest pause between two readings so far, the zero Stretch for fewer than two.
func (l Live[T]) LargestGap() series.Stretch { return l.gap }
