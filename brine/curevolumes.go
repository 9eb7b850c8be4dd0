package brine

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// CureVolumes is a cure in kitchen volumes. It holds for its two ingredients and for no others: their citations
// say how good the volumes are. SugarAs is the zero Ingredient when the cure has no sugar.
type CureVolumes struct {
	Salt     units.Volume
	SaltAs   Ingredient
	Sugar    units.Volume
	SugarAs  Ingredient
	Cautions []cite.Caution
}

var weighIt = cite.Caution{Text: spread + ": these volumes hold for the named ingredients alone, and a scale is better than any of them", Citation: spreadCitation}

// Volumes returns the cure in volumes of the named ingredients, rounded to the quantum; for a spoon or a cup round
// salt up. The first must be a salt and the second a sugar, or anything when the cure has no sugar: otherwise a
// SubstanceError. What Ingredient.Density refuses is refused. The cautions of the cure go along.
func (c Cure) Volumes(salt, sugar Ingredient) (CureVolumes, error) {
	v := CureVolumes{SaltAs: salt}
	var err error
	if v.Salt, err = salt.volumeAs(Salt, c.Salt); err != nil {
		return CureVolumes{}, err
	}
	if c.Sugar != 0 {
		v.SugarAs = sugar
		if v.Sugar, err = sugar.volumeAs(Sugar, c.Sugar); err != nil {
			return CureVolumes{}, err
		}
	}
	v.Cautions = append(append(make([]cite.Caution, 0, len(c.Cautions)+1), c.Cautions...), weighIt)
	return v, nil
}

func (i Ingredient) volumeAs(substance Substance, m units.Mass) (units.Volume, error) {
	if i.Substance != substance {
		return 0, SubstanceError{Name: i.Name, Got: i.Substance, Want: substance}
	}
	return i.VolumeOf(m)
}

func (i Ingredient) massAs(substance Substance, v units.Volume) (units.Mass, error) {
	if i.Substance != substance {
		return 0, SubstanceError{Name: i.Name, Got: i.Substance, Want: substance}
	}
	return i.MassOf(v)
}
