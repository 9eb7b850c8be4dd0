package main

import (
	"bytes"
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
		}
		trial.Contains(t, page, "Invented for demonstration", "60° on the salometer", "gives salt first",
			"Listeria monocytogenes", "(brinetable.growth-is-not-death)")
	}
	trial.Contains(t, program.Printed(t, "-units", "us"), "1.569 lb/gal", "1.48 lb of salt and 7.85 lb of water",
		"10.6 °F")
	trial.Contains(t, program.Printed(t, "-units", "metric", "-sources"), "188.0 g/L", "669.7 g of salt", "-11.9 °C",
		"\nSOURCES\n[1] ")
}

// 60 degrees of the salometer are 15.837 % by mass, 1.118 in gravity and 15.31 degrees Baumé, as the brine tables have
// them.
func TestByHand(t *testing.T) {
	page := program.Printed(t, "-math")
	trial.ByHand(t, page, 15)
	trial.Contains(t, page, "= 60.000 degrees of the salometer", "= 15.31 degrees Baumé", "= 669.6057 g", "= 0.88428")
	for _, share := range []string{"0.5 %", "26.395 %"} {
		out, err := program.Changed(t, []string{"brines.json"}, []string{"-math"},
			trial.Change{"brines.json", `"15.837 %"`, `"` + share + `"`})
		require.NoError(t, err)
		trial.ByHand(t, out, 15)
	}
}

func TestHelp(t *testing.T) { trial.Help(t, program) }

// The weakest strength of the list that holds an organism back is named, wherever it stands in the list.
func TestHoldsBack(t *testing.T) {
	out, err := program.Changed(t, []string{"brines.json"}, []string{"-units", "us"},
		trial.Change{"brines.json", `["15.837 %", `, `["1 %", `})
	require.NoError(t, err)
	trial.Contains(t, out, "Staphylococcus aureus toxin 0.85 10 % 20 %")
	require.NotContains(t, out, "15.84 %")
}

func TestBroken(t *testing.T) {
	for _, c := range []struct{ old, new, message string }{
		{`"60 °F"`, `"60"`, "temperature: cannot read"},
		{`"60 °F"`, `"100 °F"`, "strengths[0]: brine temperature 100 °F"},
		{`"1 gal"`, `"0 gal"`, "strengths[0]: "},
		{`"1 gal"`, `"1 lb"`, "volume: cannot read"},
		{`"3.5 %"`, `"3.5"`, "strengths[1]: cannot read"},
		{`"3.5 %"`, `"27 %"`, "strengths[1]: "},
		{`"3.5 %"`, `"-1 %"`, "strengths[1]: "},
		{`["15.837 %", "3.5 %", "5 %", "10 %", "20 %", "23 %", "26.395 %"]`, `[]`, "strengths: "},
		{`"volume"`, `"amount"`, "amount: unknown field"},
		{`"title"`, `"about"`, "about: "},
	} {
		out, err := program.Changed(t, []string{"brines.json"}, nil, trial.Change{"brines.json", c.old, c.new})
		require.ErrorContains(t, err, c.message)
		require.NotContains(t, err.Error(), "\n")
		require.Empty(t, out)
	}
	require.Error(t, run([]string{"-in", "none.json"}, &bytes.Buffer{}))
	require.Error(t, run([]string{"stray"}, &bytes.Buffer{}))
}
