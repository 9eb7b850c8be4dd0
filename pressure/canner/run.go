package canner

import (
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
)

// Record is what a record of a run holds: the gauge pressure, as read and not corrected, or the temperature of the
// steam. Trapped air lowers the steam's temperature and not the gauge: a record of temperatures shows it, one of
// pressures does not.
type Record interface {
	units.Pressure | units.Temperature
}

// Run is one load in the canner: what it was to be, and what somebody wrote down. The times of the marks and of the
// record have one start.
type Run struct {
	Schedule  process.Schedule           `wire:"required"` // that process returned, unchanged
	Altitude  units.Stated[units.Length] // of the stove that the canner stood on
	Contents  []Contents                 // what stood in it, kind by kind; empty: not stated, and taken as scheduled
	Barometer Barometer                  // beside the canner; not stated: standard air at the altitude
	Gauge     Gauge                      // that the pressures were read from; its error is not used for temperatures
	Recorder  Recorder                   // that wrote the record, by how far it may be off
	Marks     Marks
	Noticed   Noticed

	// The longest pause between readings across which a straight line is believed.
	MaxGap time.Duration `wire:"required"`
	// When the question is put, for what can still be done; on the record's clock.
	Asked units.Stated[time.Duration]
}

// MarshalJSON writes the run in the words that UnmarshalJSON reads.
func (r Run) MarshalJSON() ([]byte, error) { return wire.Marshal(r) }

// UnmarshalJSON reads a run strictly: schedule and longest gap must be there, and nothing that is not a field.
func (r *Run) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, r) }

// mostGap and leastGap are the longest and the shortest pause that may be believed: a sag and its recovery take
// minutes, and a bare number is nanoseconds.
const (
	mostGap  = 15 * time.Minute
	leastGap = time.Second
)

// check returns the first part of the run that cannot be judged at all.
func (r *Run) check() error {
	if !r.Schedule.IsPublished() {
		return ContradictionError{
			What: "schedule", Got: "for " + r.Schedule.Request().String(), Expected: "the published one unchanged",
		}
	}
	if err := units.CheckUnit("altitude of the stove", r.Altitude.Value, leastAltitude); err != nil {
		return err
	}
	if err := r.Gauge.check(r.Schedule); err != nil {
		return err
	}
	if err := r.Recorder.check(); err != nil {
		return err
	}
	if err := r.checkContents(); err != nil {
		return err
	}
	if err := units.CheckDuration("longest gap", r.MaxGap, leastGap, mostGap); err != nil {
		return err
	}
	if r.Asked.Given {
		if err := units.CheckDuration("time of the question", r.Asked.Value, 0, 52*longestRun); err != nil {
			return err
		}
	}
	return r.Marks.check()
}
