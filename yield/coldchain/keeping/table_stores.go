package keeping

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

var (
	storesQuoted = chain.ReadIn(cite.IIRColdStoreQuote, "store temperatures as quoted")
	jarShelf     = chain.ReadIn(cite.USDAGuide1Rev2009, "storing, as cited in a Kentucky extension column")
)

var storeTable = [...]StoreLimit{
	{
		ID: RuleSmokedAtHome, Storage: InRefrigerator, For: "smoked fish at home", AtMost: smokedBelow, Under: true,
		Citation: michigan1997,
	},
	{
		ID: RuleSmokedAndRaw, Storage: InRefrigerator, For: "smoked fish, and raw fish for smoking",
		AtMost: units.Fahrenheit(38), Citation: chain.ReadIn(cite.MichiganRegulation569, "R 285.569.8(1)"),
	},
	{
		ID: RuleRefrigerator, Storage: InRefrigerator, For: "any food", AtMost: refrigeratorAt, General: true,
		Citation: federalFrozen,
	},
	{
		ID: RuleFreezerSixMonths, Storage: InFreezer, For: "more than six months", AtMost: units.Celsius(-30),
		Citation: chain.ReadIn(cite.Perennia2022, "fact sheet; also Torry"),
	},
	{ID: RuleFreezerFatty, Storage: InFreezer, For: "fatty fish", AtMost: units.Celsius(-24), Citation: storesQuoted},
	{
		ID: RuleFreezerFish, Storage: InFreezer, For: "fish, an encyclopaedia", AtMost: units.Celsius(-23),
		Citation: chain.ReadIn(cite.EncyclopaediaBritannica, "article on freezing fish"),
	},
	{ID: RuleFreezerLean, Storage: InFreezer, For: "lean fish", AtMost: units.Celsius(-18), Citation: storesQuoted},
	{
		ID: RuleFreezer, Storage: InFreezer, For: "any food", AtMost: freezerAt, General: true, Citation: federalFrozen,
	},
	{
		ID: RuleShelfGood, Storage: InCupboard, For: "home-canned jars, the good range",
		AtLeast: units.Fahrenheit(50), AtMost: cupboardAt, Citation: jarShelf,
	},
	{
		ID: RuleShelf, Storage: InCupboard, For: "home-canned jars, never above", AtMost: hottestShelf, General: true,
		Citation: jarShelf,
	},
}
