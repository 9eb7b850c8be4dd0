package canner

import (
	"math"
	"strings"
	"testing"
	"time"

	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
)

// statedRun is the run of a row, with all that the cases of doubt may state.
func statedRun(t testing.TB, r printed.Row) Run {
	t.Helper()
	run := runOf(t, r)
	run.Altitude = units.Stated[units.Length]{}
	if r.Text("stove_ft") != "not stated" {
		run.Altitude = units.State(quantity(t, r, "stove_ft", units.Foot))
	}
	if r.Has("recorder_psi") {
		run.Recorder.Pressure = quantity(t, r, "recorder_psi", units.PSI)
	}
	if r.Has("thermometer_c") {
		run.Recorder.Temperature = quantity(t, r, "thermometer_c", units.CelsiusDegrees)
	}
	if r.Has("barometer_hpa") {
		run.Barometer.Reading = quantity(t, r, "barometer_hpa", units.Hectopascal)
	}
	require.NoError(t, run.Barometer.Kind.UnmarshalText([]byte(r.Text("barometer"))))
	run.Contents = contents(t, r)
	run.Noticed.WeightSticks = r.Has("sticks")
	if r.Has("room") {
		run.Noticed.Room = int(r.Int("room"))
	}
	if r.Has("siphoned") {
		run.Noticed.Siphoned = int(r.Int("siphoned"))
	}
	return run
}

func contents(t testing.TB, r printed.Row) []Contents {
	t.Helper()
	first, other := Contents{}, Contents{}
	if r.Has("jars") {
		first.Jars = int(r.Int("jars"))
	}
	if r.Has("liquid") {
		first.Liquid = units.State(r.Text("liquid") == "yes")
	}
	require.NoError(t, other.Product.UnmarshalText([]byte(r.Text("other_product"))))
	require.NoError(t, other.Pack.UnmarshalText([]byte(r.Text("other_pack"))))
	require.NoError(t, other.Jar.UnmarshalText([]byte(r.Text("other_jar"))))
	switch {
	case other != (Contents{}):
		return []Contents{first, other}
	case first != (Contents{}):
		return []Contents{first}
	}
	return nil
}

// trembling adds what the row says that the sensor trembles by, up, down and back.
func trembling(t testing.TB, r printed.Row, values []decimal.Decimal) []decimal.Decimal {
	t.Helper()
	if !r.Has("noise") {
		return values
	}
	for i := range values {
		step := decimal.NewFromInt(int64([...]int{0, 2, -2, 1, -1, 0, -2, 2, -1, 1, 0}[i%11]))
		values[i] = values[i].Add(r.Decimal("noise").Mul(step).Div(decimal.NewFromInt(2)))
	}
	return values
}

// judged audits the record of a row and holds the watch against it.
func judged(t *testing.T, run Run, r printed.Row, corners []printed.Row) Report {
	t.Helper()
	times, values := sampled(t, r, corners)
	values = trembling(t, r, values)
	var report Report
	var err error
	switch unit := r.Text("unit"); unit {
	case "psi":
		report, err = agree(t, run, pressureRecord(t, times, values, units.PSI))
	case "kPa":
		report, err = agree(t, run, pressureRecord(t, times, values, units.Kilopascal))
	case "kPa absolute":
		report, err = AuditAbsolute(run, pressureRecord(t, times, values, units.Kilopascal))
	default:
		report, err = agree(t, run, temperatureRecord(t, times, values, map[string]units.Scale{"F": units.FahrenheitScale, "C": units.CelsiusScale}[unit]))
	}
	require.NoError(t, err)
	return report
}

func byCase(rows printed.Rows) map[string][]printed.Row {
	all := map[string][]printed.Row{}
	for _, r := range rows {
		all[r.Text("case")] = append(all[r.Text("case")], r)
	}
	return all
}

// What contradicts physics, itself or its marks is never a pass, and says what contradicts what.
func TestNothingImpossibleIsMet(t *testing.T) {
	corners := byCase(printed.Table(t, "canner/records/impossible.csv"))
	rows := printed.Table(t, "canner/impossible.csv")
	require.GreaterOrEqual(t, len(rows), 50)
	rows.Each(t, func(t *testing.T, r printed.Row) {
		run := statedRun(t, r)
		report := judged(t, run, r, corners[r.Text("case")])
		require.Equal(t, r.Text("verdict"), report.Verdict.String(), "%v", report.Findings)
		require.False(t, report.Verdict.Passes())
		require.Contains(t, strings.Split(kinds(report.Findings), "; "), r.Text("finding"), "%v", report.Findings)
		require.Equal(t, report.Verdict, report.Findings[0].Verdict, "the first finding decides")
		sound(t, run, report)
	})
}

// The gate does not cry wolf: what is honest keeps its verdict.
func TestWhatIsHonestKeepsItsVerdict(t *testing.T) {
	corners := byCase(printed.Table(t, "canner/records/honest.csv"))
	rows := printed.Table(t, "canner/honest.csv")
	require.GreaterOrEqual(t, len(rows), 25)
	rows.Each(t, func(t *testing.T, r printed.Row) {
		run := statedRun(t, r)
		report := judged(t, run, r, corners[r.Text("case")])
		require.Equal(t, r.Text("verdict"), report.Verdict.String(), "%v", report.Findings)
		require.Equal(t, r.Text("finding"), kinds(report.Findings))
		sound(t, run, report)
		if r.Text("verdict") == "met" {
			require.True(t, report.Margin.IsStated())
			require.Positive(t, report.HiddenSag)
			require.LessOrEqual(t, report.HiddenSag, run.MaxGap)
		}
	})
}

// Adding doubt never improves a verdict: every honest run with each thing that may be doubted.
func TestDoubtNeverImproves(t *testing.T) {
	corners := byCase(printed.Table(t, "canner/records/honest.csv"))
	doubts := map[string]func(*Run){
		"no altitude":     func(r *Run) { r.Altitude = units.Stated[units.Length]{} },
		"other altitude":  func(r *Run) { r.Altitude.Value += 100 * units.Foot },
		"other jars":      func(r *Run) { r.Contents = append(r.Contents, Contents{Jar: 9 - r.Schedule.Jar}) },
		"barometer":       func(r *Run) { r.Barometer = Barometer{Reading: 700 * units.Hectopascal, Kind: Station} },
		"late timer":      func(r *Run) { r.Marks.Timer = units.State(r.Marks.HeatOff.Value - 10*time.Minute) },
		"late closing":    func(r *Run) { r.Marks.VentClosed.Value += 20 * time.Minute; r.Marks.Timer = Marks{}.Timer },
		"early heat off":  func(r *Run) { r.Marks.HeatOff.Value -= 90 * time.Minute; r.Marks.Timer = Marks{}.Timer },
		"early opening":   func(r *Run) { r.Marks.WeightOff.Value = r.Marks.HeatOff.Value + 5*time.Minute },
		"recorder is off": func(r *Run) { r.Recorder = Recorder{Pressure: units.PSI, Temperature: 2 * units.CelsiusDegrees} },
		"thermometer off": func(r *Run) { r.Recorder.Temperature = units.CelsiusDegrees },
	}
	printed.Table(t, "canner/honest.csv").Each(t, func(t *testing.T, r printed.Row) {
		if r.Text("unit") == "kPa absolute" || r.Int("every_s") < 60 {
			return
		}
		before := judged(t, statedRun(t, r), r, corners[r.Text("case")])
		for name, doubt := range doubts {
			run := statedRun(t, r)
			doubt(&run)
			if run.check() != nil {
				continue
			}
			after := judged(t, run, r, corners[r.Text("case")])
			require.GreaterOrEqual(t, after.Verdict, before.Verdict, name)
			if name == "no altitude" || name == "other altitude" || name == "barometer" {
				require.False(t, after.Verdict.Passes(), name)
			}
		}
	})
}

// A bare number where a quantity was meant is refused by its size, just below the least that is believed and not at it.
func TestBareNumbersAreRefused(t *testing.T) {
	perfect, readings := pintRun(t, time.Minute)
	for name, c := range map[string]struct {
		refused, accepted func(*Run)
	}{
		"altitude":    {func(r *Run) { r.Altitude = units.State[units.Length](4350) }, func(r *Run) { r.Altitude = units.State(units.Length(units.Millimetre)) }},
		"dial":        {func(r *Run) { r.Gauge.ReadsHigh = units.PSI/1000 - 1 }, func(r *Run) { r.Gauge.ReadsHigh = units.PSI / 1000 }},
		"low dial":    {func(r *Run) { r.Gauge.ReadsHigh = -1 }, func(r *Run) { r.Gauge.ReadsHigh = -units.PSI / 1000 }},
		"recorder":    {func(r *Run) { r.Recorder.Pressure = 1 }, func(r *Run) { r.Recorder.Pressure = units.PSI / 1000 }},
		"thermometer": {func(r *Run) { r.Recorder.Temperature = 1 }, func(r *Run) { r.Recorder.Temperature = units.CelsiusDegrees / 1000 }},
		"mark":        {func(r *Run) { r.Marks.HeatOn = units.State[time.Duration](5) }, func(r *Run) { r.Marks.HeatOn = units.State(time.Second) }},
		"longest gap": {func(r *Run) { r.MaxGap = 5 }, func(r *Run) { r.MaxGap = time.Second }},
	} {
		run := perfect
		c.refused(&run)
		_, err := Audit(run, record(t, readings))
		require.ErrorIs(t, err, units.ErrRange, name)
		run = perfect
		c.accepted(&run)
		_, err = Audit(run, record(t, readings))
		require.NoError(t, err, name)
	}
	for name, change := range map[string]func(*Run){
		"recorder too far off":    func(r *Run) { r.Recorder.Pressure = 2*units.PSI + 1 },
		"recorder below zero":     func(r *Run) { r.Recorder.Pressure = -units.PSI },
		"thermometer too far off": func(r *Run) { r.Recorder.Temperature = 6 * units.CelsiusDegrees },
		"jars below zero":         func(r *Run) { r.Contents = []Contents{{Jars: -1}} },
		"too many jars":           func(r *Run) { r.Contents = []Contents{{Jars: 101}} },
		"room below zero":         func(r *Run) { r.Noticed.Room = -1 },
		"siphoned below zero":     func(r *Run) { r.Noticed.Siphoned = math.MinInt },
	} {
		run := perfect
		change(&run)
		_, err := Audit(run, record(t, readings))
		require.ErrorIs(t, err, units.ErrRange, name)
	}
	run := perfect
	run.Altitude = units.State[units.Length](4350)
	_, err := Audit(run, record(t, readings))
	require.EqualError(t, err, "altitude of the stove 4350 (0.00435 mm): was the unit left out? Expected 0 or at least 1 mm")
}

// A kind of jar, pack or product that does not exist is an error, not another one.
func TestContentsOfNoKindAreRefused(t *testing.T) {
	run, readings := pintRun(t, time.Minute)
	for _, c := range []Contents{{Product: 99}, {Pack: 99}, {Jar: 99}} {
		run.Contents = []Contents{c}
		_, err := Audit(run, record(t, readings))
		require.ErrorIs(t, err, units.ErrUnknown)
	}
}
