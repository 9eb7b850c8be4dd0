package brine

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
)

// Check holds what a recipe states about its salting against published figures: what salt to fish or what strength it
// comes to, and what of dose, time, temperature and water phase salt falls short, differs or is left out, by how much
// and where the published figure is printed. Where a recipe states a figure in two ways, the lesser counts. Only a
// measured water phase salt meets its limit: without one it is short where all the salt that is stated cannot reach
// it, and an estimate of how much went in decides nothing. Of fish for jars only the method, the temperature and
// nitrite are judged. Impossible figures are a units.RangeError. Nothing is rounded: a gram short is short.
func Check(c Claim) (Assessment, error) {
	if err := c.check(); err != nil {
		return Assessment{}, err
	}
	j := judgement{Claim: c}
	j.found.Method = c.method()
	if !c.ForJars {
		j.found.Limit = StrictestSaltLimit(c.Smoked, c.Pack)
	}
	if err := j.judge(); err != nil {
		return Assessment{}, err
	}
	j.found.Report = verdict.Of(j.findings, j.cautions())
	return j.found, nil
}

// judge adds to the findings, in the order of Claim.
func (j *judgement) judge() error {
	salt, err := j.amounts()
	if err != nil {
		return err
	}
	j.judgeMethod()
	if !j.ForJars {
		j.judgeDose()
		j.judgeTime()
	}
	if err := j.judgeTemperature(); err != nil {
		return err
	}
	if !j.ForJars {
		if err := j.judgeWaterPhaseSalt(); err != nil {
			return err
		}
		if j.SaltVolume.Given && salt == 0 && j.SaltAs == (Ingredient{}) {
			j.missing(RuleSaltWeight, "weight of the salt",
				units.Between(lightestSalt, heaviestSalt).With("to the quarter cup, by the salt"), spreadCitation)
		}
	}
	if j.Nitrite {
		j.find(verdict.Finding{
			Rule: RuleNitrite, What: "nitrite", Kind: verdict.Different,
			Stated: units.InWords("nitrite"), Wanted: units.InWords("only licensed processes, dosed and measured"),
			Citation: cite.Citation{Source: cite.MaineRules01001Ch359, Where: "s. 2(C)(2)", Basis: cite.Read},
		})
	}
	return nil
}

// amounts works out what the recipe comes to, and returns the weight of its salt, 0 where it is not known.
func (j *judgement) amounts() (units.Mass, error) {
	salt, err := weighedOr(j.Salt, j.SaltVolume, j.SaltAs, Salt)
	if err != nil {
		return 0, err
	}
	sugar, err := weighedOr(j.Sugar, j.SugarVolume, j.SugarAs, Sugar)
	if err != nil {
		return 0, err
	}
	if salt > 0 && sugar > 0 {
		ratio, err := units.RatioOf(sugar, salt)
		if err != nil {
			return 0, err
		}
		j.found.SugarToSalt = units.State(ratio)
	}
	var worked units.Stated[units.Ratio]
	switch j.found.Method {
	case DrySalted:
		if worked.Given = salt > 0 && j.Fish.Given; worked.Given {
			worked.Value, err = units.RatioOf(salt, j.Fish.Value)
		}
		j.found.SaltToFish = lesser(j.SaltToFish, worked)
	case WetBrined:
		if worked.Given = salt > 0 && j.Water.Given; worked.Given {
			worked.Value, err = strengthOf(salt, j.Water.Value)
		}
		j.found.Strength = lesser(j.Strength, worked)
	}
	return salt, err
}

// lesser is the lesser of two figures, where both are given.
func lesser(a, b units.Stated[units.Ratio]) units.Stated[units.Ratio] {
	if !a.Given || b.Given && b.Value < a.Value {
		return b
	}
	return a
}

// weighedOr is a stated weight, or that of a stated volume through its ingredient, the lesser of the two where both
// are stated; 0 where it is not known.
func weighedOr(
	mass units.Stated[units.Mass], volume units.Stated[units.Volume], as Ingredient, substance Substance,
) (units.Mass, error) {
	var weighed units.Mass
	if volume.Given && as != (Ingredient{}) {
		var err error
		if weighed, err = as.massAs(substance, volume.Value); err != nil {
			return 0, err
		}
	}
	if mass.Given && (weighed == 0 || mass.Value < weighed) {
		return mass.Value, nil
	}
	return weighed, nil
}

// litreAt60 is what a litre of water weighs at 60 °F, by the density that the scales of strength rest on.
const litreAt60 = 999_019_414_952 * units.Nanogram

// strengthOf is the share of salt in a volume of water measured at 60 °F, not held to saturation: a recipe may ask for
// too much.
func strengthOf(salt units.Mass, water units.Volume) (units.Ratio, error) {
	mass, err := units.Prorate(litreAt60, water, units.Litre)
	if err != nil {
		return 0, err
	}
	return units.RatioOf(salt, salt+mass)
}
