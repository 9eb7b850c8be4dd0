package units_test

import (
	"errors"
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
)

func ExampleUnsetError() {
	err := units.CheckTemperature("core limit", units.Temperature{}, units.Fahrenheit(145), units.Celsius(100))
	fmt.Println(err)
	fmt.Println(errors.Is(err, units.ErrUnset), errors.Is(err, units.ErrRange))
	// Output:
	// core limit is not stated
	// true true
}

func ExampleUnknownError() {
	err := units.UnknownError{What: "jar size", Got: "litre", Known: []string{"half-pint", "pint", "quart"}}
	fmt.Println(err)
	fmt.Println(errors.Is(err, units.ErrSyntax))
	// Output:
	// unknown jar size "litre": expected half-pint, pint or quart
	// true
}

// TestSentences spells what every error says.
func TestSentences(t *testing.T) {
	for _, c := range []struct {
		want string
		err  error
	}{
		{"salt 0 g is out of range: expected more than 0 g",
			units.RangeError{What: "salt", Got: "0 g", Low: "0 g", LowExclusive: true}},
		{"salt 0 g is out of range: expected more than 0 g and at most 1 kg",
			units.RangeError{What: "salt", Got: "0 g", Low: "0 g", High: "1 kg", LowExclusive: true}},
		{"share 1 is out of range: expected less than 1",
			units.RangeError{What: "share", Got: "1", High: "1", HighExclusive: true}},
		{"share 1 is out of range: expected at least 0 and less than 1",
			units.RangeError{What: "share", Got: "1", Low: "0", High: "1", HighExclusive: true}},
		{"share 1 is out of range: expected more than 0 and less than 1",
			units.RangeError{What: "share", Got: "1", Low: "0", High: "1", LowExclusive: true, HighExclusive: true}},
		{"parts -1 is out of range: expected at least 0",
			units.RangeError{What: "parts", Got: "-1", Low: "0"}},
		{"parts 9 is out of range: expected at most 8",
			units.RangeError{What: "parts", Got: "9", High: "8"}},
		{"parts 9 is out of range: expected 1 to 8",
			units.RangeError{What: "parts", Got: "9", Low: "1", High: "8"}},
		{"parts 0 is out of range: expected more than 0",
			units.RangeError{What: "parts", Got: "0", Low: "more than 0"}},
		{"air not set is out of range: expected a value that is set",
			units.RangeError{What: "air", Got: "not set"}},
		{"altitude is not stated",
			units.UnsetError{What: "altitude"}},
		{"unknown stage \"cok\"",
			units.UnknownError{What: "stage", Got: "cok"}},
		{"unknown fish \"x\": expected \"cod, whole\" or trout",
			units.UnknownError{What: "fish", Got: "x", Known: []string{"cod, whole", "trout"}}},
		{"cannot read \"5\" as an area: why",
			units.ParseError{Quantity: "area", Text: "5", Reason: "why"}},
		{"cannot read \"5\" as an energy: why",
			units.ParseError{Quantity: "energy", Text: "5", Reason: "why"}},
		{"cannot read \"5\" as a pH: why",
			units.ParseError{Quantity: "pH", Text: "5", Reason: "why"}},
		{"cannot read \"5\" as a unit of use: why; write a, b or c",
			units.ParseError{Quantity: "unit of use", Text: "5", Reason: "why", Choices: []string{"a", "b", "c"}}},
		{"limit 160 °F is out of range: expected 145 °F to 150 °F",
			units.CheckTemperature("limit", units.Fahrenheit(160), units.Fahrenheit(145), units.Fahrenheit(150))},
		{"limit 160 °C is out of range: expected 145 °F to 212 °F",
			units.CheckTemperature("limit", units.Celsius(160), units.Fahrenheit(145), units.Celsius(100))},
		{"core 160 °C is out of range: expected 0 °C to 100 °C",
			units.CheckTemperature("core", units.Celsius(160), units.Celsius(0), units.Fahrenheit(212))},
		{"vent 2 h is out of range: expected 0 min to 1 h",
			units.CheckDuration("vent", 2*time.Hour, 0, time.Hour)},
		{"cannot read \"" + strings.Repeat("x", 59) + "…\" as a mass: expected a number first",
			parseMass(strings.Repeat("x", 100))},
	} {
		require.EqualError(t, c.err, c.want)
	}
}

func parseMass(s string) error {
	_, err := units.ParseMass(s)
	return err
}

// TestLongTexts: a text beyond the bound is refused before anything is worked out, and no error repeats it.
func TestLongTexts(t *testing.T) {
	long := []string{
		strings.Repeat("9", 1<<20) + " kg", strings.Repeat("1 lb ", 1<<18), "1 " + strings.Repeat("g", 1<<20),
		strings.Repeat("\x00", 1<<20), strings.Repeat("½", 1<<19), "1e" + strings.Repeat("9", 1<<20),
		strings.Repeat(" ", 1<<20) + "1 g", strings.Repeat("one and a ", 1<<17), strings.Repeat("\U000e0001", 24),
	}
	for name, d := range doors {
		for _, s := range long {
			start := time.Now()
			_, err := d.strict(s)
			require.ErrorIs(t, err, units.ErrSyntax, "%s: %.20q", name, s)
			require.Less(t, len(err.Error()), 700, "%s: %.20q", name, s)
			_, _, err = d.typed(s)
			require.ErrorIs(t, err, units.ErrSyntax, "%s: %.20q", name, s)
			require.Less(t, len(err.Error()), 700, "%s: %.20q", name, s)
			require.Less(t, time.Since(start), 10*time.Second, "%s: %.20q", name, s) // what had no bound took minutes
		}
	}
	for _, s := range []string{
		"1 " + strings.Repeat("x", 98), strings.Repeat("1", 64) + " " + strings.Repeat("y", 35),
		"1e40 " + strings.Repeat("z", 95),
	} {
		for name, d := range doors {
			_, err := d.strict(s)
			require.Error(t, err, name)
			require.NotContains(t, err.Error(), s[len(s)-70:], name)
		}
	}
	_, err := units.ParseMass(strings.Repeat("9", 90) + " kg")
	require.ErrorContains(t, err, "at most 64 digits")
	_, err = units.ParseMass(strings.Repeat("9", 60) + " kg")
	require.ErrorIs(t, err, units.ErrRange)
	require.Less(t, len(err.Error()), 200)
}
