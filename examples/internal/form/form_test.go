package form

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

type part struct {
	D        units.Pressure `help:"of the gauge"`
	Duration time.Duration  `example:"\"5 min\""`
}

type file struct {
	A     string `wire:"required"`
	N     int
	C     part
	Clock Clock
	Depth units.Stated[units.Length]
	List  []part
	Words []string `example:"[\"a\"]"`
	lent
}

type lent struct {
	Order  series.DateOrder
	Pair   [2]part
	MoreID bool
}

func written(t *testing.T, name, text string) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), name)
	require.NoError(t, os.WriteFile(path, []byte(text), 0o600))
	return path
}

// A fault names its own line, not the one where the file ends, and its field.
func TestRead(t *testing.T) {
	for text, message := range map[string]string{
		"\ufeff{\"a\": \"x\"}": "",
		`{"a": "x", "clock": "21:05", "c": {"duration": "5 min"}}`: "",
		"{\n\"a\": \"x\",\n\"b\": 1\n}\n":                          `x.json: line 3: b`,
		"{\n\"a\": 13}":                                            "x.json: line 2: a",
		"{\"a\": \"x\",\n\"c\": {\"d\": true}}":                    "x.json: line 2: c.d",
		"{\"a\": \"x\", \"n\": \"ten\"}":                           "x.json: line 1: n",
		"{\"a\": \"x\"} {}":                                        "x.json: line 1",
		"{\n\"a\": \"x\"\n":                                        "x.json: line 3",
		"{\"a\": \"x\",\n\"a\": \"y\"}":                            "x.json: line 2: a",
		"{\"a\": \"x\",\n\"clock\": \"quarter past\"}":             `line 2: clock: "quarter past" is no clock time`,
		"{\"a\": \"x\",\n\"clock\": \"24:00\"}":                    `line 2: clock`,
		"{\"a\": \"x\", \"depth\": \"4350\"}":                      `depth: cannot read "4350" as a length`,
		"{\"a\": \"x\", \"depth\": null}":                          "depth",
		"{}":                                                       "a: ",
		"":                                                         "x.json: line 1",
	} {
		var form file
		err := Read(written(t, "x.json", text), &form)
		if message == "" {
			require.NoError(t, err, text)
			continue
		}
		require.ErrorContains(t, err, message, text)
	}
	require.ErrorContains(t, Read("missing.json", &file{}), "missing.json")
}

func TestClock(t *testing.T) {
	at := func(text string) (c Clock) {
		require.NoError(t, c.UnmarshalText([]byte(text)))
		written, err := c.MarshalText()
		require.NoError(t, err)
		require.Equal(t, text, string(written))
		return c
	}
	require.Equal(t, units.State(25*time.Minute), at("21:05").On(at("20:40")))
	require.Equal(t, units.State(3*time.Hour+20*time.Minute), at("00:00").On(at("20:40")), "past midnight")
	require.Equal(t, units.Stated[time.Duration]{}, at("").On(at("20:40")))
}

func TestFields(t *testing.T) {
	demo := written(t, "demo.json", `{"a": "words", "n": 3, "c": {"d": "11 psi"}, "list": [{"d": "12 psi"}]}`)
	fields, err := Fields(demo, file{})
	require.NoError(t, err)
	require.Equal(t, []Field{
		{"a", "text", "", `"words"`},
		{"n", "whole number", "", "3"},
		{"c.d", "pressure", "of the gauge", `"11 psi"`},
		{"c.duration", "time", "", `"5 min"`},
		{"clock", "clock", "", `"21:05"`},
		{"depth", "length", "", `"1 in"`},
		{"list[].d", "pressure", "of the gauge", `"12 psi"`},
		{"list[].duration", "time", "", `"5 min"`},
		{"words", "list of text", "", `["a"]`},
		{"order", "date order", "", `"year first"`},
		{"pair[].d", "pressure", "of the gauge", `"13 psi"`},
		{"pair[].duration", "time", "", `"5 min"`},
		{"moreID", "true or false", "", "true"},
	}, fields)
	require.Contains(t, fields[2].String(), "c.d")
	_, err = Fields(written(t, "bad.json", "{"), file{})
	require.Error(t, err)
	_, err = Fields(demo, struct {
		D units.Pressure `example:"\"11\""`
	}{})
	require.ErrorContains(t, err, "d: the example: ")
}

func TestReadLog(t *testing.T) {
	form := written(t, "x.json", "{}")
	log := func(text string, stated series.Format) (Log[units.Temperature], error) {
		require.NoError(t, os.WriteFile(filepath.Join(filepath.Dir(form), "log.csv"), []byte(text), 0o600))
		return ReadLog[units.Temperature](form, "log.csv", "format", stated)
	}
	read, err := log("time (min),fish (°F)\n0,40\n1,41\n", series.Format{})
	require.NoError(t, err)
	require.Equal(t, 2, read.Series.Len())
	require.Contains(t, read.Read, "log.csv read as time in ")
	require.Contains(t, read.Read, "in °F")

	read, err = log("time (min),fish (°F)\n0,40\n1,-127\n2,41\n", series.Format{})
	require.NoError(t, err)
	require.Equal(t, 2, read.Series.Len())
	require.Contains(t, read.Read, "1 rows hold no reading, the first in line 3")

	dates := "date,time,fish (°C)\n" + strings.Join([]string{"03/04/2031,10:01,4", "04/04/2031,10:01,5"}, "\n") + "\n"
	_, err = log(dates, series.Format{})
	require.ErrorContains(t, err, "not read, for the file does not say:")
	require.ErrorContains(t, err, `set format to {`)
	read, err = log(dates, series.Format{Order: series.DayFirst})
	require.NoError(t, err)
	require.Contains(t, read.Read, series.DayFirst.String())

	for _, bad := range []string{"", "time (min),fish (psi)\n0,1\n", "time (min),fish (°F)\n0,40\n0,41\n"} {
		_, err = log(bad, series.Format{})
		require.ErrorContains(t, err, "log.csv: ")
	}
	_, err = ReadLog[units.Temperature](form, "missing.csv", "format", series.Format{})
	require.ErrorContains(t, err, "missing.csv")
	_, err = ReadLogs[units.Temperature](form, "missing.csv", "format", series.Format{})
	require.ErrorContains(t, err, "missing.csv")
}

func TestReadLogs(t *testing.T) {
	form := written(t, "x.json", "{}")
	logs := func(text string) ([]Log[units.Temperature], error) {
		require.NoError(t, os.WriteFile(filepath.Join(filepath.Dir(form), "log.csv"), []byte(text), 0o600))
		return ReadLogs[units.Temperature](form, "log.csv", "format", series.Format{})
	}
	all, err := logs("time (min),thick (°F),damp corner (°C)\n0,40,4\n1,41,5\n")
	require.NoError(t, err)
	require.Len(t, all, 2)
	require.Equal(t, []string{"thick", "damp corner"}, []string{all[0].Name, all[1].Name})
	require.Contains(t, all[1].Read, "in °C")
	all, err = logs("time (min),thick (°F),gauge (psi)\n0,40,0\n1,41,1\n")
	require.NoError(t, err)
	require.Len(t, all, 1)
	for _, bad := range []string{"time (min),thick (psi),thin (psi)\n0,1,2\n",
		"time (min),a (°F),b (°F)\n0,1,2\n0,1,2\n", "time (min),a (°F),b (°X)\n0,1,2\n1,1,2\n", ""} {
		_, err = logs(bad)
		require.ErrorContains(t, err, "log.csv: ")
	}
}
