package canner

import (
	"sort"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
)

// Audit holds the record of a run, of gauge pressures or of steam temperatures, against its schedule. Between readings
// the value runs in a straight line; a stretch with a gap longer than MaxGap is not believed. Only an unbroken stretch at or
// above pressure counts, after the vent is closed and before the heat is off; any sag restarts the clock. On a record that is
// still growing, Clock says what is owed.
//
// The schedule must be one of process, with the altitude in its band, the gauge of its kind and the marks in the order of a
// run: otherwise a ContradictionError. A dial off by more than 2 psi is an UnsuitableError, a MaxGap not above zero and up to
// 15 min a units.RangeError, an empty record series.ErrEmpty. A run that falls short is a Report, not an error.
// More pressure while the heat is on, or a longer hold, never makes a verdict worse. Source: the schedule's citations and Guide 1, rev. 2015, pp. 1-20 to 1-22.
func Audit[T Record](run Run, record series.Series[T]) (Report, error) {
	l, err := limitsOf[T](run)
	if err != nil {
		return Report{}, err
	}
	last, ok := record.Last()
	if !ok {
		return Report{}, series.ErrEmpty
	}
	m := run.Marks
	w := walk[T]{limits: l, maxGap: run.MaxGap, from: m.VentClosed.Value, to: last.At, heatOff: m.HeatOff.Value, timer: longestRun}
	if m.HeatOff.Given {
		w.to = m.HeatOff.Value
	}
	if m.Timer.Given {
		w.timer = m.Timer.Value
	}
	w.through(record)

	r := Report{Required: figure(l.atLeast), Process: run.Schedule.Process, MaxGap: run.MaxGap, Held: w.held, Bridged: w.spanned.Length(),
		LargestGap: record.LongestGap(), Cautions: auditCautions[T](run)}
	over := m.over() || w.isGone
	if !over {
		r.Clock = clock(r.Process, w.up, max(w.from, w.since), max(last.At, w.from))
	}
	j := judgement[T]{run: run, walk: &w, record: record, last: last.At, over: over, clock: r.Clock}
	r.Findings = j.findings()
	r.Verdict = Met
	for _, f := range r.Findings {
		r.Verdict = r.Verdict.worse(f.Verdict)
	}
	if !over {
		r.Verdict = r.Verdict.worse(CannotTell)
	}
	r.Next = j.next(r)
	for i := range r.Findings {
		if over && r.Findings[i].Verdict != Met {
			r.Findings[i].Do = r.Next[0]
		}
	}
	return r, nil
}

// judgement turns what was walked through into findings and advice.
type judgement[T Record] struct {
	run    Run
	walk   *walk[T]
	record series.Series[T]
	last   time.Duration
	over   bool
	clock  Clock
	all    []Finding
}

func (j *judgement[T]) findings() []Finding {
	j.venting()
	j.timing()
	j.holding()
	j.sagging()
	if j.over {
		j.cooling()
	}
	sort.SliceStable(j.all, func(a, b int) bool { return j.all[a].When.From < j.all[b].When.From })
	return j.all
}

// add keeps a finding; while the run goes on, with what to do about it.
func (j *judgement[T]) add(f Finding, do Step) {
	if !j.over {
		f.Do = do
	}
	j.all = append(j.all, f)
}

func (j *judgement[T]) notMarked(moment string, c cite.Citation) {
	j.add(Finding{Kind: NotMarked, Verdict: CannotTell, Required: "the moment of " + moment, Observed: "not written down", Citation: c}, Step{})
}

// next returns what to do now.
func (j *judgement[T]) next(r Report) []Step {
	if !j.over {
		if r.Verdict == NotMet {
			return []Step{startAgain}
		}
		return []Step{keepGoing(r.Clock)}
	}
	if r.Verdict == Met {
		return []Step{keep}
	}
	if r.Verdict == CannotTell && j.pending() {
		return []Step{wait}
	}
	ended := j.last
	if j.run.Marks.HeatOff.Given {
		ended = min(ended, j.run.Marks.HeatOff.Value)
	}
	return salvage(j.run, ended)
}

// pending reports whether all that is missing are the moments of a cooling that still goes on.
func (j *judgement[T]) pending() bool {
	if j.run.Marks.LidOff.Given || !j.run.Marks.HeatOff.Given {
		return false
	}
	for _, f := range j.all {
		if f.Verdict != Met && (f.Kind != NotMarked || f.When.From < j.run.Marks.HeatOff.Value) {
			return false
		}
	}
	return true
}

// auditCautions are what no record shows.
func auditCautions[T Record](run Run) []cite.Caution {
	all := []cite.Caution{
		{Text: "A record shows pressure or temperature, never how the jars were packed, whether the lids sealed or the fish was sound.",
			Citation: cite.Citation{Where: "usual caution", Basis: cite.Practice}},
		{Text: "Food that may not have been canned exactly as published is not tasted before it was boiled as the guide says.",
			Citation: guide1("For Safety's Sake, p. iii")},
	}
	var none T
	switch any(none).(type) {
	case units.Temperature:
		all = append(all, cite.Caution{Text: "The steam temperature required is that of pure steam at the schedule's pressure in this air. The thermometer's own error is not in it.",
			Citation: cite.Citation{Source: cite.IAPWSR797, Where: "region 4", Basis: cite.Computed}})
	default:
		all = append(all, cite.Caution{Text: "A record of pressures does not show air left in the canner, which makes the load colder than the gauge says: venting in full is what keeps it out.",
			Citation: run.Schedule.VentCitation})
	}
	if run.Gauge.ReadsHigh < 0 {
		all = append(all, notSubtracted)
	}
	if run.Schedule.Unverified() {
		all = append(all, cite.Caution{Text: "Part of this schedule was not seen in print: check it.", Citation: run.Schedule.Citation})
	}
	return all
}
