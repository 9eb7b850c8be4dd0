package coldchain

import (
	"time"

	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/coldchain/internal/chain"
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
	quickRaw         = chain.ReadIn(cite.FDAHazardsGuide2020, "Appendix 4, summary, p. 417")
	quickCookedFirst = quickRaw // the first limit for cooked fish stands on the same page
	quickCooked      = chain.ReadIn(cite.FDAHazardsGuide2020, "Appendix 4, summary, pp. 417-418")
	quickOlder       = cite.Citation{Source: cite.FDAHazardsGuide3, Basis: cite.Recalled}
	kitchen          = chain.ReadIn(cite.USDAFDAConsumerAdvice, "two-hour rule and danger zone")
	storage          = chain.ReadIn(cite.FDAHazardsGuide2020, "ch. 12, p. 225; ch. 13, pp. 246-247")
)

const (
	sixHours = "an older edition is remembered with 6 h; the 5 h rows of table A-2 fit the stricter figure"
	fiveHour = "6 h as remembered of the 3rd edition; not sure which edition went to 5 h"
)

var quickTable = [...]quickRow{
	{RawReadyToEat, 1, 70, 0, 50, 2 * time.Hour, 3 * time.Hour, quickRaw, ""},
	{RawReadyToEat, 2, 70, 0, 50, 4 * time.Hour, 0, quickRaw, ""},
	{RawReadyToEat, 2, 70, 0, 70, 2 * time.Hour, 0, quickRaw, "of the 4 h above 50 °F"},
	{RawReadyToEat, 3, 0, 70, 50, 5 * time.Hour, 12 * time.Hour, quickRaw, sixHours},

	{RawReadyToEatOlder, 1, 70, 0, 50, 2 * time.Hour, 3 * time.Hour, quickRaw, ""},
	{RawReadyToEatOlder, 2, 70, 0, 50, 4 * time.Hour, 0, quickRaw, ""},
	{RawReadyToEatOlder, 2, 70, 0, 70, 2 * time.Hour, 0, quickRaw, "of the 4 h above 50 °F"},
	{RawReadyToEatOlder, 3, 0, 70, 50, 6 * time.Hour, 12 * time.Hour, quickOlder, fiveHour},

	{CookedReadyToEat, 1, 80, 0, 50, 1 * time.Hour, 3 * time.Hour, quickCookedFirst, ""},
	{CookedReadyToEat, 2, 80, 0, 50, 4 * time.Hour, 0, quickCooked, ""},
	{CookedReadyToEat, 2, 80, 0, 70, 1 * time.Hour, 0, quickCooked, "of the 4 h above 50 °F"},
	{CookedReadyToEat, 3, 70, 80, 50, 2 * time.Hour, 3 * time.Hour, quickCooked, ""},
	{CookedReadyToEat, 4, 70, 80, 50, 4 * time.Hour, 0, quickCooked, ""},
	{CookedReadyToEat, 4, 70, 80, 70, 2 * time.Hour, 0, quickCooked, "of the 4 h above 50 °F"},
	{CookedReadyToEat, 5, 0, 70, 50, 5 * time.Hour, 12 * time.Hour, quickCooked, ""},
}

// thresholds are the temperatures whose hours every report gives, degrees Fahrenheit.
var thresholds = [...]struct {
	over     float64
	citation cite.Citation
}{{38, storage}, {40, kitchen}, {50, quickRaw}, {70, quickRaw}, {80, quickCooked}}
