package canner

import (
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
)

// Report is what a record says about a run. Its Verdict is the worst of the findings', and CannotTell while the run
// is not over. Times count from the start of the record. Held is the longest unbroken stretch at or above pressure,
// between closing the vent and turning off the heat, in which no gap is longer than MaxGap; its ends round inward.
// Required is the schedule's pressure as this record shows it: on the gauge, or as the temperature of the steam.
// Steps say what to do about a finding while the run goes on, keyed by its Rule; Next is what to do now, one or the
// other.
type Report struct {
	verdict.Report
	Required   units.Amount
	Process    time.Duration
	MaxGap     time.Duration
	Held       series.Stretch
	Bridged    time.Duration  // as Held, if straight lines are trusted across every gap
	LargestGap series.Stretch // between two readings, the first of the longest
	Margin     units.Amount   // by how much the lowest reading of Held is truly above the schedule, errors counted
	HiddenSag  time.Duration  // the longest sag that may lie between two readings of Held
	Clock      Clock
	Steps      []Step
	Next       []Step
}

// MarshalJSON writes the report as an app shows it.
func (r Report) MarshalJSON() ([]byte, error) { return wire.Marshal(r) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (r *Report) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, r) }

// StepFor returns what to do about the findings of a rule, and false where nothing is to be done about them.
func (r Report) StepFor(rule verdict.Rule) (Step, bool) {
	for _, s := range r.Steps {
		if s.Rule == rule {
			return s, true
		}
	}
	return Step{}, false
}

// Clock is what the timer should say at the end of a record that is still growing; zero when the run is over. Owed is
// what must still be held without a break, all of it when the pressure is not there. Running: the pressure has stood
// since From, and if nothing sags the time is full at Done. Where the timer was started later than From, Owed and
// Done go by the timer, to the minute of a mark.
type Clock struct {
	Running    bool `wire:"always"`
	From, Done time.Duration
	Held, Owed time.Duration
}

// MarshalJSON writes the clock as an app shows it.
func (c Clock) MarshalJSON() ([]byte, error) { return wire.Marshal(c) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (c *Clock) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, c) }

// clock is the Clock of what was walked through so far.
func (w *walk[T]) clock(c *course[T]) Clock {
	process := c.run.Schedule.Process
	if !w.Up {
		return Clock{Owed: process}
	}
	from, to := max(c.from, w.Since), max(c.from, w.Last.At)
	done := from + process
	if timer := c.run.Marks.Timer; timer.Given { // who starts it again has seen something
		done = max(done, timer.Value+process-markSlack)
	}
	return Clock{Running: true, From: from, Done: done, Held: to - from, Owed: max(0, done-to)}
}

// margin is by how much the lowest reading of a stretch is above the limit, with what a dial reads low added: nothing
// of it was subtracted from the limit.
func (c *course[T]) margin(lowest units.Stated[T]) units.Amount {
	if !lowest.Given {
		return units.Amount{}
	}
	above := amount(lowest.Value).Minus(amount(c.atLeast))
	if p, ok := units.As[units.Pressure](above); ok {
		return units.AmountOf(p - min(0, c.run.Gauge.ReadsHigh))
	}
	return above
}
