package main

import (
	"fmt"
	"time"

	"example.org/lakelarder/examples/internal/form"
	"example.org/lakelarder/units"
)

// list is the input: fillets, and the cure for all of them.
type list struct {
	About    string   `wire:"required" help:"what this list is, and that it is invented if it is"`
	Title    string   `wire:"required" help:"its name"`
	Fillets  []fillet `wire:"required"`
	Cure     cure     `wire:"required"`
	Salt     string   `wire:"required" help:"of the kitchen volumes: a salt with a published weight"`
	Sugar    string   `help:"of the kitchen volumes, where there is sugar in the cure"`
	PerLayer int      `wire:"required" help:"fillets that lie side by side in the box"`
}

type fillet struct {
	Name      string       `wire:"required"`
	Mass      units.Mass   `wire:"required"`
	Thickness units.Length `wire:"required"`
	Water     units.Ratio  `wire:"required" help:"share of water in the raw fish"`
}

type cure struct {
	SaltToFish  units.Ratio   `wire:"required" help:"by weight"`
	SugarToSalt units.Ratio   `help:"by weight"`
	Time        time.Duration `wire:"required" help:"in the salt, at most 240 h"`
	Drip        units.Ratio   `help:"water drawn out, of the raw weight"`
	SmokingLoss units.Ratio   `help:"water lost in drying and smoking, of the raw weight"`
}

func load(path string) (list, error) {
	var l list
	if err := form.Read(path, &l); err != nil {
		return list{}, err
	}
	if len(l.Fillets) == 0 {
		return list{}, fmt.Errorf("%s: fillets: expected at least one", path)
	}
	if l.Cure.Time <= 0 || l.Cure.Time > 240*time.Hour {
		return list{}, fmt.Errorf("%s: cure.time: expected more than 0 h and no more than 240 h", path)
	}
	return l, nil
}
