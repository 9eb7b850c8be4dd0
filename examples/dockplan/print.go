package main

import (
	"fmt"
	"strings"

	"example.org/lakelarder/examples/internal/sheet"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/timetable"
)

// print writes the answer, why it is so and what to do; then the timetable, and behind the cautions its steps and
// what it is made of.
func (a answer) print(p *sheet.Sheet) {
	a.printAnswer(p)
	a.printWhy(p)
	if a.keep > 0 {
		a.printDo(p)
		a.printTable(p)
	}
	if a.inTime.fish < a.Fish {
		a.printGive(p)
	}
	a.warn(p)
	p.Cautions()
	if a.keep > 0 {
		a.printDeadlines(p)
		a.printSteps(p)
	}
	a.printInputs(p)
	p.Close()
}

func (a answer) printAnswer(p *sheet.Sheet) {
	if a.keep == 0 {
		p.Line("RESULT: keep no fish today: %s.", a.decides())
	} else {
		p.Line("RESULT: keep at most %s today, of %d caught or hoped for: %s.", fish(a.keep), a.Fish, a.decides())
	}
	if !a.Advisory.Given {
		p.Line("No advisory is stated for this water: look it up. Reckoned with %s a week%s.",
			counted(a.advice.Meals, "serving"), p.From(a.advice.Citation))
	}
}

// decides is which of the four is the least; none where all the fish can be kept.
func (a answer) decides() string {
	switch {
	case a.keep == a.Fish:
		return "all of them, in time and by every limit that you stated"
	case a.keep == a.rule:
		return "the possession rule allows no more"
	case a.keep == a.advisory:
		return "the advisory permits no more"
	case a.keep == a.year:
		return "the year eats no more"
	}
	return "no more can be processed in time"
}

func (a answer) printWhy(p *sheet.Sheet) {
	p.Line("Why: in time: %s of %d can be processed%s; %s", fish(a.inTime.fish), a.Fish,
		p.From(cite.Citation{Where: "search over the number of fish", Basis: cite.Computed}), a.inTime.sure(a.Fish))
	r := a.least()
	p.Line("Why: by your rule, shape %q%s: %s (%s %d less %d)", a.Rule.Shape, p.From(a.Rule.Shape.Citation()),
		fish(a.rule), r.name, r.limit, r.counts)
	p.Line("Why: for %d weeks: %s (%d people eat %d, %d are there)", a.Year.Weeks, fish(a.year), a.Year.People,
		a.eats, a.Year.Have)
	said := "by the advisory"
	if !a.Advisory.Given {
		said = "advisory not stated, by the federal advice"
	}
	p.Line("Why: %s%s: %s (%d for all meals, %d are there)", said, p.From(a.advice.Citation), fish(a.advisory),
		a.allowed, a.Year.Have)
}

func (t inTime) sure(of int) string {
	switch {
	case t.fish == of:
		return "that is all"
	case t.proven:
		return fmt.Sprintf("proven: no fixed starts do for %d", t.fish+1)
	}
	return "the best found, and more is not proven impossible"
}

func (a answer) printDo(p *sheet.Sheet) {
	w := a.work
	p.Do("first, from %s: gut and ice all %s, the last on ice by %s%s", a.when(w.table.Slots[0].Start), fish(a.keep),
		a.when(a.limits.gut.within-a.since), p.From(a.limits.gut.citation))
	var parts []string
	if w.loads > 0 {
		parts = append(parts, fmt.Sprintf("%s into %d jars, loads: %d, the last of %d jars", fish(w.jarred), w.jars,
			w.loads, w.last))
	}
	if w.smoked > 0 {
		parts = append(parts, fmt.Sprintf("%s into the smoker, each in %s of salt", fish(w.smoked),
			sheet.Up(p, a.cure.Salt)))
	}
	if let := a.Fish - a.keep; let > 0 {
		parts = append(parts, fmt.Sprintf("let %d go, alive, or do not catch them", let))
	}
	p.Do("%s", strings.Join(parts, "; "))
	p.Do("start nothing before its time; gauge, probe and scale end a step, never the clock")
}

// printTable is the slots by the clock.
func (a answer) printTable(p *sheet.Sheet) {
	t := a.work.table
	how := fmt.Sprintf("the soonest that was found; none ends before %s", a.when(t.NoSooner))
	if t.Least() {
		how = "no fixed starts end sooner, proven"
	}
	p.Heading("Timetable for " + fish(a.keep))
	p.Line("All ended by %s, room for a second run included: %s%s.", a.when(t.Finish), how,
		p.FromEach(citations(t.Cautions)))
	spare := func() {
		if t.Spare.Task != "" {
			p.Line("%s  %-9s room for one load begun again from zero, until %s%s", a.when(t.Spare.Start), "spare",
				a.until(t.Spare.Start, t.Spare.Latest), p.From(a.limits.again.citation))
		}
		t.Spare = timetable.Slot{}
	}
	for _, s := range t.Slots {
		if s.Start > t.Spare.Start {
			spare()
		}
		p.Line("%s  %-9s ends %s%s", a.when(s.Start), s.Task, a.ends(s), a.about(p, s))
	}
	spare()
}

func (a answer) ends(s timetable.Slot) string {
	if s.Soonest == s.Latest {
		return a.until(s.Start, s.Latest)
	}
	return a.until(s.Start, s.Soonest) + " to " + a.until(s.Soonest, s.Latest)
}

// about is what a slot is worth a word for.
func (a answer) about(p *sheet.Sheet, s timetable.Slot) string {
	for _, step := range s.Steps {
		switch step.Step {
		case "process":
			return fmt.Sprintf("; heat on from %s, timer not before %s", a.until(s.Start, s.Steps[1].Earliest),
				a.until(s.Start, step.Earliest))
		case "salt":
			return fmt.Sprintf("; %s in salt%s", units.Lasting(a.salting.Time), p.From(a.salting.Citation))
		case "cook and hold":
			return fmt.Sprintf("; smoke from %s, cook from %s, cold by the end%s",
				a.until(s.Start, s.Steps[2].Earliest), a.until(s.Start, step.Earliest), p.From(a.cooling.Citation))
		case "ice":
			return "; " + s.Steps[0].Step
		}
	}
	return ""
}

func (a answer) warn(p *sheet.Sheet) {
	p.Warn(a.advice.Cautions...)
	p.Warn(a.work.table.Cautions...)
	p.Warn(a.landing.Cautions...)
	if a.work.jarred > 0 {
		p.Warn(a.process.Cautions()...)
		p.Warn(a.load.Cautions()...)
		p.Warn(a.jarred.cautions...)
	}
	if a.work.smoked > 0 {
		p.Warn(a.salting.Cautions...)
		p.Warn(a.cure.Cautions...)
		p.Warn(a.smoked.Cautions...)
		p.Warn(a.filets.cautions...)
	}
	p.Warn(a.larder.Cautions...)
}

func citations(all []cite.Caution) (from []cite.Citation) {
	for _, c := range all {
		from = append(from, c.Citation)
	}
	return from
}

func fish(n int) string { return fmt.Sprintf("%d fish", n) }
