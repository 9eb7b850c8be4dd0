package logged

import (
	"encoding/json"
	"errors"
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"testing"

	"example.org/lakelarder/units"
)

// Back requires that a value survives being saved as JSON and read again.
func Back[T any](t testing.TB, v T) {
	t.Helper()
	text, err := json.Marshal(v)
	if err != nil {
		t.Fatalf("%+v: %v", v, err)
	}
	var back T
	if err := json.Unmarshal(text, &back); err != nil {
		t.Fatalf("%s: %v", text, err)
	}
	if !reflect.DeepEqual(v, back) {
		t.Fatalf("%s\ncomes back as\n%+v\nand not as\n%+v", text, back, v)
	}
}

// Golden requires that a value is saved as the file of testdata/golden says, and that the file is read as the value.
func Golden[T any](t testing.TB, name string, v T) {
	t.Helper()
	got, err := json.MarshalIndent(v, "", "  ")
	if err != nil {
		t.Fatal(err)
	}
	want, err := os.ReadFile(filepath.Join(root(t), "testdata", "golden", name+".json"))
	if err != nil || string(want) != string(got)+"\n" {
		t.Fatalf("testdata/golden/%s.json is not as it is now (%v):\n%s", name, err, got)
	}
	var back T
	if err := json.Unmarshal(want, &back); err != nil || !reflect.DeepEqual(v, back) {
		t.Fatalf("testdata/golden/%s.json is not read as it was written: %v\n%+v", name, err, back)
	}
}

// root is the directory of go.mod above the package under test.
func root(t testing.TB) string {
	t.Helper()
	dir, err := os.Getwd()
	if err != nil {
		t.Fatal(err)
	}
	for {
		if _, err := os.Stat(filepath.Join(dir, "go.mod")); err == nil {
			return dir
		}
		above := filepath.Dir(dir)
		if above == dir {
			t.Fatal("no go.mod above the test")
		}
		dir = above
	}
}

// Unreadable requires that each text is refused, with a units.FieldError that names the field before it where there is
// one, and that the value stays as it was.
func Unreadable[T any](t testing.TB, start T, texts map[string]string) {
	t.Helper()
	for text, field := range texts {
		v := start
		err := json.Unmarshal([]byte(text), &v)
		var fault units.FieldError
		if err == nil || errors.As(err, &fault) && fault.Field != field {
			t.Fatalf("%s: %v", text, err)
		}
		if !reflect.DeepEqual(start, v) {
			t.Fatalf("%s: the value is no longer as it was", text)
		}
	}
}

// Refused requires an error that says that a value is out of range, not stated or not known.
func Refused(t testing.TB, err error, name string) {
	t.Helper()
	if !errors.Is(err, units.ErrRange) && !errors.Is(err, units.ErrUnknown) {
		t.Fatalf("%s: %v", name, err)
	}
}

// Words requires that every word of an enumeration comes back as its value, and that all else is refused.
func Words[E interface {
	~uint8
	String() string
	MarshalText() ([]byte, error)
}](t testing.TB, last E, parse func(string) (E, error)) {
	t.Helper()
	for v := E(1); v <= last; v++ {
		text, err := v.MarshalText()
		if err != nil || string(text) != v.String() {
			t.Fatalf("%v is written %q: %v", v, text, err)
		}
		if back, err := parse(strings.ToUpper(" " + string(text))); err != nil || back != v {
			t.Fatalf("%q is read as %v: %v", text, back, err)
		}
	}
	if text, err := E(0).MarshalText(); len(text) > 0 || err != nil || E(0).String() != "not stated" {
		t.Fatalf("what is not set is written %q: %v", text, err)
	}
	for _, v := range []E{last + 1, 255} {
		if text, err := v.MarshalText(); !errors.Is(err, units.ErrUnknown) {
			t.Fatalf("%v is written %q: %v", v, text, err)
		}
	}
	for _, text := range []string{"", " ", "not stated", "0", "1", "none", E(1).String() + "!", (last + 1).String()} {
		if v, err := parse(text); !errors.Is(err, units.ErrUnknown) || v != 0 {
			t.Fatalf("%q is read as %v: %v", text, v, err)
		}
	}
}
