package smoke

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
)

// judgeCore judges the core. One that another published rule asks for says so.
func (c Claim) judgeCore(all []verdict.Finding, limit CoreLimit) []verdict.Finding {
	wanted := limit.wanted()
	switch core := c.Core.Value; {
	case !c.Core.Given:
		f := missing(RuleCore, "core")
		f.Wanted, f.Citation = wanted, limit.Citation
		return append(all, f)
	case !meets(wanted, core):
		f := told(RuleCore, "core", verdict.Short, units.Exactly(core), wanted, apart(limit.AtLeast, core), limit.Citation)
		f.Known = knownCore(core, limit)
		return append(all, f)
	}
	return all
}

// knownCore says where a core that is too low is known from.
func knownCore(core units.Temperature, limit CoreLimit) cite.Caution {
	for _, other := range coreLimits {
		if core == other.AtLeast || units.AmountOf(core) == other.Printed.LowAlso {
			return cite.Caution{
				ID: "smoke.known-core", Text: "This is a published figure, " + other.ID.String() + ", but not the one that governs here.", Citation: other.Citation,
			}
		}
	}
	return cite.Caution{}
}

func (c Claim) judgeHold(all []verdict.Finding, limit CoreLimit) []verdict.Finding {
	wanted := units.AtLeast(limit.Hold)
	switch hold := c.Hold.Value; {
	case !c.Hold.Given:
		f := missing(RuleHold, "hold")
		f.Wanted, f.Citation = wanted, limit.Citation
		return append(all, f)
	case hold < limit.Hold:
		return append(all, told(RuleHold, "hold", verdict.Short, units.Exactly(hold), wanted, units.AmountOf(limit.Hold-hold), limit.Citation))
	}
	return all
}

// judgeAir judges the smoker of a hot smoke, when its air is stated: by the limit, and by the core that the recipe
// states, where that is more. What the recipe says of itself is no published figure.
func (c Claim) judgeAir(all []verdict.Finding, limit CoreLimit) []verdict.Finding {
	finish := chamberRules[FinishAir-1]
	core, wanted, from := limit.AtLeast, limit.wanted().With("for the core"), limit.Citation
	wanted.LowOpen = true
	if c.Core.Value.Above(core) {
		core, wanted, from = c.Core.Value, units.MoreThan(c.Core.Value).With("for the core that is stated"), cite.Citation{}
	}
	air, stated := c.Air.Value, units.Exactly(c.Air.Value)
	switch {
	case !c.Air.Given || c.Oven.Given && !air.Above(finish.AtMost): // the oven brings the core there
	case !air.Above(core): // no core comes to the temperature of the air, let alone above it
		return append(all, told(RuleAir, "air of the smoker", verdict.Short, stated, wanted, apart(core, air), from))
	case air.Below(finish.AtLeast):
		f := told(RuleAir, "air of the smoker", verdict.Different, stated, finish.air(), apart(finish.AtLeast, air), finish.Citation)
		f.Known = finishInOven
		return append(all, f)
	case air.Above(finish.AtMost):
		return append(all, told(RuleAir, "air of the smoker", verdict.Over, stated, finish.air(), apart(air, finish.AtMost), finish.Citation))
	}
	return all
}

// judgeTime judges the time in the smoker, when it is stated: it holds the hold, and is no longer than was ever printed.
func (c Claim) judgeTime(all []verdict.Finding, limit CoreLimit) []verdict.Finding {
	longest := chamberRules[WholeFish12-1]
	hold, from, note := limit.Hold, limit.Citation, "for the hold"
	if c.Hold.Value > hold {
		hold, from, note = c.Hold.Value, cite.Citation{}, "for the hold that is stated"
	}
	inAll, stated := c.Time.Value, units.Exactly(c.Time.Value)
	switch {
	case !c.Time.Given:
	case inAll < hold && !c.Oven.Given:
		return append(all, told(RuleTime, "time in the smoker", verdict.Short, stated, units.AtLeast(hold).With(note), units.AmountOf(hold-inAll), from))
	case inAll > longest.Within:
		return append(all, longest.tooLong(inAll))
	}
	return all
}

// air is the air that the rule asks for.
func (r ChamberRule) air() units.Figure { return r.Printed }

// tooLong is a finding about a time in the smoker longer than the rule's.
func (r ChamberRule) tooLong(stated time.Duration) verdict.Finding {
	return told(RuleTime, "time in the smoker", verdict.TooLong, units.Exactly(stated), units.AtMost(r.Within), units.AmountOf(stated-r.Within), r.Citation)
}

// tooWarm is a finding about air warmer than the rule's.
func (r ChamberRule) tooWarm(stated units.Temperature) verdict.Finding {
	return told(RuleAir, "air of the smoker", verdict.TooWarm, units.Exactly(stated), r.Printed, apart(stated, r.AtMost), r.Citation)
}
