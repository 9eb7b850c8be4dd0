package series_test

import (
	"bytes"
	"encoding/csv"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"
	_ "time/tzdata" // the zones of the files below, wherever the test runs

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

var faults = map[string]error{
	"ErrAmbiguous": series.ErrAmbiguous, "ErrBackward": series.ErrBackward, "ErrContradiction": series.ErrContradiction, "ErrEmpty": series.ErrEmpty,
	"ErrHeader": series.ErrHeader, "ErrMissing": series.ErrMissing, "ErrNegative": series.ErrNegative, "ErrNotAClock": series.ErrNotAClock,
	"ErrNotANumber": series.ErrNotANumber, "ErrNotText": series.ErrNotText, "ErrQuote": csv.ErrQuote, "ErrRagged": series.ErrRagged,
	"ErrRange": units.ErrRange, "ErrRepeated": series.ErrRepeated, "ErrShort": io.ErrUnexpectedEOF, "ErrUnit": series.ErrUnit,
}

// Every file of the folder comes to the readings, the questions or the refusal that a person keyed for it.
func TestFormats(t *testing.T) {
	printed.Table(t, "series/formats.csv").Each(t, func(t *testing.T, r printed.Row) {
		switch r.Text("quantity") {
		case "pressure":
			judgeFormat[units.Pressure](t, r)
		case "mass":
			judgeFormat[units.Mass](t, r)
		case "ratio":
			judgeFormat[units.Ratio](t, r)
		default:
			judgeFormat[units.Temperature](t, r)
		}
	})
}

func judgeFormat[T series.Value](t *testing.T, r printed.Row) {
	t.Helper()
	text := printed.File(t, "series/formats/"+r.Text("file"))
	stated := series.Format{Value: series.Heading{Name: r.Text("column")}}
	asks := strings.FieldsFunc(r.Text("asks"), func(c rune) bool { return c == '|' })
	format, err := interview[T](t, text, stated, asks)
	var log series.Log[T]
	if err == nil {
		log, err = series.ReadCSV[T](bytes.NewReader(text), format, location(t, format.Zone))
	}
	if r.Text("verdict") == "refuse" {
		require.Error(t, err, r.Text("file"))
		require.ErrorIs(t, err, faults[r.Text("error")], r.Text("file"))
		var fault series.LineError
		if r.Text("line") != "" {
			require.ErrorAs(t, err, &fault, r.Text("file"))
			require.Equal(t, int(r.Int("line")), fault.Line, "%s: %v", r.Text("file"), err)
		}
		return
	}
	require.NoError(t, err, r.Text("file"))
	require.Equal(t, r.Text("verdict") == "ask", len(asks) > 0)
	require.Empty(t, cmp.Diff(keyed[T](t, r.Text("readings"), r.Text("unit")), sinceFirst(log.Series.Readings())), r.Text("file"))
	var none []string
	for _, row := range log.Rows {
		none = append(none, printedRow(row))
	}
	require.Equal(t, r.Text("no_readings"), strings.Join(none, "|"), r.Text("file"))
}

// interview answers the questions as keyed, and holds the proposal to asking them and no others.
func interview[T series.Value](t *testing.T, text []byte, stated series.Format, asks []string) (series.Format, error) {
	t.Helper()
	for {
		p, err := series.Sniff[T](text, stated)
		if err != nil {
			return series.Format{}, err
		}
		if len(p.Questions) == 0 {
			require.Empty(t, asks, "not asked")
			require.NoError(t, p.Format.Check())
			return p.Format, nil
		}
		require.NotEmpty(t, asks, "asked: %v", p.Questions)
		kind, answer, _ := strings.Cut(asks[0], "=")
		ask, err := series.ParseAsk(kind)
		require.NoError(t, err)
		found := false
		for _, q := range p.Questions {
			found = found || q.Ask == ask
		}
		require.True(t, found, "%v is not among %v", ask, p.Questions)
		if answer == "" && ask == series.AskMissing { // asked in vain: the cell is no reading and no number
			p.Format.Open = nil
			_, err := series.ReadCSV[T](bytes.NewReader(text), p.Format, nil)
			return series.Format{}, err
		}
		asks = asks[1:]
		if stated, err = p.Answer(stated, ask, answer); err != nil {
			return series.Format{}, err
		}
	}
}

func location(t *testing.T, zone string) *time.Location {
	t.Helper()
	if !strings.Contains(zone, "/") {
		return nil
	}
	l, err := time.LoadLocation(zone)
	require.NoError(t, err)
	return l
}

// keyed reads "0 20.5|600 21.5": seconds after the first reading, and the value.
func keyed[T series.Value](t *testing.T, text, unit string) (readings []series.Reading[T]) {
	t.Helper()
	for _, pair := range strings.Split(text, "|") {
		at, value, ok := strings.Cut(pair, " ")
		require.True(t, ok, pair)
		since, err := time.ParseDuration(at + "s")
		require.NoError(t, err)
		readings = append(readings, series.Reading[T]{At: since, Value: parsed[T](t, value, unit)})
	}
	return readings
}

func parsed[T series.Value](t *testing.T, value, unit string) (v T) {
	t.Helper()
	if unit == "mH2O" { // 9.80665 kPa
		metres, err := units.ParsePressure(value + " kPa")
		require.NoError(t, err)
		*any(&v).(*units.Pressure) = metres / 100000 * 980665
		return v
	}
	require.NoError(t, any(&v).(interface{ UnmarshalText([]byte) error }).UnmarshalText([]byte(value+" "+unit)))
	return v
}

func sinceFirst[T series.Value](readings []series.Reading[T]) []series.Reading[T] {
	first := readings[0].At
	for i := range readings {
		readings[i].At -= first
	}
	return readings
}

func printedRow(row series.Row) string {
	var b strings.Builder
	for _, d := range []byte(time.Duration(row.Line).String()) { // "5ns" is line 5
		if d >= '0' && d <= '9' {
			b.WriteByte(d)
		}
	}
	return b.String() + " " + row.Why.String()
}

// The table names every file of the folder, every file is named once, and what must not be read outright is at
// least as much as what must.
func TestFormatsAreListed(t *testing.T) {
	files, err := filepath.Glob(filepath.Join("..", "..", "testdata", "series", "formats", "*.txt"))
	require.NoError(t, err)
	listed, must := map[string]bool{}, map[string]int{}
	for _, r := range printed.Table(t, "series/formats.csv") {
		require.False(t, listed[r.Text("file")], r.Text("file"))
		listed[r.Text("file")] = true
		must[r.Text("verdict")]++
		require.NotEmpty(t, r.Text("reason"), r.Text("file"))
	}
	require.Len(t, files, len(listed))
	for _, file := range files {
		require.True(t, listed[filepath.Base(file)], file)
		text, err := os.ReadFile(file)
		require.NoError(t, err)
		require.Less(t, len(text), 2000, "a small file: %s", file)
	}
	require.GreaterOrEqual(t, len(listed), 120)
	require.GreaterOrEqual(t, must["ask"]+must["refuse"], must["read"])
}
