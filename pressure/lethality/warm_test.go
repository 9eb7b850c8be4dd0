package lethality_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/pressure/lethality"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// The two series of the modified Bessel functions, and where they meet, against a library of arbitrary precision.
func TestModifiedBessel(t *testing.T) {
	for _, r := range printed.Table(t, "lethality/bessel.csv") {
		i0, i1 := lethality.ScaledI(r.Float("x"))
		require.InEpsilon(t, r.Float("scaled_i0"), i0, 2e-15, r.String())
		require.InEpsilon(t, r.Float("scaled_i1"), i1, 2e-15, r.String())
	}
}

// A bend that falls between two readings is carried just as exactly, and so is an end between two steps.
func TestWarmBetweenTheSteps(t *testing.T) {
	run := pintRun
	run.ComeUp, run.Hold = 16*time.Minute-10*time.Second, 97*time.Minute+7*time.Second
	medium, err := run.Medium(time.Hour + 20*time.Second)
	require.NoError(t, err)
	coarse, err := pint.Warm(run.Start, medium, lethality.Point{}, time.Minute)
	require.NoError(t, err)
	fine, err := pint.Warm(run.Start, medium, lethality.Point{}, 6*time.Second)
	require.NoError(t, err)
	for i := 0; i < coarse.Len(); i++ {
		reading, _ := coarse.At(i)
		v, err := fine.ValueAt(reading.At)
		require.NoError(t, err)
		require.InDelta(t, v.Celsius(), reading.Value.Celsius(), 2e-5, reading.At.String()) // the fine curve's chords at the end
	}
}

// A medium cut into more readings of the same straight lines gives the same curve.
func TestWarmDoesNotMindTheSampling(t *testing.T) {
	coarse, err := pintRun.Medium(time.Hour)
	require.NoError(t, err)
	var fine []series.Reading[units.Temperature]
	for at := time.Duration(0); at <= coarse.Span(); at += 17 * time.Second {
		v, err := coarse.ValueAt(at)
		require.NoError(t, err)
		fine = append(fine, series.Reading[units.Temperature]{At: at, Value: v})
	}
	fine = append(fine, coarse.Readings()...)
	a, err := pint.Warm(units.Celsius(10), coarse, lethality.Point{}, time.Minute)
	require.NoError(t, err)
	b, err := pint.Warm(units.Celsius(10), sorted(t, fine), lethality.Point{}, time.Minute)
	require.NoError(t, err)
	c, err := pint.Warm(units.Celsius(10), coarse, lethality.Point{}, 10*time.Second)
	require.NoError(t, err)
	require.Equal(t, a.Len(), b.Len())
	for i := 0; i < a.Len(); i++ {
		ra, _ := a.At(i)
		rb, _ := b.At(i)
		require.InDelta(t, ra.Value.Celsius(), rb.Value.Celsius(), 1e-6)
		v, err := c.ValueAt(ra.At)
		require.NoError(t, err)
		require.InDelta(t, ra.Value.Celsius(), v.Celsius(), 1e-6)
	}
}

// The centre lies between its start and the hottest medium, both halves of a jar are alike, hotter steam never cools it, and the
// centre is the coldest place while the jar heats.
func TestWarmKeepsItsOrder(t *testing.T) {
	for _, steam := range []float64{100, 110, 116, 121} {
		run := pintRun
		run.Steam = units.Celsius(steam)
		medium, err := run.Medium(time.Hour)
		require.NoError(t, err)
		curve := func(c lethality.Cylinder, m temperatures, p lethality.Point) temperatures {
			out, err := c.Warm(run.Start, m, p, time.Minute)
			require.NoError(t, err)
			return out
		}
		centre := curve(pint, medium, lethality.Point{})
		up, down := curve(pint, medium, lethality.Point{FromMiddle: 3 * units.Centimetre}), curve(pint, medium, lethality.Point{FromMiddle: -3 * units.Centimetre})
		side := curve(pint, medium, lethality.Point{FromAxis: 2 * units.Centimetre})
		run.Steam = units.Celsius(steam + 0.5)
		hotter, err := run.Medium(time.Hour)
		require.NoError(t, err)
		above := curve(pint, hotter, lethality.Point{})
		require.True(t, up.Equal(down))
		for i := 0; i < centre.Len(); i++ {
			c, _ := centre.At(i)
			require.True(t, c.Value.Celsius() >= 10-1e-6 && c.Value.Celsius() <= steam, c.Value.String())
			if i < above.Len() && c.At < hotter.Span()-time.Hour-time.Minute {
				a, _ := above.At(i)
				require.GreaterOrEqual(t, a.Value.Celsius(), c.Value.Celsius()-1e-6)
			}
			if c.At <= pintRun.SteamOff() {
				u, _ := up.At(i)
				s, _ := side.At(i)
				require.GreaterOrEqual(t, u.Value.Celsius(), c.Value.Celsius()-1e-6)
				require.GreaterOrEqual(t, s.Value.Celsius(), c.Value.Celsius()-1e-6)
			}
		}
	}
}

// At the surface a held jar has the temperature of its medium.
func TestHeldSurfaceFollowsTheMedium(t *testing.T) {
	medium, err := pintRun.Medium(time.Hour)
	require.NoError(t, err)
	skin, err := pint.Warm(pintRun.Start, medium, lethality.Point{FromAxis: pint.Radius}, time.Minute)
	require.NoError(t, err)
	for i := 0; i < skin.Len(); i++ {
		reading, _ := skin.At(i)
		v, err := medium.ValueAt(reading.At)
		require.NoError(t, err)
		require.InDelta(t, v.Celsius(), reading.Value.Celsius(), 1e-4, reading.At.String())
	}
}

// A very good film is a held surface, and a worse one is slower.
func TestFilmLimits(t *testing.T) {
	medium, err := pintRun.Medium(time.Hour)
	require.NoError(t, err)
	last := 200.
	for _, h := range []units.FilmCoefficient{0, 1_000_000, 5_000, 300, 50} {
		c := pint
		if h > 0 {
			c.Film, c.Conductivity = h*units.WattPerSquareMetreKelvin, units.WattPerMetreKelvin/2
		}
		out, err := c.Warm(pintRun.Start, medium, lethality.Point{}, time.Minute)
		require.NoError(t, err)
		v, err := out.ValueAt(pintRun.SteamOff())
		require.NoError(t, err)
		require.Less(t, v.Celsius(), last)
		if h == 1_000_000 {
			require.InDelta(t, last, v.Celsius(), 0.001)
		}
		last = v.Celsius()
	}
}

// What moves the answer, as the physics has it: each change on the side it must be, and by about as much as is known.
func TestWhatMovesTheAnswer(t *testing.T) {
	total := func(change func(*lethality.Cylinder, *lethality.Run)) float64 {
		c, run := pint, pintRun
		change(&c, &run)
		out, err := c.Follow(run, lethality.F0())
		require.NoError(t, err)
		return out.F.Total.Minutes()
	}
	base := total(func(*lethality.Cylinder, *lethality.Run) {})
	require.InDelta(t, 1.2589, total(func(_ *lethality.Cylinder, r *lethality.Run) { r.Steam = units.Celsius(117) })/base, 0.03, "a kelvin of steam")
	require.InDelta(t, 0.75, total(func(_ *lethality.Cylinder, r *lethality.Run) { r.Cooling = 5 * units.Kelvins })/base, 0.05, "cooling five times as fast")
	require.Less(t, total(func(_ *lethality.Cylinder, r *lethality.Run) { r.Start = units.Celsius(2) }), base)
	require.Less(t, total(func(c *lethality.Cylinder, _ *lethality.Run) { c.Height = 130 * units.Millimetre }), base)
	at := pintRun
	at.Cooling = 150 * units.Kelvins
	quick, err := pint.Follow(at, lethality.F0())
	require.NoError(t, err)
	last, _ := quick.Centre.Last()
	require.True(t, last.Value.Below(units.Celsius(30)), "followed until the centre has cooled, however fast its surroundings do")
	band, err := pint.FollowBand(12*units.SquareMillimetrePerSecond/100, 16*units.SquareMillimetrePerSecond/100, pintRun, lethality.F0())
	require.NoError(t, err)
	require.InDelta(t, 2, band.High.F.Total.Minutes()/band.Low.F.Total.Minutes(), 0.6, "the band of diffusivity")
	require.Less(t, band.Low.F.Total.Minutes(), base)
	require.Greater(t, band.High.F.Total.Minutes(), base)
}
