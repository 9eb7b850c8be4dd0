package pressure_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/pressure"
	"example.org/lakelarder/units"
)

// The printed rows, through the exported functions. Rows with more digits than a result carries are for the equations alone.
func TestSaturatedSteamAgainstTables(t *testing.T) {
	compared := 0
	for _, r := range printed.Table(t, "pressure/saturation.csv") {
		if r.Text("basis") != "read" {
			continue
		}
		compared++
		tCol, scale := "t_k", units.KelvinScale
		if r.Has("t_c") {
			tCol, scale = "t_c", units.CelsiusScale
		}
		pCol, unit := "p_mpa", units.Megapascal
		switch {
		case r.Has("p_pa"):
			pCol, unit = "p_pa", units.Pascal
		case r.Has("p_bar"):
			pCol, unit = "p_bar", units.Bar
		}
		if r.Text("given") == "t" {
			temperature, err := units.TemperatureOf(r.Decimal(tCol), scale)
			require.NoError(t, err)
			p, err := pressure.SteamPressure(temperature)
			require.NoError(t, err)
			printed.Within(t, r, pCol, units.In(p, unit, 15))
		} else {
			p, err := units.Of(r.Decimal(pCol), unit)
			require.NoError(t, err)
			temperature, err := pressure.SteamTemperature(p)
			require.NoError(t, err)
			printed.Within(t, r, tCol, temperature.In(scale, 9))
		}
	}
	require.Equal(t, 37, compared)
}

// Tables of 1984 are on the temperature scale of 1968 and stand above these figures by a known amount.
func TestSteamTablesOnTheOlderScale(t *testing.T) {
	printed.Table(t, "pressure/saturation-1984.csv").Each(t, func(t *testing.T, r printed.Row) {
		p, err := units.Of(r.Decimal("p_bar"), units.Bar)
		require.NoError(t, err)
		temperature, err := pressure.SteamTemperature(p)
		require.NoError(t, err)
		off := r.Decimal("t_c_ipts68").Sub(temperature.In(units.CelsiusScale, 9))
		if r.Has("misprint") {
			requireMisprint(t, r, "off_k", off)
			return
		}
		printed.Within(t, r, "off_k", off)
	})
}

// A hundredth of a kelvin at a time: the temperature comes back exactly, and the pressure rises.
func TestSteamTemperatureComesBackExactly(t *testing.T) {
	var last units.Pressure
	for k := int64(27_315); k <= 64_709; k++ {
		temperature := units.FromAbsoluteZero(units.TemperatureChange(k) * units.Kelvins / 100)
		p, err := pressure.SteamPressure(temperature)
		require.NoError(t, err)
		require.Greater(t, p, last)
		last = p
		back, err := pressure.SteamTemperature(p)
		require.NoError(t, err)
		require.Equal(t, temperature, back)
	}
}

func FuzzSteamPressure(f *testing.F) {
	for _, t := range []units.Temperature{
		{}, units.Celsius(0), units.Celsius(100), units.Fahrenheit(240), units.Kelvin(273.15), units.Kelvin(273.149999), units.Kelvin(647.09599),
		units.Kelvin(647.096), units.Kelvin(647.0960002), units.Kelvin(1e9),
	} {
		f.Add(int64(t.AboveAbsoluteZero()))
	}
	low, high, exact := units.Kelvin(273.15), units.Kelvin(647.096), units.Kelvin(647.095998)
	f.Fuzz(func(t *testing.T, quanta int64) {
		temperature := units.FromAbsoluteZero(units.TemperatureChange(quanta))
		p, err := pressure.SteamPressure(temperature)
		if !temperature.AtLeast(low) || temperature.Above(high) {
			require.ErrorIs(t, err, units.ErrRange)
			return
		}
		require.NoError(t, err)
		if temperature.AtLeast(exact) {
			return
		}
		back, err := pressure.SteamTemperature(p)
		require.NoError(t, err)
		require.Equal(t, temperature, back)
	})
}

func FuzzSteamTemperature(f *testing.F) {
	for _, p := range []units.Pressure{
		0, 1, units.Atmosphere, 611 * units.Pascal, 612 * units.Pascal, 22_064 * units.Kilopascal, 22_064*units.Kilopascal + 1,
		math.MaxInt64, math.MinInt64,
	} {
		f.Add(int64(p))
	}
	low := 611_212_677 * (units.Pascal / 1_000_000)
	f.Fuzz(func(t *testing.T, quanta int64) {
		p := units.Pressure(quanta)
		temperature, err := pressure.SteamTemperature(p)
		if p < low || p > 22_064*units.Kilopascal {
			require.ErrorIs(t, err, units.ErrRange)
			return
		}
		require.NoError(t, err)
		back, err := pressure.SteamPressure(temperature)
		require.NoError(t, err)
		// half a quantum of temperature is 0.015 Pa where the curve is steepest, at the critical point
		require.InDelta(t, units.Float(p, units.Pascal), units.Float(back, units.Pascal), 0.016)

		hotter, err := pressure.SteamTemperature(p + units.Pascal)
		if err == nil {
			require.True(t, hotter.Above(temperature), "a pascal more is hotter")
		}
	})
}

func FuzzSteamPart(f *testing.F) {
	f.Add(int64(units.Atmosphere), int64(5*units.Percent))
	f.Add(int64(-1), int64(0))
	f.Add(int64(2_846_962_047_999_999_946), int64(units.One-113))
	f.Add(int64(22_064*units.Kilopascal), int64(units.One))
	f.Add(int64(22_064*units.Kilopascal+1), int64(units.One+1))
	f.Fuzz(func(t *testing.T, quanta, share int64) {
		total, trapped := units.Pressure(quanta), units.Ratio(share)
		part, err := pressure.SteamPart(total, trapped)
		if total < 0 || total > 22_064*units.Kilopascal || trapped < 0 || trapped > units.One {
			require.ErrorIs(t, err, units.ErrRange)
			return
		}
		require.NoError(t, err)
		rest, err := pressure.SteamPart(total, units.One-trapped)
		require.NoError(t, err)
		require.Contains(t, []units.Pressure{0, 1}, part+rest-total, "steam and air make up the whole; both may round half a quantum up")
		require.GreaterOrEqual(t, part, units.Pressure(0))
		require.LessOrEqual(t, part, total)
	})
}
