package series_test

import (
	"encoding/csv"
	"errors"
	"strings"
	"testing"
	"testing/iotest"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

type warmth = series.Reading[units.Temperature]

func TestReadColumn(t *testing.T) {
	twoMinutes := []warmth{{0, units.Celsius(20)}, {time.Minute, units.Celsius(121.1)}, {2 * time.Minute, units.Celsius(-0.5)}}
	for name, file := range map[string]string{
		"seconds":                 "time (s),core (°C)\n0,20\n60,121.1\n120,-0.5\n",
		"milliseconds":            "time (ms),core (°C)\n0,20\n60000,121.1\n120000,-0.5\n",
		"minutes":                 "time (min),core (°C)\n0,20\n1,121.1\n2,-0.5\n",
		"hours":                   "elapsed [h],core [°C]\n0,20\n0.0166666666667,121.1\n0.0333333333333,-0.5\n",
		"words":                   "Time (Minutes),core (deg C)\n0,20\n1,121.1\n2,-0.5\n",
		"Fahrenheit":              "time (min),core (F)\n0,68\n1,249.98\n2,31.1\n",
		"kelvin":                  "time (min),core (K)\n0,293.15\n1,394.25\n2,272.65\n",
		"a clock":                 "clock,core (°C)\n21:05,20\n21:06,121.1\n21:07,-0.5\n",
		"a clock with seconds":    "time (hh:mm:ss),core (°C)\n9:05:30,20\n9:06:30,121.1\n9:07:30,-0.5\n",
		"a clock by its name":     "time (clock),core (°C)\n21:05,20\n21:06,121.1\n21:07,-0.5\n",
		"over midnight, dated":    "clock,core (°C)\n2026-08-01 23:59,20\n2026-08-02 00:00,121.1\n2026-08-02 00:01,-0.5\n",
		"dated to the second":     "clock,core (°C)\n2026-08-01 23:59:00,20\n2026-08-02 00:00:00,121.1\n2026-08-02 00:01:00.0,-0.5\n",
		"with a zone":             "clock,core (°C)\n2026-08-01T21:05:00Z,20\n2026-08-01T21:06:00Z,121.1\n2026-08-01T23:07:00+02:00,-0.5\n",
		"comments and blank rows": "# made up\n\ntime (min),core (°C)\n# now\n0,20\n\n1,121.1\n2,-0.5\n# end\n",
		"a byte order mark, CRLF": "\ufefftime (min),core (°C)\r\n0,20\r\n1,121.1\r\n2,-0.5\r\n",
		"no last newline":         "time (min),core (°C)\n0,20\n1,121.1\n2,-0.5",
		"spaces":                  " time ( min ) , core ( °C ) \n 0 , 20 \n1 , 121.1\n2 ,\t-0.5\n",
		"quotes":                  "\"time (min)\", \"core (°C)\"\n\"0\",\"20\"\n1,\"121.1\"\n2,-0.5\n",
		"time last":               "core (°C),time (min)\n20,0\n121.1,1\n-0.5,2\n",
		"other columns":           "time (min),gauge (psi),core (°C),humidity (%)\n0,0,20,1\n1,11,121.1,\n2,,-0.5,3\n",
		"signs and bare points":   "time (min),core (°C)\n0,+20\n1.,0121.10\n+2,-.5\n",
		"a semicolon in a name":   "time (s),core; left (°C)\n0,20\n60,121.1\n120,-0.5\n",
		"a bracket in the name":   "time (min),core (left) (°C)\n0,20\n1,121.1\n2,-0.5\n",
	} {
		s, err := series.ReadColumn[units.Temperature](strings.NewReader(file), "")
		require.NoError(t, err, name)
		if name == "hours" { // thirteen decimals of an hour are known to 0.2 ns
			require.Equal(t, 2*time.Minute, s.Span().Round(time.Microsecond))
			continue
		}
		require.Empty(t, cmp.Diff(twoMinutes, s.Readings(), cmpopts.EquateComparable(units.Temperature{})), name)
	}
}

func TestReadColumnKeepsElapsedTimes(t *testing.T) {
	s, err := series.ReadColumn[units.Mass](strings.NewReader("elapsed (s),weight (g)\n10,454\n10.000000001,453.59237\n"), "weight")
	require.NoError(t, err)
	require.Empty(t, cmp.Diff([]series.Reading[units.Mass]{
		{10 * time.Second, 454 * units.Gram}, {10*time.Second + 1, units.Pound},
	}, s.Readings()))
}

// Every way to write a unit of time, and what a count of two is.
func TestReadColumnTimeUnits(t *testing.T) {
	for unit, one := range map[string]time.Duration{
		"ms": time.Millisecond, "s": time.Second, "sec": time.Second, "second": time.Second, "seconds": time.Second,
		"min": time.Minute, "Minute": time.Minute, "MINUTES": time.Minute,
		"h": time.Hour, "hr": time.Hour, "hour": time.Hour, "hours": time.Hour,
	} {
		s, err := series.ReadColumn[units.Ratio](strings.NewReader("time ("+unit+"),salt (‰)\n0,35\n2,35\n"), "salt")
		require.NoError(t, err, unit)
		require.Equal(t, 2*one, s.Span(), unit)
	}
}

// Advice about midnight would mislead where the rows carry dates.
func TestReadColumnAdvisesOnMidnightOnly(t *testing.T) {
	const file = "clock,core (°C)\n2026-08-01 21:05,20\n2026-08-01 21:04,20\n"
	_, err := series.ReadColumn[units.Temperature](strings.NewReader(file), "core")
	require.EqualError(t, err, `line 3, column "clock", "2026-08-01 21:04": the time runs backward`)
}

// A figure in the file is the figure itself: a limit written the same way is met.
func TestReadColumnIsExact(t *testing.T) {
	s, err := series.ReadColumn[units.Temperature](strings.NewReader("time (s),core (F)\n0,240.1\n60,240.1\n"), "core")
	require.NoError(t, err)
	limit, err := units.ParseTemperature("240.1 °F")
	require.NoError(t, err)
	held, err := s.AtOrAbove(limit)
	require.NoError(t, err)
	require.Equal(t, time.Minute, held)
}

func TestReadColumnTakesTheNamedColumn(t *testing.T) {
	const file = "time (s),left (°C),right (°C),left (%),note\n0,20,30,5,lid on\n"
	for name, want := range map[string]units.Temperature{"left": units.Celsius(20), "right": units.Celsius(30)} {
		s, err := series.ReadColumn[units.Temperature](strings.NewReader(file), name)
		require.NoError(t, err)
		first, _ := s.First()
		require.Equal(t, want, first.Value)
	}
	share, err := series.ReadColumn[units.Ratio](strings.NewReader(file), "left")
	require.NoError(t, err)
	first, _ := share.First()
	require.Equal(t, 5*units.Percent, first.Value)
}

func TestReadColumns(t *testing.T) {
	const file = "time (min),left (°C),gauge (kPa),right (F)\n0,20,0,212\n5,21,75.8,213\n"
	columns, err := series.ReadColumns[units.Temperature](strings.NewReader(file))
	require.NoError(t, err)
	require.Len(t, columns, 2)
	require.Equal(t, "left", columns[0].Name)
	require.Equal(t, "right", columns[1].Name)
	require.Equal(t, []warmth{{0, units.Celsius(20)}, {5 * minute, units.Celsius(21)}}, columns[0].Series.Readings())
	require.Equal(t, []warmth{{0, units.Celsius(100)}, {5 * minute, units.Fahrenheit(213)}}, columns[1].Series.Readings())

	// The columns share their times; what is appended to one must not reach the other.
	_, err = columns[0].Series.Append(warmth{6 * minute, units.Celsius(1)})
	require.NoError(t, err)
	longer, err := columns[1].Series.Append(warmth{7 * minute, units.Celsius(2)})
	require.NoError(t, err)
	last, _ := longer.Last()
	require.Equal(t, warmth{7 * minute, units.Celsius(2)}, last)
}

const head = "# a comment\ntime (s),core (°C)\n0,20\n" // three lines

// Each fault on its own: the line, the column, the cell and what the message must tell the reader.
func TestReadColumnRefuses(t *testing.T) {
	const dated = "clock,core (°C)\n2026-08-01 21:05:00,20\n"
	for name, c := range map[string]struct {
		file         string
		line         int
		column, cell string
		want         error
		says         string
	}{
		"an empty file":           {"", 1, "", "", series.ErrEmpty, "empty"},
		"comments only":           {"# nothing\n#\n", 1, "", "", series.ErrEmpty, "empty"},
		"a header only":           {"# c\n\ntime (s),core (°C)\n", 3, "", "", series.ErrEmpty, "header"},
		"no header":               {"0,20\n1,21\n", 1, "", "", series.ErrHeader, "time (s)"},
		"semicolons":              {"time (s);core (°C)\n0;20\n", 1, "", "time (s);core (°C)", series.ErrHeader, "commas"},
		"tabs":                    {"time (s)\tcore (°C)\n0\t20\n", 1, "", "time (s)\tcore (°C)", series.ErrHeader, "commas"},
		"UTF-16":                  {"\xff\xfet\x00i\x00", 1, "", "", series.ErrHeader, "UTF-8"},
		"UTF-16, other order":     {"\xfe\xff\x00t\x00i", 1, "", "", series.ErrHeader, "UTF-8"},
		"Latin-1":                 {"time (s),core (\xb0C)\n0,20\n", 1, "", "time (s),core (\xb0C)", series.ErrHeader, "UTF-8"},
		"time without a unit":     {"time,core (°C)\n0,20\n", 1, "time", "", series.ErrUnit, "time (min)"},
		"time in a strange unit":  {"elapsed (d),core (°C)\n0,20\n", 1, "elapsed", "d", series.ErrUnit, "time (min)"},
		"no time column":          {"core (°C),gauge (psi)\n0,20\n", 1, "", "", series.ErrHeader, "clock"},
		"two time columns":        {"clock,time (s),core (°C)\n21:05,0,20\n", 1, "time", "s", series.ErrHeader, "clock"},
		"no value column":         {"time (s)\n0\n", 1, "", "", series.ErrHeader, "temperature"},
		"value without a unit":    {"time (s),core\n0,20\n", 1, "core", "", series.ErrUnit, "names no unit"},
		"empty brackets":          {"time (s),core ()\n0,20\n", 1, "core", "", series.ErrUnit, "names no unit"},
		"brackets of two kinds":   {"time (s),core (°C]\n0,20\n", 1, "core (°C]", "", series.ErrUnit, "names no unit"},
		"an unknown unit":         {"time (s),core (°R)\n0,20\n", 1, "core", "°R", series.ErrUnit, "°C, °F or K"},
		"an amount for a unit":    {"time (s),core (½ °C)\n0,20\n", 1, "core", "½ °C", series.ErrUnit, "not a unit"},
		"a range for a unit":      {"time (s),core (0-100 °C)\n0,20\n", 1, "core", "0-100 °C", series.ErrUnit, "not a unit"},
		"another quantity":        {"time (s),gauge (psi)\n0,11\n", 1, "gauge", "psi", series.ErrUnit, "pressure where a temperature"},
		"a column not understood": {"time (s),core (°C),lid\n0,20,30\n", 1, "lid", "", series.ErrUnit, "names no unit"},
		"a spare comma":           {"time (s),core (°C),\n0,20,\n", 1, "", "", series.ErrUnit, "names no unit"},
		"a column with no name":   {"time (s),(°C)\n0,20\n", 1, "", "°C", series.ErrHeader, "no name"},
		"two columns match":       {"time (s),core (°C),lid (F)\n0,20,30\n", 1, "lid", "F", series.ErrHeader, "beside core"},
		"two of one name":         {"time (s),core (°C),core (°C)\n0,20,30\n", 1, "core", "°C", series.ErrHeader, "that name"},
		"a missing value":         {head + "1,\n", 4, "core", "", series.ErrMissing, ""},
		"a missing time":          {head + ",20\n", 4, "time", "", series.ErrMissing, ""},
		"a short row":             {head + "1\n", 4, "", "1", series.ErrRagged, "1 where the header has 2"},
		"a long row":              {head + "1,20,3\n", 4, "", "1,20,3", series.ErrRagged, "3 where the header has 2"},
		"an open decimal comma":   {head + "1,121,1\n", 4, "", "1,121,1", series.ErrRagged, "a decimal mark is a point"},
		"a decimal comma":         {head + "1,\"121,1\"\n", 4, "core", "121,1", series.ErrNotANumber, "a decimal mark is a point"},
		"a decimal comma in time": {head + "\"1,5\",121\n", 4, "time", "1,5", series.ErrNotANumber, "a decimal mark is a point"},
		"grouped thousands":       {head + "\"1,000\",121\n", 4, "time", "1,000", series.ErrNotANumber, "not grouped"},
		"NaN":                     {head + "1,NaN\n", 4, "core", "NaN", series.ErrNotANumber, ""},
		"an infinity":             {head + "1,-Inf\n", 4, "core", "-Inf", series.ErrNotANumber, ""},
		"words":                   {head + "1,open\n", 4, "core", "open", series.ErrNotANumber, ""},
		"not set":                 {head + "1,not set\n", 4, "core", "not set", series.ErrNotANumber, ""},
		"a dash":                  {head + "1,-\n", 4, "core", "-", series.ErrNotANumber, ""},
		"two points":              {head + "1,1.2.1\n", 4, "core", "1.2.1", series.ErrNotANumber, ""},
		"an exponent":             {head + "1,1e2\n", 4, "core", "1e2", series.ErrNotANumber, "plain decimal"},
		"a great exponent":        {head + "1e999999999,2\n", 4, "time", "1e999999999", series.ErrNotANumber, "plain decimal"},
		"a fraction":              {head + "1,20½\n", 4, "core", "20½", series.ErrNotANumber, "plain decimal"},
		"digits without end":      {head + "1," + strings.Repeat("1", 41) + "\n", 4, "core", strings.Repeat("1", 41), series.ErrNotANumber, ""},
		"the same unit in a cell": {head + "1,121.1 °C\n", 4, "core", "121.1 °C", series.ErrUnit, "bare number"},
		"another unit in a cell":  {head + "1,240F\n", 4, "core", "240F", series.ErrUnit, "bare number"},
		"below absolute zero":     {head + "1,-274\n", 4, "core", "-274", units.ErrRange, "273.15"},
		"past the scale":          {head + "1,99999999999999\n", 4, "core", "99999999999999", units.ErrRange, ""},
		"time past the scale":     {head + "99999999999,20\n", 4, "time", "99999999999", units.ErrRange, "292 years"},
		"a repeated time":         {head + "0.0,21\n", 4, "time", "0.0", series.ErrRepeated, ""},
		"below the nanosecond":    {head + "0.0000000001,21\n", 4, "time", "0.0000000001", series.ErrRepeated, ""},
		"a backward time":         {head + "5,21\n# c\n\n4,21\n", 7, "time", "4", series.ErrBackward, ""},
		"a negative time":         {"time (s),core (°C)\n-1,20\n", 2, "time", "-1", series.ErrNegative, ""},
		"a quote left open":       {head + "1,\"20\n2,21\n", 4, "", "", csv.ErrQuote, ""},
		"a stray quote":           {head + "1,2\"0\n", 4, "", "", csv.ErrBareQuote, ""},
		"a count for a clock":     {"clock,core (°C)\n5,20\n", 2, "clock", "5", series.ErrNotAClock, "21:05"},
		"half a day clock":        {"clock,core (°C)\n9:05 PM,20\n", 2, "clock", "9:05 PM", series.ErrNotAClock, "21:05"},
		"hour 24":                 {"clock,core (°C)\n24:00,20\n", 2, "clock", "24:00", series.ErrNotAClock, ""},
		"the 30th of February":    {"clock,core (°C)\n2026-02-30 21:05,20\n", 2, "clock", "2026-02-30 21:05", series.ErrNotAClock, ""},
		"month first":             {"clock,core (°C)\n08/01/2026 21:05,20\n", 2, "clock", "08/01/2026 21:05", series.ErrNotAClock, "2026-08-01"},
		"a clock for a count":     {head + "21:05,20\n", 4, "time", "21:05", series.ErrNotANumber, ""},
		"another way of writing":  {dated + "21:06,20\n", 3, "clock", "21:06", series.ErrNotAClock, "2026-08-01 21:05:00"},
		"a zone all of a sudden":  {dated + "2026-08-01 21:06:00Z,20\n", 3, "clock", "2026-08-01 21:06:00Z", series.ErrNotAClock, ""},
		"past midnight":           {"clock,core (°C)\n23:59,20\n00:01,20\n", 3, "clock", "00:01", series.ErrBackward, "midnight needs dates"},
		"backward by the clock":   {"clock,core (°C)\n21:05,20\n21:07,20\n21:06,20\n", 4, "clock", "21:06", series.ErrBackward, "midnight needs dates"},
		"backward by the date":    {dated + "2026-08-01 21:04:00,20\n", 3, "clock", "2026-08-01 21:04:00", series.ErrBackward, ""},
		"repeated by the clock":   {"clock,core (°C)\n21:05,20\n21:05,20\n", 3, "clock", "21:05", series.ErrRepeated, ""},
		"centuries by the clock":  {dated + "2426-08-01 21:05:00,20\n", 3, "clock", "2426-08-01 21:05:00", units.ErrRange, "292 years"},
	} {
		_, err := series.ReadColumn[units.Temperature](strings.NewReader(c.file), "")
		var fault series.LineError
		require.ErrorAs(t, err, &fault, name)
		require.ErrorIs(t, err, c.want, name)
		require.Equal(t, series.LineError{Line: c.line, Column: c.column, Text: c.cell, Err: fault.Err}, fault, name)
		require.ErrorContains(t, err, c.says, name)
		_, err = series.ReadColumns[units.Temperature](strings.NewReader(c.file))
		if name == "two columns match" {
			require.NoError(t, err)
			continue
		}
		require.Equal(t, fault, err, name)
	}
}

func TestReadColumnRefusesTheName(t *testing.T) {
	const file = "time (s),core (°C),core (°C),gauge (psi),note,lid (°R)\n0,20,21,11,lid on,5\n"
	for column, c := range map[string]struct {
		want error
		says string
	}{
		"Core":  {series.ErrHeader, "no column of that name"},
		"core ": {series.ErrHeader, "no column of that name"},
		"core":  {series.ErrHeader, "two columns of that name"},
		"gauge": {series.ErrUnit, "a pressure where a temperature is wanted"},
		"note":  {series.ErrUnit, "names no unit"},
		"lid":   {series.ErrUnit, "°C, °F or K"},
		"time":  {series.ErrUnit, "a time where a temperature is wanted"},
	} {
		_, err := series.ReadColumn[units.Temperature](strings.NewReader(file), column)
		require.ErrorIs(t, err, c.want, column)
		require.ErrorContains(t, err, c.says, column)
	}
	for name, err := range map[string]error{
		"pressure": lastOf(series.ReadColumn[units.Pressure](strings.NewReader("time (s),note (x)\n0,1\n"), "note")),
		"mass":     lastOf(series.ReadColumn[units.Mass](strings.NewReader("time (s),note (x)\n0,1\n"), "note")),
		"ratio":    lastOf(series.ReadColumn[units.Ratio](strings.NewReader("time (s),note (x)\n0,1\n"), "note")),
		"amount":   lastOf(series.ReadColumn[units.Mass](strings.NewReader("time (s),fish (lb 6 oz)\n0,1\n"), "fish")),
		"absolute": lastOf(series.ReadColumn[units.Pressure](strings.NewReader("time (s),gauge (psig)\n0,1\n"), "gauge")),
	} {
		require.ErrorIs(t, err, series.ErrUnit, name)
	}
}

func lastOf[A any](_ A, err error) error { return err }

func TestReadColumnPassesOnAFaultOfTheReader(t *testing.T) {
	broken := errors.New("the card was pulled out")
	for _, sent := range []string{"", "time (s),core (°C)\n0,20\n"} {
		file := iotest.DataErrReader(strings.NewReader(sent))
		_, err := series.ReadColumn[units.Temperature](multi{file, iotest.ErrReader(broken)}, "")
		require.ErrorIs(t, err, broken)
	}
}

// multi reads the first to its end and then the second.
type multi struct {
	first, then interface{ Read([]byte) (int, error) }
}

func (m multi) Read(p []byte) (int, error) {
	if n, _ := m.first.Read(p); n > 0 {
		return n, nil
	}
	return m.then.Read(p)
}

// Whatever is read is a record that New would have made; whatever is not says on which line.
func FuzzReadColumn(f *testing.F) {
	for _, seed := range []string{
		"time (s),core (°C)\n0,20\n1,121.1\n", "# c\nelapsed [h],core [F],weight (g)\n0,1,2\n0.5,2,3\n",
		"clock,core (K)\n21:05,300\n21:06,301\n", "clock,core (°C)\n2026-08-01T21:05:00Z,20\n",
		"\ufefftime (min),\"core (°C)\"\r\n1,\"2\"\r\n", "time (s);core (°C)\n0;20\n", "time (s),core (½ °C)\n0,1\n",
	} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, file string) {
		s, err := series.ReadColumn[units.Temperature](strings.NewReader(file), "")
		judgeRead(t, s, err)
		columns, err := series.ReadColumns[units.Mass](strings.NewReader(file))
		if err != nil {
			judgeRead(t, series.Series[units.Mass]{}, err)
			return
		}
		for _, c := range columns {
			judgeRead(t, c.Series, nil)
		}
	})
}

func judgeRead[T series.Value](t *testing.T, s series.Series[T], err error) {
	t.Helper()
	if err != nil {
		var fault series.LineError
		require.ErrorAs(t, err, &fault)
		require.Positive(t, fault.Line)
		return
	}
	again, err := series.New(s.Readings())
	require.NoError(t, err)
	require.True(t, s.Equal(again))
}
