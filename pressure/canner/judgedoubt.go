package canner

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
)

// doubts is the gate before every Met: what contradicts physics, itself or the marks cannot be judged.
func (j *judgement[T]) doubts() {
	if j.barometer.Kind == verdict.Impossible || j.barometer.Kind != 0 && quantityOf[T]() == "steam" {
		j.add(j.barometer, putRight)
	}
	j.reachable()
	j.resting()
	j.steaming()
	j.standing()
	j.absolute()
}

// impossible adds a finding that the run cannot be judged by.
func (j *judgement[T]) impossible(rule verdict.Rule, what string, at units.Stated[series.Stretch], stated, wanted units.Figure, c cite.Citation) {
	j.add(verdict.Finding{
		Rule: rule, What: what, Kind: verdict.Impossible, Verdict: verdict.CannotTell, When: at, Stated: stated, Wanted: wanted, Citation: c,
	}, putRight)
}

// reachable: a canner can hold what is recorded, and came to it no faster than a canner can.
func (j *judgement[T]) reachable() {
	d, h := &j.walk.Doubt, j.walk.Highest
	if h.Given && quanta(h.Value.Value) > j.mostQ {
		j.impossible(RuleReading, quantityOf[T](), when(h.Value.At, h.Value.At), exactly(h.Value.Value), atMostFigure(j.limits.most), mostSource)
	}
	if d.Long > j.run.Schedule.Process/2 && h.Given {
		j.impossible(RuleReading, quantityOf[T]()+" for most of the process", when(h.Value.At, h.Value.At), exactly(h.Value.Value), atMostFigure(j.long), longSource)
	}
	if jump := d.Jump; jump.Given {
		j.impossible(RuleReading, quantityOf[T]()+" at a jump from "+amount(jump.Value.Before).Text(units.Both, units.Nearest), units.State(jump.Value.When),
			exactly(jump.Value.Value), units.Figure{}, jumpSource)
	}
}

// resting: no pressure while the vent is open, and none when weight and lid are off.
func (j *judgement[T]) resting() {
	d := &j.walk.Doubt
	if late := d.Late; late.Given && !j.openedUnderPressure() {
		j.impossible(RuleAtRest, quantityOf[T]()+" after weight or lid was off", when(late.Value.At, late.Value.At), exactly(late.Value.Value),
			atMostFigure(j.calm), restSource)
	}
	if !j.closed.Given {
		return // which is a finding
	}
	early := d.Early
	if d.Above && (d.Since < j.closed.Value-markSlack || quanta(d.Peak.Value.Value) >= j.limit) { // it takes minutes to come there
		higher(&early, d.Peak.Value, quanta(d.Peak.Value.Value))
	}
	switch closed := j.closed.Value; {
	case early.Given:
		j.impossible(RuleAtRest, quantityOf[T]()+" while the vent was open", when(early.Value.At, early.Value.At), exactly(early.Value.Value),
			atMostFigure(j.limits.rest), restSource)
	case d.RestLow.Given && j.walk.First <= closed-markSlack && quanta(d.RestLow.Value) > j.calmQ:
		j.impossible(RuleAtRest, quantityOf[T]()+" that never came down while the vent was open", when(j.walk.First, closed), exactly(d.RestLow.Value),
			atMostFigure(j.calm), restSource)
	}
}

// openedUnderPressure reports whether weight or lid came off under pressure: then what is shown afterwards is no surprise.
func (j *judgement[T]) openedUnderPressure() bool {
	for i := range j.findings {
		if j.findings[i].Rule == RuleOpening {
			return true
		}
	}
	return false
}

// steaming: what comes out of the vent is at the boiling point, all the published time but for the minute of a mark.
func (j *judgement[T]) steaming() {
	d := &j.walk.Doubt
	if on := j.run.Marks.HeatOn; on.Given && j.steady.Given && j.steady.Value-on.Value < heatUp {
		j.impossible(RuleSteam, "time from turning on the heat to steady steam", when(on.Value, j.steady.Value), units.Exactly(j.steady.Value-on.Value),
			units.AtLeast(heatUp), heatSource)
	}
	if !j.closed.Given || !j.steady.Given || d.Cold == 0 {
		return
	}
	vented := j.closed.Value - j.steady.Value
	if vented < j.run.Schedule.Vent || vented-d.Cold >= j.run.Schedule.Vent-markSlack {
		return
	}
	f := verdict.Finding{
		Rule: RuleSteam, What: "time of steam at the boiling point from the open vent", Kind: verdict.Impossible, Verdict: verdict.CannotTell,
		When: when(j.steady.Value, j.closed.Value), Stated: units.Exactly(max(0, vented-d.Cold)), Wanted: units.AtLeast(j.run.Schedule.Vent), Citation: steamSource,
	}
	if c := d.Coldest; c.Given {
		f.What, f.When, f.Stated, f.Wanted = "steam from the open vent", when(c.Value.At, c.Value.At), exactly(c.Value.Value), atLeastFigure(j.cold)
	}
	j.add(f, putRight)
}

// standing: when the heat is off the pressure falls.
func (j *judgement[T]) standing() {
	if at := j.walk.AtGone; at.Given && quanta(at.Value) > j.restQ {
		gone := j.run.Marks.Gone.Value
		j.impossible(RuleCooling, quantityOf[T]()+" when none was marked to be left", when(gone, gone), exactly(at.Value), atMostFigure(j.limits.rest), restSource)
	}
	off := j.run.Marks.HeatOff
	if !off.Given || j.walk.LastUp <= off.Value+leastCooling {
		return
	}
	j.impossible(RuleHeat, quantityOf[T]()+" that stands after the heat is off", when(off.Value, j.walk.LastUp), atLeastFigure(j.atLeast),
		units.LessThan(leastCooling).With("until it begins to fall"), standsSource)
}

// The steps of a dial that is read by eye, and how little an open pot moves an absolute sensor.
const (
	dialStep  = units.PSI / 4
	openMoves = 1 * units.Kilopascal
)

// absolute: a gauge that was never seen without pressure, hardly moves and shows what the air weighs is an absolute sensor
// in an open pot. A needle that stands on a line of its dial all the time is read by eye, and believed.
func (j *judgement[T]) absolute() {
	low, ok := any(j.walk.Doubt.Least.Value).(units.Pressure)
	high, _ := any(j.walk.Doubt.Most.Value).(units.Pressure)
	if !ok || high-low > openMoves || low < j.weather[0] || high > j.weather[1] || low == high && low%dialStep == 0 {
		return
	}
	j.impossible(RuleReading, "gauge pressure that never moves from the pressure of the air", when(j.walk.First, j.walk.Last.At), units.Between(low, high),
		units.LessThan(j.weather[0]).With("or a reading without pressure"), absoluteSource)
}

// doubtedTimer: who starts the timer again has seen something; the process is no longer than what it ran.
func (j *judgement[T]) doubtedTimer() {
	m, s := &j.run.Marks, &j.run.Schedule
	ran := m.HeatOff.Value - m.Timer.Value
	if !m.Timer.Given || !m.HeatOff.Given || j.walk.Held.Length() < s.Process || ran >= s.Process-markSlack {
		return
	}
	j.add(verdict.Finding{
		Rule: RuleTimer, What: "time on the timer when the heat was turned off", Kind: verdict.Short, Verdict: verdict.CannotTell,
		When: when(m.Timer.Value, m.HeatOff.Value), Stated: units.Exactly(ran), Wanted: units.AtLeast(s.Process), By: units.AmountOf(s.Process - ran),
		Citation: timerSource,
	}, Step{})
}
