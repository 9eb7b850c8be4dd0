package printed

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

const (
	columns = "gauge_psi,tolerance,note,source,place,basis\n"
	rowRead = "11,,,USDAGuide5Rev1994,page 14,read\n"
	rowSelf = "12,,,,by hand,computed\n"
	entryX  = "| LL-PROC-02 | process/x.csv | gauge pressures | USDAGuide5Rev1994 | page 14 | 1 read, 1 computed | 2 | pressure/process.TestX |"
)

// consistent is a library with one table, one record and an index that fits; the entries given replace the table's.
func consistent(t *testing.T, entries ...string) library {
	t.Helper()
	if entries == nil {
		entries = []string{entryX}
	}
	index := "# Title\n\n"
	for _, a := range areas {
		index += "## " + a.name + "\n\n" + header + "\n|---|---|---|---|---|---|---|---|\n"
		switch a.name {
		case "process":
			index += strings.Join(entries, "\n") + "\n"
		case "canner":
			index += "| LL-CANN-01 | canner/records/run.csv | an invented run | - | - | 1 invented | 1 | pressure/canner.TestRun |\n"
		}
	}
	l := library{
		index: index + "\n## Retired ids\n\n- LL-PROC-01: out of print\n",
		files: map[string]string{"process/x.csv": columns + rowRead + rowSelf, "canner/records/run.csv": "time_s,psi\n0,11\n"},
		tests: map[string]suite{},
	}
	require.NoError(t, l.learn("pressure/process/x_test.go", "package process\n\nfunc TestX() { Table(\"process/x.csv\") }\n\nfunc TestOther() {}\n"))
	require.NoError(t, l.learn("pressure/canner/x_test.go", "package canner\n\nconst run = \"canner/records/run.csv\"\n\nfunc TestRun() { Table(run) }\n"))
	require.NoError(t, l.learn("brine/x_test.go", "package brine\n\nfunc TestBrine() {}\n"))
	return l
}

func TestAuditAccepts(t *testing.T) {
	require.Empty(t, consistent(t).audit())
	require.Empty(t, consistent(t, strings.Replace(entryX, "TestX", "TestOther, pressure/process.TestX", 1)).audit(), "a test that reads by a helper")
}

// The line that the audit prints for a missing file is the line it then accepts.
func TestAuditPrintsTheMissingLine(t *testing.T) {
	l := consistent(t, "")
	said := strings.Join(l.audit(), "\n")
	line := strings.NewReplacer("gauge pressures", "?", "| page 14 |", "| by hand; page 14 |").Replace(entryX)
	require.Contains(t, said, "testdata/process/x.csv is not in the index; its line under ## process:\n"+line)

	l = consistent(t, said[strings.LastIndex(said, "\n")+1:])
	require.Contains(t, strings.Join(l.audit(), "\n"), "LL-PROC-02: what it holds and its place are still to be written")
}

func TestAuditPrintsTheRightLine(t *testing.T) {
	for name, line := range map[string]string{
		"rows":         strings.Replace(entryX, "| 2 |", "| 3 |", 1),
		"basis":        strings.Replace(entryX, "1 read, 1 computed", "2 read", 1),
		"basis order":  strings.Replace(entryX, "1 read, 1 computed", "1 computed, 1 read", 1),
		"document":     strings.Replace(entryX, "USDAGuide5Rev1994", "-", 1),
		"missing test": strings.Replace(entryX, "TestX", "TestOther", 1),
	} {
		said := strings.Join(consistent(t, line).audit(), "\n")
		want := entryX
		if name == "missing test" {
			want = strings.Replace(entryX, "TestX", "TestX, pressure/process.TestOther", 1)
		}
		require.Contains(t, said, "the line of LL-PROC-02 is wrong; it is now:\n"+want, name)
	}
}

func TestAuditRefusesEntries(t *testing.T) {
	for name, c := range map[string]struct{ entries, want string }{
		"a file twice":            {entryX + "\n" + strings.Replace(entryX, "-02", "-03", 1), "process/x.csv is in the index twice"},
		"an id twice":             {entryX + "\n" + strings.Replace(entryX, "x.csv", "y.csv", 1), "the id LL-PROC-02 is used twice"},
		"no such file":            {entryX + "\n" + strings.NewReplacer("x.csv", "y.csv", "-02", "-03").Replace(entryX), "there is no file process/y.csv"},
		"a retired id":            {strings.Replace(entryX, "-02", "-01", 1), "LL-PROC-01 is retired and in use"},
		"an id of another area":   {strings.Replace(entryX, "PROC", "CANN", 1), `has the id "LL-CANN-02" and not LL-PROC- and a number`},
		"an id without a number":  {strings.Replace(entryX, "-02", "-x", 1), `has the id "LL-PROC-x"`},
		"under another area":      {strings.Replace(entryX, "process/x.csv", "brine/x.csv", 1), "brine/x.csv does not stand under ## brine"},
		"a cell too few":          {strings.Replace(entryX, " | 2 |", " |", 1), "a line has eight cells"},
		"a cell too many":         {strings.Replace(entryX, "page 14", "page 14 | page 15", 1), "a line has eight cells"},
		"nothing about it":        {strings.Replace(entryX, "gauge pressures", "?", 1), "still to be written"},
		"no place":                {strings.Replace(entryX, "page 14", "", 1), "still to be written"},
		"no test":                 {strings.Replace(entryX, "pressure/process.TestX", "?", 1), `"?" is not a package and a test`},
		"a test that is not":      {strings.Replace(entryX, "TestX", "TestY", 1), "there is no test TestY in pressure/process"},
		"a package that is not":   {strings.Replace(entryX, "pressure/process.", "process.", 1), "there is no test TestX in process"},
		"a test of another table": {strings.Replace(entryX, "pressure/process.TestX", "brine.TestBrine", 1), `no test file of brine holds the string "process/x.csv"`},
	} {
		require.Contains(t, strings.Join(consistent(t, c.entries).audit(), "\n"), c.want, name)
	}
}

func TestAuditRefusesTheIndex(t *testing.T) {
	for name, c := range map[string]struct{ old, new, want string }{
		"a table missing":      {"## series\n\n" + header, "## series\n", "has the tables"},
		"a table out of order": {"## brine", "## smoke", "has the tables"},
		"another header":       {"| id | file | holds", "| id | file | what", "has the tables"},
		"records not said":     {"an invented run", "a run", "LL-CANN-01 holds invented records and must say so"},
		"retired twice":        {"- LL-PROC-01", "- LL-PROC-01, LL-PROC-01", "retired twice"},
	} {
		l := consistent(t)
		require.Contains(t, l.index, c.old, name)
		l.index = strings.Replace(l.index, c.old, c.new, 1)
		require.Contains(t, strings.Join(l.audit(), "\n"), c.want, name)
	}
}

func TestAuditRefusesFiles(t *testing.T) {
	for name, c := range map[string]struct{ file, text, want string }{
		"no area":                  {"x.csv", columns + rowRead, "is not <area>/<name>.csv"},
		"unknown area":             {"jars/x.csv", columns + rowRead, "is not <area>/<name>.csv"},
		"another kind":             {"process/x.json", "{}\n", "is not <area>/<name>.csv"},
		"too deep":                 {"process/a/x.csv", columns + rowRead, "is not <area>/<name>.csv"},
		"capitals":                 {"process/X.csv", columns + rowRead, "is not <area>/<name>.csv"},
		"not a table":              {"process/y.csv", columns + "11\n", "wrong number of fields"},
		"no source column":         {"process/y.csv", "a,place,basis\n1,page 1,computed\n", "has no column source"},
		"no place column":          {"process/y.csv", "a,source,basis\n1,USDAGuide5Rev1994,recalled\n", "has no column place"},
		"no basis column":          {"process/y.csv", "a,source,place\n1,USDAGuide5Rev1994,page 1\n", "has no column basis"},
		"no basis":                 {"process/y.csv", columns + "11,,,USDAGuide5Rev1994,page 14,\n", "testdata/process/y.csv:2: "},
		"another basis":            {"process/y.csv", columns + "11,,,USDAGuide5Rev1994,page 14,guessed\n", "testdata/process/y.csv:2: "},
		"an unknown source":        {"process/y.csv", columns + "11,,,USDAGuide5,page 14,read\n", "testdata/process/y.csv:2: "},
		"read without a source":    {"process/y.csv", columns + "11,,,,page 14,read\n", "needs a source"},
		"recalled without source":  {"process/y.csv", columns + "11,,,,page 14,recalled\n", "needs a source"},
		"read without a place":     {"process/y.csv", columns + "11,,,USDAGuide5Rev1994,,read\n", "needs a place"},
		"computed out of nowhere":  {"process/y.csv", columns + "11,,,,,computed\n", "needs a place"},
		"an invented figure":       {"process/y.csv", columns + "11,,,,here,invented\n", "testdata/process/y.csv:2: "},
		"a record with a source":   {"canner/records/y.csv", columns + "11,,,USDAGuide5Rev1994,,invented\n", "records are invented and have no source"},
		"a record that was read":   {"canner/records/y.csv", columns + "11,,,,,read\n", "records are invented and have no source"},
		"tolerance, no reason":     {"process/y.csv", columns + "11,0.3,,USDAGuide5Rev1994,page 14,read\n", "tolerance without a reason in the column note"},
		"tolerance in words":       {"process/y.csv", columns + "11,some,why,USDAGuide5Rev1994,page 14,read\n", `tolerance "some" is not a number above zero`},
		"tolerance of nothing":     {"process/y.csv", strings.Replace(columns, "tolerance", "tolerance_psi", 1) + "11,1,why,USDAGuide5Rev1994,page 14,read\n", "tolerance_psi: there is no column psi"},
		"not indexed":              {"process/y.csv", columns + rowRead, "| LL-PROC-03 | process/y.csv | ? | USDAGuide5Rev1994 | page 14 | 1 read | 1 | ? |"},
		"record not indexed":       {"series/records/y.csv", "a\n1\n2\n", "| LL-SERI-01 | series/records/y.csv | ? | - | - | 2 invented | 2 | ? |"},
		"not indexed, many places": {"process/y.csv", columns + "1,,,,a,computed\n1,,,,b,computed\n1,,,,c,computed\n1,,,,d,computed\n", "| LL-PROC-03 | process/y.csv | ? | - | ? | 4 computed | 4 | ? |"},
	} {
		l := consistent(t)
		l.files[c.file] = c.text
		require.Contains(t, strings.Join(l.audit(), "\n"), c.want, name)
	}
}
