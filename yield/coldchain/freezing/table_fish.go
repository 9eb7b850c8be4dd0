package freezing

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

var (
	freezablesIP = cite.Citation{
		Source: cite.ASHRAERefrigeration2006, Where: "thermal properties, table 3", Basis: cite.Read,
	}
	freezableEarle = cite.Citation{Source: cite.Earle, Where: "appendix 7", Basis: cite.Read}
	freezableFAO   = cite.Citation{Source: cite.FAOV3630E, Where: "ch. 19", Basis: cite.Read}
)

const (
	hundredthBTU  = units.KilocaloriePerKilogramKelvin / 100 // one Btu/(lb °F) is one kcal/(kg K)
	hundredthHeat = units.KilojoulePerKilogramKelvin / 100
)

// fishTable has the I-P figures of ASHRAE in hundredths of a Btu/(lb °F) and in Btu/lb, as printed.
var fishTable = [...]Fish{
	{
		"cod, whole", units.Fahrenheit(28), 90 * hundredthBTU, 51 * hundredthBTU, 117 * units.BTUPerPound, "",
		freezablesIP,
	},
	{
		"haddock, whole", units.Fahrenheit(28), 90 * hundredthBTU, 51 * hundredthBTU, 115 * units.BTUPerPound, "",
		freezablesIP,
	},
	{
		"halibut, whole", units.Fahrenheit(28), 89 * hundredthBTU, 52 * hundredthBTU, 112 * units.BTUPerPound, "",
		freezablesIP,
	},
	{
		"herring, kippered", units.Fahrenheit(28), 78 * hundredthBTU, 54 * hundredthBTU, 86 * units.BTUPerPound, "",
		freezablesIP,
	},
	{
		"mackerel, Atlantic", units.Fahrenheit(28), 80 * hundredthBTU, 53 * hundredthBTU, 91 * units.BTUPerPound, "",
		freezablesIP,
	},
	{"perch", units.Fahrenheit(28), 89 * hundredthBTU, 51 * hundredthBTU, 113 * units.BTUPerPound, "", freezablesIP},
	{
		"pollock, Atlantic", units.Fahrenheit(28), 88 * hundredthBTU, 51 * hundredthBTU, 112 * units.BTUPerPound, "",
		freezablesIP,
	},
	{
		"salmon, pink", units.Fahrenheit(28), 88 * hundredthBTU, 52 * hundredthBTU, 110 * units.BTUPerPound, "",
		freezablesIP,
	},
	{
		"fish, 70 % water", units.Celsius(-2), 318 * hundredthHeat, 167 * hundredthHeat,
		276 * units.KilojoulePerKilogram, "", freezableEarle,
	},
	{"white fish", units.Celsius(-1), 0, 0, 0, "55 % of the water is frozen at -2.2 °C, 70 % at -5 °C", freezableFAO},
}
