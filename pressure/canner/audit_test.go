package canner

import (
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
)

// knots are the corners of the invented records.
func knots(t testing.TB) map[string][]printed.Row {
	all := map[string][]printed.Row{}
	for _, r := range printed.Table(t, "canner/records/runs.csv") {
		all[r.Text("case")] = append(all[r.Text("case")], r)
	}
	return all
}

// sampled reads the straight lines between the corners every so often, leaving out what the row says.
func sampled(t testing.TB, r printed.Row, corners []printed.Row) (times []time.Duration, values []decimal.Decimal) {
	t.Helper()
	require.NotEmpty(t, corners, "no record of this name")
	every := time.Duration(r.Int("every_s")) * time.Second
	from, to := time.Duration(1), time.Duration(0)
	if r.Has("left_out_min") {
		a, b, _ := strings.Cut(r.Text("left_out_min"), "-")
		first, err := time.ParseDuration(a + "m")
		require.NoError(t, err)
		last, err := time.ParseDuration(b + "m")
		require.NoError(t, err)
		from, to = first, last
	}
	i := 0
	for at := minutesOf(t, corners[0], "minute"); at <= minutesOf(t, corners[len(corners)-1], "minute"); at += every {
		for i+2 < len(corners) && minutesOf(t, corners[i+1], "minute") < at {
			i++
		}
		if at > from && at < to {
			continue
		}
		a, b := corners[i], corners[i+1]
		t0, t1 := minutesOf(t, a, "minute"), minutesOf(t, b, "minute")
		rise := b.Decimal("value").Sub(a.Decimal("value")).Mul(decimal.NewFromInt(int64(at - t0)))
		times = append(times, at)
		values = append(values, a.Decimal("value").Add(rise.DivRound(decimal.NewFromInt(int64(t1-t0)), 30)))
	}
	return times, values
}

func runOf(t testing.TB, r printed.Row) Run {
	t.Helper()
	altitude := quantity(t, r, "altitude_ft", units.Foot)
	s := schedule(t, r.Text("product"), r.Text("pack"), r.Text("jar"), r.Text("gauge"), altitude)
	return Run{
		Schedule: s, Altitude: units.State(altitude), Gauge: Gauge{ReadsHigh: quantity(t, r, "reads_high_psi", units.PSI)},
		MaxGap: minutesOf(t, r, "max_gap_min"),
		Marks: Marks{
			HeatOn: marked(t, r, "heat_on_min"), SteadySteam: marked(t, r, "steady_min"), VentClosed: marked(t, r, "closed_min"), Timer: marked(t, r, "timer_min"),
			HeatOff: marked(t, r, "heat_off_min"), Gone: marked(t, r, "gone_min"), WeightOff: marked(t, r, "weight_off_min"), LidOff: marked(t, r, "lid_off_min"),
		},
	}
}

func pressureRecord(t testing.TB, times []time.Duration, values []decimal.Decimal, unit units.Pressure) series.Series[units.Pressure] {
	var readings []pressures
	for i := range times {
		p, err := units.Of(values[i], unit)
		require.NoError(t, err)
		readings = append(readings, pressures{At: times[i], Value: p})
	}
	return record(t, readings)
}

func temperatureRecord(t testing.TB, times []time.Duration, values []decimal.Decimal, scale units.Scale) series.Series[units.Temperature] {
	var readings []series.Reading[units.Temperature]
	for i := range times {
		v, err := units.TemperatureOf(values[i], scale)
		require.NoError(t, err)
		readings = append(readings, series.Reading[units.Temperature]{At: times[i], Value: v})
	}
	return record(t, readings)
}

func TestRunsWorkedByHand(t *testing.T) {
	corners := knots(t)
	rows := printed.Table(t, "canner/audit-cases.csv")
	require.Len(t, corners, len(rows), "every record has its verdict")
	seen := map[verdict.Rule]bool{}
	rows.Each(t, func(t *testing.T, r printed.Row) {
		run := runOf(t, r)
		times, values := sampled(t, r, corners[r.Text("case")])
		var report Report
		var err error
		switch unit := r.Text("unit"); unit {
		case "psi":
			report, err = agree(t, run, pressureRecord(t, times, values, units.PSI))
		case "kPa":
			report, err = agree(t, run, pressureRecord(t, times, values, units.Kilopascal))
		default:
			report, err = agree(t, run, temperatureRecord(t, times, values, map[string]units.Scale{"F": units.FahrenheitScale, "C": units.CelsiusScale}[unit]))
		}
		require.NoError(t, err)
		require.Equal(t, r.Text("verdict"), report.Verdict.String(), "%v", report.Findings)
		require.Equal(t, r.Text("findings"), kinds(report.Findings))
		if r.Has("held_min") {
			printed.Within(t, r, "held_min", inMinutes(report.Held.Length()))
		}
		require.Equal(t, r.Text("next"), report.Next[0].Action.String())
		sound(t, run, report)
		for _, f := range report.Findings {
			seen[f.Rule] = true
		}
	})
	for _, rule := range []verdict.Rule{RuleVent, RuleComeUp, RuleTimer, RulePressure, RuleSag, RuleHold, RuleGap, RuleCooling, RuleOpening, RuleWait} {
		require.True(t, seen[rule], "no record breaks %v", rule)
	}
}

// agree audits a record and holds the clock of Live against it on every beginning of the record.
func agree[T Record](t *testing.T, run Run, whole series.Series[T]) (Report, error) {
	t.Helper()
	going := run
	going.Marks.HeatOff, going.Marks.Gone, going.Marks.WeightOff, going.Marks.LidOff = Marks{}.HeatOff, Marks{}.Gone, Marks{}.WeightOff, Marks{}.LidOff
	live, err := Watch[T](going)
	require.NoError(t, err)
	step := max(1, whole.Len()/40)
	for i := 0; i < whole.Len(); i++ {
		reading, _ := whole.At(i)
		live, err = live.Next(reading)
		require.NoError(t, err)
		if i%step != 0 {
			continue
		}
		so, err := series.New(whole.Readings()[:i+1])
		require.NoError(t, err)
		report, err := Audit(going, so)
		require.NoError(t, err)
		require.False(t, report.Verdict.Passes(), "a run that is not over is not met")
		watched, ok := live.Report()
		require.True(t, ok)
		require.Empty(t, cmp.Diff(report, watched))
		if report.Clock != (Clock{}) {
			require.Equal(t, report.Clock, live.Clock())
		}
		require.Equal(t, report.LargestGap, live.LargestGap())
	}
	return Audit(run, whole)
}

// sound holds for every report.
func sound(t testing.TB, run Run, r Report) {
	t.Helper()
	worst := verdict.Met
	for _, f := range r.Findings {
		require.NoError(t, f.Citation.Check())
		require.NotEmpty(t, f.What)
		require.NotZero(t, f.Kind)
		require.NotContains(t, f.String(), "not stated")
		require.LessOrEqual(t, f.When.Value.From, f.When.Value.To)
		if !f.Verdict.Passes() && r.Clock == (Clock{}) {
			_, said := r.StepFor(f.Rule)
			require.True(t, said, "what is to be done about %v", f)
		}
		worst = verdict.Worst(worst, f.Verdict)
	}
	require.Equal(t, verdict.Worst(worst, r.Verdict), r.Verdict, "no finding is worse than the verdict")
	if r.Verdict.Passes() {
		require.GreaterOrEqual(t, r.Held.Length(), run.Schedule.Process)
		require.Zero(t, r.Clock)
	}
	require.NotEmpty(t, r.Next)
	for _, s := range r.Next {
		require.NoError(t, s.Citation.Check())
		require.NotEmpty(t, s.Text)
	}
	require.GreaterOrEqual(t, r.Bridged, r.Held.Length())
	require.NotEmpty(t, r.Cautions)
	for _, c := range r.Cautions {
		require.NoError(t, c.Citation.Check())
		require.NotEmpty(t, c.Text)
		require.NotEmpty(t, c.ID)
	}
}

// Where a pressure sags more often than can be told apart, the last finding is of all the others, with the lowest.
func TestManySags(t *testing.T) {
	run, readings := pintRun(t, time.Minute)
	for sag := 0; sag < 10; sag++ {
		readings[35+8*sag].Value = units.Pressure(12-sag) * units.PSI
	}
	report, err := agree(t, run, record(t, readings))
	require.NoError(t, err)
	require.Equal(t, verdict.NotMet, report.Verdict)
	require.Equal(t, "hold short; sag short; sag short; sag short; sag short", kinds(report.Findings))
	last := report.Findings[4]
	require.Equal(t, "pressure, the lowest of 7 sags", last.What)
	require.Equal(t, units.Exactly(3*units.PSI), last.Stated)
	require.Greater(t, last.When.Value.Length(), 40*time.Minute)
}
