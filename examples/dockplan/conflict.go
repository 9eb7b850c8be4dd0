package main

import (
	"fmt"

	"example.org/lakelarder/examples/internal/sheet"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/timetable"
)

// printGive is why all the fish cannot be processed, and what would have to give.
func (a answer) printGive(p *sheet.Sheet) {
	p.Heading(fmt.Sprintf("Not all %d in time: what gives way, and what would have to", a.Fish))
	if a.more.table.Answer == timetable.Undecided {
		p.Line("With %s undecided within %d steps of the search: no plan was found, and none is proven impossible.",
			fish(a.more.fish), a.more.table.Steps)
	}
	a.printConflict(p)
	p.Item("fewer fish: %d; %s", a.inTime.fish, a.inTime.sure(a.Fish))
	for _, w := range a.ways {
		p.Item("%s: %s; %s", w.what, fish(w.fish), w.sure(a.Fish))
	}
	if !a.DoneBy.Given {
		p.Item("more on ice until tomorrow: this plan already uses all of the published two days%s",
			p.From(a.limits.jars.citation))
	}
}

// printConflict is what cannot hold together with one fish more. What follows what, and that people sleep, is not
// asked to give way.
func (a answer) printConflict(p *sheet.Sheet) {
	c := a.more.table.Conflict
	if len(c.Parts) == 0 {
		return
	}
	how := "; there may be some too many"
	if c.Minimal {
		how = ", and any one less can"
	}
	p.Line("With %s these cannot hold together%s:", fish(a.more.fish), how)
	seen := map[string]bool{}
	for _, part := range c.Parts {
		text, from := a.partOf(part)
		if text == "" || seen[text] {
			continue
		}
		seen[text] = true
		p.Item("%s%s", text, p.From(from))
	}
}

// partOf is a part of a conflict in the words of a kitchen; empty for what goes without saying.
func (a answer) partOf(part timetable.Part) (string, cite.Citation) {
	none := cite.Citation{}
	r := part.Relief
	switch part.Kind {
	case timetable.OfHours:
		return fmt.Sprintf("from %s to %s everybody sleeps: no canner is left alone, and the smoker is out",
			a.clockOf(a.Home.Sleep.Value), a.clockOf(a.Home.Wake.Value)), none
	case timetable.OfCapacity:
		return fmt.Sprintf("of the %s there is no more%s", part.Resource,
			would(r, counted(r.Units, "more")+" would do")), none
	case timetable.OfRestart:
		return fmt.Sprintf("there is to be room for one load begun again from zero, its end within %s of the first%s",
			units.Lasting(a.limits.again.within),
			would(r, "without it there would be time, and a load that fails would be lost")), a.limits.again.citation
	case timetable.OfEnd:
		return "all has ended when the two days are over" +
			would(r, units.Lasting(r.By)+" more would do"), a.limits.jars.citation
	}
	b := part.Bound
	switch {
	case b.Name == wished:
		return fmt.Sprintf("%s done by %s, as you want%s", b.To.Task, a.when(b.Gap),
			would(r, units.Lasting(r.By)+" later would do")), none
	case b.Sense == timetable.NotAfter && b.Citation == none:
		return b.Name + would(r, units.Lasting(r.By)+" more would do"), none
	case b.Sense == timetable.NotAfter:
		return fmt.Sprintf("%s: %s by %s%s", b.Name, b.To, a.when(b.Gap),
			would(r, "short by "+units.Lasting(r.By)+", and what is published does not give way")), b.Citation
	}
	return "", none
}

// would is what of a part would do by itself.
func would(r timetable.Relief, text string) string {
	if r.Answer != timetable.Possible {
		return ""
	}
	return ": " + text
}
