package coldchain

import (
	"slices"
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
)

// Report is what a record of the temperature inside the fish comes to under its Terms: Met, or NotMet past a limit, or
// CannotTell where a gap may hide one. Allowances are all the rules, kept or not, each with its lines; a finding has
// the ID of its allowance as its Rule. All times are of the record's own clock; time in gaps longer than Terms.MaxGap
// is in Unknown and nowhere else. FromMemory says of NotMet that every allowance behind it is so.
type Report struct {
	verdict.Report
	Terms      Terms
	FromMemory bool
	Span       time.Duration
	Unknown    time.Duration
	LongestGap series.Stretch
	Highest    series.Reading[units.Temperature]
	Dropouts   int           // readings that are codes of a broken probe: gaps
	Doubted    int           // readings that no core could have come to: gaps
	Unseen     time.Duration // time in which the core warmed and nothing says in what
	Hours      []Hours
	Allowances []Allowance
	Next       []Step // what to do now, in its order
}

// MarshalJSON writes the report as an app shows it.
func (r Report) MarshalJSON() ([]byte, error) { return wire.Marshal(r) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (r *Report) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, r) }

// Hours is the time strictly above a published threshold and up to 135 °F, and when the fish was first above it (in a
// stretch without a gap), where Ever is true.
type Hours struct {
	Above    units.Temperature
	Time     time.Duration `wire:"always"`
	Ever     bool
	First    time.Duration
	Citation cite.Citation
}

// Allowance is the time that one rule allows, for table A-2 one hazard, as the record used it. Used is the share of the
// whole that is used up; where the rule has alternatives, of the one that allows most. ExceededAt is when it ran out,
// where the Verdict is NotMet; FromMemory says of such a verdict that the limits that were read would be kept by
// themselves. ID is the Rule of the finding about it.
type Allowance struct {
	ID         verdict.Rule
	Rule       Rule
	Hazard     Hazard
	Verdict    verdict.Verdict `wire:"always"`
	Spared     Spared          // why it does not decide, where it does not
	FromMemory bool
	Used       units.Ratio `wire:"always"`
	ExceededAt time.Duration
	Lines      []Line
}

// Citations returns where the limits behind the allowance are printed, each once: those of which time was used, and
// where none was, all. The slice is the caller's own.
func (a Allowance) Citations() []cite.Citation {
	var all []cite.Citation
	for _, used := range [...]bool{true, false} {
		for _, l := range a.Lines {
			if (l.Used > 0 || !used) && !slices.Contains(all, l.Limit.Citation) {
				all = append(all, l.Limit.Citation)
			}
		}
		if len(all) > 0 {
			break
		}
	}
	return all
}

// Line is one limit that applies to the record. Used is the time it counts: under the Nested reading of table A-2 that
// at or above the band's floor, otherwise that in the band. Remaining is how much more it allows, zero when nothing is
// left; under SumOfFractions that is what all bands together leave. Passed tells whether Used itself went over Allowed,
// and PassedAt when.
type Line struct {
	Limit     Limit
	Used      time.Duration `wire:"always"`
	Remaining time.Duration `wire:"always"`
	Passed    bool
	PassedAt  time.Duration
}
