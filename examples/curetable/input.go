package main

import (
	"fmt"

	"example.org/lakelarder/examples/internal/form"
	"example.org/lakelarder/units"
)

// list is the input: fillets, and the cure for all of them.
type list struct {
	Note    string
	Title   string
	Fillets []fillet
	Cure    cure
	Salt    string // ingredients of the kitchen volumes
	Sugar   string
	Layer   int `json:"perLayer"`
}

type fillet struct {
	Name      string
	Mass      units.Mass
	Thickness units.Length
	Water     units.Ratio // share of water in the raw fish
}

type cure struct {
	SaltToFish  units.Ratio
	SugarToSalt units.Ratio
	Hours       float64
	Drip        units.Ratio // water drawn out, of raw weight
	SmokingLoss units.Ratio // water lost in drying and smoking, of raw weight
}

func load(path string) (list, error) {
	var l list
	if err := form.Read(path, &l); err != nil {
		return list{}, err
	}
	switch {
	case len(l.Fillets) == 0:
		return list{}, fmt.Errorf("fillets: expected at least one")
	case !(l.Cure.Hours > 0 && l.Cure.Hours <= 240):
		return list{}, fmt.Errorf("cure.hours: expected more than 0 and no more than 240")
	case l.Layer < 1:
		return list{}, fmt.Errorf("perLayer: expected at least 1")
	}
	return l, nil
}
