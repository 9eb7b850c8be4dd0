package main

import (
	"fmt"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/brine/solution"
	"example.org/lakelarder/units"
	"example.org/lakelarder/yield"
)

// walk is the fillet worked out.
type walk struct {
	input
	row    yield.Composition
	raw    yield.Makeup
	stages []stage
	lost   yield.Makeup // by all steps
	gained yield.Makeup
	final  yield.Makeup
	target yield.Exchange
	tied   yield.TieYield
	eaten  serving
}

// stage is the fillet after a step.
type stage struct {
	name     string
	exchange yield.Exchange
	before   yield.Makeup
	after    yield.Makeup
}

// serving is what one serving of the finished fillet holds.
type serving struct {
	part    yield.Makeup
	energy  units.Energy
	omega3  units.Mass
	factors yield.EnergyFactors
}

func (i input) walk() (walk, error) {
	w := walk{input: i}
	var err error
	if w.row, err = yield.FindComposition(i.Fillet.Food, i.Fillet.Release); err != nil {
		return walk{}, fmt.Errorf("fillet.food: %w", err)
	}
	if w.raw, err = w.row.Makeup(i.Fillet.Mass); err != nil {
		return walk{}, fmt.Errorf("fillet: %w", err)
	}
	w.final = w.raw
	for n, step := range i.Steps {
		if err := w.step(step); err != nil {
			return walk{}, fmt.Errorf("steps[%d] (%s): %w", n, step.Name, err)
		}
	}
	if _, err := brine.WaterPhaseSalt(w.final.Salt, w.final.Water); err != nil {
		return walk{}, fmt.Errorf("steps: the finished fillet: %w", err)
	}
	saturation, _ := solution.Saturation()
	if err := units.Check("water phase salt", i.Target.WaterPhaseSalt, 0, saturation); err != nil {
		return walk{}, fmt.Errorf("target: %w", err)
	}
	if w.target, err = w.raw.ToMoistureAndSalt(i.Target.Moisture, i.Target.WaterPhaseSalt); err != nil {
		return walk{}, fmt.Errorf("target: %w", err)
	}
	if i.Laboratory != nil {
		if w.tied, err = yield.TieSubstance(w.row.Proximate, *i.Laboratory); err != nil {
			return walk{}, fmt.Errorf("laboratory: %w", err)
		}
	}
	if err := w.serve(); err != nil {
		return walk{}, fmt.Errorf("serving: %w", err)
	}
	return w, nil
}

// step takes the drip off and lets water make up the rest of the weighing.
func (w *walk) step(s weighing) error {
	drip := yield.Makeup{Protein: s.Drip.Protein, Fat: s.Drip.Fat}
	drained, err := w.final.Less(drip)
	if err != nil {
		return err
	}
	x, err := drained.ToWeight(s.Salt, s.Mass)
	if err != nil {
		return err
	}
	if x.Lost, err = x.Lost.Plus(drip); err != nil {
		return err
	}
	st := stage{name: s.Name, exchange: x, before: w.final}
	if st.after, err = w.final.After(x); err != nil {
		return err
	}
	w.final = st.after
	w.stages = append(w.stages, st)
	if w.lost, err = w.lost.Plus(x.Lost); err != nil {
		return err
	}
	w.gained, err = w.gained.Plus(x.Gained)
	return err
}

// serve takes one serving out of the finished fillet, each component by its share of it.
func (w *walk) serve() error {
	whole, err := w.final.Total()
	if err != nil {
		return err
	}
	if w.Serving > whole {
		return fmt.Errorf("%v, and the finished fillet is %v", w.Serving, whole)
	}
	share := func(part units.Mass) units.Mass {
		m, e := units.Prorate(part, w.Serving, whole)
		if err == nil {
			err = e
		}
		return m
	}
	w.eaten.part = yield.Makeup{Salt: share(w.final.Salt), Protein: share(w.final.Protein), Fat: share(w.final.Fat),
		Ash: share(w.final.Ash)}
	w.eaten.part.Water = w.Serving - w.eaten.part.Salt - w.eaten.part.Protein - w.eaten.part.Fat - w.eaten.part.Ash
	if err != nil {
		return err
	}
	// EPA and DHA stay with the fat; a row with neither has none to tell.
	if w.row.EPA.Given && w.row.DHA.Given && w.row.Proximate.Fat > 0 {
		if w.eaten.omega3, err = units.Prorate(w.eaten.part.Fat, w.row.EPA.Value+w.row.DHA.Value,
			w.row.Proximate.Fat); err != nil {
			return err
		}
	}
	w.eaten.factors = w.row.Factors()
	w.eaten.energy, err = w.eaten.factors.Energy(w.eaten.part.Protein, w.eaten.part.Fat)
	return err
}
