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
			trial.System(t, page, system)
		}
		trial.Contains(t, page, "Invented for demonstration", "VERDICT: MET", "51 min to 90 min",
			"4 h 51 min to 14 h 34 min", "3 daily loads", "all of it fits", "(freezing.raw-counts-from-last)")
	}
	trial.Contains(t, program.Printed(t, "-sources"), "\nSOURCES\n[1] ")
}

func TestByHand(t *testing.T) {
	page := program.Printed(t, "-math")
	trial.ByHand(t, page, 18)
	trial.Contains(t, page, "= 89.567 min", "= 14.562 h", "= 14.0000 lb a day")
	for _, c := range []struct{ old, new string }{{`"1 1/4 in"`, `"3 in"`}, {`"1 1/4 in"`, `"1/2 in"`},
		{`"-4 °F"`, `"-20 °F"`}, {`"34 °F"`, `"50 °F"`}} {
		out, err := program.Changed(t, []string{"freezer.json"}, []string{"-math"},
			trial.Change{"freezer.json", c.old, c.new})
		require.NoError(t, err, c.new)
		trial.ByHand(t, out, 18)
	}
}

func TestHelp(t *testing.T) { trial.Help(t, program) }

// A warmer freezer or a shorter time does not pass, and what would do is said.
func TestVerdicts(t *testing.T) {
	for _, c := range []struct{ old, new, verdict, line string }{
		{`"-4 °F"`, `"-3 °F"`, "VERDICT: NOT MET", "too warm"},
		{`"-4 °F"`, `"-5 °F"`, "VERDICT: MET", "Food Code, 7 days (deciding): met"},
		{`"8 d"`, `"167 h"`, "VERDICT: NOT MET", "to meet it: "},
		{`"8 d"`, `"168 h"`, "VERDICT: MET", "Nothing else is mended"},
		{`"8 d"`, `"10 h"`, "VERDICT: NOT MET", "Food Code, 7 days (deciding): not met"},
		{`"60 lb"`, `"240 lb"`, "VERDICT: MET", "25 lb is TOO MUCH"},
		{`"1 1/4 in"`, `"7 in"`, "VERDICT: NOT MET", "(parasites.thick-fish)"},
	} {
		out, err := program.Changed(t, []string{"freezer.json"}, []string{"-units", "us"},
			trial.Change{"freezer.json", c.old, c.new})
		require.NoError(t, err, c.new)
		trial.Contains(t, out, c.verdict, c.line)
	}
}

func TestBroken(t *testing.T) {
	for _, c := range []struct{ old, new, message string }{
		{`"71.6 %"`, `"71.6"`, "flesh.water: cannot read"},
		{`"71.6 %"`, `"30 %"`, "freezer: "},
		{`"1 1/4 in"`, `"1 1/4"`, "thickness: cannot read"},
		{`"1 1/4 in"`, `"0 in"`, "chilled: "},
		{`"55 °F"`, `"34 °F"`, "chilled: "},
		{`"34 °F"`, `"31 °F"`, "chilled: "},
		{`"-4 °F"`, `"40 °F"`, "freezer: "},
		{`"5 °F"`, `"20 °F"`, "freezer: "},
		{`"low": "6 W/(m² K)"`, `"low": "16 W/(m² K)"`, "film: "},
		{`"8 d"`, `"-8 d"`, "time in the freezer"},
		{`"7 cu ft"`, `"7 ft"`, "load.room: "},
		{`"7 cu ft"`, `"0 cu ft"`, "load: "},
		{`"30 lb"`, `"0 lb"`, "load: "},
		{`"stored"`, `"kept"`, "kept: unknown field"},
	} {
		out, err := program.Changed(t, []string{"freezer.json"}, nil, trial.Change{"freezer.json", c.old, c.new})
		require.ErrorContains(t, err, c.message)
		require.NotContains(t, err.Error(), "\n")
		require.Empty(t, out)
	}
	require.Error(t, run([]string{"-in", "none.json"}, &bytes.Buffer{}))
	require.Error(t, run([]string{"stray"}, &bytes.Buffer{}))
}
