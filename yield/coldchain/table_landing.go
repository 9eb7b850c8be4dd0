package coldchain

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

const (
	scombrotoxin = "scombrotoxin-forming species: a yardstick for salmon and trout"
	anyFresh     = "any fish"
)

var (
	fao444     = chain.ReadIn(cite.FAO444, "p. 65")
	fdaChill   = chain.ReadIn(cite.FDAHazardsGuide2020, "ch. 7, p. 115 and table 7-1, p. 116")
	onIce      = units.Fahrenheit(40) // FDA: ice or a medium of 40 °F; FAO has 4.5 °C
	warmSea    = units.Celsius(28)
	warmSeaFDA = units.Fahrenheit(83)
)

// landingTable is the published deadlines after the catch. Ice stands for a medium of 0 °C.
var landingTable = [...]LandingRule{
	{
		ID: RuleGutForCanning, Demand: BleedAndGut,
		Printed: "at once, never later than 2 hours after the catch; then on ice until canned", Within: 2 * time.Hour,
		ThenIce: true, For: "fish for canning",
		Citation: chain.ReadIn(cite.USDAGuide5Rev2015, "Fish in Pint Jars, caution, p. 5-10"),
	},
	{
		ID: RuleGutForCanning1994, Demand: BleedAndGut, Printed: "gut within 2 hours, ice", Within: 2 * time.Hour,
		ThenIce: true, For: "fish for canning",
		Citation: chain.ReadIn(cite.USDAGuide5Rev1994, "Fish"),
	},
	{
		ID: RuleGutForSmoking, Demand: Gutted,
		Printed: "all fish for smoking is eviscerated; raw fish at or below 38 °F", AtMost: units.Fahrenheit(38),
		For:      "fish for smoking",
		Citation: chain.ReadIn(cite.MichiganRegulation569, "R 285.569.4"),
	},
	{
		ID: RuleChillWarmSea, Demand: IntoIce, Printed: "4.5 °C medium within 6 h, water or air above 28 °C",
		Within: 6 * time.Hour, AtMost: units.Celsius(4.5), WarmerThan: warmSea,
		For: scombrotoxin, Yardstick: true, Citation: fao444,
	},
	{
		ID: RuleChill9Hours, Demand: IntoIce, Printed: "10 °C medium within 9 h", Within: 9 * time.Hour,
		AtMost: units.Celsius(10), For: scombrotoxin, Yardstick: true, Citation: fao444,
	},
	{
		ID: RuleChill12Hours, Demand: IntoIce, Printed: "ice or 4.5 °C medium within 12 h", Within: 12 * time.Hour,
		AtMost: units.Celsius(4.5), For: scombrotoxin, Yardstick: true, Citation: fao444,
	},
	{
		ID: RuleChillWarmSeaFDA, Demand: IntoIce, Printed: "6 h if air or water above 83 °F", Within: 6 * time.Hour,
		AtMost: units.Fahrenheit(40), WarmerThan: warmSeaFDA,
		For: scombrotoxin, Yardstick: true, Citation: fdaChill,
	},
	{
		ID: RuleChill9HoursFDA, Demand: IntoIce, Printed: "ice or 40 °F medium within 9 h of death",
		Within: 9 * time.Hour, AtMost: units.Fahrenheit(40), NotWarmerThan: warmSeaFDA, For: scombrotoxin, Yardstick: true, Citation: fdaChill,
	},
	{
		ID: RuleChillGutted, Demand: IntoIce, Printed: "12 h if gilled and gutted", Within: 12 * time.Hour,
		AtMost: units.Fahrenheit(40), IfGutted: true,
		For: scombrotoxin, Yardstick: true, Citation: fdaChill,
	},
}
