package form

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"
)

// A fault names its own line, not the one where the file ends.
func TestRead(t *testing.T) {
	for text, message := range map[string]string{
		"\ufeff{\"a\": \"x\"}":                     "",
		"{\n\"a\": \"x\",\n\"b\": 1\n}\n":          `x.json: line 3: json: unknown field "b"`,
		"{\n\"b\": \"x\",\n\"c\": {\"b\": 1}\n}\n": `x.json: json: unknown field "b"`,
		"{\n\"a\": 13}":                            "x.json: line 2: a: expected a text in quotes, not a number",
		"{\n\"c\": {\"d\": true}}":                 "x.json: line 2: c.d: expected a text in quotes, not a bool",
		"{\"n\": \"ten\"}":                         "x.json: line 1: json: cannot unmarshal string",
		"{} {}":                                    "x.json: line 1: more than one JSON value",
		"{\n\"a\": \"x\"\n":                        "x.json: line 3: unexpected EOF",
	} {
		path := filepath.Join(t.TempDir(), "x.json")
		require.NoError(t, os.WriteFile(path, []byte(text), 0o600))
		var form struct {
			A string `json:"a"`
			N int    `json:"n"`
			C struct {
				D string `json:"d"`
			} `json:"c"`
		}
		err := Read(path, &form)
		if message == "" {
			require.NoError(t, err, text)
			continue
		}
		require.ErrorContains(t, err, message, text)
	}
}
