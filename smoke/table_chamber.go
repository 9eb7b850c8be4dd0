package smoke

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// chamberRules are the printed figures; where both scales are printed the stricter figure counts.
var chamberRules = [...]ChamberRule{
	{"COLD-90-20", units.Temperature{}, units.Celsius(32.2), 20 * time.Hour, "smoke of cold-smoked fish", "Maine", cite.Citation{Source: cite.MaineRules01001Ch359, Where: "s. 2(C)(3)(a)", Basis: cite.Read}},
	{"COLD-50-24", units.Temperature{}, units.Celsius(10), 24 * time.Hour, "smoke of cold-smoked fish", "Maine", cite.Citation{Source: cite.MaineRules01001Ch359, Where: "s. 2(C)(3)(b)", Basis: cite.Read}},
	{"COLD-ON", units.Temperature{}, units.Celsius(32.2), 0, "smoke of cold-smoked fish", "Ontario", cite.Citation{Source: cite.OntarioFishPlantFB1415, Where: "FB.14.15", Basis: cite.Read}},
	{"COLD-UK", units.Temperature{}, units.Celsius(33), 0, "smoke of cold-smoked fish", "UK (advice)", cite.Citation{Source: cite.TorryNote82, Where: "smoking method", Basis: cite.Read}},
	{"DRY-COLD", units.Temperature{}, units.Celsius(4.4), 0, "drying of fish to be cold smoked", "US FDA report", cite.Citation{Source: cite.FDAColdSmoked2001, Where: "text based on the AFDO code", Basis: cite.Read}},
	{"HOLD-2H", units.Temperature{}, units.Temperature{}, 2 * time.Hour, "from the smoker to the finishing oven", "Washington, Wisconsin", cite.Citation{Source: cite.WSUSmokingCuring, Where: "home smoking method; also Wisconsin Sea Grant", Basis: cite.Read}},
	{"AIR-200-225", units.Fahrenheit(200), units.Fahrenheit(225), 0, "smoker air able to finish the fish", "Washington", cite.Citation{Source: cite.WSUSmokingCuring, Where: "home smoking method", Basis: cite.Read}},
	{"REACH-6-8", units.Temperature{}, units.Temperature{}, 6 * time.Hour, "until the core is at 160 °F, printed as 6 to 8 h", "Pacific Northwest", cite.Citation{Source: cite.PNW238, Where: "paraphrase", Basis: cite.Read}},
	{"TIME-12", units.Temperature{}, units.Fahrenheit(225), 12 * time.Hour, "hot smoking of whole fish, the longest time printed", "Michigan (1997)", cite.Citation{Source: cite.MSUEPreservingFoodSafely1997, Where: "item 01600580", Basis: cite.Read}},
	{"LIGHT-140-160", units.Fahrenheit(140), units.Fahrenheit(160), 2 * time.Hour, "light smoke of fish for jars", "Pacific Northwest", cite.Citation{Source: cite.PNW450, Where: "light smoking before canning", Basis: cite.Recalled}},
}
