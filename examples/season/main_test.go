package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/examples/internal/trial"
)

var program = trial.Program(run)

func TestDemo(t *testing.T) {
	us := program.Printed(t)
	for _, want := range []string{
		"Tamarack Bench Reservoir, 4,350 ft", "Invented for demonstration",
		"17 fish, 96 lb 4 oz whole", "50 pint jars of 14 oz each", "6 canner loads of up to 9; the last has 5",
		"pressure  15 psi", "time      100 min", "vent      10 min", "steam at 245.4 °F, 5.4 °F against 240.0 °F",
		"salt   8 3/4 oz", "VERDICT: within", "(HOT-160-PNW) [35]: met", "for 46 min without a break",
		"43 lb 12 oz of raw fish, 77 % of it eaten: 33 lb 11 oz", "185 servings", "VERDICT of the recorded run: met", "takes 9 pint regular jars", "55 fish kept, at most 37 held",
		"peak 37 held before eating", "185, for 22 canner loads", "BATCH SHEET, FISH CAUGHT IN WEEK 36", "CAUTIONS",
		"to 38.0 °F or below: no record here shows that", "together, by the lower figures, about ", "193 of 14 oz raw", "cans drain to 76.6 % of pink salmon", "together 55 fish", "VERDICT with the expected catch: feasible", "week  0  days 2  expected 14, possible 24: keep 12",
		"\n   0  11 oooooooooooo  kept 12\n", "lids            185, new for every jar", "canned or cured within 1 day", "fillets for 1 bag, 1 lb raw: 1/2 oz salt, 1 oz sugar", "the local rules decide",
		"caught in week  0: 11 fish, 62 lb 1 oz whole: 39 jars in 5 loads, 7 bags", "(recalled: check the print before relying on it)",
	} {
		require.True(t, strings.Contains(us, want), "missing: %s", want)
	}
	metric := program.Printed(t, "-units", "metric")
	for _, want := range []string{"1,326 m", "43.66 kg whole", "50 pint jars of 397 g each", "15 psi (103 kPa)", "steam at 118.6 °C, 3.0 K against 115.6 °C", "salt   246 g"} {
		require.True(t, strings.Contains(metric, want), "missing: %s", want)
	}
}

// broken copies the demo input with one text replaced, the whole file where old is empty, and runs on it.
func broken(t *testing.T, file, old, new string) (string, error) {
	t.Helper()
	return program.Changed(t, []string{"season.json", "core.csv", "cooler.csv", "steam.csv"}, nil, trial.Change{file, old, new})
}

// TestBroken: one clear message naming the field or the line, and nothing printed before it.
func TestBroken(t *testing.T) {
	for _, c := range []struct{ file, old, new, message string }{
		{"season.json", `"4,350 ft"`, `"4350"`, "altitude: cannot read \"4350\" as a length: the unit is missing"},
		{"season.json", `"people": 10`, `"people": 0`, "people: expected a number above 0"},
		{"season.json", `"people": 10,`, `"people": 10`, "season.json: line 7: invalid character"},
		{"season.json", `"people": 10`, `"people": "ten"`, "season.json: line 6: json: cannot unmarshal string"},
		{"season.json", `"people"`, `"persons"`, "unknown field \"persons\""},
		{"season.json", `"mass": "6 lb 4 oz"`, `"mass": "6 lb 4"`, "fish[1].mass: cannot read"},
		{"season.json", `"mass": "6 lb 4 oz"`, `"mass": "0 lb"`, "fish[1].mass: expected more than 0 g"},
		{"season.json", `"species": "coho"`, `"species": "carp"`, "fish[0].species: cannot read \"carp\""},
		{"season.json", `"species": "coho"`, `"species": "steelhead"`, "weighed: no share of canning-ready is known for steelhead"},
		{"season.json", `"largest": 3`, `"largest": 12`, "smoker[0].largest: 12 of coho for the smoker, but 11 caught"},
		{"season.json", `"gauge": "weighted"`, `"gauge": "steam"`, "canner.gauge: cannot read"},
		{"season.json", `"jar": "pint"`, `"jar": "500 mL"`, "canner.jar: cannot read"},
		{"season.json", `"jar": "pint"`, `"jar": "half-gallon"`, "no process is published"},
		{"season.json", `"4,350 ft"`, `"11,000 ft"`, "no process is published"},
		{"season.json", `"saltToFish": "3 %"`, `"saltToFish": "3"`, "cure.saltToFish: cannot read"},
		{"season.json", `"table salt"`, `"sea salt"`, "cure.salt: "},
		{"season.json", `"HOT-160-PNW"`, `"HOT-140"`, "coreLimit: "},
		{"season.json", `"share": "66 %"`, `"share": "66"`, "weighed[0].share: cannot read"},
		{"season.json", `"stage": "canning-ready"`, `"stage": "headed"`, "weighed: no share of canning-ready is known for lake whitefish"},
		{"season.json", `"core.csv"`, `"none.csv"`, "none.csv"},
		{"season.json", `"low": "20 %"`, `"low": "40 %"`, "smokingLoss: low must not be above high"},
		{"core.csv", "13:05,43.8", "13:05,", "core.csv: line 4"},
		{"core.csv", "13:10", "13:05", "core.csv: line 5"},
		{"cooler.csv", "fish (°F)", "fish (psi)", "cooler.csv: "},
		{"cooler.csv", "15,44.2", "15,NaN", "cooler.csv: line 4"},
		{"steam.csv", "steam (°F)", "steam (psi)", "steam.csv: "},
		{"season.json", `"heatOn": "0s"`, `"lunch": "0s"`, "run.marks.lunch: no moment of a run"},
		{"season.json", `"timer": "35m"`, `"timer": "35"`, "run.marks.timer: "},
		{"season.json", `"lidOff": "3h4m"`, `"lidOff": "1m"`, "run: "},
		{"season.json", `"jarSize": "pint regular"`, `"jarSize": "quart regular"`, "run: "},
		{"season.json", `"shape": "processed quota"`, `"shape": "as we like"`, "year.rule.shape: cannot read"},
		{"season.json", `"shape": "processed quota"`, `"shape": "everything"`, "possession limit under the shape everything 0 is out of range"},
		{"season.json", `"daily": 3`, `"daily": 0`, "daily limit 0 is out of range"},
		{"season.json", `"week": 2,`, `"week": 5,`, "trip 3: week 4 is out of range"},
		{"season.json", `"lag": 1`, `"lag": 2`, "weeks until fish is preserved"},
		{"season.json", `"lag": 1`, `"lag": 1, "fresh": {"days": 1, "source": "Grandmother", "basis": "read"}`, "year.fresh.source: "},
		{"season.json", `"lag": 1`, `"lag": 1, "fresh": {"source": "FDAStorageChart", "basis": "read"}`, "year.fresh.days: "},
		{"season.json", `"mealsAWeek": "1"`, `"mealsAWeek": "one"`, "year.jars.mealsAWeek: "},
		{"season.json", `"served": "77 %"`, `"served": "170 %"`, "year.jars.served: "},
		{"season.json", `"jarAndLid": "0.55"`, `"jarAndLid": "-1"`, "year.prices.jarAndLid: "},
	} {
		_, err := broken(t, c.file, c.old, c.new)
		require.ErrorContains(t, err, c.message, "%s: %s", c.file, c.new)
		require.NotContains(t, err.Error(), "\n")
	}
	require.ErrorContains(t, run([]string{"-units", "cubits"}, &bytes.Buffer{}), "expected metric or us")
	require.Error(t, run([]string{"-in", "nowhere.json"}, &bytes.Buffer{}))
}

// TestFoodNeedsTheRecords: fish that no record vouches for is not counted as food.
func TestFoodNeedsTheRecords(t *testing.T) {
	for _, c := range []struct{ file, old, new, verdict, food string }{
		{"cooler.csv", "", "elapsed (min),fish (°F)\n0,60\n25,60\n50,60\n75,60\n100,60\n125,60\n", "VERDICT: exceeded", "Nothing is counted"},
		{"cooler.csv", "", "elapsed (min),fish (°F)\n0,36\n45,36\n", "VERDICT: cannot tell", "Nothing is counted"},
		{"season.json", "HOT-160-PNW", "HOT-180-MSU", "(HOT-180-MSU) [35]: not met", "smoked   not counted"},
		{"season.json", `"heatOff": "2h17m"`, `"heatOff": "2h7m"`, "VERDICT of the recorded run: not met", "canned   not counted"},
	} {
		out, err := broken(t, c.file, c.old, c.new)
		require.NoError(t, err)
		require.True(t, strings.Contains(out, c.verdict), c.verdict)
		require.True(t, strings.Contains(out, c.food), c.food)
	}
}

// TestYearThatCannotBeHeld: a smaller rule is told as such, with the most that can be had instead.
func TestYearThatCannotBeHeld(t *testing.T) {
	out, err := broken(t, "season.json", `"processed": 9`, `"processed": 2`)
	require.NoError(t, err)
	for _, want := range []string{
		"VERDICT with the expected catch: infeasible: short ", "the largest feasible supply is ", "every week of the year could be had with ", "  SHORT\n",
		"The year cannot be held under these limits",
	} {
		require.True(t, strings.Contains(out, want), "missing: %s", want)
	}
}

// TestPicture: asked for, and not otherwise; every week is a bar.
func TestPicture(t *testing.T) {
	path := filepath.Join(t.TempDir(), "stock.svg")
	program.Printed(t, "-svg", path)
	data, err := os.ReadFile(path)
	require.NoError(t, err)
	svg := string(data)
	require.True(t, strings.HasPrefix(svg, "<svg ") && strings.HasSuffix(svg, "</svg>\n"))
	require.Equal(t, 2*52, strings.Count(svg, `fill="#0060a8"`)+strings.Count(svg, `fill="#30a05c"`)-2)
	require.True(t, strings.Contains(svg, "preserved fish put in: 36"))
	require.Error(t, run([]string{"-svg", filepath.Join(path, "none")}, &bytes.Buffer{}))
}

// TestTheShorterKeepingTimeCounts: the file may state less than is published, never more.
func TestTheShorterKeepingTimeCounts(t *testing.T) {
	const served = `"served": "70 %"`
	for days, counted := range map[string]string{"30": "smoked and frozen 30 days", "90": "smoked and frozen 60 days"} {
		out, err := broken(t, "season.json", served, served+`, "keeps": {"days": `+days+`, "source": "FDAStorageChart", "place": "chart", "basis": "read"}`)
		require.NoError(t, err)
		require.Contains(t, out, counted)
	}
}
