package coldchain

import (
	"fmt"
	"strings"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// next is what to do now, in words for the person with the fish; the last line of an Exceeded says why. Iced says that
// the record is one of raw fish that lay in ice.
func (r Report) next(iced bool) []string {
	switch r.Verdict {
	case Exceeded:
		return append(r.exceeded(iced), r.why())
	case CannotTell:
		return []string{
			fmt.Sprintf("%v are not recorded: treat the fish as exceeded unless another record shows that it stayed cold.", units.Lasting(r.Unknown)),
			"Chill it to 38 °F (3.3 °C) or below now.",
		}
	}
	return []string{
		"Keep the fish at 38 °F (3.3 °C) or below, on ice, from now on.",
		"The limits count all time since the catch together: add what comes after this record, never start anew.",
	}
}

// exceeded is what to do with fish that is past a limit.
func (r Report) exceeded(iced bool) (all []string) {
	if r.FromMemory {
		all = append(all, "What this fish exceeds is known here from memory alone: look the limit up in the print, or ask the extension service, before it is used or thrown away.")
	}
	switch {
	case iced:
		return append(all, r.exceededInIce()...)
	case r.FromMemory:
		return append(all, "Until then keep it at 38 °F (3.3 °C) or below, and neither eat nor preserve it.")
	}
	all = append(all, "Do not eat, smoke, dry, can or freeze this fish: "+discardIt+".")
	for _, f := range r.Findings {
		if f.Verdict == Exceeded && !growsInIce(f.Hazard) {
			return append(all, "Heat does not mend it: toxins may have formed that cooking and canning leave in the fish.")
		}
	}
	return all
}

const discardIt = "discard it where neither people nor animals get at it"

// exceededInIce is what to do with raw fish in ice that is past the two-hour rule, which asks where the fish lay, or
// past a limit of table A-2, which asks how it will be eaten. The record tells neither.
func (r Report) exceededInIce() (all []string) {
	if r.exceeds(KitchenTwoHours) {
		all = append(all, "The two-hour rule is for time out of the cold; counted here is how long the inside was above 40 °F (4.4 °C), in ice or not. "+
			"If the fish lay out of ice, or in a refrigerator above 40 °F, for longer than the rule allows in all: "+discardIt+".")
	}
	if r.exceeds(TableA2) {
		all = append(all, "The limit of table A-2 is for fish that is eaten without further cooking: do not eat this fish raw, lightly salted or cold-smoked.")
	}
	return append(all, "Keep it at 38 °F (3.3 °C) or below, and ask the extension service before it is cooked or preserved.")
}

// why names what is exceeded, when it was and whether that was read.
func (r Report) why() string {
	var all []string
	for _, f := range r.Findings {
		if f.Verdict != Exceeded {
			continue
		}
		name, basis := f.Rule.String(), "read"
		if f.Hazard != 0 {
			name += ", " + f.Hazard.String()
		}
		if f.FromMemory {
			basis = "from memory"
		}
		all = append(all, fmt.Sprintf("%s, after %s (%s)", name, units.Lasting(f.ExceededAt.Truncate(time.Minute)), basis))
	}
	return "Past its limit: " + strings.Join(all, "; ") + "."
}

// exceeds reports whether a rule is exceeded.
func (r Report) exceeds(rule Rule) bool {
	for _, f := range r.Findings {
		if f.Rule == rule && f.Verdict == Exceeded {
			return true
		}
	}
	return false
}

// longestCooling is what the Food Code (read as adopted by a state) gives cooked food to reach 41 °F, here the end of
// believing that fish is cooling.
const longestCooling = 6 * time.Hour

// iced reports whether a record may be one of raw fish that lay in ice, and what is exceeded for that alone: without a
// gap, never above 70 °F, and within everything that the guide says of raw fish, whatever was asked for, but for the
// bands that hold in melting ice. Fish above 40 °F for longer than the two-hour rule allows must have been cooling, and
// not for longer than the Food Code gives cooked food.
func (r Report) iced(l ledger, last units.Temperature) bool {
	if r.Terms.Product != RawFish || r.Unknown > 0 || r.Highest.Value.Above(units.Fahrenheit(70)) {
		return false
	}
	cooling := last.Below(r.Highest.Value) && l.above(firstAbove(units.Fahrenheit(kitchenLow))) <= longestCooling
	all := Terms{Rules: []Rule{TableA2, RawReadyToEat, KitchenTwoHours}, HotAir: r.Terms.HotAir}
	for _, j := range all.judges() {
		if growsInIce(j.hazard) {
			j.limits = j.limits[1:]
		}
		if !j.met(l) && (j.rule != KitchenTwoHours || !cooling) {
			return false
		}
	}
	return true
}

// growsInIce reports whether a hazard of table A-2 has a limit for fish in melting ice: Listeria and Yersinia, which
// make ill by themselves and leave no toxin behind.
func growsInIce(h Hazard) bool {
	bands := a2Of(h)
	return len(bands) > 0 && bands[0].Over.Below(units.Celsius(0))
}

// cautions are what must be known of the answer.
func (r Report) cautions(start time.Duration) []cite.Caution {
	all := []cite.Caution{
		{Text: "the record must be of the warmest part inside the fish, not of the air or the ice", Citation: quick2020},
		{Text: "follow local codes and the advice of the extension service where they are stricter"},
	}
	say := func(citation cite.Citation, format string, values ...any) {
		all = append(all, cite.Caution{Text: fmt.Sprintf(format, values...), Citation: citation})
	}
	if start > 0 {
		say(cite.Citation{}, "the record begins at %v: what came before is not in it", units.Lasting(start))
	}
	if r.Unknown > 0 {
		say(cite.Citation{}, "%v lie in gaps longer than %v and count nowhere", units.Lasting(r.Unknown), units.Lasting(r.Terms.MaxGap))
	}
	if r.Highest.Value.Above(units.Fahrenheit(guideTop)) {
		say(cite.Citation{}, "time above 135 °F is not counted, nor above 140 °F by the two-hour rule; it does not undo what came before")
	}
	if r.Terms.Product == RawFish && r.Highest.Value.Above(units.Fahrenheit(guideTop)) {
		say(cite.Citation{}, "fish above 135 °F is no longer raw: hold the record from there on against the rules for cooked fish")
	}
	if n := r.unverified(); n > 0 {
		say(cite.Citation{}, "%d of the limits used are from memory: check the print before relying on them", n)
	}
	if r.judges(RawReadyToEat) {
		say(quickOlder, "raw fish never above 70 °F is held to 5 h above 50 °F; an older edition is remembered with 6 h")
	}
	if r.judges(RawReadyToEatOlder) {
		say(quickRecalled, "the 6 h of an older edition were asked for; the stricter figure is 5 h")
	}
	if r.judges(TableA2) && r.Terms.Product == RawFish {
		say(quickRecalled, "table A-2 is meant for fish that is eaten without further cooking; held against fish to be cooked or canned it is the stricter choice")
	}
	if len(r.Terms.Rules) > 0 {
		say(cite.Citation{}, "the record was held against the rules asked for alone: it may be past others")
	}
	if r.judges(TableA2) && len(r.Terms.Hazards) > 0 {
		say(cite.Citation{}, "of table A-2 the hazards asked for were judged alone: the record may be past others")
	}
	if r.Terms.Product == AnyFish && len(r.Terms.Rules) == 0 {
		say(cite.Citation{}, "nobody said whether the fish is raw or cooked: it was held to the rules for both")
	}
	if r.judges(TableA2) && r.Terms.Reading != SumOfFractions {
		say(cite.Citation{}, "the bands of table A-2 were not added up; the sum of fractions is the stricter reading")
	}
	return all
}

// judges reports whether a rule was one of those held against the record.
func (r Report) judges(rule Rule) bool {
	for _, f := range r.Findings {
		if f.Rule == rule {
			return true
		}
	}
	return false
}

// unverified counts the limits that nobody saw in print.
func (r Report) unverified() (n int) {
	for _, f := range r.Findings {
		for _, l := range f.Lines {
			if l.Limit.Citation.Unverified() {
				n++
			}
		}
	}
	return n
}
