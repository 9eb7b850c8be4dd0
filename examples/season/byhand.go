package main

import (
	"fmt"
	"io"
	"math"

	"example.org/lakelarder/examples/internal/byhand"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	larder "example.org/lakelarder/yield/season"
)

func grams(m units.Mass) float64 { return units.Float(m, units.Gram) }

func digits(r units.Ratio) string { return units.In(r, units.Percent, 8).String() }

var counted = cite.Citation{Where: "counted from the file", Basis: cite.Computed}

// byHand is the way to the shares, the salt, the larder of the year and one week of the possession rule.
func (w worked) byHand(out io.Writer) error {
	p := byhand.New(out, "the shares, the salt, the larder and the fullest week at "+w.Place)
	for _, to := range []way{w.jars, w.smoker} {
		for i, c := range to.chains {
			c.byHand(p, to.batches[i].species.String(), to.to.String())
		}
	}
	p.Step("Jars of the catch", counted)
	p.Grams("C", w.jars.kept.Likely, "ready to pack, all batches")
	p.Grams("pack", w.PackPerJar, "in a jar")
	p.Work("n", "C / pack", "jars", 6)
	whole(p, "jars", "n", int(w.jarCount), "jars packed full")
	p.Step("Salt and sugar of the cure", counted)
	p.Grams("F", w.smoker.kept.Likely, "fillets, all batches")
	p.Let("d", digits(w.Cure.SaltToFish), "%", "salt to fish")
	p.Work("S", "F × d / 100", "g of salt", 5)
	p.Meets("S", grams(w.cure.Salt), 2e-5, "the salt of the cure")
	p.Work("U", fmt.Sprintf("S × %d / %d", w.Cure.SugarParts, w.Cure.SaltParts), "g of sugar, by the parts of the mix",
		5)
	p.Step("The mean fish", counted)
	p.Grams("M", w.jars.whole+w.smoker.whole, "the whole catch")
	p.Let("N", fmt.Sprint(len(w.Fish)), "", "fish in it")
	p.Work("fish", "M / N", "g", 6)
	p.Meets("fish", grams(w.wanted.Household.Fish), 1e-6, "the mean fish above")
	for _, s := range w.wanted.Supplies {
		w.wantByHand(p, s)
	}
	w.roundByHand(p)
	w.weekByHand(p)
	return p.Close()
}

// byHand is one batch, stage by stage: shares multiply.
func (c chain) byHand(p *byhand.Page, species, to string) {
	p.Step("Share of "+species+", to "+to, practice(c.from+" for "+species+", "+to))
	p.Grams("m0", c.Whole, "whole")
	for i, step := range c.Steps {
		share := fmt.Sprintf("k%d", i+1)
		p.Let(share, digits(step.Step.Kept), "%", "of what came in is "+step.Step.Name)
		p.Work(fmt.Sprintf("m%d", i+1), fmt.Sprintf("m%d × k%d / 100", i, i+1), "g "+step.Step.Name, 7)
	}
	p.Meets(fmt.Sprintf("m%d", len(c.Steps)), grams(c.Kept.Likely), 1e-6, "what the catch gives above")
}

// whole rounds a printed figure down or up to the count that the library has, whichever that is.
func whole(p *byhand.Page, symbol, from string, n int, what string) {
	if v := p.Float(from); math.Abs(v-float64(n)) >= 1 {
		n = -1 // no rounding of the figure: the count that is printed does not follow from it
	}
	p.Let(symbol, fmt.Sprint(n), "", what)
	p.Agrees(symbol, math.Max(0, float64(n)), 0, what)
}

// wantByHand is what one product takes.
func (w worked) wantByHand(p *byhand.Page, s larder.Supply) {
	p.Step("A year of "+s.Want.Name, counted)
	p.Let("people", fmt.Sprint(w.People), "", "people")
	p.Let("weeks", fmt.Sprint(w.wanted.Household.Weeks), "", "weeks")
	p.Let("meals", units.In(s.Want.Meals, units.One, 8).String(), "", "meals a week for each")
	p.Grams("serving", s.Want.Serving, "a serving")
	p.Work("need", "people × weeks × meals × serving", "g to eat", 8)
	p.Grams("pack", s.Want.Pack, "raw fish in one")
	p.Let("u", digits(s.Want.Served), "%", "of it is eaten")
	p.Work("each", "pack × u / 100", "g that one serves", 8)
	p.Work("n", "need / each", "", 6)
	whole(p, "containers", "n", s.Containers, "of them, rounded up")
	p.Let("y", digits(s.Want.Yield), "%", "of the whole fish is packed, from the catch")
	p.Work("round", "containers × pack / y × 100", "g of whole fish", 8)
	p.Meets("round", grams(s.Round), 1e-6, "the whole fish for it")
}

func (w worked) roundByHand(p *byhand.Page) {
	p.Step("What people eat in a week, as whole fish", counted)
	for i, s := range w.wanted.Supplies {
		p.Grams(fmt.Sprintf("r%d", i+1), s.Round, "whole fish for "+s.Want.Name)
	}
	p.Work("all", "r1 + r2", "g", 9)
	p.Work("f", "all / fish", "fish", 6)
	whole(p, "wanted", "f", w.wanted.Fish, "fish, rounded up")
	p.Work("weekly", "all / weeks", "g a week", 7)
	p.Meets("weekly", grams(w.wanted.Weekly), 1e-6, "what is eaten in a week")
}

// weekByHand is the possession arithmetic of the week with the most fish held.
func (w worked) weekByHand(p *byhand.Page) {
	full := 0
	for week, one := range w.plan.Weeks {
		if one.Held.All > w.plan.Weeks[full].Held.All {
			full = week
		}
	}
	if len(w.plan.Weeks) == 0 {
		return
	}
	r, one := w.plan.Year.Rule, w.plan.Weeks[full]
	before := larder.Stock{}
	if full > 0 {
		before = w.plan.Weeks[full-1].End
	}
	p.Step(fmt.Sprintf("Week %d, in which the most fish are held", full), r.Shape.Citation())
	limitsByHand(p, r)
	p.Let("p0", fmt.Sprint(before.Preserved), "", "preserved fish left of the week before")
	p.Let("f0", fmt.Sprint(before.Fresh), "", "fresh fish left of the week before")
	p.Let("v", fmt.Sprint(one.Moved), "", "of these that count as preserved from this week on")
	p.Let("k", fmt.Sprint(one.Kept), "", "fish kept on the trips of the week")
	p.Count("p1", "p0 + v", "preserved fish before eating")
	p.Agrees("p1", float64(one.Held.Preserved), 0, "the preserved fish of the plan")
	p.Count("f1", "f0 − v + k", "fresh fish before eating")
	p.Agrees("f1", float64(one.Held.Fresh), 0, "the fresh fish of the plan")
	p.Count("held", "p1 + f1", "fish held before eating")
	p.Meets("held", float64(one.Held.All), 0, "the most held in any week")
	for _, limit := range []struct {
		symbol, held string
		of           int
	}{{"spareAll", "held", w.plan.Limits.All}, {"spareFresh", "f1", w.plan.Limits.Fresh}, {"sparePreserved", "p1",
		w.plan.Limits.Preserved}} {
		if limit.of > 0 {
			p.Count(limit.symbol, fmt.Sprintf("%d − %s", limit.of, limit.held), "fish below the limit")
		}
	}
	p.Work("share", "weekly / fish", "fish that people eat in a week", 4)
	p.Let("left", fmt.Sprint(one.End.All), "", "fish left after eating, one eaten in part counted whole")
	p.Count("gone", "held − left", "fish eaten up in the week")
}

// limitsByHand are the limits of all anglers together.
func limitsByHand(p *byhand.Page, r larder.Rule) {
	p.Let("anglers", fmt.Sprint(r.Anglers), "", "anglers")
	p.Let("daily", fmt.Sprint(r.Daily), "", "fish a day for each")
	switch r.Shape {
	case larder.ProcessedQuota:
		p.Let("quota", fmt.Sprint(r.Processed), "", "processed fish for each")
		p.Count("freshLimit", "anglers × daily", "fresh fish")
		p.Count("preservedLimit", "anglers × quota", "preserved fish")
		p.Count("limit", "freshLimit + preservedLimit", "fish in all")
	case larder.OneDay:
		p.Count("limit", "anglers × daily", "fish in all")
	default:
		p.Let("possession", fmt.Sprint(r.Possession), "", "fish held for each")
		p.Count("limit", "anglers × possession", "fish")
	}
}
