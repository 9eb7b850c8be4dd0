package smoke

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
)

// Check holds what a recipe states about its smoking against the strictest published home figures and says what falls
// short, differs, is more or is left out, by how much and where the published figure is printed. Core, hold, pack and
// storage decide; air, times, an oven and the cooling are judged when stated and never prove a core. Cold smoking at home is NotPublished, judged
// all the same by the rules for the trade. A figure below zero or that no fish and no smoker can have is a
// units.RangeError. Nothing is rounded: a second short is short. Figures that leave no room for each other are Impossible.
//
// Of fish ForJars it judges the loss of weight by what the process of smoked fish was tested with, air, time and keeping
// when they are stated, and a day of waiting by where it is waited out. No core and no hold is asked for, and a core that
// cooks the fish differs. Outside the tested losses it is NotPublished. It says nothing of the process in the jar.
func Check(c Claim) (Assessment, error) { return CheckAgainst(DefaultCoreLimit(), c) }

// CheckAgainst is Check by a core limit of the caller's choice, such as one by FindCoreLimit; a limit that AuditHold
// refuses is a units.RangeError or a units.UnsetError.
func CheckAgainst(limit CoreLimit, c Claim) (Assessment, error) {
	if err := limit.check(); err != nil {
		return Assessment{}, err
	}
	return CheckBy(Rules{Core: limit}, c)
}

// Rules are the published rules that a recipe is held against. One that is zero is the strictest home rule that was read.
type Rules struct {
	Core    CoreLimit
	Cooling CoolingRule
	Keep    StorageRule // its temperature
	Life    StorageRule // its days
}

// CheckBy is Check by rules of the caller's choice: those of the source that the recipe quotes. A rule that cannot be one is
// a units.RangeError or a units.UnsetError.
func CheckBy(by Rules, c Claim) (Assessment, error) {
	storage, err := by.complete(c.Pack)
	if err != nil {
		return Assessment{}, err
	}
	if err := c.check(); err != nil {
		return Assessment{}, err
	}
	if c.ForJars {
		return c.judgedForJars(storage), nil
	}
	a := Assessment{Storage: storage}
	var found []verdict.Finding
	switch c.Smoking {
	case 0:
		found = append(found, missing(RuleSmoking, "smoking"))
		fallthrough // as hot smoke: whatever the smoking is, raw fish is not passed
	case HotSmoked:
		a.Governing = by.Core
		for _, judge := range [...]func(Claim, []verdict.Finding, CoreLimit) []verdict.Finding{
			Claim.judgeCore, Claim.judgeHold, Claim.judgeAir, Claim.judgeTime, Claim.judgeOven, Claim.judgeWarmUp, Claim.judgeRoom,
		} {
			found = judge(c, found, by.Core)
		}
		found = c.judgeCooling(found, by.Cooling)
	case ColdSmoked:
		a.Refusal = notAtHome
		found = c.judgeCold(found)
	}
	found = c.judgeStorage(found, storage)
	return a.judged(found, a.readyToEat()), nil
}

// complete fills in what is not chosen, refuses what cannot be, and returns how the fish is kept by the rules.
func (by *Rules) complete(pack Pack) (Storage, error) {
	if by.Core == (CoreLimit{}) {
		by.Core = DefaultCoreLimit()
	}
	if by.Cooling == (CoolingRule{}) {
		by.Cooling = DefaultCoolingRule()
	}
	if err := by.Core.check(); err != nil {
		return Storage{}, err
	}
	if err := by.Cooling.check(); err != nil {
		return Storage{}, err
	}
	s, err := FindStorage(pack)
	if err != nil {
		return Storage{}, err
	}
	if by.Keep.AtMost.IsSet() {
		if err := checkWarmth("storage", by.Keep.AtMost, units.Celsius(-50), warmestStore); err != nil {
			return Storage{}, err
		}
		if err := checkPair("storage", by.Keep.AtMost, by.Keep.Printed.HighAlso); err != nil {
			return Storage{}, err
		}
		s.AtMost, s.Temperature = by.Keep.AtMost, by.Keep
	}
	if by.Life.Days > 0 && (pack == AirPack || pack == by.Life.Pack) { // no rule for open fish keeps a sealed pack
		s.Days, s.Time = by.Life.Days, by.Life
	}
	return s, nil
}

// warmestStore is the warmest that any published rule keeps smoked fish, with another limit on its days.
var warmestStore = units.Celsius(8)

// missing is a finding about something that the recipe leaves out.
func missing(rule verdict.Rule, what string) verdict.Finding {
	return verdict.Finding{Rule: rule, What: what, Kind: verdict.Missing, Verdict: verdict.CannotTell}
}

// told is a finding about a figure that the recipe states.
func told(rule verdict.Rule, what string, kind verdict.Kind, stated, wanted units.Figure, by units.Amount, from cite.Citation) verdict.Finding {
	return verdict.Finding{
		Rule: rule, What: what, Kind: kind, Verdict: kind.Verdict(), Stated: stated, Wanted: wanted, By: by, Citation: from,
	}
}

// apart is how far two temperatures are apart, not stated when they are the same.
func apart(warm, cold units.Temperature) units.Amount {
	if d, err := warm.Sub(cold); err == nil && d != 0 {
		return units.AmountOf(d)
	}
	return units.Amount{}
}
