package series_test

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"math/rand"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// A number in a file is what the parser of its type makes of it, to the quantum, whatever its digits.
func TestNumbersAreTheParsers(t *testing.T) {
	rng := rand.New(rand.NewSource(1))
	digits := func(n int) string {
		b := make([]byte, n)
		for i := range b {
			b[i] = byte('0' + rng.Intn(10))
		}
		return string(b)
	}
	for i := 0; i < 20_000; i++ {
		text := []string{"", "-", "+"}[rng.Intn(3)] + digits(rng.Intn(5))
		if rng.Intn(3) > 0 {
			text += "." + digits(rng.Intn(20))
		}
		temperature(t, text, []string{"°C", "°F", "K"}[rng.Intn(3)])
		same1(t, text, []string{"psi", "kPa", "inHg", "mmHg", "torr", "mbar", "atm"}[rng.Intn(7)], units.ParsePressure)
		same1(t, text, []string{"g", "kg", "lb", "oz"}[rng.Intn(4)], units.ParseMass)
		same1(t, text, []string{"%", "‰", "ppm"}[rng.Intn(3)], units.ParseRatio)
	}
}

func temperature(t *testing.T, text, unit string) {
	t.Helper()
	want, err := units.ParseTemperature(text + " " + unit)
	if strings.HasPrefix(text, "-127") || strings.HasPrefix(text, "32767") {
		return // codes of broken probes, on whatever scale
	}
	switch want {
	case units.Celsius(-127), units.Celsius(1800), units.Celsius(3276.7), units.Celsius(32767):
		return
	}
	same1(t, text, unit, func(string) (units.Temperature, error) { return want, err })
}

func same1[T series.Value](t *testing.T, text, unit string, parse func(string) (T, error)) {
	t.Helper()
	f := counted()
	f.Unit = unit
	log, err := series.ReadCSV[T](strings.NewReader("time,value,x\n0,"+text+",x\n1,1,x\n"), f, nil)
	want, fault := parse(text + " " + unit)
	if err != nil {
		require.Error(t, fault, "%q is a number in %s: %v", text, unit, err)
		return
	}
	first, _ := log.Series.First()
	if text == "" {
		require.Equal(t, time.Second, first.At)
		return
	}
	require.NoError(t, fault, text)
	require.Equal(t, want, first.Value, "%s %s", text, unit)
}

// The cells of a row are those of encoding/csv, with a quotation mark in the line or without.
func TestCellsAreThoseOfEncodingCSV(t *testing.T) {
	rng := rand.New(rand.NewSource(2))
	for i := 0; i < 5000; i++ {
		var row []string
		for n := rng.Intn(6); n >= 0; n-- {
			row = append(row, []string{"a", "b c", "", "1.5", "x,y", `say "so"`, "é"}[rng.Intn(7)])
		}
		var file bytes.Buffer
		w := csv.NewWriter(&file)
		require.NoError(t, w.Write(append([]string{"1", "20"}, row...)))
		w.Flush()
		f := counted()
		f.Header, f.Only = 0, series.Filter{Column: series.Heading{Number: 2 + len(row)}, Text: "wanted"}
		if last := row[len(row)-1]; last != "" {
			f.Only.Text = last
			log, err := series.ReadCSV[units.Temperature](&file, f, nil)
			require.NoError(t, err)
			require.Equal(t, 1, log.Series.Len(), "%q", row)
		}
	}
}

// A clock in any of the ways to write it is the moment that package time makes of it.
func TestClocksAreThoseOfPackageTime(t *testing.T) {
	rng := rand.New(rand.NewSource(3))
	orders := map[string]series.DateOrder{
		"2006-01-02 15:04:05": 0, "2006-01-02T15:04:05": 0, "2006/1/2 15:04:05": 0, "20060102150405": 0, "20060102_150405": 0, "20060102-150405": 0,
		"2006-01-02T15:04:05Z07:00": 0, "2006-01-02 15:04:05-0700": 0, "02.01.2006 15:04:05": series.DayFirst, "2/1/2006 15:04:05": series.DayFirst,
		"1/2/2006 3:04:05 PM": series.MonthFirst, "1/2/06 03:04:05 pm": series.MonthFirst, "06.01.02 15:04:05": series.YearFirst,
		"2-Jan-2006 15:04:05": 0, "02.Jan.06 15:04:05": 0, "Jan 2, 2006 3:04:05 PM": 0, "Mon Jan 2 15:04:05 2006": 0, "Monday, 2 January 2006 15:04:05": 0,
		"15:04:05 02.01.2006": series.DayFirst, "2006-01-02 15:04:05.000": 0, "2006-01-02T15:04:05.000000Z": 0,
	}
	for layout, order := range orders {
		for i := 0; i < 300; i++ {
			a := time.Date(1971+rng.Intn(98), time.January, 1, 0, 0, rng.Intn(31_000_000), 0, time.UTC)
			b := a.Add(time.Duration(1+rng.Intn(100_000_000)) * time.Second)
			if b.Year() > 2068 {
				continue
			}
			f := dated()
			f.Order, f.Separator = order, series.Tabs
			log, err := read("time\tcore\n"+a.Format(layout)+"\t20\n"+b.Format(layout)+"\t21\n", f, nil)
			require.NoError(t, err, layout)
			require.Equal(t, b.Sub(a), log.Series.Span(), "%s to %s", a.Format(layout), b.Format(layout))
			require.True(t, log.Series.Origin().Clock.Equal(a), layout)
		}
	}
}

// Read in its zone, the clock on a wall gives the instants that it was set by, over every step of the zone.
func TestZonesAreThoseOfPackageTime(t *testing.T) {
	for _, name := range []string{"Europe/Berlin", "America/New_York", "Australia/Lord_Howe", "Asia/Kolkata", "America/St_Johns", "UTC"} {
		zone, err := time.LoadLocation(name)
		require.NoError(t, err)
		f := dated()
		f.Zone = name
		for _, step := range []time.Duration{7 * time.Minute, 30 * time.Minute} {
			var file strings.Builder
			file.WriteString("time,core\n")
			start := time.Date(2026, 1, 1, 0, 0, 0, 0, time.UTC)
			n := 0
			for at := start; at.Year() == 2026; at = at.Add(step) {
				fmt.Fprintf(&file, "%s,20\n", at.In(zone).Format("2006-01-02 15:04"))
				n++
			}
			log, err := read(file.String(), f, zone)
			require.NoError(t, err, name)
			require.Equal(t, n, log.Series.Len())
			require.Equal(t, step, log.Series.LongestGap().Length(), name)
			require.Equal(t, time.Duration(n-1)*step, log.Series.Span(), name)
		}
	}
}

// A record written in any shape is proposed as it was written, and read back as it was.
func TestWhatIsWrittenIsSniffed(t *testing.T) {
	rng := rand.New(rand.NewSource(4))
	for i := 0; i < 1500; i++ {
		w := shapeOf(rng)
		text := w.file()
		p, err := series.Sniff[units.Temperature]([]byte(text), series.Format{})
		require.NoError(t, err, text)
		require.Empty(t, p.Questions, text)
		log, err := series.ReadCSV[units.Temperature](strings.NewReader(text), p.Format, nil)
		require.NoError(t, err, text)
		require.Empty(t, cmp.Diff(w.readings, sinceFirst(log.Series.Readings())), text)
	}
}

// written is a made-up record and one of the shapes that loggers give it.
type written struct {
	sep, mark, layout string
	preamble, footer  string
	first, last       string // columns before and after, with their heading
	unit              string
	end               string
	start             time.Time
	readings          []series.Reading[units.Temperature]
}

func shapeOf(rng *rand.Rand) written {
	pick := func(all ...string) string { return all[rng.Intn(len(all))] }
	w := written{
		sep: pick(",", ";", "\t", "|"), mark: ".", end: pick("\n", "\r\n"), unit: pick("(°C)", "[oC]", "(deg C)", "(C)"),
		layout:   pick("2006-01-02 15:04:05", "2006-01-02T15:04:05", "02.01.2006 15:04", "20060102_150405", "2-Jan-2006 3:04:05 PM"),
		preamble: pick("", "Logger: invented\n", "\n\n", "# invented\n# logger\n", "Plot\nNo: 0\n"), footer: pick("", "End\n", "# end\n", "\n"),
		first: pick("", "No."), last: pick("", "RH (%)", "Battery", "note"),
		start: time.Date(2026, time.Month(1+rng.Intn(12)), 1+rng.Intn(28), rng.Intn(24), rng.Intn(60), 0, 0, time.UTC),
	}
	if w.sep != "," {
		w.mark = pick(".", ",")
	}
	step := time.Duration(1+rng.Intn(600)) * time.Minute
	for k := 0; k < 3+rng.Intn(40); k++ {
		w.readings = append(w.readings, series.Reading[units.Temperature]{At: time.Duration(k) * step, Value: units.Celsius(float64(rng.Intn(4000)-400) / 100)})
	}
	return w
}

func (w written) file() string {
	var b strings.Builder
	b.WriteString(w.preamble)
	row := func(cells ...string) {
		if w.first == "" {
			cells = cells[1:]
		}
		if w.last == "" {
			cells = cells[:len(cells)-1]
		}
		b.WriteString(strings.Join(cells, w.sep) + "\n")
	}
	row(w.first, "when", "core "+w.unit, w.last)
	for k, r := range w.readings {
		value := strings.Replace(fmt.Sprintf("%.2f", r.Value.Celsius()), ".", w.mark, 1)
		last := map[string]string{"RH (%)": fmt.Sprint(40 + k), "Battery": "3" + w.mark + "1", "note": ""}[w.last]
		row(fmt.Sprint(k+1), w.start.Add(r.At).Format(w.layout), value, last)
	}
	b.WriteString(w.footer)
	return strings.ReplaceAll(b.String(), "\n", w.end)
}

// Shifting there and back changes nothing, and a record cut in two and joined is the record.
func TestShiftAndJoin(t *testing.T) {
	rng := rand.New(rand.NewSource(5))
	for i := 0; i < 300; i++ {
		w := shapeOf(rng)
		whole, err := series.New(w.readings)
		require.NoError(t, err)
		if rng.Intn(2) == 0 {
			whole = whole.WithOrigin(series.Origin{Known: true, Dated: true, Clock: w.start})
		}
		by := time.Duration(rng.Int63n(1e15))
		there, err := whole.Shift(by)
		require.NoError(t, err)
		back, err := there.Shift(-by)
		require.NoError(t, err)
		require.True(t, whole.Equal(back))
		require.Equal(t, whole.Origin(), back.Origin())
		require.True(t, there.Equal(whole) == (by == 0))

		cut := 1 + rng.Intn(len(w.readings)-1)
		head, err := series.New(w.readings[:cut])
		require.NoError(t, err)
		tail, err := series.New(w.readings[cut:])
		require.NoError(t, err)
		if whole.Origin().Known { // the second part counts from its own clock
			head = head.WithOrigin(whole.Origin())
			tail = tail.WithOrigin(whole.Origin())
			tail, err = tail.Shift(-w.readings[cut].At)
			require.NoError(t, err)
		}
		joined, err := head.Join(tail)
		require.NoError(t, err)
		require.True(t, whole.Equal(joined))
		require.Equal(t, whole.Origin(), joined.Origin())
		_, err = tail.Join(head)
		require.Error(t, err, "the later one first")
	}
}

func TestShiftAndJoinRefuse(t *testing.T) {
	s := nightWatch()
	_, err := s.Shift(-time.Nanosecond)
	require.ErrorIs(t, err, series.ErrNegative)
	_, err = s.Shift(1<<63 - 1)
	require.ErrorIs(t, err, units.ErrRange)
	_, err = s.Join(s)
	require.ErrorIs(t, err, series.ErrBackward)
	one, err := series.New(s.Readings())
	require.NoError(t, err)
	_, err = s.Join(one)
	require.ErrorIs(t, err, series.ErrOrigin, "one clock only")
	_, err = one.Join(s)
	require.ErrorIs(t, err, series.ErrOrigin)
	undated := s.WithOrigin(series.Origin{Known: true, Clock: s.Origin().Clock})
	_, err = s.Join(undated)
	require.ErrorIs(t, err, series.ErrOrigin)
	far := s.WithOrigin(series.Origin{Known: true, Dated: true, Clock: time.Date(2600, 1, 1, 0, 0, 0, 0, time.UTC)})
	_, err = s.Join(far)
	require.ErrorIs(t, err, units.ErrRange)
	var none series.Series[units.Temperature]
	same, err := none.Join(s)
	require.NoError(t, err)
	require.True(t, same.Equal(s))
	same, err = s.Join(none)
	require.NoError(t, err)
	require.True(t, same.Equal(s))
}

// A time of day is a moment of the record if its clock shows it once, over midnight and over a step of the zone.
func TestTimeOfDay(t *testing.T) {
	berlin, err := time.LoadLocation("Europe/Berlin")
	require.NoError(t, err)
	const h = time.Hour
	night := func(start time.Time, hours int64) series.Series[units.Temperature] {
		s, err := series.New([]warmth{{0, units.Celsius(4)}, {time.Duration(hours) * h, units.Celsius(4)}})
		require.NoError(t, err)
		return s.WithOrigin(series.Origin{Known: true, Dated: true, Zoned: true, Clock: start})
	}
	autumn := night(time.Date(2026, 10, 24, 20, 0, 0, 0, berlin), 12)
	spring := night(time.Date(2026, 3, 28, 20, 0, 0, 0, berlin), 12)
	for name, c := range map[string]struct {
		s     series.Series[units.Temperature]
		clock time.Duration
		at    time.Duration
		want  error
	}{
		"at the start":            {autumn, 20 * h, 0, nil},
		"over midnight":           {autumn, 1 * h, 5 * h, nil},
		"after the repeated hour": {autumn, 4 * h, 9 * h, nil},
		"in the repeated hour":    {autumn, 2*h + h/2, 0, series.ErrAmbiguous},
		"after the hour left out": {spring, 4 * h, 7 * h, nil},
		"in the hour left out":    {spring, 2*h + h/2, 0, series.ErrOrigin},
		"after the end":           {spring, 10 * h, 0, series.ErrOrigin},
		"twice in two days":       {night(time.Date(2026, 8, 1, 20, 0, 0, 0, time.UTC), 30), 21 * h, 0, series.ErrAmbiguous},
		"once in two days":        {night(time.Date(2026, 8, 1, 20, 0, 0, 0, time.UTC), 30), 12 * h, 16 * h, nil},
		"in a week":               {night(time.Date(2026, 8, 1, 20, 0, 0, 0, time.UTC), 168), 12 * h, 0, series.ErrAmbiguous},
		"before midnight":         {autumn, -1, 0, units.ErrRange},
		"hour 24":                 {autumn, 24 * h, 0, units.ErrRange},
		"without a clock":         {autumn.WithOrigin(series.Origin{}), 20 * h, 0, series.ErrOrigin},
		"without readings":        {series.Series[units.Temperature]{}, 20 * h, 0, series.ErrEmpty},
	} {
		at, err := c.s.TimeOfDay(c.clock)
		if c.want != nil {
			require.ErrorIs(t, err, c.want, name)
			continue
		}
		require.NoError(t, err, name)
		require.Equal(t, c.at, at, name)
	}
}
