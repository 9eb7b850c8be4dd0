package coldchain

import (
	"math"
	"time"

	"example.org/lakelarder/units"
)

// judge holds one rule, or one hazard of table A-2, against a ledger.
type judge struct {
	limits  []counted
	rule    Rule
	hazard  Hazard
	reading Reading
	hotAir  bool
	cooked  bool
	slot    int // its place among all that a running exposure watches
	spared  Spared
}

// judges are the rules of the terms, one judge for each, and for each hazard of table A-2.
func (t Terms) judges() []judge {
	t = t.filled()
	all := make([]judge, 0, len(hazardNames.Words)+len(ruleNames.Words))
	slot := len(thresholds)
	for _, rule := range t.rules() {
		hazards := []Hazard{0}
		if rule == TableA2 {
			hazards = t.hazards()
		}
		for _, hazard := range hazards {
			all = append(all, judge{
				limits: limitsOf(rule, hazard), rule: rule, hazard: hazard, reading: t.Reading,
				hotAir: t.HotAir, cooked: t.Product == CookedFish, slot: slot, spared: t.spared(rule, hazard),
			})
			slot += 1 + len(all[len(all)-1].limits)
		}
	}
	return all
}

// applies reports whether a limit is for the fish of the ledger. Raw fish that is itself above 90 °F was in
// air above it.
func (j judge) applies(l ledger, c *counted) bool {
	switch {
	case c.hot > 0:
		return j.hotAir || l.extra(extraHot) > 0 || !j.cooked && l.above(c.hot) > 0
	case c.ever > 0 && l.above(c.ever) == 0:
		return false
	}
	return c.never == 0 || l.above(c.never) == 0
}

// used is the time that a limit counts.
func (j judge) used(l ledger, c *counted) time.Duration {
	switch {
	case j.rule == KitchenTwoHours:
		return l.in(c.band) - l.extra(extraCold) + l.extra(extraOut)
	case j.reading == Nested:
		return l.in(c.nested)
	}
	return l.in(c.band)
}

// allows reports whether a limit is kept.
func (j judge) allows(l ledger, c *counted) bool { return j.used(l, c) <= c.Allowed }

// met reports whether the rule is kept.
func (j judge) met(l ledger) bool {
	if j.rule == TableA2 {
		return j.bandsMet(l)
	}
	kept, alternative := false, -1
	for i := range j.limits {
		c := &j.limits[i]
		if !j.applies(l, c) {
			continue
		}
		if c.Alternative != alternative {
			if kept {
				return true
			}
			kept, alternative = true, c.Alternative
		}
		kept = kept && j.allows(l, c)
	}
	return kept
}

// bandsMet is met for a hazard of table A-2. Its bands touch, so the time at or above a floor is that of all
// bands from there up. The sum of fractions includes the nested reading, which it implies but for rounding.
func (j judge) bandsMet(l ledger) bool {
	nested := time.Duration(0)
	for i := len(j.limits) - 1; i >= 0; i-- {
		c := &j.limits[i]
		used := l.in(c.band)
		nested += used
		if j.reading != EachBand {
			used = nested
		}
		if used > c.Allowed {
			return false
		}
	}
	return j.reading != SumOfFractions || j.sum(l) <= units.One
}

// sum is the time in each band as a share of its limit, added up and rounded once to the nearest 1e-12. A row
// of one temperature has no width to add.
func (j judge) sum(l ledger) units.Ratio {
	total := 0.0
	for i := range j.limits {
		c := &j.limits[i]
		if c.single {
			continue
		}
		total += float64(l.in(c.band)) / float64(c.Allowed)
	}
	return ratio(total)
}

// share is how much of the allowance is used: the sum for that reading, otherwise of each alternative its
// fullest limit, and of those the least full.
func (j judge) share(l ledger) units.Ratio {
	if j.rule == TableA2 && j.reading == SumOfFractions {
		return j.sum(l)
	}
	least, fullest, alternative := math.Inf(1), 0.0, -1
	for i := range j.limits {
		c := &j.limits[i]
		if !j.applies(l, c) {
			continue
		}
		if c.Alternative != alternative {
			if alternative >= 0 {
				least = math.Min(least, fullest)
			}
			fullest, alternative = 0, c.Alternative
		}
		fullest = math.Max(fullest, float64(j.used(l, c))/float64(c.Allowed))
	}
	return ratio(math.Min(least, fullest))
}

// readExceeded reports whether the lines with a limit that was read in print go over by themselves.
func (j judge) readExceeded(lines []Line) bool {
	sum := 0.0
	for _, l := range lines {
		if l.Limit.Citation.Unverified() {
			continue
		}
		if l.Passed {
			return true
		}
		if j.rule == TableA2 && j.reading == SumOfFractions {
			sum += float64(l.Used) / float64(l.Limit.Allowed)
		}
	}
	return ratio(sum) > units.One
}

// ratio rounds a share to the nearest 1e-12; past the range of a Ratio, which takes a record of 9 million
// allowances, it is the largest one.
func ratio(share float64) units.Ratio {
	r, err := units.OfFloat(share, units.One)
	if err != nil {
		return math.MaxInt64
	}
	return r
}
