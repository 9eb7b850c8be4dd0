package canner

import (
	"strings"
	"testing"
	"time"

	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
)

// schedule finds the process of a row or of words.
func schedule(t testing.TB, product, pack, jar, gauge string, altitude units.Length) process.Schedule {
	t.Helper()
	var r process.Request
	require.NoError(t, r.Product.UnmarshalText([]byte(product)))
	require.NoError(t, r.Pack.UnmarshalText([]byte(pack)))
	require.NoError(t, r.Jar.UnmarshalText([]byte(jar)))
	require.NoError(t, r.Gauge.UnmarshalText([]byte(gauge)))
	r.Altitude = units.State(altitude)
	s, err := process.Find(r)
	require.NoError(t, err)
	return s
}

// fishIn is raw fish in a jar, dial gauge, at sea level.
func fishIn(t testing.TB, jar process.Jar) process.Schedule {
	return schedule(t, "fish", "raw", jar.String(), "dial", 0)
}

// size is a listed jar; sizes of jars with no process for fish take the schedule of a pint where one is needed.
func size(t testing.TB, name string) JarSize {
	t.Helper()
	j, err := FindJarSize(name)
	require.NoError(t, err)
	return j
}

func length(t testing.TB, r printed.Row, col string) units.Length {
	return quantity(t, r, col, units.Inch)
}

func quantity[Q units.Quantity](t testing.TB, r printed.Row, col string, unit Q) Q {
	t.Helper()
	q, err := units.Of(r.Decimal(col), unit)
	require.NoError(t, err)
	return q
}

func minutesOf(t testing.TB, r printed.Row, col string) time.Duration {
	t.Helper()
	return time.Duration(r.Decimal(col).Mul(decimal.NewFromInt(int64(time.Minute))).IntPart())
}

func marked(t testing.TB, r printed.Row, col string) (m units.Stated[time.Duration]) {
	if r.Has(col) {
		m = units.State(minutesOf(t, r, col))
	}
	return m
}

func inMinutes(d time.Duration) decimal.Decimal {
	return decimal.NewFromInt(int64(d)).DivRound(decimal.NewFromInt(int64(time.Minute)), 10)
}

type pressures = series.Reading[units.Pressure]

func record[T series.Value](t testing.TB, readings []series.Reading[T]) series.Series[T] {
	t.Helper()
	s, err := series.New(readings)
	require.NoError(t, err)
	return s
}

// kinds are the findings in short: "vent short; sag short".
func kinds(findings []verdict.Finding) string {
	var names []string
	for _, f := range findings {
		names = append(names, strings.TrimPrefix(string(f.Rule), "canner.")+" "+f.Kind.String())
	}
	return strings.Join(names, "; ")
}

// pintRun is a run of raw fish in pints at 4,350 ft, 13 psi for 100 min, with every mark, and its perfect record, a reading every so often.
func pintRun(t testing.TB, every time.Duration) (Run, []pressures) {
	t.Helper()
	run := Run{
		Schedule: schedule(t, "fish", "raw", "pint", "dial", 4350*units.Foot), Altitude: units.State(4350 * units.Foot),
		MaxGap: 5 * time.Minute,
		Marks: Marks{
			HeatOn: units.State(time.Duration(0)), SteadySteam: units.State(14 * time.Minute), VentClosed: units.State(24 * time.Minute),
			Timer: units.State(29 * time.Minute), HeatOff: units.State(132 * time.Minute), Gone: units.State(165 * time.Minute),
			WeightOff: units.State(165 * time.Minute), LidOff: units.State(176 * time.Minute),
		},
	}
	var readings []pressures
	for at := time.Duration(0); at <= 180*time.Minute; at += every {
		p := units.Pressure(0)
		switch {
		case at <= 24*time.Minute || at >= 165*time.Minute:
		case at < 29*time.Minute:
			p = 132 * units.PSI / 10 / 300 * units.Pressure((at-24*time.Minute)/time.Second)
		case at <= 132*time.Minute:
			p = 132 * units.PSI / 10
		default:
			p = 132 * units.PSI / 10 / 1980 * units.Pressure((165*time.Minute-at)/time.Second)
		}
		readings = append(readings, pressures{At: at, Value: p})
	}
	return run, readings
}
