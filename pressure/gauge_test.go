package pressure_test

import (
	"testing"

	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/pressure"
	"example.org/lakelarder/units"
)

// What the published gauge settings give, band end by band end. Most are a little below 240 °F and none is to be corrected.
func TestSteamUnderPublishedSettings(t *testing.T) {
	printed.Table(t, "pressure/band-margins.csv").Each(t, func(t *testing.T, r printed.Row) {
		around := air(t, length(t, r, "alt_ft", units.Foot))
		gauge, err := units.Of(r.Decimal("gauge_psi"), units.PSI)
		require.NoError(t, err)
		steam, err := around.SteamUnder(gauge)
		require.NoError(t, err)
		printed.Within(t, r, "t_c", steam.In(units.CelsiusScale, 9))
		printed.Within(t, r, "t_f", steam.In(units.FahrenheitScale, 9))
		printed.Within(t, r, "margin_to_240f_f", margin(t, steam, units.Fahrenheit(240), units.FahrenheitDegrees))
		printed.Within(t, r, "margin_to_116c_c", margin(t, steam, units.Celsius(116), units.CelsiusDegrees))

		low, err := pressure.AirReading(around.Pressure() - 25*units.Hectopascal)
		require.NoError(t, err)
		steam, err = low.SteamUnder(gauge)
		require.NoError(t, err)
		printed.Within(t, r, "margin_to_240f_with_barometer_25hpa_low_f", margin(t, steam, units.Fahrenheit(240), units.FahrenheitDegrees))
	})
}

func margin(t *testing.T, steam, limit units.Temperature, unit units.TemperatureChange) decimal.Decimal {
	by, err := steam.Sub(limit)
	require.NoError(t, err)
	return units.In(by, unit, 9)
}

func length(t *testing.T, r printed.Row, col string, unit units.Length) units.Length {
	z, err := units.Of(r.Decimal(col), unit)
	require.NoError(t, err)
	return z
}

func TestSteamByGaugeAtSeaLevel(t *testing.T) {
	sea := air(t, 0)
	printed.Table(t, "pressure/gauge-sea-level.csv").Each(t, func(t *testing.T, r printed.Row) {
		steam, err := sea.SteamUnder(units.Pressure(r.Int("gauge_psi")) * units.PSI)
		require.NoError(t, err)
		got := steam.In(units.FahrenheitScale, 9)
		if r.Has("misprint") {
			requireMisprint(t, r, "t_f", got)
		} else {
			printed.Within(t, r, "t_f", got)
		}
		if r.Has("meant") {
			printed.Within(t, r, "meant", got)
		}
		if r.Has("t_c") {
			printed.Within(t, r, "t_c", steam.In(units.CelsiusScale, 9))
		}
	})
}

// Where a chart departs from the standard air, the row says by how much: printed less computed.
func TestBoilingPointAgainstCharts(t *testing.T) {
	printed.Table(t, "pressure/boiling.csv").Each(t, func(t *testing.T, r printed.Row) {
		around := pressure.Air{}
		if r.Has("alt_ft") {
			around = air(t, length(t, r, "alt_ft", units.Foot))
		} else {
			around = air(t, length(t, r, "alt_m", units.Metre))
		}
		boiling, err := around.BoilingPoint()
		require.NoError(t, err)
		compared := 0
		for _, c := range []struct {
			col, off string
			scale    units.Scale
		}{
			{"t_boil_f", "off_f", units.FahrenheitScale},
			{"t_boil_c", "off_c", units.CelsiusScale},
		} {
			if !r.Has(c.col) {
				continue
			}
			compared++
			got := boiling.In(c.scale, 9)
			if r.Has(c.off) {
				printed.Within(t, r, c.off, r.Decimal(c.col).Sub(got))
			} else {
				printed.Within(t, r, c.col, got)
			}
		}
		require.Positive(t, compared)
	})
}

func TestGaugeAndAbsoluteAreExact(t *testing.T) {
	around := air(t, 4350*units.Foot)
	for quarter := units.Pressure(-40); quarter <= 400; quarter++ {
		gauge := quarter * units.PSI / 4
		absolute, err := around.Absolute(gauge)
		require.NoError(t, err)
		require.Equal(t, gauge, absolute-around.Pressure())
		back, err := around.Gauge(absolute)
		require.NoError(t, err)
		require.Equal(t, gauge, back)
	}
}

// The higher the reading the hotter, the higher the kitchen the cooler.
func TestSteamIsMonotone(t *testing.T) {
	for ft := units.Length(0); ft <= 12_000; ft += 250 {
		here, higher := air(t, ft*units.Foot), air(t, (ft+1)*units.Foot)
		var last units.Temperature
		for tenth := units.Pressure(-50); tenth <= 300; tenth++ {
			steam, err := here.SteamUnder(tenth * units.PSI / 10)
			require.NoError(t, err)
			require.False(t, last.AtLeast(steam), "%d ft, %d/10 psi", ft, tenth)
			last = steam
			cooler, err := higher.SteamUnder(tenth * units.PSI / 10)
			require.NoError(t, err)
			require.True(t, cooler.Below(steam), "%d ft, %d/10 psi", ft, tenth)
		}
	}
}

// A reading equal to the standard's pressure is the same air, wherever it came from.
func TestBarometerAndAltitudeAgree(t *testing.T) {
	for ft := units.Length(0); ft <= 20_000; ft += 125 {
		standard := air(t, ft*units.Foot)
		read, err := pressure.AirReading(standard.Pressure())
		require.NoError(t, err)
		want, err := standard.SteamUnder(11 * units.PSI)
		require.NoError(t, err)
		got, err := read.SteamUnder(11 * units.PSI)
		require.NoError(t, err)
		require.Equal(t, want, got)
	}
}

func FuzzGaugeFor(f *testing.F) {
	f.Add(int64(2_000*units.Foot), int64(units.Fahrenheit(240).AboveAbsoluteZero()))
	f.Add(int64(0), int64(units.Celsius(60).AboveAbsoluteZero()))
	f.Add(int64(11_000*units.Metre), int64(units.Kelvin(647).AboveAbsoluteZero()))
	f.Add(int64(0), int64(0))
	low, high := units.Kelvin(273.15), units.Kelvin(647.095998)
	f.Fuzz(func(t *testing.T, nanometres, quanta int64) {
		around, err := pressure.AirAt(units.Length(nanometres))
		if err != nil {
			around = air(t, 0)
		}
		want := units.FromAbsoluteZero(units.TemperatureChange(quanta))
		gauge, err := around.GaugeFor(want)
		if !want.AtLeast(low) || want.Above(units.Kelvin(647.096)) {
			require.ErrorIs(t, err, units.ErrRange)
			return
		}
		require.NoError(t, err)
		if want.Above(high) {
			return
		}
		got, err := around.SteamUnder(gauge)
		require.NoError(t, err)
		require.Equal(t, want, got, "the reading that gives a temperature gives it")
	})
}
