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
	us := program.Printed(t)
	require.True(t, strings.HasPrefix(us, "VERDICT: NOT MET\n"), "the verdict comes first")
	require.Less(t, strings.Index(us, "\nWHY\n"), strings.Index(us, "\nWHAT TO DO NOW\n"))
	trial.Contains(t, us, "Invented for demonstration", "at 4,350 ft: 1 h 40 min at 13.0 psi or above", "48 min of 1 h 40 min",
		"21:56 to 22:03, sagged (the clock restarts): down to 13.30 psi", "too short: 48 min 40 s", "by 22:52 (+1 d): Within 24 hours after the heat", "for the full 100 min",
		"from 22:52 (+1 d): Jars that stood", "needle stands at 14.0 psi or above", "18 jars a load: 9 in a layer", "50 jars are 3 loads, the last of 14", "at most 15.8 oz",
		"CAUTIONS", "[1] USDA, Complete Guide to Home Canning, Guide 5")
	metric := program.Printed(t, "-units", "metric")
	trial.Contains(t, metric, "at 1,326 m", "13.0 psi (90 kPa)", "397 g in a pint regular jar, at most 447 g")
}

func TestGoodNight(t *testing.T) {
	good := program.Printed(t, "-in", "good.json")
	trial.Contains(t, good, "VERDICT: MET\n", "Nothing was found against it.", "check every seal", "1 h 42 min of 1 h 40 min")
	require.NotContains(t, good, "Within 24 hours after the heat")
}

// changed copies the demo input with texts replaced, a whole file where old is empty, and runs on it.
func changed(t *testing.T, replacements ...[3]string) (string, error) {
	t.Helper()
	return program.Changed(t, []string{"night.json", "night.csv"}, nil, replacements...)
}

// TestStillRunning: the same program while the canner stands on the stove.
func TestStillRunning(t *testing.T) {
	var marks [][3]string
	for _, m := range []string{`"heatOff": "22:52"`, `"pressureGone": "23:26"`, `"weightOff": "23:27"`, `"lidOff": "23:38"`} {
		field, _, _ := strings.Cut(m, ":")
		marks = append(marks, [3]string{"night.json", m, field + `: ""`})
	}
	text, err := os.ReadFile("night.csv")
	require.NoError(t, err)
	growing, _, found := strings.Cut(string(text), "\n100,")
	require.True(t, found)
	out, err := changed(t, append(marks, [3]string{"night.csv", "", growing + "\n"})...)
	require.NoError(t, err)
	trial.Contains(t, out, "VERDICT: CANNOT TELL", "Still owed: 1 h 2", "Keep going: the clock runs from minute 83", "lid off        not written down")
}

func TestTemperatures(t *testing.T) {
	out, err := changed(t, [3]string{"night.json", `"record": "pressure"`, `"record": "temperature"`},
		[3]string{"night.csv", "", "time (min),steam (°C)\n0,20\n30,119\n35,119\n40,119\n"})
	require.NoError(t, err)
	trial.Contains(t, out, "VERDICT: CANNOT TELL", "unobserved", "temperature required is that of pure steam")
}

// TestBroken: one clear message naming the field or the line, and nothing printed before it.
func TestBroken(t *testing.T) {
	for _, c := range []struct{ file, old, new, message string }{
		{"night.json", `"4,350 ft"`, `"4350"`, "altitude: cannot read \"4350\" as a length"},
		{"night.json", `"4,350 ft"`, `"9,000 ft"`, "no process is published"},
		{"night.json", `"jar": "pint",`, `"jar": "half-gallon",`, "no process is published"},
		{"night.json", `"gauge": "dial"`, `"gauge": "clock"`, "gauge: cannot read \"clock\""},
		{"night.json", `"readsHigh": "1 psi"`, `"readsHigh": "3 psi"`, "dial gauge is unsuitable"},
		{"night.json", `"timer": "21:13"`, `"timer": "quarter past"`, "marks.timer: cannot read \"quarter past\" as a clock time"},
		{"night.json", `"ventClosed": "21:05"`, `"ventClosed": "20:50"`, "mark of vent closed 10m0s does not fit: expected no earlier than steady steam"},
		{"night.json", `"maxGap": "5m"`, `"maxGap": "1h"`, "longest gap 1 h is out of range"},
		{"night.json", `"maxGap": "5m"`, `"maxGap": "five"`, "maxGap: time: invalid duration"},
		{"night.json", `"record": "pressure"`, `"record": "humidity"`, "record: expected pressure or temperature"},
		{"night.json", `"record": "pressure"`, `"record": "temperature"`, "night.csv: "},
		{"night.json", `"diameter": "12 in"`, `"diameter": "9 in"`, "vessel: vessel is unsuitable: 3 quart jars"},
		{"night.json", `"jar": "pint regular"`, `"jar": "quart wide"`, "vessel: jar quart does not fit"},
		{"night.json", `"jar": "pint regular"`, `"jar": "bucket"`, "vessel.jar: cannot read \"bucket\""},
		{"night.json", `"fill": "14 oz"`, `"fill": "14"`, "fill: cannot read"},
		{"night.json", `"jars": 50`, `"jars": 0`, "jars: jars 0 is out of range"},
		{"night.json", `"canners": 1`, `"canners": 3`, "canners 3 is out of range"},
		{"night.json", `"jars": 50`, `"jars": "many"`, "night.json: line "},
		{"night.json", `"place"`, `"plaice"`, "unknown field \"plaice\""},
		{"night.json", `"Invented for demonstration: no such water, household or run exists."`, `""`, "about: say what this run is"},
		{"night.json", `"log": "night.csv"`, `"log": "missing.csv"`, "missing.csv: no such file"},
		{"night.json", "", "", "night.json: line 1"},
		{"night.csv", "\n80,", "\n81,lots,", "night.csv: line "},
		{"night.csv", "\n80,", "\n70,", "the time runs backward"},
		{"night.csv", "(psi)", "(lb)", "night.csv: line 2"},
		{"night.csv", "", "time (min),dial (psi)\n", "no readings"},
	} {
		out, err := changed(t, [3]string{c.file, c.old, c.new})
		require.ErrorContains(t, err, c.message)
		require.NotContains(t, err.Error(), "\n")
		require.Empty(t, out, c.message)
	}
	require.ErrorContains(t, run([]string{"-units", "stone"}, &bytes.Buffer{}), "expected metric or us")
	require.ErrorContains(t, run([]string{"-in", "missing.json"}, &bytes.Buffer{}), "missing.json")
}
