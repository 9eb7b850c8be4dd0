package smoke

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
)

// Hold is what a record of the core says about a CoreLimit. Times count from the start of the record. Held is the
// longest unbroken time that every probe was at or above the limit, without a gap longer than MaxGap; it began at
// Began, which means nothing when Held is zero.
type Hold struct {
	Verdict    Verdict
	Limit      CoreLimit
	MaxGap     time.Duration
	Began      time.Duration
	Held       time.Duration
	Owed       time.Duration  // still to hold without a break from the end of the record on; zero when Met
	Bridged    time.Duration  // as Held, if straight lines are trusted across every gap
	LargestGap series.Stretch // between two readings of a probe, the first of the longest
	Findings   []Finding      // why it is not Met; nil when it is
}

// Cautions returns what must be shown beside the verdict. It is never empty; the slice is the caller's own.
func (h Hold) Cautions() []cite.Caution { return holdCautions(h.Limit) }

// CheckHold judges records of the core, one a probe, on one clock, against a limit: at every instant of the hold
// the coldest probe must be at the limit or above. Between readings the core runs in a straight line, ends of the
// hold round inward to the nanosecond, and time before a dip is never added to time after it. A gap longer than maxGap counts as
// unobserved: if the hold is long enough only across such a gap, the verdict is CannotTell.
//
// The limit must lie in 145 °F to 100 °C and 30 min to 24 h, maxGap above 0 and at most half the hold: otherwise a
// units.RangeError. At least one probe, each with a reading and none above 100 °C, which is air and never a moist
// core: otherwise a ProbeError. A longer hold or a warmer reading never turns Met into anything else.
// Source of the rule, coldest part and continuous: Michigan R 285.569.7(1).
func CheckHold(limit CoreLimit, maxGap time.Duration, probes ...series.Series[units.Temperature]) (Hold, error) {
	if err := limit.check(); err != nil {
		return Hold{}, err
	}
	if err := units.CheckDuration("longest gap", maxGap, 1, limit.Hold/2); err != nil {
		return Hold{}, err
	}
	if err := checkProbes(probes); err != nil {
		return Hold{}, err
	}
	h := Hold{Limit: limit, MaxGap: maxGap}
	for _, p := range probes {
		if gap := p.LongestGap(); gap.Length() > h.LargestGap.Length() {
			h.LargestGap = gap
		}
	}
	bridged := longestTogether(probes, limit.AtLeast, anyGap)
	held := bridged
	if h.LargestGap.Length() > maxGap {
		held = longestTogether(probes, limit.AtLeast, maxGap)
	}
	h.Began, h.Held, h.Bridged = held.From, held.Length(), bridged.Length()
	if h.Held >= limit.Hold {
		h.Verdict = Met
		return h, nil
	}
	if h.Bridged < limit.Hold {
		h.Verdict = NotMet
	}
	h.Owed = limit.Hold - running(probes, limit.AtLeast, maxGap)
	h.Findings = h.findings(probes, held, bridged)
	return h, nil
}

func checkProbes(probes []series.Series[units.Temperature]) error {
	if len(probes) == 0 {
		return ProbeError{Err: series.ErrEmpty}
	}
	for i, p := range probes {
		highest, ok := p.Max()
		switch {
		case !ok:
			return ProbeError{Probe: i, Err: series.ErrEmpty}
		case highest.Value.Above(boiling):
			return ProbeError{Probe: i, At: highest.At, Err: inTheAir(highest.Value)}
		}
	}
	return nil
}

// inTheAir is the fault of a core that is hotter than one can be.
func inTheAir(core units.Temperature) error {
	return units.RangeError{What: "core temperature", Got: core.String(), High: boiling.String() + ", where a moist core boils: the probe is in the air"}
}

// unobservedCitation is the reason behind MaxGap.
var unobservedCitation = cite.Citation{Where: "longest gap between readings, set by the caller", Basis: cite.Practice}
