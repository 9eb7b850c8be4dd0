package process_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/pressure"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// What each setting gives at the ends of its band, and with the barometer 25 hPa low, worked out elsewhere with the US Standard
// Atmosphere 1976 and IAPWS-IF97.
func TestMargins(t *testing.T) {
	find := map[string]func(process.Request) (process.Schedule, error){
		"dial": process.Find, "weighted": process.Find, "dial, 15 psi beyond the USDA tables": process.FindExtension,
	}
	gauges := map[string]process.Gauge{"dial": process.Dial, "weighted": process.Weighted, "dial, 15 psi beyond the USDA tables": process.Dial}
	judged := 0
	for _, r := range printed.Table(t, "pressure/band-margins.csv") {
		rule := r.Text("rule")
		if find[rule] == nil { // the other rules are no published settings
			continue
		}
		judged++
		q := process.Request{Product: process.Fish, Pack: process.RawPack, Jar: process.Pint, Gauge: gauges[rule], Altitude: units.State(feet(t, r, "alt_ft"))}
		s, err := find[rule](q)
		require.NoError(t, err)
		require.Equal(t, psi(t, r, "gauge_psi"), s.Pressure)
		air, err := pressure.AirAt(q.Altitude.Value)
		require.NoError(t, err)
		m, err := s.Margin(air)
		require.NoError(t, err)
		printed.Within(t, r, "t_f", m.Steam.In(units.FahrenheitScale, 9))
		printed.Within(t, r, "margin_to_240f_f", units.In(m.Above, units.FahrenheitDegrees, 9))
		require.Equal(t, units.Fahrenheit(240), m.Reference)
		require.Equal(t, cite.Computed, m.Citation.Basis)

		low, err := pressure.AirReading(air.Pressure() - 25*units.Hectopascal)
		require.NoError(t, err)
		m, err = s.Margin(low)
		require.NoError(t, err)
		printed.Within(t, r, "margin_to_240f_with_barometer_25hpa_low_f", units.In(m.Above, units.FahrenheitDegrees, 9))
	}
	require.Greater(t, judged, 15)
}

func TestMarginNeedsAir(t *testing.T) {
	s, err := process.Find(process.Request{Product: process.Fish, Pack: process.RawPack, Jar: process.Pint, Gauge: process.Dial, Altitude: units.State(units.Length(0))})
	require.NoError(t, err)
	m, err := s.Margin(pressure.Air{})
	require.ErrorIs(t, err, units.ErrRange)
	require.Equal(t, process.Margin{}, m)
}
