package main

import (
	"fmt"
	"strings"

	"example.org/lakelarder/examples/internal/sheet"
	"example.org/lakelarder/units"
	"example.org/lakelarder/yield"
	larder "example.org/lakelarder/yield/season"
)

func (w worked) printWants(p *sheet.Sheet) {
	l := w.wanted
	p.Heading("The year: what is wanted")
	p.Line("%d people, %d weeks; week 0 is %s. A fish is the mean of the catch, %s whole.", l.Household.People,
		l.Household.Weeks, w.Year.First, sheet.Text(p, l.Household.Fish))
	for _, s := range l.Supplies {
		loads := ""
		if s.Loads > 0 {
			loads = fmt.Sprintf(", %s, the last of %d", count(s.Loads, "canner load"), s.LastLoad)
		}
		p.Line("%s: %s meals a week for each, of %s; %s to eat: %d of %s raw, each serving %s; %s whole, %d fish%s",
			s.Want.Name, units.In(s.Want.Meals, units.One, 2),
			sheet.Text(p, s.Want.Serving), sheet.Up(p, s.Need), s.Containers, sheet.Text(p, s.Want.Pack),
			sheet.Down(p, s.Each), sheet.Up(p, s.Round), s.Fish, loads)
		if s.Makings > 1 {
			p.Line("  keeps %s%s: make it in at least %d parts", sheet.Text(p, s.Want.Keeps.Time),
				p.From(s.Want.Keeps.Citation), s.Makings)
		}
	}
	p.Line("Together %d fish, %s whole, %s of it a week", l.Fish, sheet.Up(p, l.Round), sheet.Up(p, l.Weekly))
	fresh, jars, smoked := w.year.plan.Fresh, w.year.jars.Keeps, w.year.smoked.Keeps
	p.Line("Counted to keep: fresh %s%s, jars %s%s, smoked and frozen %s%s: the shortest published, or the file's "+
		"where it states less", sheet.Text(p, fresh.Time), p.From(fresh.Citation),
		sheet.Text(p, jars.Time), p.From(jars.Citation), sheet.Text(p, smoked.Time), p.From(smoked.Citation))
	printDrained(p, w.year.jars.Served)
}

// cans are the foods whose cans were weighed whole and drained, by their numbers in the composition data.
var cans = [...]struct {
	fish           string
	whole, drained int
}{{"pink salmon", 15084, 15260}, {"sockeye salmon", 15253, 15087}}

// printDrained holds what the households count as served of a jar against the cans that were weighed.
func printDrained(p *sheet.Sheet, served units.Ratio) {
	var all []string
	for _, c := range cans {
		whole, drained := portion(c.whole, "total can contents"), portion(c.drained,
			"drained solids with skin and bone")
		share, err := units.RatioOf(drained.Mean, whole.Mean)
		if err != nil || share == 0 {
			continue // one of the two is not published
		}
		all = append(all, fmt.Sprintf("%s of %s%s", sheet.Down(p, share), c.fish, p.From(drained.Citation)))
	}
	p.Line("Of what a jar is packed with %s counts as eaten; cans drain to %s", sheet.Text(p, served),
		strings.Join(all, " and "))
}

// portion is a published weight; zero where there is none.
func portion(number int, name string) yield.PortionWeight {
	for _, w := range yield.PortionWeights(number) {
		if w.Portion == name {
			return w
		}
	}
	return yield.PortionWeight{}
}

func (w worked) printTrips(p *sheet.Sheet) {
	p.Heading("The year: what to keep")
	rows := [][]string{{"week", "days", "expected", "possible", "keep"}}
	for i, t := range w.plan.Year.Trips {
		rows = append(rows, []string{fmt.Sprint(t.Week), fmt.Sprint(t.Days), fmt.Sprint(t.Expected),
			fmt.Sprint(t.Possible), fmt.Sprint(w.plan.Kept[i])})
	}
	p.Table(rows...)
}

// printStock draws the shelf before eating, a mark a fish, and a mark for several where there are many.
func (w worked) printStock(p *sheet.Sheet) {
	const room = 70
	each := 1 + (w.plan.Peak.All-1)/room
	p.Heading("The year: the stock, week by week")
	p.Line("Fish held before eating: o fresh, # preserved, %d to a mark; the number is after eating", each)
	short := w.shortWeeks()
	for week, one := range w.plan.Weeks {
		note := ""
		if one.Kept > 0 {
			note += fmt.Sprintf("  kept %d", one.Kept)
		}
		if short[week] {
			note += "  SHORT"
		}
		marks := strings.Repeat("#", (one.Held.Preserved+each-1)/each) + strings.Repeat("o",
			(one.Held.Fresh+each-1)/each)
		fmt.Fprintf(p.W, "%3d %3d %s%s\n", week, one.End.All, marks, note)
	}
}

func (w worked) shortWeeks() map[int]bool {
	short := map[int]bool{}
	for _, week := range w.plan.Short {
		short[week] = true
	}
	return short
}

func (w worked) printShopping(p *sheet.Sheet) {
	jars, loads := w.made(w.year.jars)
	bags, _ := w.made(w.year.smoked)
	salt, sugar, largest := units.Mass(0), units.Mass(0), 0
	for _, b := range w.batches {
		cure := w.cureOf(b)
		salt, sugar = salt+cure.Salt, sugar+cure.Sugar
	}
	for _, kept := range w.plan.Kept {
		largest = max(largest, kept)
	}
	p.Heading("The year: shopping list")
	p.Line("For the fish that the plan keeps; the larder wanted %d jars and %d bags, less what is eaten fresh or "+
		"cannot be held.", w.supplyOf(w.year.jars).Containers,
		w.supplyOf(w.year.smoked).Containers)
	p.Item("jars: %d, for %s", jars, count(loads, "canner load"))
	p.Item("lids: %d, new for every jar; spare ones for lids that fail", jars)
	p.Item("freezer bags: %d for smoked fish", bags)
	p.Item("salt: %s for the cure, and %s for the jars at %s each, as the households like it%s", sheet.Up(p, salt),
		sheet.Up(p, units.Mass(jars)*w.Year.SaltPerJar),
		sheet.Text(p, w.Year.SaltPerJar), p.From(practice("salt in the jar for taste, by the households")))
	p.Item("sugar: %s for the cure", sheet.Up(p, sugar))
	p.Item("ice: %s for the largest trip, %s together: %s of the fish%s", sheet.Up(p, w.iceFor(largest)),
		sheet.Up(p, w.iceFor(w.plan.Fish())), sheet.Text(p, w.Year.IcePerFish),
		p.From(practice("ice for the fish, by the households' own weighing")))
}

func (w worked) printCosts(p *sheet.Sheet) {
	p.Heading("The year: costs")
	p.Line("In %s, for the larder as wanted; trips are shared out by the kilogram of whole fish.", w.Year.Currency)
	for _, s := range w.wanted.Supplies {
		c := w.costs[s.Want.Name]
		p.Line("  %s: %s together, %s a container, %s a meal", s.Want.Name, c.Total.StringFixed(2),
			c.Container.StringFixed(2), c.Meal.StringFixed(2))
	}
}

// printBatches is the calendar and, below it, a sheet for each day in the kitchen.
func (w worked) printBatches(p *sheet.Sheet) {
	fresh := w.year.plan.Fresh
	p.Heading("The year: calendar of loads")
	p.Line("Fish is canned or cured within %s of the catch%s, and counts as preserved by the week after.",
		sheet.Text(p, fresh.Time), p.From(fresh.Citation))
	for _, b := range w.batches {
		jars, bags := madeIn(b, w.year.jars), madeIn(b, w.year.smoked)
		p.Line("  caught in week %d: %d fish, %s whole: %s in %s, %s of smoked fish", b.Caught, b.Fish,
			sheet.Text(p, b.Round), count(jars.Containers, "jar"), count(jars.Loads, "load"),
			count(bags.Containers, "bag"))
	}
	if len(w.batches) == 0 {
		p.Line("  no fish is preserved")
	}
	for _, b := range w.batches {
		w.printBatch(p, b)
	}
}

// printBatch is a sheet to fill in.
func (w worked) printBatch(p *sheet.Sheet, b larder.Batch) {
	fresh, s := w.year.plan.Fresh, w.schedule
	p.Heading(fmt.Sprintf("Batch sheet, fish caught in week %d", b.Caught))
	p.Line("[ ] caught ______, on ice from ______; canned or cured within %s, by ______%s", sheet.Text(p, fresh.Time),
		p.From(fresh.Citation))
	p.Line("[ ] fish counted: %d, weighed whole: ______ (planned %s)", b.Fish, sheet.Text(p, b.Round))
	if jars := madeIn(b, w.year.jars); jars.Containers > 0 {
		p.Line("[ ] %s of %s: loads of %s", count(jars.Containers, w.Canner.Jar.String()+" jar"),
			sheet.Text(p, w.year.jars.Pack), loadSizes(jars.Containers, w.Canner.JarsPerLoad))
		p.Line("[ ] each load: vent %s, then %s and never less for %s without a break%s", units.Lasting(s.Vent),
			sheet.Up(p, s.Pressure), units.Lasting(s.Process), p.From(s.Citation))
		p.Line("    load  vented  at pressure  heat off  lid off  sealed")
		for i := 1; i <= jars.Loads; i++ {
			fmt.Fprintf(p.W, "    %4d  ______  ___________  ________  _______  ______\n", i)
		}
	}
	if bags := madeIn(b, w.year.smoked); bags.Containers > 0 {
		cure := w.cureOf(b)
		p.Line("[ ] fillets for %s, %s raw: %s salt, %s sugar", count(bags.Containers, "bag"),
			sheet.Text(p, cure.Fillet), sheet.Up(p, cure.Salt), sheet.Text(p, cure.Sugar))
		p.Line("[ ] weight before the smoker ______, after ______; lost ______ %%")
		p.Line("[ ] core %s by the probe in the thickest piece: from ______ to ______%s", w.limitText(p),
			p.From(w.limit.Citation))
		p.Line("[ ] frozen on ______; eat within %s%s", sheet.Text(p, w.year.smoked.Keeps.Time),
			p.From(w.year.smoked.Keeps.Citation))
	}
}

// loadSizes is "9, 9, 5".
func loadSizes(jars, load int) string {
	var sizes []string
	for ; jars > 0; jars -= load {
		sizes = append(sizes, fmt.Sprint(min(jars, load)))
	}
	return strings.Join(sizes, ", ")
}
