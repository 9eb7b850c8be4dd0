package coldchain

import (
	"slices"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
)

// Verdict is what a record comes to. The zero Verdict is that one cannot tell.
type Verdict uint8

// The verdicts.
const (
	CannotTell Verdict = iota // not exceeded by what is recorded, but the record has a gap
	Within
	Exceeded
)

// String is the verdict in words: "cannot tell", "within", "exceeded".
func (v Verdict) String() string {
	switch v {
	case CannotTell:
		return "cannot tell"
	case Within:
		return "within"
	case Exceeded:
		return "exceeded"
	}
	return "unknown verdict"
}

// Report is what a record comes to under its Terms. Verdict is the worst of the findings. All times are
// of the record's own clock; time in gaps longer than Terms.MaxGap is in Unknown and nowhere else. FromMemory
// says of an Exceeded that every finding behind it is so.
type Report struct {
	Terms      Terms
	Verdict    Verdict
	FromMemory bool
	Span       time.Duration
	Unknown    time.Duration
	LongestGap series.Stretch
	Highest    series.Reading[units.Temperature]
	Hours      []Hours
	Findings   []Finding
	Next       []string // what to do now; of an Exceeded the last one says why
	Cautions   []cite.Caution
}

// Hours is the time strictly above a published threshold and up to 135 °F, and when the fish was first above it (in
// a stretch without a gap), where Ever is true.
type Hours struct {
	Above    units.Temperature
	Time     time.Duration
	Ever     bool
	First    time.Duration
	Citation cite.Citation
}

// Finding is one rule held against the record, for table A-2 one hazard. Used is the share of the whole
// allowance that is used up; where the rule has alternatives, of the one that allows most. ExceededAt is
// when the allowance ran out, where the Verdict is Exceeded; FromMemory says of such a verdict that the limits
// that were read in print would be kept by themselves.
type Finding struct {
	Rule       Rule
	Hazard     Hazard
	Verdict    Verdict
	FromMemory bool
	Used       units.Ratio
	ExceededAt time.Duration
	Lines      []Line
}

// Citations returns where the limits behind the finding are printed, each once: those of which time was used, and
// where none was, all. The slice is the caller's own.
func (f Finding) Citations() []cite.Citation {
	var all []cite.Citation
	for _, used := range [...]bool{true, false} {
		for _, l := range f.Lines {
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

// Line is one limit that applies to the record. Used is the time it counts: under the Nested reading of
// table A-2 that at or above the band's floor, otherwise that in the band. Remaining is how much more it
// allows, zero when nothing is left; under SumOfFractions that is what all bands together leave. Passed
// tells whether Used itself went over Allowed, and PassedAt when.
type Line struct {
	Limit     Limit
	Used      time.Duration
	Remaining time.Duration
	Passed    bool
	PassedAt  time.Duration
}
