package main

import (
	"bytes"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/examples/internal/trial"
)

var (
	program = trial.Program(run)
	files   = []string{"season.json", "core.csv", "cooler.csv", "steam.csv"}
)

func TestPages(t *testing.T) {
	for _, system := range []string{"us", "metric", "both"} {
		page := program.Printed(t, "-units", system)
		trial.Page(t, page, 40)
		trial.Golden(t, trial.Answer(page), "testdata/"+system+".txt")
		if system == "both" {
			continue
		}
		trial.System(t, page, system)
		_, details, found := strings.Cut(page, "\nTHE CATCH\n")
		require.True(t, found)
		trial.System(t, details, system, "(°F)", "in °F")
	}
	trial.Contains(t, program.Printed(t, "-sources"), "\nSOURCES\n[1] ", "(recalled")
}

// Everything that the program works out is there, the answer first.
func TestDemo(t *testing.T) {
	us := program.Printed(t, "-units", "us")
	trial.Contains(t, us,
		"VERDICT: MET: the catch at Tamarack Bench Reservoir", "Invented for demonstration",
		"Cooler: met over 22 h, warmest 46 °F", "by HOT-160-PNW", "46 min 40 s without a break, 0 min owed",
		"Canner: met, 103 min 22 s", "43.75 lb of raw fish, 77 % of it eaten: 33.68 lb",
		"at most 38 °F: no record here shows that", "185 servings of 4 oz, 18 for each of 10 people",
		"With the expected catch: feasible: 55 fish kept, at most 37 held", "37 held before eating",
		"17 fish, 96.25 lb whole", "the stove stands at 4,350 ft",
		"50 pint jars of 14 oz each", "6 canner loads of up to 9; the last has 5",
		"15 psi and never less; 100 min without a break", "vent 10 min of steady steam",
		"Steam at that setting here: 245.4 °F, 5.4 F° above 240 °F",
		"8.66 oz of salt", "takes 9 pint regular jars", "185, for 22 canner loads",
		"BATCH SHEET, FISH CAUGHT IN WEEK 36", "193 of 14 oz raw", "cans drain to 76.64 % of pink salmon",
		"Together 55 fish",
		"\n0        2        14        24    12\n", "\n  0  11 oooooooooooo  kept 12\n", "lids: 185, new for every jar",
		"canned or cured within 24 h", "fillets for 1 bag, 1 lb raw: 0.48 oz salt, 0.96 oz sugar",
		"The local rules decide", "caught in week 0: 11 fish, 62.04 lb whole: 39 jars in 5 loads, 7 bags",
		"341.17 together, 1.77 a container, 0.66 a meal", "61.69 together",
		"cooler.csv read as time in ", "steam.csv read as time in ", "coho core: 69 readings", "Listeria monocytogenes",
		"HOT-180-MSU")
	require.Less(t, strings.Index(us, "CAN THE YEAR BE HELD?"), strings.Index(us, "\nCAUTIONS\n"))
	trial.Contains(t, program.Printed(t, "-units", "metric"), "1,325.9 m", "43.66 kg whole",
		"50 pint jars of 396.9 g each", "103.5 kPa and never less", "118.6 °C, 3 C° above 115.6 °C", "245.5 g of salt")
}

// The way by hand comes out for every shape of rule, and in a year that cannot be held.
func TestByHand(t *testing.T) {
	page := program.Printed(t, "-math")
	trial.ByHand(t, page, 35)
	trial.Contains(t, page, "= 245.42 g of salt", "preservedLimit = anglers × quota = 4 × 9 = 36 preserved fish",
		"held = p1 + f1 = 34 + 3 = 37 fish held before eating", "containers: 193")
	for _, c := range []struct{ old, new string }{
		{`"processed": 9`, `"processed": 2`},
		{`"shape": "processed quota", "anglers": 4, "daily": 3, "processed": 9`,
			`"shape": "one day", "anglers": 4, "daily": 3`},
		{`"shape": "processed quota", "anglers": 4, "daily": 3, "processed": 9`,
			`"shape": "everything", "anglers": 4, "daily": 3, "possession": 6`},
		{`"shape": "processed quota", "anglers": 4, "daily": 3, "processed": 9`,
			`"shape": "unpreserved", "anglers": 4, "daily": 3, "possession": 6`},
		{`"week": 0, "days": 2, "expected": 14`, `"week": 0, "days": 2, "expected": 0`},
		{`"mealsAWeek": "1"`, `"mealsAWeek": "0.3"`},
	} {
		out, err := program.Changed(t, files, []string{"-math"}, trial.Change{"season.json", c.old, c.new})
		require.NoError(t, err, c.new)
		trial.ByHand(t, out, 31)
	}
}

func TestHelp(t *testing.T) { trial.Help(t, program) }

// broken copies the demo input with one text replaced, the whole file where old is empty, and runs on it.
func broken(t *testing.T, file, old, new string) (string, error) {
	t.Helper()
	return program.Changed(t, files, []string{"-units", "us"}, trial.Change{file, old, new})
}

// TestBroken: one clear message naming the field or the line, and nothing printed before it.
func TestBroken(t *testing.T) {
	const keeps = `"served": "77 %", "keeps": {"time": `
	for _, c := range []struct{ file, old, new, message string }{
		{"season.json", `"4,350 ft"`, `"4350"`, "altitude: cannot read \"4350\" as a length: the unit is missing"},
		{"season.json", `"people": 10`, `"people": 0`, "people: expected a number above 0"},
		{"season.json", `"people": 10,`, `"people": 10`, "season.json: line 7"},
		{"season.json", `"people": 10`, `"people": "ten"`, "season.json: line 6: people: "},
		{"season.json", `"people"`, `"persons"`, "persons: unknown field"},
		{"season.json", `"mass": "6 lb 4 oz"`, `"mass": "6 lb 4"`, "fish[1].mass: cannot read"},
		{"season.json", `"mass": "6 lb 4 oz"`, `"mass": "0 lb"`, "fish[1].mass: expected more than 0 g"},
		{"season.json", `"species": "coho"`, `"species": "carp"`, "fish[0].species: "},
		{"season.json", `"species": "coho"`, `"species": "steelhead"`,
			"weighed: no share of canning-ready is known for steelhead"},
		{"season.json", `"largest": 3`, `"largest": 12`, "smoker[0].largest: 12 of coho for the smoker, but 11 caught"},
		{"season.json", `"gauge": "weighted"`, `"gauge": "steam"`, "canner.gauge: "},
		{"season.json", `"jar": "pint"`, `"jar": "500 mL"`, "canner.jar: "},
		{"season.json", `"jar": "pint"`, `"jar": "half-gallon"`, "no process is published"},
		{"season.json", `"4,350 ft"`, `"11,000 ft"`, "no process is published"},
		{"season.json", `"saltToFish": "3 %"`, `"saltToFish": "3"`, "cure.saltToFish: cannot read"},
		{"season.json", `"saltParts": 1`, `"saltParts": 0`, "cure: expected salt parts above 0"},
		{"season.json", `"table salt"`, `"sea salt"`, "cure.salt: "},
		{"season.json", `"HOT-160-PNW"`, `"HOT-140"`, "coreLimit: "},
		{"season.json", `"share": "66 %"`, `"share": "66"`, "weighed[0].share: cannot read"},
		{"season.json", `"stage": "canning-ready"`, `"stage": "headed"`,
			"weighed: no share of canning-ready is known for lake whitefish"},
		{"season.json", `"core.csv"`, `"none.csv"`, "none.csv"},
		{"season.json", `"low": "20 %"`, `"low": "40 %"`, "smokingLoss: low must not be above high"},
		{"core.csv", "13:05,43.8", "13:05", "core.csv: line 4"},
		{"core.csv", "13:10", "13:05", "core.csv: line 5"},
		{"cooler.csv", "fish (°F)", "fish (psi)", "cooler.csv: "},
		{"cooler.csv", "15,44.2", "fifteen,44.2", "cooler.csv: line 4"},
		{"steam.csv", "steam (°F)", "steam (psi)", "steam.csv: "},
		{"season.json", `"heatOn": "0 min"`, `"lunch": "0 min"`, "run.marks.lunch: unknown field"},
		{"season.json", `"timer": "35 min"`, `"timer": "35"`, "run.marks.timer: "},
		{"season.json", `"lidOff": "184 min"`, `"lidOff": "1 min"`, "run: "},
		{"season.json", `"jarSize": "pint regular"`, `"jarSize": "quart regular"`, "run: "},
		{"season.json", `"jarSize": "pint regular"`, `"jarSize": "litre"`, "run.jarSize: "},
		{"season.json", `"shape": "processed quota"`, `"shape": "as we like"`, "year.rule.shape: "},
		{"season.json", `"shape": "processed quota"`, `"shape": "everything"`, "possession limit"},
		{"season.json", `"daily": 3`, `"daily": 0`, "daily limit 0 is out of range"},
		{"season.json", `"week": 2,`, `"week": 5,`, "trip 3: week 4 is out of range"},
		{"season.json", `"lag": 1`, `"lag": 2`, "weeks until fish is preserved"},
		{"season.json", `"served": "77 %"`, keeps + `"1 d", "citation": {"source": "Grandmother", "basis": "read"}}`,
			"year.jars.keeps.citation"},
		{"season.json", `"served": "77 %"`, keeps +
			`"soon", "citation": {"source": "FDAStorageChart", "basis": "read"}}`, "year.jars.keeps.time"},
		{"season.json", `"served": "77 %"`, keeps + `"1 d"}`, "year.jars.keeps.citation: it is required"},
		{"season.json", `"mealsAWeek": "1"`, `"mealsAWeek": "one"`, "year.jars.mealsAWeek: "},
		{"season.json", `"served": "77 %"`, `"served": "170 %"`, "year.jars: served: "},
		{"season.json", `"jarAndLid": "0.55"`, `"jarAndLid": "-1"`, "year.prices.jarAndLid: "},
	} {
		out, err := broken(t, c.file, c.old, c.new)
		require.ErrorContains(t, err, c.message, "%s: %s", c.file, c.new)
		require.NotContains(t, err.Error(), "\n")
		require.Empty(t, out)
	}
	require.ErrorContains(t, run([]string{"-units", "cubits"}, &bytes.Buffer{}), "invalid value")
	require.Error(t, run([]string{"-in", "nowhere.json"}, &bytes.Buffer{}))
}

// TestOpenQuestion: what a file does not say is asked, with the answer to write down.
func TestOpenQuestion(t *testing.T) {
	_, err := broken(t, "cooler.csv", "15,44.2", "15,wet")
	require.ErrorContains(t, err, `does "wet" mean that there is no reading?`)
	require.ErrorContains(t, err, "set coolerFormat to {")
	out, err := program.Changed(t, files, []string{"-units", "us"}, trial.Change{"cooler.csv", "15,44.2", "15,wet"},
		trial.Change{"season.json", `"coolerLog": "cooler.csv",`,
			`"coolerLog": "cooler.csv", "coolerFormat": {"missing": ["wet"]},`})
	require.NoError(t, err)
	trial.Contains(t, out, "Cooler: met over 22 h")
}

// TestFoodNeedsTheRecords: fish that no record vouches for is not counted as food.
func TestFoodNeedsTheRecords(t *testing.T) {
	for _, c := range []struct{ file, old, new, verdict, food string }{
		{"cooler.csv", "", "elapsed (min),fish (°F)\n0,60\n25,60.5\n50,61\n75,60.5\n100,60\n125,61\n",
			"VERDICT: NOT MET", "Nothing is counted"},
		{"cooler.csv", "", "elapsed (min),fish (°F)\n0,36\n45,36\n", "VERDICT: CANNOT TELL", "Nothing is counted"},
		{"season.json", "HOT-160-PNW", "HOT-180-MSU", "Smoker: not met", "Smoked: not counted"},
		{"season.json", `"heatOff": "137 min"`, `"heatOff": "127 min"`, "Canner: not met", "Canned: not counted"},
	} {
		out, err := broken(t, c.file, c.old, c.new)
		require.NoError(t, err)
		trial.Page(t, out, 45)
		trial.Contains(t, out, c.verdict, c.food)
		require.NotContains(t, out, "VERDICT: MET")
	}
}

// TestYearThatCannotBeHeld: a smaller rule is said as such, with the most that can be had instead.
func TestYearThatCannotBeHeld(t *testing.T) {
	out, err := broken(t, "season.json", `"processed": 9`, `"processed": 2`)
	require.NoError(t, err)
	trial.Page(t, out, 42)
	trial.Contains(t, out, "With the expected catch: infeasible: short 25 weeks, the first of them 16; at most ",
		" lb wanted, from 29 fish", "Every week of the year could be had with ", "  SHORT\n", "(season.cannot-be-held)")
}

// TestPicture: every week is a bar of preserved and one of fresh fish; a year that cannot be held marks its short
// weeks.
func TestPicture(t *testing.T) {
	for _, system := range []string{"us", "metric"} {
		svg := trial.Picture(t, program, "-units", system)
		require.Equal(t, 52+1, strings.Count(svg, `fill="#888"`))
		require.Equal(t, 52+1, strings.Count(svg, `fill="#ccc"`))
		trial.Contains(t, svg, "Fish held each week: feasible", "limit of preserved fish as stated: 36", "records: met")
	}
	require.Error(t, run([]string{"-svg", filepath.Join(t.TempDir(), "no", "folder")}, &bytes.Buffer{}))
	path := filepath.Join(t.TempDir(), "short.svg")
	_, err := program.Changed(t, files, []string{"-svg", path}, trial.Change{"season.json", `"processed": 9`,
		`"processed": 2`})
	require.NoError(t, err)
}

// TestTheShorterKeepingTimeCounts: the file may state less than is published, never more.
func TestTheShorterKeepingTimeCounts(t *testing.T) {
	const served = `"served": "70 %"`
	for days, counted := range map[string]string{"30 d": "smoked and frozen 30 days",
		"90 d": "smoked and frozen 60 days"} {
		out, err := broken(t, "season.json", served,
			served+`, "keeps": {"time": "`+days+`", "citation": {"source": "FDAStorageChart", "place": "chart", "basis": "read"}}`)
		require.NoError(t, err)
		trial.Contains(t, out, counted)
	}
}
