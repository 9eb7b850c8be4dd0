package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"os"
	"path/filepath"

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
	data, err := os.ReadFile(path)
	if err != nil {
		return list{}, err
	}
	var l list
	decoder := json.NewDecoder(bytes.NewReader(data))
	decoder.DisallowUnknownFields()
	if err := decoder.Decode(&l); err != nil {
		line := 1 + bytes.Count(data[:min(int(decoder.InputOffset()), len(data))], []byte("\n"))
		return list{}, fmt.Errorf("%s: near line %d: %w", filepath.Base(path), line, err)
	}
	if _, err := decoder.Token(); err != io.EOF {
		return list{}, fmt.Errorf("%s: expected one list and nothing after it", filepath.Base(path))
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
