package smoke

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
)

// judgedForJars judges fish that goes into jars.
func (c Claim) judgedForJars(storage Storage) Assessment {
	var a Assessment
	var found []verdict.Finding
	switch c.Smoking {
	case 0:
		found = append(found, missing(RuleSmoking, "smoking"))
	case ColdSmoked:
		a.Refusal = notAtHome
	}
	found = judgeLoss(found, c.Loss)
	cautions := append([]cite.Caution{airIsNotCore, forJarsOnly, lightUnseen}, jarCautions(found)...)
	if c.Loss.Given && (c.Loss.Value < jarLeast || c.Loss.Value > jarMost) {
		a.Refusal = lossUntested
	}
	found = c.judgeLight(found)
	found = c.judgeWait(found, storage)
	return a.judged(found, cautions)
}

// judgeLight judges the smoker, and a core that has been cooked, which the process was not tested with.
func (c Claim) judgeLight(all []verdict.Finding) []verdict.Finding {
	light := chamberRules[LightSmoke-1]
	air := func(by units.Amount) verdict.Finding {
		return told(RuleAir, "air of the smoker", verdict.Different, units.Exactly(c.Air.Value), light.air(), by, light.Citation)
	}
	switch {
	case !c.Air.Given:
	case c.Air.Value.Below(light.AtLeast):
		all = append(all, air(apart(light.AtLeast, c.Air.Value)))
	case c.Air.Value.Above(light.AtMost):
		all = append(all, air(apart(c.Air.Value, light.AtMost)))
	}
	if c.Time.Given && c.Time.Value > light.Within {
		all = append(all, light.tooLong(c.Time.Value))
	}
	if c.Core.Given && c.Core.Value.AtLeast(coldestLimit) { // no rule calls a colder core cooked
		all = append(all, told(RuleCore, "core", verdict.Different, units.Exactly(c.Core.Value), units.InWords("not cooked"), units.Amount{}, jarSoon.Citation))
	}
	return all
}

// judgeWait judges how the fish waits for its jars: no more than a day, in the refrigerator; frozen fish is not judged by
// days.
func (c Claim) judgeWait(all []verdict.Finding, s Storage) []verdict.Finding {
	if c.frozen() {
		return all
	}
	switch {
	case c.Keep.Given:
		all = c.judgeKeep(all, s)
	case (c.Days.Value > 0 || c.Wait.Value > 0) && !c.Refrigerated: // a day in the refrigerator, not on the shelf
		all = append(all, s.notStated())
	}
	if c.Days.Value > 1 {
		all = append(all, tooManyDays(c.Days.Value, 1, units.AtMost(units.Count(1)).With("day before canning"), jarSoon.Citation))
	}
	if c.Wait.Value > longestWait {
		all = append(all, told(RuleDays, "wait before canning", verdict.TooLong, units.Exactly(c.Wait.Value), units.AtMost(longestWait),
			units.AmountOf(c.Wait.Value-longestWait), jarSoon.Citation))
	}
	return all
}

// longestWait is the day that lightly smoked fish may wait for its jars.
const longestWait = 24 * time.Hour

// forJarsOnly and lightUnseen stand beside every verdict on fish for jars.
var (
	forJarsOnly = cite.Caution{
		ID: "smoke.for-jars-only", Deciding: true,
		Text:     "Judged as fish for jars: it is not ready to eat, and none of it is eaten or kept before it was canned.",
		Citation: cite.Citation{Source: cite.USDAGuide5Rev2015, Where: "Smoked Fish, caution, p. 5-13", Basis: cite.Read},
	}
	lightUnseen = cite.Caution{
		ID:       "smoke.light-unseen",
		Text:     "The air and the time of a light smoke were not seen in print.",
		Citation: chamberRules[LightSmoke-1].Citation,
	}
)
