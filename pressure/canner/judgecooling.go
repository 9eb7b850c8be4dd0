package canner

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
)

// The shortest cooling in print, and the wait between weight and lid.
const (
	leastCooling = 20 * time.Minute
	lidWait      = 10 * time.Minute
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
	if fell := gone.Value - m.HeatOff.Value; gone.Given && m.HeatOff.Given && fell < leastCooling {
		j.add(verdict.Finding{
			Rule: RuleCooling, What: "cooling by itself", Kind: verdict.TooSoon, Verdict: verdict.CannotTell, When: when(m.HeatOff.Value, gone.Value),
			Stated: units.Exactly(fell), Wanted: units.AtLeast(leastCooling), By: units.AmountOf(leastCooling - fell), Citation: coolingSource,
		}, Step{})
	}
	j.forced(gone)
	j.waiting(gone)
}

// forced: the vent or the lid was opened before the pressure was gone, by the marks or by the record.
func (j *judgement[T]) forced(gone units.Stated[time.Duration]) {
	m := &j.run.Marks
	opened, value := m.WeightOff, j.walk.AtWeight
	if !opened.Given {
		opened, value = m.LidOff, j.walk.AtLid
	}
	f := verdict.Finding{Rule: RuleOpening, Kind: verdict.TooSoon, Verdict: verdict.NotMet, Citation: coolSource}
	switch {
	case !opened.Given:
		return
	case gone.Given && opened.Value < gone.Value:
		f.What, f.When = "vent or lid opened before the pressure was gone", when(opened.Value, gone.Value)
	case value.Given && quanta(value.Value) > quanta(j.slight): // outside the record the marks alone speak
		f.What, f.When = quantityOf[T]()+" when the vent or lid was opened", when(opened.Value, opened.Value)
		f.Stated, f.Wanted = exactly(value.Value), atMostFigure(j.slight)
	default:
		return
	}
	j.add(f, Step{})
}

func (j *judgement[T]) waiting(gone units.Stated[time.Duration]) {
	m := &j.run.Marks
	weight := m.WeightOff
	if !weight.Given {
		weight = gone // it came off no earlier, or the opening was forced
	}
	if waited := m.LidOff.Value - weight.Value; m.LidOff.Given && weight.Given && waited >= 0 && waited < lidWait {
		j.lasting(verdict.Finding{Rule: RuleWait, What: "wait from weight to lid", Citation: coolSource}, weight.Value, m.LidOff.Value, lidWait)
		return
	}
	if !m.WeightOff.Given {
		j.notMarked(RuleWait, "taking off the weight", coolSource)
	}
	if !m.LidOff.Given {
		j.notMarked(RuleWait, "taking off the lid", coolSource)
	}
}
