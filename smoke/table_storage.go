package smoke

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// storageRules are the printed limits. Where a printed temperature stands in both scales the colder figure counts.
var storageRules = [...]StorageRule{
	{"STORE-36", 0, units.Celsius(2.2), 0, true, "home smoked fish", "Michigan (1997)", cite.Citation{Source: cite.MSUEPreservingFoodSafely1997, Where: "item 01600579", Basis: cite.Read}},
	{"STORE-38", 0, units.Celsius(3.3), 0, false, "smoked fish", "Michigan, Maine, New York, Wisconsin", cite.Citation{Source: cite.MichiganRegulation569, Where: "R 285.569.8(1); also Maine ch. 359 s. 3(A), 10 NYCRR 14-1.35, Wisconsin ATCP 70.18(2)", Basis: cite.Read}},
	{"STORE-40", VacuumPack, units.Celsius(4.4), 0, false, "hot-smoked salmon whose water phase salt is the barrier", "US training model", cite.Citation{Source: cite.SeafoodHACCPAlliance2017, Where: "storage limit of the model plan", Basis: cite.Read}},
	{"STORE-5", 0, units.Celsius(5), 0, false, "ready-to-eat hot-smoked fish with 3.5 % water phase salt, printed as below 5 °C", "UK (advice)", cite.Citation{Source: cite.TorryNote82Revised, Where: "accompanying notes", Basis: cite.Read}},
	{"LIFE-10-VACUUM", VacuumPack, units.Celsius(8), 10, false, "chilled vacuum packs without another control", "UK", cite.Citation{Source: cite.UKTenDayRule, Basis: cite.Recalled}},
	{"LIFE-10", 0, units.Temperature{}, 10, true, "home smoked fish", "some extension sheets", cite.Citation{Source: cite.ExtensionSmokedKeeping, Basis: cite.Recalled}},
	{"LIFE-14", 0, units.Temperature{}, 14, true, "home smoked fish", "Michigan (1997)", cite.Citation{Source: cite.MSUEPreservingFoodSafely1997, Where: "items 01600579 and 01600580", Basis: cite.Read}},
	{"LIFE-14-PNW", 0, units.Temperature{}, 14, true, "fully smoked fish", "Pacific Northwest", cite.Citation{Source: cite.PNW450, Where: "keeping of fully smoked fish", Basis: cite.Read}},
	{"LIFE-14-CHART", 0, units.Temperature{}, 14, false, "smoked fish as bought, or the date on a vacuum pack", "US", cite.Citation{Source: cite.FDAStorageChart, Where: "chart", Basis: cite.Read}},
	{"LIFE-21", 0, units.Temperature{}, 21, true, "home smoked fish", "Washington", cite.Citation{Source: cite.WSUSmokingCuring, Where: "home smoking method", Basis: cite.Read}},
	{"LIFE-28", 0, units.Temperature{}, 28, true, "home smoked fish", "Wisconsin, Minnesota", cite.Citation{Source: cite.WisconsinSeaGrantSmoking, Where: "home smoking method", Basis: cite.Read}},
}
