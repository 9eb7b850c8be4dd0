package moistair

import (
	"encoding/json"
	"math"
	"testing"
	"time"

	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
)

func air(t testing.TB, celsius float64, relative units.Ratio, p units.Pressure) Air {
	t.Helper()
	a, err := ByRelativeHumidity(units.Celsius(celsius), relative, p)
	require.NoError(t, err)
	return a
}

// evenFilm is a film without a range.
func evenFilm(wattPerSquareMetreKelvin int64) Film {
	h := units.FilmCoefficient(wattPerSquareMetreKelvin) * units.WattPerSquareMetreKelvin
	return Film{Coefficient: units.Range[units.FilmCoefficient]{Low: h, Likely: h, High: h}}
}

func TestFilmEquationAsPrinted(t *testing.T) {
	inPrint := map[string]float64{}
	for _, r := range printed.Table(t, "smoke/film-equation.csv") {
		inPrint[r.Text("term")] = r.Float("value")
	}
	require.Equal(t, map[string]float64{
		"factor": filmFactor, "power": filmPower, "coldest_c": filmColdest, "hottest_c": filmHottest,
		"least_g": filmLeast, "most_g": filmMost, "slowest_m_s": filmSlowest, "fastest_m_s": filmFastest,
	}, inPrint)
}

// The textbook's pan of 0.457 m by 0.457 m in air of 65.6 °C, humidity ratio 0.010, at 6.1 m/s.
func TestDryingOfTheTextbookPan(t *testing.T) {
	a, err := ByHumidityRatio(units.Celsius(65.6), 10*units.PerMille, units.Atmosphere)
	require.NoError(t, err)
	f, err := FilmAlong(a, 61*units.MetrePerSecond/10)
	require.NoError(t, err)
	require.False(t, f.Extrapolated)
	e, err := Evaporate(a, f, units.One)
	require.NoError(t, err)
	pan := units.Area(457*457) * units.SquareMillimetre
	lost, err := e.Lost(pan, time.Hour)
	require.NoError(t, err)
	density, err := a.Density()
	require.NoError(t, err)
	printed.Table(t, "smoke/drying-example.csv").Each(t, func(t *testing.T, r printed.Row) {
		g := 6.1 * 3600 * units.Float(density, units.KilogramPerCubicMetre)
		switch r.Text("quantity") {
		case "wet_bulb_c":
			printed.Within(t, r, "value", e.Surface.In(units.CelsiusScale, 6))
		case "humidity_at_saturation":
			printed.WithinFloat(t, r, "value", ratioAt(saturation(e.Surface.Celsius()), pascals(a.Pressure())))
		case "humid_volume_m3_kg":
			printed.WithinFloat(t, r, "value", a.cubicMetres())
		case "density_kg_m3":
			printed.Within(t, r, "value", units.In(density, units.KilogramPerCubicMetre, 9))
		case "mass_velocity_kg_m2h":
			printed.WithinFloat(t, r, "value", g)
		case "film_w_m2k":
			printed.Within(t, r, "value", units.In(f.Coefficient.Likely, units.WattPerSquareMetreKelvin, 6))
		case "latent_heat_kj_kg":
			printed.WithinFloat(t, r, "value", latentHeat(e.Surface.Celsius()))
		case "flux_kg_m2h":
			printed.Within(t, r, "value", units.In(e.PerMetreHour.Likely, units.Kilogram, 6))
		case "total_kg_h":
			printed.Within(t, r, "value", units.In(lost.Likely, units.Kilogram, 6))
		default:
			t.Fatal("nobody checks " + r.Text("quantity"))
		}
	})
}

func TestConstantRate(t *testing.T) {
	printed.Table(t, "smoke/constant-rate.csv").Each(t, func(t *testing.T, r printed.Row) {
		a := air(t, r.Float("air_c"), quantity(t, r.Decimal("rh_pct"), units.Percent), units.Atmosphere)
		e, err := Evaporate(a, evenFilm(r.Int("film_w_m2k")), units.One)
		require.NoError(t, err)
		printed.Within(t, r, "wet_bulb_c", e.Surface.In(units.CelsiusScale, 6))
		printed.Within(t, r, "flux_g_m2h", units.In(e.PerMetreHour.Likely, units.Gram, 6))
		// 25 mm of fish at 1055 kg/m³ is 26.375 kg to the square metre.
		share := units.In(e.PerMetreHour.Likely, units.Gram, 9).DivRound(decimal.RequireFromString("263.75"), 9)
		printed.Within(t, r, "pct_h_25_mm", share)
	})
}

// Salt on the surface: warmer, slower, and drying ends where the air is as wet as the brine.
func TestSaltHoldsWaterBack(t *testing.T) {
	for _, celsius := range []float64{-3, 2, 4, 20, 32, 60, 107} {
		a := air(t, celsius, 4*units.Percent, 86*units.Kilopascal)
		before, err := Evaporate(a, SmokerFilm(), units.One)
		require.NoError(t, err)
		wet, err := a.WetBulb()
		require.NoError(t, err)
		require.Equal(t, wet, before.Surface)
		for activity := units.Ratio(99); activity >= 75; activity -= 4 {
			e, err := Evaporate(a, SmokerFilm(), activity*units.Percent)
			require.NoError(t, err)
			require.True(t, e.Surface.Above(before.Surface))
			require.Less(t, e.PerMetreHour.Likely, before.PerMetreHour.Likely)
			before = e
		}
	}
	_, err := Evaporate(air(t, 20, 80*units.Percent, units.Atmosphere), SmokerFilm(), 80*units.Percent)
	require.ErrorIs(t, err, units.ErrRange)
	require.ErrorContains(t, err, "wetter air dries nothing")
}

func TestTimeToALossGivesThatLoss(t *testing.T) {
	e, err := Evaporate(air(t, 30, 50*units.Percent, 86*units.Kilopascal), SmokerFilm(), 98*units.Percent)
	require.NoError(t, err)
	area, loss := 600*units.SquareCentimetre, 25*units.Gram
	times, err := e.TimeTo(loss, area)
	require.NoError(t, err)
	require.Less(t, times.Low, times.Likely)
	require.Less(t, times.Likely, times.High)
	for _, c := range []struct {
		after time.Duration
		of    func(units.Range[units.Mass]) units.Mass
	}{
		{times.Low, func(m units.Range[units.Mass]) units.Mass { return m.High }}, {times.Likely, func(m units.Range[units.Mass]) units.Mass { return m.Likely }},
		{times.High, func(m units.Range[units.Mass]) units.Mass { return m.Low }},
	} {
		m, err := e.Lost(area, c.after)
		require.NoError(t, err)
		require.InDelta(t, float64(loss), float64(c.of(m)), float64(units.Milligram))
	}
}

func TestDryingRefuses(t *testing.T) {
	a := air(t, 30, 50*units.Percent, units.Atmosphere)
	film := SmokerFilm()
	h := film.Coefficient
	e, err := Evaporate(a, film, units.One)
	require.NoError(t, err)
	kg := units.Kilogram
	for name, f := range map[string]func() error{
		"film in still air": func() error { _, err := FilmAlong(a, 0); return err },
		"film in a storm":   func() error { _, err := FilmAlong(a, 11*units.MetrePerSecond); return err },
		"film of no air":    func() error { _, err := FilmAlong(Air{}, units.MetrePerSecond); return err },
		"no air":            func() error { _, err := Evaporate(Air{}, film, units.One); return err },
		"activity above 1":  func() error { _, err := Evaporate(a, film, 101*units.Percent); return err },
		"activity not set":  func() error { _, err := Evaporate(a, film, 0); return err },
		"film not set":      func() error { _, err := Evaporate(a, Film{}, units.One); return err },
		"film upside down": func() error {
			_, err := Evaporate(a, Film{Coefficient: units.Range[units.FilmCoefficient]{Low: h.High, Likely: h.Likely, High: h.Low}}, units.One)
			return err
		},
		"wetter air":        func() error { _, err := Evaporate(a, film, 50*units.Percent); return err },
		"negative time":     func() error { _, err := e.Lost(units.SquareMetre, -1); return err },
		"negative area":     func() error { _, err := e.Lost(-1, 1); return err },
		"no loss":           func() error { _, err := e.TimeTo(0, units.SquareMetre); return err },
		"no area":           func() error { _, err := e.TimeTo(kg, 0); return err },
		"months":            func() error { _, err := e.TimeTo(units.Tonne, units.SquareCentimetre); return err },
		"surface in no air": func() error { _, err := Air{}.WetSurface(units.One); return err },
		"surface too dry":   func() error { _, err := a.WetSurface(74 * units.Percent); return err },
	} {
		require.ErrorIs(t, f(), units.ErrRange, name)
	}
	require.ErrorIs(t, Film{}.Check(), units.ErrUnset)
}

// An air, its film and its drying come back from what they are saved as; an air that cannot be is refused there as well.
func TestJSONComesBack(t *testing.T) {
	a := air(t, 30, 50*units.Percent, 86_300*units.Pascal)
	film, err := FilmAlong(a, units.MetrePerSecond)
	require.NoError(t, err)
	e, err := Evaporate(a, film, 98*units.Percent)
	require.NoError(t, err)
	back(t, a)
	back(t, film)
	back(t, e)
	airs(t, func(a Air) { back(t, a) })

	_, err = json.Marshal(Air{})
	require.ErrorIs(t, err, units.ErrUnset)
	for text, part := range map[string]string{
		`{"dryBulb": "30 °C", "pressure": "101.325 kPa"}`:                                             "humidityRatio",
		`{"dryBulb": "30 °C", "humidityRatio": "1 %"}`:                                                "pressure",
		`{"dryBulb": 30, "humidityRatio": "1 %", "pressure": "101.325 kPa"}`:                          "dryBulb",
		`{"dryBulb": "30 °C", "humidityRatio": "1 %", "pressure": "101.325 kPa", "wetBulb": "20 °C"}`: "wetBulb",
		`{"dryBulb": "30 °C", "humidityRatio": "28 ‰", "pressure": "101.325 kPa"}`:                    "saturation",
		`{"dryBulb": "30 °C", "dryBulb": "30 °C", "humidityRatio": "1 %", "pressure": "101.325 kPa"}`: "dryBulb",
		`null`: "",
	} {
		read := a
		err := json.Unmarshal([]byte(text), &read)
		require.ErrorContains(t, err, part, text)
		require.Equal(t, a, read, "stays as it was")
	}
}

func back[T comparable](t *testing.T, v T) {
	t.Helper()
	text, err := json.Marshal(v)
	require.NoError(t, err)
	var read T
	require.NoError(t, json.Unmarshal(text, &read), string(text))
	require.Equal(t, v, read, string(text))
}

// A drying that no function returned is refused like any input.
func TestHandBuiltEvaporation(t *testing.T) {
	rate := func(low, likely, high units.Mass) Evaporation {
		return Evaporation{Surface: units.Celsius(20), PerMetreHour: units.Range[units.Mass]{Low: low, Likely: likely, High: high}}
	}
	for _, e := range []Evaporation{
		{}, rate(-1, 0, 0), rate(units.Gram, 0, units.Kilogram), rate(0, units.Kilogram, units.Gram), rate(0, 0, -units.Gram), rate(0, 0, 2*units.Tonne),
		rate(math.MinInt64, math.MinInt64, math.MinInt64), rate(units.Gram, units.Gram, math.MaxInt64),
	} {
		_, err := e.Lost(units.SquareMetre, time.Hour)
		require.ErrorIs(t, err, units.ErrRange, "%v", e.PerMetreHour)
		_, err = e.TimeTo(units.Gram, units.SquareMetre)
		require.ErrorIs(t, err, units.ErrRange, "%v", e.PerMetreHour)
	}
	_, err := Evaporation{}.Lost(units.SquareMetre, time.Hour)
	require.ErrorIs(t, err, units.ErrUnset)
	lost, err := rate(100*units.Gram, 200*units.Gram, 300*units.Gram).Lost(units.SquareMetre, time.Hour)
	require.NoError(t, err)
	require.Equal(t, 200*units.Gram, lost.Likely)
	_, err = rate(0, 0, 0).Lost(units.SquareMetre, time.Hour)
	require.NoError(t, err, "air that dries nothing")
}
