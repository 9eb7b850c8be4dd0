package smoke

import (
	"fmt"
	"sort"
	"strconv"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
)

// FindingKind is the sort of reason for which a hold is not met. The zero FindingKind is none.
type FindingKind uint8

// The kinds of finding.
const (
	NeverReached FindingKind = iota + 1 // the probe's highest reading, Observed, is below the limit
	Dipped                              // the longest hold ended when this probe fell below; Observed is the lowest reading until it was back
	Unobserved                          // no reading for longer than MaxGap
	Stopped                             // the record of this probe ends while the hold still ran
	Momentary                           // the limit was reached for no length of time, or never by all probes together
)

// String is the kind in words: "never reached".
func (k FindingKind) String() string {
	switch k {
	case 0:
		return "nothing found"
	case NeverReached:
		return "never reached"
	case Dipped:
		return "dipped"
	case Unobserved:
		return "unobserved"
	case Stopped:
		return "stopped"
	case Momentary:
		return "momentary"
	}
	return "FindingKind(" + strconv.Itoa(int(k)) + ")"
}

// Finding is one reason for which a hold is not met. Probe counts from zero in the order given. Required and
// Observed are not set for what has no temperature.
type Finding struct {
	Kind     FindingKind
	Probe    int
	When     series.Stretch
	Required units.Temperature
	Observed units.Temperature
	Citation cite.Citation
}

// String says it in one line.
func (f Finding) String() string {
	s := fmt.Sprintf("probe %d %v", f.Probe, f.Kind)
	if f.When.From == f.When.To {
		s += fmt.Sprintf(" at %v", f.When.From)
	} else {
		s += fmt.Sprintf(" from %v to %v", f.When.From, f.When.To)
	}
	if f.Observed.IsSet() {
		observed, required := apart(f.Observed, f.Required)
		s += ": " + observed + ", expected at least " + required
	}
	return s
}

func bothScales(t units.Temperature) string { return inBoth(t, 2) }

func inBoth(t units.Temperature, places int32) string {
	return t.Text(units.FahrenheitScale, places) + " (" + t.Text(units.CelsiusScale, places) + ")"
}

// apart is a temperature beside its limit, both with as many digits as it takes to tell them apart: 82.22 °C is not 180 °F.
func apart(t, limit units.Temperature) (string, string) {
	places := int32(2)
	for t != limit && places < 6 && inBoth(t, places) == inBoth(limit, places) {
		places++
	}
	return inBoth(t, places), inBoth(limit, places)
}

// findings says why the longest hold is too short, or why it cannot be told.
func (h Hold) findings(probes []series.Series[units.Temperature], held, bridged series.Stretch) (all []Finding) {
	for i, p := range probes {
		if highest, _ := p.Max(); highest.Value.Below(h.Limit.AtLeast) {
			all = append(all, h.warmth(NeverReached, i, series.Stretch{From: highest.At, To: highest.At}, highest.Value))
		}
	}
	for i, p := range probes {
		ended := Finding{}
		if h.Held > 0 {
			ended = h.ended(i, p, held.To)
		}
		if ended.Kind != 0 {
			all = append(all, ended)
		}
		if h.Verdict == CannotTell {
			gap := longestGapIn(p, bridged)
			if gap.Length() > h.MaxGap && gap != ended.When {
				all = append(all, Finding{Kind: Unobserved, Probe: i, When: gap, Citation: unobservedCitation})
			}
		}
	}
	if all == nil {
		last, _ := probes[0].Last()
		all = append(all, Finding{Kind: Momentary, When: series.Stretch{To: last.At}, Citation: h.Limit.Citation})
	}
	return all
}

func (h Hold) warmth(kind FindingKind, probe int, when series.Stretch, observed units.Temperature) Finding {
	return Finding{Kind: kind, Probe: probe, When: when, Required: h.Limit.AtLeast, Observed: observed, Citation: h.Limit.Citation}
}

// ended returns what this probe did when the longest hold ended, nothing if it went on.
func (h Hold) ended(probe int, p series.Series[units.Temperature], to time.Duration) Finding {
	j := sort.Search(p.Len(), func(i int) bool { r, _ := p.At(i); return r.At > to })
	a, _ := p.At(j - 1)
	b, more := p.At(j)
	switch {
	case !more:
		return Finding{Kind: Stopped, Probe: probe, When: series.Stretch{From: to, To: to}, Citation: h.Limit.Citation}
	case b.At-a.At > h.MaxGap: // then the hold ended with the reading before it
		return Finding{Kind: Unobserved, Probe: probe, When: series.Stretch{From: a.At, To: b.At}, Citation: unobservedCitation}
	case b.Value.AtLeast(h.Limit.AtLeast) || to < a.At+warmPart(a, b, h.Limit.AtLeast):
		return Finding{}
	}
	lowest, back := b.Value, b.At
	for ; more && b.Value.Below(h.Limit.AtLeast); b, more = p.At(j) {
		if b.Value.Below(lowest) {
			lowest = b.Value
		}
		a, back = b, b.At
		j++
	}
	if more {
		back = b.At - warmPart(b, a, h.Limit.AtLeast)
	}
	return h.warmth(Dipped, probe, series.Stretch{From: to, To: back}, lowest)
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
