package main

import (
	"io"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/examples/internal/trial"
)

var program = trial.Program(run)

func TestDemo(t *testing.T) {
	us := program.Printed(t, "-units", "us")
	trial.Page(t, us, 40)
	trial.System(t, us, "us", "mm²/s")
	trial.Contains(t, us,
		"RESULT: F0 at the middle is 15.74 min, anywhere from 10.82 min to 19.87 min\n", "Tamarack Bench Reservoir, 4,350 ft", "Invented for demonstration",
		"100 min at 15 psi", "steam at 245.4 °F", "decides nothing and shortens nothing", "F0 counts against 250 °F, z 18 F°", "radius 1.48 in and height 4.53 in, glass of 0.12 in",
		"film of the steam 500 W/(m² K) to 5000 W/(m² K)", "a diffusivity of 0.1280 mm²/s to 0.1543 mm²/s", "when the heat goes off after 130 min", "no glass, no film", "19.43 min +23 %",
		"steam hotter by one degree Celsius 247.2 °F", "+25 %", "a thousand feet higher, same gauge", "gauge reads a pound too high", "20 % air left in the canner", "cooled five times as fast",
		"packed as cold as a refrigerator", "jar taller by a fifth", "jar wider by a fourth", "DETAILS: THE FORMULA METHOD BESIDE IT", "12-D by D 0.210 min is 2.52 min", "hold 5.28 min 34 %",
		"None of this shortens, replaces or confirms a published process")
	metric := program.Printed(t, "-units", "metric", "-sources")
	trial.Page(t, metric, 40)
	trial.System(t, metric, "metric")
	trial.Contains(t, metric, "1,325.9 m", "steam at 118.6 °C", "is 15.74 min", "F0 counts against 121.1 °C, z 10 C°",
		"(recalled: check the document before relying on it)")
}

func TestGolden(t *testing.T) {
	for _, system := range []string{"us", "metric", "both"} {
		trial.Golden(t, trial.Answer(program.Printed(t, "-units", system)), "testdata/"+system+".txt")
	}
}

func TestByHand(t *testing.T) {
	text := program.Printed(t, "-math")
	trial.ByHand(t, text, 50)
	trial.Contains(t, text, "so that it is a root", "Tc = Ts + u11 + u12 + u21 + u22", "is the middle at steam off")
}

func TestHelp(t *testing.T) { trial.Help(t, program) }

// The picture has its three curves and says what they and the axes are.
func TestPicture(t *testing.T) {
	for _, system := range []string{"us", "metric"} {
		text := trial.Picture(t, program, "-units", system)
		require.Equal(t, 3, strings.Count(text, "<polyline"))
		trial.Contains(t, text, "steam", "middle of the jar", "F0 so far", "temperature, °", "minutes from the start",
			"heat off", "None of it shortens a published process")
	}
}

// TestContradiction: steam that is colder than the fish, and shares that make up more than the whole, are no jar.
func TestContradiction(t *testing.T) {
	for _, c := range [][3]string{
		{"heatcurve.json", `"start": "10 °C"`, `"start": "125 °C"`},
		{"heatcurve.json", `"76.35 %"`, `"96.35 %"`},
	} {
		out, err := program.Changed(t, []string{"heatcurve.json"}, nil, c)
		require.Error(t, err)
		require.Empty(t, out)
	}
}

func TestBroken(t *testing.T) {
	for _, c := range []struct{ old, new, message string }{
		{`"4,350 ft"`, `"4350"`, `altitude: cannot read "4350"`},
		{`"4,350 ft"`, `"11,000 ft"`, "no process is published"},
		{`"pint"`, `"half-gallon"`, "no process is published"},
		{`"pint"`, `"bucket"`, "jar: "},
		{`"weighted"`, `"steam"`, "gauge: "},
		{`"37.5 mm"`, `"37.5"`, "radius: cannot read"},
		{`"37.5 mm"`, `"1 mm"`, "radius"},
		{`"115 mm"`, `"11 mm"`, "height"},
		{`"76.35 %"`, `"0.7635"`, "fish.water: cannot read"},
		{`"76.35 %"`, `"10 %"`, "sum of the composition"},
		{`"10 °C"`, `"10"`, "start: cannot read"},
		{`"10 °C"`, `"-18 °C"`, "start"},
		{`"20 °C"`, `"200 °C"`, "end of cooling"},
		{`"30 min"`, `"30"`, "comeUp"},
		{`"30 min"`, `"-30 min"`, "come-up"},
		{`"1 K"`, `"0 K"`, "cooling a minute"},
		{`"about"`, `"abuot"`, "abuot: unknown field"},
		{`"about": "Invented for demonstration: no such water, household, canner or jar exists. Its times of heating and cooling, its glass and its films are guesses."`, `"about": ""`, "about: it is required"},
		{`"20 °C"` + "\n}", `"20 °C"` + "\n} {}", "heatcurve.json"},
		{`"500 W/(m² K)"`, `"2500 W/(m² K)"`, "film: "},
		{`"3 mm"`, `"0 mm"`, "thickness of the wall"},
		{`"thickness"`, `"thick"`, "glass.thick: unknown field"},
	} {
		t.Run(c.new, func(t *testing.T) {
			out, err := program.Changed(t, []string{"heatcurve.json"}, nil, trial.Change{"heatcurve.json", c.old,
				c.new})
			require.ErrorContains(t, err, c.message)
			require.Empty(t, out, "nothing is printed before an error")
			require.False(t, strings.Contains(err.Error(), "\n"), "one line")
		})
	}
	for _, args := range [][]string{{"-units", "kelvin"}, {"-in", "nowhere.json"}, {"-svg",
		filepath.Join(t.TempDir(), "no", "where.svg")}} {
		require.Error(t, run(args, io.Discard))
	}
}
