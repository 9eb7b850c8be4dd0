package canner

import (
	"time"

	"example.org/lakelarder/units"
)

// limits are what the readings of a run are held against.
type limits[T Record] struct {
	atLeast T // the schedule's pressure, as this record shows it
	high    T // what costs quality when it is passed
	zero    T // no pressure is left
	slight  T // so much is: the vent is not opened
}

// overBy is a choice: no upper limit is printed but "at or slightly above".
const overBy = 2 * units.PSI

// slightly is a choice as well: a dial at rest may show less than this.
const slightly = 1 * units.PSI

// set works out the limits in the record's own quantity: for pressures with what the gauge reads high added, for
// temperatures that of pure steam under the schedule's pressure in this air.
func (l *limits[T]) set(r *Run) error {
	air, err := r.air()
	if err != nil {
		return err
	}
	switch l := any(l).(type) {
	case *limits[units.Pressure]:
		off := max(0, r.Gauge.ReadsHigh)
		l.atLeast = r.Schedule.Pressure + off
		l.high, l.slight = l.atLeast+overBy, slightly+off
	case *limits[units.Temperature]:
		for _, one := range [...]struct {
			to    *units.Temperature
			gauge units.Pressure
		}{{&l.atLeast, r.Schedule.Pressure}, {&l.high, r.Schedule.Pressure + overBy}, {&l.slight, slightly}, {&l.zero, 0}} {
			if *one.to, err = air.SteamUnder(one.gauge); err != nil {
				return err
			}
		}
	}
	return nil
}

// course is a run with everything worked out that its readings are held against.
type course[T Record] struct {
	run Run
	limits[T]
	limit, none int64         // atLeast and zero in quanta
	maxGap      time.Duration // of the run

	from, to time.Duration // the window that counts: after the vent is closed, before the heat is off
	heatOff  time.Duration // no pressure left counts from here on; zero when it was not marked
	timer    time.Duration // a record that begins under pressure is bridged back to here
}

// open checks the run and works out its course.
func (c *course[T]) open(run *Run) error {
	if err := run.check(); err != nil {
		return err
	}
	c.run = *run
	if err := c.limits.set(run); err != nil {
		return err
	}
	c.limit, c.none, c.maxGap = quanta(c.atLeast), quanta(c.zero), run.MaxGap
	c.mark(run.Marks)
	return nil
}

// mark takes the window from the marks.
func (c *course[T]) mark(m Marks) {
	c.run.Marks = m
	c.from, c.to, c.heatOff, c.timer = m.VentClosed.Value, forever, m.HeatOff.Value, longestRun
	if m.HeatOff.Given {
		c.to = m.HeatOff.Value
	}
	if m.Timer.Given {
		c.timer = m.Timer.Value
	}
}

// forever is later than any mark.
const forever = 1 << 62 * time.Nanosecond

// quanta is the whole number of a reading.
func quanta[T Record](v T) int64 {
	switch v := any(v).(type) {
	case units.Pressure:
		return int64(v)
	case units.Temperature:
		return int64(v.AboveAbsoluteZero())
	}
	return 0
}

// amount is a reading as a report shows it.
func amount[T Record](v T) units.Amount {
	switch v := any(v).(type) {
	case units.Pressure:
		return units.AmountOf(v)
	case units.Temperature:
		return units.AmountOf(v)
	}
	return units.Amount{}
}

// exactly and atLeast are the figures of a reading and of a limit.
func exactly[T Record](v T) units.Figure { a := amount(v); return units.Figure{Low: a, High: a} }

func atLeastFigure[T Record](v T) units.Figure { return units.Figure{Low: amount(v)} }

func atMostFigure[T Record](v T) units.Figure { return units.Figure{High: amount(v)} }

// quantityOf says in one word what the record holds.
func quantityOf[T Record]() string {
	var none T
	if _, ok := any(none).(units.Temperature); ok {
		return "steam"
	}
	return "pressure"
}
