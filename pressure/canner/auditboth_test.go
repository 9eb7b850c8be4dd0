package canner

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
)

// steamUnder is the record of a thermometer in pure steam under a record of pressures, off by so much.
func steamUnder(t testing.TB, run Run, readings []pressures, off units.TemperatureChange) []series.Reading[units.Temperature] {
	t.Helper()
	around, err := run.around()
	require.NoError(t, err)
	var steam []series.Reading[units.Temperature]
	for _, r := range readings {
		v, err := around.air.SteamUnder(r.Value)
		require.NoError(t, err)
		steam = append(steam, series.Reading[units.Temperature]{At: r.At, Value: v.Add(off)})
	}
	return steam
}

// Steam as hot as its pressure is met; colder beyond the stated errors there is air in it; within them nothing is said.
func TestSteamAsHotAsItsPressure(t *testing.T) {
	run, readings := pintRun(t, time.Minute)
	for i := range readings { // well above the limit, so that only the comparison can fail
		if readings[i].Value > 12*units.PSI {
			readings[i].Value = 15 * units.PSI
		}
	}
	for _, c := range []struct {
		off      units.TemperatureChange
		recorder Recorder
		want     verdict.Verdict
	}{
		{0, Recorder{}, verdict.Met},
		{-1 * units.CelsiusDegrees, Recorder{}, verdict.Met},
		{-2 * units.CelsiusDegrees, Recorder{}, verdict.NotMet}, // 1 °C and 0.5 psi, which is 0.6 °C
		{-1 * units.CelsiusDegrees, Recorder{Pressure: units.PSI / 10, Temperature: units.CelsiusDegrees / 2}, verdict.NotMet},
		{-2 * units.CelsiusDegrees, Recorder{Pressure: units.PSI / 2, Temperature: 3 * units.CelsiusDegrees / 2}, verdict.NotMet},
		{2 * units.CelsiusDegrees, Recorder{}, verdict.Met}, // steam can be hotter: the sensor is slow, or reads high
	} {
		run.Recorder = c.recorder
		both, err := AuditBoth(run, record(t, readings), record(t, steamUnder(t, run, readings, c.off)))
		require.NoError(t, err)
		require.Equal(t, c.want, both.Verdict, "%v %v: %v", c.off, c.recorder, both.Findings)
	}
}

// A temperature that nobody recorded while the pressure was held shows no air and no steam.
func TestNothingToCompare(t *testing.T) {
	run, readings := pintRun(t, time.Minute)
	steam := steamUnder(t, run, readings, 0)
	both, err := AuditBoth(run, record(t, readings), record(t, steam[:20]))
	require.NoError(t, err)
	require.False(t, both.Verdict.Passes())
	require.Contains(t, kinds(both.Findings), "air missing")
	_, err = AuditBoth(run, record(t, readings), series.Series[units.Temperature]{})
	require.ErrorIs(t, err, series.ErrEmpty)
	_, err = AuditBoth(run, series.Series[units.Pressure]{}, record(t, steam))
	require.ErrorIs(t, err, series.ErrEmpty)
}

// The door of absolute records takes off the air, and what the weather may have more where no barometer says it.
func TestAbsoluteRecords(t *testing.T) {
	run, readings := pintRun(t, time.Minute)
	around, err := run.around()
	require.NoError(t, err)
	with := func(more units.Pressure) series.Series[units.Pressure] {
		absolute := append([]pressures(nil), readings...)
		for i := range absolute {
			absolute[i].Value += around.air.Pressure() + more
		}
		return record(t, absolute)
	}
	run.Barometer = Barometer{Reading: around.air.Pressure(), Kind: Station}
	gauge, err := Audit(run, record(t, readings))
	require.NoError(t, err)
	absolute, err := AuditAbsolute(run, with(0))
	require.NoError(t, err)
	require.Equal(t, gauge, absolute)
	heavy := run
	heavy.Barometer.Reading += 20 * units.Hectopascal
	absolute, err = AuditAbsolute(heavy, with(0))
	require.NoError(t, err)
	require.Equal(t, verdict.NotMet, absolute.Verdict, "the air weighed more: there was less steam")
	run.Barometer = Barometer{}
	absolute, err = AuditAbsolute(run, with(0))
	require.NoError(t, err)
	require.Equal(t, verdict.NotMet, absolute.Verdict, "the weather may have been so")
	absolute, err = AuditAbsolute(run, with(32*units.Hectopascal))
	require.NoError(t, err)
	require.Equal(t, verdict.Met, absolute.Verdict)
	run.Gauge.ReadsHigh = units.PSI
	var contradiction ContradictionError
	_, err = AuditAbsolute(run, with(0))
	require.ErrorAs(t, err, &contradiction)
	run.Gauge.ReadsHigh = 0
	_, err = AuditAbsolute(run, series.Series[units.Pressure]{})
	require.ErrorIs(t, err, series.ErrEmpty)
}

// Marks may be added while a watch runs, and the timer started again; what was walked through is not changed.
func TestMarksThatAWatchTakes(t *testing.T) {
	run, readings := pintRun(t, time.Minute)
	whole := run.Marks
	run.Marks = Marks{HeatOn: whole.HeatOn, SteadySteam: whole.SteadySteam}
	live, err := Watch[units.Pressure](run)
	require.NoError(t, err)
	for _, r := range readings[:25] {
		live, err = live.Next(r)
		require.NoError(t, err)
	}
	marks := run.Marks
	marks.VentClosed = units.State(24 * time.Minute)
	live, err = live.Mark(marks)
	require.NoError(t, err)
	for name, change := range map[string]func(*Marks){
		"moved":            func(m *Marks) { m.VentClosed.Value += time.Minute },
		"taken back":       func(m *Marks) { m.VentClosed = Marks{}.VentClosed },
		"before a reading": func(m *Marks) { m.Timer = units.State(23 * time.Minute) },
		"out of order":     func(m *Marks) { m.LidOff, m.WeightOff = units.State(30*time.Minute), units.State(31*time.Minute) },
	} {
		bad := marks
		change(&bad)
		same, err := live.Mark(bad)
		var contradiction ContradictionError
		require.ErrorAs(t, err, &contradiction, name)
		require.Equal(t, live, same, name)
	}
	marks.Timer = units.State(30 * time.Minute)
	live, err = live.Mark(marks)
	require.NoError(t, err)
	marks.Timer = units.State(40 * time.Minute)
	_, err = live.Mark(marks)
	require.NoError(t, err)
	_, err = Live[units.Pressure]{}.Mark(marks)
	require.ErrorIs(t, err, units.ErrUnset)
	under, err := Watch[units.Pressure](Run{Schedule: run.Schedule, Altitude: run.Altitude, MaxGap: run.MaxGap, Marks: Marks{Timer: units.State(29 * time.Minute)}})
	require.NoError(t, err)
	under, err = under.Next(readings[40])
	require.NoError(t, err)
	_, err = under.Mark(Marks{Timer: units.State(50 * time.Minute)})
	require.Error(t, err, "the record begins under pressure and was bridged back to the timer")
}
