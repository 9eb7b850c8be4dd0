package moistair

import (
	"math"
	"testing"

	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
)

func celsius(t testing.TB, r printed.Row, col string) units.Temperature {
	t.Helper()
	v, err := units.TemperatureOf(r.Decimal(col), units.CelsiusScale)
	require.NoError(t, err)
	return v
}

func quantity[Q units.Quantity](t testing.TB, n decimal.Decimal, unit Q) Q {
	t.Helper()
	q, err := units.Of(n, unit)
	require.NoError(t, err)
	return q
}

func TestSaturationCoefficients(t *testing.T) {
	rows := printed.Table(t, "smoke/saturation-coefficients.csv")
	inPrint := map[string]saturationCurve{}
	rows.Each(t, func(t *testing.T, r printed.Row) {
		c := inPrint[r.Text("equation")]
		switch r.Text("term") {
		case "inverse":
			c.inverse = r.Float("value")
		case "log":
			c.log = r.Float("value")
		default:
			c.power[r.Int("term")] = r.Float("value")
		}
		inPrint[r.Text("equation")] = c
	})
	require.Equal(t, map[string]saturationCurve{"5": overIce, "6": overWater}, inPrint)
}

// airOfRow is the air that a row of the printed figures tells.
func airOfRow(t *testing.T, r printed.Row) Air {
	t.Helper()
	p := units.Atmosphere
	if r.Has("p_pa") {
		p = quantity(t, r.Decimal("p_pa"), units.Pascal)
	}
	db := celsius(t, r, "t_db_c")
	var a Air
	var err error
	switch {
	case r.Has("t_wb_c"):
		a, err = ByWetBulb(db, celsius(t, r, "t_wb_c"), p)
	case r.Has("w_kg_kg"):
		a, err = ByHumidityRatio(db, quantity(t, r.Decimal("w_kg_kg"), units.One), p)
	default:
		a, err = ByRelativeHumidity(db, units.One, p)
	}
	require.NoError(t, err)
	return a
}

func TestMoistAirAgainstTables(t *testing.T) {
	printed.Table(t, "smoke/moist-air.csv").Each(t, func(t *testing.T, r printed.Row) {
		switch r.Text("quantity") {
		case "pws_pa":
			printed.WithinFloat(t, r, "value", saturation(r.Float("t_db_c")))
			return
		case "w_kg_kg":
			if r.Has("pv_pa") {
				printed.WithinFloat(t, r, "value", ratioAt(r.Float("pv_pa"), r.Float("p_pa")))
				return
			}
		}
		a := airOfRow(t, r)
		rh, err := a.RelativeHumidity()
		require.NoError(t, err)
		dew, err := a.DewPoint()
		require.NoError(t, err)
		h, err := a.Enthalpy()
		require.NoError(t, err)
		rho, err := a.Density()
		require.NoError(t, err)
		switch r.Text("quantity") {
		case "w_saturation_kg_kg", "w_kg_kg":
			printed.Within(t, r, "value", units.In(a.HumidityRatio(), units.One, 16))
		case "rh_fraction":
			printed.Within(t, r, "value", units.In(rh, units.One, 16))
		case "t_dew_point_c":
			// A quantum of temperature is coarser than the last of twelve digits.
			printed.WithinFloat(t, r, "value", saturationAt(a.vapour(), r.Float("t_db_c")))
			require.Equal(t, units.Celsius(saturationAt(a.vapour(), r.Float("t_db_c"))), dew)
		case "h_kj_kg":
			printed.Within(t, r, "value", units.In(h, units.KilojoulePerKilogram, 16))
		case "v_m3_kg":
			printed.WithinFloat(t, r, "value", a.cubicMetres())
		case "rho_moist_kg_m3":
			require.InDelta(t, r.Float("value"), units.Float(rho, units.KilogramPerCubicMetre), 1e-9) // a quantum of Density
			printed.WithinFloat(t, r, "value", (1+units.Float(a.HumidityRatio(), units.One))/a.cubicMetres())
		default:
			t.Fatalf("nobody checks %s", r.Text("quantity"))
		}
	})
}

func TestWetBulbCeilings(t *testing.T) {
	printed.Table(t, "smoke/wet-bulb.csv").Each(t, func(t *testing.T, r printed.Row) {
		a, err := ByHumidityRatio(celsius(t, r, "dry_bulb_c"), quantity(t, r.Decimal("humidity_ratio_kg_kg"), units.One), units.Atmosphere)
		require.NoError(t, err)
		wb, err := a.WetBulb()
		require.NoError(t, err)
		printed.Within(t, r, "wet_bulb_c", wb.In(units.CelsiusScale, 6))
		printed.Within(t, r, "wet_bulb_f", wb.In(units.FahrenheitScale, 6))
		rh, err := a.RelativeHumidity()
		require.NoError(t, err)
		printed.Within(t, r, "rh_pct", units.In(rh, units.Percent, 8))
	})
}

// airs are dry bulbs, humidities and pressures over the whole range.
func airs(t *testing.T, visit func(a Air)) {
	t.Helper()
	for _, celsius := range []float64{-50, -20, -1, 0, 0.005, 0.01, 0.02, 1, 4, 5, 20, 40, 60, 82.2, 99, 100, 107.22, 150, 200} {
		for _, kilopascals := range []units.Pressure{40, 70, 86, 101, 110} {
			for _, w := range []units.Ratio{0, 1, 20, 1_000, 1_800, 1_900, 2_000, 10_000, 50_000, 300_000, 900_000, 1_900_000} {
				a, err := ByHumidityRatio(units.Celsius(celsius), w*units.PartsPerMillion, kilopascals*units.Kilopascal)
				if err == nil {
					visit(a)
				}
			}
			a, err := ByRelativeHumidity(units.Celsius(celsius), units.One, kilopascals*units.Kilopascal)
			if err == nil {
				visit(a)
			}
		}
	}
}

func TestWetBulbLiesBetweenDewPointAndDryBulb(t *testing.T) {
	n := 0
	airs(t, func(a Air) {
		n++
		wb, err := a.WetBulb()
		require.NoError(t, err)
		require.False(t, wb.Above(a.DryBulb()), "%v in %v", wb, a)
		if dew, err := a.DewPoint(); err == nil {
			require.False(t, dew.Above(wb), "dew %v, wet bulb %v in %v", dew, wb, a)
		}
	})
	require.Greater(t, n, 500)
}

func TestHumidityNeverLowersTheCeiling(t *testing.T) {
	airs(t, func(a Air) {
		wb, err := a.WetBulb()
		require.NoError(t, err)
		for _, more := range []units.Ratio{1, units.PartsPerMillion, units.PerMille, 10 * units.Percent} {
			wetter, err := ByHumidityRatio(a.DryBulb(), a.HumidityRatio()+more, a.Pressure())
			if err != nil {
				continue
			}
			higher, err := wetter.WetBulb()
			require.NoError(t, err)
			require.False(t, higher.Below(wb), "%v to %v in %v", wb, higher, a)
		}
	})
}

// From any one of the others back to the same air, as far as the quantum of each carries.
func TestEveryDoorLeadsToTheSameAir(t *testing.T) {
	airs(t, func(a Air) {
		near := func(b Air, err error, slack float64) {
			t.Helper()
			require.NoError(t, err, "%v", a)
			w := float64(a.HumidityRatio())
			require.InDelta(t, w, float64(b.HumidityRatio()), slack*w+10, "%v", a)
		}
		rh, err := a.RelativeHumidity()
		require.NoError(t, err)
		b, err := ByRelativeHumidity(a.DryBulb(), min(rh, units.One), a.Pressure())
		near(b, err, 1e-6)
		h, _ := a.Enthalpy()
		if a.HumidityRatio() > units.PartsPerMillion && rh < 999*units.PerMille {
			b, err = ByEnthalpy(a.DryBulb(), h, a.Pressure())
			near(b, err, 1e-2)
		}
		if dew, err := a.DewPoint(); err == nil && (dew.Celsius() < 0.009 || dew.Celsius() > 0.011) {
			b, err = ByDewPoint(a.DryBulb(), dew, a.Pressure())
			near(b, err, 1e-6)
		}
		wb, _ := a.WetBulb()
		if a.HumidityRatio() > units.PartsPerMillion && rh < 999*units.PerMille && wb.Celsius() != 0 { // at 0 °C ice and water both hold
			b, err = ByWetBulb(a.DryBulb(), wb, a.Pressure())
			require.NoError(t, err)
			require.InDelta(t, float64(a.HumidityRatio()), float64(b.HumidityRatio()), 1e-7*float64(units.One)*(1+math.Pow(float64(a.HumidityRatio())/1e12, 2)*50))
		}
		v, _ := a.Volume()
		if rh < 999*units.PerMille && a.HumidityRatio() > units.PartsPerMillion {
			b, err = ByVolume(a.DryBulb(), v, a.Pressure())
			near(b, err, 1e-4)
		}
	})
}

func TestAirsThatCannotBe(t *testing.T) {
	p, warm := units.Atmosphere, units.Celsius(30)
	for name, make := range map[string]func() (Air, error){
		"unset dry bulb":         func() (Air, error) { return ByHumidityRatio(units.Temperature{}, units.PerMille, p) },
		"too cold":               func() (Air, error) { return ByHumidityRatio(units.Celsius(-50.1), 0, p) },
		"too hot":                func() (Air, error) { return ByHumidityRatio(units.Celsius(200.1), 0, p) },
		"pressure of a mountain": func() (Air, error) { return ByHumidityRatio(warm, 0, 39*units.Kilopascal) },
		"gauge pressure":         func() (Air, error) { return ByHumidityRatio(warm, 0, 0) },
		"negative water":         func() (Air, error) { return ByHumidityRatio(warm, -1, p) },
		"oversaturated":          func() (Air, error) { return ByHumidityRatio(warm, 28*units.PerMille, p) },
		"steam":                  func() (Air, error) { return ByHumidityRatio(units.Celsius(150), 3*units.One, p) },
		"humidity of 101 %":      func() (Air, error) { return ByRelativeHumidity(warm, 101*units.Percent, p) },
		"all steam":              func() (Air, error) { return ByRelativeHumidity(units.Celsius(150), units.One, p) },
		"dew above dry bulb":     func() (Air, error) { return ByDewPoint(warm, units.Celsius(31), p) },
		"unset dew point":        func() (Air, error) { return ByDewPoint(warm, units.Temperature{}, p) },
		"wet bulb above dry":     func() (Air, error) { return ByWetBulb(warm, units.Celsius(30.1), p) },
		"wet bulb too low":       func() (Air, error) { return ByWetBulb(warm, units.Celsius(9), p) },
		"enthalpy of dry air":    func() (Air, error) { return ByEnthalpy(warm, 29*units.KilojoulePerKilogram, p) },
		"enthalpy of steam":      func() (Air, error) { return ByEnthalpy(warm, 9_000*units.KilojoulePerKilogram, p) },
		"volume too small":       func() (Air, error) { return ByVolume(warm, 500*units.Litre, p) },
		"heated past the range":  func() (Air, error) { a, _ := ByHumidityRatio(warm, 0, p); return a.Heated(units.Celsius(300)) },
		"cooled past saturation": func() (Air, error) {
			a, _ := ByHumidityRatio(warm, 20*units.PerMille, p)
			return a.Heated(units.Celsius(10))
		},
		"heated nothing": func() (Air, error) { return Air{}.Heated(warm) },
	} {
		a, err := make()
		require.ErrorIs(t, err, units.ErrRange, name)
		require.Zero(t, a, name)
	}
	dry, err := ByHumidityRatio(warm, 0, p)
	require.NoError(t, err)
	_, err = dry.DewPoint()
	require.ErrorIs(t, err, units.ErrRange)
	for name, f := range map[string]func() error{
		"relative humidity": func() error { _, err := Air{}.RelativeHumidity(); return err },
		"dew point":         func() error { _, err := Air{}.DewPoint(); return err },
		"wet bulb":          func() error { _, err := Air{}.WetBulb(); return err },
		"enthalpy":          func() error { _, err := Air{}.Enthalpy(); return err },
		"volume":            func() error { _, err := Air{}.Volume(); return err },
		"density":           func() error { _, err := Air{}.Density(); return err },
	} {
		require.ErrorIs(t, f(), units.ErrRange, name)
	}
}

// Altitude counts: at the same dry bulb and relative humidity thinner air has the lower ceiling.
func TestThinAirHasALowerCeiling(t *testing.T) {
	sea, err := ByRelativeHumidity(units.Celsius(60), 30*units.Percent, units.Atmosphere)
	require.NoError(t, err)
	high, err := ByRelativeHumidity(units.Celsius(60), 30*units.Percent, 86*units.Kilopascal)
	require.NoError(t, err)
	s, _ := sea.WetBulb()
	h, _ := high.WetBulb()
	require.True(t, h.Below(s))
}

func FuzzWetBulb(f *testing.F) {
	f.Add(int64(107_220_000), int64(10_000_000_000), int64(101_325))
	f.Add(int64(5_000), int64(1_900_000_000), int64(90_000))
	f.Fuzz(func(t *testing.T, microCelsius, w, pascals int64) {
		if pascals < 0 || pascals > 200_000 || microCelsius > 1e9 || microCelsius < -1e9 {
			return
		}
		a, err := ByHumidityRatio(units.Celsius(float64(microCelsius)/1e6), units.Ratio(w), units.Pressure(pascals)*units.Pascal)
		if err != nil {
			return
		}
		wb, err := a.WetBulb()
		require.NoError(t, err)
		require.False(t, wb.Above(a.DryBulb()))
		if dew, err := a.DewPoint(); err == nil {
			require.False(t, dew.Above(wb), "%v %v", dew, wb)
		}
		for _, more := range []units.Ratio{1, units.PartsPerMillion, units.PerMille} {
			wetter, err := ByHumidityRatio(a.DryBulb(), a.HumidityRatio()+more, a.Pressure())
			if err != nil {
				continue
			}
			higher, err := wetter.WetBulb()
			require.NoError(t, err)
			require.False(t, higher.Below(wb), "more water never lowers the ceiling: %v to %v", wb, higher)
		}
	})
}

func BenchmarkWetBulb(b *testing.B) {
	a, err := ByHumidityRatio(units.Fahrenheit(225), 10*units.PerMille, 86*units.Kilopascal)
	require.NoError(b, err)
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		if _, err := a.WetBulb(); err != nil {
			b.Fatal(err)
		}
	}
}
