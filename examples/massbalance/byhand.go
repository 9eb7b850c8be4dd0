package main

import (
	"fmt"
	"io"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/examples/internal/byhand"
	"example.org/lakelarder/units"
	"example.org/lakelarder/yield"
)

// byHand is the whole walk in grams.
func (w walk) byHand(out io.Writer) error {
	p := byhand.New(out, w.Fillet.Name+", from raw to smoked, in grams")
	w.rawByHand(p)
	for _, st := range w.stages {
		st.byHand(p)
	}
	p.Step("The balance: what came in is what is there and what is gone", balance)
	p.Work("in", "M + G", "g, raw and salt taken up", 6)
	p.Work("out", "m + gone", "g, smoked fillet and all that left it", 6)
	p.Meets("out", units.Float(total(w.raw)+total(w.gained), units.Gram), 1e-5, "what came in")
	w.targetByHand(p)
	w.tiedByHand(p)
	w.servingByHand(p)
	return p.Close()
}

func grams(m units.Mass) float64 { return units.Float(m, units.Gram) }

func digits(r units.Ratio) string { return units.In(r, units.Percent, 6).String() }

func (w walk) rawByHand(p *byhand.Page) {
	row := w.row.Proximate
	p.Step("The raw fillet, by a printed row whose parts do not add up to 100 %", w.row.Citation)
	p.Grams("M", w.Fillet.Mass, "raw fillet")
	p.Let("a", digits(row.Water), "%", "water as printed")
	p.Let("b", digits(row.Protein), "%", "protein")
	p.Let("c", digits(row.Fat), "%", "fat")
	p.Let("d", digits(row.Ash), "%", "ash")
	p.Let("Na", digits(w.row.Sodium.Value), "%", "sodium")
	p.Work("sum", "a + b + c + d", "% together; each is divided by it", 5)
	p.Work("w", "M × a / sum", "g of water", 6)
	p.Work("pr", "M × b / sum", "g of protein", 6)
	p.Work("f", "M × c / sum", "g of fat", 6)
	p.Work("s", "M × Na × 2.54212 / sum", "g of salt: sodium counted as salt, 58.4428 / 22.98977", 6)
	p.Work("ash", "M × d / sum − s", "g of ash besides it", 6)
	meets(p, w.raw)
	p.Let("m", units.In(w.Fillet.Mass, units.Gram, 6).String(), "g", "the fillet now")
	p.Let("G", "0", "g", "salt taken up so far")
	p.Let("gone", "0", "g", "gone so far")
}

// meets holds the five components against those of the library.
func meets(p *byhand.Page, m yield.Makeup) {
	for _, c := range []struct {
		symbol, name string
		mass         units.Mass
	}{{"w", "water", m.Water}, {"s", "salt", m.Salt}, {"pr", "protein", m.Protein}, {"f", "fat", m.Fat}, {"ash", "ash",
		m.Ash}} {
		p.Agrees(c.symbol, grams(c.mass), 1e-4, "the "+c.name+" of the table")
	}
	p.Note("Water, salt, protein, fat and ash are those of the table.")
}

// byHand is one step: what is weighed, and what must then have left.
func (st stage) byHand(p *byhand.Page) {
	x := st.exchange
	p.Step("Step "+st.name, balance)
	p.Grams("g", x.Gained.Salt, "salt taken up in it")
	p.Grams("dp", x.Lost.Protein, "protein lost with the drip")
	p.Grams("df", x.Lost.Fat, "fat lost with the drip")
	p.Grams("after", total(st.after), "weighed afterwards")
	p.Work("lost", "m + g − after", "g lost", 6)
	p.Work("w", "w − (lost − dp − df)", "g of water: all else that is lost is water", 6)
	p.Work("s", "s + g", "g of salt", 6)
	p.Work("pr", "pr − dp", "g of protein", 6)
	p.Work("f", "f − df", "g of fat", 6)
	meets(p, st.after)
	p.Work("G", "G + g", "g of salt taken up so far", 6)
	p.Work("gone", "gone + lost", "g gone so far", 6)
	p.Let("m", units.In(total(st.after), units.Gram, 6).String(), "g", "the fillet now")
	p.Work("moist", "100 × w / m", "% moisture", 5)
	p.Work("P", "100 × s / (s + w)", "% water phase salt", 4)
	p.Work("left", "100 × m / M", "% of raw", 5)
	wps, _ := st.after.WaterPhaseSalt()
	p.Meets("P", units.Float(wps, units.Percent), 2e-4, "the water phase salt of the table")
}

func (w walk) targetByHand(p *byhand.Page) {
	p.Step("What the target takes: protein, fat and ash stay, so that water and salt can be solved for", balance,
		brine.DefaultSaltLimit().Citation)
	p.Grams("N", w.raw.Protein+w.raw.Fat+w.raw.Ash, "protein, fat and ash of the raw fillet")
	p.Grams("w0", w.raw.Water, "water of the raw fillet")
	p.Grams("s0", w.raw.Salt, "its own salt")
	p.Let("H", digits(w.Target.Moisture), "%", "moisture wanted")
	p.Let("T", digits(w.Target.WaterPhaseSalt), "%", "water phase salt wanted")
	p.Work("A", "N × H / (100 − H − T)", "g of salt and water together", 7)
	p.Work("st", "A × T / 100", "g of salt", 6)
	p.Work("up", "st − s0", "g of salt to take up", 6)
	p.Meets("up", grams(w.target.Gained.Salt), 2e-4, "the salt to take up above")
	p.Work("dry", "w0 − (A − st)", "g of water to lose", 6)
	p.Meets("dry", grams(w.target.Lost.Water), 1e-4, "the water to lose above")
	p.Work("end", "M + up − dry", "g in the end", 6)
}

func (w walk) tiedByHand(p *byhand.Page) {
	if w.Laboratory == nil {
		return
	}
	l := w.Laboratory
	p.Step("Yield by what is not lost", w.tied.Citation)
	p.Let("wl", digits(l.Water), "%", "water of the finished fillet, by the laboratory")
	p.Let("bl", digits(l.Protein), "%", "protein")
	p.Let("cl", digits(l.Fat), "%", "fat")
	p.Work("Yp", "100 × b / bl", "% by protein", 5)
	p.Work("Yd", "100 × (100 − a) / (100 − wl)", "% by dry matter", 5)
	p.Work("Yf", "100 × c / cl", "% by fat", 5)
	p.Meets("Yp", units.Float(w.tied.Protein, units.Percent), 1e-4, "the yield by protein above")
	p.Meets("Yd", units.Float(w.tied.DryMatter, units.Percent), 1e-4, "the yield by dry matter above")
	p.Meets("Yf", units.Float(w.tied.Fat, units.Percent), 1e-4, "the yield by fat above")
}

func (w walk) servingByHand(p *byhand.Page) {
	factors := map[yield.EnergyFactors][2]string{yield.FishFactors: {"4.27", "9.02"},
		yield.GeneralFactors: {"4", "9"}}[w.eaten.factors]
	p.Step("A serving: each component by its share of the smoked fillet", balance)
	p.Grams("q", w.Serving, "a serving")
	p.Work("pq", "pr × q / m", "g of protein", 5)
	p.Work("fq", "f × q / m", "g of fat", 5)
	p.Work("sq", "s × q / m", "g of salt", 5)
	p.Let("kp", factors[0], "kcal/g", "of protein, "+fmt.Sprint(w.eaten.factors))
	p.Let("kf", factors[1], "kcal/g", "of fat")
	p.Work("kcal", "pq × kp + fq × kf", "kcal", 4)
	p.Meets("kcal", units.Float(w.eaten.energy, units.Kilocalorie), 5e-4, "the energy above")
	p.Work("n", "m / q", "servings", 3)
	if w.eaten.omega3 > 0 {
		p.Let("o", digits(w.row.EPA.Value+w.row.DHA.Value), "%", "EPA and DHA of the raw food, as printed")
		p.Work("oq", "fq × o / c", "g in a serving, if they stay with the fat", 4)
		p.Meets("oq", grams(w.eaten.omega3), 5e-4, "EPA and DHA above")
	}
}
