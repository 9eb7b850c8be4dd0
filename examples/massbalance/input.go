package main

import (
	"fmt"

	"example.org/lakelarder/examples/internal/form"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield"
)

// input is one fillet, the steps it went through as they were weighed, and what is asked of it.
type input struct {
	Note       string
	Title      string
	Fillet     fillet
	Steps      []weighing
	Target     target
	Laboratory yield.Proximate // of the finished fillet; left out where there is none
	Serving    units.Mass
}

type fillet struct {
	Name    string
	Mass    units.Mass
	Food    int
	Release cite.Source
}

// weighing is the mass after a step, the salt taken up in it and what dripped off besides water.
type weighing struct {
	Name string
	Mass units.Mass
	Salt units.Mass
	Drip struct{ Protein, Fat units.Mass }
}

type target struct {
	Moisture       units.Ratio
	WaterPhaseSalt units.Ratio
}

// analysed reports whether a laboratory's analysis was given.
func (i input) analysed() bool { return i.Laboratory != yield.Proximate{} }

func load(path string) (input, error) {
	var i input
	if err := form.Read(path, &i); err != nil {
		return input{}, err
	}
	switch {
	case i.Fillet.Mass <= 0:
		return input{}, fmt.Errorf("fillet.mass: expected more than 0 g")
	case len(i.Steps) == 0:
		return input{}, fmt.Errorf("steps: expected at least one")
	case i.Serving <= 0:
		return input{}, fmt.Errorf("serving: expected more than 0 g")
	}
	return i, nil
}
