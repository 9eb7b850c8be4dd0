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
		trial.Contains(t, page, "Invented for demonstration", "wet bulb", "(smoke.dry-cold)")
	}
	trial.Contains(t, program.Printed(t, "-sources"), "\nSOURCES\n[1] ")
}

// The way by hand comes out at any altitude, speed and activity.
func TestByHand(t *testing.T) {
	trial.ByHand(t, program.Printed(t, "-math"), 20)
	for _, c := range []struct{ old, new string }{
		{`"4,350 ft"`, `"0 ft"`}, {`"4,350 ft"`, `"10,000 ft"`}, {`"98 %"`, `"100 %"`}, {`"98 %"`, `"76 %"`},
		{`"fillet"`, `"speed": "1 m/s", "fillet"`}, {`"85 °F"`, `"40 °C"`}, {`"40 %"`, `"85 %"`},
	} {
		out, err := program.Changed(t, []string{"drying.json"}, []string{"-math"},
			trial.Change{"drying.json", c.old, c.new})
		require.NoError(t, err, c.new)
		trial.ByHand(t, out, 20)
	}
	frozen, err := program.Changed(t, []string{"drying.json"}, []string{"-math"},
		trial.Change{"drying.json", `"60 °F", "humidity": "40 %"`, `"33 °F", "humidity": "5 %"`},
		trial.Change{"drying.json", `"85 °F"`, `"35 °F"`})
	require.NoError(t, err)
	trial.Contains(t, frozen, "below freezing")
}

func TestHelp(t *testing.T) { trial.Help(t, program) }

// In thin air a wet surface stays cooler.
func TestAltitude(t *testing.T) {
	high := program.Printed(t, "-units", "metric")
	low, err := program.Changed(t, []string{"drying.json"}, []string{"-units", "metric"},
		trial.Change{"drying.json", `"4,350 ft"`, `"0 ft"`})
	require.NoError(t, err)
	require.NotEqual(t, trial.First(high, 2), trial.First(low, 2))
	trial.Contains(t, low, "The dryer is at 0 mm")
}

func TestBroken(t *testing.T) {
	for _, c := range []struct{ old, new, message string }{
		{`"4,350 ft"`, `"4350"`, "altitude: cannot read"},
		{`"4,350 ft"`, `"40,000 ft"`, "altitude"},
		{`"40 %"`, `"140 %"`, "outside: relative humidity"},
		{`"85 °F"`, `"20 °F"`, "dryer: "},
		{`"85 °F"`, `"85"`, "dryer: cannot read"},
		{`"98 %"`, `"50 %"`, "water activity 50 %"},
		{`"98 %"`, `"101 %"`, "water activity 101 %"},
		{`"40 %"`, `"100 %"`, ""},
		{`"1.5 lb"`, `"0 lb"`, "fillet"},
		{`"90 sq in"`, `"0 sq in"`, "area"},
		{`"90 sq in"`, `"90 in"`, "area: cannot read"},
		{`"1 h"`, `"-1 h"`, "drying time"},
		{`"during"`, `"for"`, "for: unknown field"},
		{`"fillet"`, `"speed": "0 m/s", "fillet"`, "speed: "},
	} {
		out, err := program.Changed(t, []string{"drying.json"}, nil, trial.Change{"drying.json", c.old, c.new})
		if c.message == "" {
			require.NoError(t, err, "saturated air outside dries once it is heated")
			continue
		}
		require.ErrorContains(t, err, c.message)
		require.NotContains(t, err.Error(), "\n")
		require.Empty(t, out)
	}
	require.Error(t, run([]string{"-in", "none.json"}, &bytes.Buffer{}))
	require.Error(t, run([]string{"stray"}, &bytes.Buffer{}))
}
