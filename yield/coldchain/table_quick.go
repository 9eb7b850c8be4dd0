package coldchain

import (
	"time"

	"example.org/lakelarder/units/cite"
)

// quickRow is one printed limit on the time above a temperature, degrees Fahrenheit as printed. A row that
// allows hours "of which" so many above a second temperature is two lines with one alternative.
type quickRow struct {
	rule                  Rule
	alternative           int
	everAbove, neverAbove float64
	over                  float64
	allowed               time.Duration
	aureusOnly            time.Duration
	citation              cite.Citation
	note                  string
}

var (
	quick2020     = cite.Citation{Source: cite.FDAHazardsGuide2020, Where: "Appendix 4, summary", Basis: cite.Read}
	quickRecalled = cite.Citation{
		Source: cite.FDAHazardsGuide4, Where: "ch. 12 and Appendix 4 summary", Basis: cite.Recalled,
	}
	quickOlder = cite.Citation{Source: cite.FDAHazardsGuide3, Basis: cite.Recalled}
	kitchen    = cite.Citation{
		Source: cite.USDAFDAConsumerAdvice, Where: "two-hour rule and danger zone", Basis: cite.Read,
	}
	storage = cite.Citation{
		Source: cite.FDAHazardsGuide4, Where: "ch. 12-13, refrigerated storage", Basis: cite.Recalled,
	}
)

const (
	sixHours = "an older edition is remembered with 6 h; the 5 h rows of table A-2 fit the stricter figure"
	fiveHour = "6 h as remembered of the 3rd edition; not sure which edition went to 5 h"
)

var quickTable = [...]quickRow{
	{RawReadyToEat, 1, 70, 0, 50, 2 * time.Hour, 3 * time.Hour, quick2020, ""},
	{RawReadyToEat, 2, 70, 0, 50, 4 * time.Hour, 0, quick2020, ""},
	{RawReadyToEat, 2, 70, 0, 70, 2 * time.Hour, 0, quick2020, "of the 4 h above 50 °F"},
	{RawReadyToEat, 3, 0, 70, 50, 5 * time.Hour, 12 * time.Hour, quickRecalled, sixHours},

	{RawReadyToEatOlder, 1, 70, 0, 50, 2 * time.Hour, 3 * time.Hour, quick2020, ""},
	{RawReadyToEatOlder, 2, 70, 0, 50, 4 * time.Hour, 0, quick2020, ""},
	{RawReadyToEatOlder, 2, 70, 0, 70, 2 * time.Hour, 0, quick2020, "of the 4 h above 50 °F"},
	{RawReadyToEatOlder, 3, 0, 70, 50, 6 * time.Hour, 12 * time.Hour, quickOlder, fiveHour},

	{CookedReadyToEat, 1, 80, 0, 50, 1 * time.Hour, 3 * time.Hour, quickRecalled, ""},
	{CookedReadyToEat, 2, 80, 0, 50, 4 * time.Hour, 0, quickRecalled, ""},
	{CookedReadyToEat, 2, 80, 0, 70, 1 * time.Hour, 0, quickRecalled, "of the 4 h above 50 °F"},
	{CookedReadyToEat, 3, 70, 80, 50, 2 * time.Hour, 3 * time.Hour, quickRecalled, ""},
	{CookedReadyToEat, 4, 70, 80, 50, 4 * time.Hour, 0, quickRecalled, ""},
	{CookedReadyToEat, 4, 70, 80, 70, 2 * time.Hour, 0, quickRecalled, "of the 4 h above 50 °F"},
	{CookedReadyToEat, 5, 0, 70, 50, 5 * time.Hour, 12 * time.Hour, quickRecalled, ""},
}

// thresholds are the temperatures whose hours every report gives, degrees Fahrenheit.
var thresholds = [...]struct {
	over     float64
	citation cite.Citation
}{{38, storage}, {40, kitchen}, {50, quick2020}, {70, quick2020}, {80, quickRecalled}}
