package main

import (
	"fmt"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/brine/solution"
	"example.org/lakelarder/units"
)

// plan is everything worked out, before anything is printed.
type plan struct {
	list
	batch   brine.Batch
	volumes brine.CureVolumes // of the whole batch
	layers  []brine.Layer
	rows    []row
}

// row is one fillet.
type row struct {
	fillet
	cure     brine.Cure
	buried   brine.SaltingTime // had it been buried in salt
	noTime   error
	curing   brine.Curing
	end      brine.Equilibrium
	before   brine.Estimate // water phase salt when the time is over
	after    brine.Estimate // and after smoking
	required units.Mass     // salt to hold for the limit after smoking
}

// slab is the fillet as diffusion sees it: the skin lets nothing through.
func (f fillet) slab() brine.Slab { return brine.Slab{Thickness: f.Thickness, Faces: brine.OneFace} }

// thickest is the row that salt goes through last.
func (p plan) thickest() row {
	last := p.rows[0]
	for _, r := range p.rows {
		if r.Thickness > last.Thickness {
			last = r
		}
	}
	return last
}

func (l list) plan() (plan, error) {
	p := plan{list: l}
	var weights []units.Mass
	for _, f := range l.Fillets {
		weights = append(weights, f.Mass)
	}
	sugar, err := l.Cure.SugarToSalt.Of(units.Kilogram)
	if err != nil {
		return plan{}, fmt.Errorf("cure.sugarToSalt: %w", err)
	}
	mix, err := brine.MixOf(units.Kilogram, sugar)
	if err != nil {
		return plan{}, fmt.Errorf("cure.sugarToSalt: %w", err)
	}
	if p.batch, err = brine.CureEach(weights, l.Cure.SaltToFish, mix); err != nil {
		return plan{}, err
	}
	if p.layers, err = p.batch.Layers(l.PerLayer); err != nil {
		return plan{}, err
	}
	if p.volumes, err = volumes(l, p.batch); err != nil {
		return plan{}, err
	}
	for i, f := range l.Fillets {
		r, err := l.row(f, p.batch.Cures[i])
		if err != nil {
			return plan{}, fmt.Errorf("fillets[%d] (%s): %w", i, f.Name, err)
		}
		p.rows = append(p.rows, r)
	}
	return p, nil
}

// volumes is the whole batch in cups and spoons of the named ingredients.
func volumes(l list, b brine.Batch) (brine.CureVolumes, error) {
	salt, err := brine.FindIngredient(l.Salt)
	if err != nil {
		return brine.CureVolumes{}, fmt.Errorf("salt: %w", err)
	}
	var sugar brine.Ingredient
	if b.Sugar > 0 {
		if sugar, err = brine.FindIngredient(l.Sugar); err != nil {
			return brine.CureVolumes{}, fmt.Errorf("sugar: %w", err)
		}
	}
	return brine.Cure{Salt: b.Salt, Sugar: b.Sugar}.Volumes(salt, sugar)
}

func (l list) row(f fillet, c brine.Cure) (row, error) {
	r := row{fillet: f, cure: c, curing: brine.Curing{Raw: f.Mass, Salt: c.Salt}}
	r.buried, r.noTime = brine.FindSaltingTime(f.Thickness, brine.FatFish)
	for _, part := range []struct {
		name  string
		to    *units.Mass
		share units.Ratio
	}{{"water", &r.curing.Water, f.Water}, {"drip", &r.curing.Drip, l.Cure.Drip}, {"smokingLoss", &r.curing.Drying,
		l.Cure.SmokingLoss}} {
		var err error
		if *part.to, err = part.share.Of(f.Mass); err != nil {
			return row{}, fmt.Errorf("%s: %w", part.name, err)
		}
	}
	var err error
	if r.end, err = r.curing.Equilibrium(); err != nil {
		return row{}, err
	}
	saturated, _ := solution.Saturation()
	if r.before, err = f.slab().WaterPhaseSaltRange(saturated, r.end.Cured, brine.FleshDiffusivity(),
		l.Cure.Time); err != nil {
		return row{}, err
	}
	if r.after, err = smoked(r.curing, r.before); err != nil {
		return row{}, err
	}
	r.required, err = brine.SaltFor(brine.DefaultSaltLimit().Least, r.curing.Water-r.curing.Drip-r.curing.Drying)
	return r, err
}

// smoked carries the range through the loss of the smokehouse: the salt stays, the water goes.
func smoked(c brine.Curing, before brine.Estimate) (brine.Estimate, error) {
	after := before
	for _, end := range []*units.Ratio{&after.Low, &after.Likely, &after.High} {
		salt, err := units.Prorate(c.Water-c.Drip, *end, units.One-*end)
		if err != nil {
			return brine.Estimate{}, err
		}
		if *end, err = brine.WaterPhaseSalt(salt, c.Water-c.Drip-c.Drying); err != nil {
			return brine.Estimate{}, err
		}
	}
	return after, nil
}
