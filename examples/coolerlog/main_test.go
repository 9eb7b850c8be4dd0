package main

import (
	"bytes"
	"encoding/xml"
	"errors"
	"io"
	"os"
	"path/filepath"
	"strings"
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
	us := program.Printed(t)
	for _, want := range []string{
		"Invented for demonstration", "COHO\n----\nVERDICT: EXCEEDED", "kitchen two hours: ran out after 2 h 00 min",
		"table A-2, Listeria monocytogenes: ran out after 26 h 41 min [1] [2 recalled]", "Yersinia enterocolitica: ran out after 15 h 03 min [2 recalled]", "now: Do not eat, smoke, dry, can or freeze this fish",
		"4  12 h 40 min    31 h 40 min     37.1 °F   43.0 °F  into the kitchen refrigerator",
		"above 40.0 °F  22 h 19 min in all, first after 0 h 00 min", "  126 %  exceeded    table A-2, Listeria monocytogenes",
		"WHITEFISH\n---------\nVERDICT: WITHIN", "now: Keep the fish at 38 °F (3.3 °C) or below", "##################.    91 %  within      table A-2, Yersinia",
		"the refrigerator brought the fish to 43.0 °F:", "3.0 °F too warm for any food, 40.0 °F", "Listeria monocytogenes: 24 h allowed in place of 168 h",
		"from the hook to the ice: exceeded", "exceeded    bleed and gut: at once, never later than 2 hours", "from the hook to the ice: within",
		"what is exceeded stays so", "  0 h 5", "left of kitchen two hours", "worth 3.5 days on melting ice", "whatever is left of that, the verdict above stands", "of 11.8 days printed for salmon: 8.3 days left on ice",
		"worth 1.1 days on melting ice", "of 9.0 days to 20.0 days printed for freshwater fish of temperate waters: ", "to botulinum toxin in food without air: 22.7 % used",
		"ICE FOR THE NEXT TRIP", "to chill the fish    12 lb 8 oz", "together             ", "CAUTIONS", "the warmest part inside the fish, not of the air", "(recalled: check the print before relying on it)",
	} {
		require.True(t, strings.Contains(us, want), "missing: %s", want)
	}
	metric := program.Printed(t, "-units", "metric")
	for _, want := range []string{"2.8 °C    6.1 °C  into the kitchen refrigerator", "above 4.4 °C   22 h 19 min in all"} {
		require.True(t, strings.Contains(metric, want), "missing: %s", want)
	}
}

func TestPictureIsXML(t *testing.T) {
	for _, system := range []string{"us", "metric"} {
		path := filepath.Join(t.TempDir(), "cooler.svg")
		program.Printed(t, "-svg", path, "-units", system)
		data, err := os.ReadFile(path)
		require.NoError(t, err)
		require.Contains(t, string(data), "coho: exceeded")
		decoder := xml.NewDecoder(bytes.NewReader(data))
		for {
			if _, err = decoder.Token(); err != nil {
				break
			}
		}
		require.True(t, errors.Is(err, io.EOF), "%v", err)
	}
}

// changed copies the demo input with one text replaced, and runs on it.
func changed(t *testing.T, file, old, new string) (string, error) {
	t.Helper()
	return program.Changed(t, []string{"cooler.json", "coho.csv", "whitefish.csv"}, nil, trial.Change{file, old, new})
}

func TestAGapIsNotTrusted(t *testing.T) {
	out, err := changed(t, "cooler.json", `"maxGap": "30m"`, `"maxGap": "9m"`)
	require.NoError(t, err)
	require.Contains(t, out, "WHITEFISH\n---------\nVERDICT: CANNOT TELL")
	require.Contains(t, out, "are not recorded: treat the fish as exceeded")
	require.Contains(t, out, "what is not recorded may have used some or all of this already")
}

// What lies in a gap is neither guessed for an event nor drawn nor judged.
func TestAGapIsEmpty(t *testing.T) {
	var readings []series.Reading[units.Temperature]
	for _, minute := range []time.Duration{0, 10, 20, 200, 210} {
		readings = append(readings, series.Reading[units.Temperature]{At: minute * time.Minute, Value: units.Fahrenheit(34 + float64(minute)/10)})
	}
	record, err := series.New(readings)
	require.NoError(t, err)
	for minute, want := range map[time.Duration]bool{0: true, 5: true, 20: true, 21: false, 199: false, 200: true, 205: true, 210: true} {
		require.Equal(t, want, recorded(record, minute*time.Minute, 10*time.Minute), minute)
	}
	f := fish{record: record, events: []event{{at: 30 * time.Minute, what: "away"}, {at: 100 * time.Minute, what: "in the refrigerator", store: keeping.InRefrigerator}, {at: 190 * time.Minute, what: "home"}}}
	stages, err := f.stages(10 * time.Minute)
	require.NoError(t, err)
	require.False(t, stages[0].coldest.IsSet() || stages[1].warmest.IsSet())
	require.Nil(t, stages[1].store)
	require.Equal(t, []units.Temperature{units.Fahrenheit(54), units.Fahrenheit(55)}, []units.Temperature{stages[2].coldest, stages[2].warmest})
	used, err := cooler{maxGap: 10 * time.Minute}.usedOverTime(record)
	require.NoError(t, err)
	for _, s := range used {
		require.True(t, recorded(record, s.at, 10*time.Minute), s.at)
	}
}

func TestWhatIsNotKnownCannotBeTold(t *testing.T) {
	out, err := changed(t, "cooler.json", `"gutted": "10m", "iced": "15m", "in": "32 °F", "warmest": "71 °F"`, "")
	require.NoError(t, err)
	require.Contains(t, out, "from the hook to the ice: cannot tell")
}

func TestBrokenInput(t *testing.T) {
	for name, c := range map[string]struct{ file, old, new, says string }{
		"no about":        {"cooler.json", `"about": "Invented for demonstration: no such water, households, fish or log exist."`, `"about": ""`, "about: say what"},
		"unknown field":   {"cooler.json", `"place"`, `"lake"`, `unknown field "lake"`},
		"gap unreadable":  {"cooler.json", `"30m"`, `"half an hour"`, "maxGap: "},
		"gap of nothing":  {"cooler.json", `"30m"`, `"0s"`, "longest gap"},
		"no such log":     {"cooler.json", "coho.csv", "chum.csv", "no such file"},
		"no name":         {"cooler.json", `"name": "coho"`, `"name": ""`, "fish[0].name: "},
		"event too late":  {"cooler.json", `"34h45m"`, `"36h"`, "expected within the record"},
		"events in a mix": {"cooler.json", `"12h40m"`, `"11h"`, "fish[0].events[3].at: expected later"},
		"event unsaid":    {"cooler.json", `"what": "back on ice"`, `"what": ""`, "fish[0].events[4].what: say what"},
		"bad reading":     {"coho.csv", "\n10,", "\n10,cold", "line 4"},
		"time runs back":  {"whitefish.csv", "\n20,", "\n5,", "line 5"},
		"no unit":         {"coho.csv", "fish (°F)", "fish", "coho.csv"},
		"no such store":   {"cooler.json", `"store": "refrigerator"`, `"store": "cellar"`, "cellar"},
		"gutted before":   {"cooler.json", `"gutted": "2h10m"`, `"gutted": "-2h"`, "coho: "},
		"iced in words":   {"cooler.json", `"iced": "2h10m"`, `"iced": "at once"`, "fish[0].landing.iced: "},
		"like nothing":    {"cooler.json", `"keepsLike": "salmon"`, `"keepsLike": "unicorn"`, "fish[0].keepsLike: "},
		"gutted in words": {"cooler.json", `"gutted": true`, `"gutted": "yes"`, "line 20"},
		"ice grows":       {"cooler.json", `"7 lb 5 oz"`, `"11 lb"`, "ice.test: "},
		"ice unreadable":  {"cooler.json", `"68 lb"`, `"68"`, "ice.fish: "},
		"trip too long":   {"cooler.json", `"for": "12h"`, `"for": "1200h"`, "ice: "},
		"not json":        {"cooler.json", "{", "[", "invalid character"},
	} {
		out, err := changed(t, c.file, c.old, c.new)
		require.Error(t, err, name)
		require.Empty(t, out, name)
		require.Contains(t, err.Error(), c.says, name)
		require.NotContains(t, err.Error(), "\n", name)
	}
	for _, args := range [][]string{{"-units", "kelvin"}, {"cooler.json"}, {"-in", "nowhere.json"}} {
		require.Error(t, run(args, io.Discard), "%v", args)
	}
}
