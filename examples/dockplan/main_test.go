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

// changed runs the demo with changes.
func changed(t *testing.T, changes ...[2]string) (string, error) {
	t.Helper()
	var all []trial.Change
	for _, c := range changes {
		all = append(all, trial.Change{"dock.json", c[0], c[1]})
	}
	return program.Changed(t, []string{"dock.json"}, nil, all...)
}

func TestPage(t *testing.T) {
	us := program.Printed(t, "-units", "us")
	trial.Page(t, us, 40)
	trial.System(t, us, "us")
	trial.Contains(t, us, "RESULT: keep at most 13 fish today, of 16", "No advisory is stated for this water",
		"proven: no fixed starts do for 14",
		"Do: first, from Sat 12:00: gut and ice all 13 fish, the last on ice by Sat 13:15", "TIMETABLE FOR 13 FISH",
		"a second canner beside the first, each with a person: 16 fish",
		"canned within two days: by Mon 11:15", "raw in the refrigerator: by Sun 11:15", "met [", "Invented for demonstration")
	metric := program.Printed(t, "-units", "metric", "-sources")
	trial.Page(t, metric, 40)
	trial.System(t, metric, "metric")
	trial.Contains(t, metric, "534.9 g", "82.3 °C", "\nSOURCES\n[1] ")
	for _, part := range []string{"heat up", "vent", "pressurize", "process", "cool down", "wait"} {
		require.Regexp(t, "\n- "+part+": .* \\[\\d+\\]\n", us, "the source of its time")
	}
}

func TestGolden(t *testing.T) {
	for _, system := range []string{"us", "metric", "both"} {
		trial.Golden(t, program.Printed(t, "-units", system), "testdata/"+system+".txt")
	}
}

func TestByHand(t *testing.T) {
	trial.ByHand(t, program.Printed(t, "-math"), 14)
	trial.Contains(t, program.Printed(t, "-math"), "= 155.000 min", "least is the least of the published cycle",
		"spare is what the plan leaves",
		"x4 = A × q4 − h4 = 3 × 15 − 18 = 27.0000 fish", "last is the last load of the plan")
	path := filepath.Join(t.TempDir(), "dock.json")
	text, err := os.ReadFile("dock.json")
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(path, []byte(strings.Replace(string(text), `"daily": 5`, `"daily": 1`, 1)),
		0o600))
	trial.ByHand(t, program.Printed(t, "-math", "-in", path), 12)
}

func TestHelp(t *testing.T) { trial.Help(t, program) }

func TestPicture(t *testing.T) {
	picture := trial.Picture(t, program)
	trial.Contains(t, picture, `viewBox="0 0 400 `, "person 2", "canner", "smoker", "refrigerator",
		"load 3 not before Sun 06:58", "spare not before Sun 10:53", "everybody sleeps")
	require.NotRegexp(t, `#(?:[0-9a-f]{3}|[0-9a-f]{6})"`, greyless(picture), "grey and no colours")
}

// greyless is a picture without its greys.
func greyless(picture string) string {
	for _, grey := range []string{"#000", "#333", "#555", "#888", "#ccc", "#ddd", "#eee", "#fff"} {
		picture = strings.ReplaceAll(picture, grey+`"`, "")
	}
	return picture
}

// TestDecides: each of the four limits can be the least, and says so.
func TestDecides(t *testing.T) {
	stated := [2]string{`"intake":`, `"advisory": {"meals": 1, "period": "168 h"}, "intake":`}
	for _, c := range []struct {
		changes [][2]string
		wants   []string
	}{
		{[][2]string{{`"fish": 16`, `"fish": 12`}},
			[]string{"RESULT: keep at most 12 fish today, of 12 caught or hoped for: all of them",
				"12 fish of 12 can be processed"}},
		{[][2]string{{`"daily": 5`, `"daily": 3`}}, []string{"keep at most 9 fish",
			"the possession rule allows no more", "9 fish (daily limit 9 less 0)", "let 7 go"}},
		{[][2]string{{`"processed": 15`, `"processed": 9`}}, []string{"keep at most 9 fish",
			"preserved fish held, which today's become 27 less 18"}},
		{[][2]string{{`"processed": 15`, `"processed": 9`}, {`"fresh": 0`, `"fresh": 2`}},
			[]string{"keep at most 7 fish", "preserved fish held, which today's become 27 less 20"}},
		{[][2]string{{`"daily": 5`, `"daily": 3`}, {`"fresh": 0, "preserved": 18, "today": 0`, `"fresh": 4, "preserved": 18, "today": 3`}},
			[]string{"keep at most 5 fish", "fresh fish held 9 less 4", "daily limit 9 less 3"}},
		{[][2]string{{`"preserved": 18`, `"preserved": 45`}},
			[]string{"RESULT: keep no fish today: the possession rule allows no more"}},
		{[][2]string{{`"have": 18`, `"have": 31`}}, []string{"keep at most 4 fish", "the year eats no more"}},
		{[][2]string{{`"have": 18`, `"have": 40`}}, []string{"keep no fish today"}},
		{[][2]string{{stated[0], stated[1]}, {`"meals": 1,`, `"meals": 0,`}},
			[]string{"keep no fish today: the advisory permits no more", "(yield.do-not-eat)"}},
		{[][2]string{{stated[0], stated[1]}, {`"period": "168 h"`, `"period": "252 h"`}},
			[]string{"keep at most 10 fish", "the advisory permits no more", "by the advisory ["}},
		{[][2]string{{`"shape": "processed quota", "anglers": 3, "daily": 5, "processed": 15`,
			`"shape": "everything", "anglers": 3, "daily": 5, "possession": 10, "annual": 8`}},
			[]string{"keep at most 6 fish", "fish of the year 24 less 18"}},
		{[][2]string{{`"shape": "processed quota", "anglers": 3, "daily": 5, "processed": 15`,
			`"shape": "one day", "anglers": 4, "daily": 5`}},
			[]string{"keep at most 2 fish", "all fish held 20 less 18"}},
		{[][2]string{{`"shape": "processed quota", "anglers": 3, "daily": 5, "processed": 15`,
			`"shape": "unpreserved", "anglers": 3, "daily": 5, "possession": 3`}},
			[]string{"keep at most 9 fish", "fresh fish held 9 less 0"}},
	} {
		out, err := changed(t, c.changes...)
		require.NoError(t, err)
		trial.Page(t, out, 46)
		trial.Contains(t, out, c.wants...)
	}
	out, err := changed(t, stated)
	require.NoError(t, err)
	require.NotContains(t, out, "No advisory is stated")
}

// TestGivesWay: which deadline gives way, and what would have to.
func TestGivesWay(t *testing.T) {
	for _, c := range []struct {
		changes [][2]string
		wants   []string
	}{
		{[][2]string{{`"dock": "12:00"`, `"dock": "12:50"`}}, []string{"gutted and on ice: the end of gut",
			"Sat 13:15", "what is published does not give way"}},
		{[][2]string{{`"dock": "12:00"`, `"dock": "13:20"`}},
			[]string{"RESULT: keep no fish today: no more can be processed in time", "gutted and on ice",
				"fewer fish: 0"}},
		{[][2]string{{`"fish": 16`, `"fish": 9, "doneBy": "21:30"`}, {`"thick": "1 in"`, `"thick": "3/4 in"`},
			{`"thin": "3/4 in"`, `"thin": "1/2 in"`}},
			[]string{"on ice until tomorrow, within the published two days, and not done by the hour that you want: 9 fish"}},
		{[][2]string{{`"mayLie": "30 min"`, `"mayLie": "0 min"`}}, []string{"RESULT: keep no fish",
			"no longer in salt than you stated"}},
		{[][2]string{{`"caught": "11:15"`, `"caught": "12:00"`}, {`"dock": "12:00"`, `"dock": "12:00"`},
			{`"people": 2`, `"people": 1`}}, []string{"another pair of hands"}},
	} {
		out, err := changed(t, c.changes...)
		require.NoError(t, err)
		trial.Page(t, out, 52)
		trial.Contains(t, out, c.wants...)
	}
}

// TestNoSmoker: a household that smokes nothing leaves the smoker out.
func TestNoSmoker(t *testing.T) {
	text, err := os.ReadFile("dock.json")
	require.NoError(t, err)
	from, to := strings.Index(string(text), `"smoker": {`), strings.Index(string(text), `"rule"`)
	out, err := changed(t, [2]string{string(text[from:to]), ""}, [2]string{`"fish": 16`, `"fish": 9`})
	require.NoError(t, err)
	trial.Page(t, out, 40)
	trial.Contains(t, out, "keep at most 9 fish")
	require.NotContains(t, strings.ToLower(out[:strings.Index(out, "CAUTIONS")]), "salt 1")
}

// TestBroken: one clear message that names the field, and nothing printed before it.
func TestBroken(t *testing.T) {
	for _, c := range []struct{ old, new, message string }{
		{`"Invented for demonstration: no such water, household, catch or rule exists."`, `""`, "about"},
		{`"2031-09-20"`, `"20.9.2031"`, "expected such as 2031-09-20"},
		{`"-06:00"`, `"mountain"`, "date and zone"},
		{`"4,350 ft"`, `"4350"`, "altitude: cannot read"},
		{`"4,350 ft"`, `"9,000 ft"`, "no process is published"},
		{`"caught": "11:15"`, `"caught": "noon"`, `"noon" is no clock time`},
		{`"caught": "11:15"`, `"caught": ""`, "caught"},
		{`"fish": 16`, `"fish": 0`, "fish 0 is out of range"},
		{`"fish": 16`, `"fish": 61`, "fish 61 is out of range: expected 1 to 60"},
		{`"fish": 16`, `"fish": -3`, "fish -3"},
		{`"6 lb 4 oz"`, `"6"`, "mass: cannot read"},
		{`"6 lb 4 oz"`, `"600 lb"`, "mass"},
		{`"ice": "32 °F",`, ``, "ice"},
		{`"ice": "32 °F"`, `"ice": "80 °F"`, "ice or water"},
		{`"people": 2`, `"people": 0`, "home.people 0"},
		{`"wake": "06:30"`, `"wake": "22:30"`, "people sleep"},
		{`"gut": {"least": "4 min", "most": "6 min"}`, `"gut": {"least": "9 min", "most": "6 min"}`,
			"home.gut.least 9 min"},
		{`"gut": {"least": "4 min", "most": "6 min"}`, `"gut": {"least": "0 min", "most": "6 min"}`,
			"home.gut.least 0 min"},
		{`"gut": {"least": "4 min", "most": "6 min"}`, `"gut": {"most": "6 min"}`, "least"},
		{`"waits": "2 h"`, `"waits": "20 h"`, "home.waits 20 h"},
		{`"canners": 1`, `"canners": 3`, "canner.canners 3"},
		{`"jar": "pint"`, `"jar": "half-gallon"`, "no process is published"},
		{`"jar": "pint"`, `"jar": "quart"`, "canner.vessel: jar pint does not fit"},
		{`"mouth": "pint regular"`, `"mouth": "bucket"`, "canner.mouth: unknown jar size"},
		{`"fill": "14 oz"`, `"fill": "20 oz"`, "canner.fill"},
		{`"diameter": "12 in"`, `"diameter": "9 in"`, "canner.vessel: vessel is unsuitable"},
		{`"fill": "14 oz",`, `"fill": "14 oz", "heatUp": "5 min",`, "canner.heatUp"},
		{`"fill": "14 oz",`, `"fill": "14 oz", "share": "5 %",`, "canner.share"},
		{`"batch": 3`, `"batch": 0`, "smoker.batch 0"},
		{`"thick": "1 in"`, `"thick": "4 in"`, "smoker.thick"},
		{`"fatness": "fat fish"`, `"fatness": "greasy"`, "fatness: unknown"},
		{`"excess": "30 %"`, `"excess": "300 %"`, "smoker.excess"},
		{`"for": "4 h"`, `"for": "1 h"`, "smoker.stages"},
		{`"kind": "dry"`, `"kind": "smoke"`, "smoker.stages"},
		{`"humidity": "50 %"`, `"humidity": "150 %"`, "smoker.outside"},
		{`"shape": "processed quota"`, `"shape": "handful"`, "shape: unknown shape"},
		{`"processed": 15`, `"possession": 15`, "rule: "},
		{`"anglers": 3`, `"anglers": 0`, "number of anglers 0"},
		{`"today": 0`, `"today": 2`, "held.today 2"},
		{`"preserved": 18`, `"preserved": -1`, "held.preserved -1"},
		{`"weeks": 48`, `"weeks": 0`, "year: "},
		{`"serving": "4 oz"`, `"serving": "0 oz"`, "year: serving of jars"},
		{`"intake":`, `"advisory": {"meals": -1, "period": "168 h"}, "intake":`, "advisory and intake: meals"},
		{`"smoked": {"meals": "25 %", "serving": "3 oz", "pack": "1 lb", "served": "70 %"}`, `"smoked": {}`, "year: smoked"},
		{`"dose": "0.0001 ppm"`, `"dose": "1 %"`, "advisory and intake: "},
		{`"place"`, `"plaice"`, "plaice"},
	} {
		out, err := changed(t, [2]string{c.old, c.new})
		require.ErrorContains(t, err, c.message)
		require.NotContains(t, err.Error(), "\n")
		require.Empty(t, out, c.message)
	}
	require.ErrorContains(t, run([]string{"-units", "stone"}, &bytes.Buffer{}), "expected both, us or metric")
	require.ErrorContains(t, run([]string{"-in", "missing.json"}, &bytes.Buffer{}), "missing.json")
	require.ErrorContains(t, run([]string{"-ics", filepath.Join(t.TempDir(), "no", "way.ics")}, &bytes.Buffer{}),
		"way.ics")
}
