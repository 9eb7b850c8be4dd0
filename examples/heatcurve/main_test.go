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

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/examples/internal/trial"
)

var program = trial.Program(run)

func TestDemo(t *testing.T) {
	us := program.Printed(t)
	for _, want := range []string{
		"Tamarack Bench Reservoir, 4,350 ft", "Invented for demonstration", "15 psi for 100 min", "steam at 245.4 °F", "none of it shortens one",
		"F0 (121.1 °C, z 10 K) 19.43 min in all", "when the heat goes off after 130 min", "steam 1 °C hotter", "+25 %", "1,000 ft higher, same gauge",
		"gauge reads 1 psi too high", "20 % air left in the canner", "cooled five times as fast", "packed cold, at 2 °C", "jar 20 mm taller",
		"THE FORMULA METHOD BESIDE IT", "None of this shortens, replaces or confirms a published process", "(recalled: check the print before relying on it)",
	} {
		require.True(t, strings.Contains(us, want), "missing: %s", want)
	}
	metric := program.Printed(t, "-units", "metric")
	for _, want := range []string{"1,326 m", "steam at 118.6 °C", "19.43 min in all"} {
		require.True(t, strings.Contains(metric, want), "missing: %s", want)
	}
	curve, _, found := strings.Cut(metric, "LETHALITY THERE")
	require.True(t, found)
	require.False(t, strings.Contains(curve, "°F"), "no Fahrenheit in the metric curve")
}

// The picture is well-formed, has its three curves and says what they and the axes are.
func TestPicture(t *testing.T) {
	for _, system := range []string{"us", "metric"} {
		path := filepath.Join(t.TempDir(), "curve.svg")
		program.Printed(t, "-units", system, "-svg", path)
		data, err := os.ReadFile(path)
		require.NoError(t, err)
		decoder := xml.NewDecoder(bytes.NewReader(data))
		for {
			if _, err = decoder.Token(); err != nil {
				break
			}
		}
		require.True(t, errors.Is(err, io.EOF), "not well-formed: %v", err)
		text := string(data)
		require.Equal(t, 3, strings.Count(text, "<polyline"))
		for _, want := range []string{"steam", "centre of the jar", "F0 so far", "temperature, °", "minutes from the start", "heat off", "None of it shortens a published process"} {
			require.True(t, strings.Contains(text, want), "missing: %s", want)
		}
	}
}

func TestBroken(t *testing.T) {
	good, err := os.ReadFile("heatcurve.json")
	require.NoError(t, err)
	for _, c := range []struct{ old, new, message string }{
		{`"4,350 ft"`, `"4350"`, `altitude: cannot read "4350"`},
		{`"4,350 ft"`, `"11,000 ft"`, "no process is published"},
		{`"pint"`, `"half-gallon"`, "no process is published"},
		{`"pint"`, `"bucket"`, "jar: cannot read"},
		{`"weighted"`, `"steam"`, "gauge: cannot read"},
		{`"37.5 mm"`, `"37.5"`, "radius: cannot read"},
		{`"37.5 mm"`, `"1 mm"`, "radius"},
		{`"115 mm"`, `"11 mm"`, "height"},
		{`"76.35 %"`, `"0.7635"`, "fish.water: cannot read"},
		{`"76.35 %"`, `"10 %"`, "sum of the composition"},
		{`"10 °C"`, `"10"`, "start: cannot read"},
		{`"10 °C"`, `"-18 °C"`, "start"},
		{`"20 °C"`, `"200 °C"`, "end of cooling"},
		{`"30m"`, `"30"`, "comeUp"},
		{`"30m"`, `"-30m"`, "come-up"},
		{`"1 K"`, `"0 K"`, "cooling a minute"},
		{`"about"`, `"abuot"`, "unknown field"},
		{`"about": "Invented for demonstration: no such water, household, canner or jar exists. Its times of heating and cooling are guesses."`, `"about": ""`, "about: say what this is"},
		{`"20 °C"` + "\n}", `"20 °C"` + "\n} {}", "more than one JSON value"},
	} {
		require.True(t, strings.Contains(string(good), c.old), c.old)
		path := filepath.Join(t.TempDir(), "jar.json")
		require.NoError(t, os.WriteFile(path, []byte(strings.Replace(string(good), c.old, c.new, 1)), 0o600))
		var out bytes.Buffer
		err := run([]string{"-in", path}, &out)
		require.ErrorContains(t, err, c.message)
		require.Empty(t, out.String(), "nothing is printed before an error")
		require.False(t, strings.Contains(err.Error(), "\n"), "one line")
	}
	for _, args := range [][]string{{"-units", "kelvin"}, {"-in", "nowhere.json"}, {"-svg", filepath.Join(t.TempDir(), "no", "where.svg")}} {
		require.Error(t, run(args, io.Discard))
	}
}
