package units_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
)

func ExampleSystem() {
	limit := units.AtMost(units.Fahrenheit(38))
	for _, s := range []units.System{units.Both, units.US, units.Metric} {
		fmt.Println(s, limit.Text(s))
	}
	// Output:
	// both at most 38 °F (3.3 °C)
	// us at most 38 °F
	// metric at most 3.3 °C
}

func ExampleParseSystem() {
	s, err := units.ParseSystem("metric")
	fmt.Println(s, err)
	_, err = units.ParseSystem("imperial")
	fmt.Println(err)
	// Output:
	// metric <nil>
	// unknown system of units "imperial": expected both, us or metric
}

func ExampleParseRounding() {
	r, err := units.ParseRounding("up")
	fmt.Println(r, err)
	// Output: up <nil>
}

func ExampleParseScale() {
	s, err := units.ParseScale("°F")
	fmt.Println(s, err)
	// Output: °F <nil>
}

func ExampleRounding() { fmt.Println(units.Nearest, units.Down, units.Up) /* Output: nearest down up */ }

func ExampleCount() { fmt.Println(units.Count(12)) /* Output: 12 */ }

func TestSystemsComeBack(t *testing.T) {
	for _, s := range []units.System{units.Both, units.US, units.Metric} {
		text, err := s.MarshalText()
		require.NoError(t, err)
		var back units.System
		require.NoError(t, back.UnmarshalText(text))
		require.Equal(t, s, back)
	}
	for _, text := range []string{"", "US", "si", "both ", "system(1)"} {
		s := units.Metric
		require.ErrorIs(t, s.UnmarshalText([]byte(text)), units.ErrUnknown, text)
		require.Equal(t, units.Metric, s, "stays as it was")
	}
	_, err := units.System(3).MarshalText()
	require.ErrorIs(t, err, units.ErrSyntax)
	require.Equal(t, "system of units(3)", units.System(3).String())
	require.Equal(t, "rounding(9)", units.Rounding(9).String())
	require.Equal(t, "scale(9)", units.Scale(9).String())
	for _, r := range []units.Rounding{units.Nearest, units.Down, units.Up} {
		text, err := r.MarshalText()
		require.NoError(t, err)
		back := units.Rounding(9)
		require.NoError(t, back.UnmarshalText(text))
		require.Equal(t, r, back)
	}
	for _, s := range []units.Scale{units.CelsiusScale, units.FahrenheitScale, units.KelvinScale} {
		text, err := s.MarshalText()
		require.NoError(t, err)
		back := units.Scale(9)
		require.NoError(t, back.UnmarshalText(text))
		require.Equal(t, s, back)
	}
	_, err = units.ParseScale("R")
	require.ErrorIs(t, err, units.ErrUnknown)
	_, err = units.Rounding(3).MarshalText()
	require.ErrorIs(t, err, units.ErrUnknown)
}

func TestErrorsNameTheirKind(t *testing.T) {
	require.ErrorIs(t, units.UnsetError{What: "altitude"}, units.ErrUnset)
	require.ErrorIs(t, units.UnsetError{What: "altitude"}, units.ErrRange)
	require.NotErrorIs(t, units.UnsetError{What: "altitude"}, units.ErrUnknown)
	require.ErrorIs(t, units.UnknownError{}, units.ErrUnknown)
	require.ErrorIs(t, units.UnknownError{}, units.ErrSyntax)
	require.NotErrorIs(t, units.UnknownError{}, units.ErrUnset)
	long := make([]byte, 1<<20)
	require.Less(t, len(units.UnknownError{What: "jar", Got: string(long)}.Error()), 400)
	require.Equal(t, `unknown jar "x": expected pint`, units.UnknownError{What: "jar", Got: "x", Known: []string{"pint"}}.Error())
	require.Equal(t, `unknown jar "x"`, units.UnknownError{What: "jar", Got: "x"}.Error())
}
