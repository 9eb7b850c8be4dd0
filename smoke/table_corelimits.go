package smoke

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// coreLimits are the printed rules: tenths of a degree Celsius, degrees Fahrenheit, both for 30 minutes. The default
// is the first.
var coreLimits = [...]CoreLimit{
	// Older than the home guides that ask for 160 °F.
	rule(822, 180, Hot180MSU, "hot-smoked fish", "Michigan (1997)", cite.MSUEPreservingFoodSafely1997, "item 01600580", cite.Read).home(),
	// The bulletin goes on to allow storage without cold at 3.5 % water phase salt: that is not carried over.
	rule(822, 180, Hot180OSU, "hot-smoked fish", "Oregon (older)", cite.OregonEarlySmokingBulletin, "core temperature", cite.Read).home(),
	rule(711, 160, Hot160PNW, "hot-smoked fish", "Pacific Northwest", cite.PNW238, "core temperature", cite.Read).home(),
	rule(711, 160, Hot160WI, "hot-smoked fish", "Wisconsin", cite.WisconsinSeaGrantSmoking, "core temperature", cite.Read).home(),
	rule(711, 160, Hot160WSU, "hot-smoked fish", "Washington", cite.WSUSmokingCuring, "core temperature", cite.Read).home(),
	rule(711, 160, Hot160Chub, "smoked chub with nitrite", "US", cite.CFR21Part172Sec177, "(c)", cite.Recalled),
	rule(628, 145, Hot145MI, "hot-smoked fish", "Michigan", cite.MichiganRegulation569, "R 285.569.7(1)", cite.Read),
	rule(628, 145, Hot145ME, "hot-smoked fish", "Maine", cite.MaineRules01001Ch359, "s. 2(C)(1)-(2)", cite.Read),
	rule(628, 145, Hot145GL, "smoked lake whitefish, lake trout, lake herring", "Great Lakes model plan", cite.GreatLakesHACCP2000, "core temperature", cite.Read),
	rule(628, 145, Hot145FDA, "hot-smoked fish", "US FDA", cite.FDAHazardsGuide2020, "ch. 13, control strategy 1C, p. 265", cite.Read),
	rule(628, 145, Hot145States, "hot-smoked fish", "New York, Wisconsin, Alaska; AFDO model code", cite.AFDOModelCode1991, "as paraphrased by a reader who cites the sections", cite.Quoted),
}

// rule has the figure in Fahrenheit, the scale of all these sources, and beside it the one in Celsius.
func rule(tenthsC, f int, id CoreLimitID, fish, place string, source cite.Source, where string, basis cite.Basis) CoreLimit {
	core := inF(float64(f))
	return CoreLimit{
		ID: id, AtLeast: core, Printed: units.AtLeast(core).Also(units.AtLeast(inC(float64(tenthsC) / 10))), Hold: 30 * time.Minute,
		Fish: fish, Place: place, Citation: cite.Citation{Source: source, Where: where, Basis: basis},
	}
}

func (l CoreLimit) home() CoreLimit {
	l.Home = true
	return l
}
