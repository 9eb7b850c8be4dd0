package canner

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
)

func at(t time.Duration) series.Stretch { return series.Stretch{From: t, To: t} }

// venting: steady steam for the published minutes; for quarts, heating and venting together.
func (j *judgement[T]) venting() {
	m, s := j.run.Marks, j.run.Schedule
	if !m.SteadySteam.Given {
		j.notMarked("steady steam from the vent", s.VentCitation)
	}
	if !m.VentClosed.Given {
		if j.over || j.walk.reached {
			j.notMarked("closing the vent", s.VentCitation)
		}
		return
	}
	closed := m.VentClosed.Value
	if vented := closed - m.SteadySteam.Value; m.SteadySteam.Given && vented < s.Vent {
		j.add(Finding{Kind: ShortVent, Verdict: NotMet, When: series.Stretch{From: m.SteadySteam.Value, To: closed},
			Required: minutes(s.Vent) + " of steady steam", Observed: minutes(vented), Citation: s.VentCitation}, startAgain)
	}
	from := m.SteadySteam // heating is at least as long as venting
	if m.HeatOn.Given {
		from = m.HeatOn
	}
	switch total := closed - from.Value; {
	case s.ComeUp == 0 || from.Given && total >= s.ComeUp:
	case m.HeatOn.Given:
		j.add(Finding{Kind: ShortComeUp, Verdict: NotMet, When: series.Stretch{From: from.Value, To: closed},
			Required: minutes(s.ComeUp) + " of heating and venting together", Observed: minutes(total), Citation: s.ComeUpCitation}, startAgain)
	default:
		j.notMarked("turning on the heat", s.ComeUpCitation)
	}
}

// timing: the timer is not started before the pressure is there.
func (j *judgement[T]) timing() {
	timer := j.run.Marks.Timer
	if !timer.Given {
		return
	}
	v, err := j.record.ValueAt(timer.Value)
	if err != nil || quanta(v) >= quanta(j.walk.atLeast) {
		return // outside the record nothing shows that it was early
	}
	j.add(Finding{Kind: TimerEarly, Verdict: Met, When: at(timer.Value), Required: figure(j.walk.atLeast) + " when the timer starts", Observed: lower(v, j.walk.atLeast),
		Citation: guide1("Using pressure canners, step 4, p. 1-22")}, keepGoing(j.clock))
}

// holding: the longest unbroken stretch, and whether the pressure was ever there.
func (j *judgement[T]) holding() {
	w, s := j.walk, j.run.Schedule
	if w.observed && quanta(w.highest.Value) > quanta(w.over) {
		j.add(Finding{Kind: TooHigh, Verdict: Met, When: at(w.highest.At), Required: "at or slightly above pressure; " + figure(w.over) + " at most is taken for that, and 15 psi is the most for new canners",
			Observed: figure(w.highest.Value), Citation: newCanner.Citation}, Step{})
	}
	if !j.over || w.held.Length() >= s.Process {
		return
	}
	f := Finding{Verdict: NotMet, Required: minutes(s.Process) + " without a break at " + figure(w.atLeast) + " or above", Citation: s.Citation}
	switch {
	case w.spanned.Length() >= s.Process:
		gap := w.gapIn(j.record)
		f = Finding{Kind: Unobserved, Verdict: CannotTell, When: gap, Required: "a reading at least every " + minutes(j.run.MaxGap) + " and at both ends", Observed: "none for " + minutes(gap.Length()),
			Citation: cite.Citation{Where: "longest gap between readings, set by the caller", Basis: cite.Practice}}
	case !w.reached || !w.observed:
		f.Kind, f.When, f.Observed = NeverReached, series.Stretch{From: w.from, To: max(w.from, w.to)}, "no reading between vent and end of heat"
		if w.observed {
			f.When, f.Observed = at(w.highest.At), "at most "+lower(w.highest.Value, w.atLeast)
		}
	default:
		f.Kind, f.When, f.Observed = TooShort, w.held, minutes(w.held.Length())
	}
	j.add(f, Step{})
}

// gapIn returns the longest gap that lies in part in the longest bridged stretch; after the last reading, what is missing to its end.
func (w *walk[T]) gapIn(record series.Series[T]) (gap series.Stretch) {
	a, _ := record.First()
	gap = series.Stretch{From: min(w.spanned.From, a.At), To: a.At}
	for i := 1; i < record.Len(); i++ {
		b, _ := record.At(i)
		if b.At > w.spanned.From && a.At < w.spanned.To && b.At-a.At > gap.Length() {
			gap = series.Stretch{From: a.At, To: b.At}
		}
		a = b
	}
	if w.spanned.To-a.At > gap.Length() {
		gap = series.Stretch{From: a.At, To: w.spanned.To}
	}
	return gap
}

// sagging: every time below pressure after it was there. The last fall of a record whose heat-off was not marked is taken for
// the end of the process, if that was held in full or the pressure is gone.
func (j *judgement[T]) sagging() {
	w := j.walk
	for _, s := range w.sags {
		if !s.ended && !j.run.Marks.HeatOff.Given && (w.isGone || w.spanned.Length() >= j.run.Schedule.Process) {
			continue
		}
		j.add(Finding{Kind: Sagged, Verdict: Met, When: s.Stretch, Required: figure(w.atLeast), Observed: "down to " + lower(s.lowest, w.atLeast),
			Citation: restartSource}, keepGoing(j.clock))
	}
}

// The shortest cooling in print, and the wait between weight and lid.
const (
	leastCooling = 20 * time.Minute
	lidWait      = 10 * time.Minute
)

var coolingSource = guide1("Recommended canners, p. 1-17")

// cooling: the pressure falls by itself, then the weight, ten minutes, then the lid.
func (j *judgement[T]) cooling() {
	m := j.run.Marks
	gone := m.Gone
	if !gone.Given && j.walk.isGone {
		gone = units.State(j.walk.gone)
	}
	from := len(j.all)
	if !m.HeatOff.Given {
		j.notMarked("turning off the heat", coolSource)
	}
	if !gone.Given {
		j.notMarked("no pressure left", coolSource)
	}
	if fell := gone.Value - m.HeatOff.Value; gone.Given && m.HeatOff.Given && fell < leastCooling {
		j.add(Finding{Kind: FastCooling, Verdict: CannotTell, When: series.Stretch{From: m.HeatOff.Value, To: gone.Value}, Required: "to cool by itself, 20 to 60 min in print",
			Observed: "no pressure after " + minutes(fell), Citation: coolingSource}, Step{})
	}
	opened := m.WeightOff
	if !opened.Given {
		opened = m.LidOff
	}
	if opened.Given {
		j.forced(opened.Value, gone)
	}
	j.opening(gone)
	for i := from; i < len(j.all); i++ {
		if j.all[i].Kind == NotMarked { // what is missing stands at the end
			j.all[i].When = at(max(j.last, m.HeatOff.Value))
		}
	}
}

// forced: the vent or the lid was opened before the pressure was gone, by the marks or by the record.
func (j *judgement[T]) forced(opened time.Duration, gone units.Stated[time.Duration]) {
	f := Finding{Kind: Forced, Verdict: NotMet, When: at(opened), Required: "no pressure left before the vent or lid is opened", Citation: coolSource}
	v, err := j.record.ValueAt(opened)
	switch {
	case gone.Given && opened < gone.Value:
		f.When, f.Observed = series.Stretch{From: opened, To: gone.Value}, "opened "+minutes(gone.Value-opened)+" before"
	case err == nil && quanta(v) > quanta(j.walk.slight): // outside the record the marks alone speak
		f.Observed = figure(v) + " when it was opened"
	default:
		return
	}
	j.add(f, Step{})
}

func (j *judgement[T]) opening(gone units.Stated[time.Duration]) {
	m := j.run.Marks
	weight := m.WeightOff
	if !weight.Given {
		weight = gone // it came off no earlier, or Forced says so
	}
	if waited := m.LidOff.Value - weight.Value; m.LidOff.Given && weight.Given && waited >= 0 && waited < lidWait {
		j.add(Finding{Kind: ShortWait, Verdict: NotMet, When: series.Stretch{From: weight.Value, To: m.LidOff.Value}, Required: minutes(lidWait) + " from weight to lid",
			Observed: minutes(waited), Citation: coolSource}, Step{})
		return
	}
	if !m.WeightOff.Given {
		j.notMarked("taking off the weight", coolSource)
	}
	if !m.LidOff.Given {
		j.notMarked("taking off the lid", coolSource)
	}
}
