package main

import (
	"fmt"
	"sort"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield"
)

// batch is the fish of one species that go one way.
type batch struct {
	species yield.Species
	count   int
	whole   units.Mass
	weights []units.Mass // whole, heaviest first
}

// divide parts the catch: of each species the largest go to the smoker, the rest into jars.
func divide(s season) (smoker, jars []batch) {
	var order []yield.Species
	weights := map[yield.Species][]units.Mass{}
	for _, f := range s.Fish {
		if weights[f.Species] == nil {
			order = append(order, f.Species)
		}
		weights[f.Species] = append(weights[f.Species], f.Mass)
	}
	for _, species := range order {
		all := weights[species]
		sort.Slice(all, func(i, j int) bool { return all[i] > all[j] })
		n := s.toSmoker(species)
		smoker = appendBatch(smoker, species, all[:n])
		jars = appendBatch(jars, species, all[n:])
	}
	return smoker, jars
}

func appendBatch(to []batch, species yield.Species, weights []units.Mass) []batch {
	if len(weights) == 0 {
		return to
	}
	b := batch{species: species, count: len(weights), weights: weights}
	for _, m := range weights {
		b.whole += m
	}
	return append(to, b)
}

// chain leads a batch to a stage: by the households' own weighing where they have one, for salmon by the
// planning defaults step by step.
func (s season) chain(b batch, to yield.Stage) (yield.Outcome, string, error) {
	if share, ok := s.ownShare(b.species, to); ok {
		o, err := yield.Chain(b.whole, yield.Step{Name: to.String(), Kept: share, Rest: yield.Trim})
		return o, "own weighing", err
	}
	if !isSalmon(b.species) {
		return yield.Outcome{}, "", fmt.Errorf("weighed: no share of %s is known for %s; weigh one and add it", to,
			b.species)
	}
	stages := []yield.Stage{yield.Bled, yield.Gutted, yield.Headed, yield.CanningReady}
	if to == yield.SkinOnFillet {
		stages = []yield.Stage{yield.Bled, yield.Gutted, yield.SkinOnFillet}
	}
	var steps []yield.Step
	before, after := units.One, yield.Loss
	for _, stage := range stages {
		share, err := yield.PlanningDefault(stage)
		if err != nil {
			return yield.Outcome{}, "", err
		}
		kept, err := units.RatioOf(share.Likely, before)
		if err != nil {
			return yield.Outcome{}, "", err
		}
		steps = append(steps, yield.Step{Name: stage.String(), Kept: kept, Rest: after})
		before, after = share.Likely, yield.Trim
	}
	o, err := yield.Chain(b.whole, steps...)
	return o, "planning default", err
}

// isSalmon reports whether the planning defaults for lake-run salmon are meant for the species.
func isSalmon(species yield.Species) bool {
	switch species {
	case yield.Coho, yield.Chinook, yield.AtlanticSalmon, yield.Pink:
		return true
	}
	return false
}
