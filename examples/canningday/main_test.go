package main

import (
	"bytes"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/examples/internal/trial"
)

var program = trial.Program(run)

func TestDemo(t *testing.T) {
	us := program.Printed(t, "-units", "us")
	trial.Page(t, us, 44)
	trial.System(t, us, "us")
	trial.Contains(t, us, "VERDICT: NOT MET: raw fish in pint jars, dial gauge, at 4,350 ft\n",
		"Invented for demonstration", "100 min at 13 psi or above",
		"time at pressure: 48 min 40 s recorded", "(21:56 to 22:03); a remark", "by 22:52 (+1 d): Within 24 hours after the heat",
		"from 22:52 (+1 d): Jars that stood", "stands at 14 psi or above", "18 jars a load: 9 in each of 2 layers", "50 jars are 3 loads, the last of 14",
		"at most 15.77 oz", "CAUTIONS", "Sources: ")
	require.Less(t, strings.Index(us, "\nWhy: "), strings.Index(us, "\nDo: "))
	metric := program.Printed(t, "-units", "metric", "-sources")
	trial.Page(t, metric, 44)
	trial.System(t, metric, "metric", `"dial (psi)" in psi`, "9 in each")
	trial.Contains(t, metric, "at 1,325.9 m", "at 89.7 kPa or above",
		"396.9 g in a pint regular jar, at most 447.2 g", "\nSOURCES\n[1] USDA, Complete Guide to Home Canning, Guide 5")
}

func TestGolden(t *testing.T) {
	for _, system := range []string{"us", "metric", "both"} {
		trial.Golden(t, trial.Answer(program.Printed(t, "-units", system)), "testdata/"+system+".txt")
	}
}

func TestByHand(t *testing.T) {
	for _, in := range []string{"night.json", "good.json"} {
		for _, system := range []string{"us", "metric", "both"} {
			trial.ByHand(t, program.Printed(t, "-math", "-in", in, "-units", system), 14)
		}
	}
	trial.Contains(t, program.Printed(t, "-math"), "= 83.333333 min", "= 48.6667 min", "= 241.19 °F", "= 116.22 °C")
}

func TestHelp(t *testing.T) { trial.Help(t, program) }

func TestPicture(t *testing.T) {
	for _, system := range []string{"us", "metric"} {
		picture := trial.Picture(t, program, "-units", system)
		trial.Contains(t, picture, "required: ", "the stretch that counts: 22:03 to 22:52")
	}
}

func TestGoodNight(t *testing.T) {
	good := program.Printed(t, "-in", "good.json")
	trial.Contains(t, good, "VERDICT: MET: ", "Why: nothing was found against it.", "check every seal",
		"102 min 10 s of 100 min")
	require.NotContains(t, good, "Within 24 hours after the heat")
}

// TestContradiction: a needle that stands when the vent is open says that something is wrong with the record,
// whatever it held.
func TestContradiction(t *testing.T) {
	out, err := program.Changed(t, []string{"good.json", "good.csv"}, nil, [3]string{"good.json",
		`"ventClosed": "21:05"`, `"ventClosed": "21:12"`})
	require.NoError(t, err)
	trial.Page(t, out, 50)
	require.Contains(t, strings.SplitN(out, "\n", 2)[0], "VERDICT: CANNOT TELL")
	require.Contains(t, strings.SplitN(out, "\n", 3)[1], "Why: pressure while the vent was open: 14.2 psi")
	trial.Contains(t, out, "impossible, at minute 32 (21:12); cannot tell", "Do: by 22:54 (+1 d): Within 24 hours")
}

// changed copies the demo input with texts replaced, a whole file where old is empty, and runs on it.
func changed(t *testing.T, replacements ...[3]string) (string, error) {
	t.Helper()
	return program.Changed(t, []string{"night.json", "night.csv"}, nil, replacements...)
}

// TestStillRunning: the same program while the canner stands on the stove.
func TestStillRunning(t *testing.T) {
	var marks [][3]string
	for _, m := range []string{`"heatOff": "22:52"`, `"pressureGone": "23:26"`, `"weightOff": "23:27"`,
		`"lidOff": "23:38"`} {
		field, _, _ := strings.Cut(m, ":")
		marks = append(marks, [3]string{"night.json", m, field + `: ""`})
	}
	text, err := os.ReadFile("night.csv")
	require.NoError(t, err)
	growing, _, found := strings.Cut(string(text), "\n100,")
	require.True(t, found)
	out, err := changed(t, append(marks, [3]string{"night.csv", "", growing + "\n"})...)
	require.NoError(t, err)
	trial.Contains(t, out, "VERDICT: CANNOT TELL", "Still owed: ", "Keep going: the clock runs from minute 83",
		"lid off        not written down")
}

func TestTemperatures(t *testing.T) {
	out, err := changed(t, [3]string{"night.json", `"record": "pressure"`, `"record": "temperature"`},
		[3]string{"night.csv", "", "time (min),steam (°C)\n0,20\n30,119\n35,119\n40,119\n"})
	require.NoError(t, err)
	trial.Contains(t, out, "VERDICT: CANNOT TELL", "not observed", "temperature required is that of pure steam")
}

// TestQuestions: what the record does not say is asked, and refused until it is answered in the input.
func TestQuestions(t *testing.T) {
	lots := [3]string{"night.csv", "\n80,", "\n79,lots\n80,"}
	_, err := changed(t, lots)
	require.ErrorContains(t, err, `does "lots" mean that there is no reading?`)
	require.ErrorContains(t, err, `set format to {"missing":["lots"]} in night.json`)
	out, err := changed(t, lots, [3]string{"night.json", `"record": "pressure",`,
		`"record": "pressure", "format": {"missing":["lots"]},`})
	require.NoError(t, err)
	trial.Contains(t, out, "VERDICT: NOT MET")
}

// TestBroken: one clear message naming the field or the line, and nothing printed before it.
func TestBroken(t *testing.T) {
	for _, c := range []struct{ file, old, new, message string }{
		{"night.json", `"4,350 ft"`, `"4350"`, "altitude: cannot read \"4350\" as a length"},
		{"night.json", `"4,350 ft"`, `"9,000 ft"`, "no process is published"},
		{"night.json", `"jar": "pint",`, `"jar": "half-gallon",`, "no process is published"},
		{"night.json", `"gauge": "dial"`, `"gauge": "clock"`, "gauge: unknown gauge \"clock\""},
		{"night.json", `"readsHigh": "1 psi"`, `"readsHigh": "3 psi"`, "dial gauge is unsuitable"},
		{"night.json", `"timer": "21:13"`, `"timer": "quarter past"`, "marks.timer: \"quarter past\" is no clock time"},
		{"night.json", `"ventClosed": "21:05"`, `"ventClosed": "20:50"`,
			"mark of vent closed 10 min does not fit: expected no earlier than steady steam"},
		{"night.json", `"maxGap": "5 min"`, `"maxGap": "1h"`, "longest gap 1 h is out of range"},
		{"night.json", `"maxGap": "5 min"`, `"maxGap": "five"`, "maxGap: "},
		{"night.json", `"record": "pressure"`, `"record": "humidity"`,
			"record: \"humidity\": expected pressure or temperature"},
		{"night.json", `"record": "pressure"`, `"record": "temperature"`, "night.csv: "},
		{"night.json", `"diameter": "12 in"`, `"diameter": "9 in"`, "vessel: vessel is unsuitable: 3 quart jars"},
		{"night.json", `"jar": "pint regular"`, `"jar": "quart wide"`, "vessel: jar quart does not fit"},
		{"night.json", `"jar": "pint regular"`, `"jar": "bucket"`, "vessel.jar: unknown jar size \"bucket\""},
		{"night.json", `"fill": "14 oz"`, `"fill": "14"`, "fill: cannot read"},
		{"night.json", `"jars": 50`, `"jars": 0`, "jars: jars 0 is out of range"},
		{"night.json", `"canners": 1`, `"canners": 3`, "canners 3 is out of range"},
		{"night.json", `"jars": 50`, `"jars": "many"`, "night.json: line "},
		{"night.json", `"place"`, `"plaice"`, "plaice"},
		{"night.json", `"Invented for demonstration: no such water, household or run exists."`, `""`, "about"},
		{"night.json", `"log": "night.csv"`, `"log": "missing.csv"`, "missing.csv: no such file"},
		{"night.json", "", "", "night.json: line 1"},
		{"night.csv", "\n80,", "\n70,", "the time runs backward"},
		{"night.csv", "(psi)", "(lb)", "night.csv: wrong unit"},
		{"night.csv", "", "time (min),dial (psi)\n", "night.csv: "},
	} {
		out, err := changed(t, [3]string{c.file, c.old, c.new})
		require.ErrorContains(t, err, c.message)
		require.NotContains(t, err.Error(), "\n")
		require.Empty(t, out, c.message)
	}
	require.ErrorContains(t, run([]string{"-units", "stone"}, &bytes.Buffer{}), "expected both, us or metric")
	require.ErrorContains(t, run([]string{"-in", "missing.json"}, &bytes.Buffer{}), "missing.json")
}
