package canner

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// doubt is what a walk keeps of the readings that no canner run shows, or not at that moment. It gathers; the
// judgement weighs it against the marks.
type doubt[T Record] struct {
	Least, Most units.Stated[T] // of the whole record

	// While the vent is open, or before anybody marked that it was closed.
	RestLow units.Stated[T]                 // the least
	Above   bool                            // more than an open vent lets through, now
	Since   time.Duration                   // since this reading
	Peak    units.Stated[series.Reading[T]] // the highest since then
	Early   units.Stated[series.Reading[T]] // the highest of what was over again before the vent was closed

	Unboiled time.Duration                   // below boiling while steam was vented
	Coldest  units.Stated[series.Reading[T]] // then
	Left     units.Stated[series.Reading[T]] // the last reading with no more pressure than an open vent lets through
	Rose     bool                            // the limit was met after the vent was closed
	Jump     units.Stated[series.Doubt[T]]   // and faster than any canner heats
	Long     time.Duration                   // in the window, far above what anybody holds for long
	Late     units.Stated[series.Reading[T]] // the highest after weight or lid was off

	Unheated units.Stated[T] // RestLow before there was steam
	Off      units.Stated[T] // the least after weight or lid was off
	Sure     sure            // what holds even on a dial that reads high by as much as it rests at
}

// markSlack is how far a mark may be off: it is written to the minute. Common practice, no source.
const markSlack = time.Minute

// take takes in the next reading b, and the line to it from a; of the first reading both are one.
func (d *doubt[T]) take(c *course[T], a, b series.Reading[T], q int64) {
	if !d.Least.Given || q < quanta(d.Least.Value) {
		d.Least = units.State(b.Value)
	}
	if !d.Most.Given || q > quanta(d.Most.Value) {
		d.Most = units.State(b.Value)
	}
	if !c.closed.Given || b.At <= c.closed.Value {
		d.rest(c, b, q)
	}
	if quanta(a.Value) <= c.restQ {
		d.Left = units.State(a)
	}
	if c.steady.Given {
		d.vent(c, a, b, q)
	}
	if c.opened.Given && b.At > c.opened.Value+markSlack {
		lower(&d.Off, b.Value, q)
	}
	d.sure(c, a, b, q)
	if q > c.longQ && quanta(a.Value) > c.longQ {
		d.Long += max(0, min(b.At, c.to)-max(a.At, c.from))
	}
	if c.opened.Given && b.At > c.opened.Value+markSlack && q > c.calmQ && q <= c.mostQ {
		higher(&d.Late, b, q)
	}
}

// rest takes in a reading while the vent may be open.
func (d *doubt[T]) rest(c *course[T], b series.Reading[T], q int64) {
	if !d.RestLow.Given || q < quanta(d.RestLow.Value) {
		d.RestLow = units.State(b.Value)
	}
	if !c.steady.Given || b.At <= c.steady.Value {
		lower(&d.Unheated, b.Value, q)
	}
	switch {
	case d.Above && q <= c.calmQ:
		d.Above = false
		higher(&d.Early, d.Peak.Value, quanta(d.Peak.Value.Value))
		d.Peak = units.Stated[series.Reading[T]]{}
	case d.Above:
		higher(&d.Peak, b, q)
	case q > c.restQ:
		d.Above, d.Since, d.Peak = true, b.At, units.State(b)
	}
}

// vent takes in the line between two readings for the time below boiling while steam is vented.
func (d *doubt[T]) vent(c *course[T], a, b series.Reading[T], q int64) {
	from, to := a.At, b.At
	switch coldA, coldB := quanta(a.Value) < c.coldQ, q < c.coldQ; {
	case coldA && coldB:
	case coldA:
		to -= series.Beyond(to-from, b.Value, a.Value, c.cold)
	case coldB:
		from += series.Beyond(to-from, a.Value, b.Value, c.cold)
	default:
		return
	}
	from, to = max(from, c.steady.Value), min(to, c.until())
	d.Unboiled += max(0, to-from)
	if b.At < c.steady.Value || b.At > c.until() || q >= c.coldQ {
		return
	}
	if !d.Coldest.Given || q < quanta(d.Coldest.Value.Value) {
		d.Coldest = units.State(b)
	}
}

// until is when the vent was closed, or never.
func (c *course[T]) until() time.Duration {
	if c.closed.Given {
		return c.closed.Value
	}
	return forever
}

// reach takes in how the limit is met the first time after the vent was closed, at a time between two readings: how
// long after the last reading without pressure. A probe that was not in the steam then shows nothing.
func (d *doubt[T]) reach(c *course[T], a, b series.Reading[T], at time.Duration) {
	if !c.closed.Given || at <= c.from || d.Rose {
		return
	}
	d.Rose = true
	if quanta(a.Value) <= c.restQ {
		d.Left = units.State(a)
	}
	if !d.Left.Given || quanta(d.Left.Value.Value) < c.coldQ || b.At-a.At > c.maxGap {
		return
	}
	before, _, err := c.doubting.Next(d.Left.Value)
	if err != nil {
		return
	}
	_, found, _ := before.Next(b)
	for _, one := range found {
		if one.Sign == series.Jump {
			d.Jump = units.State(one)
		}
	}
}

// settle returns the band of readings in which nothing new happens after the last reading.
func (d *doubt[T]) settle(c *course[T], last time.Duration, q int64) (floor, roof int64) {
	floor, roof = quanta(d.Least.Value), quanta(d.Most.Value)
	if q <= c.restQ && !d.Rose {
		roof = min(roof, c.restQ)
	}
	if !c.closed.Given || last < c.closed.Value {
		floor = max(floor, quanta(d.RestLow.Value))
		if d.Unheated.Given && (!c.steady.Given || last < c.steady.Value) {
			floor = max(floor, quanta(d.Unheated.Value))
		}
		if d.Above {
			floor, roof = max(floor, c.calmQ+1), min(roof, quanta(d.Peak.Value.Value))
		} else {
			roof = min(roof, c.restQ)
		}
	}
	if c.steady.Given && last >= c.steady.Value && last < c.until() {
		floor = max(floor, c.coldQ)
	}
	if c.steady.Given && q < c.coldQ && last < c.until() {
		return 1, 0 // every reading counts
	}
	if q > c.longQ {
		return 1, 0
	}
	roof = min(roof, c.longQ)
	if c.closed.Given && last <= c.to {
		if least, high := d.restsHigh(c); high && q >= least {
			floor = max(floor, least)
		} else if high {
			roof = min(roof, least-1)
		}
	}
	if c.opened.Given && last >= c.opened.Value {
		roof = min(roof, c.calmQ)
		if d.Late.Given {
			roof = max(roof, min(quanta(d.Late.Value.Value), quanta(d.Most.Value)))
		}
		if !d.Off.Given {
			return 1, 0
		}
		floor = max(floor, quanta(d.Off.Value))
	}
	return floor, roof
}

// higher keeps the higher of two readings.
func higher[T Record](best *units.Stated[series.Reading[T]], r series.Reading[T], q int64) {
	if !best.Given || q > quanta(best.Value.Value) {
		*best = units.State(r)
	}
}

// lower keeps the lower of two values.
func lower[T Record](best *units.Stated[T], v T, q int64) {
	if !best.Given || q < quanta(best.Value) {
		*best = units.State(v)
	}
}
