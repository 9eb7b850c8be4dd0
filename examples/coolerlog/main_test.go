package main

import (
	"fmt"
	"io"
	"testing"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/yield/coldchain/keeping"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/examples/internal/trial"
)

var program = trial.Program(run)

func TestDemo(t *testing.T) {
	us := program.Printed(t, "-units", "us")
	trial.Page(t, us, 40)
	trial.System(t, us, "us")
	trial.Contains(t, us,
		"VERDICT: NOT MET: coho not met, whitefish met\n", "Invented for demonstration", "COHO: NOT MET\n", "WHITEFISH: MET\n",
		"kitchen two hours: 3 h 45 min recorded, at most 2 h published, too long by 105 min", "(2 h 00 min to 35 h 40 min); not met [2]",
		"Do: Do not eat, smoke, dry, can or freeze this fish", "Why: time until bled and gutted: 130 min stated", "Why: nothing was found against it.",
		"Do: Keep the fish at 38 °F or below", "Load 17.65 lb. For 68 lb of fish", "12.5 lb to chill the fish", "1.63 lb to hold the box",
		"12 h 40 min to 31 h 40 min into the kitchen refrigerator: 37.1 °F to 43 °F", "Above 40 °F: 24 h 37 min in all, first after 0 h 00 min",
		"174 % not met: table A-2, Listeria monocytogenes; spared, for the heat to come undoes it", "188 % not met: kitchen two hours", "98 % met: table A-2, Yersinia", "The refrigerator brought the fish to 43 °F: not met",
		"3 F° too warm for any food, 40 °F", "Listeria monocytogenes: 24 h allowed in place of 7 days", "From the hook to the ice: not met", "From the hook to the ice: met",
		"what is exceeded stays so", "1 h 10 min left of kitchen two hours", "3.5 days on melting ice", "whatever is left of that, the verdict above stands",
		"of 11.8 days printed for salmon: 8.3 days left on ice", "of 9.0 days to 20.0 days printed for freshwater fish of temperate waters: ", "22.7 % used", "The record must be of the warmest part inside the fish")
	metric := program.Printed(t, "-units", "metric", "-sources")
	trial.Page(t, metric, 40)
	trial.System(t, metric, "metric", "in °F")
	trial.Contains(t, metric, "2.8 °C to 6.1 °C", "Above 4.4 °C: 24 h 37 min in all",
		"(recalled: check the document before relying on it)")
}

func TestGolden(t *testing.T) {
	for _, system := range []string{"us", "metric", "both"} {
		trial.Golden(t, trial.Answer(program.Printed(t, "-units", system)), "testdata/"+system+".txt")
	}
}

func TestByHand(t *testing.T) {
	for _, system := range []string{"us", "metric", "both"} {
		trial.ByHand(t, program.Printed(t, "-math", "-units", system), 18)
	}
}

func TestHelp(t *testing.T) { trial.Help(t, program) }

func TestPicture(t *testing.T) {
	for _, system := range []string{"us", "metric"} {
		picture := trial.Picture(t, program, "-units", system)
		trial.Contains(t, picture, "coho: not met", "governs: kitchen two hours, 188 %",
			"governs: kitchen two hours, 42 %")
	}
}

// TestContradiction: a jump that no fish makes in ice is not believed, and what a broken probe shows is no
// reading.
func TestContradiction(t *testing.T) {
	out, err := changed(t, "whitefish.csv", "\n600,32.0", "\n600,110.0")
	require.NoError(t, err)
	trial.Page(t, out, 40)
	trial.Contains(t, out, "VERDICT: NOT MET: coho not met, whitefish cannot tell\n",
		"WHITEFISH: CANNOT TELL\nWhy: core: 110 °F (43.4 °C) recorded", "impossible, from minute 590 to 600")
	var broken []trial.Change
	for minute := 600; minute <= 650; minute += 10 {
		broken = append(broken, trial.Change{"whitefish.csv", fmt.Sprintf("\n%d,32.0", minute),
			fmt.Sprintf("\n%d,-127", minute)})
	}
	out, err = program.Changed(t, []string{"cooler.json", "coho.csv", "whitefish.csv"}, nil, broken...)
	require.NoError(t, err)
	trial.Page(t, out, 40)
	trial.Contains(t, out, "WHITEFISH: CANNOT TELL\nWhy: ", "Do: Part of the time is not recorded",
		"6 rows hold no reading, the first in line ")
}

// changed copies the demo input with one text replaced, and runs on it.
func changed(t *testing.T, file, old, new string) (string, error) {
	t.Helper()
	return program.Changed(t, []string{"cooler.json", "coho.csv", "whitefish.csv"}, nil, trial.Change{file, old, new})
}

func TestAGapIsNotTrusted(t *testing.T) {
	out, err := changed(t, "cooler.json", `"maxGap": "30 min"`, `"maxGap": "9 min"`)
	require.NoError(t, err)
	require.Contains(t, out, "WHITEFISH: CANNOT TELL\n")
	trial.Contains(t, out, "Part of the time is not recorded: treat the fish as past its limit")
	require.Contains(t, out, "what is not recorded may have used some or all of this already")
}

// What lies in a gap is neither guessed for an event nor drawn nor judged.
func TestAGapIsEmpty(t *testing.T) {
	var readings []series.Reading[units.Temperature]
	for _, minute := range []time.Duration{0, 10, 20, 200, 210} {
		readings = append(readings, series.Reading[units.Temperature]{At: minute * time.Minute,
			Value: units.Fahrenheit(34 + float64(minute)/10)})
	}
	record, err := series.New(readings)
	require.NoError(t, err)
	for minute, want := range map[time.Duration]bool{0: true, 5: true, 20: true, 21: false, 199: false, 200: true,
		205: true, 210: true} {
		require.Equal(t, want, recorded(record, minute*time.Minute, 10*time.Minute), minute)
	}
	f := fish{record: record, events: []fileEvent{{At: 30 * time.Minute, What: "away"}, {At: 100 * time.Minute,
		What: "in the refrigerator", Store: keeping.InRefrigerator}, {At: 190 * time.Minute, What: "home"}}}
	stages, err := f.stages(10 * time.Minute)
	require.NoError(t, err)
	require.False(t, stages[0].coldest.IsSet() || stages[1].warmest.IsSet())
	require.Nil(t, stages[1].store)
	require.Equal(t, []units.Temperature{units.Fahrenheit(54), units.Fahrenheit(55)},
		[]units.Temperature{stages[2].coldest, stages[2].warmest})
	used, err := cooler{file: file{MaxGap: 10 * time.Minute}}.usedOverTime(fish{record: record})
	require.NoError(t, err)
	require.Len(t, used, 2, "the gap parts what was used")
	for _, part := range used {
		for _, s := range part {
			require.True(t, recorded(record, s.at, 10*time.Minute), s.at)
		}
	}
}

func TestWhatIsNotKnownCannotBeTold(t *testing.T) {
	out, err := changed(t, "cooler.json", `"gutted": "10 min", "iced": "15 min", "in": "32 °F", "warmest": "71 °F"`, "")
	require.NoError(t, err)
	require.Contains(t, out, "From the hook to the ice: cannot tell")
}

func TestBrokenInput(t *testing.T) {
	for name, c := range map[string]struct{ file, old, new, says string }{
		"no about":        {"cooler.json", `"about": "Invented for demonstration: no such water, households, fish or log exist."`, `"about": ""`, "about: it is required"},
		"unknown field":   {"cooler.json", `"place"`, `"lake"`, "lake: unknown field"},
		"gap unreadable":  {"cooler.json", `"30 min"`, `"half an hour"`, "maxGap: "},
		"gap of nothing":  {"cooler.json", `"30 min"`, `"0 s"`, "longest gap"},
		"no such log":     {"cooler.json", "coho.csv", "chum.csv", "no such file"},
		"no name":         {"cooler.json", `"name": "coho"`, `"name": ""`, "fish[0].name: "},
		"event too late":  {"cooler.json", `"34 h 45 min"`, `"36h"`, "expected within the record"},
		"events in a mix": {"cooler.json", `"12 h 40 min"`, `"11h"`, "fish[0].events[3].at: 11 h: expected later"},
		"event unsaid": {"cooler.json", `"what": "back on ice"`, `"what": ""`,
			"fish[0].events[4].what: it is required"},
		"bad reading":     {"coho.csv", "\n10,", "\n10,cold", "set fish[0].format to {"},
		"time runs back":  {"whitefish.csv", "\n20,", "\n5,", "whitefish.csv"},
		"no unit":         {"coho.csv", "fish (°F)", "fish", "coho.csv"},
		"no such store":   {"cooler.json", `"store": "refrigerator"`, `"store": "cellar"`, "cellar"},
		"gutted before":   {"cooler.json", `"gutted": "2 h 10 min"`, `"gutted": "-2h"`, "coho: "},
		"iced in words":   {"cooler.json", `"iced": "2 h 10 min"`, `"iced": "at once"`, "fish[0].landing.iced: "},
		"like nothing":    {"cooler.json", `"keepsLike": "salmon"`, `"keepsLike": "unicorn"`, "fish[0].keepsLike: "},
		"gutted in words": {"cooler.json", `"gutted": true`, `"gutted": "yes"`, "line 22"},
		"ice grows":       {"cooler.json", `"7 lb 5 oz"`, `"11 lb"`, "ice.test: "},
		"ice unreadable":  {"cooler.json", `"68 lb"`, `"68"`, "ice.fish: "},
		"trip too long":   {"cooler.json", `"for": "12 h"`, `"for": "1200h"`, "ice: "},
		"not json":        {"cooler.json", "{", "[", "expected an object, not a list"},
	} {
		t.Run(name, func(t *testing.T) {
			out, err := changed(t, c.file, c.old, c.new)
			require.ErrorContains(t, err, c.says)
			require.Empty(t, out)
		})
	}
	for _, args := range [][]string{{"-units", "kelvin"}, {"cooler.json"}, {"-in", "nowhere.json"}} {
		require.Error(t, run(args, io.Discard), "%v", args)
	}
}
