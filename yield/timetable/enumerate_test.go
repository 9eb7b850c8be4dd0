package timetable_test

import (
	"time"

	"example.org/lakelarder/yield/timetable"
)

// An oracle tries all starts of a small problem in whole minutes against every duration of every step, minute by
// minute. It is written from what a plan promises and shares nothing with the package: no arcs, no pieces, no worst
// cases.
type oracle struct {
	p       timetable.Problem
	starts  []int
	best    int  // least finish, -1 without starts
	any     bool // the first starts will do
	lasting [][][]int
}

func minutes(d time.Duration) int { return int(d / time.Minute) }

// enumerate is the least finish in minutes, or -1 where no starts keep everything.
func enumerate(p timetable.Problem) int { return newOracle(p).found() }

// startable reports whether any starts keep everything.
func startable(p timetable.Problem) bool {
	o := newOracle(p)
	o.any = true
	return o.found() >= 0
}

func newOracle(p timetable.Problem) *oracle {
	o := &oracle{p: p, best: -1}
	for _, t := range p.Tasks {
		o.lasting = append(o.lasting, allDurations(t))
	}
	return o
}

func (o *oracle) found() int {
	o.next(0)
	return o.best
}

// allDurations are the combinations of durations of a task's steps, every whole minute from least to most.
func allDurations(t timetable.Task) [][]int {
	all := [][]int{nil}
	for _, s := range t.Steps {
		var longer [][]int
		for _, so := range all {
			for d := minutes(s.Takes.Most); d >= minutes(s.Takes.Least); d-- { // what is longest breaks most
				longer = append(longer, append(append([]int(nil), so...), d))
			}
		}
		all = longer
	}
	return all
}

func sum(list []int) int {
	n := 0
	for _, d := range list {
		n += d
	}
	return n
}

// next tries every start of a task that breaks nothing with the tasks before it, whatever they take. The first of the
// durations is the longest.
func (o *oracle) next(task int) {
	if task == len(o.p.Tasks) {
		o.finish()
		return
	}
	for start := 0; start < minutes(o.p.Until); start++ {
		if o.any && o.best >= 0 {
			return
		}
		if o.best >= 0 && start+sum(o.lasting[task][0]) >= o.best { // ends no sooner than what is known
			break
		}
		o.starts = append(o.starts[:task], start)
		if o.sound(task) {
			o.next(task + 1)
		}
	}
	o.starts = o.starts[:task]
}

// sound: with every combination of durations of the tasks placed so far.
func (o *oracle) sound(task int) bool {
	lasts := make([][]int, task+1)
	var all func(i int) bool
	all = func(i int) bool {
		if i < 0 {
			return kept(o.p, o.starts, lasts)
		}
		for _, d := range o.lasting[i] {
			lasts[i] = d
			if !all(i - 1) {
				return false
			}
		}
		return true
	}
	return all(task)
}

// finish ends a set of starts; with room to restart, after looking for a start of the second run that serves
// whichever task failed.
func (o *oracle) finish() {
	end := 0
	for i, s := range o.starts {
		for _, d := range o.lasting[i] {
			end = max(end, s+sum(d))
		}
	}
	if len(o.p.Restart.Tasks) > 0 {
		spare := o.spare()
		if spare < 0 {
			return
		}
		end = max(end, spare)
	}
	if o.best < 0 || end < o.best {
		o.best = end
	}
}

// spare is the soonest end of a second run that starts at one time whichever task it is of; -1 without one.
func (o *oracle) spare() int {
	for start := 0; start < minutes(o.p.Until); start++ {
		end := 0
		for i, t := range o.p.Tasks {
			if !again(o.p, t.Name) {
				continue
			}
			if !o.serves(i, start) {
				end = -1
				break
			}
			for _, d := range o.lasting[i] {
				end = max(end, start+sum(d))
			}
		}
		if end > 0 {
			return end
		}
	}
	return -1
}

func again(p timetable.Problem, task string) bool {
	for _, name := range p.Restart.Tasks {
		if name == task {
			return true
		}
	}
	return false
}

// serves: task i fails and runs again at a start. Its first run still occupies what it occupies; bounds between an
// end of it and a task that cannot be restarted, or the plan, hold for the second.
func (o *oracle) serves(failed, start int) bool {
	p := o.p
	p.Tasks = append(append([]timetable.Task(nil), p.Tasks...), p.Tasks[failed])
	last := len(p.Tasks) - 1
	name := p.Tasks[failed].Name
	p.Tasks[last].Name = "second run"
	p.Bounds = nil
	for _, b := range o.p.Bounds {
		to, from := again(p, b.To.Task), again(p, b.From.Task)
		switch {
		case b.To.Task == name && b.To.Edge == timetable.End && !from:
			b.To.Task = "second run"
		case b.From.Task == name && b.From.Edge == timetable.End && !to:
			b.From.Task = "second run"
		}
		p.Bounds = append(p.Bounds, b)
	}
	for _, each := range p.Restart.Tasks {
		p.Bounds = append(p.Bounds, timetable.After("second run", each))
	}
	if w := p.Restart.Within; w.Given {
		p.Bounds = append(p.Bounds, timetable.Bound{
			To: timetable.EndOf("second run"), Sense: timetable.NotAfter, From: timetable.EndOf(name), Gap: w.Value,
		})
	}
	full := newOracle(p)
	full.starts = append(append(full.starts, o.starts...), start)
	return full.sound(last)
}

// kept reports whether everything holds among the tasks that have a start, with these durations of their steps.
func kept(p timetable.Problem, starts []int, lasts [][]int) bool {
	for i, s := range starts {
		if s+sum(lasts[i]) > minutes(p.Until) {
			return false
		}
	}
	return boundsKept(p, starts, lasts) && resourcesKept(p, starts, lasts)
}

func boundsKept(p timetable.Problem, starts []int, lasts [][]int) bool {
	for _, b := range p.Bounds {
		to, known := moment(p, b.To, starts, lasts)
		from, both := moment(p, b.From, starts, lasts)
		if !known || !both {
			continue
		}
		limit := from + minutes(b.Gap)
		if b.Sense == timetable.NotBefore && to < limit || b.Sense == timetable.NotAfter && to > limit {
			return false
		}
	}
	return true
}

func moment(p timetable.Problem, m timetable.Moment, starts []int, lasts [][]int) (at int, known bool) {
	if m.Task == "" {
		return 0, true
	}
	for i := range starts {
		t := p.Tasks[i]
		if t.Name != m.Task {
			continue
		}
		at = starts[i]
		for k, s := range t.Steps {
			switch {
			case m.Edge == timetable.Start && (m.Step == "" || s.Name == m.Step):
				return at, true
			case m.Edge == timetable.End && m.Step != "" && s.Name == m.Step:
				return at + lasts[i][k], true
			}
			at += lasts[i][k]
		}
		return at, true
	}
	return 0, false
}

func resourcesKept(p timetable.Problem, starts []int, lasts [][]int) bool {
	end := 0
	for i, s := range starts {
		end = max(end, s+sum(lasts[i]))
	}
	for _, r := range p.Resources {
		for at := 0; at < end; at++ {
			used := 0
			for i, t := range p.Tasks[:len(starts)] {
				used += usedBy(t, r.Name, at-starts[i], lasts[i])
			}
			allowed := r.Capacity
			for _, w := range r.Closed {
				if at >= minutes(w.From) && at < minutes(w.To) {
					allowed = min(allowed, w.Left)
				}
			}
			if used > allowed {
				return false
			}
		}
	}
	return true
}

// usedBy is what a task takes of a resource so many minutes after its start.
func usedBy(t timetable.Task, resource string, after int, lasts []int) int {
	if after < 0 || after >= sum(lasts) {
		return 0
	}
	used := 0
	for _, u := range t.Uses {
		if u.Resource == resource {
			used += u.Count
		}
	}
	for k, s := range t.Steps {
		if after >= 0 && after < lasts[k] {
			for _, u := range s.Uses {
				if u.Resource == resource {
					used += u.Count
				}
			}
		}
		after -= lasts[k]
	}
	return used
}
