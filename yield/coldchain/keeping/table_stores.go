package keeping

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

var storeTable = [...]StoreLimit{
	{InRefrigerator, "smoked fish at home", units.Temperature{}, smokedBelow, true, michigan1997},
	{InRefrigerator, "smoked fish, and raw fish for smoking", units.Temperature{}, units.Fahrenheit(38), false, chain.ReadIn(cite.MichiganRegulation569, "R 285.569.8(1)")},
	{InRefrigerator, "any food", units.Temperature{}, refrigeratorAt, false, federalFrozen},
	{InFreezer, "more than six months", units.Temperature{}, units.Celsius(-30), false, chain.ReadIn(cite.Perennia2022, "fact sheet; also Torry")},
	{InFreezer, "fatty fish", units.Temperature{}, units.Celsius(-24), false, chain.ReadIn(cite.IIRColdStoreQuote, "store temperatures as quoted")},
	{InFreezer, "fish, an encyclopaedia", units.Temperature{}, units.Celsius(-23), false, chain.ReadIn(cite.EncyclopaediaBritannica, "article on freezing fish")},
	{InFreezer, "lean fish", units.Temperature{}, units.Celsius(-18), false, chain.ReadIn(cite.IIRColdStoreQuote, "store temperatures as quoted")},
	{InFreezer, "any food", units.Temperature{}, freezerAt, false, federalFrozen},
	{InCupboard, "home-canned jars, the good range", units.Fahrenheit(50), cupboardAt, false, chain.ReadIn(cite.USDAGuide1Rev2009, "storing, as cited in a Kentucky extension column")},
	{InCupboard, "home-canned jars, never above", units.Temperature{}, units.Fahrenheit(95), false, chain.ReadIn(cite.USDAGuide1Rev2009, "storing, as cited in a Kentucky extension column")},
}
