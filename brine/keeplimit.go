package brine

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// KeepLimit is a published figure for fish that keeps without a refrigerator, or sealed without being canned: the
// strengths that ordinary smoked fish does not come near. Salt is the least water phase salt, Activity the greatest
// water activity, itself too much where Below is set; the one that is not printed is 0.
type KeepLimit struct {
	ID       string
	Salt     units.Ratio
	Activity units.Ratio
	Below    bool
	Fish     string
	Place    string
	Citation cite.Citation
}

// KeepLimits returns the published figures, to show how far they lie above the 3.5 % of refrigerated smoked fish.
// Nothing here says that a home product keeps without cold. The slice is the caller's own.
func KeepLimits() []KeepLimit { return append([]KeepLimit(nil), keepLimits[:]...) }

// SaltingRule is a published temperature for fish that is being salted: at most so much, as printed in both scales.
type SaltingRule struct {
	ID       SaltingRuleID
	What     string
	Limit    units.Figure
	Citation cite.Citation
}

// SaltingRuleID names a SaltingRule.
type SaltingRuleID string

// The rules of SaltingRules.
const (
	RawUntilSalted  SaltingRuleID = "RAW-38"
	BrineStart      SaltingRuleID = "BRINE-START"
	BrineBeyond4h   SaltingRuleID = "BRINE-4H"
	DrySaltedCold   SaltingRuleID = "DRYSALT-COLD"
	DrySaltedCoolUS SaltingRuleID = "DRYSALT-COLD-FDA"
)

// SaltingRules returns the published temperatures of salting, the strictest of each step first: 38 °F for the raw
// fish, for dry-salted fish and for brining of more than 4 hours, 60 °F for a brine at its start. A rule of 50 °F is
// in circulation; no document was found. The slice is the caller's own.
func SaltingRules() []SaltingRule { return append([]SaltingRule(nil), saltingRules[:]...) }
