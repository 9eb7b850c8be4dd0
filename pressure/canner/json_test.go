package canner_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"os"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/pressure/canner"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

func show(v any) {
	text, err := json.Marshal(v)
	fmt.Println(string(text), err)
}

func ExampleRun() {
	run := saggingRun()
	text, _ := json.Marshal(run)
	var back canner.Run
	fmt.Println(json.Unmarshal(text, &back), back.Schedule == run.Schedule, back.Marks == run.Marks)
	fmt.Println(json.Unmarshal([]byte(`{"maxGap": "5 min"}`), &back))
	// Output:
	// <nil> true true
	// schedule (line 1, column 1): it is required and missing
}

func ExampleMarks() {
	var m canner.Marks
	err := json.Unmarshal([]byte(`{"steadySteam": "14 min", "ventClosed": "24 min", "timer": "30 min"}`), &m)
	fmt.Println(m.VentClosed.Value-m.SteadySteam.Value, m.HeatOff.Given, err)
	err = json.Unmarshal([]byte(`{"ventclosed": "24 min"}`), &m)
	fmt.Println(err)
	// Output:
	// 10m0s false <nil>
	// ventclosed (line 1, column 2): unknown field; expected heatOn, steadySteam, ventClosed, timer, heatOff, gone, weightOff, lidOff
}

func ExampleGauge() {
	var g canner.Gauge
	err := json.Unmarshal([]byte(`{"readsHigh": "1 psi"}`), &g)
	fmt.Println(units.Text(g.ReadsHigh, units.PSI, 0), err)
	// Output: 1 psi <nil>
}

func ExampleVessel() {
	show(kitchen)
	// Output:
	// {"diameter":"1 ft","height":"1 ft","rack":"0.5 in","divider":"0.125 in","capacity":"5.5 gal"} <nil>
}

func ExamplePacking() {
	p, _ := canner.FindPacking(7)
	show(p)
	// Output:
	// {"circles":7,"ratio":"300 %","optimality":"proven","citation":{"document":"Birgin and Gentil, New and improved results for packing identical unitary radius circles (2009)","source":"BirginGentil2009","place":"table 1, reference column, 7","basis":"read"}} <nil>
}

func ExampleBatch() {
	pint, _ := canner.FindJarSize("pint regular")
	l, _ := canner.Fit(raw(process.Pint, process.Dial), kitchen, pint, 0)
	b, _ := l.Loads(50)
	show(b)
	// Output:
	// {"loads":3,"last":14} <nil>
}

func ExampleFill() {
	j, _ := canner.FindJarSize("pint wide")
	fill, _ := j.CheckFill(400*units.Gram, units.Inch, canner.FleshDensity)
	show(fill)
	// Output:
	// {"possible":true,"most":"400.8 g","citation":{"place":"geometry of the jar; its bore and the brimful factor 1.05 are of the trade","basis":"practice"}} <nil>
}

func ExampleSpan() {
	c, _ := canner.CycleOf(raw(process.Pint, process.Dial))
	show(c.Pressurize)
	// Output:
	// {"least":"3 min","most":"5 min","citation":{"document":"USDA, Complete Guide to Home Canning, Guide 1 (AIB 539, rev. 2015)","source":"USDAGuide1Rev2015","place":"Using pressure canners, step 3, p. 1-22","basis":"read"}} <nil>
}

func ExampleSetting() {
	s, _ := canner.Gauge{}.Setting(raw(process.Pint, process.Weighted))
	show(s)
	// Output:
	// {"kind":"weighted","atLeast":"15 psi","corrected":"15 psi","citation":{"document":"USDA, Complete Guide to Home Canning, Guide 5 (AIB 539, rev. 2015)","source":"USDAGuide5Rev2015","place":"Fish in Pint Jars, p. 5-10","basis":"read"},"cautions":[{"id":"canner.rhythm","text":"A weighted gauge speaks by its rhythm: it jiggles two or three times a minute, or rocks slowly all the time, as its maker says. The clock starts when it does.","deciding":true,"citation":{"document":"USDA, Complete Guide to Home Canning, Guide 1 (AIB 539, rev. 1994)","source":"USDAGuide1Rev1994","place":"Recommended canners, part 3","basis":"read"}}]} <nil>
}

func ExampleClock() {
	l, _ := live().Next(series.Reading[units.Pressure]{At: 30 * time.Minute, Value: 13 * units.PSI})
	show(l.Clock())
	// Output:
	// {"running":true,"from":"30 min","done":"130 min","owed":"100 min"} <nil>
}

func ExampleReport() {
	report, _ := canner.Audit(saggingRun(), sagging())
	text, _ := json.Marshal(report)
	var back canner.Report
	fmt.Println(json.Unmarshal(text, &back), back.Verdict, back.Findings[0].Text(units.Metric))
	// Output: <nil> not met time at pressure: 1 h recorded, at least 100 min without a break published, short by 40 min, from minute 30 to 90
}

func ExampleReport_StepFor() {
	report, _ := canner.Audit(saggingRun(), sagging())
	step, found := report.StepFor(canner.RuleHold)
	fmt.Println(step.Action, found)
	_, found = report.StepFor(canner.RuleVent)
	fmt.Println(found)
	// Output:
	// reprocess true
	// false
}

func ExampleLive_Report() {
	l := live()
	_, any := l.Report()
	fmt.Println(any)
	for minute := time.Duration(29); minute < 40; minute++ {
		l, _ = l.Next(series.Reading[units.Pressure]{At: minute * time.Minute, Value: 13 * units.PSI})
	}
	report, _ := l.Report()
	fmt.Println(report.Verdict, report.Held.Length(), report.Next[0])
	// Output:
	// false
	// cannot tell 10m0s Keep going: the clock runs from minute 29. Another 90 min if nothing sags, until minute 129.
}

// A watch that was saved goes on where it was.
func ExampleLive_UnmarshalJSON() {
	l, _ := live().Next(series.Reading[units.Pressure]{At: 30 * time.Minute, Value: 13 * units.PSI})
	text, err := json.Marshal(l)
	fmt.Println(err)
	var back canner.Live[units.Pressure]
	fmt.Println(json.Unmarshal(text, &back), back.Clock() == l.Clock())
	// Output:
	// <nil>
	// <nil> true
}

func ExampleParseAction() {
	a, err := canner.ParseAction("keep going")
	fmt.Println(a == canner.KeepGoing, err)
	// Output: true <nil>
}

func ExampleParseLayerLimit() {
	l, err := canner.ParseLayerLimit("no divider")
	fmt.Println(l == canner.ByDivider, err)
	// Output: true <nil>
}

func ExampleParseOptimality() {
	_, err := canner.ParseOptimality("perfect")
	fmt.Println(err)
	// Output: unknown optimality "perfect": expected best known or proven
}

// saggingRun is an invented run, and sagging its record, a reading every five minutes: the pressure sags for a moment,
// and nobody starts the timer again.
func saggingRun() canner.Run {
	return canner.Run{
		Schedule: raw(process.Pint, process.Dial), Altitude: units.State(4350 * units.Foot), MaxGap: 5 * time.Minute,
		Marks: canner.Marks{
			SteadySteam: units.State(14 * time.Minute), VentClosed: units.State(24 * time.Minute), Timer: units.State(30 * time.Minute),
			HeatOff: units.State(130 * time.Minute), Gone: units.State(165 * time.Minute), WeightOff: units.State(165 * time.Minute),
			LidOff: units.State(176 * time.Minute),
		},
	}
}

func sagging() series.Series[units.Pressure] {
	var readings []series.Reading[units.Pressure]
	for minute := time.Duration(25); minute <= 130; minute += 5 {
		p := 13 * units.PSI
		if minute == 25 || minute == 95 {
			p = 12 * units.PSI
		}
		readings = append(readings, series.Reading[units.Pressure]{At: minute * time.Minute, Value: p})
	}
	record, _ := series.New(readings)
	return record
}

func TestReportIsTheGoldenOne(t *testing.T) {
	report, err := canner.Audit(saggingRun(), sagging())
	require.NoError(t, err)
	golden(t, "canner-report", report)
}

func TestRunIsTheGoldenOne(t *testing.T) { golden(t, "canner-run", saggingRun()) }

// golden compares what leaves the process with a reviewed file, and reads it back.
func golden[T any](t *testing.T, name string, v T) {
	t.Helper()
	text, err := json.MarshalIndent(v, "", "  ")
	require.NoError(t, err)
	want, err := os.ReadFile("../../testdata/golden/" + name + ".json")
	require.NoError(t, err)
	require.Empty(t, cmp.Diff(strings.TrimSpace(string(want)), string(text)))
	requireBack(t, v)
}

func requireBack[T any](t *testing.T, v T) {
	t.Helper()
	text, err := json.Marshal(v)
	require.NoError(t, err)
	var back T
	require.NoError(t, json.Unmarshal(text, &back), string(text))
	require.Empty(t, cmp.Diff(v, back))
}

func TestJSONComesBack(t *testing.T) {
	for _, gauge := range []process.Gauge{process.Dial, process.Weighted} {
		setting, err := canner.Gauge{}.Setting(raw(process.Quart, gauge))
		require.NoError(t, err)
		requireBack(t, setting)
		cycle, err := canner.CycleOf(raw(process.Quart, gauge))
		require.NoError(t, err)
		requireBack(t, cycle)
	}
	for _, jar := range canner.JarSizes() {
		requireBack(t, jar)
		cut, err := jar.Cut(units.Inch)
		require.NoError(t, err)
		requireBack(t, cut)
		fill, err := jar.CheckFill(units.Pound, units.Inch, canner.FleshDensity)
		require.NoError(t, err)
		requireBack(t, fill)
	}
	pint, err := canner.FindJarSize("pint regular")
	require.NoError(t, err)
	load, err := canner.Fit(raw(process.Pint, process.Dial), kitchen, pint, units.Inch/4)
	require.NoError(t, err)
	requireBack(t, load)
	batch, err := load.Loads(50)
	require.NoError(t, err)
	requireBack(t, batch)
	requireBack(t, kitchen)
	requireBack(t, saggingRun())
	requireBack(t, canner.Gauge{ReadsHigh: -units.PSI})
}

// A watch that is saved and read back after every reading ends as one that never was.
func TestWatchSurvivesBeingSaved(t *testing.T) {
	record := sagging()
	straight, err := canner.Watch[units.Pressure](saggingRun())
	require.NoError(t, err)
	saved := straight
	for i := 0; i < record.Len(); i++ {
		text, err := json.Marshal(saved)
		require.NoError(t, err)
		var back canner.Live[units.Pressure]
		require.NoError(t, json.Unmarshal(text, &back), string(text))
		reading, _ := record.At(i)
		saved, err = back.Next(reading)
		require.NoError(t, err)
		straight, err = straight.Next(reading)
		require.NoError(t, err)
		a, _ := straight.Report()
		b, _ := saved.Report()
		require.Empty(t, cmp.Diff(a, b))
	}
	_, err = json.Marshal(canner.Live[units.Pressure]{})
	require.ErrorIs(t, err, units.ErrUnset)
}

// Fields that nobody knows, that stand twice, that lost their unit or that are missing are refused, each by its name.
func TestJSONRefuses(t *testing.T) {
	whole, err := json.Marshal(saggingRun())
	require.NoError(t, err)
	for name, c := range map[string]struct{ from, to, field string }{
		"a longest gap without a unit": {`"maxGap":"5 min"`, `"maxGap":5`, "maxGap"},
		"no longest gap":               {`,"maxGap":"5 min"`, ``, "maxGap"},
		"a mark without a unit":        {`"timer":"30 min"`, `"timer":"30"`, "marks.timer"},
		"a mark that is null":          {`"timer":"30 min"`, `"timer":null`, "marks.timer"},
		"a mark twice":                 {`"timer":"30 min"`, `"timer":"30 min","timer":"29 min"`, "marks.timer"},
		"a mark that nobody knows":     {`"timer":"30 min"`, `"clock":"30 min"`, "marks.clock"},
		"an altitude without a unit":   {`},"altitude":"4350 ft"`, `},"altitude":4350`, "altitude"},
		"a field that nobody knows":    {`},"altitude"`, `},"height"`, "height"},
		"a gauge of words":             {`"marks":{`, `"gauge":{"readsHigh":"a pound"},"marks":{`, "gauge.readsHigh"},
	} {
		text := strings.Replace(string(whole), c.from, c.to, 1)
		require.NotEqual(t, string(whole), text, name)
		run := canner.Run{MaxGap: time.Second}
		err := json.Unmarshal([]byte(text), &run)
		var fault units.FieldError
		require.True(t, errors.As(err, &fault), "%s: %v", name, err)
		require.Equal(t, c.field, fault.Field, name)
		require.Equal(t, canner.Run{MaxGap: time.Second}, run, "stays as it was")
	}
	var live canner.Live[units.Pressure]
	for _, text := range []string{`{}`, `{"walk":{}}`, `{"run":{}}`, `{"run":` + string(whole) + `,"walk":{"up":1}}`} {
		require.Error(t, json.Unmarshal([]byte(text), &live), text)
	}
	changed := strings.Replace(string(whole), `"process":"100 min"`, `"process":"10 min"`, 1)
	var contradiction canner.ContradictionError
	require.ErrorAs(t, json.Unmarshal([]byte(`{"run":`+changed+`}`), &live), &contradiction, "a process of somebody's own")
}

func ExampleBarometer() {
	var b canner.Barometer
	err := json.Unmarshal([]byte(`{"reading": "864 hPa", "kind": "station pressure"}`), &b)
	fmt.Println(b.Kind == canner.Station, err)
	// Output: true <nil>
}

func ExampleBarometerKind() {
	fmt.Println(canner.SeaLevel)
	// Output: reduced to sea level
}

func ExampleParseBarometerKind() {
	_, err := canner.ParseBarometerKind("weather report")
	fmt.Println(err)
	// Output: unknown kind of barometer reading "weather report": expected station pressure or reduced to sea level
}

func ExampleRecorder() {
	run := saggingRun()
	run.Recorder.Pressure = units.PSI / 2
	report, _ := canner.Audit(run, sagging())
	fmt.Println(report.Required.Text(units.US, units.Up), "must be shown")
	// Output:
	// 13.5 psi must be shown
}

// Half-pints among the pints: one schedule is for one size.
func ExampleContents() {
	run := saggingRun()
	run.Contents = []canner.Contents{{Jar: process.Pint, Jars: 9}, {Jar: process.HalfPint, Jars: 9}}
	report, _ := canner.Audit(run, sagging())
	for _, f := range report.Findings {
		if f.Rule == canner.RuleContents {
			fmt.Println(f.Verdict, f)
		}
	}
	// Output:
	// cannot tell jar in the canner: half-pint stated, pint published
}

func ExampleNoticed() {
	show(canner.Noticed{Room: 18, Siphoned: 2})
	// Output:
	// {"room":18,"siphoned":2} <nil>
}

// share is how much of its full pressure an invented run has, in 35ths: from minute 30 to 130 all of it.
func share(minute time.Duration) units.Pressure {
	switch {
	case minute < 30:
		return 0
	case minute <= 130:
		return 35
	}
	return units.Pressure(max(0, 165-minute))
}

// An invented record of an absolute sensor, which shows the pressure of the air when the pot is open.
func ExampleAuditAbsolute() {
	run := saggingRun()
	run.Barometer = canner.Barometer{Reading: 860 * units.Hectopascal, Kind: canner.Station}
	var readings []series.Reading[units.Pressure]
	for minute := time.Duration(20); minute <= 170; minute += 5 {
		p := 86*units.Kilopascal + 91*units.Kilopascal*share(minute)/35
		readings = append(readings, series.Reading[units.Pressure]{At: minute * time.Minute, Value: p})
	}
	record, _ := series.New(readings)
	report, _ := canner.AuditAbsolute(run, record)
	fmt.Println(report.Verdict, report.Held.Length() >= report.Process, report.Margin.Text(units.Metric, units.Down))
	asGauge, _ := canner.Audit(run, record)
	fmt.Println(asGauge.Verdict)
	// Output:
	// met true 1.3 kPa
	// not met
}

// Invented records of one run: 13.2 psi on the gauge, and steam of 236 °F, which is too cold for it.
func ExampleAuditBoth() {
	run := saggingRun()
	var pressures []series.Reading[units.Pressure]
	var steam []series.Reading[units.Temperature]
	for minute := time.Duration(10); minute <= 170; minute += 5 {
		p := 132 * units.PSI / 350 * share(minute)
		t := units.Fahrenheit(203).Add(33 * units.FahrenheitDegrees / 35 * units.TemperatureChange(share(minute)))
		pressures = append(pressures, series.Reading[units.Pressure]{At: minute * time.Minute, Value: p})
		steam = append(steam, series.Reading[units.Temperature]{At: minute * time.Minute, Value: t})
	}
	byPressure, _ := series.New(pressures)
	byTemperature, _ := series.New(steam)
	both, _ := canner.AuditBoth(run, byPressure, byTemperature)
	fmt.Println(both.Verdict, both.ByPressure.Verdict, both.BySteam.Verdict)
	for _, f := range both.Findings {
		if f.Rule == canner.RuleAir {
			fmt.Println(f.Text(units.US))
		}
	}
	// Output:
	// not met met not met
	// steam, for its pressure: air was left in: 235.9 °F recorded, at least 238.8 °F wanted, too cold by 2.8 F°, at minute 30
}

func ExampleBoth() {
	both, _ := canner.AuditBoth(saggingRun(), sagging(), series.Series[units.Temperature]{})
	fmt.Println(both.Verdict)
	// Output: cannot tell
}

// The vent is closed at minute 24, while the watch runs.
func ExampleLive_Mark() {
	run := saggingRun()
	run.Marks = canner.Marks{SteadySteam: units.State(14 * time.Minute)}
	l, _ := canner.Watch[units.Pressure](run)
	l, _ = l.Next(series.Reading[units.Pressure]{At: 23 * time.Minute})
	run.Marks.VentClosed = units.State(24 * time.Minute)
	l, err := l.Mark(run.Marks)
	fmt.Println(err)
	run.Marks.Timer = units.State(20 * time.Minute)
	_, err = l.Mark(run.Marks)
	fmt.Println(err)
	// Output:
	// <nil>
	// mark of timer 20 min does not fit: expected no earlier than the last reading at 23 min
}
