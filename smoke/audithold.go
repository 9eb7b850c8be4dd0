package smoke

import (
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/smoke/moistair"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
)

// Hold is what a record of the core says about a CoreLimit. Times count from the start of the record. Held is the
// longest unbroken time that every probe was at or above the limit, without a gap longer than MaxGap; it began at
// Began, which means nothing when Held is zero.
type Hold struct {
	verdict.Report
	Limit      CoreLimit
	MaxGap     time.Duration
	Began      time.Duration
	Held       time.Duration
	Owed       time.Duration  // still to hold without a break from the end of the record on; zero when Met
	Bridged    time.Duration  // as Held, if straight lines are trusted across every gap
	LargestGap series.Stretch // between two readings of a probe, the first of the longest
}

// MarshalJSON writes the hold as an app shows it.
func (h Hold) MarshalJSON() ([]byte, error) { return wire.Marshal(h) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (h *Hold) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, h) }

// AuditHold judges a record of the core against a limit: at every instant of the hold the coldest probe must be at the
// limit or above. Between readings the core runs in a straight line, ends of the hold round inward to the nanosecond, and
// time before a dip is never added to time after it. A gap longer than MaxGap counts as unobserved: if the hold is long
// enough only across such a gap, the verdict is CannotTell.
//
// The limit must lie in 145 °F to 100 °C and 30 min to 24 h, MaxGap above 0 and at most half the hold: otherwise a
// units.RangeError, or a units.UnsetError for what is not stated. One to 16 probes, each with a reading, none above
// 100 °C, which is air and never a moist core, and none below -40 °C, which is a loose probe: otherwise a ProbeError. A longer record never turns Met
// into anything else. A probe that shows one value throughout, swings like air, or shows its air within 2 K at every
// reading is not in the core: CannotTell. Source of the rule, coldest part and continuous: Michigan R 285.569.7(1).
func AuditHold(limit CoreLimit, r Record) (Hold, error) {
	if err := limit.check(); err != nil {
		return Hold{}, err
	}
	if err := r.check(limit.Hold / 2); err != nil {
		return Hold{}, err
	}
	all, err := r.checkCores()
	if err != nil {
		return Hold{}, err
	}
	h := Hold{Limit: limit, MaxGap: r.MaxGap, LargestGap: all.longest}
	held, bridged := h.longest(r.Cores)
	h.Began, h.Held, h.Bridged = held.From, held.Length(), bridged.Length()
	doubt := r.doubt(reachOf(r.Piece, moistair.SmokerFilm().Coefficient.High), all).tooHot()
	var found []verdict.Finding
	stood := doubt.stands(r.Cores, limit.AtLeast)
	switch {
	case h.Held < limit.Hold:
		h.Verdict = verdict.CannotTell
		if h.Bridged < limit.Hold {
			h.Verdict = verdict.NotMet
		}
		found = append(h.findings(r, held, bridged), doubt.findings(r)...)
	case stood.same >= 0 || stood.dead || stood.hot != nil && !h.heldIn(stood.without(r.Cores)):
		h.Verdict = verdict.CannotTell
		found = stood.findings(r)
	}
	if found != nil {
		h.Owed = limit.owed(min(running(stood.without(r.Cores), limit.AtLeast, r.MaxGap), running(r.Cores, limit.AtLeast, r.MaxGap)))
	}
	cautions := holdCautions(limit, r.Site)
	if r.beginsWarm() {
		cautions = append(cautions, beginsWarm)
	}
	h.Report = verdict.Of(found, cautions)
	return h, nil
}

// longest is the longest hold without a longer gap than allowed, and across every gap.
func (h Hold) longest(cores []series.Series[units.Temperature]) (held, bridged series.Stretch) {
	bridged = longestTogether(cores, h.Limit.AtLeast, anyGap)
	if h.LargestGap.Length() <= h.MaxGap {
		return bridged, bridged
	}
	return longestTogether(cores, h.Limit.AtLeast, h.MaxGap), bridged
}

// heldIn reports whether the hold is long enough in what is believed of the record.
func (h Hold) heldIn(cores []series.Series[units.Temperature]) bool {
	return longestTogether(cores, h.Limit.AtLeast, h.MaxGap).Length() >= h.Limit.Hold
}

// unobservedCitation is the reason behind MaxGap.
var unobservedCitation = cite.Citation{Where: "longest gap between readings, set by the caller", Basis: cite.Practice}
