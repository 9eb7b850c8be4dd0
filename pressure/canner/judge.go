package canner

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
)

// when is a stretch of the record that a finding is about.
func when(from, to time.Duration) units.Stated[series.Stretch] {
	return units.State(series.Stretch{From: from, To: to})
}

// at is the moment of a reading.
func at[T Record](r series.Reading[T]) units.Stated[series.Stretch] { return when(r.At, r.At) }

// notMarked finds a moment that decides and that nobody wrote down.
func (j *judgement[T]) notMarked(rule verdict.Rule, moment string, c cite.Citation) {
	j.add(verdict.Finding{
		Rule: rule, What: "the moment of " + moment, Kind: verdict.Missing, Verdict: verdict.CannotTell, Citation: c,
	}, putRight)
}

// place: the stove stood where the schedule was found for.
func (j *judgement[T]) place() {
	stove, wanted := j.run.Altitude, j.run.Schedule.Altitude.Value
	if stove.Given && stove.Value == wanted {
		return
	}
	f := verdict.Finding{
		Rule: RuleAltitude, What: "altitude of the stove", Kind: verdict.Missing, Verdict: verdict.CannotTell,
		Wanted: units.Exactly(wanted), Citation: altitudeSource,
	}
	if stove.Given {
		off := stove.Value - wanted
		f.Kind, f.Stated, f.By = verdict.Different, units.Exactly(stove.Value), units.AmountOf(max(off, -off))
	}
	j.add(f, putRight)
}

// venting: steady steam for the published minutes; for quarts, heating and venting together.
func (j *judgement[T]) venting() {
	m, s := &j.run.Marks, &j.run.Schedule
	if !m.SteadySteam.Given {
		j.notMarked(RuleVent, "steady steam from the vent", s.VentCitation)
	}
	if !m.VentClosed.Given {
		if j.over || j.walk.Reached {
			j.notMarked(RuleVent, "closing the vent", s.VentCitation)
		}
		return
	}
	closed := m.VentClosed.Value
	if m.SteadySteam.Given {
		j.lasting(verdict.Finding{
			Rule: RuleVent, What: "steady steam from the vent", Citation: s.VentCitation,
		}, m.SteadySteam.Value, closed, s.Vent)
	}
	from := m.SteadySteam // heating is at least as long as venting
	if m.HeatOn.Given {
		from = m.HeatOn
	}
	if s.ComeUp == 0 || from.Given && closed-from.Value >= s.ComeUp {
		return
	}
	if !m.HeatOn.Given {
		j.notMarked(RuleComeUp, "turning on the heat", s.ComeUpCitation)
		return
	}
	j.lasting(verdict.Finding{
		Rule: RuleComeUp, What: "heating and venting together", Citation: s.ComeUpCitation,
	}, from.Value, closed, s.ComeUp)
}

// lasting finds that something took less time than published; nothing mends it.
func (j *judgement[T]) lasting(f verdict.Finding, from, to, wanted time.Duration) {
	took := to - from
	if took >= wanted {
		return
	}
	f.Kind, f.Verdict, f.When = verdict.Short, verdict.NotMet, when(from, to)
	f.Stated, f.Wanted, f.By = units.Exactly(took), units.AtLeast(wanted), units.AmountOf(wanted-took)
	j.add(f, startAgain)
}

// timing: the timer is not started before the pressure is there. Outside the record nothing shows that it was early.
func (j *judgement[T]) timing() {
	shown := j.walk.AtTimer
	if !shown.Given || quanta(shown.Value) >= j.limit {
		return
	}
	timer := j.run.Marks.Timer.Value
	j.add(verdict.Finding{
		Rule: RuleTimer, What: quantityOf[T]() + " when the timer was started", Kind: verdict.TooSoon,
		Verdict: verdict.Met, When: when(timer, timer),
		Stated: exactly(shown.Value), Wanted: atLeastFigure(j.atLeast), Citation: timerSource,
	}, keepGoing(j.clock))
}

// height: more pressure than is slightly above costs quality, not safety.
func (j *judgement[T]) height() {
	h := j.walk.Highest
	if !h.Given || quanta(h.Value.Value) <= quanta(j.high) {
		return
	}
	j.add(verdict.Finding{
		Rule: RulePressure, What: quantityOf[T](), Kind: verdict.Over, Verdict: verdict.Met,
		When:   when(h.Value.At, h.Value.At),
		Stated: exactly(h.Value.Value), Wanted: atMostFigure(j.high), By: amount(h.Value.Value).Minus(amount(j.high)),
		Citation: slightlyAbove,
	}, Step{})
}

// holding: the longest unbroken stretch, and whether the pressure was ever there.
func (j *judgement[T]) holding() {
	w, s := j.walk, &j.run.Schedule
	held := w.Held.Length()
	if !j.over || held >= s.Process {
		return
	}
	switch {
	case w.Spanned.Length() >= s.Process:
		j.add(verdict.Finding{
			Rule: RuleGap, What: "time between readings", Kind: verdict.Unobserved, Verdict: verdict.CannotTell,
			When:   units.State(w.GapHeld),
			Stated: units.Exactly(w.GapHeld.Length()),
			Wanted: units.AtMost(j.run.MaxGap).With("and a reading at both ends"), Citation: gapSource,
		}, Step{})
	case !w.Reached || !w.Highest.Given:
		j.add(j.neverReached(), Step{})
	default:
		j.add(verdict.Finding{
			Rule: RuleHold, What: "time at " + quantityOf[T](), Kind: verdict.Short, Verdict: verdict.NotMet,
			When:   units.State(w.Held),
			Stated: units.Exactly(held), Wanted: units.AtLeast(s.Process).With("without a break"),
			By: units.AmountOf(s.Process - held), Citation: s.Citation,
		}, Step{})
	}
}

func (j *judgement[T]) neverReached() verdict.Finding {
	f := verdict.Finding{
		Rule: RulePressure, What: quantityOf[T](), Kind: verdict.Short, Verdict: verdict.NotMet,
		When:   when(j.from, max(j.from, j.ended())),
		Stated: units.InWords("no reading from vent to end of heat"), Wanted: atLeastFigure(j.atLeast),
		Citation: j.run.Schedule.Citation,
	}
	if h := j.walk.Highest; h.Given {
		f.When, f.Stated = at(h.Value), exactly(h.Value.Value)
		f.By = amount(j.atLeast).Minus(amount(h.Value.Value))
	}
	return f
}

// ended is when the window ends: the heat off, or the record at its end.
func (j *judgement[T]) ended() time.Duration {
	if j.run.Marks.HeatOff.Given {
		return j.to
	}
	return j.walk.Last.At
}

// sagging: every time below pressure after it was there. The last fall of a record whose heat-off was not marked is
// taken for the end of the process, if that was held in full or the pressure is gone.
func (j *judgement[T]) sagging() {
	w := j.walk
	for i := range w.Sags[:w.SagCount] {
		s := &w.Sags[i]
		if !s.Ended && !j.run.Marks.HeatOff.Given && (w.Gone.Given || w.Spanned.Length() >= j.run.Schedule.Process) {
			continue
		}
		f := verdict.Finding{
			Rule: RuleSag, What: quantityOf[T](), Kind: verdict.Short, Verdict: verdict.Met,
			When:   units.State(s.Stretch),
			Stated: exactly(s.Lowest), Wanted: atLeastFigure(j.atLeast),
			By: amount(j.atLeast).Minus(amount(s.Lowest)), Citation: restartSource,
		}
		if s.Count > 1 {
			f.What += ", the lowest of " + units.Count(s.Count).String() + " sags"
		}
		j.add(f, keepGoing(j.clock))
	}
}
