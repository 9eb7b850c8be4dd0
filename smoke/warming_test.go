package smoke

import (
	"errors"
	"math"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/smoke/moistair"
	"example.org/lakelarder/units"
)

func TestSlabCoefficients(t *testing.T) {
	printed.Table(t, "smoke/slab-coefficients.csv").Each(t, func(t *testing.T, r printed.Row) {
		zeta := eigenvalue(0, r.Float("biot"))
		printed.WithinFloat(t, r, "zeta1", zeta)
		printed.WithinFloat(t, r, "c1", amplitude(zeta))
	})
}

// oneSlab has a unit of length, conductivity and diffusivity, so that its film is the Biot number and its time the Fourier number.
func TestSlabSeries(t *testing.T) {
	printed.Table(t, "smoke/slab-series.csv").Each(t, func(t *testing.T, r printed.Row) {
		s := newSlab(1, 1, 1, r.Float("biot"), 1)
		s.into(0)
		s.rest(r.Float("fourier"))
		printed.WithinFloat(t, r, "theta_centre", s.core())
	})
}

func TestSlabExamples(t *testing.T) {
	printed.Table(t, "smoke/slab-examples.csv").Each(t, func(t *testing.T, r printed.Row) {
		l := r.Float("thickness_m")
		if r.Text("faces") == TwoFaces.String() {
			l /= 2
		}
		s := newSlab(l, r.Float("k"), r.Float("alpha"), r.Float("film"), r.Float("start_c"))
		s.into(r.Float("air_c"))
		s.rest(r.Float("time_h") * 3600)
		printed.WithinFloat(t, r, "core_c", s.core())
	})
}

// differences is the same slab by finite differences, explicit in time, with a half cell at either face: another route to the core.
func differences(l, k, alpha, h, start float64, media []float64, seconds float64) []float64 {
	const cells = 60
	dx := l / cells
	dt := 0.2 * dx * dx / alpha
	steps := int(math.Ceil(seconds / dt))
	dt = seconds / float64(steps)
	fo, bi := alpha*dt/(dx*dx), h*dx/k
	now := make([]float64, cells+1)
	for i := range now {
		now[i] = start
	}
	var cores []float64
	for _, medium := range media {
		for n := 0; n < steps; n++ {
			next := append([]float64(nil), now...)
			next[0] = now[0] + 2*fo*(now[1]-now[0])
			for i := 1; i < cells; i++ {
				next[i] = now[i] + fo*(now[i-1]-2*now[i]+now[i+1])
			}
			next[cells] = now[cells] + 2*fo*(now[cells-1]-now[cells]+bi*(medium-now[cells]))
			now = next
		}
		cores = append(cores, now[0])
	}
	return cores
}

func TestSlabThroughPhasesAgainstFiniteDifferences(t *testing.T) {
	for _, c := range []struct{ l, h float64 }{{0.0125, 20}, {0.025, 12}, {0.02, 100}} {
		media := []float64{22, 37, 107, 95, 4}
		const seconds = 2400
		want := differences(c.l, 0.5, 1.35e-7, c.h, 5, media, seconds)
		s := newSlab(c.l, 0.5, 1.35e-7, c.h, 5)
		for i, medium := range media {
			s.into(medium)
			s.rest(seconds)
			require.InDelta(t, want[i], s.core(), 0.01, "phase %d of %v", i, c)
		}
	}
}

// A long rest in one step or in many is the same.
func TestRestsAddUp(t *testing.T) {
	a := newSlab(0.0125, 0.5, 1.35e-7, 20, 5)
	a.into(80)
	b := a
	a.rest(3600)
	for i := 0; i < 3600; i++ {
		b.rest(1)
	}
	require.InDelta(t, a.core(), b.core(), 1e-9)
}

func fillet(thin, thick units.Length) Slab {
	return FilletSlab(thin*units.Millimetre, thick*units.Millimetre, TwoFaces, units.Celsius(4))
}

func TestWarmingIsMonotone(t *testing.T) {
	hot := []Phase{{units.Celsius(40), time.Hour}, {units.Celsius(107), 6 * time.Hour}}
	limit := units.Fahrenheit(160)
	warm := func(s Slab, f moistair.Film, phases ...Phase) Warming {
		w, err := WarmCore(s, f, limit, phases...)
		require.NoError(t, err)
		return w
	}
	base := warm(fillet(20, 25), moistair.SmokerFilm(), hot...)
	require.True(t, base.Reached)
	require.Less(t, base.ToLimit.Low, base.ToLimit.Likely)
	require.Less(t, base.ToLimit.Likely, base.ToLimit.High)
	require.Greater(t, warm(fillet(20, 30), moistair.SmokerFilm(), hot...).ToLimit.High, base.ToLimit.High, "thicker is slower")
	board := fillet(20, 25)
	board.Faces = OneFace
	require.Greater(t, warm(board, moistair.SmokerFilm(), hot...).ToLimit.Low, base.ToLimit.Low, "a board is slower than a rack")
	cooler := []Phase{hot[0], {units.Celsius(95), 6 * time.Hour}}
	require.Greater(t, warm(fillet(20, 25), moistair.SmokerFilm(), cooler...).ToLimit.Low, base.ToLimit.Low)
	wetter := []Phase{{units.Celsius(40), 2 * time.Hour}, hot[1]}
	require.Greater(t, warm(fillet(20, 25), moistair.SmokerFilm(), wetter...).ToLimit.High, base.ToLimit.High, "the longer wet, the later")
	require.False(t, warm(fillet(20, 25), moistair.SmokerFilm(), Phase{units.Celsius(70), 40 * time.Hour}).Reached, "a wet bulb below the limit is a ceiling")
	short := warm(fillet(20, 25), moistair.SmokerFilm(), Phase{units.Celsius(107), time.Hour})
	require.False(t, short.Reached)
	require.NotZero(t, short.ToLimit.Low)
	require.Zero(t, short.ToLimit.High)
}

// In a cooling the thick fillet in slack air stays the warmest: the range of the end is one all the same, around the end of the curve.
func TestTheEndIsARange(t *testing.T) {
	hot, cold := Phase{units.Celsius(107), 4 * time.Hour}, Phase{units.Celsius(2), 2 * time.Hour}
	for name, phases := range map[string][]Phase{"warming": {hot}, "cooling": {hot, cold}, "turning": {hot, {cold.Medium, 20 * time.Minute}}} {
		w, err := WarmCore(fillet(20, 25), moistair.SmokerFilm(), units.Fahrenheit(160), phases...)
		require.NoError(t, err)
		curve, err := CoreCurve(fillet(20, 25), moistair.SmokerFilm(), time.Minute, phases...)
		require.NoError(t, err)
		last, _ := curve.Last()
		require.Equal(t, last.Value, w.End.Likely, name)
		require.True(t, w.End.High.AtLeast(w.End.Likely) && w.End.Likely.AtLeast(w.End.Low) && w.End.High.Above(w.End.Low), "%s: %v", name, w.End)
	}
}

// The time is the first whole second at which the curve is at the limit.
func TestTheCurveMeetsTheTime(t *testing.T) {
	phases := []Phase{{units.Celsius(37), 90 * time.Minute}, {units.Celsius(107), 3 * time.Hour}}
	limit := units.Fahrenheit(160)
	s := fillet(25, 25)
	w, err := WarmCore(s, moistair.SmokerFilm(), limit, phases...)
	require.NoError(t, err)
	_, err = CoreCurve(s, moistair.SmokerFilm(), time.Second, phases...)
	require.ErrorIs(t, err, units.ErrRange, "16,200 readings")
	curve, err := CoreCurve(s, moistair.SmokerFilm(), 2*time.Second, phases...)
	require.NoError(t, err)
	at, found, err := curve.FirstAtOrAbove(limit)
	require.NoError(t, err)
	require.True(t, found)
	require.InDelta(t, float64(w.ToLimit.Likely), float64(at), float64(1100*time.Millisecond))
	last, _ := curve.Last()
	require.Equal(t, w.End.Likely, last.Value)
	first, _ := curve.First()
	require.Equal(t, s.Start, first.Value)
}

// A hold counts from a minute in which the core was at the limit at either end: never a second early, and at most a minute late.
func TestHoldsAreNeverCountedEarly(t *testing.T) {
	const hold = 30 * time.Minute
	limit := units.Fahrenheit(160).Celsius()
	for celsius := 80.; celsius < 120; celsius += 7 {
		for _, s := range fillet(20, 25).cases(moistair.SmokerFilm()) {
			at, _, reached := s.warm(limit, []Phase{{units.Celsius(celsius), 10 * time.Hour}})
			require.True(t, reached)
			cook := func(d time.Duration) []Phase { return []Phase{{units.Celsius(celsius), d}} }
			require.False(t, s.holds(limit, hold, cook(at+hold-time.Second)), "%v at %v", at, celsius)
			require.True(t, s.holds(limit, hold, cook(at+hold+time.Minute)), "%v at %v", at, celsius)
		}
	}
}

func TestWetThenDry(t *testing.T) {
	a, err := moistair.ByHumidityRatio(units.Fahrenheit(225), 10*units.PerMille, units.Atmosphere)
	require.NoError(t, err)
	wet, err := a.WetBulb()
	require.NoError(t, err)
	for _, c := range []struct {
		wet  time.Duration
		want []Phase
	}{
		{0, []Phase{{a.DryBulb(), time.Hour}}}, {time.Hour, []Phase{{wet, time.Hour}}},
		{20 * time.Minute, []Phase{{wet, 20 * time.Minute}, {a.DryBulb(), 40 * time.Minute}}},
	} {
		phases, err := WetThenDry(a, c.wet, time.Hour)
		require.NoError(t, err)
		require.Equal(t, c.want, phases)
	}
}

func TestWarmingRefuses(t *testing.T) {
	good, film, limit, hot := fillet(20, 25), moistair.SmokerFilm(), units.Fahrenheit(160), Phase{units.Celsius(90), time.Hour}
	core := func(change func(*Slab), film moistair.Film, limit units.Temperature, phases ...Phase) func() error {
		return func() error {
			s := good
			change(&s)
			_, err := WarmCore(s, film, limit, phases...)
			if _, other := CoreCurve(s, film, time.Minute, phases...); err == nil {
				return other
			}
			return err
		}
	}
	same := func(*Slab) {}
	torrent := film
	torrent.Coefficient.High = 600 * units.WattPerSquareMetreKelvin
	a, err := moistair.ByHumidityRatio(units.Celsius(90), 0, units.Atmosphere)
	require.NoError(t, err)
	require.NoError(t, core(same, film, limit, hot)())
	for name, f := range map[string]func() error{
		"faces not set":      core(func(s *Slab) { s.Faces = 0 }, film, limit, hot),
		"three faces":        core(func(s *Slab) { s.Faces = 3 }, film, limit, hot),
		"no thickness":       core(func(s *Slab) { s.Thin = 0 }, film, limit, hot),
		"thin above thick":   core(func(s *Slab) { s.Thin = s.Thick + 1 }, film, limit, hot),
		"a whale":            core(func(s *Slab) { s.Thick = units.Metre }, film, limit, hot),
		"frozen":             core(func(s *Slab) { s.Start = units.Celsius(-2) }, film, limit, hot),
		"start not set":      core(func(s *Slab) { s.Start = units.Temperature{} }, film, limit, hot),
		"no conductivity":    core(func(s *Slab) { s.Conductivity = 0 }, film, limit, hot),
		"copper":             core(func(s *Slab) { s.Diffusivity = units.SquareCentimetrePerSecond }, film, limit, hot),
		"no film":            core(same, moistair.Film{}, limit, hot),
		"a torrent":          core(same, torrent, limit, hot),
		"no limit":           core(same, film, units.Temperature{}, hot),
		"limit at the start": core(same, film, good.Start, hot),
		"limit above 100 °C": core(same, film, units.Celsius(101), hot),
		"no phases":          core(same, film, limit),
		"phase of no time":   core(same, film, limit, hot, Phase{units.Celsius(90), 0}),
		"medium not set":     core(same, film, limit, Phase{For: time.Hour}),
		"medium of a fire":   core(same, film, limit, Phase{units.Celsius(250), time.Hour}),
		"three days":         core(same, film, limit, Phase{units.Celsius(90), 47 * time.Hour}, Phase{units.Celsius(90), 2 * time.Hour}),
		"no air":             func() error { _, err := WetThenDry(moistair.Air{}, 0, time.Hour); return err },
		"no time":            func() error { _, err := WetThenDry(a, 0, 0); return err },
		"wet for longer":     func() error { _, err := WetThenDry(a, 2*time.Hour, time.Hour); return err },
		"no step":            func() error { _, err := CoreCurve(good, film, 0, hot); return err },
		"step past the end":  func() error { _, err := CoreCurve(good, film, 2*time.Hour, hot); return err },
	} {
		err := f()
		require.True(t, errors.Is(err, units.ErrRange) || errors.Is(err, units.ErrUnknown), name)
	}
}

func BenchmarkCoreCurve(b *testing.B) {
	s, film := fillet(25, 25), moistair.SmokerFilm()
	phases := []Phase{{units.Celsius(37), time.Hour}, {units.Celsius(107), 3 * time.Hour}}
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		if _, err := CoreCurve(s, film, 72*time.Second, phases...); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkWarmCore(b *testing.B) {
	s, film := fillet(20, 25), moistair.SmokerFilm()
	phases := []Phase{{units.Celsius(37), time.Hour}, {units.Celsius(107), 3 * time.Hour}}
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		if _, err := WarmCore(s, film, units.Fahrenheit(160), phases...); err != nil {
			b.Fatal(err)
		}
	}
}
