package brine

import (
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// CureVolumes is a cure in kitchen volumes. It holds for its two ingredients and for no others: their citations say
// how good the volumes are. SugarAs is the zero Ingredient when the cure has no sugar.
type CureVolumes struct {
	Salt     units.Volume
	SaltAs   Ingredient
	Sugar    units.Volume
	SugarAs  Ingredient
	Cautions []cite.Caution
}

// MarshalJSON writes the volumes as an app shows them.
func (v CureVolumes) MarshalJSON() ([]byte, error) { return wire.Marshal(v) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (v *CureVolumes) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, v) }

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

// VolumeMix is a mix stated in kitchen volumes, by weight: what share of it is salt, what it would be if the volumes
// were weights, and how far the same cups of other salts would be off.
type VolumeMix struct {
	Mix       Mix
	Salt      units.Ratio // share of salt in the mix, by mass
	AsWeights units.Ratio // the same if a part by volume were a part by mass
	Off       units.Ratio // Salt over AsWeights, less 1: above 0 there is more salt than the parts say
	Lightest  units.Ratio // Salt, had the lightest of the weighed salts been taken
	Heaviest  units.Ratio // Salt, had the heaviest been taken
	Cautions  []cite.Caution
}

// MarshalJSON writes the mix as an app shows it.
func (v VolumeMix) MarshalJSON() ([]byte, error) { return wire.Marshal(v) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (v *VolumeMix) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, v) }

// The ends of seven weighings of a quarter cup, unofficial.
const (
	lightestSalt = 33_200 * units.Milligram
	heaviestSalt = 76 * units.Gram
)

// MixOfVolumes returns the mix by weight of a salt and a sugar stated in volumes. The salt must be above 0 and the
// sugar not negative, the ingredients a salt and a sugar that Ingredient.Density accepts: otherwise a RangeError or
// a SubstanceError. Four cups of packed brown sugar to one of table salt are 3 to 1 by weight, and 4.9 to 1 with
// light flakes: weigh instead.
func MixOfVolumes(salt units.Volume, saltAs Ingredient, sugar units.Volume, sugarAs Ingredient) (VolumeMix, error) {
	if err := checkFigure("volume of salt", salt, leastVolume, largestBrine); err != nil {
		return VolumeMix{}, err
	}
	if err := checkFrom0("volume of sugar", sugar, leastVolume, largestBrine); err != nil {
		return VolumeMix{}, err
	}
	saltMass, err := saltAs.massAs(Salt, salt)
	if err != nil {
		return VolumeMix{}, err
	}
	var sugarMass units.Mass
	if sugar > 0 {
		if sugarMass, err = sugarAs.massAs(Sugar, sugar); err != nil {
			return VolumeMix{}, err
		}
	}
	var v VolumeMix
	if v.Mix, err = MixOf(saltMass, sugarMass); err != nil {
		return VolumeMix{}, err
	}
	if v.AsWeights, err = units.RatioOf(salt, salt+sugar); err != nil {
		return VolumeMix{}, err
	}
	for _, s := range [...]struct {
		to    *units.Ratio
		grams units.Mass // of salt
	}{{&v.Salt, saltMass}, {&v.Lightest, lightestSalt}, {&v.Heaviest, heaviestSalt}} {
		if s.to != &v.Salt {
			if s.grams, err = units.Prorate(s.grams, salt, units.Cup/4); err != nil {
				return VolumeMix{}, err
			}
		}
		if *s.to, err = units.RatioOf(s.grams, s.grams+sugarMass); err != nil {
			return VolumeMix{}, err
		}
	}
	over, err := units.RatioOf(v.Salt, v.AsWeights)
	v.Off, v.Cautions = over-units.One, []cite.Caution{weighIt}
	return v, err
}
