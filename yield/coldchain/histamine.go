package coldchain

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// HistamineFigure is one published figure of histamine or of the free histidine that it forms from, Low to High by mass
// of fish; zero where the source states no such end. Positive of Samples were above what the survey could find, both
// zero where the figure is of no survey.
type HistamineFigure struct {
	What              string
	Fish              string
	Low, High         units.Ratio
	Positive, Samples int
	Citation          cite.Citation
}

// HistamineFigures returns what is published of histamine in salmonids, beside the species that it is feared in. It is
// not a controlling hazard for trout and lake salmon, and never none: raw salmon with 156 mg/kg was found on sale. The
// slice is the caller's own.
func HistamineFigures() []HistamineFigure {
	return append([]HistamineFigure(nil), histamineTable[:]...)
}

var (
	inSalmonids     = chain.ReadIn(cite.FAOWHOHistamine2018, "excerpt")
	histamineSurvey = chain.ReadIn(cite.HistamineSurvey2021, "table")
)

const mgPerKg = units.PartsPerMillion

var histamineTable = [...]HistamineFigure{
	{"free histidine", "scombroids: tunas, mackerels", 5_000 * mgPerKg, 20_000 * mgPerKg, 0, 0, inSalmonids},
	{
		"free histidine", "most salmonids: salmon, trout, char, freshwater whitefish, grayling", 0, 1_000 * mgPerKg, 0,
		0, inSalmonids,
	},
	{
		"histamine in illness", "scombrotoxin-forming species", 200 * mgPerKg, 0, 0, 0,
		chain.ReadIn(cite.FDAHazardsGuide4, "ch. 7, in a copy of the chapter"),
	},
	{
		"histamine, guidance level, single sample", "scombrotoxin-forming species", 0, 50 * mgPerKg, 0, 0,
		chain.ReadIn(cite.FDAHazardsGuide2020, "ch. 7, p. 120"),
	},
	{
		"histamine, guidance level, three fish together", "scombrotoxin-forming species", 0, 17 * mgPerKg, 0, 0,
		chain.ReadIn(cite.FDAHazardsGuide2020, "ch. 7, p. 120"),
	},
	{"histamine found on sale", "raw rainbow trout", 0, 0, 0, 20, histamineSurvey},
	{
		"histamine found on sale", "smoked rainbow trout", 3_500 * mgPerKg / 1000, 3_500 * mgPerKg / 1000, 1, 13,
		histamineSurvey,
	},
	{
		"histamine found on sale", "raw Atlantic salmon", 3_600 * mgPerKg / 1000, 156_400 * mgPerKg / 1000, 8, 34,
		histamineSurvey,
	},
	{
		"histamine found on sale", "smoked Atlantic salmon", 3_800 * mgPerKg / 1000, 39_500 * mgPerKg / 1000, 5, 16,
		histamineSurvey,
	},
}

var (
	neverNone = cite.Caution{
		ID: "coldchain.histamine-never-none",
		Text: "Histamine poisoning from salmon and trout is unlikely while they are chilled and still good to eat. " +
			"It is never none: raw salmon with 156 mg/kg was found on sale.",
		Citation: chain.ReadIn(cite.FAOWHOHistamine2018, "in a news summary; the survey is J Vet Res 2021-0066"),
	}
	chillAnyway = cite.Caution{
		ID: "coldchain.histamine-chill",
		Text: "Histamine forms fastest near 90 °F (32 °C), rapidly at 70 °F (21 °C), slowly at 45 °F (7 °C): " +
			"gut and ice the fish at once.",
		Citation: chain.ReadIn(cite.FDACompendium, "growth temperatures, excerpt"),
	}
	heatStays = cite.Caution{
		ID:       "coldchain.histamine-stays",
		Text:     "Once formed, histamine stays: neither cooking, smoking, canning nor freezing takes it away.",
		Citation: chain.ReadIn(cite.FDAHazardsGuide2020, "ch. 7, p. 114"),
	}
	countsFromDeath = cite.Caution{
		ID: "coldchain.counts-from-death",
		Text: "The guide lets the time start when dead fish leaves water of 65 °F (18.3 °C) or less, after at most 24 h in it. " +
			"Here it counts from death, the stricter.",
		Citation: chain.ReadIn(cite.FDAHazardsGuide2020, "ch. 7, p. 115 and table 7-1, p. 116"),
	}
)
