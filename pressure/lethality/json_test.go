package lethality_test

import (
	"encoding/json"
	"fmt"
	"math/rand"
	"os"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/pressure/lethality"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// golden compares what leaves the process with a reviewed file, and reads it back.
func golden[T any](t *testing.T, name string, v T) {
	t.Helper()
	text, err := json.MarshalIndent(v, "", "  ")
	require.NoError(t, err)
	want, err := os.ReadFile("../../testdata/golden/lethality-" + name + ".json")
	require.NoError(t, err, string(text))
	require.Empty(t, cmp.Diff(strings.TrimSpace(string(want)), string(text)))
	requireBack(t, v)
}

func requireBack[T any](t *testing.T, v T) {
	t.Helper()
	text, err := json.Marshal(v)
	require.NoError(t, err)
	require.NotEqual(t, "{}", string(text))
	var back T
	require.NoError(t, json.Unmarshal(text, &back), string(text))
	require.Equal(t, v, back)
}

func TestGolden(t *testing.T) {
	s := record(t, 60, 100, 116, 116, 90, 60)
	f, err := lethality.FBy(s, lethality.F0(), lethality.Trapezoid)
	require.NoError(t, err)
	golden(t, "lethality", f)
	parts, err := lethality.Divide(s, lethality.F0(), series.Stretch{From: 2 * time.Minute, To: 3 * time.Minute})
	require.NoError(t, err)
	golden(t, "parts", parts)
	value, err := lethality.Listeria().Value(record(t, 40, 70, 72, 72, 50), lethality.DrySmoke)
	require.NoError(t, err)
	golden(t, "value", value)
	answer, err := fish(t).Process(6 * time.Minute)
	require.NoError(t, err)
	golden(t, "answer", answer)
}

func TestJSONComesBack(t *testing.T) {
	result, err := pint.Follow(pintRun, lethality.F0())
	require.NoError(t, err)
	requireBack(t, result)
	requireBack(t, lethality.Band{Low: result, High: result})
	factors, err := pint.Factors(lethality.Point{})
	require.NoError(t, err)
	requireBack(t, factors)
	requireBack(t, pint)
	film := pint
	film.Film, film.Conductivity = 900*units.WattPerSquareMetreKelvin, units.WattPerMetreKelvin/2
	requireBack(t, film)
	held := pint
	held.Film = lethality.HeldSurface
	requireBack(t, held)
	requireBack(t, pintRun)
	requireBack(t, fish(t))
	requireBack(t, lethality.F0Fahrenheit())
	requireBack(t, lethality.Composition{Water: 70 * units.Percent, Protein: 30 * units.Percent})
	for _, row := range lethality.KillTimes() {
		requireBack(t, row)
	}
	time, err := lethality.F0().TimeAt(units.Celsius(115), 3)
	require.NoError(t, err)
	requireBack(t, time)
	kill, err := lethality.Reductions(5, 7)
	require.NoError(t, err)
	requireBack(t, kill)
	left, err := lethality.Survivors(1000, kill.Reductions)
	require.NoError(t, err)
	requireBack(t, left)
}

// A watch that is saved after any reading goes on to the same F, to the nanosecond.
func TestRunningComesBack(t *testing.T) {
	rng := rand.New(rand.NewSource(9))
	for i := 0; i < 40; i++ {
		running, err := lethality.Start(lethality.F0())
		require.NoError(t, err)
		saved := running
		at := time.Duration(0)
		for n := 0; n < 80; n++ {
			text, err := json.Marshal(saved)
			require.NoError(t, err)
			saved = lethality.Running{}
			require.NoError(t, json.Unmarshal(text, &saved), string(text))
			reading := series.Reading[units.Temperature]{At: at, Value: units.Celsius(100 + 30*rng.Float64() - float64(n%7/6*90))}
			at += 1 + time.Duration(rng.Int63n(int64(time.Minute)))
			running, err = running.Next(reading)
			require.NoError(t, err)
			saved, err = saved.Next(reading)
			require.NoError(t, err)
			require.Equal(t, running.F(), saved.F())
		}
	}
}

func TestJSONRefuses(t *testing.T) {
	var f units.FieldError
	for text, field := range map[string]string{
		`{"temperature": "121.1 °C"}`:                            "z",
		`{"z": "10 K"}`:                                          "temperature",
		`{"temperature": "121.1 °C", "z": 10}`:                   "z",
		`{"temperature": "121.1 °C", "z": "10 K", "z": "10 K"}`:  "z",
		`{"temperature": "121.1 °C", "z": "10 K", "name": "F0"}`: "name",
		`{"temperature": null, "z": "10 K"}`:                     "temperature",
	} {
		var r lethality.Reference
		require.ErrorAs(t, json.Unmarshal([]byte(text), &r), &f, text)
		require.Equal(t, field, f.Field, text)
		require.Zero(t, r)
	}
	const jar = `"radius": "37 mm", "height": "115 mm", "diffusivity": "0.14 mm²/s"`
	for _, text := range []string{
		`{` + jar + `}`, `{` + jar + `, "heldSurface": true, "film": "900 W/(m² K)"}`, `{` + jar + `, "heldSurface": "yes"}`,
		`{"radius": "37 mm", "height": "115 mm", "heldSurface": true}`,
	} {
		c := pint
		require.Error(t, json.Unmarshal([]byte(text), &c), text)
		require.Equal(t, pint, c, "stays as it was")
	}
	_, err := json.Marshal(lethality.Running{})
	require.ErrorIs(t, err, units.ErrUnset)
}

func TestSavedRunningRefuses(t *testing.T) {
	running, err := lethality.Start(lethality.F0())
	require.NoError(t, err)
	for i, c := range []float64{100, 110, 121} {
		running, err = running.Next(series.Reading[units.Temperature]{At: time.Duration(i) * time.Minute, Value: units.Celsius(c)})
		require.NoError(t, err)
	}
	text, err := json.Marshal(running)
	require.NoError(t, err)
	for old, bad := range map[string]string{
		`"readings":3`: `"readings":0`, `"readings":3,`: `"readings":-3,`, `"at":"2 min"`: `"at":"-2 min"`, `"121 °C"`: `"151 °C"`,
		`"rate":"0x`: `"rate":"1x`, `"sum":"0x`: `"sum":"-0x`, `"rate":"0x1.`: `"rate":"0x1.8`, `"121.1 °C"`: `"20 °C"`,
		`"to":"1 min"`: `"to":"3 min"`, `"sum":"`: `"sums":"`,
	} {
		require.Contains(t, string(text), old)
		back := running
		require.Error(t, json.Unmarshal([]byte(strings.Replace(string(text), old, bad, 1)), &back), bad)
		require.Equal(t, running, back, "stays as it was")
	}
}

func TestNumbersRead(t *testing.T) {
	for _, s := range []string{"0", "2.04", "-1.5", "0.000000000001", "9223372.036854775807"} {
		n, err := lethality.ParseNumber(s)
		require.NoError(t, err)
		require.Equal(t, s, n.String())
		l, err := lethality.ParseLogs(s)
		require.NoError(t, err)
		require.Equal(t, lethality.Logs(n), l)
	}
	for _, s := range []string{"", " ", "2,04", "2.04 %", "1e3", "0x10", "NaN", "one", "0.0000000000001", "+1", "1_000", strings.Repeat("1", 41)} {
		_, err := lethality.ParseNumber(s)
		require.ErrorIs(t, err, units.ErrSyntax, s)
		n, l := lethality.One, lethality.Logs(1)
		require.Error(t, n.UnmarshalText([]byte(s)))
		require.Error(t, l.UnmarshalText([]byte(s)))
		require.Equal(t, lethality.One, n)
		require.Equal(t, lethality.Logs(1), l)
	}
	_, err := lethality.ParseNumber("9223373")
	require.ErrorIs(t, err, units.ErrRange)
}

// What leaves the process can be read by a person, with what must stand beside it.
func ExampleKill() {
	kill, _ := lethality.Reductions(3*time.Minute, 15*time.Second)
	text, err := json.Marshal(kill)
	fmt.Println(string(text)[:47], err)
	// Output:
	// {"reductions":"12","cautions":[{"id":"lethality <nil>
}

func ExampleReference() {
	var r lethality.Reference
	err := json.Unmarshal([]byte(`{"temperature": "121.1 °C", "z": "10 K"}`), &r)
	fmt.Println(r == lethality.F0(), err)
	err = json.Unmarshal([]byte(`{"temperature": "121.1 °C"}`), &r)
	fmt.Println(err)
	// Output:
	// true <nil>
	// z (line 1, column 1): it is required and missing
}

func ExampleCylinder() {
	var c lethality.Cylinder
	err := json.Unmarshal([]byte(`{"radius": "37 mm", "height": "115 mm", "diffusivity": "0.14 mm²/s"}`), &c)
	fmt.Println(err)
	err = json.Unmarshal([]byte(`{"radius": "37 mm", "height": "115 mm", "diffusivity": "0.14 mm²/s", "heldSurface": true}`), &c)
	fmt.Println(c.Film == lethality.HeldSurface, err)
	// Output:
	// film coefficient of the cylinder is not stated
	// true <nil>
}

// A watch that is saved goes on as if it had not been away.
func ExampleRunning() {
	running, _ := lethality.Start(lethality.F0())
	running, _ = running.Next(series.Reading[units.Temperature]{At: 0, Value: units.Celsius(121.1)})
	text, _ := json.Marshal(running)
	var back lethality.Running
	err := json.Unmarshal(text, &back)
	back, _ = back.Next(series.Reading[units.Temperature]{At: 3 * time.Minute, Value: units.Celsius(121.1)})
	fmt.Println(units.Lasting(back.F().F), err)
	// Output:
	// 3 min <nil>
}
