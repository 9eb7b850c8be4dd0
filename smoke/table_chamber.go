package smoke

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// chamberRules are the printed figures; where both scales are printed, Fahrenheit is the own scale of these sources.
var chamberRules = [...]ChamberRule{
	{Cold90, units.Temperature{}, inF(90), pair(90, 32.2), 20 * time.Hour, 0, "smoke of cold-smoked fish", "Maine",
		readIn(cite.MaineRules01001Ch359, "s. 2(C)(3)(a)")},
	{Cold50, units.Temperature{}, inF(50), pair(50, 10), 24 * time.Hour, 0, "smoke of cold-smoked fish", "Maine",
		readIn(cite.MaineRules01001Ch359, "s. 2(C)(3)(b)")},
	{ColdOntario, units.Temperature{}, inC(32.2), units.AtMost(inC(32.2)), 0, 0, "smoke of cold-smoked fish", "Ontario",
		readIn(cite.OntarioFishPlantFB1415, "FB.14.15")},
	{ColdUK, units.Temperature{}, inC(33), units.AtMost(inC(33)), 0, 0, "smoke of cold-smoked fish", "UK (advice)",
		readIn(cite.TorryNote82, "smoking method")},
	{DryCold, units.Temperature{}, inF(40), pair(40, 4.4), 0, 0, "drying of fish to be cold smoked", "US FDA report",
		readIn(cite.FDAColdSmoked2001, "text based on the AFDO code")},
	{ToOven, units.Temperature{}, units.Temperature{}, units.Figure{}, 2 * time.Hour, 0, "from the smoker to the finishing oven", "Washington, Wisconsin",
		readIn(cite.WSUSmokingCuring, "home smoking method; also Wisconsin Sea Grant")},
	{FinishAir, inF(200), inF(225), units.Between(inF(200), inF(225)), 0, 0, "smoker air able to finish the fish", "Washington",
		readIn(cite.WSUSmokingCuring, "home smoking method")},
	{ReachIn6, units.Temperature{}, units.Temperature{}, units.Figure{}, 6 * time.Hour, 8 * time.Hour, "until the core is at 160 °F, printed as 6 to 8 h", "Pacific Northwest",
		readIn(cite.PNW238, "paraphrase")},
	{WholeFish12, units.Temperature{}, inF(225), units.AtMost(inF(225)), 12 * time.Hour, 0, "hot smoking of whole fish, the longest time printed", "Michigan (1997)",
		readIn(cite.MSUEPreservingFoodSafely1997, "item 01600580")},
	{LightSmoke, inF(140), inF(160), units.Between(inF(140), inF(160)), 2 * time.Hour, 0, "light smoke of fish for jars", "Pacific Northwest",
		cite.Citation{Source: cite.PNW450, Where: "light smoking before canning", Basis: cite.Recalled}},
}
