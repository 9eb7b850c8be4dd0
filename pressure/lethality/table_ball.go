package lethality

import "example.org/lakelarder/units/cite"

// gTable is log10 g, g in °F, by fh/U, for z 18 °F, m + g 180 °F and jcc 1.41, as printed.
var gTable = [...]struct{ fhOverU, logG float64 }{
	{0.5, -1.29},
	{1, -0.273},
	{2, 0.298},
	{5, 0.742},
	{10, 0.955},
	{50, 1.27},
	{100, 1.365},
	{200, 1.447},
}

func gCitation() cite.Citation {
	return cite.Citation{Source: cite.FoodBiochemistryProcessing2, Where: "table 38.6", Basis: cite.Read}
}
