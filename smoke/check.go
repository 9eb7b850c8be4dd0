package smoke

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
)

// Check holds what a recipe states about its smoking against the strictest published home figures and says what falls
// short, differs, is more or is left out, by how much and where the published figure is printed. Core, hold, pack and
// storage decide; air and time are judged when stated and never prove a core. Cold smoking at home is NotPublished, judged
// all the same by the rules for the trade. A figure below zero or that no fish and no smoker can have is a
// units.RangeError. Nothing is rounded: a second short is short.
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
	if err := c.check(); err != nil {
		return Assessment{}, err
	}
	storage, err := FindStorage(c.Pack)
	if err != nil {
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
		a.Governing = limit
		found = c.judgeCore(found, limit)
		found = c.judgeHold(found, limit)
		found = c.judgeAir(found, limit)
		found = c.judgeTime(found, limit)
	case ColdSmoked:
		a.Refusal = notAtHome
		found = c.judgeCold(found)
	}
	found = c.judgeStorage(found, storage)
	return a.judged(found, a.readyToEat()), nil
}

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
