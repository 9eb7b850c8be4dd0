package canner

import (
	"math"
	"time"

	"example.org/lakelarder/pressure"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
)

// course is a run with everything worked out that its readings are held against.
type course[T Record] struct {
	run Run
	limits[T]
	air       pressure.Air
	weather   [2]units.Pressure // the usual range of the air here
	barometer verdict.Finding   // what is wrong with it; its Kind is zero when nothing is
	doubting  series.Doubting[T]

	limit, none, restQ, calmQ, coldQ, longQ, mostQ int64         // limits in quanta
	maxGap                                         time.Duration // of the run

	from, to       time.Duration               // the window that counts: after the vent is closed, before the heat is off
	steady, closed units.Stated[time.Duration] // the vent is open between them
	opened         units.Stated[time.Duration] // weight or lid, whichever is marked first
	heatOff        time.Duration               // no pressure left counts from here on; zero when it was not marked
	timer          time.Duration               // a record that begins under pressure is bridged back to here
}

// open checks the run and works out its course.
func (c *course[T]) open(run *Run) (err error) {
	if err := run.check(); err != nil {
		return err
	}
	c.run = *run
	if c.air, c.barometer, err = run.around(); err != nil {
		return err
	}
	standard, err := pressure.AirAt(run.Schedule.Altitude.Value)
	if err != nil {
		return err
	}
	if c.weather, err = weatherAt(standard); err != nil {
		return err
	}
	if err := c.limits.set(run, c.air); err != nil {
		return err
	}
	if c.doubting, err = c.limits.believed(run); err != nil {
		return err
	}
	c.limit, c.none, c.maxGap = quanta(c.atLeast), quanta(c.zero), run.MaxGap
	c.restQ, c.calmQ, c.coldQ, c.longQ, c.mostQ = quanta(c.rest), quanta(c.calm), math.MinInt64, quanta(c.long), quanta(c.most)
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

// quantityOf says in one word what the record holds.
func quantityOf[T Record]() string {
	var none T
	if _, ok := any(none).(units.Temperature); ok {
		return "steam"
	}
	return "pressure"
}
