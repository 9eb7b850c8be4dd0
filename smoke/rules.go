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
	RuleOven    verdict.Rule = "smoke.oven"
	RuleWarmUp  verdict.Rule = "smoke.warm-up"
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
	RuleDoubt      verdict.Rule = "smoke.doubt" // what contradicts physics, the air or itself
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

// printedOr is a figure as it is printed in both scales, or the plain one where that is another: a caller's own rule.
func printedOr(printed, plain units.Figure) units.Figure {
	if printed.Low == plain.Low && printed.High == plain.High {
		return printed
	}
	return plain
}

// meets reports whether a stated temperature meets a printed figure: by its own scale, or as the very reading that is printed
// beside it. What lies between two readings of one figure, such as 179.99 °F of 180 °F (82.2 °C), is neither.
func meets(f units.Figure, stated units.Temperature) bool {
	v := units.AmountOf(stated)
	return units.Figure{Low: f.Low, High: f.High}.Admits(v) || v.IsStated() && (v == f.LowAlso || v == f.HighAlso)
}

// roundedApart is how far two readings of one printed figure may be apart.
const roundedApart = units.Kelvins / 2

// checkPair refuses a second reading that is no rounding of the first.
func checkPair(what string, figure units.Temperature, also units.Amount) error {
	other, ok := units.As[units.Temperature](also)
	if low, high := figure.Add(-roundedApart), figure.Add(roundedApart); ok && (other.Below(low) || other.Above(high)) {
		return checkWarmth(what+" in its other scale", other, low, high)
	}
	return nil
}

// inF and inC are printed temperatures.
func inF(degrees float64) units.Temperature { return units.Fahrenheit(degrees) }
func inC(degrees float64) units.Temperature { return units.Celsius(degrees) }
