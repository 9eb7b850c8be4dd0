package series_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// counted is the Format of a plain file: seconds in the first column, °C in the second.
func counted() series.Format {
	return series.Format{
		Separator: series.Commas, Decimal: series.DecimalPoint, Header: 1,
		Time:  []series.TimeColumn{{Column: series.Heading{Number: 1}, Part: series.Elapsed, Unit: "s"}},
		Value: series.Heading{Number: 2}, Unit: "°C",
	}
}

// dated is counted with date and clock in the first column.
func dated() series.Format {
	f := counted()
	f.Time = []series.TimeColumn{{Column: series.Heading{Number: 1}, Part: series.DateAndClock}}
	return f
}

func read(file string, f series.Format, l *time.Location) (series.Log[units.Temperature], error) {
	return series.ReadCSV[units.Temperature](strings.NewReader(file), f, l)
}

// What leaves a column of the time out is refused, however it came about: five mornings would become twenty minutes.
func TestReadCSVRefusesTimesLeftOut(t *testing.T) {
	clock := counted()
	clock.Time = []series.TimeColumn{{Column: series.Heading{Name: "Time"}, Part: series.Clock}}
	clock.Value = series.Heading{Name: "core"}
	for name, file := range map[string]string{
		"a date":           "Date,Time,core (°C)\n2026-08-01,08:00,4\n2026-08-02,08:05,5\n",
		"a date unnamed":   ",Time,core (°C)\n01.08.2026,08:00,4\n02.08.2026,08:05,5\n",
		"a count of days":  "Day,Time,core (°C)\n1,08:00,4\n2,08:05,5\n",
		"AM and PM":        "Time,AM/PM,core (°C)\n08:00,AM,4\n08:05,PM,5\n",
		"AM and PM, later": "Time,core (°C),half\n08:00,4,am\n08:05,5,pm\n",
	} {
		_, err := read(file, clock, nil)
		require.ErrorIs(t, err, series.ErrContradiction, name)
		_, err = series.ReadColumn[units.Temperature](strings.NewReader(strings.Replace(file, "Time", "clock", 1)), "core")
		require.ErrorIs(t, err, series.ErrContradiction, name)
	}
}

func TestReadColumnRefusesWhatWasReadWrong(t *testing.T) {
	for name, c := range map[string]struct {
		file string
		want error
	}{
		"a comma before a note":      {"time (min),core (°C),note\n0,3,8\n60,4,9\n", series.ErrAmbiguous},
		"a comma before an empty":    {"time (min),core (°C),event\n0,3.5,\n60,4,9\n", series.ErrAmbiguous},
		"a probe that fell out":      {"time (min),core (°C)\n0,4\n60,-127\n", series.ErrFault},
		"an open thermocouple":       {"time (min),core (°C)\n0,4\n60,1800\n", series.ErrFault},
		"a full register":            {"time (min),core (°C)\n0,4\n60,32767\n", series.ErrFault},
		"a full register of °F":      {"time (min),core (F)\n0,40\n60,32767\n", series.ErrFault},
		"the same in °F":             {"time (min),core (F)\n0,40\n60,-196.60\n", series.ErrFault},
		"an open thermocouple in °F": {"time (min),core (F)\n0,40\n60,3272\n", series.ErrFault},
	} {
		_, err := series.ReadColumn[units.Temperature](strings.NewReader(c.file), "core")
		require.ErrorIs(t, err, c.want, name)
	}
	// What stands near the codes is read, and so is a note that begins with a digit.
	_, err := series.ReadColumn[units.Temperature](strings.NewReader("time (min),core (°C),note\n0,85,2 lids\n60,-40,\n61,-126.9,\n"), "core")
	require.NoError(t, err)
}

func TestFormatRefuses(t *testing.T) {
	for name, change := range map[string]func(*series.Format){
		"no separator":         func(f *series.Format) { f.Separator = 0 },
		"an unknown separator": func(f *series.Format) { f.Separator = 99 },
		"no decimal mark":      func(f *series.Format) { f.Decimal = 0 },
		"an unknown encoding":  func(f *series.Format) { f.Encoding = 99 },
		"an unknown order":     func(f *series.Format) { f.Order = 99 },
		"unknown repeats":      func(f *series.Format) { f.Repeats = 99 },
		"no time":              func(f *series.Format) { f.Time = nil },
		"no part of the time":  func(f *series.Format) { f.Time[0].Part = 0 },
		"no unit of time":      func(f *series.Format) { f.Time[0].Unit = "" },
		"a unit of no time":    func(f *series.Format) { f.Time[0].Unit = "°C" },
		"a time nowhere":       func(f *series.Format) { f.Time[0].Column = series.Heading{} },
		"two counts":           func(f *series.Format) { f.Time = append(f.Time, f.Time[0]) },
		"half a day only": func(f *series.Format) {
			f.Time = []series.TimeColumn{{Column: series.Heading{Number: 1}, Part: series.HalfDay}}
		},
		"a year only":           func(f *series.Format) { f.Time[0].Part = series.Year },
		"a count of days only":  func(f *series.Format) { f.Time[0].Part = series.DayCount },
		"no wanted column":      func(f *series.Format) { f.Value = series.Heading{} },
		"a negative column":     func(f *series.Format) { f.Value = series.Heading{Number: -1} },
		"column 5,000":          func(f *series.Format) { f.Value = series.Heading{Number: 5000} },
		"a name, no header":     func(f *series.Format) { f.Header, f.Value = 0, series.Heading{Name: "core"} },
		"the time is the value": func(f *series.Format) { f.Value = series.Heading{Number: 1} },
		"no unit":               func(f *series.Format) { f.Unit = "" },
		"negative lines":        func(f *series.Format) { f.Preamble = -1 },
		"negative headings":     func(f *series.Format) { f.Header = -1 },
		"negative cells":        func(f *series.Format) { f.Cells = -1 },
		"a filter without text": func(f *series.Format) { f.Only = series.Filter{Column: series.Heading{Number: 2}} },
		"a location not given":  func(f *series.Format) { f.Zone = "Europe/Berlin" },
	} {
		f := counted()
		change(&f)
		_, err := read("time,core\n0,20\n", f, nil)
		require.ErrorIs(t, err, series.ErrOpen, name)
		var fault series.FormatError
		require.ErrorAs(t, err, &fault, name)
		require.NotEmpty(t, fault.Wants, name)
	}
	for unit, want := range map[string]error{"psi": series.ErrUnit, "0.5 °C": series.ErrUnit, "0.001 psi": series.ErrUnit, "½ °C": series.ErrUnit, "1": series.ErrUnit} {
		f := counted()
		f.Unit = unit
		_, err := read("time,core\n0,20\n", f, nil)
		require.ErrorIs(t, err, want, unit)
	}
	f := counted()
	f.Value = series.Heading{Number: 2, Name: "lid"}
	_, err := read("time,core\n0,20\n", f, nil)
	require.ErrorContains(t, err, `the headings are "time", "core"`)
	_, err = read("2026-08-01 21:00,20\n", func() series.Format { f := dated(); f.Header = 0; return f }(), time.UTC)
	require.ErrorIs(t, err, series.ErrOpen, "a location that the format does not name")
}

// A Format is plain data: what JSON makes of it reads the same file.
func TestFormatIsPlainData(t *testing.T) {
	p, err := series.Sniff[units.Temperature]([]byte(invented), series.Format{})
	require.NoError(t, err)
	p.Format.Repeats = series.DropRepeats
	text, err := json.Marshal(p.Format)
	require.NoError(t, err)
	require.Contains(t, string(text), `"Separator":"semicolons"`)
	var back series.Format
	require.NoError(t, json.Unmarshal(text, &back))
	require.Empty(t, cmp.Diff(p.Format, back))
	for _, wrong := range []string{`{"Separator":";"}`, `{"Decimal":"."}`, `{"Order":"dmy"}`, `{"Encoding":"latin"}`, `{"Time":[{"Part":"when"}]}`, `{"Repeats":"merge"}`} {
		require.Error(t, json.Unmarshal([]byte(wrong), &back), wrong)
	}
}

// endless is a file without end: the line again and again.
type endless struct {
	head, line string
	at         int
	read       int64
}

func (e *endless) Read(p []byte) (n int, err error) {
	for n < len(p) {
		if e.head != "" {
			k := copy(p[n:], e.head)
			e.head, n = e.head[k:], n+k
			continue
		}
		k := copy(p[n:], e.line[e.at:])
		e.at, n = (e.at+k)%len(e.line), n+k
	}
	e.read += int64(n)
	return n, nil
}

// Whatever has no end ends in an error after a bounded part of it.
func TestReadCSVIsBounded(t *testing.T) {
	for name, c := range map[string]struct {
		file *endless
		most int64
	}{
		"a line":            {&endless{head: "time,core\n0,20\n", line: "1"}, 1 << 20},
		"a line of cells":   {&endless{head: "time,core\n0,20\n", line: "1,"}, 1 << 20},
		"a header":          {&endless{line: "time,"}, 1 << 20},
		"an open quote":     {&endless{head: "time,core\n0,20\n", line: "\"a\n"}, 1 << 20},
		"one quote, lines":  {&endless{head: "time,core\n0,\"20", line: "aaaaaaaaaaaaaaaaaaaaa\n"}, 1 << 20},
		"blank lines":       {&endless{head: "time,core\n0,20\n", line: "\n"}, 8 << 20},
		"rows of no values": {&endless{head: "time,core\n0,20\n", line: "5,\n"}, 8 << 20},
		"bytes of nought":   {&endless{line: "\x00"}, 1 << 20},
	} {
		_, err := series.ReadCSV[units.Temperature](c.file, counted(), nil)
		require.Error(t, err, name)
		require.LessOrEqual(t, c.file.read, c.most, name)
		require.Less(t, len(err.Error()), 400, name)
		_, err = series.ReadColumn[units.Temperature](&endless{head: "time (s),core (°C)\n", line: c.file.line}, "core")
		require.Error(t, err, name)
	}
	_, err := series.Sniff[units.Temperature](make([]byte, 2<<20), series.Format{})
	require.ErrorIs(t, err, series.ErrTooLong)
}

// No error repeats more of a file than a person needs to find the place.
// A count that runs backward is refused: the readings beside it are no names of sensors, however few differ.
func TestSniffRefusesACountThatRunsBackward(t *testing.T) {
	var rows strings.Builder
	for minute := 0; minute < 60; minute += 2 {
		fmt.Fprintf(&rows, "%d,14.%d\n", minute, minute/2)
	}
	for _, last := range []string{"50,15.1\n", "58,15.1\n"} {
		p, err := series.Sniff[units.Pressure]([]byte("time (min),dial (psi)\n"+rows.String()+last), series.Format{})
		require.Error(t, err, "%v", p.Questions)
		require.True(t, errors.Is(err, series.ErrBackward) || errors.Is(err, series.ErrRepeated), "%v", err)
	}
}

func TestErrorsAreShort(t *testing.T) {
	long := strings.Repeat("x", 5000)
	digits := strings.Repeat("1", 50_000)
	for name, file := range map[string]string{
		"a cell":       "time,core\n0,20\n1," + long + "\n",
		"a number":     "time,core\n0,20\n1," + digits + "\n",
		"a time":       "time,core\n0,20\n" + digits + ",1\n",
		"a heading":    "time," + long + "\n0,20\n1,a1\n",
		"a row":        "time,core\n0,20\n1,2,3," + long + "\n",
		"a quoted one": "time,core\n0,20\n1,\"" + long + "\n",
	} {
		_, err := read(file, counted(), nil)
		var fault series.LineError
		require.ErrorAs(t, err, &fault, name)
		require.LessOrEqual(t, len(fault.Text), 60, name)
		require.LessOrEqual(t, len(fault.Column), 60, name)
		require.Less(t, len(err.Error()), 400, name)
		_, err = series.ReadColumn[units.Temperature](strings.NewReader(strings.NewReplacer("time", "time (s)", "core", "core (°C)").Replace(file)), "")
		require.Less(t, len(fmt.Sprint(err)), 400, name)
		_, err = series.Sniff[units.Temperature]([]byte(file), series.Format{})
		require.Less(t, len(fmt.Sprint(err)), 600, name)
	}
}

func TestReadCSVPassesOnAFaultOfTheReader(t *testing.T) {
	broken := errors.New("the card was pulled out")
	_, err := series.ReadCSV[units.Temperature](io.MultiReader(strings.NewReader("time,core\n0,20\n"), iotestErr{broken}), counted(), nil)
	require.ErrorIs(t, err, broken)
}

type iotestErr struct{ err error }

func (e iotestErr) Read([]byte) (int, error) { return 0, e.err }

// The hour that a zone repeats is told apart by the order of the rows, or refused; it is never merged.
func TestReadCSVResolvesTheRepeatedHour(t *testing.T) {
	berlin, err := time.LoadLocation("Europe/Berlin")
	require.NoError(t, err)
	f := dated()
	f.Zone = "Europe/Berlin"
	at := func(clocks ...string) string {
		var b strings.Builder
		b.WriteString("time,core\n")
		for i, c := range clocks {
			fmt.Fprintf(&b, "2026-10-25 %s,%d\n", c, 20+i)
		}
		return b.String()
	}
	for name, c := range map[string]struct {
		file string
		want []time.Duration // nil for a refusal
	}{
		"both passages":            {at("01:50", "02:10", "02:50", "02:10", "02:50", "03:10"), minutes(0, 20, 60, 80, 120, 140)},
		"once a hour":              {at("01:00", "02:00", "02:00", "03:00"), minutes(0, 60, 120, 180)},
		"starts in the first":      {at("02:40", "02:10", "03:10"), minutes(0, 30, 90)},
		"ends in the first":        {at("01:50", "02:10"), minutes(0, 20)},
		"jumps over it":            {at("01:50", "03:10"), minutes(0, 140)},
		"starts in one of the two": {at("02:40", "03:10"), nil},
		"ends in one of the two":   {at("01:00", "02:40"), nil},
		"passed once":              {at("01:50", "02:10", "02:50", "03:10"), nil},
		"three times":              {at("01:50", "02:10", "02:10", "02:10", "03:10"), nil},
		"back before it":           {at("02:10", "01:50"), nil},
	} {
		log, err := read(c.file, f, berlin)
		if c.want == nil {
			require.Error(t, err, name)
			require.True(t, errors.Is(err, series.ErrAmbiguous) || errors.Is(err, series.ErrBackward) || errors.Is(err, series.ErrRepeated), "%s: %v", name, err)
			continue
		}
		require.NoError(t, err, name)
		var got []time.Duration
		for _, r := range log.Series.Readings() {
			got = append(got, r.At)
		}
		require.Equal(t, c.want, got, name)
		require.True(t, log.Series.Origin().Zoned, name)
	}
	f.Repeats = series.DropRepeats // a row that looks the same an hour later is another row
	log, err := read("time,core\n2026-10-25 01:00,20\n2026-10-25 02:00,20\n2026-10-25 02:00,20\n2026-10-25 03:00,20\n", f, berlin)
	require.NoError(t, err)
	require.Equal(t, 3*time.Hour, log.Series.Span())
	require.Equal(t, time.Hour, log.Series.LongestGap().Length())
}

func minutes(all ...int) (out []time.Duration) {
	for _, m := range all {
		out = append(out, time.Duration(m)*time.Minute)
	}
	return out
}

// A missing reading is a gap, however it is missing; between slow readings it is named as well.
func TestMissingReadingsAreGaps(t *testing.T) {
	f := counted()
	f.Missing = []string{"NaN", "-9999"}
	for _, cell := range []string{"", "NaN", "nan", "-9999", "-9999.00", "-127", "1800.0"} {
		log, err := read("time,core,lid\n0,20,on\n60,21,on\n120,"+cell+",on\n180,22,on\n", f, nil)
		require.NoError(t, err, cell)
		require.Equal(t, series.Stretch{From: time.Minute, To: 3 * time.Minute}, log.Series.LongestGap(), cell)
		require.Equal(t, []series.Stretch{{From: time.Minute, To: 3 * time.Minute}}, log.Dropouts(), cell)
		require.Len(t, log.Rows, 1)
		require.Equal(t, 4, log.Rows[0].Line)
		require.Equal(t, 2*time.Minute, log.Rows[0].At)
	}
}
