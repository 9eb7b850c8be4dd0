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
)

func parsed(t *testing.T, args ...string) *Line {
	t.Helper()
	l := New("plan", "demo.json", "the plan").Drawing("the plan")
	require.NoError(t, l.Parse(args, io.Discard))
	return l
}

func TestLine(t *testing.T) {
	l := parsed(t)
	require.Equal(t, "demo.json", l.In())
	require.True(t, l.US())
	l = parsed(t, "-in", "mine.json", "-units", "metric")
	require.Equal(t, "mine.json", l.In())
	require.False(t, l.US())
}

func TestLineRefuses(t *testing.T) {
	for want, args := range map[string][]string{
		"mine.json: expected flags alone":      {"mine.json"},
		"x: expected flags alone":              {"-units", "us", "x"},
		"-units kelvin: expected metric or us": {"-units", "kelvin"},
		"-units : expected metric or us":       {"-units", ""},
		"flag provided but not defined: -out":  {"-out", "x"},
		"flag needs an argument: -in":          {"-in"},
		"-units Metric: expected metric or us": {"-units", "Metric"},
		"flag needs an argument: -svg":         {"-svg"},
		"flag needs an argument: -units":       {"-units"},
		"again.json: expected flags alone":     {"--", "again.json"},
	} {
		var out bytes.Buffer
		require.EqualError(t, New("plan", "demo.json", "the plan").Drawing("it").Parse(args, &out), want)
		require.Empty(t, out.String())
	}
}

func TestHelpIsNoError(t *testing.T) {
	var out bytes.Buffer
	require.ErrorIs(t, New("plan", "demo.json", "the plan").Parse([]string{"-h"}, &out), flag.ErrHelp)
	require.Contains(t, out.String(), "the plan (default \"demo.json\")")
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
	require.Error(t, parsed(t, "-svg", filepath.Join(path, "no", "folder")).Draw(func() (string, error) { return "", nil }))
}
