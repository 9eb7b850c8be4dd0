package canner

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/pressure"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
)

func TestRunsRefused(t *testing.T) {
	perfect, readings := pintRun(t, time.Minute)
	good := record(t, readings)
	var contradiction ContradictionError
	for name, change := range map[string]func(*Run){
		"no schedule":                  func(r *Run) { r.Schedule = process.Schedule{} },
		"found for nowhere":            func(r *Run) { r.Schedule.Altitude = units.Stated[units.Length]{} },
		"found for another band":       func(r *Run) { r.Schedule.Altitude = units.State(2000 * units.Foot) },
		"found for the next band":      func(r *Run) { r.Schedule.Altitude = units.State(6000*units.Foot + 1) },
		"found for below the sea":      func(r *Run) { r.Schedule.Altitude = units.State(units.Length(-1)) },
		"a process of one's own":       func(r *Run) { r.Schedule.Process = time.Minute },
		"a pressure of one's own":      func(r *Run) { r.Schedule.Pressure-- },
		"no venting":                   func(r *Run) { r.Schedule.Vent = 0 },
		"the other gauge":              func(r *Run) { r.Schedule.Gauge = process.Weighted },
		"mark before the start":        func(r *Run) { r.Marks.HeatOn = units.State(-time.Second) },
		"mark after a week":            func(r *Run) { r.Marks.LidOff = units.State(8 * 24 * time.Hour) },
		"steam before heat":            func(r *Run) { r.Marks.HeatOn = units.State(15 * time.Minute) },
		"vent closed before steam":     func(r *Run) { r.Marks.VentClosed = units.State(13 * time.Minute) },
		"heat off before vent closed":  func(r *Run) { r.Marks.HeatOff = units.State(20 * time.Minute) },
		"timer after heat off":         func(r *Run) { r.Marks.Timer = units.State(140 * time.Minute) },
		"gone before heat off":         func(r *Run) { r.Marks.Gone = units.State(131 * time.Minute) },
		"weight off before vent close": func(r *Run) { r.Marks.WeightOff = units.State(20 * time.Minute) },
		"lid before weight":            func(r *Run) { r.Marks.LidOff = units.State(160 * time.Minute) },
		"lid before heat off":          func(r *Run) { r.Marks.WeightOff, r.Marks.LidOff = Marks{}.LidOff, units.State(100*time.Minute) },
	} {
		run := perfect
		change(&run)
		report, err := Audit(run, good)
		require.ErrorAs(t, err, &contradiction, name)
		require.Zero(t, report, name)
		_, err = Watch[units.Pressure](run)
		require.ErrorAs(t, err, &contradiction, name)
	}
	for name, change := range map[string]func(*Run){
		"no gap":             func(r *Run) { r.MaxGap = 0 },
		"negative gap":       func(r *Run) { r.MaxGap = -time.Minute },
		"gap too long":       func(r *Run) { r.MaxGap = 15*time.Minute + 1 },
		"minutes left out":   func(r *Run) { r.MaxGap = time.Hour },
		"asked before start": func(r *Run) { r.Asked = units.State(-time.Minute) },
	} {
		run := perfect
		change(&run)
		_, err := Audit(run, good)
		require.ErrorIs(t, err, units.ErrRange, name)
	}
	run := perfect
	run.Gauge.ReadsHigh = 2*units.PSI + 1
	var unsuitable UnsuitableError
	_, err := Audit(run, good)
	require.ErrorAs(t, err, &unsuitable)
	_, err = Audit(perfect, series.Series[units.Pressure]{})
	require.ErrorIs(t, err, series.ErrEmpty)
	_, err = Audit(perfect, series.Series[units.Temperature]{})
	require.ErrorIs(t, err, series.ErrEmpty)
}

// limitsOf are the limits of a run, and what is wrong with its barometer.
func limitsOf[T Record](t testing.TB, run Run) (l limits[T], barometer verdict.Kind) {
	t.Helper()
	around, err := run.around()
	require.NoError(t, err)
	require.NoError(t, l.set(&run, around.air))
	return l, around.barometer.Kind
}

// A barometer beside the canner moves the steam temperature required, as far as the weather does.
func TestBarometers(t *testing.T) {
	run, _ := pintRun(t, time.Minute)
	standard, err := pressure.AirAt(run.Altitude.Value)
	require.NoError(t, err)
	before, kind := limitsOf[units.Temperature](t, run)
	require.Zero(t, kind)
	for _, by := range []units.Pressure{-25 * units.Hectopascal, 25 * units.Hectopascal} {
		run.Barometer = Barometer{Reading: standard.Pressure() + by, Kind: Station}
		after, kind := limitsOf[units.Temperature](t, run)
		require.Zero(t, kind)
		require.Equal(t, by > 0, after.atLeast.Above(before.atLeast))
		run.Barometer.Kind = 0
		after, kind = limitsOf[units.Temperature](t, run)
		require.Equal(t, verdict.Missing, kind)
		require.Equal(t, before.atLeast, after.atLeast)
	}
	for _, c := range []struct {
		hPa    units.Pressure
		kind   BarometerKind
		wrong  verdict.Kind
		higher bool
	}{
		{1013, Station, verdict.Impossible, false}, {1013, 0, verdict.Impossible, false}, {863, SeaLevel, verdict.Impossible, false},
		{1013, SeaLevel, 0, false}, {1030, SeaLevel, 0, true}, {980, SeaLevel, 0, false},
		{960, SeaLevel, 0, false}, {1050, SeaLevel, 0, true}, {959, SeaLevel, verdict.Impossible, false}, {1051, SeaLevel, verdict.Impossible, false},
		{817, Station, verdict.Impossible, false}, {819, Station, 0, false}, {894, Station, 0, true}, {896, Station, verdict.Impossible, false},
	} {
		run.Barometer = Barometer{Reading: c.hPa * units.Hectopascal, Kind: c.kind}
		after, kind := limitsOf[units.Temperature](t, run)
		require.Equal(t, c.wrong, kind, "%v %v", c.hPa, c.kind)
		require.Equal(t, c.higher, after.atLeast.Above(before.atLeast), "%v %v", c.hPa, c.kind)
	}
	run.Barometer.Reading = 29 * units.PSI
	_, err = run.around()
	require.ErrorIs(t, err, units.ErrRange)
	run.Barometer = Barometer{Reading: standard.Pressure(), Kind: 9}
	_, err = run.around()
	require.ErrorIs(t, err, units.ErrUnknown)
}

// A stove elsewhere than the schedule was found for, or nobody knows where, cannot be judged: a run relabelled must not pass.
func TestTheStoveStandsWhereTheScheduleSays(t *testing.T) {
	run, readings := pintRun(t, time.Minute)
	for stove, kind := range map[units.Stated[units.Length]]verdict.Kind{
		{}:                               verdict.Missing,
		units.State(units.Length(0)):     verdict.Different,
		units.State(800 * units.Foot):    verdict.Different,
		units.State(4351 * units.Foot):   verdict.Different,
		units.State(4350*units.Foot - 1): verdict.Different,
	} {
		run.Altitude = stove
		report, err := Audit(run, record(t, readings))
		require.NoError(t, err)
		require.Equal(t, verdict.CannotTell, report.Verdict)
		require.Equal(t, "altitude "+kind.String(), kinds(report.Findings))
		require.Equal(t, Reprocess, report.Next[0].Action)
		run.Marks.LidOff = units.State(166 * time.Minute)
		report, err = Audit(run, record(t, readings))
		require.NoError(t, err)
		require.Equal(t, verdict.NotMet, report.Verdict, "doubt does not make it milder")
		run.Marks.LidOff = units.State(176 * time.Minute)
	}
}

// What can still be done depends on when the question is put.
func TestTooLateToReprocess(t *testing.T) {
	run, readings := pintRun(t, time.Minute)
	run.Marks.LidOff = units.State(166 * time.Minute)
	heatOff := run.Marks.HeatOff.Value
	for asked, want := range map[time.Duration][]Action{
		0:                          {Reprocess, Refrigerate, Discard},
		heatOff + 24*time.Hour:     {Reprocess, Refrigerate, Discard},
		heatOff + 24*time.Hour + 1: {Discard},
	} {
		run.Asked = units.State(asked)
		report, err := Audit(run, record(t, readings))
		require.NoError(t, err)
		require.Equal(t, verdict.NotMet, report.Verdict)
		var got []Action
		for _, s := range report.Next {
			got = append(got, s.Action)
			require.Equal(t, heatOff+24*time.Hour, s.At)
		}
		require.Equal(t, want, got)
	}
}

func TestLive(t *testing.T) {
	run, readings := pintRun(t, time.Minute)
	run.Marks.HeatOff, run.Marks.Gone, run.Marks.WeightOff, run.Marks.LidOff = Marks{}.HeatOff, Marks{}.Gone, Marks{}.WeightOff, Marks{}.LidOff
	live, err := Watch[units.Pressure](run)
	require.NoError(t, err)
	require.Equal(t, Clock{Owed: 100 * time.Minute}, live.Clock(), "nothing seen yet")
	require.Zero(t, live.LargestGap())
	for _, r := range readings[:61] {
		live, err = live.Next(r)
		require.NoError(t, err)
	}
	start := 24*time.Minute + 5*time.Minute*130/132
	c := live.Clock()
	require.True(t, c.Running)
	require.InDelta(t, float64(start), float64(c.From), 1)
	require.Equal(t, c.From+100*time.Minute, c.Done)
	require.Equal(t, 100*time.Minute, c.Held+c.Owed)
	_, err = live.Next(readings[30])
	require.ErrorIs(t, err, series.ErrBackward)
	same, _ := live.Next(readings[30])
	require.Equal(t, live, same, "a faulty reading changes nothing")
	later, err := live.Next(readings[66])
	require.NoError(t, err)
	require.Equal(t, readings[66].At, later.Clock().From, "nobody saw the six minutes")
	require.Equal(t, series.Stretch{From: 60 * time.Minute, To: 66 * time.Minute}, later.LargestGap())
	sagging, err := live.Next(pressures{At: 61 * time.Minute, Value: 0})
	require.NoError(t, err)
	require.Equal(t, Clock{Owed: 100 * time.Minute}, sagging.Clock())
	require.Equal(t, KeepGoing, sagging.Now().Action)
	_, err = Live[units.Pressure]{}.Next(readings[0])
	require.ErrorIs(t, err, units.ErrRange)
}

func TestWords(t *testing.T) {
	for want, got := range map[string]string{
		"not stated": Action(0).String(), "discard": Discard.String(), "put right": PutRight.String(), "action(9)": Action(9).String(),
		"no divider": ByDivider.String(), "limit of layers(5)": LayerLimit(5).String(), "proven": Proven.String(), "optimality(3)": Optimality(3).String(),
		"63:20": minute(63*time.Minute + 20*time.Second), "63:05": minute(63*time.Minute + 4*time.Second + 1), "64": minute(64*time.Minute - 1), "0": minute(0),
	} {
		require.Equal(t, want, got)
	}
}

// The extension's row above 8,000 ft is judged as well, and the report says that it was not in the tables.
func TestExtensionsAreJudged(t *testing.T) {
	run, readings := pintRun(t, time.Minute)
	run.Altitude = units.State(9000 * units.Foot)
	request := run.Schedule.Request()
	request.Altitude = run.Altitude
	s, err := process.FindExtension(request)
	require.NoError(t, err)
	run.Schedule = s
	for i := range readings {
		readings[i].Value = readings[i].Value * 152 / 132
	}
	report, err := Audit(run, record(t, readings))
	require.NoError(t, err)
	require.Equal(t, verdict.Met, report.Verdict)
	unseen := notSeen
	unseen.Citation = s.Citation
	require.Contains(t, report.Cautions, unseen)
	run.Schedule.Extension = false
	_, err = Audit(run, record(t, readings))
	require.Error(t, err)
}

// A record that begins at pressure, exactly, holds from its first reading. What lies before it, back to the timer, is a gap: it
// makes the difference between too short and not to be told.
func TestRecordsThatBeginUnderPressure(t *testing.T) {
	run, _ := pintRun(t, time.Minute)
	from := func(minute int) series.Series[units.Pressure] {
		var readings []pressures
		for m := minute; m <= 132; m++ {
			readings = append(readings, pressures{At: time.Duration(m) * time.Minute, Value: run.Schedule.Pressure})
		}
		return record(t, readings)
	}
	report, err := Audit(run, from(32))
	require.NoError(t, err)
	require.Equal(t, verdict.Met, report.Verdict)
	require.Equal(t, series.Stretch{From: 32 * time.Minute, To: 132 * time.Minute}, report.Held)
	report, err = Audit(run, from(60))
	require.NoError(t, err)
	require.Equal(t, verdict.CannotTell, report.Verdict)
	require.Equal(t, "gap not observed", kinds(report.Findings))
	require.Equal(t, series.Stretch{From: 29 * time.Minute, To: 60 * time.Minute}, report.Findings[0].When.Value)
	run.Marks.Timer = Marks{}.Timer
	report, err = Audit(run, from(60))
	require.NoError(t, err)
	require.Equal(t, verdict.NotMet, report.Verdict)
	require.Equal(t, "hold short", kinds(report.Findings))
}

// The steam temperature required is that of the published setting at this altitude, as worked out elsewhere to five digits.
func TestSteamRequired(t *testing.T) {
	judged := 0
	printed.Table(t, "pressure/band-margins.csv").Each(t, func(t *testing.T, r printed.Row) {
		run := Run{Altitude: units.State(quantity(t, r, "alt_ft", units.Foot)), MaxGap: time.Minute}
		want := process.Request{Product: process.Fish, Pack: process.RawPack, Jar: process.Pint, Gauge: process.Dial, Altitude: run.Altitude}
		find := process.Find
		switch r.Text("rule") {
		case "weighted":
			want.Gauge = process.Weighted
		case "dial":
		case "dial, 15 psi beyond the USDA tables":
			find = process.FindExtension
		default:
			return // no setting of the tables
		}
		var err error
		run.Schedule, err = find(want)
		require.NoError(t, err)
		require.Equal(t, quantity(t, r, "gauge_psi", units.PSI), run.Schedule.Pressure)
		l, _ := limitsOf[units.Temperature](t, run)
		printed.Within(t, r, "t_f", l.atLeast.In(units.FahrenheitScale, 6))
		judged++
	})
	require.Greater(t, judged, 10)
}
