package canner

import (
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
)

// Audit holds the record of a run, of gauge pressures or of steam temperatures, against its schedule. Between readings
// the value runs in a straight line; a stretch with a gap longer than MaxGap is not believed. Only an unbroken stretch at
// or above pressure counts, after the vent is closed and before the heat is off; any sag restarts the clock, and stated
// errors count on the safe side. On a record that is still growing, Clock says what is owed.
//
// What contradicts physics, itself or the marks, and what must be stated and is not, is a finding that makes the verdict
// CannotTell: see the rules. It never makes it milder. The schedule must be one of process, unchanged, and the marks in
// the order of a run: otherwise a ContradictionError. A dial off by more than 2 psi is an UnsuitableError, a MaxGap not
// from 1 s to 15 min and a bare number where a quantity was meant are range errors, an empty record series.ErrEmpty. A
// run that falls short is a Report, not an error. More pressure, up to what anybody holds, or a longer hold never makes a
// verdict worse. Source: the schedule's citations and Guide 1, rev. 2015, pp. 1-20 to 1-22.
func Audit[T Record](run Run, record series.Series[T]) (Report, error) {
	var c course[T]
	if err := c.open(&run); err != nil {
		return Report{}, err
	}
	if record.Len() == 0 {
		return Report{}, series.ErrEmpty
	}
	var w walk[T]
	w.refresh(&c)
	for i := 0; i < record.Len(); i++ {
		reading, _ := record.At(i)
		w.take(&c, reading)
	}
	return w.report(&c), nil
}

// report is what was walked through, judged. The walk itself is closed by it.
func (w *walk[T]) report(c *course[T]) Report {
	r := Report{
		Required: amount(c.atLeast), Process: c.run.Schedule.Process, MaxGap: c.run.MaxGap, LargestGap: w.LargestGap,
	}
	over := c.run.Marks.over() || w.Gone.Given
	if !over {
		r.Clock = w.clock(c)
	}
	w.end(c)
	r.Held, r.Bridged = w.Held, w.Spanned.Length()
	r.Margin, r.HiddenSag = c.margin(w.LowHeld), w.PauseHeld
	j := judgement[T]{course: c, walk: w, over: over, clock: r.Clock}
	j.judge()
	r.Report = verdict.Of(j.findings, cautionsOf(c))
	if !over {
		r.Verdict = verdict.Worst(r.Verdict, verdict.CannotTell)
	}
	r.Next = j.next(r.Report)
	r.Steps = j.steps
	if over {
		r.stepsAfter()
	}
	return r
}

// judgement turns what was walked through into findings and advice.
type judgement[T Record] struct {
	*course[T]
	walk     *walk[T]
	over     bool
	clock    Clock
	findings []verdict.Finding
	steps    []Step
}

func (j *judgement[T]) judge() {
	j.place()
	j.loaded()
	j.venting()
	j.timing()
	j.height()
	j.holding()
	j.sagging()
	if j.over {
		j.doubtedTimer()
		j.cooling()
	}
	j.doubts()
	j.noticed()
}

// add keeps a finding; while the run goes on, with what to do about it.
func (j *judgement[T]) add(f verdict.Finding, do Step) {
	j.findings = append(j.findings, f)
	if j.over || do.Action == 0 {
		return
	}
	if _, said := (Report{Steps: j.steps}).StepFor(f.Rule); said {
		return
	}
	do.Rule = f.Rule
	j.steps = append(j.steps, do)
}
