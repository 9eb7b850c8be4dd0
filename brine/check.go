package brine

import (
	"sort"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Check holds what a recipe states about its salting against published figures: what salt to fish or what strength it comes to, and what of
// dose, time, temperature and water phase salt falls short, differs or is left out, by how much and where the published figure is
// printed. Where a recipe tells a figure in two ways, the lesser counts. Water phase salt is met by a measured one alone: without one it is short only
// where all the salt that is stated cannot reach it, and an estimate of how much went in decides nothing.
// Of fish for jars only the method, the temperature and nitrite are judged. Impossible figures are a units.RangeError. Nothing is rounded: a gram short is short.
func Check(c Claim) (Assessment, error) {
	if err := c.check(); err != nil {
		return Assessment{}, err
	}
	a := Assessment{Method: c.method()}
	judges := []func(Claim, *Assessment) error{judgeMethod, judgeTemperature}
	if !c.ForJars {
		a.Limit = StrictestSaltLimit(c.Smoked, c.Pack)
		judges = []func(Claim, *Assessment) error{judgeMethod, judgeDose, judgeTime, judgeTemperature, judgeWaterPhaseSalt}
	}
	salt, err := c.amounts(&a)
	if err != nil {
		return Assessment{}, err
	}
	for _, judge := range judges {
		if err := judge(c, &a); err != nil {
			return Assessment{}, err
		}
	}
	if !c.ForJars && c.SaltVolume.Given && !salt && c.SaltAs == (Ingredient{}) {
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
	case a.Method == DrySalted && salt > 0 && c.Fish.Given:
		a.SaltToFish, err = units.RatioOf(salt, c.Fish.Value)
	case a.Method == WetBrined && salt > 0 && c.Water.Given:
		a.Strength, err = strengthOf(salt, c.Water.Value)
	}
	if a.Method == DrySalted {
		a.SaltToFish = lesser(c.SaltToFish, a.SaltToFish)
	} else if a.Method == WetBrined {
		a.Strength = lesser(c.Strength, a.Strength)
	}
	return salt > 0, err
}

// lesser is a stated share, or the one worked out where that is less; 0 is not worked out.
func lesser(stated units.Stated[units.Ratio], worked units.Ratio) units.Ratio {
	if !stated.Given || worked > 0 && worked < stated.Value {
		return worked
	}
	return stated.Value
}

// weighedOr is a weight as stated, or through the ingredient where it is told by volume, the lesser of the two where it is told both ways; 0 where it
// is not known.
func weighedOr(mass units.Stated[units.Mass], volume units.Stated[units.Volume], as Ingredient, substance Substance) (units.Mass, error) {
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

// strengthOf is the share of salt in a volume of water measured at 60 °F, not held to saturation: a recipe may ask for too much.
func strengthOf(salt units.Mass, water units.Volume) (units.Ratio, error) {
	mass, err := units.OfFloat(units.Float(water, units.Millilitre)*density(0, sixty.Celsius()), units.Gram)
	if err != nil {
		return 0, err
	}
	return units.RatioOf(salt, salt+mass)
}
