package coldchain

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// cautionsOf are what must be known of the answer, for a record that begins at a time.
func (r *Report) cautionsOf(start time.Duration) []cite.Caution {
	all := make([]cite.Caution, 2, mostCautions)
	all[0], all[1] = warmestPart, localCodes
	say := func(when bool, c cite.Caution) {
		if when {
			all = append(all, c)
		}
	}
	above := r.Highest.Value.Above(units.Fahrenheit(guideTop))
	tableA2 := r.judges(TableA2)
	say(start > 0, lateStart)
	say(r.Unknown > 0, gapsCountNowhere)
	say(above, hotTimeNotCounted)
	say(r.Dropouts > 0, dropoutsAreGaps)
	say(r.Doubted > 0, notOfTheCore)
	say(r.spares(HeatUndoesIt), heatToCome)
	say(r.Terms.relaxed() && !r.Terms.Later.Given, laterStep)
	say(r.Terms.Use != 0 && r.Terms.Later.Given && !r.Terms.Later.Value.Passes(), laterNotMet)
	say(r.spares(NotInFreshwater), freshwaterFish)
	say(r.warmRefrigerator(), refrigeratorsOwn)
	say(r.usesUnverified(), limitsFromMemory)
	say(r.judges(RawReadyToEat), fiveHours)
	say(r.judges(RawReadyToEatOlder), sixHoursAsked)
	say(tableA2 && r.Terms.Product == RawFish && !r.Terms.relaxed(), withoutCooking)
	say(len(r.Terms.Rules) > 0, rulesAsked)
	say(tableA2 && len(r.Terms.Hazards) > 0, hazardsAsked)
	say(r.Terms.Product == AnyFish && len(r.Terms.Rules) == 0, notDescribed)
	say(tableA2 && r.Terms.Reading != SumOfFractions, bandsNotAdded)
	return all
}

const mostCautions = 14

// judges reports whether a rule was one of those held against the record.
func (r *Report) judges(rule Rule) bool {
	for i := range r.Allowances {
		if r.Allowances[i].Rule == rule {
			return true
		}
	}
	return false
}

// spares reports whether a limit does not decide, for a reason.
func (r *Report) spares(why Spared) bool {
	for i := range r.Allowances {
		if r.Allowances[i].Spared == why {
			return true
		}
	}
	return false
}

// warmRefrigerator reports whether a stay was in a refrigerator that is itself too warm.
func (r *Report) warmRefrigerator() bool {
	for i := range r.Terms.Stays {
		if s := &r.Terms.Stays[i]; s.In == InRefrigerator && s.Air.Above(units.Fahrenheit(kitchenLow)) {
			return true
		}
	}
	return false
}

// usesUnverified reports whether a limit used is one that was not read in print.
func (r *Report) usesUnverified() bool {
	for i := range r.Allowances {
		for j := range r.Allowances[i].Lines {
			if r.Allowances[i].Lines[j].Limit.Citation.Unverified() {
				return true
			}
		}
	}
	return false
}

var (
	warmestPart = cite.Caution{
		ID:       "coldchain.warmest-part",
		Text:     "The record must be of the warmest part inside the fish, not of the air or the ice.",
		Citation: quickRaw,
	}
	localCodes = cite.Caution{
		ID:   "coldchain.local-codes",
		Text: "Follow local codes and the advice of the extension service where they are stricter.",
	}
	lateStart = cite.Caution{
		ID: "coldchain.late-start", Deciding: true,
		Text: "The record does not start at zero: what came before its first reading is not in it.",
	}
	gapsCountNowhere = cite.Caution{
		ID: "coldchain.gaps", Deciding: true,
		Text: "Time between readings that are too far apart is not recorded and counts nowhere.",
	}
	hotTimeNotCounted = cite.Caution{
		ID: "coldchain.hot-time",
		Text: "Time above 135 °F (57.2 °C) is not counted, nor above 140 °F (60 °C) by the two-hour rule. " +
			"It does not undo what came before.",
	}
	noLongerRaw = cite.Caution{
		ID: "coldchain.no-longer-raw", Deciding: true,
		Text: "Fish above 135 °F (57.2 °C) is no longer raw: hold the record from there on against the rules for " +
			"cooked fish.",
	}
	dropoutsAreGaps = cite.Caution{
		ID: "coldchain.dropouts", Deciding: true,
		Text: "Readings of a broken or loose probe were left out: what lay between the readings around them was not seen.",
	}
	notOfTheCore = cite.Caution{
		ID: "coldchain.not-of-the-core", Deciding: true,
		Text:     "Readings that no core comes to so fast were left out, as of a probe that was moved.",
		Citation: chain.BeliefCitation(),
	}
	heatToCome = cite.Caution{
		ID: "coldchain.heat-to-come", Deciding: true,
		Text: "Limits of growth that the heat to come undoes are shown and do not decide. " +
			"Toxins and spores decide: heat may leave them in the fish.",
		Citation: laterSource,
	}
	laterNotMet = cite.Caution{
		ID: "coldchain.later-not-met", Deciding: true,
		Text:     "The later step is not met: every limit governs, as for fish that is eaten raw.",
		Citation: laterSource,
	}
	freshwaterFish = cite.Caution{
		ID:       "coldchain.freshwater",
		Text:     "Vibrios belong to marine and estuarine fish: their limits are shown and do not decide for this fish.",
		Citation: chain.ReadIn(cite.FDAHazardsGuide2020, "ch. 12, p. 212"),
	}
	refrigeratorsOwn = cite.Caution{
		ID: "coldchain.warm-refrigerator", Deciding: true,
		Text:     "A refrigerator above 40 °F (4.4 °C) is too warm by itself: make it colder, whatever these limits say.",
		Citation: storage,
	}
	limitsFromMemory = cite.Caution{
		ID:   "coldchain.from-memory",
		Text: "Limits used here are from memory: check the document before relying on them.",
	}
	fiveHours = cite.Caution{
		ID: "coldchain.five-hours",
		Text: "Raw fish never above 70 °F (21.1 °C) is held to 5 h above 50 °F (10 °C). " +
			"An older edition is remembered with 6 h.",
		Citation: quickOlder,
	}
	sixHoursAsked = cite.Caution{
		ID: "coldchain.six-hours-asked", Deciding: true,
		Text:     "The 6 h of an older edition were asked for; the stricter figure is 5 h.",
		Citation: quickRaw,
	}
	withoutCooking = cite.Caution{
		ID: "coldchain.without-cooking",
		Text: "Table A-2 is meant for fish that is eaten without further cooking. " +
			"Held against fish to be cooked or canned it is the stricter choice.",
		Citation: quickRaw,
	}
	rulesAsked = cite.Caution{
		ID: "coldchain.rules-asked", Deciding: true,
		Text: "The record was held only against the rules asked for: it may be past others.",
	}
	hazardsAsked = cite.Caution{
		ID: "coldchain.hazards-asked", Deciding: true,
		Text: "Of table A-2 only the hazards asked for were judged: the record may be past others.",
	}
	notDescribed = cite.Caution{
		ID:   "coldchain.not-described",
		Text: "It is not stated whether the fish is raw or cooked: it was held to the rules for both.",
	}
	bandsNotAdded = cite.Caution{
		ID:   "coldchain.bands-not-added",
		Text: "The bands of table A-2 were not added up; the sum of fractions is the stricter reading.",
	}
)
