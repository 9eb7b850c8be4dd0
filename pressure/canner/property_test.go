package canner

import (
	"math/rand"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
)

// pushed takes a perfect record and pushes what lies in a stretch of minutes below pressure.
func pushed(readings []pressures, from, to time.Duration, low units.Pressure) []pressures {
	all := append([]pressures(nil), readings...)
	for i := range all {
		if all[i].At >= from && all[i].At <= to {
			all[i].Value = min(all[i].Value, low)
		}
	}
	return all
}

// Any stretch of a perfect run pushed below pressure at any moment: never met unless what is left without a break is long enough.
func TestAnySagIsFound(t *testing.T) {
	run, perfect := pintRun(t, 30*time.Second)
	report, err := Audit(run, record(t, perfect))
	require.NoError(t, err)
	require.Equal(t, verdict.Met, report.Verdict)
	start, end := report.Held.From, report.Held.To
	random := rand.New(rand.NewSource(1))
	met := 0
	for i := 0; i < 3000; i++ {
		from := time.Duration(random.Intn(361)) * 30 * time.Second
		to := from + time.Duration(random.Intn(60))*30*time.Second
		low := run.Schedule.Pressure - 1 - units.Pressure(random.Int63n(int64(13*units.PSI)))
		report, err := Audit(run, record(t, pushed(perfect, from, to, low)))
		require.NoError(t, err)
		sound(t, run, report)
		left := end - start // at most, for the line falls before the first reading pushed
		if from <= end && to >= start {
			left = max(from-start, end-to)
		}
		if left < run.Schedule.Process {
			require.Equal(t, verdict.NotMet, report.Verdict, "%v to %v down to %v", from, to, low)
			continue
		}
		met++
		require.LessOrEqual(t, report.Held.Length(), left)
	}
	require.NotZero(t, met)
}

// One quantum below pressure in one reading breaks the run; exactly at pressure does not.
func TestOneQuantum(t *testing.T) {
	run, perfect := pintRun(t, time.Minute)
	for i, r := range perfect {
		if r.At < 50*time.Minute || r.At > 110*time.Minute {
			continue
		}
		at := append([]pressures(nil), perfect...)
		at[i].Value = run.Schedule.Pressure
		report, err := Audit(run, record(t, at))
		require.NoError(t, err)
		require.Equal(t, verdict.Met, report.Verdict)
		at[i].Value--
		report, err = Audit(run, record(t, at))
		require.NoError(t, err)
		require.Equal(t, verdict.NotMet, report.Verdict)
		require.Equal(t, "hold short; sag short", kinds(report.Findings))
		require.Equal(t, units.AmountOf(units.Pressure(1)), report.Findings[1].By)
		for _, s := range []units.System{units.US, units.Metric} {
			stated, wanted := units.Apart(report.Findings[1].Stated, report.Findings[1].Wanted, s)
			require.NotEqual(t, "at least "+stated, wanted, "one quantum below never looks like the limit")
		}
	}
}

// More pressure, a smaller error, a wider gap believed, later moments of opening: no verdict gets worse.
func TestSaferIsNeverJudgedWorse(t *testing.T) {
	random := rand.New(rand.NewSource(2))
	for i := 0; i < 400; i++ {
		run, readings := pintRun(t, time.Minute)
		for n := random.Intn(4); n > 0; n-- {
			from := time.Duration(random.Intn(180)) * time.Minute
			readings = pushed(readings, from, from+time.Duration(random.Intn(10))*time.Minute, units.Pressure(random.Int63n(int64(14*units.PSI))))
		}
		if random.Intn(2) == 0 {
			k := 30 + random.Intn(100)
			readings = append(readings[:k:k], readings[k+random.Intn(12):]...)
		}
		before, err := Audit(run, record(t, readings))
		require.NoError(t, err)
		higher := append([]pressures(nil), readings...)
		for k := range higher {
			if higher[k].At > 24*time.Minute && higher[k].At < 132*time.Minute {
				higher[k].Value += units.Pressure(random.Int63n(int64(units.PSI)))
			}
		}
		after, err := Audit(run, record(t, higher))
		require.NoError(t, err)
		require.LessOrEqual(t, after.Verdict, before.Verdict)
		wide := run
		wide.MaxGap = mostGap
		after, err = Audit(wide, record(t, readings))
		require.NoError(t, err)
		require.LessOrEqual(t, after.Verdict, before.Verdict)
		require.GreaterOrEqual(t, after.Held.Length(), before.Held.Length())
	}
}

// FuzzAudit takes any record and marks: no panic, and a report that is sound; met only with the whole time held.
func FuzzAudit(f *testing.F) {
	f.Add([]byte("\x0a\x10\x1e\x84"), uint16(14), uint16(24), uint16(29), uint16(132), uint16(165), uint16(176), uint8(0xff))
	f.Add([]byte("\xff\x00\xff\x00"), uint16(0), uint16(0), uint16(0), uint16(0), uint16(0), uint16(0), uint8(0))
	f.Fuzz(func(t *testing.T, data []byte, steady, closed, timer, off, gone, lid uint16, which uint8) {
		run, _ := pintRun(t, 10*time.Minute)
		mark := func(bit int, minute uint16) units.Stated[time.Duration] {
			if which>>bit&1 == 0 {
				return units.Stated[time.Duration]{}
			}
			return units.State(time.Duration(minute) * time.Minute)
		}
		run.Marks = Marks{SteadySteam: mark(0, steady), VentClosed: mark(1, closed), Timer: mark(2, timer), HeatOff: mark(3, off),
			Gone: mark(4, gone), WeightOff: mark(5, gone), LidOff: mark(6, lid)}
		var readings []pressures
		at := time.Duration(0)
		for i := 0; i+1 < len(data); i += 2 {
			readings = append(readings, pressures{At: at, Value: units.Pressure(data[i]) * units.PSI / 16})
			at += time.Duration(data[i+1])*7*time.Second + 1
		}
		if len(readings) == 0 {
			return
		}
		report, err := Audit(run, record(t, readings))
		if err != nil {
			return
		}
		sound(t, run, report)
		live, err := Watch[units.Pressure](run)
		require.NoError(t, err)
		for _, r := range readings {
			live, err = live.Next(r)
			require.NoError(t, err)
		}
		watched, _ := live.Report()
		require.Empty(t, cmp.Diff(report, watched))
	})
}

// The two systems of units agree to the quantum where the readings do.
func TestUnitsDoNotMatter(t *testing.T) {
	run, readings := pintRun(t, time.Minute)
	metric := make([]pressures, len(readings))
	for i, r := range readings {
		v, err := units.ParsePressure(r.Value.String())
		require.NoError(t, err)
		metric[i] = pressures{At: r.At, Value: v}
	}
	a, err := Audit(run, record(t, readings))
	require.NoError(t, err)
	b, err := Audit(run, record(t, metric))
	require.NoError(t, err)
	require.Equal(t, a, b)
}

// A temperature record of pure steam under a pressure record gives the same verdict, and the same stretch to a second.
func TestPressureAndTemperatureAgree(t *testing.T) {
	run, readings := pintRun(t, 15*time.Second)
	air, err := run.air()
	require.NoError(t, err)
	var steam []series.Reading[units.Temperature]
	for _, r := range readings {
		v, err := air.SteamUnder(r.Value)
		require.NoError(t, err)
		steam = append(steam, series.Reading[units.Temperature]{At: r.At, Value: v})
	}
	a, err := Audit(run, record(t, readings))
	require.NoError(t, err)
	b, err := Audit(run, record(t, steam))
	require.NoError(t, err)
	require.Equal(t, a.Verdict, b.Verdict)
	require.Less(t, (a.Held.Length() - b.Held.Length()).Abs(), time.Second)
}
