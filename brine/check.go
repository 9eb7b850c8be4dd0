package brine

import (
	"sort"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Check holds what a recipe states about its salting against published figures: what salt to fish or what strength it comes to, and what of
// dose, time, temperature and water phase salt falls short, differs or is left out, by how much and where the published figure is
// printed. A measured water phase salt goes before any estimate; without one the estimate decides only where all of it is below the
// limit. Impossible figures are a units.RangeError. Nothing is rounded: a gram short is short.
func Check(c Claim) (Assessment, error) {
	if err := c.check(); err != nil {
		return Assessment{}, err
	}
	a := Assessment{Method: c.method(), Limit: StrictestSaltLimit(c.Smoked, c.Pack)}
	salt, err := c.amounts(&a)
	if err != nil {
		return Assessment{}, err
	}
	for _, judge := range []func(Claim, *Assessment) error{judgeDose, judgeTime, judgeTemperature, judgeWaterPhaseSalt} {
		if err := judge(c, &a); err != nil {
			return Assessment{}, err
		}
	}
	if c.SaltVolume.Given && !salt && c.SaltAs == (Ingredient{}) {
		a.find(Finding{What: "weight of the salt", Kind: NotStated, Published: spread, Citation: spreadCitation})
	}
	if c.Nitrite {
		a.find(Finding{What: "nitrite", Kind: Different, Stated: "nitrite", Published: "licensed processes alone, dosed and measured",
			Citation: cite.Citation{Source: cite.MaineRules01001Ch359, Where: "s. 2(C)(2)", Basis: cite.Read}})
	}
	sort.SliceStable(a.Findings, func(i, j int) bool { return a.Findings[i].Kind.verdict() > a.Findings[j].Kind.verdict() })
	a.Verdict = Meets
	if len(a.Findings) > 0 {
		a.Verdict = a.Findings[0].Kind.verdict()
	}
	return a, nil
}

func (a *Assessment) find(f Finding) { a.Findings = append(a.Findings, f) }

// amounts works out what the recipe comes to, and reports whether the weight of its salt is known.
func (c Claim) amounts(a *Assessment) (known bool, err error) {
	salt, err := weighedOr(c.Salt, c.SaltVolume, c.SaltAs, Salt)
	if err != nil {
		return false, err
	}
	sugar, err := weighedOr(c.Sugar, c.SugarVolume, c.SugarAs, Sugar)
	if err != nil {
		return false, err
	}
	if salt > 0 && sugar > 0 {
		if a.SugarToSalt, err = units.RatioOf(sugar, salt); err != nil {
			return false, err
		}
	}
	switch {
	case a.Method == DrySalted && c.SaltToFish.Given:
		a.SaltToFish = c.SaltToFish.Value
	case a.Method == DrySalted && salt > 0 && c.Fish.Given:
		if a.SaltToFish, err = units.RatioOf(salt, c.Fish.Value); err != nil {
			return false, err
		}
	case a.Method == WetBrined && c.Strength.Given:
		a.Strength = c.Strength.Value
	case a.Method == WetBrined && salt > 0 && c.Water.Given:
		if a.Strength, err = strengthOf(salt, c.Water.Value); err != nil {
			return false, err
		}
	}
	return salt > 0, nil
}

// weighedOr is a weight as stated, or through the ingredient where it is told by volume; 0 where it is not known.
func weighedOr(mass units.Stated[units.Mass], volume units.Stated[units.Volume], as Ingredient, substance Substance) (units.Mass, error) {
	switch {
	case mass.Given:
		return mass.Value, nil
	case !volume.Given || as == (Ingredient{}):
		return 0, nil
	}
	return as.massAs(substance, volume.Value)
}

// strengthOf is the share of salt in a volume of water measured at 60 °F, not held to saturation: a recipe may ask for too much.
func strengthOf(salt units.Mass, water units.Volume) (units.Ratio, error) {
	mass, err := units.OfFloat(units.Float(water, units.Millilitre)*density(0, sixty.Celsius()), units.Gram)
	if err != nil {
		return 0, err
	}
	return units.RatioOf(salt, salt+mass)
}
