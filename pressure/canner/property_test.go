package canner

import (
	"encoding/json"
	"math/rand"
	"strings"
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

// marksBit are the marks of a run in their order, those whose bit is set.
func marksBit(which uint8, at [8]time.Duration) (m Marks) {
	for i, mark := range []*units.Stated[time.Duration]{&m.HeatOn, &m.SteadySteam, &m.VentClosed, &m.Timer, &m.HeatOff, &m.Gone, &m.WeightOff, &m.LidOff} {
		if which>>i&1 != 0 {
			*mark = units.State(at[i])
		}
	}
	return m
}

// watched reads a record with its marks as they are made, each when the reading before it has been seen, and holds the
// watch against the audit of the same readings and marks at every moment. It returns the last of both.
func watched[T Record](t *testing.T, run Run, readings []series.Reading[T]) (last Report) {
	t.Helper()
	marks, late := run.Marks.all(), Marks{}
	due := func(upTo time.Duration) (m Marks) {
		which := uint8(0)
		var at [8]time.Duration
		for i, mark := range marks {
			if mark.Given && mark.Value <= upTo {
				which, at[i] = which|1<<i, mark.Value
			}
		}
		return marksBit(which, at)
	}
	run.Marks = Marks{}
	live, err := Watch[T](run)
	require.NoError(t, err)
	for i, r := range readings {
		if now := due(r.At); now != late {
			late = now
			live, err = live.Mark(now)
			require.NoError(t, err)
		}
		live, err = live.Next(r)
		require.NoError(t, err)
		run.Marks = late
		want, err := Audit(run, record(t, readings[:i+1]))
		require.NoError(t, err)
		got, ok := live.Report()
		require.True(t, ok)
		require.Empty(t, cmp.Diff(want, got), "after reading %d at %v", i, r.At)
		last = got
		neverTooEarly(t, run, live, readings[:i+1])
		if i%17 == 0 {
			text, err := json.Marshal(live)
			require.NoError(t, err)
			var back Live[T]
			require.NoError(t, json.Unmarshal(text, &back), string(text))
			live = back
		}
	}
	return last
}

// neverTooEarly: where the live clock says that the time is full, the record is met once the rest is done without fault.
func neverTooEarly[T Record](t *testing.T, run Run, live Live[T], readings []series.Reading[T]) {
	t.Helper()
	step := live.Now()
	if !strings.Contains(step.Text, "The time is full") {
		return
	}
	now := readings[len(readings)-1].At
	run.Marks.HeatOff, run.Marks.Gone = units.State(now), units.State(now+40*time.Minute)
	run.Marks.WeightOff, run.Marks.LidOff = run.Marks.Gone, units.State(now+55*time.Minute)
	report, err := Audit(run, record(t, readings))
	require.NoError(t, err)
	require.Equal(t, verdict.Met, report.Verdict, "%v", report.Findings)
}

// A watch is the audit at every prefix, the marks made as they come; saved and read back on the way.
func TestWatchIsTheAudit(t *testing.T) {
	random := rand.New(rand.NewSource(3))
	for i := 0; i < 40; i++ {
		run, readings := pintRun(t, time.Minute)
		for n := random.Intn(4); n > 0; n-- {
			from := time.Duration(random.Intn(180)) * time.Minute
			readings = pushed(readings, from, from+time.Duration(random.Intn(10))*time.Minute, units.Pressure(random.Int63n(int64(14*units.PSI))))
		}
		for n := random.Intn(3); n > 0; n-- { // and up, at any moment
			k, up := random.Intn(len(readings)), units.Pressure(random.Int63n(int64(25*units.PSI)))
			for end := min(len(readings), k+random.Intn(30)); k < end; k++ {
				readings[k].Value += up
			}
		}
		if random.Intn(2) == 0 {
			k := 30 + random.Intn(100)
			readings = append(readings[:k:k], readings[k+random.Intn(12):]...)
		}
		whole := run.Marks.all()
		for k := range whole {
			whole[k].Value += time.Duration(random.Intn(241)-120) * time.Second
			whole[k].Value = max(0, whole[k].Value)
		}
		var at [8]time.Duration
		for k := range whole {
			at[k] = whole[k].Value
		}
		which := uint8(random.Intn(256))
		which |= uint8(random.Intn(256)) // most of the marks are written
		which |= uint8(random.Intn(256))
		run.Marks = marksBit(which, at)
		if run.Marks.check() != nil {
			continue
		}
		watched(t, run, readings)
	}
}

// The same of temperatures.
func TestWatchIsTheAuditOfTemperatures(t *testing.T) {
	random := rand.New(rand.NewSource(4))
	run, readings := pintRun(t, time.Minute)
	around, err := run.around()
	require.NoError(t, err)
	for i := 0; i < 10; i++ {
		var steam []series.Reading[units.Temperature]
		for _, r := range readings {
			v, err := around.air.SteamUnder(r.Value + units.Pressure(random.Int63n(int64(units.PSI))) - units.PSI/2)
			require.NoError(t, err)
			if random.Intn(60) == 0 {
				v = units.Celsius(float64(random.Intn(160)))
			}
			steam = append(steam, series.Reading[units.Temperature]{At: r.At, Value: v})
		}
		watched(t, run, steam)
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
		whole, _ := live.Report()
		require.Empty(t, cmp.Diff(report, whole))
		watched(t, run, readings)
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
	around, err := run.around()
	require.NoError(t, err)
	var steam []series.Reading[units.Temperature]
	for _, r := range readings {
		v, err := around.air.SteamUnder(r.Value)
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

// Dropping readings improves a verdict only where a pause that is believed hides what they showed, and the report says
// how long a sag may hide in it.
func TestDroppedReadingsHideNoMoreThanIsSaid(t *testing.T) {
	random := rand.New(rand.NewSource(5))
	improved := 0
	for i := 0; i < 600; i++ {
		run, readings := pintRun(t, time.Minute)
		from := time.Duration(30+random.Intn(100)) * time.Minute
		readings = pushed(readings, from, from+time.Duration(random.Intn(4))*time.Minute, units.Pressure(random.Int63n(int64(13*units.PSI))))
		before, err := Audit(run, record(t, readings))
		require.NoError(t, err)
		k := max(1, int(from/time.Minute)-random.Intn(3))
		n := 1 + random.Intn(7)
		after, err := Audit(run, record(t, append(readings[:k:k], readings[k+n:]...)))
		require.NoError(t, err)
		if after.Verdict >= before.Verdict {
			continue
		}
		improved++
		if after.Verdict.Passes() {
			if gap := (series.Stretch{From: readings[k-1].At, To: readings[k+n].At}); after.Held.From <= gap.From && after.Held.To >= gap.To {
				require.GreaterOrEqual(t, after.HiddenSag, gap.Length())
			}
			require.LessOrEqual(t, after.HiddenSag, run.MaxGap)
			require.Contains(t, after.Cautions, gapHidesSag)
		}
	}
	require.NotZero(t, improved)
}

// Less pressure or a shorter process never improves a verdict.
func TestLessIsNeverJudgedBetter(t *testing.T) {
	random := rand.New(rand.NewSource(6))
	for i := 0; i < 400; i++ {
		run, readings := pintRun(t, time.Minute)
		for n := random.Intn(3); n > 0; n-- {
			from := time.Duration(random.Intn(180)) * time.Minute
			readings = pushed(readings, from, from+time.Duration(random.Intn(10))*time.Minute, units.Pressure(random.Int63n(int64(14*units.PSI))))
		}
		before, err := Audit(run, record(t, readings))
		require.NoError(t, err)
		lower := append([]pressures(nil), readings...)
		for k := range lower {
			if lower[k].At > 24*time.Minute && lower[k].At < 132*time.Minute {
				lower[k].Value = max(0, lower[k].Value-units.Pressure(random.Int63n(int64(units.PSI/2))))
			}
		}
		after, err := Audit(run, record(t, lower))
		require.NoError(t, err)
		require.GreaterOrEqual(t, after.Verdict, before.Verdict)
		shorter := run
		shorter.Marks.HeatOff.Value -= time.Duration(random.Intn(60)) * time.Minute
		shorter.Marks.Timer.Value = min(shorter.Marks.Timer.Value, shorter.Marks.HeatOff.Value)
		after, err = Audit(shorter, record(t, readings))
		require.NoError(t, err)
		require.GreaterOrEqual(t, after.Verdict, before.Verdict)
	}
}

// What the gate costs a watch: no allocation a reading, sags and doubts included.
func TestNextAllocatesNothing(t *testing.T) {
	run, readings := pintRun(t, time.Second)
	for i := range readings {
		if i%7 == 0 && i > 2000 {
			readings[i].Value = 12 * units.PSI
		}
	}
	live, err := Watch[units.Pressure](run)
	require.NoError(t, err)
	i := 0
	require.Zero(t, testing.AllocsPerRun(len(readings)-2, func() {
		live, err = live.Next(readings[i])
		i++
	}))
	require.NoError(t, err)
}
