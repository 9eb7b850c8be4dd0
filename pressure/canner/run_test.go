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
)

func TestRunsRefused(t *testing.T) {
	perfect, readings := pintRun(t, time.Minute)
	good := record(t, readings)
	var contradiction ContradictionError
	for name, change := range map[string]func(*Run){
		"no schedule":                  func(r *Run) { r.Schedule = process.Schedule{} },
		"altitude of another band":     func(r *Run) { r.Altitude = 2000 * units.Foot },
		"altitude of the next band":    func(r *Run) { r.Altitude = 6000*units.Foot + 1 },
		"altitude below the sea":       func(r *Run) { r.Altitude = -1 },
		"a process of one's own":       func(r *Run) { r.Schedule.Process = time.Minute },
		"a pressure of one's own":      func(r *Run) { r.Schedule.Pressure-- },
		"no venting":                   func(r *Run) { r.Schedule.Vent = 0 },
		"no gauge":                     func(r *Run) { r.Gauge = Gauge{} },
		"the other gauge":              func(r *Run) { r.Gauge.Kind = process.Weighted },
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

// A barometer beside the canner moves the steam temperature required; one reduced to sea level is refused.
func TestBarometers(t *testing.T) {
	run, _ := pintRun(t, time.Minute)
	standard, err := pressure.AirAt(run.Altitude)
	require.NoError(t, err)
	before, err := limitsOf[units.Temperature](run)
	require.NoError(t, err)
	for _, by := range []units.Pressure{-25 * units.Hectopascal, 25 * units.Hectopascal} {
		run.Air, err = pressure.AirReading(standard.Pressure() + by)
		require.NoError(t, err)
		after, err := limitsOf[units.Temperature](run)
		require.NoError(t, err)
		require.Equal(t, by > 0, after.atLeast.Above(before.atLeast))
		_, err = limitsOf[units.Pressure](run)
		require.NoError(t, err)
	}
	run.Air, err = pressure.AirReading(1013 * units.Hectopascal)
	require.NoError(t, err)
	var contradiction ContradictionError
	_, err = limitsOf[units.Temperature](run)
	require.ErrorAs(t, err, &contradiction)
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
		require.Equal(t, NotMet, report.Verdict)
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
		"cannot tell": Verdict(0).String(), "not met": NotMet.String(), "met": Met.String(), "Verdict(3)": Verdict(3).String(),
		"nothing found": FindingKind(0).String(), "short wait": ShortWait.String(), "FindingKind(13)": FindingKind(13).String(),
		"nothing": Action(0).String(), "discard": Discard.String(), "Action(8)": Action(8).String(),
		"LayerLimit(0)": LayerLimit(0).String(), "Optimality(0)": Optimality(0).String(), "no divider": ByDivider.String(),
		"99 min 59 s": minutes(100*time.Minute - 1), "0 min": minutes(0), "63:20": minute(63*time.Minute + 20*time.Second),
	} {
		require.Equal(t, want, got)
	}
	require.Equal(t, NotMet, CannotTell.worse(NotMet))
	require.Equal(t, CannotTell, Met.worse(CannotTell))
	require.Equal(t, CannotTell, CannotTell.worse(Met))
	require.Equal(t, Met, Met.worse(Met))
}

// The extension's row above 8,000 ft is judged as well, and the report says that it was not in the tables.
func TestExtensionsAreJudged(t *testing.T) {
	run, readings := pintRun(t, time.Minute)
	run.Altitude = 9000 * units.Foot
	s, err := process.FindExtension(run.Schedule.Request(run.Altitude))
	require.NoError(t, err)
	run.Schedule = s
	for i := range readings {
		readings[i].Value = readings[i].Value * 152 / 132
	}
	report, err := Audit(run, record(t, readings))
	require.NoError(t, err)
	require.Equal(t, Met, report.Verdict)
	require.Equal(t, s.Citation, report.Cautions[len(report.Cautions)-1].Citation)
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
	require.Equal(t, Met, report.Verdict)
	require.Equal(t, series.Stretch{From: 32 * time.Minute, To: 132 * time.Minute}, report.Held)
	report, err = Audit(run, from(60))
	require.NoError(t, err)
	require.Equal(t, CannotTell, report.Verdict)
	require.Equal(t, "unobserved", kinds(report.Findings))
	require.Equal(t, series.Stretch{From: 29 * time.Minute, To: 60 * time.Minute}, report.Findings[0].When)
	run.Marks.Timer = Marks{}.Timer
	report, err = Audit(run, from(60))
	require.NoError(t, err)
	require.Equal(t, NotMet, report.Verdict)
	require.Equal(t, "too short", kinds(report.Findings))
}

// The steam temperature required is that of the published setting at this altitude, as worked out elsewhere to five digits.
func TestSteamRequired(t *testing.T) {
	judged := 0
	printed.Table(t, "pressure/band-margins.csv").Each(t, func(t *testing.T, r printed.Row) {
		run := Run{Altitude: quantity(t, r, "alt_ft", units.Foot), MaxGap: time.Minute}
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
		run.Gauge.Kind = want.Gauge
		require.Equal(t, quantity(t, r, "gauge_psi", units.PSI), run.Schedule.Pressure)
		l, err := limitsOf[units.Temperature](run)
		require.NoError(t, err)
		printed.Within(t, r, "t_f", l.atLeast.In(units.FahrenheitScale, 6))
		judged++
	})
	require.Greater(t, judged, 10)
}
