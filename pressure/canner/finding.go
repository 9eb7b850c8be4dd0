package canner

import (
	"fmt"
	"strconv"
	"time"

	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
)

// FindingKind is the rule that a finding is about. The zero FindingKind is none.
type FindingKind uint8

// The kinds of finding, in the order of a run.
const (
	NotMarked    FindingKind = iota + 1 // a moment that decides was not written down
	ShortVent                           // less steady steam than published
	ShortComeUp                         // quarts: less heating and venting together than published
	NeverReached                        // the pressure was never there
	TimerEarly                          // the timer ran before the pressure was there
	Sagged                              // below pressure after it was reached: the clock restarts from zero
	TooHigh                             // well above pressure: quality
	Unobserved                          // the time is full only across a gap in the record
	TooShort                            // the longest unbroken stretch is shorter than published
	FastCooling                         // the pressure fell faster than any published cooling: it may have been forced
	Forced                              // vent or lid opened while there was pressure
	ShortWait                           // lid opened too soon after the weight was off
)

// String is the kind in words: "short vent".
func (k FindingKind) String() string {
	names := [...]string{"nothing found", "not marked", "short vent", "short come-up", "never reached", "timer early", "sagged", "too high",
		"unobserved", "too short", "fast cooling", "forced", "short wait"}
	if int(k) < len(names) {
		return names[k]
	}
	return "FindingKind(" + strconv.Itoa(int(k)) + ")"
}

// Finding is one thing that a record shows, or fails to show. Verdict is what it alone makes of the run: Met where it undoes
// nothing, such as a pressure too high, or a sag after which the whole time was held. Required and Observed are text in
// both systems of units. Do is what to do about it now, zero where there is nothing: it undid nothing, and the run is over.
type Finding struct {
	Kind     FindingKind
	Verdict  Verdict
	When     series.Stretch
	Required string
	Observed string
	Citation cite.Citation
	Do       Step
}

// String says it in one line.
func (f Finding) String() string {
	return fmt.Sprintf("%v %s: %s, required %s", f.Kind, minuteSpan(f.When), f.Observed, f.Required)
}

// minutes prints a duration in minutes and seconds, cut to the second: "7 min", "99 min 59 s".
func minutes(d time.Duration) string {
	s := strconv.FormatInt(int64(d/time.Minute), 10) + " min"
	if seconds := d % time.Minute / time.Second; seconds != 0 {
		s += " " + strconv.FormatInt(int64(seconds), 10) + " s"
	}
	return s
}

// minuteSpan prints when something was: "at minute 12", "from minute 12 to 15".
func minuteSpan(s series.Stretch) string {
	if s.From == s.To {
		return "at minute " + minute(s.From)
	}
	return "from minute " + minute(s.From) + " to " + minute(s.To)
}

// minute prints a moment as minutes and seconds of the record: "63", "63:20".
func minute(d time.Duration) string {
	d = d.Round(time.Second)
	if seconds := d % time.Minute / time.Second; seconds != 0 {
		return fmt.Sprintf("%d:%02d", d/time.Minute, seconds)
	}
	return strconv.FormatInt(int64(d/time.Minute), 10)
}
