package canner

import (
	"math"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// course is a run with everything worked out that its readings are held against.
type course[T Record] struct {
	run Run
	limits[T]
	surroundings
	doubting series.Doubting[T]

	limit, none, restQ, calmQ, coldQ, longQ, leastQ, mostQ int64         // limits in quanta
	maxGap                                                 time.Duration // of the run

	// The window that counts, after the vent is closed and before the heat is off; the vent is open from steady to closed;
	// opened is when weight or lid came off, whichever is marked first. No pressure left counts from heatOff on, zero when
	// that was not marked. A record that begins under pressure is bridged back to the timer.
	from, to               time.Duration
	steady, closed, opened units.Stated[time.Duration]
	heatOff, timer         time.Duration
}

// open checks the run and works out its course.
func (c *course[T]) open(run *Run) (err error) {
	if err := run.check(); err != nil {
		return err
	}
	c.run = *run
	if c.surroundings, err = run.around(); err != nil {
		return err
	}
	if err := c.limits.set(run, c.air); err != nil {
		return err
	}
	if c.doubting, err = c.limits.believed(run); err != nil {
		return err
	}
	c.limit, c.none, c.maxGap = quanta(c.atLeast), quanta(c.zero), run.MaxGap
	c.restQ, c.calmQ, c.coldQ = quanta(c.rest), quanta(c.calm), math.MinInt64
	c.longQ, c.leastQ, c.mostQ = quanta(c.long), quanta(c.least), quanta(c.most)
	if cold := quanta(c.cold); cold > 0 { // of temperatures
		c.coldQ = cold
	}
	c.mark(run.Marks)
	return nil
}

// mark takes the window from the marks.
func (c *course[T]) mark(m Marks) {
	c.run.Marks = m
	c.from, c.to, c.heatOff, c.timer = m.VentClosed.Value, forever, m.HeatOff.Value, longestRun
	c.steady, c.closed, c.opened = m.SteadySteam, m.VentClosed, m.WeightOff
	if !c.opened.Given {
		c.opened = m.LidOff
	}
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

// isSteam reports whether the record holds temperatures.
func isSteam[T Record]() bool {
	var none T
	_, ok := any(none).(units.Temperature)
	return ok
}

// quantityOf says in one word what the record holds.
func quantityOf[T Record]() string {
	if isSteam[T]() {
		return "steam"
	}
	return "pressure"
}
