package brine

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Ingredient is one weighing of a named salt or sugar: a measure of Volume holds Mass. It is the only way between
// a mass and a volume here, because a cup of one salt can weigh less than half a cup of another. Take published
// ones from FindIngredient, Ingredients or Weighings, your own from WeighedSalt and WeighedSugar.
type Ingredient struct {
	Name      string
	Substance Substance
	Volume    units.Volume
	Mass      units.Mass
	Citation  cite.Citation
}

// What a poured solid or a syrup can weigh. Solid salt is 2.16 g/mL and honey 1.4, the loosest flakes about 0.6;
// a weighing outside is a slip of a unit. Practice, no source.
const (
	lightest = 200 * units.GramPerLitre
	heaviest = 2_200 * units.GramPerLitre
)

// Density returns mass over volume, rounded to 1e-12 g/mL. An Ingredient without volume, or outside 0.2 to 2.2 g/mL,
// is a RangeError, one without substance a SubstanceError.
func (i Ingredient) Density() (units.Density, error) {
	if i.Substance != Salt && i.Substance != Sugar {
		return 0, SubstanceError{Name: i.Name, Got: i.Substance}
	}
	if i.Volume <= 0 {
		return 0, units.RangeError{What: "measure of " + i.Name, Got: i.Volume.String(), Low: "more than 0 mL"}
	}
	density, err := units.Prorate(units.GramPerLitre, i.Mass, units.Gram)
	if err != nil {
		return 0, err
	}
	if density, err = units.Prorate(density, units.Litre, i.Volume); err != nil {
		return 0, err
	}
	return density, units.Check("density of "+i.Name, density, lightest, heaviest)
}

// MassOf returns what a volume of the ingredient weighs, rounded to the quantum. The volume must not be negative;
// an Ingredient that Density refuses is refused.
func (i Ingredient) MassOf(v units.Volume) (units.Mass, error) {
	if v < 0 {
		return 0, units.RangeError{What: "volume of " + i.Name, Got: v.String(), Low: "0 mL"}
	}
	if _, err := i.Density(); err != nil {
		return 0, err
	}
	return units.Prorate(i.Mass, v, i.Volume)
}

// VolumeOf returns the volume that holds a mass of the ingredient, rounded to the quantum. The mass must not be
// negative; an Ingredient that Density refuses is refused. For a spoon or a cup round salt up: units.CeilTo.
func (i Ingredient) VolumeOf(m units.Mass) (units.Volume, error) {
	if m < 0 {
		return 0, units.RangeError{What: "mass of " + i.Name, Got: m.String(), Low: "0 g"}
	}
	if _, err := i.Density(); err != nil {
		return 0, err
	}
	return units.Prorate(i.Volume, m, i.Mass)
}

// WeighedSalt returns a salt that the caller has weighed himself: so much fills this volume. Weigh a level measure
// of the very box in use, a cup rather than a spoon. The density must lie in 0.2 to 2.2 g/mL: otherwise a
// RangeError. The basis is practice: the weighing is the caller's own.
func WeighedSalt(name string, volume units.Volume, mass units.Mass) (Ingredient, error) {
	return weighed(name, Salt, volume, mass)
}

// WeighedSugar is WeighedSalt for a sugar, a syrup or honey.
func WeighedSugar(name string, volume units.Volume, mass units.Mass) (Ingredient, error) {
	return weighed(name, Sugar, volume, mass)
}

func weighed(name string, substance Substance, volume units.Volume, mass units.Mass) (Ingredient, error) {
	own := Ingredient{
		Name: name, Substance: substance, Volume: volume, Mass: mass,
		Citation: cite.Citation{Where: "weighed by the caller", Basis: cite.Practice},
	}
	if _, err := own.Density(); err != nil {
		return Ingredient{}, err
	}
	return own, nil
}
