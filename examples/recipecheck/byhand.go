package main

import (
	"io"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/brine/solution"
	"example.org/lakelarder/examples/internal/byhand"
	"example.org/lakelarder/pressure"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
)

// byHand is the arithmetic behind the verdict: steam at the setting, the dose, the salt in the water, and by how much a
// figure falls short.
func (j judged) byHand(w io.Writer, system units.System) error {
	p := byhand.New(w, j.Title)
	if err := j.steamByHand(p, system); err != nil {
		return err
	}
	j.doseByHand(p)
	j.bestByHand(p)
	j.estimateByHand(p)
	for _, f := range j.Findings {
		apartByHand(p, f, system)
	}
	return p.Close()
}

// steamByHand is the steam at the published pressure, or, where none governs, at the one that the recipe states.
func (j judged) steamByHand(p *byhand.Page, system units.System) error {
	if j.Process == nil || !j.recipe.Process.Altitude.Given {
		return nil
	}
	setting, from := j.recipe.Process.Pressure, "stated; none is published"
	if g := j.Process.Governing; g != (process.Schedule{}) {
		setting, from = units.State(g.Pressure), "published, on a true gauge"
	}
	air, err := pressure.AirAt(j.recipe.Process.Altitude.Value)
	if err != nil || !setting.Given {
		return err
	}
	steam, err := air.SteamUnder(setting.Value)
	if err != nil {
		return err
	}
	p.Air(j.recipe.Process.Altitude.Value, air.Pressure())
	p.Steam(setting.Value, from, steam, system)
	return nil
}

func (j judged) doseByHand(p *byhand.Page) {
	c := j.recipe.Cure
	if c == nil || !c.Salt.Given {
		return
	}
	p.Step("Salt of the recipe", computed)
	switch dose := j.Cure.SaltToFish; {
	case dose.Given && c.Fish.Given:
		p.Grams("S", c.Salt.Value, "salt")
		p.Grams("M", c.Fish.Value, "raw fish")
		p.Work("d", "100 × S / M", "% of salt to fish", 5)
		p.Meets("d", units.Float(dose.Value, units.Percent), 0, "the dose above, unless the recipe states a lesser one")
	case j.Cure.Strength.Given && c.Water.Given:
		p.Grams("S", c.Salt.Value, "salt")
		p.Let("V", units.In(c.Water.Value, units.Litre, 6).String(), "L", "water")
		p.Let("ρ", "999.019", "g/L", "density of water at 60 °F (15.6 °C)")
		p.Work("B", "100 × S / (S + V × ρ)", "% of salt in the brine, by mass", 5)
	}
	if c.Sugar.Given {
		p.Grams("U", c.Sugar.Value, "sugar")
		p.Work("us", "U / S", "sugar to salt", 4)
	}
}

// Water of raw salmon and trout, of 100 g: the driest and the wettest of the composition tables.
const driest, wettest = "64.89", "75.67"

// bestByHand is the mass balance of the most that a dry cure can come to.
func (j judged) bestByHand(p *byhand.Page) {
	if j.Cure == nil || !j.Cure.SaltToFish.Given || !j.recipe.Cure.Loss.Given || j.recipe.forJars() {
		return
	}
	p.Step("Water phase salt with all of the salt in the driest fish: of 100 g raw, the salt stays and the water goes",
		cite.Citation{Where: "mass balance", Basis: cite.Computed}, j.Cure.Limit.Citation)
	p.Let("s", units.In(j.Cure.SaltToFish.Value, units.Percent, 6).String(), "g", "salt")
	p.Let("w", driest, "g", "water of the driest raw salmon or trout")
	p.Let("L", units.In(j.recipe.Cure.Loss.Value, units.Percent, 6).String(), "g", "water lost in drying and smoking")
	p.Work("best", "100 × s / (s + w − L)", "% at most", 4)
	p.Let("least", units.In(j.Cure.Limit.Least, units.Percent, 6).String(), "%", "published")
	p.Work("over", "best − least", "% (below zero: no time is long enough)", 3)
}

// estimateByHand is the average water phase salt that diffusion brings, low, likely and high.
func (j judged) estimateByHand(p *byhand.Page) {
	if j.Cure == nil || j.Cure.Estimate.Citation.IsZero() {
		return
	}
	c, e, d := j.recipe.Cure, j.Cure.Estimate, brine.FleshDiffusivity()
	saturated, from := solution.Saturation()
	if j.Cure.Strength.Given {
		saturated = min(saturated, j.Cure.Strength.Value)
	}
	p.Step("Salt that diffuses in: slab with a constant surface, average of the thickness", e.Citation, d.Citation,
		from)
	p.Let("r", units.In(saturated, units.Percent, 6).String(), "%", "salt in the brine at the surface, by mass")
	p.Work("R", "r / (100 − r)", "g of salt to 1 g of water", 6)
	p.Let("t", byhand.Digits(c.Time.Value.Seconds(), 7), "s", "in the salt")
	p.Let("h", units.In(c.Thickness.Value, units.Metre, 6).String(), "m", "thickness")
	p.Let("k", byhand.Digits(float64(c.Faces), 1), "", "faces that salt comes in by")
	for _, one := range []struct {
		name  string
		d     units.Diffusivity
		water string
		found units.Ratio
	}{{"low", d.Low, wettest, e.Low}, {"likely", d.Likely, "70.28", e.Likely}, {"high", d.High, driest, e.High}} {
		j.taken(p, one.name, one.d, one.water, one.found)
	}
}

// taken is one of the three estimates.
func (j judged) taken(p *byhand.Page, name string, d units.Diffusivity, water string, found units.Ratio) {
	p.Step("The "+name+" estimate", j.Cure.Estimate.Citation)
	p.Let("D", byhand.Digits(units.Float(d, units.SquareMetrePerSecond), 8), "m²/s", "diffusivity of salt in flesh")
	p.Let("w", water, "g", "water of 100 g raw fish")
	p.Work("Fo", "D × t / (h / k)^2", "(Fourier number)", 6)
	p.Uptake("E", "Fo")
	p.Work("s", "w × E × R", "g of salt taken up", 6)
	if dose := units.Float(j.Cure.SaltToFish.Value, units.Percent); j.Cure.SaltToFish.Given && dose < p.Float("s") {
		p.Let("s", byhand.Digits(dose, 6), "g", "as no more was put on")
	}
	p.Let("L", units.In(j.recipe.Cure.Loss.Value, units.Percent, 6).String(), "g", "water lost in drying and smoking")
	p.Work("P", "100 × s / (s + w − L)", "% water phase salt", 4)
	p.Meets("P", units.Float(found, units.Percent), 2e-4, "the "+name+" estimate above")
}

// apartByHand is by how much a stated figure and a published one are apart.
func apartByHand(p *byhand.Page, f verdict.Finding, system units.System) {
	stated, wanted := f.Stated.Low, f.Wanted.Low
	if past, known := stated.Compare(f.Wanted.High); known && past > 0 {
		wanted = f.Wanted.High
	}
	if !f.By.IsStated() || !stated.IsStated() || !wanted.IsStated() {
		return
	}
	p.Apart(f.What, stated, wanted, f.By, system, f.Citation)
}
