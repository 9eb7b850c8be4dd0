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
	metric := program.Printed(t, "-units", "metric")
	for _, want := range []string{
		"Invented for demonstration", "a residual of -1.42 %", "716.43 g     1.15 g   213.17 g    58.47 g    10.78 g   1,000.00 g",
		"965.00 g + 0.00 g salt − 910.00 g = 55.00 g lost", "25.15 g/(25.15 g + 468.43 g) = 5.096 %", "left over: 0 g",
		"(1.5096 % of raw)", "(74.67 % of raw)", "by the scales 77.2 %", "fish factors 4.27 and 9.02", "servings in the fillet: 6.8",
		"CAUTIONS", "the three estimates differ by 16.1 %", "at or below 38 °F", "salt rubbed on is not salt taken up", "NDB 15081 (read)",
	} {
		require.True(t, strings.Contains(metric, want), "missing: %s", want)
	}
	us := program.Printed(t)
	for _, want := range []string{"25.271 oz   0.041 oz   7.519 oz", "27.231 oz", "left over: 0 g"} {
		require.True(t, strings.Contains(us, want), "missing: %s", want)
	}
}

func demo(t *testing.T, old, new string) string {
	t.Helper()
	text, err := os.ReadFile("fillet.json")
	require.NoError(t, err)
	require.True(t, strings.Contains(string(text), old), old)
	path := filepath.Join(t.TempDir(), "fillet.json")
	require.NoError(t, os.WriteFile(path, []byte(strings.Replace(string(text), old, new, 1)), 0o600))
	return path
}

func TestBelowTheLimitIsSaid(t *testing.T) {
	out := program.Printed(t, "-in", demo(t, `"salt": "24 g"`, `"salt": "12 g"`))
	require.Contains(t, out, "BELOW that limit")
	require.NotContains(t, out, "that TARGET is below")
	out = program.Printed(t, "-in", demo(t, `"waterPhaseSalt": "3.5 %"`, `"waterPhaseSalt": "3.49 %"`))
	require.Contains(t, out, "3.49 % water phase salt: take up")
	require.Contains(t, out, "that TARGET is below the limit, 3.5 %")

	// A hair below the limit is not told as the limit: 17.273 g of salt in 493.58 g of salt and water is 3.49953 %.
	out = program.Printed(t, "-in", demo(t, `"salt": "24 g"`, `"salt": "16.12 g"`))
	require.Contains(t, out, "this fillet: 3.49 %;")
	require.NotContains(t, out, "3.500 %")
	require.Contains(t, out, "BELOW that limit")
}

// Nothing that the file does not say is said of it: an analysis is not called invented, and samples nobody counted are not 0.
func TestSaysOnlyWhatIsKnown(t *testing.T) {
	require.NotContains(t, program.Printed(t), "(invented)")
	out := program.Printed(t, "-in", demo(t, "15081", "15082"))
	require.NotContains(t, out, "0 samples")
	require.Contains(t, out, "by a row whose number of samples is not known")
}

// Few households have an analysis: without one the rest is told.
func TestWithoutAnAnalysis(t *testing.T) {
	out := program.Printed(t, "-in", demo(t, `"laboratory": {"water": "60.4 %", "protein": "27.9 %", "fat": "7.4 %", "ash": "4.6 %"},`, ""))
	require.NotContains(t, out, "WHAT AN ANALYSIS SAYS")
	require.Contains(t, out, "WHAT A SERVING HOLDS")
	require.Contains(t, out, "this fillet: ")
}

// TestBroken: one clear message naming the field or the line, and nothing printed before it.
func TestBroken(t *testing.T) {
	for _, c := range []struct{ old, new, message string }{
		{`"mass": "1 kg"`, `"mass": "1"`, "cannot read \"1\" as a mass"},
		{`"mass": "1 kg"`, `"mass": "0 kg"`, "fillet.mass: expected more than 0 g"},
		{`15081`, `15999`, "fillet.food: food 15999 is not listed here"},
		{`15081`, `15179`, "fillet: sodium counted as salt"},
		{`15081`, `35065`, "fillet: food 35065 has no sodium"},
		{`"USDASR26"`, `"USDASR28"`, "fillet.food: food 15081 is not listed here"},
		{`"USDASR26"`, `"SR26"`, "SR26"},
		{`"910 g"`, `"990 g"`, "steps[1] (dry to a pellicle): final mass 990 g is out of range"},
		{`"772 g"`, `"100 g"`, "steps[3] (cool): final mass 100 g is out of range"},
		{`"salt": "24 g"`, `"salt": "-24 g"`, "steps[0] (cure and rinse): salt -24 g"},
		{`"salt": "24 g"`, `"salt": "240 g"`, "steps: the finished fillet: water phase salt "},
		{`"moisture": "60 %", "waterPhaseSalt": "3.5 %"`, `"moisture": "40 %", "waterPhaseSalt": "35 %"`, "target: water phase salt 35 %"},
		{`"fat": "3 g"`, `"fat": "300 g"`, "steps[2] (hot-smoke): what is taken out"},
		{`"moisture": "60 %"`, `"moisture": "75 %"`, "target: moisture to dry to 75 %"},
		{`"waterPhaseSalt": "3.5 %"`, `"waterPhaseSalt": "50 %"`, "target: water phase salt 50 %"},
		{`"water": "60.4 %"`, `"water": "6.4 %"`, "laboratory: water, protein, fat and ash together"},
		{`"serving": "4 oz"`, `"serving": "4 lb"`, "serving: "},
		{`"serving": "4 oz"`, `"serving": "0 oz"`, "serving: expected more than 0 g"},
		{`"title"`, `"headline"`, "unknown field \"headline\""},
		{`"serving": "4 oz"`, `"serving": "4 oz",`, "fillet.json: line"},
	} {
		var out bytes.Buffer
		err := run([]string{"-in", demo(t, c.old, c.new)}, &out)
		require.ErrorContains(t, err, c.message)
		require.NotContains(t, err.Error(), "\n")
		require.Empty(t, out.String())
	}
	for _, args := range [][]string{{"-units", "furlongs"}, {"-in", "none.json"}, {"stray"}} {
		var out bytes.Buffer
		require.Error(t, run(args, &out))
		require.Empty(t, out.String())
	}
}
