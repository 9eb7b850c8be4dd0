package coldchain

import (
	"time"

	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// a2Row is one printed row: degrees Fahrenheit as printed, a high of zero for "above".
type a2Row struct {
	hazard    Hazard
	low, high float64
	allowed   time.Duration
	citation  cite.Citation
	note      string
}

const (
	moreData   = "remembered with the table's footnote that more data are needed"
	cookedOnly = "by the table's footnote for cooked ready-to-eat fish only; here it counts for all"
)

var (
	a2Recalled = cite.Citation{Source: cite.FDAHazardsGuide4, Where: "Appendix 4, table A-2", Basis: cite.Recalled}
	a2Read     = cite.Citation{
		Source: cite.FDAHazardsGuide2020, Where: "Appendix 4, table A-2, as quoted in a secondary note",
		Basis: cite.Read,
	}
)

// a2Table is table A-2, growth and toxin formation: a temperature range inside the fish and the most time in it.
var a2Table = [...]a2Row{
	{
		BacillusCereus, 39.2, 43, 5 * chain.Day, a2Recalled,
		"an older edition is remembered with 17 h at 44-50 °F; low confidence",
	},
	{BacillusCereus, 44, 59, 1 * chain.Day, a2Recalled, ""},
	{BacillusCereus, 60, 70, 6 * time.Hour, a2Recalled, ""},
	{BacillusCereus, 70, 0, 3 * time.Hour, a2Recalled, ""},

	{Campylobacter, 86, 93, 48 * time.Hour, a2Recalled, ""},
	{Campylobacter, 93, 0, 12 * time.Hour, a2Recalled, ""},

	{BotulinumA, 50, 70, 11 * time.Hour, a2Recalled, ""},
	{BotulinumA, 70, 0, 2 * time.Hour, a2Recalled, ""},

	{BotulinumE, 37.9, 41, 7 * chain.Day, a2Recalled, ""},
	{BotulinumE, 42, 50, 2 * chain.Day, a2Recalled, ""},
	{BotulinumE, 51, 70, 11 * time.Hour, a2Recalled, ""},
	{BotulinumE, 70, 0, 6 * time.Hour, a2Recalled, ""},

	{Perfringens, 50, 54, 21 * chain.Day, a2Recalled, moreData},
	{Perfringens, 55, 57, 1 * chain.Day, a2Recalled, ""},
	{Perfringens, 58, 70, 6 * time.Hour, a2Recalled, moreData},
	{Perfringens, 70, 0, 2 * time.Hour, a2Recalled, ""},

	{EscherichiaColi, 43.7, 50, 2 * chain.Day, a2Recalled, "lower edge after table A-1; some copies print 44.6 °F"},
	{EscherichiaColi, 51, 70, 5 * time.Hour, a2Recalled, ""},
	{EscherichiaColi, 70, 0, 2 * time.Hour, a2Recalled, ""},

	{Listeria, 31.3, 41, 7 * chain.Day, a2Read, ""},
	{Listeria, 42, 50, 1 * chain.Day, a2Read, "the upper edge, 50 °F, is from memory"},
	{Listeria, 51, 70, 7 * time.Hour, a2Recalled, ""},
	{Listeria, 71, 86, 3 * time.Hour, a2Recalled, ""},
	{Listeria, 86, 0, 1 * time.Hour, a2Recalled, ""},

	{Salmonella, 41.4, 50, 2 * chain.Day, a2Recalled, ""},
	{Salmonella, 51, 70, 5 * time.Hour, a2Recalled, ""},
	{Salmonella, 70, 0, 2 * time.Hour, a2Recalled, ""},

	{Shigella, 43, 50, 2 * chain.Day, a2Recalled, ""},
	{Shigella, 51, 70, 5 * time.Hour, a2Recalled, ""},
	{Shigella, 70, 0, 2 * time.Hour, a2Recalled, ""},

	{
		StaphylococcusAureus, 50, 50, 14 * chain.Day, a2Recalled,
		"a single temperature; an older edition is remembered with 44.6-50 °F",
	},
	{StaphylococcusAureus, 51, 70, 12 * time.Hour, a2Recalled, moreData},
	{StaphylococcusAureus, 70, 0, 3 * time.Hour, a2Recalled, ""},

	{VibrioCholerae, 50, 50, 21 * chain.Day, a2Recalled, moreData},
	{VibrioCholerae, 51, 70, 6 * time.Hour, a2Recalled, ""},
	{VibrioCholerae, 71, 80, 2 * time.Hour, a2Recalled, cookedOnly},
	{VibrioCholerae, 80, 0, 1 * time.Hour, a2Recalled, cookedOnly},

	{VibrioParahaemolyticus, 41, 50, 21 * chain.Day, a2Recalled, ""},
	{VibrioParahaemolyticus, 51, 70, 6 * time.Hour, a2Recalled, ""},
	{VibrioParahaemolyticus, 71, 80, 2 * time.Hour, a2Recalled, cookedOnly},
	{VibrioParahaemolyticus, 80, 0, 1 * time.Hour, a2Recalled, cookedOnly},

	{VibrioVulnificus, 46.4, 50, 21 * chain.Day, a2Recalled, ""},
	{VibrioVulnificus, 51, 70, 6 * time.Hour, a2Recalled, ""},
	{VibrioVulnificus, 71, 80, 2 * time.Hour, a2Recalled, cookedOnly},
	{VibrioVulnificus, 80, 0, 1 * time.Hour, a2Recalled, cookedOnly},

	{Yersinia, 29.7, 50, 1 * chain.Day, a2Recalled, ""},
	{Yersinia, 51, 70, 6 * time.Hour, a2Recalled, ""},
	{Yersinia, 70, 0, 150 * time.Minute, a2Recalled, ""},
}
