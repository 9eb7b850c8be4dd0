package parasites

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// Audit judges a record of the core of the thickest fish by each published rule and returns what it held. Only time in
// which the core itself has the rule's temperature counts, straight lines between readings, ends rounded inward:
// stricter than the rules that count from loading. Above the temperature the clock starts anew, and where a rule asks
// for a deeper one first, so does that. What a broken probe shows is a gap, and a core that changes as none does is never a
// pass. A gap longer than maxGap breaks a hold; where the hold would be enough if the
// gap was cold (or hot) throughout, one cannot tell. A record of fewer than two readings, one with a reading below -80
// or above 100 °C that is no code of a broken probe, or a maxGap not above zero is a units.RangeError; an empty one is
// series.ErrEmpty.
func Audit(core series.Series[units.Temperature], maxGap time.Duration) (Report, error) {
	if err := chain.CheckWalk(core, maxGap); err != nil {
		return Report{}, err
	}
	believed, err := chain.Believe(core)
	if err != nil {
		return Report{}, err
	}
	core = believed.Record
	if err := chain.CheckRecord(core, maxGap); err != nil {
		return Report{}, err
	}
	all := make([]judged, 0, len(ruleTable))
	for _, rule := range ruleTable {
		if rule.Standing != Refused {
			all = append(all, rule.judge(core, maxGap))
		}
	}
	if m := believed.Moved; m.Given {
		doubt(all, verdict.Finding{
			Rule: RuleBelieved, What: "core, which no fish changes so fast", Kind: verdict.Impossible, Verdict: verdict.CannotTell,
			When: m, Citation: chain.BeliefCitation(),
		})
	}
	r := reported(all, true)
	if believed.Dropouts > 0 {
		r.Cautions = append(r.Cautions, dropouts)
	}
	return r, nil
}

// judge judges a record by one rule.
func (r Rule) judge(core series.Series[units.Temperature], maxGap time.Duration) judged {
	held := r.longest(core, maxGap, false)
	l := Line{Rule: r, Verdict: verdict.Met, Stretch: held, Held: held.Length()}
	if l.Held >= r.Hold {
		return judged{Line: l}
	}
	l.Verdict, l.Short, l.Beyond = verdict.NotMet, r.Hold-l.Held, r.missed(core)
	f := verdict.Finding{
		Rule: r.ID, What: "time at the temperature", Kind: verdict.Short, By: units.AmountOf(l.Short), Citation: r.Citation,
		Stated: units.Exactly(l.Held), Wanted: units.AtLeast(r.Hold),
	}
	if l.Held > 0 {
		f.When = units.State(held)
	}
	switch {
	case r.longest(core, maxGap, true).Length() >= r.Hold:
		l.Verdict, f.Kind = verdict.CannotTell, verdict.Unobserved
	case l.Beyond > 0 && r.Heat:
		f.What, f.Kind, f.By = "core", verdict.TooCold, units.AmountOf(l.Beyond)
		f.Stated, f.Wanted = units.Exactly(r.entry().Add(-l.Beyond)), r.bound()
	case l.Beyond > 0:
		f.What, f.Kind, f.By = "core", verdict.TooWarm, units.AmountOf(l.Beyond)
		f.Stated, f.Wanted = units.Exactly(r.entry().Add(l.Beyond)), r.bound()
	}
	f.Verdict = l.Verdict
	return judged{l, f}
}

// missed is how far the record stayed off the temperature that the hold begins at, zero where it got there.
func (r Rule) missed(core series.Series[units.Temperature]) units.TemperatureChange {
	extreme, _ := core.Min()
	if r.Heat {
		extreme, _ = core.Max()
	}
	off, err := extreme.Value.Sub(r.entry())
	if r.Heat {
		off = -off
	}
	if err != nil || off < 0 {
		return 0
	}
	return off
}

// hold follows one rule through a record: the stretch that is open, if any, and the first of the longest that are
// closed. All values are turned so that less is better, in quanta.
type hold struct {
	enter, leave int64
	open         bool
	from         time.Duration
	best         series.Stretch
}

// longest returns the first of the longest stretches that count for the rule. Gaps break it or, bridged, count as spent
// at the temperature.
func (r Rule) longest(core series.Series[units.Temperature], maxGap time.Duration, bridged bool) series.Stretch {
	side := int64(1)
	if r.Heat {
		side = -1
	}
	h := hold{enter: side * chain.Quanta(r.entry()), leave: side * chain.Quanta(r.Temperature)}
	before, _ := core.First()
	if side*chain.Quanta(before.Value) <= h.enter {
		h.start(before.At)
	}
	for i := 1; i < core.Len(); i++ {
		next, _ := core.At(i)
		a, b := side*chain.Quanta(before.Value), side*chain.Quanta(next.Value)
		switch gap := next.At-before.At > maxGap; {
		case gap && bridged:
			h.start(before.At)
			if b > h.leave {
				h.stop(next.At)
			}
		case gap:
			h.stop(before.At)
			if b <= h.enter {
				h.start(next.At)
			}
		default:
			h.line(before.At, next.At, a, b)
		}
		before = next
	}
	h.stop(before.At)
	return h.best
}

// line enters the straight line from a to b. A hold that ends within it ends above enter, so none can begin there too.
func (h *hold) line(from, to time.Duration, a, b int64) {
	dt := int64(to - from)
	switch {
	case h.open && b > h.leave:
		h.stop(from + time.Duration(chain.Part(dt, h.leave-a, b-a)))
	case !h.open && b <= h.enter:
		h.start(to - time.Duration(chain.Part(dt, h.enter-b, a-b)))
	}
}

func (h *hold) start(at time.Duration) {
	if !h.open {
		h.open, h.from = true, at
	}
}

func (h *hold) stop(at time.Duration) {
	if h.open && at-h.from > h.best.Length() {
		h.best = series.Stretch{From: h.from, To: at}
	}
	h.open = false
}
