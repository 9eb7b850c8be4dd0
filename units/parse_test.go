package units_test

import (
	"encoding/json"
	"math"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
)

// TestKitchenForms reads lengths, masses and volumes as people write them.
func TestKitchenForms(t *testing.T) {
	for text, want := range map[string]units.Length{
		"2,000 ft":        2000 * units.Foot,
		"2000ft":          2000 * units.Foot,
		"0 m":             0,
		"3 1/2 in":        3*units.Inch + units.Inch/2,
		"3-1/2 in":        3*units.Inch + units.Inch/2,
		"3½ in":           3*units.Inch + units.Inch/2,
		"3 ½ in":          3*units.Inch + units.Inch/2,
		"½ in":            units.Inch / 2,
		"1⁄4 in":          units.Inch / 4,
		"5 ft 3 1/2 in":   5*units.Foot + 3*units.Inch + units.Inch/2,
		`5'3"`:            5*units.Foot + 3*units.Inch,
		"−12 m":           -12 * units.Metre,
		"-1 ft 6 in":      -(units.Foot + units.Foot/2),
		"+7 mm":           7 * units.Millimetre,
		"1.4e-7 m":        140 * units.Nanometre,
		"1e3 m":           units.Kilometre,
		"1e0 m":           units.Metre,
		"2.5E-0 m":        5 * units.Metre / 2,
		"1e+00 m":         units.Metre,
		"609.6\u00a0m":    2000 * units.Foot,
		" 12 mm ":         12 * units.Millimetre,
		"1,234,567.25 m":  1_234_567*units.Metre + units.Metre/4,
		"0.00000000049 m": 0,
		"0.0000000005 m":  1,
	} {
		got, err := units.ParseLength(text)
		require.NoError(t, err, text)
		require.Empty(t, cmp.Diff(want, got), text)
	}
	for text, want := range map[string]units.Mass{
		"1 lb 6 oz": units.Pound + 6*units.Ounce, "1lb6oz": units.Pound + 6*units.Ounce, "½ lb": 8 * units.Ounce,
		"1 1/2 kg": 1500 * units.Gram, "2.5 lbs": 2*units.Pound + units.Pound/2, "6 oz.": 6 * units.Ounce,
	} {
		got, err := units.ParseMass(text)
		require.NoError(t, err, text)
		require.Empty(t, cmp.Diff(want, got), text)
	}
	for text, want := range map[string]units.Volume{
		"½ cup": units.Cup / 2, "1/3 cup": units.Cup / 3, "1 1/2 tsp": units.Teaspoon + units.Teaspoon/2,
		"1 qt 1 cup": units.Quart + units.Cup, "8 fl oz": units.Cup, "1 imp pt": units.ImperialPint,
		"2 ⅔ cups": 2*units.Cup + 2*(units.Cup/3), "1 metric cup": 250 * units.Millilitre, "⅛ cup": units.FluidOunce,
		"2 in3": 2 * units.CubicInch, "1 ft3 3 in3": units.CubicFoot + 3*units.CubicInch, "2in3": 2 * units.CubicInch, "3 dl": 300 * units.Millilitre,
	} {
		got, err := units.ParseVolume(text)
		require.NoError(t, err, text)
		require.Empty(t, cmp.Diff(want, got), text)
	}
}

// TestTemperatures reads the spellings of a thermometer.
func TestTemperatures(t *testing.T) {
	for text, want := range map[string]units.Temperature{
		"121.1 °C": units.Celsius(121.1), "-18C": units.Celsius(-18), "−18 ºC": units.Celsius(-18), "240 °F": units.Fahrenheit(240),
		"240F": units.Fahrenheit(240), "388.15 K": units.Celsius(115), "100℃": units.Celsius(100), "212 deg F": units.Celsius(100),
		"0 °F": units.Fahrenheit(0), "not set": {},
	} {
		got, err := units.ParseTemperature(text)
		require.NoError(t, err, text)
		require.True(t, got == want, "%s: %s", text, got)
	}
}

// TestRefused holds what must not be read, and that the reason names what was expected.
func TestRefused(t *testing.T) {
	for _, c := range []struct {
		kind, text, reason string
		is                 error
	}{
		{"length", "", "expected a number first", units.ErrSyntax},
		{"length", "ft", "expected a number first", units.ErrSyntax},
		{"length", "2000", "the unit is missing", units.ErrSyntax},
		{"length", "2000 furlongs", `unknown unit "furlongs"`, units.ErrSyntax},
		{"length", "2.000,5 m", "a decimal mark is a point", units.ErrSyntax},
		{"length", "2,5 m", "a decimal mark is a point", units.ErrSyntax},
		{"length", "20,00 m", "commas group thousands", units.ErrSyntax},
		{"length", "2000,000 m", "commas group thousands", units.ErrSyntax},
		{"length", ",5 m", "expected a number first", units.ErrSyntax},
		{"length", "1..2 m", "unit", units.ErrSyntax},
		{"length", ". m", "digits beside the decimal point", units.ErrSyntax},
		{"length", "1/0 in", "fraction", units.ErrSyntax},
		{"length", "1/23456 in", "fraction", units.ErrSyntax},
		{"length", "1 2 in", "the unit is missing", units.ErrSyntax},
		{"length", "3 in 1 ft", "from larger to smaller", units.ErrSyntax},
		{"length", "1 ft 1 ft", "from larger to smaller", units.ErrSyntax},
		{"length", "1 ft -6 in", "unknown unit", units.ErrSyntax},
		{"length", "0,500 m", "a decimal mark is a point", units.ErrSyntax},
		{"length", "00,500 m", "a decimal mark is a point", units.ErrSyntax},
		{"length", "0,001 m", "a decimal mark is a point", units.ErrSyntax},
		{"length", "1,500,00 m", "a decimal mark is a point", units.ErrSyntax},
		{"length", "1,500.2,5 m", "a decimal mark is a point", units.ErrSyntax},
		{"length", "1'200 mm", "after ' come only in", units.ErrSyntax},
		{"length", "1′ 200 mm", "after ′ come only in", units.ErrSyntax},
		{"length", "1'200\"", "less than one of the unit before it", units.ErrSyntax},
		{"length", "1 ft 12 in", "less than one of the unit before it", units.ErrSyntax},
		{"length", "3 -1/2 in", "unknown unit", units.ErrSyntax},
		{"length", "3 - 1/2 in", "unknown unit", units.ErrSyntax},
		{"length", "-9223372036.854775809 m", "out of range", units.ErrRange},
		{"length", "9223372036 m 854775808 nm", "out of range", units.ErrRange},
		{"mass", "30 gr", "unknown unit", units.ErrSyntax}, // grain or gram?
		{"mass", "1 lb 16 oz", "less than one of the unit before it", units.ErrSyntax},
		{"volume", "2 in33", "unknown unit", units.ErrSyntax},
		{"volume", "1 ft33 in3", "unknown unit", units.ErrSyntax},
		{"length", "--5 m", "expected a number first", units.ErrSyntax},
		{"length", "1e99 m", "exponent", units.ErrSyntax},
		{"length", "NaN m", "expected a number first", units.ErrSyntax},
		{"length", "Inf m", "expected a number first", units.ErrSyntax},
		{"length", "9223372036.854775808 m", "out of range", units.ErrRange},
		{"length", "-99999999999999999999 m", "out of range", units.ErrRange},
		{"length", "1e30 m", "out of range", units.ErrRange},
		{"mass", "2 T", "unknown unit", units.ErrSyntax},
		{"mass", "3 psi", "unknown unit", units.ErrSyntax},
		{"mass", "600 t 9e39 kg", "out of range", units.ErrRange},
		{"volume", "2 T", "unknown unit", units.ErrSyntax}, // tablespoon or teaspoon?
		{"volume", "2 t", "unknown unit", units.ErrSyntax},
		{"volume", "1 lb", "unknown unit", units.ErrSyntax},
		{"pressure", "11 psig", "unknown unit", units.ErrSyntax}, // the type keeps no reference
		{"pressure", "25 psia", "unknown unit", units.ErrSyntax},
		{"pressure", "5 mPa", "unknown unit", units.ErrSyntax},
		{"pressure", "72 MPa", "out of range", units.ErrRange},
		{"temperature change", "5", "the unit is missing", units.ErrSyntax},
		{"ratio", "0.035", "the unit is missing", units.ErrSyntax}, // a share or a percentage?
		{"ratio", "3.5 per cent or so", "unknown unit", units.ErrSyntax},
		{"ratio", "1e9 %", "out of range", units.ErrRange},
		{"diffusivity", "1.4e-7", "the unit is missing", units.ErrSyntax},
		{"diffusivity", "1.4e-7 m²", "unknown unit", units.ErrSyntax},
		{"density", "1.05", "the unit is missing", units.ErrSyntax},
		{"pH", "acid", "expected a number first", units.ErrSyntax},
		{"pH", "6.2 %", "unexpected \"%\" after the number", units.ErrSyntax},
	} {
		_, err := kinds[c.kind].parse(c.text)
		require.ErrorIs(t, err, c.is, "%s %q", c.kind, c.text)
		require.ErrorContains(t, err, c.reason, "%s %q", c.kind, c.text)
	}
	for _, text := range []string{"", "5", "5 °", "°C", "warm", "121,1 °C", "21 °R", "NaN °C", "1 2 °C", "12:30 °C"} {
		_, err := units.ParseTemperature(text)
		require.ErrorIs(t, err, units.ErrSyntax, text)
	}
	for _, text := range []string{"-273.15 °C", "0 K", "-5 K", "-459.67 °F", "-500 °F", "1e13 °C", "99999999999999999999 K"} {
		_, err := units.ParseTemperature(text)
		require.ErrorIs(t, err, units.ErrRange, text)
	}
}

// TestUnset: a forgotten reading meets no limit in either direction.
func TestUnset(t *testing.T) {
	var unset units.Temperature
	for _, x := range []float64{math.NaN(), math.Inf(1), math.Inf(-1), -273.15, -300, 1e300} {
		require.False(t, units.Celsius(x).IsSet(), "%v °C", x)
	}
	require.False(t, units.Kelvin(0).IsSet())
	require.True(t, units.Celsius(-273.149999).IsSet())
	limit := units.Celsius(62.8)
	require.False(t, unset.AtLeast(limit) || unset.Below(limit) || unset.Above(limit))
	require.False(t, limit.AtLeast(unset) || limit.Below(unset) || limit.Above(unset))
	require.False(t, unset.AtLeast(unset))
	require.True(t, math.IsNaN(unset.Celsius()))
	require.False(t, unset.Add(units.Kelvins).IsSet())
	require.False(t, limit.Add(-1000*units.Kelvins).IsSet())
	require.False(t, limit.Add(math.MaxInt64).IsSet())
	_, err := unset.Sub(limit)
	require.ErrorIs(t, err, units.ErrRange)
	_, err = limit.Sub(unset)
	require.ErrorIs(t, err, units.ErrRange)
	require.ErrorIs(t, units.CheckTemperature("core", unset, units.Celsius(0), units.Celsius(100)), units.ErrRange)
}

// TestDoors: what the doors refuse, and how they round.
func TestDoors(t *testing.T) {
	for _, x := range []float64{math.NaN(), math.Inf(1), math.Inf(-1), 1e10, -1e10} {
		_, err := units.OfFloat(x, units.Metre)
		require.ErrorIs(t, err, units.ErrRange, "%v", x)
	}
	for _, d := range []decimal.Decimal{decimal.New(1, 10), decimal.New(-1, 10), decimal.New(1, 2_000_000_000), decimal.RequireFromString("9223372036.8547758075")} {
		_, err := units.Of(d, units.Metre)
		require.ErrorIs(t, err, units.ErrRange, "%v", d.Exponent())
	}
	for _, d := range []decimal.Decimal{decimal.New(1, 12), decimal.New(-27315, -2), decimal.New(-1, 12), decimal.New(1, 2_000_000_000)} {
		_, err := units.TemperatureOf(d, units.CelsiusScale)
		require.ErrorIs(t, err, units.ErrRange, "%v", d.Exponent())
	}
	for _, c := range []struct {
		n    decimal.Decimal
		want units.Length
	}{
		{decimal.New(1, -2_000_000_000), 0}, {decimal.New(5, -10), 1}, {decimal.New(-5, -10), -1}, {decimal.New(49, -11), 0}, {decimal.Zero, 0},
	} {
		got, err := units.Of(c.n, units.Metre)
		require.NoError(t, err)
		require.Equal(t, c.want, got)
	}
	require.True(t, units.In(units.Foot, 0, 3).IsZero())
}

// TestOverflow: arithmetic that would pass the range is refused, and says so with the value.
func TestOverflow(t *testing.T) {
	const most = units.Mass(math.MaxInt64)
	_, err := units.Sum(most, 1)
	require.ErrorIs(t, err, units.ErrRange)
	_, err = units.Sum(-most, -2)
	require.ErrorIs(t, err, units.ErrRange)
	_, err = units.Times(units.Tonne, 1000)
	require.ErrorIs(t, err, units.ErrRange)
	_, err = units.Times(units.Tonne, math.MinInt64)
	require.ErrorIs(t, err, units.ErrRange)
	_, err = units.Prorate(most, 3*units.Litre, 2*units.Litre)
	require.ErrorIs(t, err, units.ErrRange)
	_, err = units.Prorate(units.Gram, 1*units.Litre, 0)
	require.ErrorIs(t, err, units.ErrRange)
	_, err = units.RatioOf(most, 1)
	require.ErrorIs(t, err, units.ErrRange)
	_, err = (2 * units.One).Of(most)
	require.ErrorIs(t, err, units.ErrRange)
	total, err := units.Sum(most, -most, 5)
	require.NoError(t, err)
	require.Equal(t, units.Mass(5), total)
	same, err := units.Prorate(most, most, most)
	require.NoError(t, err)
	require.Equal(t, most, same)
}

// TestSteps: rounding to a step keeps to its side, ties go away from zero.
func TestSteps(t *testing.T) {
	const step = units.PSI / 4
	for _, q := range []units.Pressure{0, 1, -1, step, -step, step / 2, -step / 2, step/2 - 1, 7*step + 3, -7*step - 3, math.MaxInt64, -math.MaxInt64} {
		low, high, near := units.FloorTo(q, step), units.CeilTo(q, step), units.RoundTo(q, step)
		require.LessOrEqual(t, low, q)
		require.GreaterOrEqual(t, high, q)
		require.True(t, near == low || near == high)
		if q < math.MaxInt64-step && q > -math.MaxInt64+step {
			require.Zero(t, low%step)
			require.Zero(t, high%step)
			require.LessOrEqual(t, high-low, step)
		}
	}
	require.Equal(t, units.Pressure(10), units.RoundTo(units.Pressure(5), 10))
	require.Equal(t, units.Pressure(-10), units.RoundTo(units.Pressure(-5), 10))
	require.Equal(t, units.Pressure(5), units.RoundTo(5, units.Pressure(0)))
}

// TestJSON: quantities travel as text, in and out, and a bad text changes nothing.
func TestJSON(t *testing.T) {
	type batch struct {
		Altitude units.Length
		Salt     units.Mass
		Brine    units.Volume
		Gauge    units.Pressure
		Core     units.Temperature
		Margin   units.TemperatureChange
		WPS      units.Ratio
		Tray     units.Area
		Density  units.Density
		Air      units.Speed
		Salting  units.Diffusivity
		K        units.Conductivity
		H        units.FilmCoefficient
		C        units.SpecificHeat
		Meal     units.Energy
		Latent   units.SpecificEnergy
		Acidity  units.PH
		Lost     units.Temperature
	}
	in := batch{4350 * units.Foot, 1375 * units.Gram, units.Cup / 2, 13 * units.PSI, units.Fahrenheit(160), -7 * units.FahrenheitDegrees,
		35 * units.PerMille, 80 * units.SquareInch, 1055 * units.KilogramPerCubicMetre, 300 * units.FootPerMinute, 140_000,
		units.WattPerMetreKelvin / 2, 20 * units.WattPerSquareMetreKelvin, 3600 * units.JoulePerKilogramKelvin, 250 * units.Kilocalorie,
		334 * units.KilojoulePerKilogram, 6200, units.Temperature{}}
	data, err := json.Marshal(in)
	require.NoError(t, err)
	var out batch
	require.NoError(t, json.Unmarshal(data, &out))
	require.Empty(t, cmp.Diff(in, out))
	for _, bad := range []string{`{"Altitude":"high"}`, `{"Core":"hot"}`, `{"WPS":"3.5"}`, `{"Gauge":11}`, `{"Acidity":"x"}`, `{"Salt":"1 lb 2"}`} {
		kept := out
		require.Error(t, json.Unmarshal([]byte(bad), &out), bad)
		require.True(t, kept == out, bad)
	}
}
