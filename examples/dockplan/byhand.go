package main

import (
	"fmt"
	"io"
	"strconv"
	"time"

	"example.org/lakelarder/examples/internal/byhand"
	"example.org/lakelarder/units"
)

// byHand is fish to jars to loads, the cycle of a load, the hands on the dock, and the arithmetic of the rule, the
// year and the advisory.
func (a answer) byHand(out io.Writer) error {
	p := byhand.New(out, fmt.Sprintf("how many fish to keep of %d, and what they take", a.Fish))
	if a.work.jarred > 0 {
		a.jarsByHand(p)
	}
	a.cycleByHand(p)
	a.dockByHand(p)
	a.ruleByHand(p)
	a.yearByHand(p)
	a.adviceByHand(p)
	p.Step("The least of them")
	p.Let("intime", strconv.Itoa(a.inTime.fish), "fish", "found by search, "+a.inTime.sure(a.Fish))
	p.Let("keep", strconv.Itoa(a.keep), "fish", "the least of intime, rule, year and advised")
	return p.Close()
}

func whole(p *byhand.Page, symbol string, n int, of string) {
	p.Let(symbol, strconv.Itoa(n), "", of)
}

func grams(m units.Mass) string { return units.In(m, units.Gram, 4).String() }

func share1(r units.Ratio) string { return units.In(r, units.One, 6).String() }

func (a answer) jarsByHand(p *byhand.Page) {
	w := a.work
	p.Step("Fish to jars to loads", a.jarred.citation, a.load.Packing.Citation)
	whole(p, "n", w.jarred, "fish for jars")
	p.Let("m", grams(a.Mass), "g", "one fish as caught")
	p.Let("s", share1(a.jarred.of), "", "share of it for the jars")
	p.Let("f", grams(a.Canner.Fill), "g", "fish in a jar")
	p.Work("j", "n × m × s / f", "jars", 6)
	whole(p, "jars", w.jars, "j, a started jar counted whole")
	whole(p, "c", a.load.Jars, "jars in a load")
	p.Work("l", "jars / c", "loads", 6)
	whole(p, "loads", w.loads, "l, a started load counted whole")
	p.Work("last", "jars − (loads − 1) × c", "jars in the last load", 6)
	p.Meets("last", float64(w.last), 0, "the last load of the plan")
}

// cycleByHand is the sum of the parts of a load, at the least and at the most.
func (a answer) cycleByHand(p *byhand.Page) {
	c := a.cycle
	p.Step("One load, from turning on the heat to lifting the lid", c.HeatUp.Citation, c.Vent.Citation,
		c.Pressurize.Citation, c.Process.Citation, c.Wait.Citation)
	for _, part := range a.parts() {
		p.Let(part.symbol+"1", minutes(part.span.Least), "min", part.name+", at least")
		p.Let(part.symbol+"2", minutes(part.span.Most), "min", part.name+", at most")
	}
	p.Work("least", "u1 + v1 + g1 + t1 + d1 + w1", "min", 6)
	p.Meets("least", c.Total.Least.Minutes(), 0, "the least of the published cycle")
	p.Work("most", "u2 + v2 + g2 + t2 + d2 + w2", "min", 6)
	p.Meets("most", (c.Total.Most - c.HeatUp.Most + a.heatUp).Minutes(), 0, "the most that the plan reckons with")
	p.Let("r", minutes(a.Home.Refill.Most), "min", "emptying and filling, at most: your own")
	p.Work("load", "r + most", "min, in which nobody leaves the canner", 6)
}

// dockByHand is the last fish on ice.
func (a answer) dockByHand(p *byhand.Page) {
	p.Step("From the first fish to the last on ice", a.limits.gut.citation)
	p.Let("b", minutes(a.since), "min", "from the first fish to the dock")
	share := (max(a.keep, 1) + a.Home.People - 1) / a.Home.People
	whole(p, "k", share, fmt.Sprintf("fish for each of %d people, of %d", a.Home.People, max(a.keep, 1)))
	p.Let("e", minutes(a.Home.Gut.Most), "min", "to bleed and gut one, at most: your own")
	p.Let("i", minutes(a.Home.Ice.Most), "min", "to bed them in ice, at most: your own")
	p.Work("iced", "b + k × e + i", "min after the first fish", 6)
	p.Let("G", minutes(a.limits.gut.within), "min", "published")
	p.Work("spare", "G − iced", "min (negative: too late)", 6)
	if a.keep > 0 {
		for _, d := range a.deadlines() {
			if d.bound.Citation == a.limits.gut.citation {
				p.Meets("spare", (d.bound.Gap - d.latest).Minutes(), 0, "what the plan leaves")
			}
		}
	}
}

// ruleByHand is every line of the possession rule.
func (a answer) ruleByHand(p *byhand.Page) {
	p.Step(fmt.Sprintf("The rule that you stated, of the shape %q", a.Rule.Shape), a.Rule.Shape.Citation())
	whole(p, "A", a.Rule.Anglers, "anglers")
	for i, r := range a.rooms {
		n := strconv.Itoa(i + 1)
		whole(p, "q"+n, r.limit/a.Rule.Anglers, r.name+", of one angler")
		whole(p, "h"+n, r.counts, "counted already")
		p.Work("x"+n, "A × q"+n+" − h"+n, "fish", 6)
	}
	whole(p, "rule", a.rule, "the least of them, and none where it is negative")
}

// yearByHand is what people eat in the weeks.
func (a answer) yearByHand(p *byhand.Page) {
	p.Step("What the weeks eat")
	sum := ""
	for i, s := range a.larder.Supplies {
		n := strconv.Itoa(i + 1)
		p.Let("R"+n, grams(s.Round), "g", fmt.Sprintf("whole fish for %d of %s", s.Containers, s.Want.Name))
		if i > 0 {
			sum += " + "
		}
		sum += "R" + n
	}
	p.Let("M", grams(a.Mass), "g", "one fish as caught")
	p.Work("z", "("+sum+") / M", "fish", 6)
	whole(p, "eats", a.eats, "z, whole fish")
	whole(p, "have", a.Year.Have, "fish on the shelf")
	p.Work("y", "eats − have", "fish", 6)
	whole(p, "year", a.year, "y, and none where it is negative")
}

// adviceByHand is how many fish the meals of the advisory are.
func (a answer) adviceByHand(p *byhand.Page) {
	p.Step("What the advisory permits", a.advice.Citation)
	whole(p, "P", int(a.periods), fmt.Sprintf("whole periods of %s in %d weeks", units.Lasting(a.advice.Period), a.Year.Weeks))
	whole(p, "a", a.advice.Meals, "meals of one person in a period")
	whole(p, "o", a.Year.People, "people")
	p.Let("q", grams(a.Intake.Meal), "g", "a meal")
	p.Work("E", "P × a × o × q", "g may be eaten", 10)
	p.Let("K", grams(a.each), "g", "eaten of a fish, where most is")
	p.Work("N", "E / K", "fish", 6)
	whole(p, "B", int(a.allowed), "N, whole fish")
	p.Work("O", "B − have", "fish", 6)
	whole(p, "advised", a.advisory, "O, and none where it is negative")
}

func minutes(d time.Duration) string { return byhand.Digits(d.Minutes(), 6) }
