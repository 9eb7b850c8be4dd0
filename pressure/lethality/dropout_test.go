package lethality_test

import (
	"math"
	"math/rand"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/pressure/lethality"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
)

// A quarter of an hour at 121.1 °C with one reading of -50 °C, which a broken probe gives: two of the straight lines
// fall to nothing.
func TestOneDropout(t *testing.T) {
	for drop := 1; drop < 14; drop++ {
		readings := record(t, 121.1, 121.1, 121.1, 121.1, 121.1, 121.1, 121.1, 121.1, 121.1, 121.1, 121.1, 121.1, 121.1, 121.1, 121.1, 121.1).Readings()
		readings[drop].Value = units.Celsius(-50)
		s, err := series.New(readings)
		require.NoError(t, err)
		lost := 2 * (1 - 10/math.Ln10/171.1*(1-math.Pow(10, -17.11)))
		require.InDelta(t, 15-lost, f(t, s, lethality.F0()).Minutes(), 1e-9)
	}
}

// dropouts is a walk with readings that fall to what broken probes say, drawn from a seed.
func dropouts(t testing.TB, seed int64, n int) temperatures {
	t.Helper()
	readings, rng := walk(t, seed, n), rand.New(rand.NewSource(seed))
	for i := range readings {
		if rng.Intn(5) == 0 {
			readings[i].Value = units.Celsius([]float64{-50, -127, 0, 20, -40, 85, 149.9}[rng.Intn(7)])
		}
		if rng.Intn(50) == 0 {
			readings[i].Value = units.Kelvin(1e-6)
		}
	}
	s, err := series.New(readings)
	require.NoError(t, err)
	return s
}

// F, FBy, the running form and Divide, which takes every line by itself, agree to 1e-9 on any record, for any
// reference.
func TestEveryFormAgrees(t *testing.T) {
	references := []lethality.Reference{
		lethality.F0(), lethality.F0Fahrenheit(), {Temperature: units.Celsius(110), Z: 15 * units.Kelvins / 2},
		{Temperature: units.Celsius(60), Z: 25 * units.Kelvins}, {Temperature: units.Celsius(150), Z: 50 * units.Kelvins},
	}
	for seed := int64(1); seed <= 400; seed++ {
		s, ref := dropouts(t, seed, 2+int(seed%97)), references[seed%5]
		first, _ := s.First()
		whole := series.Stretch{From: first.At, To: first.At + s.Span()}
		parts, err := lethality.Divide(s, ref, whole)
		require.NoError(t, err)
		exact, err := lethality.FBy(s, ref, lethality.Exact)
		require.NoError(t, err)
		running, err := lethality.Start(ref)
		require.NoError(t, err)
		for i := 0; i < s.Len(); i++ {
			reading, _ := s.At(i)
			running, err = running.Next(reading)
			require.NoError(t, err)
		}
		own, err := lethality.F(s, ref)
		require.NoError(t, err)
		require.Equal(t, s.LongestGap(), own.LongestGap)
		for name, got := range map[string]time.Duration{"F": own.F, "FBy": exact.F, "running": running.F().F} {
			require.InDelta(t, parts.Total, got, 4+1e-9*float64(parts.Total), "%s, seed %d", name, seed)
		}
	}
}

// What lies outside the printed span is stated apart: with it the value is that of the two z over all temperatures,
// without it nothing of it counts.
func TestOnlyTheSpanCounts(t *testing.T) {
	for _, target := range []lethality.Pasteurisation{lethality.Listeria(), lethality.NonProteolytic(), lethality.NonProteolyticUK()} {
		span := target.Span()
		reference, _ := target.SixD()
		below, above := units.Kelvins, units.TemperatureChange(0)
		switch {
		case reference == units.Celsius(70):
			below, above = 15*units.Kelvins/2, 15*units.Kelvins/2
		case span.From == units.Celsius(85):
			below, above = 7*units.Kelvins, 10*units.Kelvins
		default:
			below, above = 9*units.Kelvins, 10*units.Kelvins
		}
		for seed := int64(1); seed <= 60; seed++ {
			s := dropouts(t, seed, 40)
			v, err := target.Value(s, lethality.Moist)
			require.NoError(t, err)
			var want, wantTime [3]float64
			for i := 1; i < s.Len(); i++ {
				a, _ := s.At(i - 1)
				b, _ := s.At(i)
				const n = 2000 // midpoints of short pieces
				for k := 0; k < n; k++ {
					c := a.Value.Celsius() + (b.Value.Celsius()-a.Value.Celsius())*(float64(k)+0.5)/n
					z, zone := units.Float(above, units.Kelvins), 1
					if c < reference.Celsius() {
						z = units.Float(below, units.Kelvins)
					}
					if c < span.From.Celsius() {
						zone = 0
					} else if c > span.To.Celsius() {
						zone = 2
					}
					want[zone] += float64(b.At-a.At) / n * math.Pow(10, (c-reference.Celsius())/z)
					wantTime[zone] += float64(b.At-a.At) / n
				}
			}
			total := want[0] + want[1] + want[2]
			require.InDelta(t, want[1], float64(v.P), 0.01*want[1]+float64(time.Second))
			require.InDelta(t, want[0], float64(v.Below.P), 0.01*total)
			require.InDelta(t, min(want[2], math.MaxInt64), float64(v.Above.P), 0.01*total)
			require.InDelta(t, wantTime[0], float64(v.Below.Time), float64(4*time.Second))
			require.InDelta(t, wantTime[2], float64(v.Above.Time), float64(4*time.Second))
		}
	}
}

// The ends of the span belong to it, and a quantum beyond does not.
func TestEndsOfTheSpan(t *testing.T) {
	target := lethality.Listeria()
	span := target.Span()
	p := func(at units.Temperature) time.Duration {
		v, err := target.Value(line(t, at, at, time.Hour), lethality.Moist)
		require.NoError(t, err)
		return v.P
	}
	require.Positive(t, p(span.From))
	require.Positive(t, p(span.To))
	require.Zero(t, p(span.From.Add(-1)))
	require.Zero(t, p(span.To.Add(1)))
	require.Equal(t, []units.Temperature{units.Celsius(63), units.Celsius(85)}, []units.Temperature{span.From, span.To})
	require.Equal(t, lethality.Span{From: units.Celsius(85), To: units.Celsius(100)}, lethality.NonProteolytic().Span())
	require.Equal(t, lethality.Span{From: units.Celsius(80), To: units.Celsius(100)}, lethality.NonProteolyticUK().Span())
}

// A cylinder whose film was forgotten is refused by everything that works with it, and a held surface says so.
func TestFilmForgotten(t *testing.T) {
	bare := pint
	bare.Film = 0
	for name, err := range map[string]error{
		"factors": second(bare.Factors(lethality.Point{})),
		"warm":    second(bare.Warm(units.Celsius(10), line(t, units.Celsius(116), units.Celsius(116), time.Hour), lethality.Point{}, time.Minute)),
		"follow":  second(bare.Follow(pintRun, lethality.F0())),
		"band":    second(bare.FollowBand(1, units.SquareMillimetrePerSecond, pintRun, lethality.F0())),
	} {
		require.ErrorIs(t, err, units.ErrRange, name)
	}
	held, err := pint.Follow(pintRun, lethality.F0())
	require.NoError(t, err)
	require.Contains(t, held.Cautions[len(held.Cautions)-1].Text, "Glass and film")
}

func TestThroughRefuses(t *testing.T) {
	const h, d, k = 5_000 * units.WattPerSquareMetreKelvin, 3 * units.Millimetre, units.WattPerMetreKelvin
	for name, err := range map[string]error{
		"no film":         second(lethality.Through(0, d, k)),
		"held surface":    second(lethality.Through(lethality.HeldSurface, d, k)),
		"no wall":         second(lethality.Through(h, 0, k)),
		"a wall of metre": second(lethality.Through(h, units.Metre, k)),
		"no conductivity": second(lethality.Through(h, d, 0)),
	} {
		require.ErrorIs(t, err, units.ErrRange, name)
	}
	film, err := lethality.Through(h, d, k)
	require.NoError(t, err)
	require.InDelta(t, 1/(1./5000+0.003), units.Float(film, units.WattPerSquareMetreKelvin), 1e-6)
}

// No figure that could be read as a permission comes without what must stand beside it.
func TestCautionsTravel(t *testing.T) {
	s := record(t, 60, 116, 116, 90)
	cautions := map[string][]cite.Caution{}
	keep := func(name string, said []cite.Caution, err error) {
		require.NoError(t, err, name)
		cautions[name] = said
	}
	f, err := lethality.F(s, lethality.F0())
	keep("F", f.Cautions, err)
	f, err = lethality.FBy(s, lethality.F0(), lethality.Trapezoid)
	keep("FBy", f.Cautions, err)
	f, err = lethality.F0().Worth(units.Celsius(116), time.Hour)
	keep("Worth", f.Cautions, err)
	running, err := lethality.Start(lethality.F0())
	keep("Running.F", running.F().Cautions, err)
	parts, err := lethality.Divide(s, lethality.F0(), series.Stretch{From: time.Minute, To: 2 * time.Minute})
	keep("Divide", parts.Cautions, err)
	held, err := lethality.F0().TimeAt(units.Celsius(116), 3*time.Minute)
	keep("TimeAt", held.Cautions, err)
	held, err = lethality.Target(time.Second, lethality.Logs(12*lethality.One))
	keep("Target", held.Cautions, err)
	held, err = lethality.DFromCounts(100, 10, time.Minute)
	keep("DFromCounts", held.Cautions, err)
	kill, err := lethality.Reductions(time.Minute, time.Second)
	keep("Reductions", kill.Cautions, err)
	left, err := lethality.Survivors(10, lethality.Logs(lethality.One))
	keep("Survivors", left.Cautions, err)
	held, err = lethality.Listeria().TimeAt(units.Celsius(70))
	keep("Pasteurisation.TimeAt", held.Cautions, err)
	value, err := lethality.Listeria().Value(s, lethality.Moist)
	keep("Value", value.Cautions, err)
	factors, err := pint.Factors(lethality.Point{})
	keep("Factors", factors.Cautions, err)
	result, err := pint.Follow(pintRun, lethality.F0())
	keep("Follow", result.Cautions, err)
	keep("Follow, parts", result.F.Cautions, nil)
	answer, err := fish(t).Process(6 * time.Minute)
	keep("Process", answer.Cautions, err)
	for _, row := range lethality.KillTimes() {
		keep("KillTimes", row.Cautions, nil)
	}
	for name, said := range cautions {
		require.NotEmpty(t, said, name)
		require.NotEmpty(t, said[0].Text, name)
	}
}
