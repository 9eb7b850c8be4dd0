package canner

import (
	"testing"
	"time"

	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
)

// fourHours is a record at one reading a second.
func fourHours(b *testing.B) (Run, []pressures) {
	run, readings := pintRun(b, time.Second)
	for at := 180*time.Minute + time.Second; at <= 240*time.Minute; at += time.Second {
		readings = append(readings, pressures{At: at})
	}
	return run, readings
}

func BenchmarkAudit(b *testing.B) {
	run, readings := fourHours(b)
	whole := record(b, readings)
	b.ReportAllocs()
	b.ResetTimer()
	for i := 0; i < b.N; i++ {
		if r, err := Audit(run, whole); err != nil || r.Verdict != verdict.Met {
			b.Fatal(r, err)
		}
	}
}

func BenchmarkAuditOfTemperatures(b *testing.B) {
	run, readings := fourHours(b)
	around, _ := run.around()
	steam := make([]series.Reading[units.Temperature], len(readings))
	for i, r := range readings {
		v, err := around.air.SteamUnder(r.Value)
		if err != nil {
			b.Fatal(err)
		}
		steam[i] = series.Reading[units.Temperature]{At: r.At, Value: v}
	}
	whole := record(b, steam)
	b.ReportAllocs()
	b.ResetTimer()
	for i := 0; i < b.N; i++ {
		if r, err := Audit(run, whole); err != nil || r.Verdict != verdict.Met {
			b.Fatal(r, err)
		}
	}
}

func BenchmarkLiveNext(b *testing.B) {
	run, readings := fourHours(b)
	start, err := Watch[units.Pressure](run)
	if err != nil {
		b.Fatal(err)
	}
	live := start
	b.ReportAllocs()
	b.ResetTimer()
	for i := 0; i < b.N; i++ {
		if i%len(readings) == 0 {
			live = start
		}
		if live, err = live.Next(readings[i%len(readings)]); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkFit(b *testing.B) {
	s, jar := fishIn(b, process.Pint), size(b, "pint regular")
	b.ReportAllocs()
	b.ResetTimer()
	for i := 0; i < b.N; i++ {
		if l, err := Fit(s, twelve, jar, 0); err != nil || l.PerLayer != 9 {
			b.Fatal(l, err)
		}
	}
}
