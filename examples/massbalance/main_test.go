package main

import (
	"bytes"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/examples/internal/trial"
)

var program = trial.Program(run)

func TestPages(t *testing.T) {
	for _, system := range []string{"us", "metric", "both"} {
		page := program.Printed(t, "-units", system)
		trial.Page(t, page, 40)
		trial.Golden(t, trial.Answer(page), "testdata/"+system+".txt")
		if system != "both" {
			trial.System(t, page, system, "reservoir at 4,350 ft")
			_, detail, _ := strings.Cut(page, "STEP BY STEP")
			trial.System(t, detail, system)
		}
		trial.Contains(t, page, "Invented for demonstration", "a residual of -1.42 %", "sodium 0.046 % counted as salt",
			"nothing left over", "by the scales 77.2 %",
			"fish factors 4.27 and 9.02", "6.8 servings", "(yield.ties-differ)", "at or below 38 °F",
			"Salt rubbed on is not salt taken up", "207 kcal")
	}
	metric := program.Printed(t, "-units", "metric")
	trial.Contains(t, metric, "716.4 g", "take up 15.1 g of salt (1.51 % of raw)", "(74.67 % of raw)")
	trial.Contains(t, program.Printed(t, "-sources"), "NDB 15081 (read)")
}

// The way by hand has every figure of the steps, from the printed row to a serving.
func TestByHand(t *testing.T) {
	page := program.Printed(t, "-math")
	trial.ByHand(t, page, 60)
	trial.Contains(t, page, "w = M × a / sum = 1000 × 72.66 / 101.42 = 716.427 g", "= 5.096 %", "= 15.0958 g",
		"= 206.6 kcal", "= 1024.00 g, smoked fillet")
	without, err := changed(t, "15081", "15082")
	require.NoError(t, err)
	require.NotContains(t, without, "BY HAND")
}

func TestHelp(t *testing.T) { trial.Help(t, program) }

// changed runs the program in metric units on the demo with one text replaced.
func changed(t *testing.T, old, new string) (string, error) {
	t.Helper()
	return program.Changed(t, []string{"fillet.json"}, []string{"-units", "metric"},
		trial.Change{"fillet.json", old, new})
}

func printed(t *testing.T, old, new string) string {
	t.Helper()
	out, err := changed(t, old, new)
	require.NoError(t, err)
	return out
}

func TestBelowTheLimitIsSaid(t *testing.T) {
	out := printed(t, `"salt": "24 g"`, `"salt": "12 g"`)
	require.Contains(t, out, "It is BELOW the strictest published limit, 3.5 %")
	require.NotContains(t, out, "That TARGET is below")
	out = printed(t, `"waterPhaseSalt": "3.5 %"`, `"waterPhaseSalt": "3.49 %"`)
	trial.Contains(t, out, "3.49 % water phase salt: take up", "That TARGET is below the limit, 3.5 %")

	// Just below the limit is not shown as the limit: 17.273 g of salt in 493.58 g of salt and water is 3.49953 %.
	out = printed(t, `"salt": "24 g"`, `"salt": "16.12 g"`)
	trial.Contains(t, out, "RESULT: 3.49 % water phase salt", "BELOW")
	require.NotContains(t, out, "RESULT: 3.5 %")
}

// Nothing that the file does not say is said of it: samples that nobody counted are not 0.
func TestSaysOnlyWhatIsKnown(t *testing.T) {
	out := printed(t, "15081", "15082")
	require.NotContains(t, out, "0 samples")
	trial.Contains(t, out, "by a row whose number of samples is not known")
}

// Few households have an analysis: without one the rest is there.
func TestWithoutAnAnalysis(t *testing.T) {
	const analysis = `"laboratory": {"water": "60.4 %", "protein": "27.9 %", "fat": "7.4 %", "ash": "4.6 %"},`
	out := printed(t, analysis, "")
	require.NotContains(t, out, "WHAT AN ANALYSIS SAYS")
	trial.Contains(t, out, "WHAT A SERVING HOLDS", "RESULT: 5.09 %")
	math, err := program.Changed(t, []string{"fillet.json"}, []string{"-math"},
		trial.Change{"fillet.json", analysis, ""})
	require.NoError(t, err)
	trial.ByHand(t, math, 55)
}

// TestBroken: one clear message naming the field or the line, and nothing printed before it.
func TestBroken(t *testing.T) {
	for _, c := range []struct{ old, new, message string }{
		{`"mass": "1 kg"`, `"mass": "1"`, "cannot read \"1\" as a mass"},
		{`"mass": "1 kg"`, `"mass": "0 kg"`, "fillet.mass: expected more than 0 g"},
		{`15081`, `15999`, "fillet.food: "},
		{`15081`, `15179`, "fillet: sodium counted as salt"},
		{`15081`, `35065`, "fillet: food 35065 has no sodium"},
		{`"USDASR26"`, `"USDASR28"`, "fillet.food: "},
		{`"USDASR26"`, `"SR26"`, "fillet.release: "},
		{`"910 g"`, `"990 g"`, "steps[1] (dry to a pellicle): final mass 990 g is out of range"},
		{`"772 g"`, `"100 g"`, "steps[3] (cool): final mass 100 g is out of range"},
		{`"salt": "24 g"`, `"salt": "-24 g"`, "steps[0] (cure and rinse): salt"},
		{`"salt": "24 g"`, `"salt": "240 g"`, "steps: the finished fillet: water phase salt "},
		{`"moisture": "60 %", "waterPhaseSalt": "3.5 %"`, `"moisture": "40 %", "waterPhaseSalt": "35 %"`,
			"target: water phase salt 35 %"},
		{`"fat": "3 g"`, `"fat": "300 g"`, "steps[2] (hot-smoke): "},
		{`"moisture": "60 %"`, `"moisture": "75 %"`, "target: moisture to dry the piece to 75 %"},
		{`"waterPhaseSalt": "3.5 %"`, `"waterPhaseSalt": "50 %"`, "target: water phase salt 50 %"},
		{`"water": "60.4 %"`, `"water": "6.4 %"`, "laboratory: water, protein, fat and ash together"},
		{`"water": "60.4 %", `, ``, "laboratory.water: it is required"},
		{`"serving": "4 oz"`, `"serving": "4 lb"`, "serving: "},
		{`"serving": "4 oz"`, `"serving": "0 oz"`, "serving: expected more than 0 g"},
		{`"title"`, `"headline"`, "headline: unknown field"},
		{`"serving": "4 oz"`, `"serving": "4 oz",`, "fillet.json: line"},
	} {
		out, err := changed(t, c.old, c.new)
		require.ErrorContains(t, err, c.message)
		require.NotContains(t, err.Error(), "\n")
		require.Empty(t, out)
	}
	for _, args := range [][]string{{"-units", "furlongs"}, {"-in", "none.json"}, {"stray"}} {
		var out bytes.Buffer
		require.Error(t, run(args, &out))
		require.Empty(t, out.String())
	}
}
