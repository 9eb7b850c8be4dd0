package brine

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// VolumeMix is a mix told in kitchen volumes, by weight: what share of it is salt, what it would be if the volumes were weights, and
// how far the same cups of other salts would be off.
type VolumeMix struct {
	Mix       Mix
	Salt      units.Ratio // share of salt in the mix, by mass
	AsWeights units.Ratio // the same if a part by volume were a part by mass
	Off       units.Ratio // Salt over AsWeights, less 1: above 0 there is more salt than the parts say
	Lightest  units.Ratio // Salt, had the lightest of the weighed salts been taken
	Heaviest  units.Ratio // Salt, had the heaviest been taken
	Cautions  []cite.Caution
}

// The ends of seven weighings of a quarter cup, unofficial: see spread.
const (
	lightestSalt = 33_200 * units.Milligram
	heaviestSalt = 76 * units.Gram
)

// MixOfVolumes returns the mix by weight of a salt and a sugar told in volumes. The salt must be above 0 and the sugar not negative, the
// ingredients a salt and a sugar that Ingredient.Density accepts: otherwise a RangeError or a SubstanceError. Four cups of packed brown sugar to one
// of table salt are 3 to 1 by weight, and 4.9 to 1 with light flakes: weigh instead.
func MixOfVolumes(salt units.Volume, saltAs Ingredient, sugar units.Volume, sugarAs Ingredient) (VolumeMix, error) {
	if salt <= 0 || salt > largestBrine || sugar < 0 || sugar > largestBrine {
		return VolumeMix{}, units.RangeError{What: "volumes of salt and sugar", Got: salt.String() + " and " + sugar.String(),
			Low: "more than 0 mL and 0 mL", High: largestBrine.String()}
	}
	var v VolumeMix
	var err error
	if v.Mix.Salt, err = saltAs.massAs(Salt, salt); err != nil {
		return VolumeMix{}, err
	}
	if sugar > 0 {
		if v.Mix.Sugar, err = sugarAs.massAs(Sugar, sugar); err != nil {
			return VolumeMix{}, err
		}
	}
	if v.AsWeights, err = units.RatioOf(salt, salt+sugar); err != nil {
		return VolumeMix{}, err
	}
	for _, s := range []struct {
		to    *units.Ratio
		grams units.Mass // of salt
	}{{&v.Salt, v.Mix.Salt}, {&v.Lightest, lightestSalt}, {&v.Heaviest, heaviestSalt}} {
		if s.to != &v.Salt {
			if s.grams, err = units.Prorate(s.grams, salt, units.Cup/4); err != nil {
				return VolumeMix{}, err
			}
		}
		if *s.to, err = units.RatioOf(s.grams, s.grams+v.Mix.Sugar); err != nil {
			return VolumeMix{}, err
		}
	}
	over, err := units.RatioOf(v.Salt, v.AsWeights)
	v.Off, v.Cautions = over-units.One, []cite.Caution{weighIt}
	return v, err
}
