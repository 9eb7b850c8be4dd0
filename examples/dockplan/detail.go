package main

import (
	"fmt"
	"time"

	"example.org/lakelarder/examples/internal/sheet"
	"example.org/lakelarder/pressure/canner"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/timetable"
)

// due is a published deadline, and when the plan comes to it where every step takes its longest.
type due struct {
	bound  timetable.Bound
	latest time.Duration
}

// deadlines are the published ones, each kind once with the moment that comes nearest to it.
func (a answer) deadlines() (all []due) {
	for _, b := range a.work.problem.Bounds {
		if b.Citation == (cite.Citation{}) {
			continue
		}
		d := due{b, a.latest(b.To)}
		same := -1
		for i, o := range all {
			if o.bound.Name == b.Name {
				same = i
			}
		}
		switch {
		case same < 0:
			all = append(all, d)
		case d.latest > all[same].latest:
			all[same] = d
		}
	}
	if again := a.again(); again.bound.Gap > 0 {
		all = append(all, again)
	}
	return all
}

// again is the second run of a load, held against the load that may have ended first.
func (a answer) again() (d due) {
	for _, s := range a.work.table.Slots {
		for _, load := range a.work.problem.Restart.Tasks {
			if by := s.Soonest + a.limits.again.within; s.Task == load && (d.bound.Gap == 0 || by < d.bound.Gap) {
				d.bound = timetable.Bound{
					Name: "a load begun again, within a day of its first end", Gap: by, Citation: a.limits.again.citation,
				}
				d.latest = a.work.table.Spare.Latest
			}
		}
	}
	return d
}

// latest is when a moment comes if every step before it takes its longest; for what may be run again, in the second
// run.
func (a answer) latest(m timetable.Moment) time.Duration {
	t := a.work.table
	for _, s := range t.Slots {
		if s.Task != m.Task {
			continue
		}
		last := momentOf(s, m)
		for _, again := range a.work.problem.Restart.Tasks {
			if again == m.Task && m.Edge == timetable.End {
				last = max(last, t.Spare.Start+last-s.Start)
			}
		}
		return last
	}
	return 0
}

func momentOf(s timetable.Slot, m timetable.Moment) time.Duration {
	if m.Step == "" && m.Edge == timetable.Start {
		return s.Start
	}
	for _, step := range s.Steps {
		switch {
		case step.Step != m.Step:
		case m.Edge == timetable.Start:
			return step.Latest
		default:
			return step.End
		}
	}
	return s.Latest
}

// printSteps is every step of the tasks that have several, when it may start and when it has ended at the latest.
func (a answer) printSteps(p *sheet.Sheet) {
	p.Heading("Step by step: starts not before, and ends at the latest")
	for _, s := range a.work.table.Slots {
		if len(s.Steps) < 2 {
			continue
		}
		line := s.Task + ": "
		for i, step := range s.Steps {
			if i > 0 {
				line += ", "
			}
			line += step.Step + " " + a.until(s.Start, step.Earliest) + " to " + a.until(s.Start, step.End)
		}
		p.Line("%s", line)
	}
}

// part is a part of a load.
type part struct {
	name, symbol string
	span         canner.Span
}

// parts are those from the heat to the lid, with the longest heating up that the plan reckons with.
func (k *kitchen) parts() []part {
	c := k.cycle
	c.HeatUp.Most = k.heatUp
	return []part{
		{"heat up", "u", c.HeatUp}, {"vent", "v", c.Vent}, {"pressurize", "g", c.Pressurize}, {"process", "t", c.Process},
		{"cool down", "d", c.CoolDown}, {"wait", "w", c.Wait},
	}
}

// printInputs is what the plan reckons with, published and the household's own.
func (a answer) printInputs(p *sheet.Sheet) {
	p.Heading("What it reckons with")
	p.Line("%s, work from %s, first fish %s. %s", a.Place, a.when(0), a.when(-a.since), a.About)
	for _, part := range a.parts() {
		p.Item("%s: %s%s", part.name, between(part.span.Least, part.span.Most), p.From(part.span.Citation))
	}
	p.Item("a load: %d jars%s; %s of fish in each, at most %s%s", a.load.Jars, p.From(a.load.Packing.Citation),
		sheet.Text(p, a.Canner.Fill), sheet.Down(p, a.fill.Most), p.From(a.fill.Citation))
	p.Item("of a fish of %s: %s for the jars%s, %s for the smoker%s", sheet.Text(p, a.Mass), a.jarred.of,
		p.From(a.jarred.citation), a.filets.of, p.From(a.filets.citation))
	if a.Smoker.Fish > 0 {
		p.Item("in salt %s%s; hold %s at %s or above%s; cold within %s%s", units.Lasting(a.salting.Time),
			p.From(a.salting.Citation), units.Lasting(a.smoking.Limit.Hold),
			sheet.Up(p, a.smoking.Limit.AtLeast), p.From(a.smoking.Limit.Citation), units.Lasting(a.cooled()),
			p.From(a.cooling.Citation))
	}
	rooms := ""
	for i, r := range a.rooms {
		if i > 0 {
			rooms += "; "
		}
		rooms += fmt.Sprintf("%s %d less %d", r.name, r.limit, r.counts)
	}
	p.Item("your rule: %s", rooms)
	p.Item("meals in the weeks: %d of %s; of every fish %s is eaten", a.meals, sheet.Text(p, a.Intake.Meal),
		sheet.Up(p, a.each))
	h := a.Home
	p.Item("your own, as stated: gut %s a fish, ice %s, cut up %s a fish and on ice up to %s, refill %s",
		h.Gut, h.Ice, h.Cut, units.Lasting(h.Waits), h.Refill)
	p.Item("%d people, asleep %s to %s", h.People, a.clockOf(h.Sleep.Value), a.clockOf(h.Wake.Value))
	if s := a.Smoker; s.Fish > 0 {
		p.Item("your own: fillet %s a fish, into salt %s, rinse %s, out of the smoker %s, in salt at most %s longer",
			s.Fillet, s.LayIn, s.Rinse, s.TakeOut, units.Lasting(s.MayLie))
	}
}

func between(least, most time.Duration) string {
	if least == most {
		return units.Lasting(least)
	}
	return units.Lasting(least) + " to " + units.Lasting(most)
}

// String is the least and the most.
func (t takes) String() string { return between(t.Least, t.Most) }

// printDeadlines is each kind of deadline, and how near the plan comes to it at its latest.
func (a answer) printDeadlines(p *sheet.Sheet) {
	p.Heading("Deadlines, with every step at its longest")
	for _, d := range a.deadlines() {
		p.Item("%s: by %s, at the latest %s, %s to spare%s", d.bound.Name, a.when(d.bound.Gap), a.when(d.latest),
			units.Lasting(d.bound.Gap-d.latest), p.From(d.bound.Citation))
	}
	p.Item("Landing, held against what is published after a catch: %s%s", a.landing.Verdict,
		p.FromEach(a.landing.Citations()))
	for _, f := range a.landing.Findings {
		p.Item("  %s%s", f.Text(p.System), p.From(f.Citation))
	}
}
