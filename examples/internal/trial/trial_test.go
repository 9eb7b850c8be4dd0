package trial

import (
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"
)

// failing is a test that keeps what it fails with.
type failing struct {
	testing.TB
	with string
}

func (f *failing) Errorf(format string, a ...any) { f.with = fmt.Sprintf(format, a...) }

func (f *failing) Fatalf(format string, a ...any) {
	f.Errorf(format, a...)
	panic(f)
}

// fails runs what must fail, and returns with what it does.
func fails(t *testing.T, what func(t testing.TB)) (with string) {
	t.Helper()
	f := &failing{TB: t}
	defer func() {
		_ = recover()
		with = f.with
		require.NotEmpty(t, with)
	}()
	what(f)
	return
}

// echo prints its input's file, or fails where that is empty.
var echo = Program(func(args []string, out io.Writer) error {
	text, err := os.ReadFile(args[len(args)-1])
	if err == nil && len(text) == 0 {
		err = errors.New("nothing in it")
	}
	fmt.Fprintf(out, "%v %s", args[:len(args)-1], text)
	return err
})

func TestProgram(t *testing.T) {
	require.Equal(t, "[] in it", echo.Printed(t, written(t, "in it")))
	require.Contains(t, fails(t, func(t testing.TB) { echo.Printed(t, "no such file") }), "no such file")

	home, err := os.Getwd()
	require.NoError(t, err)
	t.Cleanup(func() { require.NoError(t, os.Chdir(home)) })
	require.NoError(t, os.Chdir(filepath.Dir(written(t, "one two one"))))
	out, err := echo.Changed(t, []string{"demo"}, []string{"-x"}, Change{"demo", "one", "1"}, Change{"demo", "two",
		"2"})
	require.NoError(t, err)
	require.Equal(t, "[-x -in] 1 2 one", out)
	_, err = echo.Changed(t, []string{"demo"}, nil, Change{"demo", "", ""})
	require.EqualError(t, err, "nothing in it")

	require.Contains(t, fails(t, func(t testing.TB) {
		_, _ = echo.Changed(t, []string{"demo"}, nil,
			Change{"demo", "three", ""})
	}), "demo has no three")
	require.Contains(t, fails(t, func(t testing.TB) {
		_, _ = echo.Changed(t, []string{"demo"}, nil,
			Change{"omed", "one", ""})
	}), "none of the files")
	Contains(t, "one two", "one", "two")
	require.Contains(t, fails(t, func(t testing.TB) { Contains(t, "one two", "two", "three") }), "missing: three")
}

func written(t testing.TB, text string) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), "demo")
	if err := os.WriteFile(path, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
	return path
}
