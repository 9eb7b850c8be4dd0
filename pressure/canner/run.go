package canner

import (
	"time"

	"example.org/lakelarder/pressure"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
)

// Record is what a record of a run holds: the gauge pressure, as read and not corrected, or the temperature of the
// steam. Trapped air lowers the steam's temperature and not the gauge: a record of temperatures shows it, one of pressures does not.
type Record interface {
	units.Pressure | units.Temperature
}

// Run is one load in the canner: what it was to be, and what somebody wrote down. The times of the marks and of the record
// have one start.
type Run struct {
	Schedule process.Schedule
	Altitude units.Length // of the kitchen
	Air      pressure.Air // from a barometer beside the canner; not set: standard air at the altitude
	Gauge    Gauge        // that the pressures were read from; its error is not used for temperatures
	Marks    Marks
	MaxGap   time.Duration               // the longest pause between readings across which a straight line is believed
	Asked    units.Stated[time.Duration] // when the question is put, for what can still be done; on the record's clock
}

// mostGap is the longest pause that may be believed: a sag and its recovery take minutes.
const mostGap = 15 * time.Minute

// published reports whether the schedule is the one that process returns: a run is not judged against a process of somebody's own.
func published(s process.Schedule, altitude units.Length) bool {
	find := process.Find
	if s.Extension {
		find = process.FindExtension
	}
	found, err := find(s.Request(altitude))
	return err == nil && found == s
}

func (r Run) check() error {
	if !r.Schedule.Band.Contains(r.Altitude) {
		return ContradictionError{What: "altitude", Got: r.Altitude.String(), Expected: "the schedule's " + r.Schedule.Band.String()}
	}
	if !published(r.Schedule, r.Altitude) {
		return ContradictionError{What: "schedule", Got: "for " + r.Schedule.Request(r.Altitude).String(), Expected: "the published one unchanged"}
	}
	if err := r.Gauge.check(r.Schedule); err != nil {
		return err
	}
	if err := units.CheckDuration("longest gap", r.MaxGap, 1, mostGap); err != nil {
		return err
	}
	if r.Asked.Given {
		if err := units.CheckDuration("time of the question", r.Asked.Value, 0, 52*longestRun); err != nil {
			return err
		}
	}
	return r.Marks.check()
}

// limits are what the readings of a run are held against.
type limits[T Record] struct {
	atLeast T // the schedule's pressure, as this record shows it
	over    T // what costs quality when it is passed
	zero    T // no pressure is left
	slight  T // so much is: the vent is not opened
}

// overBy is a choice: no upper limit is printed but "at or slightly above".
const overBy = 2 * units.PSI

// slightly is a choice as well: a dial at rest may show less than this.
const slightly = 1 * units.PSI

// limitsOf returns the limits in the record's own quantity: for pressures with what the gauge reads high added, for
// temperatures that of pure steam under the schedule's pressure in this air.
func limitsOf[T Record](r Run) (l limits[T], err error) {
	if err := r.check(); err != nil {
		return l, err
	}
	switch l := any(&l).(type) {
	case *limits[units.Pressure]:
		l.atLeast = r.Schedule.Pressure + max(0, r.Gauge.ReadsHigh)
		l.over, l.slight = l.atLeast+overBy, slightly+max(0, r.Gauge.ReadsHigh)
	case *limits[units.Temperature]:
		air, e := airOf(r)
		if e != nil {
			return limits[T]{}, e
		}
		if l.atLeast, err = air.SteamUnder(r.Schedule.Pressure); err != nil {
			break
		}
		if l.over, err = air.SteamUnder(r.Schedule.Pressure + overBy); err != nil {
			break
		}
		if l.slight, err = air.SteamUnder(slightly); err != nil {
			break
		}
		l.zero, err = air.BoilingPoint()
	}
	return l, err
}

// airOf is the air around the canner. A barometer that is further from the map than the weather takes it is not believed: it was
// set to sea level, or its unit was lost.
func airOf(r Run) (pressure.Air, error) {
	if r.Air == (pressure.Air{}) {
		return pressure.AirAt(r.Altitude)
	}
	height, err := r.Air.Altitude()
	if err != nil {
		return pressure.Air{}, err
	}
	if height > r.Altitude+weather || height < r.Altitude-weather {
		return pressure.Air{}, ContradictionError{What: "barometer", Got: r.Air.Pressure().String(), Expected: "station pressure at " + r.Altitude.String()}
	}
	return r.Air, nil
}

// weather moves a barometer by 1,000 ft of altitude in ordinary times.
const weather = 1500 * units.Foot

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

// figure prints a reading in both systems.
func figure[T Record](v T) string {
	switch v := any(v).(type) {
	case units.Pressure:
		return bothPressures(v)
	case units.Temperature:
		return v.Text(units.FahrenheitScale, 1) + " (" + v.Text(units.CelsiusScale, 1) + ")"
	}
	return ""
}

// lower prints a reading that is below a limit, so that it never looks like the limit.
func lower[T Record](v, limit T) string {
	s := figure(v)
	if s == figure(limit) && quanta(v) < quanta(limit) {
		return "just below " + s
	}
	return s
}
