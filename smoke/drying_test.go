package smoke

import (
	"testing"
	"time"

	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
)

func air(t testing.TB, celsius float64, relative units.Ratio, p units.Pressure) Air {
	t.Helper()
	a, err := AirByRelativeHumidity(units.Celsius(celsius), relative, p)
	require.NoError(t, err)
	return a
}

// evenFilm is a film without a range.
func evenFilm(wattPerSquareMetreKelvin int64) Film {
	h := units.FilmCoefficient(wattPerSquareMetreKelvin) * units.WattPerSquareMetreKelvin
	return Film{Low: h, Likely: h, High: h}
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
	a, err := AirByHumidityRatio(units.Celsius(65.6), 10*units.PerMille, units.Atmosphere)
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
			printed.Within(t, r, "value", units.In(f.Likely, units.WattPerSquareMetreKelvin, 6))
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
		of    func(Masses) units.Mass
	}{
		{times.Low, func(m Masses) units.Mass { return m.High }}, {times.Likely, func(m Masses) units.Mass { return m.Likely }},
		{times.High, func(m Masses) units.Mass { return m.Low }},
	} {
		m, err := e.Lost(area, c.after)
		require.NoError(t, err)
		require.InDelta(t, float64(loss), float64(c.of(m)), float64(units.Milligram))
	}
}

func TestPellicle(t *testing.T) {
	warm := air(t, 30, 50*units.Percent, 86*units.Kilopascal)
	p, err := DryPellicle(units.Kilogram, 600*units.SquareCentimetre, warm, SmokerFilm(), 98*units.Percent)
	require.NoError(t, err)
	require.Less(t, p.Tacky.High, p.Stop.High)
	require.InDelta(t, 6, float64(p.Stop.Likely)/float64(p.Tacky.Likely), 1e-4) // 3 % and 0.5 %
	require.Contains(t, p.Cautions, moistAtSmoke)
	require.Contains(t, p.Cautions, dryCold)
	for _, c := range p.Cautions {
		require.NoError(t, c.Citation.Check(), c.Text)
	}
}

func TestFallingRatesAreThePrintedOnes(t *testing.T) {
	var inPrint []FallingRate
	for _, r := range printed.Table(t, "smoke/falling-rate.csv") {
		inPrint = append(inPrint, FallingRate{
			Air: celsius(t, r, "air_c"), Initial: quantity(t, r.Decimal("initial_pct"), units.Percent),
			Final: quantity(t, r.Decimal("final_pct"), units.Percent), Time: time.Duration(r.Int("time_h")) * time.Hour, Citation: fallingRates[0].Citation,
		})
		require.Equal(t, []string{"YaparErdol", "abstract", "read"}, []string{r.Text("source"), r.Text("place"), r.Text("basis")})
	}
	require.Equal(t, inPrint, FallingRates())
	printed.Table(t, "smoke/falling-rate-constants.csv").Each(t, func(t *testing.T, r printed.Row) {
		for _, f := range FallingRates() {
			if f.Air != celsius(t, r, "air_c") {
				continue
			}
			k, err := f.PerHour()
			require.NoError(t, err)
			printed.Within(t, r, "k_per_h", units.In(k, units.One, 12))
			took, err := f.TimeTo(f.Initial, f.Final)
			require.NoError(t, err)
			require.Equal(t, f.Time, took)
			m, err := f.Moisture(f.Initial, took)
			require.NoError(t, err)
			require.InDelta(t, float64(f.Final), float64(m), 10)
			return
		}
		t.Fatal("no such drying")
	})
}

func TestDryingLoss(t *testing.T) {
	printed.Table(t, "smoke/drying-loss.csv").Each(t, func(t *testing.T, r printed.Row) {
		d, err := LossForWaterPhaseSalt(100*units.Gram, quantity(t, r.Decimal("salt_g"), units.Gram), quantity(t, r.Decimal("water_g"), units.Gram),
			quantity(t, r.Decimal("target_pct"), units.Percent))
		require.NoError(t, err)
		printed.Within(t, r, "lost_g", units.In(d.Mass, units.Gram, 6))
		require.False(t, d.Reached || d.BeyondPublished)
	})
	_, err := LossForWaterPhaseSalt(100*units.Gram, 2*units.Gram, 70*units.Gram, 263_950*units.PartsPerMillion)
	require.NoError(t, err, "saturated brine at 60 °F, 26.395 %")
	there, err := LossForWaterPhaseSalt(100*units.Gram, 3*units.Gram, 70*units.Gram, 35*units.PerMille)
	require.NoError(t, err)
	require.True(t, there.Reached)
	require.Zero(t, there.Mass)
	lean, err := LossForWaterPhaseSalt(100*units.Gram, units.Gram, 77*units.Gram, 35*units.PerMille)
	require.NoError(t, err)
	require.True(t, lean.BeyondPublished)
	require.Greater(t, len(lean.Cautions), len(there.Cautions))
}

// At 4 % two grams of salt keep 48 g of water: of 76.8 g just the 28.8 % in print must go, of a milligram more a little more than that.
func TestLossBeyondPrint(t *testing.T) {
	for water, beyond := range map[units.Mass]bool{76_800 * units.Milligram: false, 76_801 * units.Milligram: true} {
		d, err := LossForWaterPhaseSalt(100*units.Gram, 2*units.Gram, water, 4*units.Percent)
		require.NoError(t, err)
		require.Equal(t, water-48*units.Gram, d.Mass)
		require.Equal(t, beyond, d.BeyondPublished, "%v", water)
	}
}

// What is lost is enough and not two micrograms more than that; more salt never needs more drying.
func FuzzDryingLoss(f *testing.F) {
	f.Add(int64(2_000), int64(70_000), int64(35))
	f.Fuzz(func(t *testing.T, salt, water, target int64) {
		if salt <= 0 || salt > 1e8 || water <= 0 || water > 1e8 || target <= 0 || target > 263 {
			return
		}
		s, w, p := units.Mass(salt)*units.Milligram, units.Mass(water)*units.Milligram, units.Ratio(target)*units.PerMille
		d, err := LossForWaterPhaseSalt(s+w, s, w, p)
		require.NoError(t, err)
		share, err := units.RatioOf(s, s+w-d.Mass)
		require.NoError(t, err)
		require.GreaterOrEqual(t, share, p-1)
		if !d.Reached {
			short, err := units.RatioOf(s, s+w-d.Mass+2*units.Microgram)
			require.NoError(t, err)
			require.LessOrEqual(t, short, p)
		}
		saltier, err := LossForWaterPhaseSalt(s+w+units.Milligram, s+units.Milligram, w, p)
		require.NoError(t, err)
		require.LessOrEqual(t, saltier.Mass, d.Mass)
	})
}

func TestDryingRefuses(t *testing.T) {
	a := air(t, 30, 50*units.Percent, units.Atmosphere)
	e, err := Evaporate(a, SmokerFilm(), units.One)
	require.NoError(t, err)
	trout := FallingRates()[0]
	kg, film := units.Kilogram, SmokerFilm()
	for name, f := range map[string]func() error{
		"film in still air": func() error { _, err := FilmAlong(a, 0); return err },
		"film in a storm":   func() error { _, err := FilmAlong(a, 11*units.MetrePerSecond); return err },
		"film of no air":    func() error { _, err := FilmAlong(Air{}, units.MetrePerSecond); return err },
		"no air":            func() error { _, err := Evaporate(Air{}, film, units.One); return err },
		"activity above 1":  func() error { _, err := Evaporate(a, film, 101*units.Percent); return err },
		"activity not set":  func() error { _, err := Evaporate(a, film, 0); return err },
		"film not set":      func() error { _, err := Evaporate(a, Film{}, units.One); return err },
		"film upside down": func() error {
			_, err := Evaporate(a, Film{Low: film.High, Likely: film.Likely, High: film.Low}, units.One)
			return err
		},
		"wetter air":            func() error { _, err := Evaporate(a, film, 50*units.Percent); return err },
		"negative time":         func() error { _, err := e.Lost(units.SquareMetre, -1); return err },
		"negative area":         func() error { _, err := e.Lost(-1, 1); return err },
		"no loss":               func() error { _, err := e.TimeTo(0, units.SquareMetre); return err },
		"no area":               func() error { _, err := e.TimeTo(kg, 0); return err },
		"months":                func() error { _, err := e.TimeTo(units.Tonne, units.SquareCentimetre); return err },
		"pellicle of no fillet": func() error { _, err := DryPellicle(0, units.SquareMetre, a, film, units.One); return err },
		"pellicle of no area":   func() error { _, err := DryPellicle(kg, 0, a, film, units.One); return err },
		"no drying":             func() error { _, err := FallingRate{}.PerHour(); return err },
		"bone dry":              func() error { _, err := trout.Moisture(0, time.Hour); return err },
		"pure water":            func() error { _, err := trout.Moisture(units.One, time.Hour); return err },
		"back in time":          func() error { _, err := trout.Moisture(units.Percent, -1); return err },
		"wetter than it was":    func() error { _, err := trout.TimeTo(50*units.Percent, 51*units.Percent); return err },
		"no salt":               func() error { _, err := LossForWaterPhaseSalt(kg, 0, kg/2, units.Percent); return err },
		"more than the fillet":  func() error { _, err := LossForWaterPhaseSalt(kg, kg/2, kg, units.Percent); return err },
		"no target":             func() error { _, err := LossForWaterPhaseSalt(kg, kg/20, kg/2, 0); return err },
		"past saturation":       func() error { _, err := LossForWaterPhaseSalt(kg, kg/20, kg/2, 27*units.Percent); return err },
		"a hair past it": func() error {
			_, err := LossForWaterPhaseSalt(kg, kg/20, kg/2, 263_950*units.PartsPerMillion+1)
			return err
		},
	} {
		require.ErrorIs(t, f(), units.ErrRange, name)
	}
}
