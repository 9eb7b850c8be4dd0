package ice

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// iceConstants are the constants in circulation, largest first: kilograms of ice for a kilogram of fish and a degree
// Celsius.
var iceConstants = [...]Constant{
	{
		"Icelandic guidance", 11_400 * units.PartsPerMillion,
		cite.Citation{Source: cite.IcelandicFishHandling, Where: "ice rules", Basis: cite.Read},
	},
	{
		"table for 10 kg of fish", 11_250 * units.PartsPerMillion, // 0.9 kcal/(kg °C) over 80 kcal/kg
		cite.Citation{Source: cite.TradeIceTable, Where: "inferred from the 10 kg table", Basis: cite.Computed},
	},
	{
		"lean fish", 10_000 * units.PartsPerMillion, // 0.8 kcal/(kg °C) over 80 kcal/kg
		cite.Citation{Source: cite.FAO331, Where: "ch. 3, eq. 4-5; heat of lean fish and of ice", Basis: cite.Computed},
	},
}

// keepingPerDegree is the Icelandic rule of thumb: kilograms of ice for a kilogram of fish, a degree outside and a day.
const keepingPerDegree = 15_000 * units.PartsPerMillion

// The heat that a kilogram of ice takes in melting.
const (
	// Fresh is 80 kcal/kg (FAO 331 ch. 3; FAO 436 ch. 7).
	Fresh = 80 * units.KilocaloriePerKilogram
	// SeaWater is 77.8 kcal/kg (FAO 436 ch. 7).
	SeaWater = 778 * units.KilocaloriePerKilogram / 10
)

// KilocaloriePerSquareMetreHour is the unit in which tables of insulation give a wall, kcal/(m² h °C): 1.163 W/(m² K)
// exactly.
const KilocaloriePerSquareMetreHour units.FilmCoefficient = 1_163_000_000

var (
	keepingCitation  = cite.Citation{Source: cite.IcelandicFishHandling, Where: "ice rules", Basis: cite.Read}
	chillingCitation = cite.Citation{Source: cite.FAO331, Where: "ch. 3, eq. 4-5", Basis: cite.Computed}
	meltingCitation  = cite.Citation{Source: cite.FAO436, Where: "sec. 7.1, eq. 1", Basis: cite.Computed}
	wallCitation     = cite.Citation{Source: cite.FAO436, Where: "sec. 7.1, eq. 2", Basis: cite.Recalled}
	meltTestCitation = cite.Citation{Source: cite.FAOIceMeltTest, Basis: cite.Recalled}
)
