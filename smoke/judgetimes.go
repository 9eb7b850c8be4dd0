package smoke

import (
	"math"
	"time"

	"example.org/lakelarder/internal/portable"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
)

// judgeOven judges an oven that finishes the fish: it is in it within 2 h of the smoker, and in it for the whole hold.
func (c Claim) judgeOven(all []verdict.Finding, limit CoreLimit) []verdict.Finding {
	oven, rule := c.Oven.Value, chamberRules[ToOven-1]
	if !c.Oven.Given {
		return all
	}
	switch after := oven.After.Value; {
	case !oven.After.Given:
		f := missing(RuleOven, "time from the smoker to the oven")
		f.Wanted, f.Citation = units.AtMost(rule.Within), rule.Citation
		all = append(all, f)
	case after > rule.Within:
		all = append(all, told(RuleOven, "time from the smoker to the oven", verdict.TooLong, units.Exactly(after), units.AtMost(rule.Within),
			units.AmountOf(after-rule.Within), rule.Citation))
	}
	if core := c.coreWanted(limit); oven.Air.Given && !oven.Air.Value.Above(core) {
		wanted := units.MoreThan(core).With("for the core")
		all = append(all, told(RuleOven, "air of the oven", verdict.Short, units.Exactly(oven.Air.Value), wanted, apart(core, oven.Air.Value), limit.Citation))
	}
	if hold := c.holdWanted(limit); oven.Time.Given && oven.Time.Value < hold {
		wanted := units.AtLeast(hold).With("for the hold")
		all = append(all, told(RuleOven, "time in the oven", verdict.Short, units.Exactly(oven.Time.Value), wanted, units.AmountOf(hold-oven.Time.Value), limit.Citation))
	}
	return all
}

// coreWanted and holdWanted are what the recipe has to make room for: its own figures, where they are more.
func (c Claim) coreWanted(limit CoreLimit) units.Temperature {
	return warmest(limit.AtLeast, c.Core.Value)
}

func (c Claim) holdWanted(limit CoreLimit) time.Duration { return max(limit.Hold, c.Hold.Value) }

// judgeWarmUp judges how long the fish takes to the core, by the longest that is printed to 160 °F. An oven's time counts
// from the start of the smoking.
func (c Claim) judgeWarmUp(all []verdict.Finding, limit CoreLimit) []verdict.Finding {
	rule := chamberRules[ReachIn6-1]
	took, stated := c.ToCore.Value, units.Exactly(c.ToCore.Value)
	if least := c.Time.Value + c.Oven.Value.After.Value; c.Oven.Given && !c.ToCore.Given {
		took, stated = least, units.AtLeast(least)
	}
	if took <= rule.OrWithin {
		return all
	}
	f := told(RuleWarmUp, "time to the core", verdict.TooLong, stated, units.AtMost(rule.OrWithin).With("to 160 °F (71.1 °C)"), units.AmountOf(took-rule.OrWithin), rule.Citation)
	if c.ToCore.Given && c.coreWanted(limit).Above(warmSoon) { // it may have been at 160 °F in time
		f.Verdict = verdict.CannotTell
	}
	return append(all, f)
}

// judgeRoom finds figures that leave no room for each other.
func (c Claim) judgeRoom(all []verdict.Finding, limit CoreLimit) []verdict.Finding {
	hold, air, inAll := c.holdWanted(limit), c.Air, c.Time
	if c.Oven.Given {
		air = c.Oven.Value.Air
		inAll.Given = inAll.Given && c.Oven.Value.After.Given && c.Oven.Value.Time.Given
		inAll.Value += c.Oven.Value.After.Value + c.Oven.Value.Time.Value
	}
	least, possible := leastToCore(c.coreWanted(limit), air)
	if !possible { // the air is not above the core, which is a finding of its own
		return all
	}
	if before := c.Time.Value + c.Oven.Value.After.Value; c.Oven.Given && c.ToCore.Given && c.ToCore.Value < before {
		all = append(all, noRoom("time to the core", c.ToCore.Value, before, "for the smoker and the way to the oven, which has the hold"))
	}
	switch {
	case c.ToCore.Given && c.ToCore.Value < least:
		all = append(all, noRoom("time to the core", c.ToCore.Value, least, "for the thinnest fillet in that air"))
	case c.ToCore.Given:
		least = c.ToCore.Value
	}
	if inAll.Given && inAll.Value >= hold && inAll.Value < least+hold {
		all = append(all, noRoom("time in all", inAll.Value, least+hold, "for warming and hold"))
	}
	return all
}

// noRoom is a finding about a time that leaves no room.
func noRoom(what string, stated, least time.Duration, forWhat string) verdict.Finding {
	return verdict.Finding{
		Rule: RuleDoubt, What: what, Kind: verdict.Impossible, Verdict: verdict.CannotTell, Stated: units.Exactly(stated),
		Wanted: units.AtLeast(least.Round(time.Second)).With(forWhat), Citation: beliefCitation,
	}
}

// warmRoom is what no raw fish is warmer than; practice.
const warmRoom = 25. // °C

// leastToCore is the shortest time in which a core comes from a warm room to a temperature in an air, the hottest of any
// oven where none is stated; false where the air never brings it there.
func leastToCore(core units.Temperature, air units.Stated[units.Temperature]) (time.Duration, bool) {
	medium := hottestOven
	if air.Given {
		medium = air.Value.Celsius()
	}
	if medium <= core.Celsius() {
		return 0, false
	}
	thin := reachOf(units.Stated[Slab]{}, iceWaterFilm)
	seconds := portable.Log((medium-warmRoom)/(medium-core.Celsius())) / thin.warming
	return time.Duration(math.Ceil(seconds)) * time.Second, true
}
