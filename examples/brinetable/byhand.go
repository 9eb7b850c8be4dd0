package main

import (
	"io"

	"example.org/lakelarder/brine/solution"
	"example.org/lakelarder/examples/internal/byhand"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// byHand works out one strength on every scale. The densities are taken from the table as they are.
func (b brine) byHand(out io.Writer) error {
	p := byhand.New(out, b.Share.String()+" brine on every scale")
	_, saturation := solution.Saturation()
	p.Step("Strength to water, and on the salometer", saturation)
	p.Let("x", units.In(b.Share, units.Percent, 6).String(), "%", "salt by mass of the brine")
	p.Work("r", "x / (100 − x)", "g of salt to 1 g of water", 6)
	p.Meets("r", units.Float(b.PerWater, units.One), 0, "the strength to water above")
	p.Work("S", "100 × x / 26.395", "degrees of the salometer", 5)
	p.Meets("S", units.Float(b.Salometer, units.Percent), 0, "the reading above")
	b.volumesByHand(p)
	p.Step("What makes a batch", cite.Citation{Where: "mass balance", Basis: cite.Computed})
	p.Let("V", units.In(b.makeup.Volume, units.Millilitre, 6).String(), "mL", "of brine")
	p.Work("M", "V × ρ", "g of brine", 9)
	p.Work("salt", "M × x / 100", "g", 7)
	p.Meets("salt", units.Float(b.makeup.Salt, units.Gram), 2e-6, "the salt above")
	p.Work("water", "M − salt", "g", 7)
	p.Meets("water", units.Float(b.makeup.Water, units.Gram), 2e-6, "the water above")
	b.activityByHand(p)
	return p.Close()
}

// volumesByHand is salt to a volume, and the two scales that read the density.
func (b brine) volumesByHand(p *byhand.Page) {
	density := func(symbol string, share units.Ratio, t units.Temperature, what string) {
		d, err := solution.Density(share, t)
		if err != nil {
			return // the strength was worked out with it
		}
		p.Let(symbol, byhand.Digits(units.Float(d, units.GramPerMillilitre), 8), "g/mL", what)
	}
	p.Step("Salt to a volume", solution.DensityCitation())
	density("ρ", b.Share, b.Temperature, "density of the brine at its temperature")
	density("ρw", 0, b.Temperature, "density of water there")
	p.Work("B", "1000 × ρ × x / 100", "g of salt in 1 L of brine", 6)
	p.Meets("B", units.Float(b.PerVolumeBrine, units.GramPerLitre), 1e-5, "the salt in the brine above")
	p.Work("W", "1000 × r × ρw", "g of salt to 1 L of water", 5)
	p.Meets("W", units.Float(b.PerVolumeWater, units.GramPerLitre), 1e-4, "the salt to its volume above")
	p.Step("Specific gravity at 60 °F (15.6 °C), and degrees Baumé of modulus 145", solution.DensityCitation())
	density("ρ60", b.Share, units.Fahrenheit(60), "density of the brine")
	density("ρw60", 0, units.Fahrenheit(60), "density of water")
	p.Work("g", "ρ60 / ρw60", "", 8)
	p.Meets("g", units.Float(b.SpecificGravity, units.One), 1e-7, "the gravity above")
	p.Work("Bé", "145 − 145 / g", "degrees Baumé", 4)
	p.Meets("Bé", units.Float(b.Baume, units.One), 2e-4, "the degrees above")
}

func (b brine) activityByHand(p *byhand.Page) {
	p.Step("Water activity: osmotic coefficient φ of salt in water at 25 °C", solution.ActivityCitation())
	p.Work("m", "1000 × x / (58.4428 × (100 − x))", "mol of salt to 1 kg of water", 7)
	p.Work("q", "1 + 1.4495 × sqrt(m)", "", 7)
	p.Work("debye", "0.5108 / (1.4495^3 × m) × (q − 2 × ln(q) − 1 / q)", "", 7)
	p.Work("rest", "0.020442 × m / 2 + 2 × 0.0057927 × m^2 / 3 − 3 × 0.00028860 × m^3 / 4", "", 7)
	p.Work("φ", "1 − 2.302585 × (debye − rest)", "", 6)
	p.Work("aw", "exp(-2 × 0.01801528 × m × φ)", "", 5)
	p.Meets("aw", units.Float(b.activity, units.One), 0, "the water activity above")
}
