package brine

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
)

// Check holds what a recipe states about its salting against published figures: what salt to fish or what strength
// it comes to, and what of dose, time, temperature and water phase salt falls short, differs or is left out, by how
// much and where the published figure is printed. Where a recipe states a figure in two ways, the lesser counts.
// Only a measured water phase salt meets its limit, which is that of StrictestSaltLimit: without one it is short
// where all the salt that is stated cannot reach it, and an estimate of how much went in decides nothing. What
// contradicts physics or itself is found Impossible and never passes. Of fish for jars only method, handling,
// temperature, pack and nitrite are judged.
//
// Figures that no recipe has are a units.RangeError. Nothing is rounded, a gram short is short, but for two things:
// a temperature that is printed in two scales is met by either reading, and a dose up to 2 % above a published one
// is that dose, rounded up on a scale.
func Check(c Claim) (Assessment, error) {
	j := judgement{Claim: c}
	if !c.ForJars {
		j.found.Limit = StrictestSaltLimit(c.Smoked, c.Pack)
	}
	return j.assess()
}

// CheckAgainst is Check with a limit of water phase salt chosen by name, such as MichiganAir, 3.0 % in an air pack.
// A limit that is weaker than that of Check must be for the pack, the smoking and the nitrite that the recipe
// states: where the recipe does not state one it cannot be told, and where it states another it differs, and the
// limit of Check counts. An unknown ID is a units.UnknownError, the rest as Check has it.
func CheckAgainst(c Claim, id SaltLimitID) (Assessment, error) {
	limit, err := FindSaltLimit(id)
	if err != nil {
		return Assessment{}, err
	}
	j := judgement{Claim: c}
	if !c.ForJars {
		j.found.Limit = StrictestSaltLimit(c.Smoked, c.Pack)
		if limit.Least >= j.found.Limit.Least && !limit.Nitrite || j.allows(limit) {
			j.found.Limit, j.chosen = limit, true
		}
	}
	return j.assess()
}

// allows reports whether a weaker limit is for what the recipe states, and finds what it is not for.
func (j *judgement) allows(limit SaltLimit) bool {
	from := len(j.findings)
	apart := func(what string, stated, wanted string, isStated bool) {
		f := verdict.Finding{
			Rule: RuleLimit, What: what, Kind: verdict.Missing, Wanted: units.InWords(wanted), Citation: limit.Citation,
		}
		if isStated {
			f.Kind, f.Stated = verdict.Different, units.InWords(stated)
		}
		j.find(f)
	}
	if limit.Pack != 0 && limit.Pack != j.Pack {
		apart("pack", j.Pack.String(), limit.Pack.String(), j.Pack != 0)
	}
	if limit.Smoked != 0 && limit.Smoked != j.Smoked {
		apart("smoking", j.Smoked.String(), limit.Smoked.String(), j.Smoked != 0)
	}
	if limit.Nitrite && !j.Nitrite {
		apart("nitrite", "no nitrite", "dosed and measured nitrite", true)
	}
	return len(j.findings) == from
}

// assess checks the claim and judges it.
func (j *judgement) assess() (Assessment, error) {
	if err := j.check(); err != nil {
		return Assessment{}, err
	}
	j.found.Method = j.method()
	if err := j.judge(); err != nil {
		return Assessment{}, err
	}
	j.found.Report = verdict.Of(j.findings, j.cautions())
	return j.found, nil
}

// judge adds to the findings, in the order of Claim.
func (j *judgement) judge() error {
	if err := j.amounts(); err != nil {
		return err
	}
	j.judgeMethod()
	j.judgeHandling()
	if !j.ForJars {
		j.judgeDose()
		j.judgeTime()
	}
	j.judgeTemperature()
	if j.ForJars && j.Pack == LowOxygenPack {
		j.find(verdict.Finding{
			Rule: RulePack, What: "pack", Kind: verdict.Different, Stated: units.InWords("for jars, and " + j.Pack.String()),
			Wanted: units.InWords("jars that are processed, or a pack that is kept cold"), Citation: saltInJars.Citation,
		})
	}
	if !j.ForJars {
		if err := j.judgeWaterPhaseSalt(); err != nil {
			return err
		}
		if j.SaltVolume.Given && j.salt == 0 && j.SaltAs == (Ingredient{}) {
			j.missing(RuleSaltWeight, "weight of the salt",
				units.Between(lightestSalt, heaviestSalt).With("to the quarter cup, by the salt"), spreadCitation)
		}
	}
	if j.Nitrite {
		j.find(verdict.Finding{
			Rule: RuleNitrite, What: "nitrite", Kind: verdict.Different,
			Stated: units.InWords("nitrite"), Wanted: units.InWords("only licensed processes, dosed and measured"),
			Citation: maine("s. 2(C)(2)"),
		})
	}
	return j.doubt()
}

// amounts works out what the recipe comes to.
func (j *judgement) amounts() error {
	salt, saltAtMost, err := weights(j.Salt, j.SaltVolume, j.SaltAs, Salt)
	if err != nil {
		return err
	}
	sugar, _, err := weights(j.Sugar, j.SugarVolume, j.SugarAs, Sugar)
	if err != nil {
		return err
	}
	j.sugar = sugar
	if j.salt, j.saltAtMost = salt, saltAtMost; salt > 0 && sugar > 0 {
		ratio, err := units.RatioOf(sugar, salt)
		if err != nil {
			return err
		}
		j.found.SugarToSalt = units.State(ratio)
	}
	switch j.found.Method {
	case DrySalted:
		if j.worked.Given = salt > 0 && j.Fish.Given; j.worked.Given {
			j.worked.Value, err = units.RatioOf(salt, j.Fish.Value)
		}
		j.found.SaltToFish = lesser(j.SaltToFish, j.worked)
	case WetBrined:
		if j.worked.Given = salt > 0 && j.Water.Given; j.worked.Given {
			j.worked.Value, err = strengthOf(salt, j.Water.Value)
		}
		j.found.Strength = lesser(j.Strength, j.worked)
	}
	return err
}

// lesser is the lesser of two figures, where both are given.
func lesser(a, b units.Stated[units.Ratio]) units.Stated[units.Ratio] {
	if !a.Given || b.Given && b.Value < a.Value {
		return b
	}
	return a
}

// weights are a stated weight, or that of a stated volume through its ingredient: the lesser and the greater of the
// two where both are stated; 0 where it is not known.
func weights(
	mass units.Stated[units.Mass], volume units.Stated[units.Volume], as Ingredient, substance Substance,
) (least, most units.Mass, err error) {
	if volume.Given && as != (Ingredient{}) {
		if least, err = as.massAs(substance, volume.Value); err != nil {
			return 0, 0, err
		}
		most = least
	}
	if mass.Given {
		most = max(most, mass.Value)
		if least == 0 || mass.Value < least {
			least = mass.Value
		}
	}
	return least, most, nil
}

// litreAt60 is what a litre of water weighs at 60 °F, by the density that the scales of strength rest on.
const litreAt60 = 999_019_414_952 * units.Nanogram

// strengthOf is the share of salt in a volume of water measured at 60 °F, not held to saturation: a recipe may ask
// for too much.
func strengthOf(salt units.Mass, water units.Volume) (units.Ratio, error) {
	mass, err := units.Prorate(litreAt60, water, units.Litre)
	if err != nil {
		return 0, err
	}
	return units.RatioOf(salt, salt+mass)
}
