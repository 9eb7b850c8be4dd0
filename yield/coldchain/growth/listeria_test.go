package growth_test

import (
	"math"
	"testing"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain/growth"
	"example.org/lakelarder/yield/coldchain/internal/chain"
	"example.org/lakelarder/yield/coldchain/internal/logged"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"
)

func one(r units.Ratio) decimal.Decimal { return units.In(r, units.One, 12) }

// Source: FDA and FSIS risk assessment 2003, appendix 8, table 1, and the same conversion computed outside this
// library.
func TestListeriaRates(t *testing.T) {
	printed.Table(t, "coldchain/listeria-rates.csv").Each(t, func(t *testing.T, r printed.Row) {
		got, err := growth.ListeriaRate(logged.Quantity(t, r, "log10_per_day", units.One), logged.Celsius(t, r, "seen_at_c"), logged.Celsius(t, r, "at_c"))
		require.NoError(t, err)
		printed.Within(t, r, "converted_log10_per_day", one(got.PerDay))
		require.NoError(t, got.Citation.Check())
		require.Contains(t, got.Cautions[2].Text, "inferred")
	})
	for _, c := range []float64{-1.18, -2, -18} {
		got, err := growth.ListeriaRate(units.One, units.Celsius(5), units.Celsius(c))
		require.NoError(t, err)
		require.Zero(t, got.PerDay)
		require.Zero(t, got.PerHour)
	}
}

func seafoodOf(t *testing.T, r printed.Row) growth.Seafood {
	t.Helper()
	s := growth.Seafood{
		Temperature: logged.Celsius(t, r, "temp_c"), PH: logged.Quantity(t, r, "ph", units.PHUnit),
		Phenol: logged.Quantity(t, r, "phenol_ppm", units.PartsPerMillion),
	}
	if r.Has("water_activity") {
		s.WaterActivity = logged.Quantity(t, r, "water_activity", units.One)
		s.Sorbic = logged.Quantity(t, r, "sorbic_ppm", units.PartsPerMillion)
		return s
	}
	activity, err := growth.SeafoodActivity(logged.Quantity(t, r, "water_phase_salt_pct", units.Percent))
	require.NoError(t, err)
	s.WaterActivity, s.Lactic = activity, logged.Quantity(t, r, "lactic_ppm", units.PartsPerMillion)
	return s
}

// Source: the published output of an open package, and the equations of Mejlholm and Dalgaard 2009 computed outside
// this library.
func TestListeriaInSeafood(t *testing.T) {
	printed.Table(t, "coldchain/listeria-seafood.csv").Each(t, func(t *testing.T, r printed.Row) {
		got, err := growth.ListeriaInSeafood(seafoodOf(t, r))
		require.NoError(t, err)
		printed.Within(t, r, "mu_per_h", one(got.WithInteraction.PerHour))
		require.GreaterOrEqual(t, got.PerHour, got.WithInteraction.PerHour, "without interaction is the safer")
		if r.Has("xi") {
			printed.Within(t, r, "xi", one(got.Xi))
		}
		if r.Has("psi") {
			printed.Within(t, r, "psi", one(got.Psi))
			printed.Within(t, r, "log10_per_day", one(got.WithInteraction.PerDay))
		}
		require.NoError(t, got.Citation.Check())
		require.Contains(t, got.WithInteraction.Cautions[2].Text, "do not lean")
	})
}

// smoked is an invented cold-smoked trout.
func smoked() growth.Seafood {
	return growth.Seafood{
		Temperature: units.Celsius(8), WaterActivity: 970 * units.PerMille, PH: 6200, Phenol: 8 * units.PartsPerMillion,
		Lactic: 7000 * units.PartsPerMillion,
	}
}

// Each hurdle slows growth, and at its limit stops it.
func TestHurdles(t *testing.T) {
	free, err := growth.ListeriaInSeafood(smoked())
	require.NoError(t, err)
	for name, c := range map[string]struct{ more, stop func(s *growth.Seafood) }{
		"cold":   {func(s *growth.Seafood) { s.Temperature = units.Celsius(4) }, func(s *growth.Seafood) { s.Temperature = units.Celsius(-2.83) }},
		"dry":    {func(s *growth.Seafood) { s.WaterActivity = 960 * units.PerMille }, func(s *growth.Seafood) { s.WaterActivity = 923 * units.PerMille }},
		"sour":   {func(s *growth.Seafood) { s.PH = 5900 }, func(s *growth.Seafood) { s.PH = 4970 }},
		"smoky":  {func(s *growth.Seafood) { s.Phenol = 12 * units.PartsPerMillion }, func(s *growth.Seafood) { s.Phenol = 32 * units.PartsPerMillion }},
		"cured":  {func(s *growth.Seafood) { s.Nitrite = 50 * units.PartsPerMillion }, func(s *growth.Seafood) { s.Nitrite = 350 * units.PartsPerMillion }},
		"packed": {func(s *growth.Seafood) { s.CarbonDioxide = 800 * units.PartsPerMillion }, func(s *growth.Seafood) { s.CarbonDioxide = 3140 * units.PartsPerMillion }},
		"acetic": {func(s *growth.Seafood) { s.Acetic = 500 * units.PartsPerMillion }, func(s *growth.Seafood) { s.Acetic = 30 * units.PerMille }},
		"benzoic": {func(s *growth.Seafood) { s.Benzoic = 200 * units.PartsPerMillion },
			func(s *growth.Seafood) { s.Benzoic = 10 * units.PerMille }},
		"citric": {func(s *growth.Seafood) { s.Citric = 2 * units.PerMille }, func(s *growth.Seafood) { s.Citric = units.One }},
		"diacetate": {func(s *growth.Seafood) { s.Diacetate = 500 * units.PartsPerMillion },
			func(s *growth.Seafood) { s.Diacetate = 30 * units.PerMille }},
		"lactic": {func(s *growth.Seafood) { s.Lactic = 9 * units.PerMille }, func(s *growth.Seafood) { s.Lactic = 200 * units.PerMille }},
		"sorbic": {func(s *growth.Seafood) { s.Sorbic = 500 * units.PartsPerMillion }, func(s *growth.Seafood) { s.Sorbic = 30 * units.PerMille }},
	} {
		s := smoked()
		c.more(&s)
		slower, err := growth.ListeriaInSeafood(s)
		require.NoError(t, err, name)
		require.Less(t, slower.PerHour, free.PerHour, name)
		require.Less(t, slower.WithInteraction.PerHour, free.WithInteraction.PerHour, name)
		require.Greater(t, slower.Psi, free.Psi, name)
		s = smoked()
		c.stop(&s)
		none, err := growth.ListeriaInSeafood(s)
		require.NoError(t, err, name)
		require.Zero(t, none.PerHour, name)
		require.Zero(t, none.WithInteraction.PerDay, name)
		require.Zero(t, none.Psi, name)
		require.Zero(t, none.Xi, name)
	}
}

// Source: Jia et al. 2020, computed outside this library.
func TestListeriaInRawSalmon(t *testing.T) {
	printed.Table(t, "coldchain/listeria-raw-salmon.csv").Each(t, func(t *testing.T, r printed.Row) {
		got, err := growth.ListeriaInRawSalmon(logged.Celsius(t, r, "temp_c"))
		require.NoError(t, err)
		printed.Within(t, r, "mu_per_h", one(got.PerHour))
		require.True(t, got.Lag.Given)
		printed.Within(t, r, "lag_h", logged.InHours(got.Lag.Value))
	})
	for _, c := range []float64{-18, 0, 1.3, 1.300001} {
		got, err := growth.ListeriaInRawSalmon(units.Celsius(c))
		require.NoError(t, err)
		require.LessOrEqual(t, got.PerHour, 10*units.Ratio(1))
		require.False(t, got.Lag.Given)
		require.Contains(t, got.Cautions[1].Text, "known to grow")
	}
}

func TestGrowthRefuses(t *testing.T) {
	ten := units.Celsius(10)
	seafood := func(change func(s *growth.Seafood)) func() error {
		s := smoked()
		change(&s)
		return func() error { _, err := growth.ListeriaInSeafood(s); return err }
	}
	rate := func(r units.Ratio, from, to units.Temperature) func() error {
		return func() error { _, err := growth.ListeriaRate(r, from, to); return err }
	}
	salmon := func(at units.Temperature) func() error {
		return func() error { _, err := growth.ListeriaInRawSalmon(at); return err }
	}
	salt := func(s units.Ratio) func() error {
		return func() error { _, err := growth.SeafoodActivity(s); return err }
	}
	fast := growth.Rate{PerDay: math.MaxInt64}
	for name, f := range map[string]func() error{
		"rate below zero":      rate(-1, ten, ten),
		"seen where none grow": rate(units.One, units.Celsius(-1.18), ten),
		"seen too warm":        rate(units.One, units.Celsius(25.1), ten),
		"seen nowhere":         rate(units.One, units.Temperature{}, ten),
		"converted too warm":   rate(units.One, ten, units.Celsius(25.1)),
		"converted to nothing": rate(units.One, ten, units.Temperature{}),
		"past all rates":       rate(math.MaxInt64, units.Celsius(-1), ten),
		"salmon not set":       salmon(units.Temperature{}),
		"salmon too warm":      salmon(units.Celsius(25.1)),
		"salt below zero":      salt(-1),
		"salt past saturation": salt(26*units.Percent + 1),
		"not set":              seafood(func(s *growth.Seafood) { s.Temperature = units.Temperature{} }),
		"too warm":             seafood(func(s *growth.Seafood) { s.Temperature = units.Celsius(25.1) }),
		"activity left out":    seafood(func(s *growth.Seafood) { s.WaterActivity = 0 }),
		"activity above one":   seafood(func(s *growth.Seafood) { s.WaterActivity = units.One + 1 }),
		"pH left out":          seafood(func(s *growth.Seafood) { s.PH = 0 }),
		"pH of lye":            seafood(func(s *growth.Seafood) { s.PH = 8001 }),
		"phenol below zero":    seafood(func(s *growth.Seafood) { s.Phenol = -1 }),
		"more acid than whole": seafood(func(s *growth.Seafood) { s.Sorbic = units.One + 1 }),
		"time below zero":      func() error { _, err := fast.Over(-1); return err },
		"past all numbers":     func() error { _, err := fast.Over(2 * chain.Day); return err },
	} {
		require.ErrorIs(t, f(), units.ErrRange, name)
	}
}
