package smoke

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
)

// The rules that a recipe is held against, in the order of Claim.
const (
	RuleSmoking verdict.Rule = "smoke.smoking"
	RuleLoss    verdict.Rule = "smoke.loss"
	RuleAir     verdict.Rule = "smoke.air"
	RuleTime    verdict.Rule = "smoke.time"
	RuleCore    verdict.Rule = "smoke.core"
	RuleHold    verdict.Rule = "smoke.hold"
	RulePack    verdict.Rule = "smoke.pack"
	RuleKeep    verdict.Rule = "smoke.keep"
	RuleDays    verdict.Rule = "smoke.days"
)

// The rules that a record of the core is held against, beside RuleHold. RuleReached is a probe that never was at the
// limit, RuleDip one that fell below it, RuleGap a time without readings; the last two are the steps of a cooling.
const (
	RuleReached    verdict.Rule = "smoke.reached"
	RuleDip        verdict.Rule = "smoke.dip"
	RuleGap        verdict.Rule = "smoke.gap"
	RuleCooling    verdict.Rule = "smoke.cooling"
	RuleColdFinish verdict.Rule = "smoke.cold-finish"
)

// checkWarmth returns a units.UnsetError for a temperature that is not set, and a units.RangeError in both scales unless
// low ≤ got ≤ high.
func checkWarmth(what string, got, low, high units.Temperature) error {
	switch {
	case !got.IsSet():
		return units.UnsetError{What: what}
	case got.Below(low) || got.Above(high):
		return units.RangeError{What: what, Got: inBoth(got), Low: inBoth(low), High: inBoth(high)}
	}
	return nil
}

// inBoth prints a temperature in both scales.
func inBoth(t units.Temperature) string { return units.AmountOf(t).Text(units.Both, units.Nearest) }
