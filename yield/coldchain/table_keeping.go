package coldchain

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// keepingRow is one printed keeping time, low to high, both zero where the print knows no end. At is the warmest that it is printed for, under
// says that this is already too warm; not set where the print states no temperature.
type keepingRow struct {
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

const (
	month = 30 * day // counted short
	year  = 365 * day
)

// The temperatures that the charts mean by a refrigerator and a freezer, and others that a row states itself.
var (
	refrigeratorAt = units.Fahrenheit(40)
	freezerAt      = units.Fahrenheit(0)
	cupboardAt     = units.Fahrenheit(70)
	smokedBelow    = units.Fahrenheit(36)
)

func readIn(source cite.Source, where string) cite.Citation {
	return cite.Citation{Source: source, Where: where, Basis: cite.Read}
}

var (
	fdaChart      = readIn(cite.FDAStorageChart, "chart")
	usdaAnswer    = readIn(cite.USDAAnswerPage, "answer")
	federalChart  = readIn(cite.FederalColdStorageChart2021, "chart")
	keeperData    = readIn(cite.USDAFoodKeeperData, "items 144 and 146")
	federalFrozen = readIn(cite.FederalColdStorageChart, "chart")
	tradeChart    = readIn(cite.SeafoodTradeChart, "chart")
	oregonPage    = readIn(cite.OregonConsumerPage, "page on salmon")
	michigan1997  = readIn(cite.MSUEPreservingFoodSafely1997, "item 01600816")
)

const (
	thoughFrozen = "safe as long as it stays frozen; the months of the charts are of quality alone"
	bothFederal  = "the other federal source prints 1-2 days"
)

var keepingRows = [...]keepingRow{
	{Safety, Raw, InRefrigerator, "36 hours", 36 * time.Hour, 36 * time.Hour, refrigeratorAt, false, tradeChart, "fresh salmon or any fillet"},
	{Safety, Raw, InRefrigerator, "1-2 days", 1 * day, 2 * day, refrigeratorAt, false, readIn(cite.FDAStorageChart, "also a USDA answer page"), ""},
	{Safety, RawLean, InRefrigerator, "1-2 days", 1 * day, 2 * day, refrigeratorAt, false, keeperData, ""},
	{Safety, RawFatty, InRefrigerator, "1-2 days", 1 * day, 2 * day, refrigeratorAt, false, keeperData, ""},
	{Safety, RawLean, InRefrigerator, "1-3 days", 1 * day, 3 * day, refrigeratorAt, false, federalChart, bothFederal},
	{Safety, RawFatty, InRefrigerator, "1-3 days", 1 * day, 3 * day, refrigeratorAt, false, federalChart, bothFederal},
	{Safety, Cooked, InRefrigerator, "3-4 days", 3 * day, 4 * day, refrigeratorAt, false, readIn(cite.FDAStorageChart, "also a USDA answer page"), ""},
	{Safety, LightlySmoked, InRefrigerator, "no more than 1 day", 1 * day, 1 * day, refrigeratorAt, false, readIn(cite.PNW450, "holding lightly smoked fish"), "it is not cooked, and waits for the canner"},
	{Safety, Smoked, InRefrigerator, "14 days", 14 * day, 14 * day, smokedBelow, true, michigan1997, "below 36 °F"},
	{Safety, Smoked, InRefrigerator, "10 days", 10 * day, 10 * day, refrigeratorAt, false, cite.Citation{Source: cite.ExtensionSmokedKeeping, Basis: cite.Recalled}, "some sheets; others print 14 days"},
	{Safety, Smoked, InRefrigerator, "14 days", 14 * day, 14 * day, refrigeratorAt, false, fdaChart, "or the date on a bought vacuum pack"},
	{Safety, Smoked, InRefrigerator, "2 weeks", 14 * day, 14 * day, refrigeratorAt, false, readIn(cite.PNW450, "keeping of fully smoked fish"), ""},
	{Safety, Smoked, InRefrigerator, "2-3 weeks", 14 * day, 21 * day, refrigeratorAt, false, readIn(cite.WSUSmokingCuring, "home smoking method"), ""},
	{Safety, Smoked, InRefrigerator, "4 weeks", 28 * day, 28 * day, refrigeratorAt, false, readIn(cite.WisconsinSeaGrantSmoking, "home smoking method"), ""},
	{Safety, Opened, InRefrigerator, "3-4 days", 3 * day, 4 * day, refrigeratorAt, false, fdaChart, "out of the can or jar"},
	{Safety, Opened, InRefrigerator, "up to 3 days", 3 * day, 3 * day, refrigeratorAt, false, oregonPage, "canned salmon"},
	{Safety, anyFood, InFreezer, "indefinitely", 0, 0, freezerAt, false, federalFrozen, thoughFrozen},

	{Quality, Raw, InFreezer, "3-8 months", 3 * month, 8 * month, freezerAt, false, usdaAnswer, ""},
	{Quality, RawLean, InFreezer, "6 months", 6 * month, 6 * month, freezerAt, false, fdaChart, ""},
	{Quality, RawLean, InFreezer, "6-8 months", 6 * month, 8 * month, freezerAt, false, federalChart, ""},
	{Quality, RawFatty, InFreezer, "2-3 months", 2 * month, 3 * month, freezerAt, false, fdaChart, ""},
	{Quality, RawFatty, InFreezer, "2-3 months", 2 * month, 3 * month, freezerAt, false, federalChart, ""},
	{Quality, RawSalmon, InFreezer, "best within 6 months", 6 * month, 6 * month, freezerAt, false, oregonPage, ""},
	{Quality, RawSalmon, InFreezer, "7-9 months", 7 * month, 9 * month, freezerAt, false, tradeChart, "cleaned, bought frozen"},
	{Quality, RawTrout, InFreezer, "2-3 months", 2 * month, 3 * month, freezerAt, false, readIn(cite.ApplianceManual, "storage table"), "counted as fatty"},
	{Quality, RawTrout, InFreezer, "4-6 months", 4 * month, 6 * month, freezerAt, false, readIn(cite.CookbookStorage2012, "table"), "counted as lean"},
	{Quality, RawTrout, InFreezer, "6-9 months", 6 * month, 9 * month, freezerAt, false, readIn(cite.CookbookStorage2012, "table"), "freshwater fish, cleaned"},
	{Quality, Cooked, InFreezer, "3 months", 3 * month, 3 * month, freezerAt, false, usdaAnswer, ""},
	{Quality, Cooked, InFreezer, "4-6 months", 4 * month, 6 * month, freezerAt, false, fdaChart, ""},
	{Quality, Smoked, InFreezer, "2-3 months", 2 * month, 3 * month, freezerAt, false, michigan1997, ""},
	{Quality, Smoked, InFreezer, "up to 4 months", 4 * month, 4 * month, freezerAt, false, readIn(cite.WisconsinSeaGrantSmoking, "home smoking method"), ""},
	{Quality, SmokedVacuum, InFreezer, "2 months", 2 * month, 2 * month, freezerAt, false, fdaChart, "in a vacuum pack; open it before it thaws"},
	{Quality, Opened, InFreezer, "2 months", 2 * month, 2 * month, freezerAt, false, fdaChart, "out of the can or jar"},
	{Quality, HomeCanned, InCupboard, "1 year", 1 * year, 1 * year, cupboardAt, false, readIn(cite.USDAGuide1Rev2009, "storing, as cited in a Kentucky extension column"), "at 50-70 °F, dark and dry, never above 95 °F"},
	{Quality, HomeCanned, InCupboard, "1 year", 1 * year, 1 * year, units.Temperature{}, false, readIn(cite.USDAAnswerPage, "also the Complete Guide (2009) as cited in an extension column"), ""},
	{Quality, HomeCanned, InCupboard, "1 year", 1 * year, 1 * year, units.Temperature{}, false, readIn(cite.WisconsinSeaGrantCanning, "storing"), ""},
}
