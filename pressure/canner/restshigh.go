package canner

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
)

// restsAt is how far above zero a needle may rest before its dial is doubted: half a line of a common dial.
const restsAt = units.PSI / 2

// sure is what was held at or above the schedule's pressure with all that the dial shows at rest subtracted.
type sure struct {
	Up    bool
	Since time.Duration  // since when
	Held  series.Stretch // the longest
}

// tooHigh returns the limit in quanta on a dial that shows so much when there is no pressure, and whether that is more
// than was stated of it. Only a gauge has a zero.
func (c *course[T]) tooHigh(rest units.Stated[T]) (limit int64, high bool) {
	shown, ok := any(rest.Value).(units.Pressure)
	stated := max(0, c.run.Gauge.ReadsHigh) + c.run.Recorder.Pressure
	if !ok || !rest.Given || shown <= stated+restsAt {
		return 0, false
	}
	return int64(c.run.Schedule.Pressure + shown), true
}

// restsHigh is tooHigh of what was shown before there was steam.
func (d *doubt[T]) restsHigh(c *course[T]) (limit int64, high bool) { return c.tooHigh(d.Unheated) }

// sure takes in the line between two readings after the vent was closed.
func (d *doubt[T]) sure(c *course[T], a, b series.Reading[T], q int64) {
	least, high := d.restsHigh(c)
	if !high || !c.closed.Given || b.At <= c.closed.Value || a.At > c.to {
		return
	}
	limit := ofPressure[T](least)
	up, far := q >= least, b.At-a.At > c.maxGap
	switch w := &d.Sure; {
	case w.Up && !up && !far:
		to := a.At + series.Beyond(b.At-a.At, a.Value, b.Value, limit)
		longer(&w.Held, max(c.from, w.Since), min(c.to, to))
		w.Up = false
	case w.Up && (!up || far):
		longer(&w.Held, max(c.from, w.Since), min(c.to, a.At))
		w.Up, w.Since = up, b.At
	case !w.Up && up:
		w.Up, w.Since = true, b.At
		if !far && quanta(a.Value) < least {
			w.Since -= series.Beyond(b.At-a.At, b.Value, a.Value, limit)
		}
	}
}

// ofPressure is a number of quanta of a record of pressures.
func ofPressure[T Record](q int64) (v T) {
	if p, ok := any(&v).(*units.Pressure); ok {
		*p = units.Pressure(q)
	}
	return v
}

// offset: a needle that rests above zero shows too much all the time. What is held with that subtracted is held.
func (j *judgement[T]) offset() {
	d := &j.walk.Doubt
	rest, what := d.Unheated, "pressure on the dial before there was steam"
	limit, high := j.tooHigh(rest)
	held := d.Sure.Held
	if d.Sure.Up {
		longer(&held, max(j.from, d.Sure.Since), min(j.to, j.walk.Last.At))
	}
	process := j.run.Schedule.Process
	if off, also := j.tooHigh(d.Off); also && off > limit {
		rest, what, limit, high = d.Off, "pressure on the dial after weight or lid was off", off, true
		held = series.Stretch{}
	}
	low := j.walk.LowHeld
	switch {
	case !high || !j.closed.Given || !low.Given || quanta(low.Value) >= limit || held.Length() >= process:
		return
	case d.Sure.Up && j.walk.Held.Length() < process && !j.over:
		return // not full yet, and so far all is well
	}
	shown, _ := any(rest.Value).(units.Pressure)
	stated := max(0, j.run.Gauge.ReadsHigh) + j.run.Recorder.Pressure
	j.impossible(verdict.Finding{
		Rule: RuleAtRest, What: what + ", which the dial then reads high by", Stated: exactly(rest.Value),
		Wanted: units.AtMost(stated + restsAt).With("by what is stated of the dial"),
		By:     units.AmountOf(shown - stated), Citation: restSource,
	})
}
