package keeping

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
)

// The rules that a storage is held against.
const (
	RuleSmokedAtHome     verdict.Rule = "keeping.store.smoked-at-home"
	RuleSmokedAndRaw     verdict.Rule = "keeping.store.smoked-and-raw"
	RuleRefrigerator     verdict.Rule = "keeping.store.refrigerator"
	RuleFreezerSixMonths verdict.Rule = "keeping.store.freezer-six-months"
	RuleFreezerFatty     verdict.Rule = "keeping.store.freezer-fatty"
	RuleFreezerFish      verdict.Rule = "keeping.store.freezer-fish"
	RuleFreezerLean      verdict.Rule = "keeping.store.freezer-lean"
	RuleFreezer          verdict.Rule = "keeping.store.freezer"
	RuleShelfGood        verdict.Rule = "keeping.store.shelf-good"
	RuleShelf            verdict.Rule = "keeping.store.shelf"
)

// StoreLimit is a published temperature of a storage: at most AtMost (below it where Under is set) and, where AtLeast
// is set, at least that. General is the limit for whatever is kept there; the others are for what For says. ID is the
// Rule of the finding about it.
type StoreLimit struct {
	ID              verdict.Rule
	Storage         Storage
	For             string
	AtLeast, AtMost units.Temperature
	Under           bool
	General         bool
	Citation        cite.Citation
}

// StoreLimits returns the published temperatures of a storage, the coldest first; none for a Storage that is not set or
// not known. The slice is the caller's own.
func StoreLimits(storage Storage) []StoreLimit {
	var all []StoreLimit
	for _, l := range storeTable {
		if l.Storage == storage {
			all = append(all, l)
		}
	}
	return all
}

// against holds a temperature against the limit.
func (l *StoreLimit) against(at units.Temperature) (StoreLine, verdict.Kind) {
	line, kind := StoreLine{Limit: *l, Verdict: verdict.Met}, verdict.Kind(0)
	switch {
	case at.Above(l.AtMost):
		line.TooWarm, _ = at.Sub(l.AtMost) // both are set
		kind = verdict.TooWarm
	case l.Under && at == l.AtMost:
		kind = verdict.TooWarm
	case at.Below(l.AtLeast):
		line.TooCold, _ = l.AtLeast.Sub(at)
		kind = verdict.TooCold
	default:
		return line, 0
	}
	line.Verdict = verdict.Differs
	if l.General {
		line.Verdict = verdict.NotMet
	}
	return line, kind
}

// finding is about a line that is not met.
func (l *StoreLine) finding(at units.Temperature, kind verdict.Kind) verdict.Finding {
	f := verdict.Finding{
		Rule: l.Limit.ID, What: l.Limit.For, Kind: kind, Verdict: l.Verdict,
		Stated: units.Exactly(at), Wanted: atMost(l.Limit.AtMost, l.Limit.Under), Citation: l.Limit.Citation,
	}
	if l.Limit.AtLeast.IsSet() {
		f.Wanted = units.Between(l.Limit.AtLeast, l.Limit.AtMost)
	}
	if off := max(l.TooWarm, l.TooCold); off > 0 {
		f.By = units.AmountOf(off)
	}
	return f
}
