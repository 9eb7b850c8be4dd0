package canner

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
)

// doubts is the gate before every Met: what contradicts physics, itself or the marks cannot be judged.
func (j *judgement[T]) doubts() {
	if j.barometer.Kind == verdict.Impossible || j.barometer.Kind != 0 && isSteam[T]() { // a gauge does not ask for the air
		j.add(j.barometer, putRight)
	}
	j.counted()
	j.reachable()
	j.resting()
	j.offset()
	j.steaming()
	j.standing()
	j.absolute()
}

// impossible adds a finding that the run cannot be judged by.
func (j *judgement[T]) impossible(f verdict.Finding) {
	f.Kind, f.Verdict = verdict.Impossible, verdict.CannotTell
	j.add(f, putRight)
}

// reachable: a canner can hold what is recorded, for as long, and came to it no faster than a canner can.
func (j *judgement[T]) reachable() {
	d, h, what := &j.walk.Doubt, j.walk.Highest, quantityOf[T]()
	switch highest := h.Value; {
	case !h.Given:
	case quanta(highest.Value) > j.mostQ:
		j.impossible(verdict.Finding{
			Rule: RuleReading, What: what, When: at(highest), Stated: exactly(highest.Value), Wanted: atMostFigure(j.limits.most),
			Citation: mostSource,
		})
	case d.Long > j.run.Schedule.Process/2:
		j.impossible(verdict.Finding{
			Rule: RuleReading, What: what + " for most of the process", When: at(highest), Stated: exactly(highest.Value),
			Wanted: atMostFigure(j.long), Citation: longSource,
		})
	}
	if d.Least.Given && quanta(d.Least.Value) < j.leastQ {
		j.impossible(verdict.Finding{
			Rule: RuleReading, What: "lowest reading of " + what, Stated: exactly(d.Least.Value),
			Wanted: atLeastFigure(j.limits.least), Citation: leastSource,
		})
	}
	if jump := d.Jump.Value; d.Jump.Given {
		j.impossible(verdict.Finding{
			Rule: RuleReading, What: what + " after none a moment before", When: units.State(jump.When), Stated: exactly(jump.Value),
			Citation: jumpSource,
		})
	}
}

// needleAtZero is what an open canner shows.
var needleAtZero = units.InWords("a needle at zero")

// resting: no pressure while the vent is open, and none when weight and lid are off.
func (j *judgement[T]) resting() {
	d, what := &j.walk.Doubt, quantityOf[T]()
	if late := d.Late.Value; d.Late.Given && !j.openedUnderPressure() {
		j.impossible(verdict.Finding{
			Rule: RuleAtRest, What: what + " after weight or lid was off", When: at(late), Stated: exactly(late.Value), Wanted: needleAtZero,
			Citation: restSource,
		})
	}
	if !j.closed.Given {
		return // which is a finding
	}
	early, closed := d.Early, j.closed.Value
	if d.Above && (d.Since < closed-markSlack || quanta(d.Peak.Value.Value) >= j.limit) { // it takes minutes to come there
		higher(&early, d.Peak.Value, quanta(d.Peak.Value.Value))
	}
	switch {
	case early.Given:
		j.impossible(verdict.Finding{
			Rule: RuleAtRest, What: what + " while the vent was open", When: at(early.Value), Stated: exactly(early.Value.Value),
			Wanted: atMostFigure(j.limits.rest), Citation: ventSource,
		})
	case d.RestLow.Given && j.walk.First <= closed-markSlack && quanta(d.RestLow.Value) > j.calmQ:
		j.impossible(verdict.Finding{
			Rule: RuleAtRest, What: what + " that never came down while the vent was open", When: when(j.walk.First, closed),
			Stated: exactly(d.RestLow.Value), Wanted: needleAtZero, Citation: restSource,
		})
	}
}

// openedUnderPressure reports whether weight or lid came off under pressure: then what is shown afterwards is no
// surprise.
func (j *judgement[T]) openedUnderPressure() bool {
	for i := range j.findings {
		if j.findings[i].Rule == RuleOpening {
			return true
		}
	}
	return false
}

// steaming: what comes out of the vent is at the boiling point, all the published time but for the minute of a mark, and
// not as soon as the heat is on.
func (j *judgement[T]) steaming() {
	d, on := &j.walk.Doubt, j.run.Marks.HeatOn
	if took := j.steady.Value - on.Value; on.Given && j.steady.Given && took < heatUp {
		j.impossible(verdict.Finding{
			Rule: RuleSteam, What: "time from turning on the heat to steady steam", When: when(on.Value, j.steady.Value),
			Stated: units.Exactly(took), Wanted: units.AtLeast(heatUp), Citation: heatSource,
		})
	}
	vented, published := j.closed.Value-j.steady.Value, j.run.Schedule.Vent
	if !j.closed.Given || !j.steady.Given || d.Unboiled == 0 || vented < published || vented-d.Unboiled >= published-markSlack {
		return
	}
	f := verdict.Finding{
		Rule: RuleSteam, What: "time of steam at the boiling point from the open vent", When: when(j.steady.Value, j.closed.Value),
		Stated: units.Exactly(max(0, vented-d.Unboiled)), Wanted: units.AtLeast(published), Citation: steamSource,
	}
	if c := d.Coldest.Value; d.Coldest.Given {
		f.What, f.When, f.Stated, f.Wanted = "steam from the open vent", at(c), exactly(c.Value), atLeastFigure(j.cold)
	}
	j.impossible(f)
}

// standing: when the heat is off the pressure falls, and none is left when that is marked.
func (j *judgement[T]) standing() {
	m, shown := &j.run.Marks, j.walk.AtGone
	if shown.Given && quanta(shown.Value) > j.restQ {
		j.impossible(verdict.Finding{
			Rule: RuleCooling, What: quantityOf[T]() + " at the moment marked as none left", When: when(m.Gone.Value, m.Gone.Value),
			Stated: exactly(shown.Value), Wanted: atMostFigure(j.limits.rest), Citation: ventSource,
		})
	}
	off := m.HeatOff.Value
	if !m.HeatOff.Given || j.walk.LastUp <= off+leastCooling {
		return
	}
	j.impossible(verdict.Finding{
		Rule: RuleHeat, What: "time at " + quantityOf[T]() + " after the heat was off", When: when(off, j.walk.LastUp),
		Stated: units.Exactly(j.walk.LastUp - off), Wanted: units.LessThan(leastCooling), Citation: standsSource,
	})
}

// The steps of a dial that is read by eye, and how little an open pot moves an absolute sensor.
const (
	dialStep  = units.PSI / 4
	openMoves = 1 * units.Kilopascal
)

// absolute: a gauge that was never seen without pressure, hardly moves and shows what the air weighs is an absolute
// sensor in an open pot. A needle that stands on a line of its dial all the time is read by eye, and believed.
func (j *judgement[T]) absolute() {
	low, ok := any(j.walk.Doubt.Least.Value).(units.Pressure)
	high, _ := any(j.walk.Doubt.Most.Value).(units.Pressure)
	if !ok || high-low > openMoves || low < j.light || high > j.heavy || low == high && low%dialStep == 0 {
		return
	}
	j.impossible(verdict.Finding{
		Rule: RuleReading, What: "gauge pressure that never moves from the pressure of the air", When: when(j.walk.First, j.walk.Last.At),
		Stated: units.Between(low, high), Wanted: units.InWords("a reading without pressure"), Citation: absoluteSource,
	})
}

// doubtedTimer: who starts the timer again has seen something; the process is no longer than what it ran.
func (j *judgement[T]) doubtedTimer() {
	m, s := &j.run.Marks, &j.run.Schedule
	ran := m.HeatOff.Value - m.Timer.Value
	if !m.Timer.Given || !m.HeatOff.Given || j.walk.Held.Length() < s.Process || ran >= s.Process-markSlack {
		return
	}
	j.add(verdict.Finding{
		Rule: RuleTimer, What: "time on the timer when the heat was turned off", Kind: verdict.Short,
		Verdict: verdict.CannotTell,
		When:    when(m.Timer.Value, m.HeatOff.Value), Stated: units.Exactly(ran), Wanted: units.AtLeast(s.Process),
		By:       units.AmountOf(s.Process - ran),
		Citation: timerSource,
	}, Step{})
}
