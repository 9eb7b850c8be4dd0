package canner

import (
	"time"

	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
)

// Report is what a record says about a run. Its Verdict is the worst of the findings', and CannotTell while the run is not over.
// Times count from the start of the record. Held is the longest unbroken stretch at or above pressure, between closing the
// vent and turning off the heat, in which no gap is longer than MaxGap; its ends round inward.
type Report struct {
	Verdict    Verdict
	Required   string // the schedule's pressure as this record shows it, gauge or steam
	Process    time.Duration
	MaxGap     time.Duration
	Held       series.Stretch
	Bridged    time.Duration  // as Held, if straight lines are trusted across every gap
	LargestGap series.Stretch // between two readings, the first of the longest
	Clock      Clock
	Findings   []Finding // in time order; nil when every rule was kept
	Next       []Step    // what to do now, one or the other
	Cautions   []cite.Caution
}

// Clock is what the timer should say at the end of a record that is still growing; zero when the run is over. Owed is what
// must still be held without a break, all of it when the pressure is not there. Running: the pressure has stood since From,
// and if nothing sags the time is full at Done.
type Clock struct {
	Running    bool
	From, Done time.Duration
	Held, Owed time.Duration
}

// clock returns the Clock of a process whose pressure has stood, when it has, from one time to another.
func clock(process time.Duration, running bool, from, to time.Duration) Clock {
	if !running {
		return Clock{Owed: process}
	}
	return Clock{Running: true, From: from, Done: from + process, Held: to - from, Owed: max(0, process-(to-from))}
}
