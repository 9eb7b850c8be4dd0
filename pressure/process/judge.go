package process

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
)

// highest is what the guide advises not to pass in a new canner, and what the largest weight holds.
const highest = 15 * units.PSI

var highestCitation = guide1("Equipment and methods not recommended, p. 1-10")

var (
	pressureFigure = figure[units.Pressure]{rule: RulePressure, what: "pressure",
		of: func(s *Schedule) (units.Pressure, cite.Citation) { return s.Pressure, s.Citation }}
	timeFigure = figure[time.Duration]{rule: RuleTime, what: "process time",
		of: func(s *Schedule) (time.Duration, cite.Citation) { return s.Process, s.Citation }}
	ventFigure = figure[time.Duration]{rule: RuleVent, what: "vent time",
		of: func(s *Schedule) (time.Duration, cite.Citation) { return s.Vent, s.VentCitation }}
	// The guide allows heating and venting to take longer.
	comeUpFigure = figure[time.Duration]{rule: RuleComeUp, what: "come-up time", may: true,
		of: func(s *Schedule) (time.Duration, cite.Citation) { return s.ComeUp, s.ComeUpCitation }}
	waterFigure = figure[units.Volume]{rule: RuleWater, what: "water", may: true,
		of: func(s *Schedule) (units.Volume, cite.Citation) { return s.Water.Volume, s.WaterCitation }}
)

func judgePressure(all []verdict.Finding, c Claim, published []Schedule) []verdict.Finding {
	from := len(all)
	all = against(all, pressureFigure, c.Pressure, published)
	markKnown(all[from:], knownPressure(c))
	other := verdict.Finding{
		Rule: RulePressure, What: "pressure", Kind: verdict.Different, Verdict: verdict.Differs, Stated: units.Exactly(c.Pressure.Value),
	}
	switch p := c.Pressure.Value; {
	case p > highest:
		other.Wanted, other.Citation = units.AtMost(highest), highestCitation
	case c.Gauge == Weighted && p%(5*units.PSI) != 0:
		other.Wanted, other.Citation = units.InWords("weights of 5, 10 and 15 psi"), weightsOnly.Citation
	default:
		return all
	}
	return append(all, other)
}

// markKnown says of what is short where the stated figure is known from.
func markKnown(found []verdict.Finding, known cite.Caution) {
	for i := range found {
		if found[i].Kind == verdict.Short {
			found[i].Known = known
		}
	}
}

func judgeTimes(all []verdict.Finding, c Claim, published []Schedule) []verdict.Finding {
	from := len(all)
	all = against(all, timeFigure, c.Process, published)
	markKnown(all[from:], knownTime(c))
	all = against(all, ventFigure, c.Vent, published)
	return against(all, comeUpFigure, c.ComeUp, published)
}

// judgeWater judges water where a volume is printed for it: a depth says nothing about quarts, except that there is some.
func judgeWater(all []verdict.Finding, c Claim, published []Schedule) []verdict.Finding {
	from := len(all)
	all = against(all, waterFigure, c.Water, published)
	found := verdict.Finding{Rule: RuleWater, What: "water", Stated: units.Exactly(c.Water.Value)}
	if len(all) == from && c.Water.Given && c.Water.Value == 0 { // whatever the row: a canner without water makes no steam
		found.Kind, found.Verdict, found.Citation = verdict.Short, verdict.NotMet, generalWater
		found.Wanted = units.Between(2*units.Inch, 3*units.Inch).With("deep")
		return append(all, found)
	}
	first := published[0]
	for i := range published {
		if published[i].Water != first.Water {
			return all
		}
	}
	volume := first.Water.Volume
	if metric := units.CeilTo(volume, 10*units.Millilitre); volume == 0 || first.Water.AtLeast || c.Water.Value <= metric { // 3 qt is 2.84 L
		return all
	}
	found.Kind, found.Verdict, found.Citation = verdict.Different, verdict.Differs, first.WaterCitation
	found.Wanted, found.By = units.Exactly(volume), units.AmountOf(c.Water.Value-volume)
	return append(all, found)
}

// metricInch is the headspace as a ruler in millimetres shows it; practice, no source. No jar is filled to less than a
// millimetre.
const metricInch = 25 * units.Millimetre

func judgeHeadspace(all []verdict.Finding, c Claim, published []Schedule) []verdict.Finding {
	s := &published[0] // the same for every load
	if !c.Headspace.Given || c.Headspace.Value == s.Headspace || c.Headspace.Value == metricInch {
		return all
	}
	off := c.Headspace.Value - s.Headspace
	if off < 0 {
		off = -off
	}
	return append(all, verdict.Finding{
		Rule: RuleHeadspace, What: "headspace", Kind: verdict.Different, Verdict: verdict.Differs, Stated: units.Exactly(c.Headspace.Value),
		Wanted: units.Exactly(s.Headspace), By: units.AmountOf(off), Citation: s.HeadspaceCitation,
	})
}
