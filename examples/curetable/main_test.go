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
		"Invented for demonstration", "chinook A, left           2 lb 4 oz  1 1/4 in    1.30 oz    2.59 oz", "of table salt [5]",
		"layer 1 from the bottom: fillets [1 2]", "chinook A, left      1 1/4 in: 15 h [8]", "1.43 % (2.52 %) 4.39 %", "1,020.58 g × 3.6 % = 36.74 g",
		"0.035/0.965 × 527.03 g = 19.12 g: the dose holds it", "E × 0.3586/(1 + E × 0.3586) = 1.43 %", "CAUTIONS", "at or below 38 °F", "[14 computed]",
	} {
		require.True(t, strings.Contains(us, want), "missing: %s", want)
	}
	metric := program.Printed(t, "-units", "metric")
	for _, want := range []string{"1.021 kg     32 mm     36.8 g     73.5 g", "under 214.3 g of the mix"} {
		require.True(t, strings.Contains(metric, want), "missing: %s", want)
	}
}

// TestBroken: one clear message naming the field or the line, and nothing printed before it.
func TestBroken(t *testing.T) {
	demo, err := os.ReadFile("fillets.json")
	require.NoError(t, err)
	for _, c := range []struct{ old, new, message string }{
		{`"2 lb 4 oz"`, `"2 lb 4"`, "cannot read \"2 lb 4\" as a mass"},
		{`"2 lb 4 oz"`, `"0 lb"`, "fillet 1: fillet 0 g is out of range"},
		{`"1 1/4 in"`, `"40 in"`, "fillets[0] (chinook A, left): thickness"},
		{`"71.64 %"`, `"100 %"`, "fillets[0] (chinook A, left): water of the raw fish"},
		{`"36 g/kg"`, `"36"`, "cannot read \"36\" as a ratio"},
		{`"36 g/kg"`, `"200 %"`, "salt to fish 200 % is out of range"},
		{`"hours": 36`, `"hours": 0`, "cure.hours: expected more than 0"},
		{`"perLayer": 2`, `"perLayer": 0`, "perLayer: expected at least 1"},
		{`"table salt"`, `"sea salt"`, "salt: no weight per volume is published"},
		{`"15 %"`, `"80 %"`, "fillets[0] (chinook A, left): water lost in drying"},
		{`"title"`, `"headline"`, "unknown field \"headline\""},
		{`"perLayer": 2`, `"perLayer": 2,`, "fillets.json: line"},
	} {
		text := string(demo)
		require.True(t, strings.Contains(text, c.old), c.old)
		path := filepath.Join(t.TempDir(), "fillets.json")
		require.NoError(t, os.WriteFile(path, []byte(strings.Replace(text, c.old, c.new, 1)), 0o600))
		var out bytes.Buffer
		err := run([]string{"-in", path}, &out)
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
