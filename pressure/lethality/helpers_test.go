package lethality_test

import (
	"math"
	"sort"
	"testing"
	"time"

	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/pressure/lethality"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

type temperatures = series.Series[units.Temperature]

// record is temperatures in °C, a minute apart.
func record(t testing.TB, celsius ...float64) temperatures {
	t.Helper()
	var readings []series.Reading[units.Temperature]
	for i, c := range celsius {
		readings = append(readings, series.Reading[units.Temperature]{At: time.Duration(i) * time.Minute, Value: units.Celsius(c)})
	}
	s, err := series.New(readings)
	require.NoError(t, err)
	return s
}

// line is one straight line.
func line(t testing.TB, from, to units.Temperature, d time.Duration) temperatures {
	t.Helper()
	s, err := series.New([]series.Reading[units.Temperature]{{At: 0, Value: from}, {At: d, Value: to}})
	require.NoError(t, err)
	return s
}

func minutesOf(d decimal.Decimal) time.Duration {
	return time.Duration(d.Mul(decimal.NewFromInt(int64(time.Minute))).Round(0).IntPart())
}

// inMinutes is a duration as a decimal of minutes.
func inMinutes(d time.Duration) decimal.Decimal {
	return decimal.NewFromInt(int64(d)).DivRound(decimal.NewFromInt(int64(time.Minute)), 15)
}

func of[Q units.Quantity](t testing.TB, r printed.Row, col string, unit Q) Q {
	t.Helper()
	q, err := units.Of(r.Decimal(col), unit)
	require.NoError(t, err)
	return q
}

func at(t testing.TB, r printed.Row, col string, s units.Scale) units.Temperature {
	t.Helper()
	temperature, err := units.TemperatureOf(r.Decimal(col), s)
	require.NoError(t, err)
	return temperature
}

// reference reads reference_c or reference_f, and z_c or z_f.
func reference(t testing.TB, r printed.Row) lethality.Reference {
	t.Helper()
	var ref lethality.Reference
	if r.Has("reference_f") {
		ref.Temperature = at(t, r, "reference_f", units.FahrenheitScale)
	} else {
		ref.Temperature = at(t, r, "reference_c", units.CelsiusScale)
	}
	if r.Has("z_c") {
		ref.Z = of(t, r, "z_c", units.Kelvins)
	} else {
		ref.Z = of(t, r, "z_f", units.FahrenheitDegrees)
	}
	return ref
}

// sorted puts readings in order and leaves out repeated times.
func sorted(t testing.TB, readings []series.Reading[units.Temperature]) temperatures {
	t.Helper()
	sort.SliceStable(readings, func(i, j int) bool { return readings[i].At < readings[j].At })
	kept := readings[:1]
	for _, reading := range readings[1:] {
		if reading.At > kept[len(kept)-1].At {
			kept = append(kept, reading)
		}
	}
	s, err := series.New(kept)
	require.NoError(t, err)
	return s
}

func log10(x float64) float64 { return math.Log10(x) }

// f is the F of a record against a reference.
func f(t testing.TB, s temperatures, r lethality.Reference) time.Duration {
	t.Helper()
	out, err := lethality.F(s, r)
	require.NoError(t, err)
	require.NotEmpty(t, out.Cautions)
	return out.F
}

// number is a column as a plain number.
func number(t testing.TB, r printed.Row, col string) lethality.Number {
	t.Helper()
	return lethality.Number(of(t, r, col, units.One))
}

func float(n lethality.Number) float64 { return units.Float(units.Ratio(n), units.One) }
