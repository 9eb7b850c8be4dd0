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
	About      string           `wire:"required" help:"what this fillet is, and that it is invented if it is"`
	Title      string           `wire:"required" help:"its name"`
	Fillet     fillet           `wire:"required"`
	Steps      []weighing       `wire:"required"`
	Target     target           `wire:"required"`
	Laboratory *yield.Proximate `help:"analysis of the finished fillet; left out where there is none"`
	Serving    units.Mass       `wire:"required"`
}

type fillet struct {
	Name    string      `wire:"required"`
	Mass    units.Mass  `wire:"required" help:"raw"`
	Food    int         `wire:"required" help:"its number in the composition data"`
	Release cite.Source `wire:"required" help:"of the composition data"`
}

// weighing is the mass after a step, the salt taken up in it and what dripped off besides water.
type weighing struct {
	Name string     `wire:"required"`
	Mass units.Mass `wire:"required" help:"after the step"`
	Salt units.Mass `help:"taken up in it"`
	Drip drip
}

type drip struct {
	Protein units.Mass `help:"lost with the drip"`
	Fat     units.Mass `help:"lost with the drip"`
}

type target struct {
	Moisture       units.Ratio `wire:"required"`
	WaterPhaseSalt units.Ratio `wire:"required"`
}

func load(path string) (input, error) {
	var i input
	if err := form.Read(path, &i); err != nil {
		return input{}, err
	}
	switch {
	case i.Fillet.Mass <= 0:
		return input{}, fmt.Errorf("%s: fillet.mass: expected more than 0 g", path)
	case len(i.Steps) == 0:
		return input{}, fmt.Errorf("%s: steps: expected at least one", path)
	case i.Serving <= 0:
		return input{}, fmt.Errorf("%s: serving: expected more than 0 g", path)
	}
	return i, nil
}
