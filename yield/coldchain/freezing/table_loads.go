package freezing

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

var (
	freezerManual = cite.Citation{Source: cite.FreezerManuals, Where: "freezer load rules", Basis: cite.Read}
	freezerState  = cite.Citation{
		Source: cite.MinnesotaFreezing, Where: "also West Virginia extension and freezer manuals", Basis: cite.Read,
	}
	freezerHolds   = cite.Citation{Source: cite.NCStateFAQ, Where: "also Ohio State extension", Basis: cite.Read}
	eatenRawFrozen = chain.ReadIn(cite.FDAFoodCode, "3-402.11(A)(1)")
	freezerSet     = cite.Citation{
		Source: cite.WestVirginiaFreezing, Where: "also Michigan State extension 1997", Basis: cite.Read,
	}
)

const (
	freezerSetting = -10 // °F
	freezerAhead   = 24 * time.Hour
)

// The rows in use, and all of them in the order shown.
var (
	fishLoad = LoadRule{
		For: "fish or meat", PerCubicFoot: 2 * units.Pound, Within: 24 * time.Hour,
		Note: "the stricter end of 2 to 3 lb", Citation: freezerManual,
	}
	otherLoad = LoadRule{
		For: "vegetables or fruit", PerCubicFoot: 3 * units.Pound, Within: 24 * time.Hour, Named: true,
		Citation: freezerManual,
	}
	holding = LoadRule{
		For: "frozen food held", PerCubicFoot: 35 * units.Pound, Note: "to the usable cubic foot",
		Citation: freezerHolds,
	}

	freezerTable = [...]LoadRule{
		fishLoad,
		otherLoad,
		{
			For: "any food, least", PerCubicFoot: 2 * units.Pound, Within: 24 * time.Hour, Named: true,
			Note: "2 to 3 lb, not parted by food", Citation: freezerState,
		},
		{
			For: "any food, most", PerCubicFoot: 3 * units.Pound, Within: 24 * time.Hour, Named: true,
			Note: "2 to 3 lb, not parted by food", Citation: freezerState,
		},
		holding,
	}
)
