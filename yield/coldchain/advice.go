package coldchain

import (
	"fmt"
	"time"

	"example.org/lakelarder/units"
)

// next is what to do now, in words for the person with the fish.
func (r Report) next() []string {
	switch r.Verdict {
	case Exceeded:
		return []string{
			"Do not eat, smoke, dry, can or freeze this fish: discard it where neither people nor animals get at it.",
			"Heat does not mend it: toxins may have formed that cooking and canning leave in the fish.",
		}
	case CannotTell:
		return []string{
			fmt.Sprintf("%v are not recorded: treat the fish as exceeded unless another record shows that it stayed cold.", r.Unknown),
			"Chill it to 38 °F (3.3 °C) or below now.",
		}
	}
	return []string{
		"Keep the fish at 38 °F (3.3 °C) or below, on ice, from now on.",
		"The limits count all time since the catch together: add what comes after this record, never start anew.",
	}
}

// cautions are what must be known of the answer.
func (r Report) cautions(start time.Duration) []string {
	all := []string{
		"The record must be of the warmest part inside the fish, not of the air or the ice.",
		"Follow the advice of the local extension service and local codes where they are stricter.",
	}
	if start > 0 {
		all = append(all, fmt.Sprintf("The record begins at %v: what came before is not in it.", start))
	}
	if r.Unknown > 0 {
		all = append(all, fmt.Sprintf("%v lie in gaps longer than %v and count nowhere.", r.Unknown, r.Terms.MaxGap))
	}
	if r.Highest.Value.Above(units.Fahrenheit(guideTop)) {
		all = append(all, "Time above 135 °F is not counted as exposure; it does not undo what came before.")
	}
	if n := r.unverified(); n > 0 {
		all = append(all, fmt.Sprintf("%d of the limits used are from memory: check the print before relying on them.", n))
	}
	for _, f := range r.Findings {
		switch f.Rule {
		case TableA2:
			continue
		case RawReadyToEat:
			all = append(all, "Raw fish never above 70 °F: 5 h above 50 °F here, 6 h in an older edition.")
		case RawReadyToEatOlder:
			all = append(all, "The 6 h of an older edition were asked for; the stricter figure is 5 h.")
		}
	}
	if r.usesA2() && r.Terms.Reading != SumOfFractions {
		all = append(all, "The bands of table A-2 were not added up; the sum of fractions is the stricter reading.")
	}
	return all
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

func (r Report) usesA2() bool {
	for _, f := range r.Findings {
		if f.Rule == TableA2 {
			return true
		}
	}
	return false
}
