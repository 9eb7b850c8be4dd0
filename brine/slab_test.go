package brine

import (
	"math"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/brine/solution"
	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
)

func TestSlabDiffusion(t *testing.T) {
	printed.Table(t, "brine/slab-diffusion.csv").Each(t, func(t *testing.T, r printed.Row) {
		fo := r.Float("fourier")
		printed.WithinFloat(t, r, "mean_uptake", meanUptake(fo))
		printed.WithinFloat(t, r, "core_uptake", coreUptake(fo))
		printed.WithinFloat(t, r, "short_time", 2*math.Sqrt(fo/math.Pi))
		printed.WithinFloat(t, r, "long_time", 1-8/(math.Pi*math.Pi)*math.Exp(-math.Pi*math.Pi*fo/4))
	})
}

// The two forms meet without a step, and uptake never falls with time.
func TestSlabFormsJoin(t *testing.T) {
	for _, uptake := range []func(float64) float64{meanUptake, coreUptake} {
		require.InDelta(t, uptake(shortUntil), uptake(math.Nextafter(shortUntil, 0)), 1e-12)
		before := 0.0
		for fo := 1e-6; fo < 20; fo *= 1.01 {
			now := uptake(fo)
			require.GreaterOrEqual(t, now, before)
			require.LessOrEqual(t, now, 1.0)
			before = now
		}
	}
	require.Zero(t, meanUptake(0))
	require.Zero(t, coreUptake(0))
}

// Half a slab with two faces is a slab with one; twice as thick is four times as long; the middle is behind the mean.
func FuzzSlab(f *testing.F) {
	f.Add(int64(25*units.Millimetre), int64(100_000_000), int64(12*time.Hour))
	f.Add(int64(units.Millimetre), int64(1), int64(0))
	f.Fuzz(func(t *testing.T, thickness, d, at int64) {
		one, two := Slab{units.Length(thickness), OneFace}, Slab{2 * units.Length(thickness), TwoFaces}
		a, err1 := one.Uptake(units.Diffusivity(d), time.Duration(at))
		b, err2 := two.Uptake(units.Diffusivity(d), time.Duration(at))
		if err1 != nil || err2 != nil {
			return
		}
		require.InDelta(t, int64(a), int64(b), 1)
		core, err := one.CoreUptake(units.Diffusivity(d), time.Duration(at))
		require.NoError(t, err)
		require.LessOrEqual(t, core, a+1)
		thick, err := Slab{2 * units.Length(thickness), OneFace}.Uptake(units.Diffusivity(d), 4*time.Duration(at))
		if err == nil {
			require.InDelta(t, int64(a), int64(thick), 2)
		}
	})
}

func TestSlabRefused(t *testing.T) {
	good := Slab{units.Inch, OneFace}
	for name, c := range map[string]struct {
		slab Slab
		d    units.Diffusivity
		t    time.Duration
	}{
		"no faces":        {Slab{Thickness: units.Inch}, quickest, time.Hour},
		"no thickness":    {Slab{0, OneFace}, quickest, time.Hour},
		"a foot and more": {Slab{301 * units.Millimetre, OneFace}, quickest, time.Hour},
		"no diffusivity":  {good, 0, time.Hour},
		"cm²/s as m²/s":   {good, units.SquareMetrePerSecond / 10_000_000, time.Hour},
		"before":          {good, quickest, -1},
		"past two months": {good, quickest, longest + 1},
	} {
		_, err := c.slab.Uptake(c.d, c.t)
		require.ErrorIs(t, err, units.ErrRange, name)
		_, err = c.slab.CoreUptake(c.d, c.t)
		require.ErrorIs(t, err, units.ErrRange, name)
		d := Diffusivities{Range: units.Range[units.Diffusivity]{Low: c.d, Likely: c.d, High: c.d}}
		_, err = c.slab.WaterPhaseSaltRange(units.Percent, units.Percent, d, c.t)
		require.ErrorIs(t, err, units.ErrRange, name)
	}
	_, err := Slab{units.Inch, TwoFaces + 1}.Uptake(quickest, time.Hour)
	require.ErrorIs(t, err, units.ErrUnknown)
	falls := Diffusivities{Range: units.Range[units.Diffusivity]{Low: 2, Likely: 1, High: 3}}
	_, err = good.WaterPhaseSaltRange(units.Percent, units.Percent, falls, time.Hour)
	require.ErrorIs(t, err, units.ErrRange)
	limit, _ := solution.Saturation()
	_, err = good.WaterPhaseSaltRange(limit+1, limit, FleshDiffusivity(), time.Hour)
	require.ErrorAs(t, err, &solution.SaturatedError{})
	_, err = good.WaterPhaseSaltRange(limit, -1, FleshDiffusivity(), time.Hour)
	require.ErrorIs(t, err, units.ErrRange)
}

func TestDiffusivitiesInPrint(t *testing.T) {
	d := FleshDiffusivity()
	require.NoError(t, d.Citation.Check())
	found := false
	printed.Table(t, "brine/diffusivities.csv").Each(t, func(t *testing.T, r printed.Row) {
		if r.Has("low_cm2_s") { // cm²/s are ten thousand times m²/s
			require.Equal(t, r.Decimal("low_cm2_s").Shift(-4).String(), r.Decimal("low_m2_s").String())
			require.Equal(t, r.Decimal("high_cm2_s").Shift(-4).String(), r.Decimal("high_m2_s").String())
		}
		if r.Text("system") == "flesh side" {
			found = true
			require.Equal(t, r.Decimal("low_m2_s").String(), units.In(d.Low, units.SquareMetrePerSecond, 18).String())
			require.Equal(t, r.Decimal("high_m2_s").String(), units.In(d.High, units.SquareMetrePerSecond, 18).String())
			require.Equal(t, r.Text("source")+r.Text("place")+r.Text("basis"), d.Citation.Source.Key()+d.Citation.Where+d.Citation.Basis.String())
		}
		require.GreaterOrEqual(t, r.Float("high_m2_s"), r.Float("low_m2_s"))
	})
	require.True(t, found)
	require.InEpsilon(t, float64(d.High)/float64(d.Likely), float64(d.Likely)/float64(d.Low), 1e-6, "the geometric mean")
}

// Ranges stay in order, and the dose is the end of it.
func TestRanges(t *testing.T) {
	s, limit := Slab{units.Inch, OneFace}, 26_395*units.Percent/1000
	for hours := time.Duration(0); hours <= 240; hours += 12 {
		w, err := s.WaterPhaseSaltRange(limit, 4*units.Percent, FleshDiffusivity(), hours*time.Hour)
		require.NoError(t, err)
		require.LessOrEqual(t, w.High, 4*units.Percent)
		require.LessOrEqual(t, w.Low, w.Likely)
		require.LessOrEqual(t, w.Likely, w.High)
		require.NotEmpty(t, w.Cautions)
		require.NoError(t, w.Citation.Check())
	}
}

func BenchmarkUptake(b *testing.B) {
	for name, d := range map[string]units.Diffusivity{"short": 100_000_000, "long": 10_000_000_000} {
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			for i := 0; i < b.N; i++ {
				if _, err := (Slab{units.Inch, OneFace}).Uptake(d, 12*time.Hour); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
