package smoke

import (
	"sort"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
)

// findings says why the longest hold is too short, or why it cannot be told; each comes to what the hold comes to.
func (h Hold) findings(r Record, held, bridged series.Stretch) (all []verdict.Finding) {
	for i, core := range r.Cores {
		if highest, _ := core.Max(); highest.Value.Below(h.Limit.AtLeast) {
			f := h.cold(RuleReached, verdict.Short, r.named("core", i), moment(highest.At), highest.Value)
			if h.Limit.reachedOtherwise(highest.Value) {
				f.Known = wrongHeading
			}
			all = append(all, f)
		}
	}
	for i, core := range r.Cores {
		ended, found := verdict.Finding{}, false
		if h.Held > 0 {
			ended, found = h.ended(r, i, held.To)
		}
		if found {
			all = append(all, ended)
		}
		if h.Verdict == verdict.CannotTell {
			gap := longestGapIn(core, bridged)
			if gap.Length() > h.MaxGap && gap != ended.When.Value {
				all = append(all, unseen(r.named("readings", i), gap, h.MaxGap, h.Verdict))
			}
		}
	}
	if all == nil {
		last, _ := r.Cores[0].Last()
		all = append(all, h.short(RuleHold, "hold", series.Stretch{To: last.At}))
	}
	return all
}

// reachedOtherwise reports whether the number of a core that is too low, in degrees Fahrenheit, would be at the limit as
// degrees Celsius, or doubled.
func (l CoreLimit) reachedOtherwise(core units.Temperature) bool {
	number := units.Float(core.AboveAbsoluteZero(), units.FahrenheitDegrees) - 459.67
	for _, read := range [...]units.Temperature{units.Celsius(number), units.Fahrenheit(2 * number), units.Celsius(2 * core.Celsius())} {
		if read.AtLeast(l.AtLeast) && !read.Above(boiling) {
			return true
		}
	}
	return false
}

func moment(at time.Duration) series.Stretch { return series.Stretch{From: at, To: at} }

// cold is a finding about a core below the limit.
func (h Hold) cold(rule verdict.Rule, kind verdict.Kind, what string, when series.Stretch, core units.Temperature) verdict.Finding {
	short, _ := h.Limit.AtLeast.Sub(core)
	return verdict.Finding{
		Rule: rule, What: what, Kind: kind, Verdict: h.Verdict, When: units.State(when), Stated: units.Exactly(core),
		Wanted: units.AtLeast(h.Limit.AtLeast), By: units.AmountOf(short), Citation: h.Limit.Citation,
	}
}

// short is a finding about the time of the hold.
func (h Hold) short(rule verdict.Rule, what string, when series.Stretch) verdict.Finding {
	return verdict.Finding{
		Rule: rule, What: what, Kind: verdict.Short, Verdict: h.Verdict, When: units.State(when), Stated: units.Exactly(h.Held),
		Wanted: units.AtLeast(h.Limit.Hold), By: units.AmountOf(h.Limit.Hold - h.Held), Citation: h.Limit.Citation,
	}
}

// unseen is a finding about a gap between readings.
func unseen(what string, gap series.Stretch, maxGap time.Duration, comesTo verdict.Verdict) verdict.Finding {
	return verdict.Finding{
		Rule: RuleGap, What: what, Kind: verdict.Unobserved, Verdict: comesTo, When: units.State(gap), Stated: units.Exactly(gap.Length()),
		Wanted: units.AtMost(maxGap), Citation: unobservedCitation,
	}
}

// ended returns what this probe did when the longest hold ended, and false if it went on.
func (h Hold) ended(r Record, probe int, to time.Duration) (verdict.Finding, bool) {
	core, limit := r.Cores[probe], h.Limit.AtLeast
	j := sort.Search(core.Len(), func(i int) bool { r, _ := core.At(i); return r.At > to })
	a, _ := core.At(j - 1)
	b, more := core.At(j)
	switch {
	case !more:
		return h.short(RuleHold, r.named("hold", probe), moment(to)), true
	case b.At-a.At > h.MaxGap: // then the hold ended with the reading before it
		return unseen(r.named("readings", probe), series.Stretch{From: a.At, To: b.At}, h.MaxGap, h.Verdict), true
	case b.Value.AtLeast(limit) || to < a.At+warmPart(a, b, limit):
		return verdict.Finding{}, false
	}
	lowest, back := b.Value, b.At
	for ; more && b.Value.Below(limit); b, more = core.At(j) {
		if b.Value.Below(lowest) {
			lowest = b.Value
		}
		a, back = b, b.At
		j++
	}
	if more {
		back = b.At - warmPart(b, a, limit)
	}
	return h.cold(RuleDip, verdict.TooCold, r.named("core", probe), series.Stretch{From: to, To: back}, lowest), true
}

// longestGapIn returns the first of the longest gaps of which a part lies in the stretch.
func longestGapIn(p series.Series[units.Temperature], in series.Stretch) (gap series.Stretch) {
	for i := 1; i < p.Len(); i++ {
		a, _ := p.At(i - 1)
		b, _ := p.At(i)
		if b.At > in.From && a.At < in.To && b.At-a.At > gap.Length() {
			gap = series.Stretch{From: a.At, To: b.At}
		}
	}
	return gap
}
