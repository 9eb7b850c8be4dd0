package smoke

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// storageRules are the printed limits. Where a temperature is printed in both scales, AtMost is the one in Fahrenheit, the scale of these
// sources.
var storageRules = [...]StorageRule{
	{Store36, 0, inF(36), pair(36, 2.2), 0, true, "home smoked fish", "Michigan (1997)",
		readIn(cite.MSUEPreservingFoodSafely1997, "item 01600579")},
	{Store38, 0, inF(38), pair(38, 3.3), 0, false, "smoked fish", "Michigan, Maine, New York, Wisconsin",
		readIn(cite.MichiganRegulation569, "R 285.569.8(1); also Maine ch. 359 s. 3(A), 10 NYCRR 14-1.35, Wisconsin ATCP 70.18(2)")},
	{Store40, LowOxygenPack, inF(40), pair(40, 4.4), 0, false, "hot-smoked salmon whose water phase salt is the barrier", "US training model",
		readIn(cite.SeafoodHACCPAlliance2017, "storage limit of the model plan")},
	{Store5C, 0, inC(5), units.AtMost(inC(5)), 0, false, "ready-to-eat hot-smoked fish with 3.5 % water phase salt, printed as below 5 °C", "UK (advice)",
		readIn(cite.TorryNote82Revised, "accompanying notes")},
	{Life10Vacuum, LowOxygenPack, inC(8), units.AtMost(inC(8)), 10, false, "chilled vacuum packs without another control", "UK",
		readIn(cite.UKTenDayRule, "factsheet, July 2008")},
	{Life10, 0, units.Temperature{}, units.Figure{}, 10, true, "home smoked fish", "some extension sheets",
		cite.Citation{Source: cite.ExtensionSmokedKeeping, Basis: cite.Recalled}},
	{Life14, 0, units.Temperature{}, units.Figure{}, 14, true, "home smoked fish", "Michigan (1997)",
		readIn(cite.MSUEPreservingFoodSafely1997, "items 01600579 and 01600580")},
	{Life14PNW, 0, units.Temperature{}, units.Figure{}, 14, true, "fully smoked fish", "Pacific Northwest",
		readIn(cite.PNW450, "keeping of fully smoked fish")},
	{Life14Chart, 0, units.Temperature{}, units.Figure{}, 14, false, "smoked fish as bought, or the date on a vacuum pack", "US",
		readIn(cite.FDAStorageChart, "chart")},
	{Life21, 0, units.Temperature{}, units.Figure{}, 21, true, "home smoked fish", "Washington",
		readIn(cite.WSUSmokingCuring, "home smoking method")},
	{Life28, 0, units.Temperature{}, units.Figure{}, 28, true, "home smoked fish", "Wisconsin, Minnesota",
		readIn(cite.WisconsinSeaGrantSmoking, "home smoking method")},
}

// pair is an upper limit as printed in both scales.
func pair(f, c float64) units.Figure { return units.AtMost(inF(f)).Also(units.AtMost(inC(c))) }
