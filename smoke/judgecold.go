package smoke

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
)

// judgeCold judges a cold smoke by the rules for the trade: 90 °F for 20 h, or 50 °F for 24 h.
func (c Claim) judgeCold(all []verdict.Finding) []verdict.Finding {
	warm, cold := chamberRules[Cold90-1], chamberRules[Cold50-1]
	switch {
	case !c.Air.Given:
		f := missing(RuleAir, "air of the smoker")
		f.Wanted, f.Citation = warm.Printed, warm.Citation
		all = append(all, f)
	case !meets(warm.Printed, c.Air.Value):
		all = append(all, warm.tooWarm(c.Air.Value))
	}
	rule := warm
	if c.Air.Given && meets(cold.Printed, c.Air.Value) {
		rule = cold
	}
	switch {
	case !c.Time.Given:
		f := missing(RuleTime, "time in the smoker")
		f.Wanted, f.Citation = units.AtMost(rule.Within), rule.Citation
		all = append(all, f)
	case c.Time.Value > rule.Within:
		all = append(all, rule.tooLong(c.Time.Value))
	}
	return all
}

// judgeStorage judges what becomes of the fish; frozen fish is not judged by days.
func (c Claim) judgeStorage(all []verdict.Finding, s Storage) []verdict.Finding {
	if c.frozen() {
		return all
	}
	if c.Pack == 0 {
		all = append(all, missing(RulePack, "pack"))
	}
	if c.Keep.Given {
		all = c.judgeKeep(all, s)
	} else {
		all = append(all, s.notStated())
	}
	longest := s
	if c.Pack == 0 {
		longest, _ = FindStorage(AirPack) // longer than that is too long in any pack
	}
	wanted, from := units.AtMost(units.Count(longest.Days)).With("days"), longest.Time.Citation
	if c.Pack == LowOxygenPack {
		wanted, from = units.InWords("frozen"), vacuumVariance.Citation
	}
	switch days := c.Days.Value; {
	case !c.Days.Given:
		f := missing(RuleDays, "days")
		f.Wanted, f.Citation = wanted, from
		return append(all, f)
	case days > longest.Days:
		return append(all, tooManyDays(days, longest.Days, wanted, from))
	}
	return all
}

// judgeKeep judges how warm the fish is kept.
func (c Claim) judgeKeep(all []verdict.Finding, s Storage) []verdict.Finding {
	if meets(s.wanted(), c.Keep.Value) {
		return all
	}
	return append(all, told(RuleKeep, "storage", verdict.TooWarm, units.Exactly(c.Keep.Value), s.wanted(), apart(c.Keep.Value, s.AtMost), s.Temperature.Citation))
}

// notStated is a finding about a storage that the recipe leaves out.
func (s Storage) notStated() verdict.Finding {
	f := missing(RuleKeep, "storage")
	f.Wanted, f.Citation = s.wanted(), s.Temperature.Citation
	return f
}

func tooManyDays(days, most int, wanted units.Figure, from cite.Citation) verdict.Finding {
	return told(RuleDays, "days", verdict.TooLong, units.Exactly(units.Count(days)).With("days"), wanted, units.AmountOf(units.Count(days-most)), from)
}
