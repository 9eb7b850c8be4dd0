package canner

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
)

// The shortest cooling in print, the wait between weight and lid, and when the lid is late.
const (
	leastCooling = 20 * time.Minute
	lidWait      = 10 * time.Minute
	lidLate      = 2 * time.Hour // after the pressure was gone: later is a remark; practice, no source
)

// cooling: the pressure falls by itself, then the weight, ten minutes, then the lid.
func (j *judgement[T]) cooling() {
	m := &j.run.Marks
	gone := m.Gone
	if !gone.Given {
		gone = j.walk.Gone
	}
	if !m.HeatOff.Given {
		j.notMarked(RuleCooling, "turning off the heat", coolSource)
	}
	if !gone.Given {
		j.notMarked(RuleCooling, "no pressure left", coolSource)
	}
	if gone.Given && m.HeatOff.Given {
		j.fell(gone.Value)
	}
	j.forced(gone)
	j.waiting(gone)
	if late := m.LidOff.Value - gone.Value; m.LidOff.Given && gone.Given && late > lidLate {
		j.add(verdict.Finding{
			Rule: RuleLidLate, What: "time until the lid was off", Kind: verdict.TooLong, Verdict: verdict.Met,
			When:   when(gone.Value, m.LidOff.Value),
			Stated: units.Exactly(late), Wanted: units.AtMost(lidLate), Citation: lateSource,
		}, Step{})
	}
}

// fell: the cooling took as long as the shortest published one. The record may show that it began later than was
// marked, or was over earlier: that counts. A little heat stays in the burner.
func (j *judgement[T]) fell(gone time.Duration) {
	off := j.run.Marks.HeatOff.Value
	if j.walk.Gone.Given {
		gone = min(gone, j.walk.Gone.Value)
	}
	off = max(off, min(j.walk.LastUp-burnerStays, gone))
	fell := gone - off
	if fell >= leastCooling {
		return
	}
	j.add(verdict.Finding{
		Rule: RuleCooling, What: "cooling by itself", Kind: verdict.TooSoon, Verdict: verdict.CannotTell,
		When:   when(off, gone),
		Stated: units.Exactly(fell), Wanted: units.AtLeast(leastCooling), By: units.AmountOf(leastCooling - fell),
		Citation: coolingSource,
	}, Step{})
}

// burnerStays is how long the pressure may stand after the heat is off without a word; practice, no source.
const burnerStays = 5 * time.Minute

// forced: the vent or the lid was opened before the pressure was gone, by the marks or by the record.
func (j *judgement[T]) forced(gone units.Stated[time.Duration]) {
	m := &j.run.Marks
	for _, one := range [...]struct {
		what   string
		opened units.Stated[time.Duration]
		value  units.Stated[T]
	}{{"weight", m.WeightOff, j.walk.AtWeight}, {"lid", m.LidOff, j.walk.AtLid}} {
		f := verdict.Finding{Rule: RuleOpening, Kind: verdict.TooSoon, Verdict: verdict.NotMet, Citation: coolSource}
		switch at := one.opened.Value; {
		case !one.opened.Given:
			continue
		case gone.Given && at < gone.Value:
			f.What, f.When = one.what+" off before the pressure was gone", when(at, gone.Value)
		case one.value.Given && quanta(one.value.Value) > quanta(j.slight): // outside the record the marks alone speak
			f.What, f.When = quantityOf[T]()+" when the "+one.what+" came off", when(at, at)
			f.Stated, f.Wanted = exactly(one.value.Value), units.InWords("no pressure left")
		default:
			continue
		}
		j.add(f, Step{})
		return
	}
}

func (j *judgement[T]) waiting(gone units.Stated[time.Duration]) {
	m := &j.run.Marks
	weight := m.WeightOff
	if !weight.Given {
		weight = gone // it came off no earlier, or the opening was forced
	}
	if waited := m.LidOff.Value - weight.Value; m.LidOff.Given && weight.Given && waited >= 0 && waited < lidWait {
		j.lasting(verdict.Finding{
			Rule: RuleWait, What: "wait from weight to lid", Citation: coolSource,
		}, weight.Value, m.LidOff.Value, lidWait)
		return
	}
	if !m.WeightOff.Given {
		j.notMarked(RuleWait, "taking off the weight", coolSource)
	}
	if !m.LidOff.Given {
		j.notMarked(RuleWait, "taking off the lid", coolSource)
	}
}
