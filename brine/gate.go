package brine

import (
	"example.org/lakelarder/brine/solution"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
)

// What is believed of a recipe. Practice of this library, no source, but where one is named.
const (
	weighedTwice = units.One / 20           // two weights of one salt may differ by so much: they are rounded
	spoonedTwice = units.One / 5            // and a volume and a weight of it by so much
	nativeSalt   = 2 * units.PerMille       // of raw fish: its sodium as salt, at most 0.27 % of its water (USDA SR28)
	mostDrip     = 10 * units.Percent       // of raw fish, and three times the salt that draws it (Torry: 8 to 10 %)
	mostLoss     = 45 * units.Percent       // of raw fish, where the recipe states no loss
	frozenBrine  = units.CelsiusDegrees / 2 // below its freezing point before a brine is doubted
	frozenFish   = 3 * units.CelsiusDegrees // below that of its salted water before fish under dry salt is

	// fastest is faster than salt goes through plain water at 25 °C, and so than through any flesh.
	fastest = 2 * units.SquareMillimetrePerSecond / 1_000
)

// eutectic is where the strongest brine that freezes does.
var eutectic = units.Celsius(-21.2)

var massBalance = cite.Citation{
	Where: "mass balance of the driest fish, no faster than salt goes through water", Basis: cite.Computed,
}

// doubt finds what in a recipe contradicts physics or itself: then it cannot be told whether the rest is right.
func (j *judgement) doubt() error {
	if err := j.doubtWeights(); err != nil {
		return err
	}
	j.doubtDose()
	if err := j.doubtSugar(); err != nil {
		return err
	}
	if err := j.doubtCold(); err != nil {
		return err
	}
	j.doubtThickness()
	return j.doubtMeasured()
}

// impossible adds what contradicts what.
func (j *judgement) impossible(
	rule verdict.Rule, what string, stated, believed units.Figure, by units.Amount, from cite.Citation,
) {
	j.find(verdict.Finding{
		Rule: rule, What: what, Kind: verdict.Impossible, Stated: stated, Wanted: believed, By: by, Citation: from,
	})
}

// doubtWeights finds salt whose stated weight and volume are not of one salt.
func (j *judgement) doubtWeights() error {
	if !j.Salt.Given || !j.SaltVolume.Given || j.SaltAs == (Ingredient{}) {
		return nil
	}
	weighed, err := j.SaltAs.massAs(Salt, j.SaltVolume.Value)
	if off := apart(j.Salt.Value, weighed, spoonedTwice); err == nil && off != 0 {
		j.impossible(RuleSaltWeight, "weight of the salt", units.Exactly(j.Salt.Value),
			units.Exactly(weighed).With("by its volume"), units.AmountOf(off), ownFigures)
	}
	return err
}

// doubtDose finds a dose or a strength that is not that of the stated amounts, and more salt than fish.
func (j *judgement) doubtDose() {
	may := weighedTwice
	if j.SaltVolume.Given {
		may = spoonedTwice
	}
	rule, what, stated := RuleSaltToFish, "salt to fish", j.SaltToFish
	if j.found.Method == WetBrined {
		rule, what, stated = RuleStrength, "brine strength", j.Strength
	}
	if stated.Given && j.worked.Given {
		if off := apart(stated.Value, j.worked.Value, may); off != 0 {
			j.impossible(rule, what, units.Exactly(stated.Value), units.Exactly(j.worked.Value).With("by the amounts"),
				units.AmountOf(off), ownFigures)
		}
	}
	if dose := j.found.SaltToFish.Value; dose > largestRatio {
		j.impossible(RuleSaltToFish, "salt to fish", units.Exactly(dose), units.AtMost(largestRatio),
			units.AmountOf(dose-largestRatio), cite.Citation{Where: "more salt than fish", Basis: cite.Practice})
	}
}

// apart is by how much two figures of one thing differ, 0 where they may.
func apart[Q units.Quantity](a, b Q, may units.Ratio) Q {
	off, most := a-b, max(a, b)
	if off < 0 {
		off = -off
	}
	if allowed, err := units.Prorate(most, may, units.One); err != nil || off > allowed {
		return off
	}
	return 0
}

// doubtCold finds a brine, or fish under salt, that is colder than where it freezes: there it takes up no salt.
func (j *judgement) doubtCold() error {
	strength, margin := j.found.Strength, frozenBrine
	if dose := j.found.SaltToFish; dose.Given {
		share, err := units.RatioOf(dose.Value, dose.Value+driest)
		if err != nil {
			return err
		}
		strength, margin = units.State(share), frozenFish
	}
	at, citation := eutectic, cite.Citation{Where: "freezing point of the strongest brine that freezes", Basis: cite.Practice}
	if point, from, err := solution.FreezingPoint(strength.Value); err == nil && strength.Given {
		at, citation = point, from
	}
	if stated := j.Temperature.Value; j.Temperature.Given && stated.Add(margin).Below(at) {
		j.impossible(RuleTemperature, "temperature", units.Exactly(stated), units.AtLeast(at).With("where it freezes"),
			units.AmountOf(at).Minus(units.AmountOf(stated)), citation)
	}
	return nil
}

// doubtThickness finds a thickness that no piece of the stated fish has: less than the ball of that thickness
// weighs.
func (j *judgement) doubtThickness() {
	if !j.Fish.Given || !j.Thickness.Given {
		return
	}
	t := units.Float(j.Thickness.Value, units.Centimetre)
	const ball = 0.5235 // π/6, a little less, of fish that is as light as water
	if units.Float(j.Fish.Value, units.Gram) < ball*t*t*t {
		j.impossible(RuleThickness, "thickness", units.Exactly(j.Thickness.Value), units.InWords("less, for so little fish"),
			units.Amount{}, cite.Citation{Where: "weight of a ball of water", Basis: cite.Computed})
	}
}

// doubtMeasured finds a measured water phase salt above what the stated salt and loss can give.
func (j *judgement) doubtMeasured() error {
	if !j.WaterPhaseSalt.Given || j.ForJars {
		return nil
	}
	most, ok, err := j.most()
	if share := j.WaterPhaseSalt.Value; err == nil && ok && share > most {
		j.impossible(RuleWaterPhaseSalt, inTheWater, units.Exactly(share),
			units.AtMost(most).With("by the salt, the time and the loss"), units.AmountOf(share-most), massBalance)
	}
	return err
}

// most is the highest water phase salt that the salt, the time and the loss can give: in the driest fish, which
// drips as much as salt draws and has salt of its own, at most saturated. Of a dose stated in two ways the greater
// counts.
func (j *judgement) most() (units.Ratio, bool, error) {
	saturated, _ := solution.Saturation()
	full, err := j.inItsWater(saturated)
	if err != nil {
		return 0, false, err
	}
	salt, ok, err := j.saltPerFish()
	if err != nil || !ok {
		return 0, false, err
	}
	if salt, err = j.inTheTime(min(salt, full)); err != nil {
		return 0, false, err
	}
	salt = min(salt+nativeSalt, full)
	drip, loss := min(mostDrip, 3*salt), mostLoss
	if j.Loss.Given {
		loss = j.Loss.Value
	}
	left := driest - drip - loss
	if left <= 0 {
		return saturated, true, nil
	}
	kept, err := units.ProrateUp(salt, driest-drip, driest)
	if err != nil {
		return 0, false, err
	}
	share, err := units.ProrateUp(units.One, kept, kept+left)
	return min(share, saturated), true, err
}

// inTheTime is how much of the salt can have gone in, where thickness and time are stated: no faster than through
// water.
func (j *judgement) inTheTime(salt units.Ratio) (units.Ratio, error) {
	if !j.Time.Given || !j.Thickness.Given {
		return salt, nil
	}
	slab := Slab{Thickness: j.Thickness.Value, Faces: j.Faces}
	if slab.Faces == 0 {
		slab.Faces = TwoFaces
	}
	taken, err := slab.Uptake(fastest, j.Time.Value)
	if err != nil {
		return 0, err
	}
	surface, _ := solution.Saturation()
	if j.found.Method == WetBrined {
		surface = max(orZero(j.Strength), j.worked.Value)
	}
	most, err := j.inItsWater(surface)
	if err != nil {
		return 0, err
	}
	if most, err = units.ProrateUp(most, taken, units.One); err != nil {
		return 0, err
	}
	return min(salt, most), nil
}

// saltPerFish is the most salt that the recipe can bring in, per mass of raw fish; false where it does not say.
func (j *judgement) saltPerFish() (units.Ratio, bool, error) {
	inAll, known, err := j.perFish(j.saltAtMost)
	if err != nil || j.found.Method != WetBrined {
		return max(orZero(j.SaltToFish), inAll), j.found.SaltToFish.Given, err
	}
	strength := orZero(j.Strength)
	if j.worked.Given {
		worked, err := strengthOf(j.saltAtMost, j.Water.Value)
		if err != nil {
			return 0, false, err
		}
		strength = max(strength, worked)
	}
	salt, err := j.inItsWater(strength)
	if known {
		salt = min(salt, inAll)
	}
	return salt, j.found.Strength.Given, err
}

// inItsWater is the salt of the driest fish with its water as strong as a brine, per mass of raw fish.
func (j *judgement) inItsWater(strength units.Ratio) (units.Ratio, error) {
	saturated, _ := solution.Saturation()
	strong, err := perWater(min(saturated, strength))
	if err != nil {
		return 0, err
	}
	return units.Prorate(driest, strong, units.One)
}

// perFish is a mass of salt per mass of raw fish, false where either is not stated.
func (j *judgement) perFish(salt units.Mass) (units.Ratio, bool, error) {
	if !j.Fish.Given || salt == 0 {
		return 0, false, nil
	}
	share, err := units.RatioOf(salt, j.Fish.Value)
	return share, err == nil, err
}

// orZero is a figure that is stated, or zero.
func orZero(s units.Stated[units.Ratio]) units.Ratio {
	if s.Given {
		return s.Value
	}
	return 0
}
