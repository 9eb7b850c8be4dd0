package coldchain

import "example.org/lakelarder/internal/word"

// Rule is one published set of limits. The zero Rule is not set.
type Rule uint8

// The rules. Each is one source's own: they count different things and are never mixed.
const (
	// TableA2 is the FDA's table of growth and toxin formation, hazard by hazard.
	TableA2 Rule = iota + 1
	// RawReadyToEat is the FDA's short rule for fish that is eaten raw: 5 h above 50 °F if never
	// above 70 °F, and less if it was.
	RawReadyToEat
	// RawReadyToEatOlder is the same with the 6 h of an older edition. It is here to be named, never a
	// default.
	RawReadyToEatOlder
	// CookedReadyToEat is the FDA's short rule for fish that was cooked and is eaten as it is.
	CookedReadyToEat
	// KitchenTwoHours is the consumer's rule: two hours above 40 °F, one when the air is above 90 °F.
	KitchenTwoHours
)

var ruleNames = word.List[Rule]{What: "rule", Words: []string{
	"table A-2", "raw ready-to-eat", "raw ready-to-eat, older edition", "cooked ready-to-eat", "kitchen two hours",
}}

// ParseRule reads the name that String writes, in capitals or not; anything else is a
// units.UnknownError that lists the names.
func ParseRule(s string) (Rule, error) {
	return ruleNames.Parse(s)
}

// String is the name that ParseRule reads; "not stated" when it is not set.
func (r Rule) String() string { return ruleNames.Of(r) }

// MarshalText is String as bytes, empty when the rule is not set; an unknown one is an error.
func (r Rule) MarshalText() ([]byte, error) { return ruleNames.Marshal(r) }

// UnmarshalText is ParseRule, and the empty text is a rule that is not set.
func (r *Rule) UnmarshalText(text []byte) error { return ruleNames.Unmarshal(text, r) }
