package coldchain

import (
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
)

// LandingDemand is what is to be done with a fish that was caught. The zero LandingDemand is not set.
type LandingDemand uint8

// The demands.
const (
	BleedAndGut LandingDemand = iota + 1 // counted from the catch
	Gutted                               // before it is smoked, at whatever time
	IntoIce                              // counted from death
)

var demands = word.List[LandingDemand]{What: "demand", Words: []string{"bleed and gut", "gutted", "into ice"}}

// ParseLandingDemand reads the words that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseLandingDemand(s string) (LandingDemand, error) { return demands.Parse(s) }

// String is the demand in words: "bleed and gut"; "not stated" when it is not set.
func (d LandingDemand) String() string { return demands.Of(d) }

// MarshalText is String as bytes, empty when the demand is not set; an unknown one is a units.UnknownError.
func (d LandingDemand) MarshalText() ([]byte, error) { return demands.Marshal(d) }

// UnmarshalText is ParseLandingDemand, and the empty text is a demand that is not set.
func (d *LandingDemand) UnmarshalText(text []byte) error { return demands.Unmarshal(text, d) }

// The rules that a landing is held against.
const (
	RuleGutForCanning     verdict.Rule = "coldchain.landing.gut-for-canning"
	RuleGutForCanning1994 verdict.Rule = "coldchain.landing.gut-for-canning-1994"
	RuleGutForSmoking     verdict.Rule = "coldchain.landing.gut-for-smoking"
	RuleChillWarmSea      verdict.Rule = "coldchain.landing.chill-warm-sea"
	RuleChill9Hours       verdict.Rule = "coldchain.landing.chill-9-hours"
	RuleChill12Hours      verdict.Rule = "coldchain.landing.chill-12-hours"
	RuleChillWarmSeaFDA   verdict.Rule = "coldchain.landing.chill-warm-sea-fda"
	RuleChill9HoursFDA    verdict.Rule = "coldchain.landing.chill-9-hours-fda"
	RuleChillGutted       verdict.Rule = "coldchain.landing.chill-gutted"
)

// LandingRule is one published deadline after the catch. Within is zero where none is stated, AtMost the temperature of
// what chills the fish, or for Gutted of the fish. ThenIce says that the fish is to lie on ice from then on.
// WarmerThan, where set, is the air or water that the rule is for, NotWarmerThan the warmest of both that it holds with;
// IfGutted that it is for gilled and gutted fish. A
// Yardstick is printed for other fish, and is no rule for salmon and trout. ID is the Rule of the findings about it.
type LandingRule struct {
	ID            verdict.Rule
	Demand        LandingDemand
	Printed       string
	Within        time.Duration
	AtMost        units.Temperature
	ThenIce       bool
	WarmerThan    units.Temperature
	NotWarmerThan units.Temperature
	IfGutted      bool
	For           string
	Yardstick     bool
	Citation      cite.Citation
}

// MarshalJSON writes the rule as an app shows it.
func (r LandingRule) MarshalJSON() ([]byte, error) { return wire.Marshal(r) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (r *LandingRule) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, r) }

// LandingRules returns the published deadlines for bleeding, gutting and chilling; those that are for salmon and trout
// first. The slice is the caller's own.
func LandingRules() []LandingRule { return append([]LandingRule(nil), landingTable[:]...) }
