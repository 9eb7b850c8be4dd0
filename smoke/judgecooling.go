package smoke

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
)

// judgeCooling judges the cooling that a recipe states, step by step: each step of the rule must be promised in its time.
// A recipe that states none is not judged.
func (c Claim) judgeCooling(all []verdict.Finding, rule CoolingRule) []verdict.Finding {
	if c.Cooling == ([2]CoolingStep{}) {
		return all
	}
	for i, step := range rule.Steps {
		if !step.To.IsSet() {
			continue
		}
		f := verdict.Finding{
			Rule: [...]verdict.Rule{RuleCooling, RuleColdFinish}[i], What: coolingSteps[i], Wanted: units.AtMost(step.Within), Citation: rule.Citation,
		}
		switch took, promised := c.promised(rule, i); {
		case !promised:
			f.Kind = verdict.Missing
		case took > step.Within:
			f.Kind, f.Stated, f.By = verdict.TooLong, units.Exactly(took), units.AmountOf(took-step.Within)
		default:
			continue
		}
		f.Verdict = f.Kind.Verdict()
		all = append(all, f)
	}
	return all
}

// promised is the time that the recipe takes for a step of a rule, and false where it does not say: it does not come as
// cold, or its clock starts later.
func (c Claim) promised(rule CoolingRule, i int) (time.Duration, bool) {
	step := rule.Steps[i]
	inAll := time.Duration(0)
	for n, own := range c.Cooling {
		if !own.To.IsSet() {
			break
		}
		alone := own.Within
		if own.InAll {
			alone = max(0, own.Within-inAll)
			inAll = own.Within
		} else {
			inAll += own.Within
		}
		if own.To.Above(step.To) && own.To != step.ToAlso {
			continue
		}
		switch {
		case i == 0 || step.InAll:
			return inAll, startsBy(c.Cooling[0], rule.Steps[0])
		case n == 0: // one step for both
			return own.Within, startsBy(own, step)
		case own.InAll: // what the first step does not need is left for the second
			return max(alone, inAll-rule.Steps[0].Within), startsBy(c.Cooling[0], rule.Steps[0])
		}
		return alone, startsBy(own, step)
	}
	return 0, false
}

// startsBy reports whether the clock of a stated step runs when that of the rule does.
func startsBy(own, rule CoolingStep) bool {
	switch {
	case !own.From.IsSet():
		return true // from the end of the heating
	case !rule.From.IsSet():
		return false
	}
	return own.From.AtLeast(rule.From) || own.From == rule.FromAlso
}
