package pressure_test

import (
	"errors"
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/pressure"
	"example.org/lakelarder/units"
)

// Each is refused: a RangeError names what was wrong and what was expected, an UnsetError what is missing.
func TestRefusals(t *testing.T) {
	sea, top := air(t, 0), air(t, 11_000*units.Metre)
	reading, err := pressure.AirReading(100 * units.Kilopascal)
	require.NoError(t, err)
	var unset pressure.Air
	var noTemperature units.Temperature
	const critical = 22_064 * units.Kilopascal

	for name, c := range map[string]struct {
		call func() error
		what string
	}{
		"altitude below the range":         {second(pressure.AirAt(-1_000*units.Metre - 1)), "altitude"},
		"altitude above the range":         {second(pressure.AirAt(11_000*units.Metre + 1)), "altitude"},
		"altitude of feet taken as metres": {second(pressure.AirAt(36_100 * units.Metre)), "altitude"},
		"lowest altitude of the type":      {second(pressure.AirAt(math.MinInt64)), "altitude"},
		"highest altitude of the type":     {second(pressure.AirAt(math.MaxInt64)), "altitude"},

		"barometer of nothing":          {second(pressure.AirReading(0)), "barometer reading"},
		"barometer below vacuum":        {second(pressure.AirReading(-units.Atmosphere)), "barometer reading"},
		"barometer too low":             {second(pressure.AirReading(40*units.Kilopascal - 1)), "barometer reading"},
		"barometer too high":            {second(pressure.AirReading(110*units.Kilopascal + 1)), "barometer reading"},
		"inches taken as psi":           {second(pressure.AirReading(2_992 * units.PSI / 100)), "barometer reading"},
		"inches taken as kPa":           {second(pressure.AirReading(2_992 * units.Kilopascal / 100)), "barometer reading"},
		"millibars taken as kPa":        {second(pressure.AirReading(1_013 * units.Kilopascal)), "barometer reading"},
		"gauge pressure of a canner":    {second(pressure.AirReading(11 * units.PSI / 2)), "barometer reading"},
		"highest barometer of the type": {second(pressure.AirReading(math.MaxInt64)), "barometer reading"},

		"steam below the triple point":      {second(pressure.SteamTemperature(611 * units.Pascal)), "absolute steam pressure"},
		"steam a micropascal below":         {second(pressure.SteamTemperature(611_212_676 * (units.Pascal / 1_000_000))), "absolute steam pressure"},
		"steam at nothing":                  {second(pressure.SteamTemperature(0)), "absolute steam pressure"},
		"negative absolute pressure":        {second(pressure.SteamTemperature(-units.Pascal)), "absolute steam pressure"},
		"steam above the critical point":    {second(pressure.SteamTemperature(critical + 1)), "absolute steam pressure"},
		"temperature not set":               {second(pressure.SteamPressure(noTemperature)), "steam temperature"},
		"temperature of NaN":                {second(pressure.SteamPressure(units.Celsius(math.NaN()))), "steam temperature"},
		"temperature infinite":              {second(pressure.SteamPressure(units.Celsius(math.Inf(1)))), "steam temperature"},
		"temperature below absolute zero":   {second(pressure.SteamPressure(units.Celsius(-300))), "steam temperature"},
		"temperature of ice":                {second(pressure.SteamPressure(units.Celsius(-0.000001))), "steam temperature"},
		"temperature above critical":        {second(pressure.SteamPressure(units.Kelvin(647.0960002))), "steam temperature"},
		"trapped air below none":            {second(pressure.SteamPart(units.Atmosphere, -1)), "share of air"},
		"trapped air above all":             {second(pressure.SteamPart(units.Atmosphere, units.One+1)), "share of air"},
		"trapped air of a negative total":   {second(pressure.SteamPart(-1, 0)), "absolute pressure"},
		"trapped air of too high a total":   {second(pressure.SteamPart(critical+1, 0)), "absolute pressure"},
		"gauge below vacuum":                {second(sea.Absolute(-units.Atmosphere - 1)), "gauge reading"},
		"gauge below vacuum, barometer":     {second(reading.Absolute(-units.Atmosphere)), "gauge reading"},
		"gauge too high":                    {second(sea.Absolute(critical)), "gauge reading"},
		"highest gauge of the type":         {second(sea.Absolute(math.MaxInt64)), "gauge reading"},
		"lowest gauge of the type":          {second(sea.Absolute(math.MinInt64)), "gauge reading"},
		"absolute below nothing":            {second(sea.Gauge(-1)), "absolute pressure"},
		"absolute above the critical point": {second(sea.Gauge(critical + 1)), "absolute pressure"},
		"steam under a perfect vacuum":      {second(sea.SteamUnder(-units.Atmosphere)), "absolute steam pressure"},
		"steam below vacuum":                {second(top.SteamUnder(-10 * units.PSI)), "gauge reading"},
		"steam under too much":              {second(top.SteamUnder(critical)), "gauge reading"},
		"reading for no temperature":        {second(sea.GaugeFor(noTemperature)), "steam temperature"},
		"reading for ice":                   {second(sea.GaugeFor(units.Celsius(-18))), "steam temperature"},
		"reading for a fire":                {second(sea.GaugeFor(units.Celsius(600))), "steam temperature"},

		"altitude of no air":      {second(unset.Altitude()), "air"},
		"absolute in no air":      {second(unset.Absolute(0)), "air"},
		"gauge in no air":         {second(unset.Gauge(units.Atmosphere)), "air"},
		"steam in no air":         {second(unset.SteamUnder(11 * units.PSI)), "air"},
		"reading in no air":       {second(unset.GaugeFor(units.Fahrenheit(240))), "air"},
		"boiling point in no air": {second(unset.BoilingPoint()), "air"},
	} {
		err := c.call()
		require.ErrorIs(t, err, units.ErrRange, name)
		if unset := (units.UnsetError{}); errors.As(err, &unset) {
			require.Equal(t, c.what, unset.What, name)
			continue
		}
		var refused units.RangeError
		require.True(t, errors.As(err, &refused), name)
		require.Equal(t, c.what, refused.What, name)
		require.NotEmpty(t, refused.Got, name)
	}
}

// second keeps the error of a call.
func second[T any](_ T, err error) func() error { return func() error { return err } }

// The very ends of every range are taken.
func TestEndsOfTheRangesAreTaken(t *testing.T) {
	sea := air(t, 0)
	for name, err := range map[string]error{
		"lowest altitude":      second(pressure.AirAt(-1_000 * units.Metre))(),
		"highest altitude":     second(pressure.AirAt(11_000 * units.Metre))(),
		"lowest barometer":     second(pressure.AirReading(40 * units.Kilopascal))(),
		"highest barometer":    second(pressure.AirReading(110 * units.Kilopascal))(),
		"lowest steam":         second(pressure.SteamTemperature(611_212_677 * (units.Pascal / 1_000_000)))(),
		"highest steam":        second(pressure.SteamTemperature(22_064 * units.Kilopascal))(),
		"lowest temperature":   second(pressure.SteamPressure(units.Kelvin(273.15)))(),
		"highest temperature":  second(pressure.SteamPressure(units.Kelvin(647.096)))(),
		"no air trapped":       second(pressure.SteamPart(units.Atmosphere, 0))(),
		"nothing but air":      second(pressure.SteamPart(units.Atmosphere, units.One))(),
		"a perfect vacuum":     second(sea.Absolute(-units.Atmosphere))(),
		"the highest reading":  second(sea.Absolute(22_064*units.Kilopascal - units.Atmosphere))(),
		"nothing, as a gauge":  second(sea.Gauge(0))(),
		"critical, as a gauge": second(sea.Gauge(22_064 * units.Kilopascal))(),
	} {
		require.NoError(t, err, name)
	}
}
