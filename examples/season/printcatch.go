package main

import (
	"fmt"
	"time"

	"example.org/lakelarder/examples/internal/sheet"
	"example.org/lakelarder/units"
)

// printDetails is everything behind the answer.
func (w worked) printDetails(p *sheet.Sheet) {
	w.printCatch(p)
	w.printWay(p, "For the jars", w.jars)
	w.printWay(p, "For the smoker", w.smoker)
	w.printJars(p)
	w.printCanner(p)
	w.printCure(p)
	w.printCooler(p)
	w.printCore(p)
	w.printWants(p)
	w.printTrips(p)
	w.printStock(p)
	w.printShopping(p)
	w.printCosts(p)
	w.printBatches(p)
}

func (w worked) printCatch(p *sheet.Sheet) {
	p.Heading("The catch")
	p.Line("%d fish, %s whole, for %d households (%d people); the stove stands at %s", len(w.Fish),
		sheet.Text(p, w.jars.whole+w.smoker.whole), w.Households, w.People,
		sheet.Text(p, w.Altitude.Value))
	for _, to := range []struct {
		name string
		way  way
	}{{"smoker", w.smoker}, {"jars", w.jars}} {
		for _, b := range to.way.batches {
			p.Line("  to the %s: %d %s, %s", to.name, b.count, b.species, sheet.Text(p, b.whole))
		}
	}
}

// printWay leads every batch to a stage.
func (w worked) printWay(p *sheet.Sheet, title string, to way) {
	p.Heading(title)
	for i, c := range to.chains {
		species := to.batches[i].species.String()
		p.Line("%s, by %s%s: whole %s", species, c.from, p.From(practice(c.from+" for "+species+", "+to.to.String())),
			sheet.Text(p, c.Whole))
		for _, step := range c.Steps {
			p.Line("  %s %s (%s goes to %s)", step.Step.Name, sheet.Text(p, step.Kept), sheet.Text(p, step.Left),
				step.Step.Rest)
		}
	}
	p.Line("Together %s %s; weigh your own and plan again with that.", sheet.Text(p, to.kept.Likely), to.to)
}

func (w worked) printJars(p *sheet.Sheet) {
	p.Heading("Jars")
	p.Line("%d %s jars of %s each", w.jarCount, w.Canner.Jar, sheet.Text(p, w.PackPerJar))
	if over := units.Mass(w.over); over > 0 {
		share, _ := units.RatioOf(over, w.PackPerJar)
		p.Line("and %s over, %s of a jar: add it to the smoker's batch or freeze it, for a jar is packed full",
			sheet.Text(p, over), sheet.Text(p, units.RoundTo(share, units.Percent)))
	}
	p.Line("%d canner loads of up to %d; the last has %d", w.loads(), w.Canner.JarsPerLoad,
		w.jarCount-(w.loads()-1)*int64(w.Canner.JarsPerLoad))
}

// loads are those of the catch.
func (w worked) loads() int64 {
	load := int64(w.Canner.JarsPerLoad)
	return (w.jarCount + load - 1) / load
}

func (w worked) printCanner(p *sheet.Sheet) {
	s := w.schedule
	p.Heading("The canner")
	p.Line("Published for raw fish in %s jars, %s gauge%s: vent %s of steady steam%s; %s and never less; %s without "+
		"a break, from when the pressure stands; headspace %s%s",
		s.Jar, s.Gauge, p.From(s.Citation), units.Lasting(s.Vent), p.From(s.VentCitation), sheet.Up(p,
			s.Pressure), units.Lasting(s.Process), sheet.Text(p, s.Headspace), p.From(s.HeadspaceCitation))
	if s.Unverified() {
		p.Line("Part of this was not seen in print: check it before canning.")
	}
	p.Line("Steam at that setting here: %s, %s above %s%s. It explains the setting and changes nothing.",
		sheet.Text(p, w.margin.Steam), sheet.Text(p, w.margin.Above),
		sheet.Text(p, w.margin.Reference), p.From(w.margin.Citation))
	p.Line("At pressure the %d loads take %s, without heating, venting and cooling.", w.loads(),
		units.Lasting(time.Duration(w.loads())*s.Process))
	p.Line("By its measure the canner takes %d %s jars, %d to a layer, %s%s; the households load %d.", w.load.Jars,
		w.jarSize.Name, w.load.PerLayer,
		count(w.load.Layers, "layer"), p.From(w.load.Packing.Citation), w.Canner.JarsPerLoad)
	if w.load.Jars < w.Canner.JarsPerLoad {
		p.Line("That is more than fits: measure again.")
	}
	p.Line("%s", w.steam.Read)
}

func (w worked) printCure(p *sheet.Sheet) {
	p.Heading("The cure")
	p.Line("For %s of fillets, %s salt to fish by weight: %s of salt, %s of sugar", sheet.Text(p, w.cure.Fillet),
		sheet.Text(p, w.cure.Ratio), sheet.Up(p, w.cure.Salt), sheet.Text(p, w.cure.Sugar))
	p.Line("Without a scale: %s of %s%s and %s of %s%s", spoons(p, w.volumes.Salt), w.salt.Name,
		p.From(w.salt.Citation), spoons(p, w.volumes.Sugar), w.sugar.Name, p.From(w.sugar.Citation))
}

// spoons is a volume in the measures of a kitchen.
func spoons(p *sheet.Sheet, v units.Volume) string {
	kitchen := units.Kitchen(units.CeilTo(v, units.Teaspoon/4), 4, units.Quart, units.Cup, units.Tablespoon,
		units.Teaspoon)
	metric := units.AmountOf(v).Text(units.Metric, units.Up)
	switch p.System {
	case units.US:
		return kitchen
	case units.Metric:
		return metric
	}
	return kitchen + " (" + metric + ")"
}

// printCooler is the time above each published threshold, and what each rule allows.
func (w worked) printCooler(p *sheet.Sheet) {
	p.Heading("Was the catch cold enough?")
	p.Line("%s", w.cooler.Read)
	rows := [][]string{{"above", "for", ""}}
	for _, h := range w.cold.Hours {
		rows = append(rows, []string{sheet.Text(p, h.Above), units.Lasting(h.Time.Round(time.Second)),
			p.From(h.Citation)})
	}
	p.Table(rows...)
	p.Line("What each rule allows, and how much of it is used:")
	for _, a := range w.cold.Allowances {
		name := a.Rule.String()
		if a.Hazard != 0 {
			name += ", " + a.Hazard.String()
		}
		p.Line("  %s: %s, %s%s", name, a.Verdict, sheet.Text(p, units.CeilTo(a.Used, units.Percent)),
			p.FromEach(a.Citations()))
	}
}

// printCore is the record of each probe, and what the other published rules say of it.
func (w worked) printCore(p *sheet.Sheet) {
	p.Heading("Was the smoked fish hot enough?")
	for _, c := range w.core {
		hottest, _ := c.Series.Max()
		p.Line("%s, at most %s; %s", readings(c.Name, c.Series), sheet.Down(p, hottest.Value), c.Read)
	}
	rows := [][]string{{"other rules", "core", "for", "of", "verdict", ""}}
	for _, h := range w.other {
		use := "trade"
		if h.Limit.Home {
			use = "home"
		}
		rows = append(rows, []string{fmt.Sprint(h.Limit.ID), h.Limit.Printed.Text(p.System),
			units.Lasting(h.Limit.Hold), use, h.Verdict.String(), p.From(h.Limit.Citation)})
	}
	p.Table(rows...)
}
