package main

import (
	"fmt"
	"io"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/brine/solution"
	"example.org/lakelarder/examples/internal/byhand"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// byHand fills the first fillet into the formulas. They are in grams, whatever the units of the tables.
func (p plan) byHand(w io.Writer) error {
	r := p.rows[0]
	page := byhand.New(w, "the cure of "+r.Name)
	r.weighByHand(page, p.Cure)
	r.evenedOutByHand(page)
	limit := brine.DefaultSaltLimit()
	page.Step("Salt that the fish must hold for the limit after smoking", limit.Citation)
	page.Let("p", digits(limit.Least), "%", "published limit")
	page.Work("need", "p / (100 − p) × (w − D − L)", "g", 5)
	page.Meets("need", units.Float(r.required, units.Gram), 2e-4, "the salt owed above")
	r.diffusionByHand(page, p.Cure)
	return page.Close()
}

var balance = cite.Citation{Where: "mass balance: the salt stays, the water goes", Basis: cite.Computed}

func digits(r units.Ratio) string { return units.In(r, units.Percent, 6).String() }

func (r row) weighByHand(p *byhand.Page, c cure) {
	p.Step("What to weigh", balance)
	p.Grams("M", r.Mass, "fillet")
	p.Let("d", digits(c.SaltToFish), "%", "salt to fish")
	p.Work("S", "M × d / 100", "g of salt", 5)
	p.Meets("S", units.Float(r.cure.Salt, units.Gram), 2e-5, "the salt above")
	p.Let("u", digits(c.SugarToSalt), "%", "sugar to salt")
	p.Work("U", "S × u / 100", "g of sugar", 5)
	p.Let("a", digits(r.Water), "%", "water of the raw fish")
	p.Work("w", "M × a / 100", "g of water", 6)
	p.Let("b", digits(c.Drip), "%", "water drawn out, of the raw weight")
	p.Work("D", "M × b / 100", "g of drip", 6)
	p.Let("l", digits(c.SmokingLoss), "%", "water lost in drying and smoking, of the raw weight")
	p.Work("L", "M × l / 100", "g of water", 6)
}

func (r row) evenedOutByHand(p *byhand.Page) {
	p.Step("Water phase salt when all the salt has evened out", r.end.Citation)
	p.Work("P0", "100 × S / (S + w)", "% when the cure is done", 4)
	p.Work("K", "S × (w − D) / w", "g of salt kept, the rest is in the drip", 5)
	p.Meets("K", units.Float(r.end.Kept, units.Gram), 5e-5, "the salt kept above")
	p.Work("P1", "100 × K / (K + w − D − L)", "% after smoking", 4)
	p.Meets("P1", units.Float(r.end.Final, units.Percent), 2e-4, "the share evened out above")
}

func (r row) diffusionByHand(p *byhand.Page, c cure) {
	saturated, from := solution.Saturation()
	d := brine.FleshDiffusivity()
	p.Step("Salt is slow: slab with one open face and a constant surface, average of the thickness", r.before.Citation,
		d.Citation, from)
	p.Let("r", digits(saturated), "%", "salt at the surface, by mass of the brine")
	p.Work("R", "r / (100 − r)", "g of salt to 1 g of water", 6)
	p.Let("t", byhand.Digits(c.Time.Seconds(), 7), "s", "in the salt")
	p.Let("h", units.In(r.Thickness, units.Metre, 6).String(), "m", "thickness")
	for _, one := range []struct {
		name          string
		d             units.Diffusivity
		before, after units.Ratio
	}{{"low", d.Low, r.before.Low, r.after.Low}, {"likely", d.Likely, r.before.Likely, r.after.Likely}, {"high", d.High,
		r.before.High, r.after.High}} {
		p.Step(fmt.Sprintf("The %s end", one.name))
		p.Let("δ", byhand.Digits(units.Float(one.d, units.SquareMetrePerSecond), 8), "m²/s",
			"diffusivity of salt in flesh")
		p.Work("Fo", "δ × t / h^2", "(Fourier number)", 6)
		p.Uptake("E", "Fo")
		p.Work("x", "E × R", "g of salt to 1 g of water", 6)
		p.Work("B", "100 × x / (1 + x)", "% after the cure", 4)
		if p.Float("B") > p.Float("P0") {
			p.Note("All of the salt is in before: P0 is the most that it can be.")
			p.Work("B", "P0", "%", 4)
		}
		p.Meets("B", units.Float(one.before, units.Percent), 3e-4, "the "+one.name+" end after the cure")
		p.Work("k", "B / (100 − B) × (w − D)", "g of salt in the fish", 5)
		p.Work("A", "100 × k / (k + w − D − L)", "% after smoking", 4)
		p.Meets("A", units.Float(one.after, units.Percent), 5e-4, "the "+one.name+" end after smoking")
	}
}
