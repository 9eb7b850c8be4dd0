package smoke

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// chamberRules are the printed figures; where both scales are printed the stricter figure counts.
var chamberRules = [...]ChamberRule{
	{Cold90, units.Temperature{}, units.Celsius(32.2), 20 * time.Hour, "smoke of cold-smoked fish", "Maine",
		readIn(cite.MaineRules01001Ch359, "s. 2(C)(3)(a)")},
	{Cold50, units.Temperature{}, units.Celsius(10), 24 * time.Hour, "smoke of cold-smoked fish", "Maine",
		readIn(cite.MaineRules01001Ch359, "s. 2(C)(3)(b)")},
	{ColdOntario, units.Temperature{}, units.Celsius(32.2), 0, "smoke of cold-smoked fish", "Ontario",
		readIn(cite.OntarioFishPlantFB1415, "FB.14.15")},
	{ColdUK, units.Temperature{}, units.Celsius(33), 0, "smoke of cold-smoked fish", "UK (advice)",
		readIn(cite.TorryNote82, "smoking method")},
	{DryCold, units.Temperature{}, units.Celsius(4.4), 0, "drying of fish to be cold smoked", "US FDA report",
		readIn(cite.FDAColdSmoked2001, "text based on the AFDO code")},
	{ToOven, units.Temperature{}, units.Temperature{}, 2 * time.Hour, "from the smoker to the finishing oven", "Washington, Wisconsin",
		readIn(cite.WSUSmokingCuring, "home smoking method; also Wisconsin Sea Grant")},
	{FinishAir, units.Fahrenheit(200), units.Fahrenheit(225), 0, "smoker air able to finish the fish", "Washington",
		readIn(cite.WSUSmokingCuring, "home smoking method")},
	{ReachIn6, units.Temperature{}, units.Temperature{}, 6 * time.Hour, "until the core is at 160 °F, printed as 6 to 8 h", "Pacific Northwest",
		readIn(cite.PNW238, "paraphrase")},
	{WholeFish12, units.Temperature{}, units.Fahrenheit(225), 12 * time.Hour, "hot smoking of whole fish, the longest time printed", "Michigan (1997)",
		readIn(cite.MSUEPreservingFoodSafely1997, "item 01600580")},
	{LightSmoke, units.Fahrenheit(140), units.Fahrenheit(160), 2 * time.Hour, "light smoke of fish for jars", "Pacific Northwest",
		cite.Citation{Source: cite.PNW450, Where: "light smoking before canning", Basis: cite.Recalled}},
}
