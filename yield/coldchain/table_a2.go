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

// The footnotes of the table, where they are printed.
const (
	moreData   = "by the table's footnote, additional data are needed"
	cookedOnly = "by the table's footnote for cooked ready-to-eat fish only; here it counts for all"
)

var a2Read = chain.ReadIn(cite.FDAHazardsGuide2020, "Appendix 4, table A-2, p. 421")

// a2Table is table A-2, growth and toxin formation: a temperature range inside the fish and the most time in it.
var a2Table = [...]a2Row{
	{BacillusCereus, 39.2, 43, 5 * chain.Day, a2Read, ""},
	{BacillusCereus, 44, 59, 1 * chain.Day, a2Read, ""},
	{BacillusCereus, 60, 70, 6 * time.Hour, a2Read, ""},
	{BacillusCereus, 70, 0, 3 * time.Hour, a2Read, ""},

	{Campylobacter, 86, 93, 48 * time.Hour, a2Read, ""},
	{Campylobacter, 93, 0, 12 * time.Hour, a2Read, ""},

	{BotulinumA, 50, 70, 11 * time.Hour, a2Read, ""},
	{BotulinumA, 70, 0, 2 * time.Hour, a2Read, ""},

	{BotulinumE, 37.9, 41, 7 * chain.Day, a2Read, ""},
	{BotulinumE, 42, 50, 2 * chain.Day, a2Read, ""},
	{BotulinumE, 51, 70, 11 * time.Hour, a2Read, ""},
	{BotulinumE, 70, 0, 6 * time.Hour, a2Read, ""},

	{Perfringens, 50, 54, 21 * chain.Day, a2Read, ""},
	{Perfringens, 55, 57, 1 * chain.Day, a2Read, ""},
	{Perfringens, 58, 70, 6 * time.Hour, a2Read, moreData},
	{Perfringens, 70, 0, 2 * time.Hour, a2Read, ""},

	{EscherichiaColi, 43.7, 50, 2 * chain.Day, a2Read, "printed beside it 6.6 °C; table A-1 has 6.5 °C"},
	{EscherichiaColi, 51, 70, 5 * time.Hour, a2Read, ""},
	{EscherichiaColi, 70, 0, 2 * time.Hour, a2Read, ""},

	{Listeria, 31.3, 41, 7 * chain.Day, a2Read, ""},
	{Listeria, 42, 50, 1 * chain.Day, a2Read, ""},
	{Listeria, 51, 70, 7 * time.Hour, a2Read, ""},
	{Listeria, 71, 86, 3 * time.Hour, a2Read, ""},
	{Listeria, 86, 0, 1 * time.Hour, a2Read, ""},

	{Salmonella, 41.4, 50, 2 * chain.Day, a2Read, ""},
	{Salmonella, 51, 70, 5 * time.Hour, a2Read, ""},
	{Salmonella, 70, 0, 2 * time.Hour, a2Read, ""},

	{Shigella, 43, 50, 2 * chain.Day, a2Read, ""},
	{Shigella, 51, 70, 5 * time.Hour, a2Read, ""},
	{Shigella, 70, 0, 2 * time.Hour, a2Read, ""},

	{
		StaphylococcusAureus, 50, 50, 14 * chain.Day, a2Read,
		"a single temperature; printed beside it 7-10 °C, the two scales disagree",
	},
	{StaphylococcusAureus, 51, 70, 12 * time.Hour, a2Read, moreData},
	{StaphylococcusAureus, 70, 0, 3 * time.Hour, a2Read, ""},

	{VibrioCholerae, 50, 50, 21 * chain.Day, a2Read, ""},
	{VibrioCholerae, 51, 70, 6 * time.Hour, a2Read, ""},
	{VibrioCholerae, 71, 80, 2 * time.Hour, a2Read, ""},
	{VibrioCholerae, 80, 0, 1 * time.Hour, a2Read, cookedOnly},

	{VibrioParahaemolyticus, 41, 50, 21 * chain.Day, a2Read, ""},
	{VibrioParahaemolyticus, 51, 70, 6 * time.Hour, a2Read, ""},
	{VibrioParahaemolyticus, 71, 80, 2 * time.Hour, a2Read, ""},
	{VibrioParahaemolyticus, 80, 0, 1 * time.Hour, a2Read, cookedOnly},

	{VibrioVulnificus, 46.4, 50, 21 * chain.Day, a2Read, ""},
	{VibrioVulnificus, 51, 70, 6 * time.Hour, a2Read, ""},
	{VibrioVulnificus, 71, 80, 2 * time.Hour, a2Read, ""},
	{VibrioVulnificus, 80, 0, 1 * time.Hour, a2Read, cookedOnly},

	{Yersinia, 29.7, 50, 1 * chain.Day, a2Read, ""},
	{Yersinia, 51, 70, 6 * time.Hour, a2Read, ""},
	{Yersinia, 70, 0, 150 * time.Minute, a2Read, ""},
}
