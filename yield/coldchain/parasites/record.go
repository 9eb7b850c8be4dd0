package parasites

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// Audit judges a record of the core of the thickest fish by each published rule and returns what it held. Only time in
// which the core itself has the rule's temperature counts, straight lines between readings, ends rounded inward:
// stricter than the rules that count from loading. Above the temperature the clock starts anew, and where a rule asks
// for a deeper one first, so does that. A gap longer than maxGap breaks a hold; where the hold would be enough if the
// gap was cold (or hot) throughout, one cannot tell. A record of fewer than two readings, one with a reading below -80
// or above 100 °C (a fault of the probe) or a maxGap not above zero is a units.RangeError; an empty one is
// series.ErrEmpty.
func Audit(core series.Series[units.Temperature], maxGap time.Duration) (Report, error) {
	if err := chain.CheckRecord(core, maxGap); err != nil {
		return Report{}, err
	}
	var findings []Line
	for _, rule := range ruleTable {
		if rule.Standing == Refused {
			continue
		}
		held := rule.longest(core, maxGap, false)
		f := Line{Rule: rule, Treatment: Met, Stretch: held, Held: held.Length()}
		if f.Held < rule.Hold {
			f.Treatment, f.Short = NotMet, rule.Hold-f.Held
			if rule.longest(core, maxGap, true).Length() >= rule.Hold {
				f.Treatment = NotTold
			}
			f.Beyond = rule.missed(core)
		}
		findings = append(findings, f)
	}
	report := reported(findings)
	report.Cautions = cautionsOf(true)
	return report, nil
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
