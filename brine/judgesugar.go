package brine

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// doubtSugar finds more sugar to the salt than DryCure takes. Salt that is not stated by weight is that of the dose or
// the strength.
func (j *judgement) doubtSugar() (err error) {
	salt, sugar := j.saltAtMost, j.sugar
	switch {
	case sugar == 0:
		return nil
	case salt > 0:
	case j.found.SaltToFish.Given && j.Fish.Given:
		salt, err = units.Prorate(j.Fish.Value, j.found.SaltToFish.Value, units.One)
	case j.found.Strength.Given && j.Water.Given && j.found.Strength.Value < units.One:
		if salt, err = units.Prorate(litreAt60, j.Water.Value, units.Litre); err == nil {
			salt, err = units.Prorate(salt, j.found.Strength.Value, units.One-j.found.Strength.Value)
		}
	case j.Fish.Given:
		salt = j.Fish.Value // no cure has more salt than fish
	default:
		return nil
	}
	if err != nil || (sugar-1)/sweetest < salt {
		return err
	}
	j.impossible(RuleSugar, "sugar", units.Exactly(sugar), units.AtMost(sweetest*salt).With("20 times the salt"),
		units.AmountOf(sugar-sweetest*salt), cite.Citation{Where: "the sweetest cures in use have some 13 of sugar to 1 of salt",
			Basis: cite.Practice})
	return nil
}
