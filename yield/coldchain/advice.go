package coldchain

import (
	"fmt"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// next is what to do now, in words for the person with the fish.
func (r Report) next() []string {
	switch {
	case r.FromMemory:
		return []string{
			"What this fish exceeds is known here from memory alone: look the limit up in the print, or ask the extension service, before it is used or thrown away.",
			"Until then keep it at 38 °F (3.3 °C) or below, and neither eat nor preserve it.",
		}
	case r.Verdict == Exceeded:
		return []string{
			"Do not eat, smoke, dry, can or freeze this fish: discard it where neither people nor animals get at it.",
			"Heat does not mend it: toxins may have formed that cooking and canning leave in the fish.",
		}
	case r.Verdict == CannotTell:
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
		say(cite.Citation{}, "time above 135 °F is not counted as exposure; it does not undo what came before")
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
