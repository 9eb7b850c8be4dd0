// Package trial runs an example in a test: on its demo input, or on a copy of it with something changed. Only tests
// import it.
package trial

import (
	"bytes"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// Program is an example's run.
type Program func(args []string, out io.Writer) error

// Printed is what the program prints; an error fails the test.
func (run Program) Printed(t testing.TB, args ...string) string {
	t.Helper()
	var out bytes.Buffer
	if err := run(args, &out); err != nil {
		t.Fatalf("%v: %v", args, err)
	}
	return out.String()
}

// Change is of a file, the first old text in it and the new one; where the old is empty the new is the whole file.
type Change = [3]string

// Changed runs the program on copies of its demo files, the first of which is its input, with the changes made one
// after the other. A change that finds nothing to change fails the test.
func (run Program) Changed(t testing.TB, files, args []string, changes ...Change) (string, error) {
	t.Helper()
	dir := t.TempDir()
	done := 0
	for _, name := range files {
		data, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		text := string(data)
		for _, c := range changes {
			switch file, old, new := c[0], c[1], c[2]; {
			case file != name:
				continue
			case old == "":
				text = new
			case !strings.Contains(text, old):
				t.Fatalf("%s has no %s", name, old)
			default:
				text = strings.Replace(text, old, new, 1)
			}
			done++
		}
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	if done != len(changes) {
		t.Fatalf("%v: a change is of none of the files %v", changes, files)
	}
	var out bytes.Buffer
	err := run(append(append([]string{}, args...), "-in", filepath.Join(dir, files[0])), &out)
	return out.String(), err
}

// Contains fails the test for every text that is not there, however the lines are wrapped.
func Contains(t testing.TB, text string, wants ...string) {
	t.Helper()
	for _, want := range wants {
		if !strings.Contains(text, want) && !strings.Contains(unwrapped(text), unwrapped(want)) {
			t.Errorf("missing: %s\nin:\n%s", want, text)
		}
	}
}

func unwrapped(text string) string { return strings.Join(strings.Fields(text), " ") }
