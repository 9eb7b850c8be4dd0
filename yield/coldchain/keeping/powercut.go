package keeping

import (
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// PowerCutRule is how long a storage is said to hold its cold without power, its door shut: "about", in print. Filled
// is in words, empty where it does not matter.
type PowerCutRule struct {
	Storage  Storage
	Filled   string
	For      time.Duration
	Citation cite.Citation
}

// MarshalJSON writes the rule as an app shows it.
func (r PowerCutRule) MarshalJSON() ([]byte, error) { return wire.Marshal(r) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (r *PowerCutRule) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, r) }

// PowerCutRules returns the published times, the shortest first. The slice is the caller's own.
func PowerCutRules() []PowerCutRule { return append([]PowerCutRule(nil), powerCutTable[:]...) }

var powerCutPage = chain.ReadIn(cite.WSUPowerOutage2011, "page on freezers")

var powerCutTable = [...]PowerCutRule{
	{
		InRefrigerator, "", 4 * time.Hour,
		cite.Citation{Source: cite.PowerOutageAdvice, Where: "USDA and FoodSafety.gov, as quoted", Basis: cite.Quoted},
	},
	{InFreezer, "half full", 24 * time.Hour, powerCutPage},
	{InFreezer, "full", 48 * time.Hour, powerCutPage},
}

// RulePowerCut is that a storage held its cold without power.
const RulePowerCut verdict.Rule = "keeping.power-cut"

// PowerCutReport is a cut held against the rule for the storage. Left is how long its cold still lasts by the rule, the
// door shut; zero when that is over.
type PowerCutReport struct {
	verdict.Report
	Rule PowerCutRule
	Left time.Duration
}

// MarshalJSON writes the report as an app shows it.
func (r PowerCutReport) MarshalJSON() ([]byte, error) { return wire.Marshal(r) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (r *PowerCutReport) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, r) }

// CheckPowerCut holds a power cut against the published time of a refrigerator or freezer whose door stayed shut: Met
// up to and including it, and CannotTell after it, for then only a thermometer in the food can tell. Full is for a
// freezer that is packed full; anything less is half full. The cut must be 0 to 60 days: otherwise a units.RangeError.
// A Storage that is not set is a units.UnsetError; a cupboard, and one that is not known, a units.UnknownError.
func CheckPowerCut(storage Storage, full bool, cut time.Duration) (PowerCutReport, error) {
	if err := storageNames.Check(storage); err != nil {
		return PowerCutReport{}, err
	}
	if storage == InCupboard {
		return PowerCutReport{}, units.UnknownError{
			What: "storage without power", Got: storage.String(),
			Known: []string{InRefrigerator.String(), InFreezer.String()},
		}
	}
	if err := units.CheckDuration("power cut", cut, 0, 60*chain.Day); err != nil {
		return PowerCutReport{}, err
	}
	var r PowerCutReport
	for _, rule := range powerCutTable {
		if rule.Storage == storage && (rule.Filled == "full") == (full && storage == InFreezer) {
			r.Rule = rule
		}
	}
	var findings []verdict.Finding
	cautions := append(make([]cite.Caution, 0, 3), doorShut)
	if cut <= r.Rule.For {
		r.Left = r.Rule.For - cut
	} else {
		findings = []verdict.Finding{{
			Rule: RulePowerCut, What: "power cut", Kind: verdict.TooLong, Verdict: verdict.CannotTell,
			Stated: units.Exactly(cut), Wanted: units.AtMost(r.Rule.For), By: units.AmountOf(cut - r.Rule.For),
			Citation: r.Rule.Citation,
		}}
		cautions = append(cautions, measureFood)
	}
	if storage == InFreezer {
		cautions = append(cautions, dryIce)
	}
	r.Report = verdict.Of(findings, cautions)
	return r, nil
}

var (
	doorShut = cite.Caution{
		ID:       "keeping.door-shut",
		Text:     "The cold holds about so long, and only while the door stays shut: every opening costs hours.",
		Citation: powerCutPage,
	}
	measureFood = cite.Caution{
		ID: "keeping.measure-food", Deciding: true,
		Text: "Past that time measure every piece: what was above 40 °F (4.4 °C) for two hours is discarded. " +
			"Without a record it cannot be known.",
		Citation: kitchenRule,
	}
	dryIce = cite.Caution{
		ID: "keeping.dry-ice",
		Text: "50 lb (23 kg) of dry ice keep a freezer of 18 cubic feet (0.5 m³) for about two days. " +
			"It burns the skin, and its gas needs an open window.",
		Citation: powerCutPage,
	}
)
