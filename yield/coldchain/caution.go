package coldchain

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
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
	say(above && r.Terms.Product == RawFish, noLongerRaw)
	say(r.usesUnverified(), limitsFromMemory)
	say(r.judges(RawReadyToEat), fiveHours)
	say(r.judges(RawReadyToEatOlder), sixHoursAsked)
	say(tableA2 && r.Terms.Product == RawFish, withoutCooking)
	say(len(r.Terms.Rules) > 0, rulesAsked)
	say(tableA2 && len(r.Terms.Hazards) > 0, hazardsAsked)
	say(r.Terms.Product == AnyFish && len(r.Terms.Rules) == 0, notDescribed)
	say(tableA2 && r.Terms.Reading != SumOfFractions, bandsNotAdded)
	return all
}

const mostCautions = 12

// judges reports whether a rule was one of those held against the record.
func (r *Report) judges(rule Rule) bool {
	for i := range r.Allowances {
		if r.Allowances[i].Rule == rule {
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
