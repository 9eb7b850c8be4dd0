package command

import (
	"bytes"
	"errors"
	"flag"
	"io"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
)

type input struct {
	Altitude units.Length `help:"of the stove"`
}

func line(t *testing.T) *Line {
	t.Helper()
	demo := filepath.Join(t.TempDir(), "demo.json")
	require.NoError(t, os.WriteFile(demo, []byte(`{"altitude": "4,350 ft"}`), 0o600))
	return New("plan", demo, "the plan", input{})
}

func parsed(t *testing.T, args ...string) *Line {
	t.Helper()
	l := line(t).Drawing("the plan").Writing()
	require.NoError(t, l.Parse(args, io.Discard))
	return l
}

func TestLine(t *testing.T) {
	l := parsed(t)
	require.Equal(t, "demo.json", filepath.Base(l.In()))
	require.Equal(t, units.Both, l.System())
	require.False(t, l.Math() || l.Sources() || l.JSON())
	l = parsed(t, "-in", "mine.json", "-units", "metric", "-math", "-sources", "-json")
	require.Equal(t, "mine.json", l.In())
	require.Equal(t, units.Metric, l.System())
	require.True(t, l.Math() && l.Sources() && l.JSON())
	require.Equal(t, units.US, parsed(t, "-units", "us").System())
	require.False(t, line(t).JSON(), "a program that writes none")
}

func TestLineRefuses(t *testing.T) {
	for want, args := range map[string][]string{
		"mine.json: expected only flags":      {"mine.json"},
		"x: expected only flags":              {"-units", "us", "x"},
		`invalid value "kelvin" for flag`:     {"-units", "kelvin"},
		`invalid value "" for flag -units`:    {"-units", ""},
		"flag provided but not defined: -out": {"-out", "x"},
		"flag needs an argument: -in":         {"-in"},
		"flag needs an argument: -svg":        {"-svg"},
		"flag needs an argument: -units":      {"-units"},
		"again.json: expected only flags":     {"--", "again.json"},
		`invalid boolean value "maybe"`:       {"-math=maybe"},
	} {
		var out bytes.Buffer
		require.ErrorContains(t, line(t).Drawing("it").Parse(args, &out), want)
		require.Empty(t, out.String())
	}
}

func TestHelpIsNoError(t *testing.T) {
	var out bytes.Buffer
	require.ErrorIs(t, line(t).Parse([]string{"-h"}, &out), flag.ErrHelp)
	for _, want := range []string{"the plan (default", "altitude", "length", "of the stove", "4,350 ft"} {
		require.Contains(t, out.String(), want)
	}
	require.NotContains(t, out.String(), "-svg", "a program that draws nothing has none")
}

func TestDraw(t *testing.T) {
	never := func() (string, error) { return "", errors.New("asked for") }
	require.NoError(t, parsed(t).Draw(never))
	path := filepath.Join(t.TempDir(), "plan.svg")
	require.EqualError(t, parsed(t, "-svg", path).Draw(never), "asked for")
	require.NoError(t, parsed(t, "-svg", path).Draw(func() (string, error) { return "<svg/>", nil }))
	data, err := os.ReadFile(path)
	require.NoError(t, err)
	require.Equal(t, "<svg/>", string(data))
	require.Error(t, parsed(t, "-svg", filepath.Join(path, "no", "folder")).Draw(func() (string, error) {
		return "",
			nil
	}))
}
