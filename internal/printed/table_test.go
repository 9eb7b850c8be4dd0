package printed

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"
)

// module makes a module of its own with one table and works from a directory deep inside it.
func module(t *testing.T, path, text string) {
	t.Helper()
	root, back := t.TempDir(), workingDir(t)
	for name, content := range map[string]string{"go.mod": "module example.org/other\n", "testdata/" + path: text} {
		full := filepath.Join(root, filepath.FromSlash(name))
		require.NoError(t, os.MkdirAll(filepath.Dir(full), 0o755))
		require.NoError(t, os.WriteFile(full, []byte(content), 0o644))
	}
	deep := filepath.Join(root, "pressure", "process")
	require.NoError(t, os.MkdirAll(deep, 0o755))
	require.NoError(t, os.Chdir(deep))
	t.Cleanup(func() { require.NoError(t, os.Chdir(back)) })
}

func workingDir(t *testing.T) string {
	t.Helper()
	dir, err := os.Getwd()
	require.NoError(t, err)
	return dir
}

func TestTableIsFoundFromAnyPackage(t *testing.T) {
	module(t, "process/x.csv", "gauge_psi,note\n11,\"one, two\"\n12,\"a\nb\"\n13,last\n")
	rows := Table(t, "process/x.csv")

	var got []string
	for _, r := range rows {
		got = append(got, r.String()+" "+r.Text("gauge_psi")+" "+r.Text("note"))
	}
	want := []string{
		"testdata/process/x.csv:2 11 one, two",
		"testdata/process/x.csv:3 12 a\nb",
		"testdata/process/x.csv:5 13 last",
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("rows (-want +got):\n%s", diff)
	}
}

func TestTableFailsItsTest(t *testing.T) {
	module(t, "process/x.csv", "a,b\n1,2,3\n")
	for path, want := range map[string]string{
		"process/y.csv":           "no such file",
		"/process/x.csv":          "not a path below testdata",
		"../process/x.csv":        "not a path below testdata",
		"testdata/process/x.csv":  "no such file",
		"process/x.txt":           "not a path below testdata",
		"process/x.csv":           "testdata/process/x.csv: record on line 2: wrong number of fields",
		"process/../process/.csv": "not a path below testdata",
	} {
		said, ended := told(func(tb testing.TB) { Table(tb, path) })
		require.True(t, ended, path)
		require.Contains(t, said, want, path)
	}
}

func TestModuleRootIsNeededAboveTheTest(t *testing.T) {
	module(t, "x.csv", "a\n1\n")
	require.NoError(t, os.Remove(filepath.Join(workingDir(t), "..", "..", "go.mod")))
	said, ended := told(func(tb testing.TB) { Table(tb, "x.csv") })
	require.True(t, ended)
	require.Contains(t, said, "no go.mod in")
}

func TestReadRefuses(t *testing.T) {
	for name, c := range map[string]struct{ text, want string }{
		"nothing":                     {"", "does not end with a newline"},
		"no row":                      {"a,b\n", "a header and at least one row"},
		"no final newline":            {"a,b\n1,2", "does not end with a newline"},
		"row too short":               {"a,b\n1\n", "wrong number of fields"},
		"row too long":                {"a,b\n1,2,3\n", "wrong number of fields"},
		"column without a name":       {"a,\n1,2\n", "column 2 has no name of its own"},
		"column twice":                {"a,a\n1,2\n", `column 2 has no name of its own: "a"`},
		"space before a cell":         {"a,b\n1, 2\n", `x.csv:2: cell 2 has white space around it: " 2"`},
		"space after a cell":          {"a,b\n1 ,2\n", "cell 1 has white space"},
		"space around a column":       {"a,b \n1,2\n", "x.csv:1: cell 2 has white space"},
		"no-break space after a cell": {"a,b\n1,2\u00a0\n", "cell 2 has white space"},
		"blank line":                  {"a,b\n\n1,2\n", "x.csv:2: is a blank line"},
		"blank last line":             {"a,b\n1,2\n\n", "x.csv:3: is a blank line"},
		"carriage returns":            {"a,b\r\n1,2\r\n", "carriage return"},
		"byte order mark":             {"\ufeffa,b\n1,2\n", "byte order mark"},
		"not UTF-8":                   {"a,b\n1,\xb0\n", "not UTF-8"},
		"bare quote":                  {"a,b\n1,5\"\n", "bare \""},
	} {
		_, err := read("x.csv", []byte(c.text))
		require.Error(t, err, name)
		require.Contains(t, err.Error(), c.want, name)
	}
}

func TestEachNamesTheLine(t *testing.T) {
	module(t, "x.csv", "a\n1\n2\n")
	var got []string
	Table(t, "x.csv").Each(t, func(t *testing.T, r Row) { got = append(got, t.Name()+" "+r.Text("a")) })
	want := []string{"TestEachNamesTheLine/line_2 1", "TestEachNamesTheLine/line_3 2"}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("subtests (-want +got):\n%s", diff)
	}
}
