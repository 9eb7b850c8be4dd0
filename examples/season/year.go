package main

import (
	"fmt"
	"strings"

	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield"
	larder "example.org/lakelarder/yield/season"
)

// printYear plans the year with the catch's own mean fish and shares: what is wanted, what may be held, the stock of every week, and what
// follows from it.
func (s season) printYear(p *page, schedule process.Schedule, packed, fillets units.Mass) (larder.Plan, error) {
	var none larder.Plan
	l, err := s.size(packed, fillets)
	if err != nil {
		return none, err
	}
	y := s.year.plan
	y.Fish, y.Weekly = l.Household.Fish, l.Weekly
	plan, err := larder.Keep(y)
	if err != nil {
		return none, err
	}
	batches, err := larder.Calendar(plan, l)
	if err != nil {
		return none, err
	}
	s.printWants(p, l)
	if err := s.printVerdict(p, plan, l.Supplies[1]); err != nil {
		return none, err
	}
	printTrips(p, plan)
	printStock(p, plan)
	s.printShopping(p, plan, l, batches)
	if err := s.printCosts(p, plan, l); err != nil {
		return none, err
	}
	if err := s.printBatches(p, schedule, l, batches); err != nil {
		return none, err
	}
	p.Warn(plan.Cautions...)
	p.Warn(l.Cautions...)
	return plan, nil
}

// size is the larder, from the mean of the catch and the shares that it gave.
func (s season) size(packed, fillets units.Mass) (larder.Larder, error) {
	var all, toJars, toSmoker units.Mass
	smoker, jars := divide(s)
	for _, b := range jars {
		toJars += b.whole
	}
	for _, b := range smoker {
		toSmoker += b.whole
	}
	all = toJars + toSmoker
	wants := []larder.Want{s.year.jars, s.year.smoked}
	var err error
	if wants[0].Yield, err = units.RatioOf(packed, toJars); err != nil {
		return larder.Larder{}, fmt.Errorf("year: no fish of the catch goes into jars: %w", err)
	}
	if wants[1].Yield, err = units.RatioOf(fillets, toSmoker); err != nil {
		return larder.Larder{}, fmt.Errorf("year: no fish of the catch goes to the smoker: %w", err)
	}
	l, err := larder.Size(larder.Household{People: s.people, Weeks: s.year.plan.Weeks, Fish: all / units.Mass(len(s.fish))}, wants...)
	if err != nil {
		return larder.Larder{}, fmt.Errorf("year: %w", err)
	}
	return l, nil
}

func (s season) printWants(p *page, l larder.Larder) {
	p.Heading("The year: what is wanted")
	p.Line("%d people, %d weeks; week 0 is %s. A fish is the mean of the catch, %s whole.", l.Household.People, l.Household.Weeks, s.year.first, p.mass(l.Household.Fish))
	for _, w := range l.Supplies {
		loads := ""
		if w.Loads > 0 {
			loads = fmt.Sprintf(", %s, the last of %d", count(w.Loads, "canner load"), w.LastLoad)
		}
		p.Line("  %-15s meals a week for each: %s, of %s; %s to eat", w.Want.Name, units.In(w.Want.Meals, units.One, 2), p.mass(w.Want.Serving), p.mass(w.Need))
		p.Line("  %-15s %d of %s raw, each serving %s; %s whole, %d fish%s", "", w.Containers, p.mass(w.Want.Pack), p.mass(w.Each), p.mass(w.Round), w.Fish, loads)
		if w.Makings > 1 {
			p.Line("  %-15s keeps %d days %s: make it in at least %d parts", "", w.Want.Keeps.Time/day, p.From(w.Want.Keeps.Citation), w.Makings)
		}
	}
	p.Line("together %d fish, %s whole, %s of it a week", l.Fish, p.mass(l.Round), p.mass(l.Weekly))
	fresh, jars, smoked := s.year.plan.Fresh, s.year.jars.Keeps, s.year.smoked.Keeps
	p.Line("counted to keep: fresh %s %s, jars %d days %s, smoked and frozen %d days %s: the shortest published, or the file's where it states less",
		count(int(fresh.Time/day), "day"), p.From(fresh.Citation), jars.Time/day, p.From(jars.Citation), smoked.Time/day, p.From(smoked.Citation))
	printDrained(p, s.year.jars.Served)
}

// cans are the foods whose cans were weighed whole and drained, by their numbers in the composition data.
var cans = [...]struct {
	fish           string
	whole, drained int
}{{"pink salmon", 15084, 15260}, {"sockeye salmon", 15253, 15087}}

// printDrained holds what the households count as served of a jar against the cans that were weighed.
func printDrained(p *page, served units.Ratio) {
	var weighed []string
	for _, c := range cans {
		whole, drained := portion(c.whole, "total can contents"), portion(c.drained, "drained solids with skin and bone")
		share, err := units.RatioOf(drained.Mean, whole.Mean)
		if err != nil || share == 0 {
			continue // one of the two is not published
		}
		weighed = append(weighed, fmt.Sprintf("%s of %s %s", units.Text(share, units.Percent, 1), c.fish, p.From(drained.Citation)))
	}
	p.Line("of what a jar is packed with %s counts as eaten; cans drain to %s", served, strings.Join(weighed, " and "))
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

func (s season) printVerdict(p *page, plan larder.Plan, smoked larder.Supply) error {
	p.Heading("The year: can it be held?")
	y := plan.Year
	r := y.Rule
	figures := ""
	switch r.Shape {
	case larder.Everything, larder.Unpreserved:
		figures = fmt.Sprintf("%d held", r.Possession)
	case larder.OneDay:
		figures = "no more held"
	case larder.ProcessedQuota:
		figures = fmt.Sprintf("as many fresh, and %d processed", r.Processed)
	}
	p.Line("rule put in, of the shape %q %s: %d a day and %s, for each of %d anglers. The local rules decide.", r.Shape, p.From(r.Shape.Citation()), r.Daily, figures, r.Anglers)
	p.Line("VERDICT with the expected catch: %s", plan)
	y.Fishing = larder.Possible
	best, err := larder.Keep(y)
	if err != nil {
		return err
	}
	p.Line("with the best possible catch:    %s", best)
	if !plan.Feasible() {
		y.Fishing = larder.Expected
		share, less, err := larder.Steady(y)
		if err != nil {
			return err
		}
		if share > 0 {
			p.Line("every week of the year could be had with %s of what is wanted: %s whole a week, from %d fish", share, p.mass(less.Year.Weekly), less.Fish())
		}
	}
	p.Line("peak %d held before eating (%d fresh, %d preserved at most)%s", plan.Peak.All, plan.Peak.Fresh, plan.Peak.Preserved, limits(plan.Limits))
	p.Line("eaten %s whole, %d fish on %d of %d trips; the oldest %d weeks after the week of its catch, %s", p.mass(plan.Eaten), plan.Fish(), plan.Trips(),
		len(y.Trips), plan.Oldest(), plan.Order)
	young := plan.EatenWithin(s.year.smoked.Keeps.Time)
	p.Line("of that %s young enough for smoked and frozen fish, which keeps %d days %s; the rest of the year is jars", p.mass(young),
		s.year.smoked.Keeps.Time/day, p.From(s.year.smoked.Keeps.Citation))
	if young < smoked.Round {
		p.Line("  that is less than the %s wanted smoked: make fewer, and more jars", p.mass(smoked.Round))
	}
	return nil
}

func limits(l larder.Stock) string {
	var all []string
	for _, one := range []struct {
		what  string
		limit int
	}{{"in all", l.All}, {"fresh", l.Fresh}, {"preserved", l.Preserved}} {
		if one.limit > 0 {
			all = append(all, fmt.Sprintf("%d %s", one.limit, one.what))
		}
	}
	return "; the limit is " + strings.Join(all, ", ")
}

func printTrips(p *page, plan larder.Plan) {
	p.Heading("The year: what to keep")
	for i, t := range plan.Year.Trips {
		p.Line("  week %2d  days %d  expected %2d, possible %2d: keep %2d", t.Week, t.Days, t.Expected, t.Possible, plan.Kept[i])
	}
}

// printStock draws the shelf before eating, a mark a fish.
func printStock(p *page, plan larder.Plan) {
	p.Heading("The year: the stock, week by week")
	p.Line("fish held before eating: o fresh, # preserved; the count is after eating")
	short := shortWeeks(plan)
	for week, w := range plan.Weeks {
		note := ""
		if w.Kept > 0 {
			note += fmt.Sprintf("  kept %d", w.Kept)
		}
		if short[week] {
			note += "  SHORT"
		}
		p.Line("  %2d %3d %s%s%s", week, w.End.All, strings.Repeat("#", w.Held.Preserved), strings.Repeat("o", w.Held.Fresh), note)
	}
}

func shortWeeks(plan larder.Plan) map[int]bool {
	short := map[int]bool{}
	for _, w := range plan.Short {
		short[w] = true
	}
	return short
}

// practice is a citation of what the households do.
func practice(what string) cite.Citation { return cite.Citation{Where: what, Basis: cite.Practice} }
