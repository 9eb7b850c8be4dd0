package main

import (
	"bytes"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// TestAnswer: an address is answered as text, with its own units.
func TestAnswer(t *testing.T) {
	var out bytes.Buffer
	require.NoError(t, run([]string{"-answer", "#canner?altitude=4350+ft&product=fish&pack=raw&jar=pint&gauge=dial&readsHigh=1+psi&units=us"}, &out))
	require.Contains(t, out.String(), "needle at or above\n14 psi\n")
	require.NotContains(t, out.String(), "kPa")
	out.Reset()
	require.NoError(t, run([]string{"-answer", "canner?altitude=4350 ft&product=fish&pack=raw&jar=half-gallon&gauge=dial"}, &out))
	require.True(t, strings.HasPrefix(out.String(), "not published\n"), out.String())
}

// TestRefused: what cannot be answered is one sentence and nothing else.
func TestRefused(t *testing.T) {
	for address, message := range map[string]string{
		"canner?altitude=4350":                "altitude: cannot read \"4350\" as a length: the unit is missing",
		"canner?altitude=4350 ft":             "product: product is not stated",
		"canner?jar=500 mL":                   "jar: ",
		"canner?altitude=1 ft;2":              "invalid semicolon",
		"canner?altitude=1 ft&units=furlongs": "furlongs",
		"pantry":                              "pantry",
		"":                                    "expected only flags",
	} {
		var out bytes.Buffer
		args := []string{"-answer", address}
		if address == "" {
			args = []string{"canner"}
		}
		require.ErrorContains(t, run(args, &out), message)
		require.Empty(t, out.String())
	}
}

// TestBuild: the folder holds everything that the page asks for, and nothing in it names another place.
func TestBuild(t *testing.T) {
	dir := t.TempDir()
	require.NoError(t, build(dir, io.Discard))
	index, err := os.ReadFile(filepath.Join(dir, "index.html"))
	require.NoError(t, err)
	for _, policy := range []string{"default-src 'none'", "script-src 'self' 'wasm-unsafe-eval';", "connect-src 'self'"} {
		require.Contains(t, string(index), policy)
	}
	for _, name := range []string{"page.css", "page.js", "wasm_exec.js", "lakelarder.wasm.z", "samples.json"} {
		require.FileExists(t, filepath.Join(dir, name))
	}
	for _, name := range []string{"index.html", "page.css", "page.js"} {
		data, err := os.ReadFile(filepath.Join(dir, name))
		require.NoError(t, err)
		require.NotContains(t, string(data), "http://")
		require.NotContains(t, string(data), "https://")
		require.NotContains(t, string(data), "innerHTML")
	}
	packed, err := os.Stat(filepath.Join(dir, "lakelarder.wasm.z"))
	require.NoError(t, err)
	require.Less(t, packed.Size(), int64(3_000_000))
}
