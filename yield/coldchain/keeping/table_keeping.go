package keeping

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// timeRow is one printed keeping time, low to high, both zero where the print knows no end. At is the warmest that it
// is printed for, under says that this is already too warm; not set where the print states no temperature.
type timeRow struct {
	concern   Concern
	food      Food
	storage   Storage
	printed   string
	low, high time.Duration
	at        units.Temperature
	under     bool
	citation  cite.Citation
	note      string
}

// The temperatures that the charts mean by a refrigerator and a freezer, and others that a row states itself.
var (
	refrigeratorAt = units.Fahrenheit(40)
	freezerAt      = units.Fahrenheit(0)
	cupboardAt     = units.Fahrenheit(70)
	smokedBelow    = units.Fahrenheit(36)
)

var (
	fdaChart      = chain.ReadIn(cite.FDAStorageChart, "chart")
	usdaAnswer    = chain.ReadIn(cite.USDAAnswerPage, "answer")
	federalChart  = chain.ReadIn(cite.FederalColdStorageChart2021, "chart")
	keeperData    = chain.ReadIn(cite.USDAFoodKeeperData, "items 144 and 146")
	kitchenRule   = chain.ReadIn(cite.USDAFDAConsumerAdvice, "two-hour rule and danger zone")
	federalFrozen = chain.ReadIn(cite.FederalColdStorageChart, "chart")
	tradeChart    = chain.ReadIn(cite.SeafoodTradeChart, "chart")
	oregonPage    = chain.ReadIn(cite.OregonConsumerPage, "page on salmon")
	michigan1997  = chain.ReadIn(cite.MSUEPreservingFoodSafely1997, "item 01600816")
)

const (
	thoughFrozen = "safe as long as it stays frozen; the months of the charts are only of quality"
	bothFederal  = "the other federal source prints 1-2 days"
)

var timeRows = [...]timeRow{
	{
		Safety, Raw, InRefrigerator, "36 hours", 36 * time.Hour, 36 * time.Hour, refrigeratorAt, false, tradeChart,
		"fresh salmon or any fillet",
	},
	{
		Safety, Raw, InRefrigerator, "1-2 days", 1 * chain.Day, 2 * chain.Day, refrigeratorAt, false,
		chain.ReadIn(cite.FDAStorageChart, "also a USDA answer page"), "",
	},
	{Safety, RawLean, InRefrigerator, "1-2 days", 1 * chain.Day, 2 * chain.Day, refrigeratorAt, false, keeperData, ""},
	{Safety, RawFatty, InRefrigerator, "1-2 days", 1 * chain.Day, 2 * chain.Day, refrigeratorAt, false, keeperData, ""},
	{
		Safety, RawLean, InRefrigerator, "1-3 days", 1 * chain.Day, 3 * chain.Day, refrigeratorAt, false, federalChart,
		bothFederal,
	},
	{
		Safety, RawFatty, InRefrigerator, "1-3 days", 1 * chain.Day, 3 * chain.Day, refrigeratorAt, false, federalChart,
		bothFederal,
	},
	{
		Safety, Cooked, InRefrigerator, "3-4 days", 3 * chain.Day, 4 * chain.Day, refrigeratorAt, false,
		chain.ReadIn(cite.FDAStorageChart, "also a USDA answer page"), "",
	},
	{
		Safety, LightlySmoked, InRefrigerator, "no more than 1 day", 1 * chain.Day, 1 * chain.Day, refrigeratorAt,
		false, chain.ReadIn(cite.PNW450, "holding lightly smoked fish"), "it is not cooked, and waits for the canner",
	},
	{
		Safety, Smoked, InRefrigerator, "14 days", 14 * chain.Day, 14 * chain.Day, smokedBelow, true, michigan1997,
		"below 36 °F",
	},
	{
		Safety, Smoked, InRefrigerator, "10 days", 10 * chain.Day, 10 * chain.Day, refrigeratorAt, false,
		cite.Citation{Source: cite.ExtensionSmokedKeeping, Basis: cite.Recalled}, "some sheets; others print 14 days",
	},
	{
		Safety, Smoked, InRefrigerator, "14 days", 14 * chain.Day, 14 * chain.Day, refrigeratorAt, false, fdaChart,
		"or the date on a bought vacuum pack",
	},
	{
		Safety, Smoked, InRefrigerator, "2 weeks", 14 * chain.Day, 14 * chain.Day, refrigeratorAt, false,
		chain.ReadIn(cite.PNW450, "keeping of fully smoked fish"), "",
	},
	{
		Safety, Smoked, InRefrigerator, "2-3 weeks", 14 * chain.Day, 21 * chain.Day, refrigeratorAt, false,
		chain.ReadIn(cite.WSUSmokingCuring, "home smoking method"), "",
	},
	{
		Safety, Smoked, InRefrigerator, "4 weeks", 28 * chain.Day, 28 * chain.Day, refrigeratorAt, false,
		chain.ReadIn(cite.WisconsinSeaGrantSmoking, "home smoking method"), "",
	},
	{
		Safety, Opened, InRefrigerator, "3-4 days", 3 * chain.Day, 4 * chain.Day, refrigeratorAt, false, fdaChart,
		"out of the can or jar",
	},
	{
		Safety, Opened, InRefrigerator, "up to 3 days", 3 * chain.Day, 3 * chain.Day, refrigeratorAt, false, oregonPage,
		"canned salmon",
	},
	{Safety, anyFood, InFreezer, "indefinitely", 0, 0, freezerAt, false, federalFrozen, thoughFrozen},

	{Quality, Raw, InFreezer, "3-8 months", 3 * chain.Month, 8 * chain.Month, freezerAt, false, usdaAnswer, ""},
	{Quality, RawLean, InFreezer, "6 months", 6 * chain.Month, 6 * chain.Month, freezerAt, false, fdaChart, ""},
	{Quality, RawLean, InFreezer, "6-8 months", 6 * chain.Month, 8 * chain.Month, freezerAt, false, federalChart, ""},
	{Quality, RawFatty, InFreezer, "2-3 months", 2 * chain.Month, 3 * chain.Month, freezerAt, false, fdaChart, ""},
	{Quality, RawFatty, InFreezer, "2-3 months", 2 * chain.Month, 3 * chain.Month, freezerAt, false, federalChart, ""},
	{
		Quality, RawSalmon, InFreezer, "best within 6 months", 6 * chain.Month, 6 * chain.Month, freezerAt, false,
		oregonPage, "",
	},
	{
		Quality, RawSalmon, InFreezer, "7-9 months", 7 * chain.Month, 9 * chain.Month, freezerAt, false, tradeChart,
		"cleaned, bought frozen",
	},
	{
		Quality, RawTrout, InFreezer, "2-3 months", 2 * chain.Month, 3 * chain.Month, freezerAt, false,
		chain.ReadIn(cite.ApplianceManual, "storage table"), "counted as fatty",
	},
	{
		Quality, RawTrout, InFreezer, "4-6 months", 4 * chain.Month, 6 * chain.Month, freezerAt, false,
		chain.ReadIn(cite.CookbookStorage2012, "table"), "counted as lean",
	},
	{
		Quality, RawTrout, InFreezer, "6-9 months", 6 * chain.Month, 9 * chain.Month, freezerAt, false,
		chain.ReadIn(cite.CookbookStorage2012, "table"), "freshwater fish, cleaned",
	},
	{Quality, Cooked, InFreezer, "3 months", 3 * chain.Month, 3 * chain.Month, freezerAt, false, usdaAnswer, ""},
	{Quality, Cooked, InFreezer, "4-6 months", 4 * chain.Month, 6 * chain.Month, freezerAt, false, fdaChart, ""},
	{Quality, Smoked, InFreezer, "2-3 months", 2 * chain.Month, 3 * chain.Month, freezerAt, false, michigan1997, ""},
	{
		Quality, Smoked, InFreezer, "up to 4 months", 4 * chain.Month, 4 * chain.Month, freezerAt, false,
		chain.ReadIn(cite.WisconsinSeaGrantSmoking, "home smoking method"), "",
	},
	{
		Quality, SmokedVacuum, InFreezer, "2 months", 2 * chain.Month, 2 * chain.Month, freezerAt, false, fdaChart,
		"in a vacuum pack; open it before it thaws",
	},
	{
		Quality, Opened, InFreezer, "2 months", 2 * chain.Month, 2 * chain.Month, freezerAt, false, fdaChart,
		"out of the can or jar",
	},
	{
		Quality, HomeCanned, InCupboard, "1 year", 1 * chain.Year, 1 * chain.Year, cupboardAt, false,
		chain.ReadIn(cite.USDAGuide1Rev2009, "storing, as cited in a Kentucky extension column"),
		"at 50-70 °F, dark and dry, never above 95 °F",
	},
	{
		Quality, HomeCanned, InCupboard, "1 year", 1 * chain.Year, 1 * chain.Year, units.Temperature{}, false,
		chain.ReadIn(cite.USDAAnswerPage, "also the Complete Guide (2009) as cited in an extension column"), "",
	},
	{
		Quality, HomeCanned, InCupboard, "1 year", 1 * chain.Year, 1 * chain.Year, units.Temperature{}, false,
		chain.ReadIn(cite.WisconsinSeaGrantCanning, "storing"), "",
	},
}
