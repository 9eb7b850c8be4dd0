package keeping

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/coldchain"
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

// PowerCutRules returns the published times, the shortest first. The slice is the caller's own.
func PowerCutRules() []PowerCutRule { return append([]PowerCutRule(nil), powerCutTable[:]...) }

var powerCutPage = chain.ReadIn(cite.WSUPowerOutage2011, "page on freezers")

var powerCutTable = [...]PowerCutRule{
	{InRefrigerator, "", 4 * time.Hour, cite.Citation{Source: cite.PowerOutageAdvice, Where: "refrigerator, door shut", Basis: cite.Recalled}},
	{InFreezer, "half full", 24 * time.Hour, powerCutPage},
	{InFreezer, "full", 48 * time.Hour, powerCutPage},
}

// PowerCutReport is a cut held against the rule for the storage.
type PowerCutReport struct {
	Rule     PowerCutRule
	Verdict  coldchain.Verdict
	Left     time.Duration // until the rule's time is up, door shut; zero when it is
	Cautions []cite.Caution
}

// CheckPowerCut holds a power cut against the published time of a refrigerator or freezer whose door stayed shut:
// Within up to and including it, and CannotTell after it, for then only a thermometer in the food can tell. Full is for
// a freezer that is packed full; anything less is half full. The cut must be 0 to 60 days, the storage no cupboard:
// otherwise a units.RangeError.
func CheckPowerCut(storage Storage, full bool, cut time.Duration) (PowerCutReport, error) {
	if storage != InRefrigerator && storage != InFreezer {
		return PowerCutReport{}, units.RangeError{What: "storage without power", Got: storage.String(), Low: InRefrigerator.String(), High: InFreezer.String()}
	}
	if err := units.CheckDuration("power cut", cut, 0, 60*chain.Day); err != nil {
		return PowerCutReport{}, err
	}
	p := PowerCutReport{Cautions: []cite.Caution{doorShut}}
	for _, rule := range powerCutTable {
		if rule.Storage == storage && (rule.Filled == "full") == (full && storage == InFreezer) {
			p.Rule = rule
		}
	}
	if cut <= p.Rule.For {
		p.Verdict, p.Left = coldchain.Within, p.Rule.For-cut
	} else {
		p.Cautions = append(p.Cautions, measureFood)
	}
	if storage == InFreezer {
		p.Cautions = append(p.Cautions, dryIce)
	}
	return p, nil
}

var (
	doorShut    = cite.Caution{Text: "about so long, and only while the door stays shut: every opening costs hours", Citation: powerCutPage}
	measureFood = cite.Caution{Text: "past it measure every piece: what was above 40 °F (4.4 °C) for two hours is discarded; without a record nobody can tell", Citation: kitchenRule}
	dryIce      = cite.Caution{
		Text:     "50 lb (23 kg) of dry ice keep a freezer of 18 cubic feet (0.5 m³) for about two days; it burns the skin, and its gas needs an open window",
		Citation: powerCutPage,
	}
)
