package parasites

import (
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
)

// The rules that a plan or a record is held against.
const (
	RuleFoodCodeWeek    verdict.Rule = "parasites.food-code-7-days"
	RuleFoodCode15Hours verdict.Rule = "parasites.food-code-15-hours"
	RuleFoodCode24Hours verdict.Rule = "parasites.food-code-24-hours"
	RuleEU24Hours       verdict.Rule = "parasites.eu-24-hours"
	RuleEU15Hours       verdict.Rule = "parasites.eu-15-hours"
	RuleCodex24Hours    verdict.Rule = "parasites.codex-24-hours"
	RuleTapeworm48Hours verdict.Rule = "parasites.tapeworm-48-hours"
	RuleTapeworm24Hours verdict.Rule = "parasites.tapeworm-24-hours"
	RuleTapeworm14F     verdict.Rule = "parasites.tapeworm-14-f"
	RuleFoodCodeCooking verdict.Rule = "parasites.food-code-cooking"
	RuleHotSmoking      verdict.Rule = "parasites.hot-smoking"
	RuleEUHeating       verdict.Rule = "parasites.eu-heating"
	RuleTapeworm165F    verdict.Rule = "parasites.tapeworm-165-f"
	RuleTapeworm122F    verdict.Rule = "parasites.tapeworm-122-f"
	RuleBelieved        verdict.Rule = "parasites.believed" // what no fish and no freezer does
)

// Rule is one published way to kill the parasites of fish: by cold, or by Heat. Hold is the least time at Temperature
// or below it, with Heat above it, counted by Clock without a break. Where Solid is set, the fish must first be frozen
// solid at that temperature or below. ID is the Rule of the finding about it. Rules are comparable.
type Rule struct {
	ID          verdict.Rule
	Name        string
	Heat        bool
	Temperature units.Temperature
	Hold        time.Duration
	Solid       units.Temperature
	Clock       Clock
	Standing    Standing
	Fish        string // what it is printed for
	Note        string
	Citation    cite.Citation
}

// MarshalJSON writes the rule as an app shows it.
func (r Rule) MarshalJSON() ([]byte, error) { return wire.Marshal(r) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (r *Rule) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, r) }

// Rules returns what has been published on killing parasites in fish, cold first, in the order of the sources; the
// slice is the caller's own. Weaker figures, for tapeworm only, are among them as Refused, so that they are not taken
// for safe.
func Rules() []Rule { return append([]Rule(nil), ruleTable[:]...) }

// entry is the temperature at which the hold begins.
func (r Rule) entry() units.Temperature {
	if r.Solid.IsSet() {
		return r.Solid
	}
	return r.Temperature
}

// bound is the temperature that the hold begins at, as a figure.
func (r Rule) bound() units.Figure {
	if r.Heat {
		return units.AtLeast(r.entry())
	}
	return units.AtMost(r.entry())
}
