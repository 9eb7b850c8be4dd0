package main

import (
	"example.org/lakelarder/brine"
	"example.org/lakelarder/units"
)

func (p plan) print(s *page) {
	s.Line("%s", p.Title)
	s.Line("%s", p.Note)
	p.weigh(s)
	p.times(s)
	p.salt(s)
	for i, r := range p.rows {
		if i == 0 {
			r.byHand(s, p.Cure)
		}
	}
	s.Close()
}

func (p plan) weigh(s *page) {
	s.Heading("What to weigh")
	s.Line("%-20s %14s %9s %10s %10s", "fillet", "mass", "thick", "salt", "sugar")
	for _, r := range p.rows {
		s.Line("%-20s %14s %9s %10s %10s", r.Name, s.mass(r.Mass), s.length(r.Thickness), s.mass(units.CeilTo(r.cure.Salt, units.Gram/10)), s.mass(r.cure.Sugar))
		s.Warn(r.cure.Cautions...)
	}
	s.Line("%-20s %14s %9s %10s %10s", "in all", s.mass(p.batch.Fish), "", s.mass(units.CeilTo(p.batch.Salt, units.Gram/10)), s.mass(p.batch.Sugar))
	s.Line("by volume, these ingredients alone: %s of %s %s, %s of %s %s",
		s.volume(units.CeilTo(p.volumes.Salt, units.Teaspoon/4)), p.volumes.SaltAs.Name, s.From(p.volumes.SaltAs.Citation),
		s.volume(p.volumes.Sugar), p.volumes.SugarAs.Name, s.From(p.volumes.SugarAs.Citation))
	s.Warn(p.volumes.Cautions...)
	for i, l := range p.layers {
		s.Line("layer %d from the bottom: fillets %v under %s of the mix", i+1, l.Fillets, s.mass(l.Cure))
	}
}

func (p plan) times(s *page) {
	s.Heading("How long")
	s.Line("This cure: %g h for every fillet, at 38 °F or below.", p.Cure.Hours)
	s.Line("In print only for fish buried in salt, fat fish:")
	for _, r := range p.rows {
		if r.noTime != nil {
			s.Line("  %-20s no time in print: %v", r.Name, r.noTime)
			continue
		}
		s.Line("  %-20s %s: %g h %s", r.Name, s.length(r.Thickness), r.buried.Time.Hours(), s.From(r.buried.Citation))
		s.Warn(r.buried.Cautions...)
	}
}

func (p plan) salt(s *page) {
	limit := brine.DefaultSaltLimit()
	s.Heading("Water phase salt to expect")
	s.Line("%-20s %24s %24s %12s", "fillet", "after the cure", "after smoking", "given time")
	for _, r := range p.rows {
		s.Line("%-20s %24s %24s %12s", r.Name, span(r.before), span(r.after), percent(r.end.Final))
		s.Warn(r.before.Cautions...)
	}
	s.Line("low (likely) high, from the published range of diffusivity %s; \"given time\" is when all the salt has evened out %s.",
		s.From(brine.FleshDiffusivity().Citation), s.From(p.rows[0].end.Citation))
	s.Line("The limit for low-oxygen packs is %s %s. Only a laboratory can say that it is met.", limit.Least, s.From(limit.Citation))
}

// byHand is one fillet with its numbers filled into the formulas, in grams whatever the units of the table: the formulas are in grams.
func (r row) byHand(s *page, c cure) {
	s.Heading("By hand: " + r.Name)
	gram := func(m units.Mass) string { return units.Text(m, units.Gram, 2) }
	water, salt := r.curing.Water-r.curing.Drip, r.end.Kept
	s.Line("salt            = fillet × salt to fish = %s × %s = %s", gram(r.Mass), c.SaltToFish, gram(r.cure.Salt))
	s.Line("water           = fillet × its water = %s × %s = %s", gram(r.Mass), r.Water, gram(r.curing.Water))
	s.Line("evened out      = salt/(salt + water) = %s/(%s + %s) = %s", gram(r.cure.Salt), gram(r.cure.Salt), gram(r.curing.Water), percent(r.end.Cured))
	s.Line("salt kept       = salt × (water - drip)/water = %s × (%s - %s)/%s = %s",
		gram(r.cure.Salt), gram(r.curing.Water), gram(r.curing.Drip), gram(r.curing.Water), gram(salt))
	s.Line("after smoking   = kept/(kept + water - drip - loss) = %s/(%s + %s - %s) = %s",
		gram(salt), gram(salt), gram(water), gram(r.curing.Drying), percent(r.end.Final))
	s.Line("needed for %s = p/(1 - p) × water left = 0.035/0.965 × %s = %s: %s", brine.DefaultSaltLimit().Least, gram(water-r.curing.Drying), gram(r.required), enough(r))
	d := brine.FleshDiffusivity()
	s.Line("salt is slow: 0.3586 = 0.26395/(1 - 0.26395) of salt to water at the surface, L the thickness, D the ends of the published range")
	for _, end := range []struct {
		name  string
		d     units.Diffusivity
		share units.Ratio
	}{{"slowest", d.Low, r.before.Low}, {"fastest", d.High, r.before.High}} {
		slab := brine.Slab{Thickness: r.Thickness, Faces: brine.OneFace}
		up, err := slab.Uptake(end.d, hours(c))
		if err == nil {
			fo := units.Float(end.d, units.SquareMetrePerSecond) * hours(c).Seconds() / (units.Float(r.Thickness, units.Metre) * units.Float(r.Thickness, units.Metre))
			s.Line("%s         Fo = D t/L² = %.4f, E = 2 √(Fo/π) = %s; E × 0.3586/(1 + E × 0.3586) = %s, up to the %s of all the salt",
				end.name, fo, percent(up), percent(end.share), percent(r.end.Cured))
		}
	}
}

func enough(r row) string {
	if r.end.Kept >= r.required {
		return "the dose holds it, once it is in"
	}
	return "MORE THAN THE DOSE LEAVES IN THE FISH"
}

func span(e brine.Estimate) string {
	return percent(e.Low) + " (" + percent(e.Likely) + ") " + percent(e.High)
}

func percent(r units.Ratio) string { return units.Text(r, units.Percent, 2) }
