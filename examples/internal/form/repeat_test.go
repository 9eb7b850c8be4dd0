package form

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestOnce(t *testing.T) {
	for text, message := range map[string]string{
		`{"a": 1, "b": {"a": 2}, "c": [{"a": 1}, {"a": 2}]}`: "",
		`{"a": "a", "b": "a"}`:                               "",
		`[]`:                                                 "",
		"{\"a\": 1,\n\"a\": 2}":                              `line 2: field "a" stands twice`,
		`{"a": 1, "A": 2}`:                                   `field "A" stands twice`,
		`{"s": 1, "ſ": 2}`:                                   `field "ſ" stands twice`,
		`{"k": 1, "\u212a": 2}`:                              `stands twice`,
		`{"b": {"x": [1, 2], "x": 3}}`:                       `field "x" stands twice`,
		`[{"y": {}, "z": [], "y": null}]`:                    `field "y" stands twice`,
		`{"c": [{"a": 1}, [{"b": true, "d": {}, "b": true}]]`: `field "b" stands twice`,
	} {
		path := filepath.Join(t.TempDir(), "x.json")
		require.NoError(t, os.WriteFile(path, []byte(text), 0o600))
		var any interface{}
		err := Read(path, &any)
		if message == "" {
			require.NoError(t, err, text)
			continue
		}
		require.ErrorContains(t, err, message, text)
	}
}
