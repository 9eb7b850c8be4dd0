package smoke

import (
	"testing"
	"time"

	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/smoke/moistair"
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

func air(t testing.TB, celsius float64, relative units.Ratio, p units.Pressure) moistair.Air {
	t.Helper()
	a, err := moistair.ByRelativeHumidity(units.Celsius(celsius), relative, p)
	require.NoError(t, err)
	return a
}

func TestPellicle(t *testing.T) {
	warm := air(t, 30, 50*units.Percent, 86*units.Kilopascal)
	p, err := DryPellicle(units.Kilogram, 600*units.SquareCentimetre, warm, moistair.SmokerFilm(), 98*units.Percent)
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
	trout := FallingRates()[0]
	kg, film := units.Kilogram, moistair.SmokerFilm()
	for name, f := range map[string]func() error{
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
