package brine

import (
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Ingredient is one weighing of a named salt or sugar: a measure of Volume holds Mass. It is the only way between a
// mass and a volume here, because a cup of one salt can weigh less than half a cup of another. Take published ones
// from FindIngredient, Ingredients or Weighings, your own from WeighedSalt and WeighedSugar.
type Ingredient struct {
	Name      string       `wire:"required"`
	Substance Substance    `wire:"required"`
	Volume    units.Volume `wire:"required"`
	Mass      units.Mass   `wire:"required"`
	Citation  cite.Citation
}

// MarshalJSON writes the weighing with all it holds.
func (i Ingredient) MarshalJSON() ([]byte, error) { return wire.Marshal(i) }

// UnmarshalJSON reads a weighing strictly, or the name of a published one: "table salt".
func (i *Ingredient) UnmarshalJSON(data []byte) error {
	if len(data) == 0 || data[0] != '"' {
		return wire.Unmarshal(data, i)
	}
	var name string
	if err := wire.Unmarshal(data, &name); err != nil {
		return err
	}
	found, err := FindIngredient(name)
	if err == nil {
		*i = found
	}
	return err
}

// What a poured solid or a syrup can weigh. Solid salt is 2.16 g/mL and honey 1.4, the loosest flakes about 0.6;
// a weighing outside is a slip of a unit. Practice, no source.
const (
	lightest = 200 * units.GramPerLitre
	heaviest = 2_200 * units.GramPerLitre
)

// Density returns mass over volume, rounded to 1e-12 g/mL. An Ingredient without volume, or outside 0.2 to 2.2 g/mL,
// is a RangeError, one without substance an UnsetError.
func (i Ingredient) Density() (units.Density, error) {
	if err := substances.Check(i.Substance); err != nil {
		return 0, err
	}
	if i.Volume <= 0 {
		return 0, units.RangeError{What: "measure of " + i.Name, Got: i.Volume.String(), Low: "0 mL", LowExclusive: true}
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

// MassOf returns what a volume of the ingredient weighs, rounded to the quantum. The volume must not be negative; an
// Ingredient that Density refuses is refused.
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

// WeighedSalt returns a salt that the caller has weighed: so much fills this volume. Weigh a level measure of the
// very box in use, a cup rather than a spoon. The density must lie in 0.2 to 2.2 g/mL: otherwise a RangeError. The
// basis is practice: the weighing is the caller's own.
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

// volumeAs and massAs are VolumeOf and MassOf of an ingredient that must be of a substance.
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

// Substance is what an ingredient brings to a cure. The zero Substance is not stated and is refused.
type Substance uint8

// The substances. Honey and sugar count as Sugar by their whole weight; neither enters water phase salt.
const (
	Salt Substance = iota + 1
	Sugar
)

var substances = word.List[Substance]{What: "substance", Words: []string{"salt", "sugar"}}

// ParseSubstance reads "salt" or "sugar", in capitals or not; anything else is a units.UnknownError.
func ParseSubstance(s string) (Substance, error) { return substances.Parse(s) }

// String is the substance in one word: "salt".
func (s Substance) String() string { return substances.Of(s) }

// MarshalText is String as bytes, empty when the substance is not set; an unknown one is a units.UnknownError.
func (s Substance) MarshalText() ([]byte, error) { return substances.Marshal(s) }

// UnmarshalText is ParseSubstance, and the empty text is a substance that is not set.
func (s *Substance) UnmarshalText(text []byte) error { return substances.Unmarshal(text, s) }

// SubstanceError says that an ingredient is not of the substance that it is wanted for.
type SubstanceError struct {
	Name      string
	Got, Want Substance
}

// Error names the ingredient, its substance and the one expected.
func (e SubstanceError) Error() string {
	return "ingredient \"" + e.Name + "\" is " + e.Got.String() + ": expected " + e.Want.String()
}
