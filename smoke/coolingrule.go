package smoke

import (
	"time"

	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// CoolingRuleID names a published cooling rule. The zero CoolingRuleID is not stated: that of a caller's own rule.
type CoolingRuleID uint8

// The published rules, in the order of CoolingRules.
const (
	Cool2And4 CoolingRuleID = iota + 1
	CoolFrance
	CoolFoodCode
	CoolFDA
	Cool3And12
	Cool5And12
)

var coolingRuleIDs = word.List[CoolingRuleID]{What: "cooling rule", Words: []string{
	"COOL-2-4", "COOL-FRANCE", "COOL-FOODCODE", "COOL-135-40", "COOL-3-12", "COOL-5-12",
}, Also: map[string]CoolingRuleID{"cool-140-40": CoolFDA}}

// ParseCoolingRuleID reads a name that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseCoolingRuleID(s string) (CoolingRuleID, error) { return coolingRuleIDs.Parse(s) }

// String is the name of the rule: "COOL-2-4".
func (id CoolingRuleID) String() string { return coolingRuleIDs.Of(id) }

// MarshalText is String as bytes, empty when it is not set; an unknown one is a units.UnknownError.
func (id CoolingRuleID) MarshalText() ([]byte, error) { return coolingRuleIDs.Marshal(id) }

// UnmarshalText is ParseCoolingRuleID, and the empty text is one that is not set.
func (id *CoolingRuleID) UnmarshalText(text []byte) error { return coolingRuleIDs.Unmarshal(text, id) }

// CoolingStep is one step of a cooling rule: from below From down to To. From is not set where the clock runs from the end of the
// heating, taken as the highest reading. Of a step InAll, Within counts from the start of the first step.
type CoolingStep struct {
	From, To         units.Temperature // in the source's own scale
	FromAlso, ToAlso units.Temperature // as printed in the other scale, not set where there is none
	Within           time.Duration
	InAll            bool
}

// CoolingRule is one published rule for fish that was smoked or cooked hot. The rules disagree; they are not merged.
type CoolingRule struct {
	ID       CoolingRuleID
	Steps    [2]CoolingStep // a second step that is zero is none
	Fish     string
	Place    string
	Citation cite.Citation
}

// CoolingRules returns the published rules. The slice is the caller's own.
func CoolingRules() []CoolingRule { return append([]CoolingRule(nil), coolingRules[:]...) }

// DefaultCoolingRule returns 60 to 21 °C in 2 h and on to 4 °C in 4 h more, the strictest in hours that was read for smoked fish
// and leads into the cold. The French rule is stricter at its start and ends at 10 °C; Michigan says "at once" and no hours.
func DefaultCoolingRule() CoolingRule { return coolingRules[Cool2And4-1] }

// FindCoolingRule returns the published rule with this name. One that is not stated is a units.UnsetError, any other
// unknown one a units.UnknownError.
func FindCoolingRule(id CoolingRuleID) (CoolingRule, error) {
	if err := coolingRuleIDs.Check(id); err != nil {
		return CoolingRule{}, err
	}
	return coolingRules[id-1], nil
}

// What a cooling may be judged against: no published step ends above 70 °F or takes longer than 12 h.
var (
	warmestEnd = units.Fahrenheit(70)
	coldestEnd = units.Celsius(-20)
)

const longestCooling = 12 * time.Hour

// check refuses what no rule asks for; a step that is not there is none.
func (r CoolingRule) check() error {
	for i, step := range r.Steps {
		if i > 0 && step == (CoolingStep{}) {
			continue
		}
		if err := checkWarmth("end of the cooling", step.To, coldestEnd, warmestEnd); err != nil {
			return err
		}
		if step.Within == 0 {
			return units.UnsetError{What: "time of the cooling"}
		}
		if err := units.CheckDuration("time of the cooling", step.Within, leastTime, longestCooling); err != nil {
			return err
		}
		if err := checkPair("end of the cooling", step.To, units.AmountOf(step.ToAlso)); err != nil {
			return err
		}
		if err := checkPair("start of the cooling", step.From, units.AmountOf(step.FromAlso)); err != nil {
			return err
		}
		if step.From.IsSet() && !step.From.Above(step.To) {
			return units.RangeError{What: "start of the cooling", Got: inBoth(step.From), Low: "above its end, " + inBoth(step.To)}
		}
	}
	return nil
}
