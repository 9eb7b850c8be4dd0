package lethality_test

import (
	"math/rand"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/pressure/lethality"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// walk is a record of n readings made from a seed: steps of up to two minutes, temperatures -5 to 140 °C.
func walk(t testing.TB, seed int64, n int) []series.Reading[units.Temperature] {
	t.Helper()
	rng := rand.New(rand.NewSource(seed))
	var readings []series.Reading[units.Temperature]
	at, c := time.Duration(rng.Int63n(int64(time.Hour))), 20+rng.Float64()*100
	for i := 0; i < n; i++ {
		readings = append(readings, series.Reading[units.Temperature]{At: at, Value: units.Celsius(c)})
		at += 1 + time.Duration(rng.Int63n(int64(2*time.Minute)))
		if rng.Intn(4) > 0 { // a quarter of the lines is level
			c = min(max(c+rng.NormFloat64()*10, -5), 140)
		}
	}
	return readings
}

func FuzzF(fuzz *testing.F) {
	fuzz.Add(int64(1), uint8(5), uint8(2), int64(units.Kelvins))
	fuzz.Add(int64(2), uint8(90), uint8(40), int64(1))
	fuzz.Add(int64(3), uint8(2), uint8(0), int64(9*units.Kelvins))
	fuzz.Fuzz(func(t *testing.T, seed int64, length, place uint8, rise int64) {
		readings := walk(t, seed, int(length)+2)
		ref := lethality.F0()
		whole, err := series.New(readings)
		require.NoError(t, err)
		total := f(t, whole, ref)
		slack := 2 + total/1e11

		// F is additive: the record parted at a reading, and Divide at any two times
		k := 1 + int(place)%(len(readings)-1)
		head, err := series.New(readings[:k+1])
		require.NoError(t, err)
		tail, err := series.New(readings[k:])
		require.NoError(t, err)
		require.InDelta(t, total, f(t, head, ref)+f(t, tail, ref), float64(slack))
		first, span := readings[0].At, whole.Span()
		hold := series.Stretch{From: first + span/256*time.Duration(place), To: first + span - span/512*time.Duration(255-place)}
		if hold.From <= hold.To {
			parts, err := lethality.Divide(whole, ref, hold)
			require.NoError(t, err)
			require.InDelta(t, total, parts.Total, float64(slack+2))
			require.Equal(t, whole.LongestGap(), parts.LongestGap)
		}

		// one reading at a time gives the same to the nanosecond
		running, err := lethality.Start(ref)
		require.NoError(t, err)
		for _, reading := range readings {
			before := running.F().F
			running, err = running.Next(reading)
			require.NoError(t, err)
			require.GreaterOrEqual(t, running.F().F, before)
		}
		require.Equal(t, total, running.F().F)
		require.Equal(t, whole.LongestGap(), running.LongestGap())

		// the log-mean rule is never above the trapezoid
		trapezoid, err := lethality.FBy(whole, ref, lethality.Trapezoid)
		require.NoError(t, err)
		require.LessOrEqual(t, total, trapezoid.F+slack)

		// never less when a reading rises
		if rise > 0 && rise < int64(10*units.Kelvins) {
			readings[k].Value = readings[k].Value.Add(units.TemperatureChange(rise))
			warmer, err := series.New(readings)
			require.NoError(t, err)
			require.GreaterOrEqual(t, f(t, warmer, ref)+slack, total)
		}
	})
}

// A reading put onto a straight line changes nothing but half a quantum of temperature.
func TestMoreReadingsOfTheSameLines(t *testing.T) {
	for seed := int64(1); seed <= 50; seed++ {
		coarse, err := series.New(walk(t, seed, 20))
		require.NoError(t, err)
		var fine []series.Reading[units.Temperature]
		last, _ := coarse.Last()
		first, _ := coarse.First()
		for at := first.At; at < last.At; at += 7 * time.Second {
			v, err := coarse.ValueAt(at)
			require.NoError(t, err)
			fine = append(fine, series.Reading[units.Temperature]{At: at, Value: v})
		}
		for i := 0; i < coarse.Len(); i++ {
			reading, _ := coarse.At(i)
			fine = append(fine, reading)
		}
		require.InEpsilon(t, float64(f(t, coarse, lethality.F0())), float64(f(t, sorted(t, fine), lethality.F0())), 2e-8)
	}
}

// The centre of any jar stays between where it started and the hottest and coldest of its medium, and comes to rest there.
func FuzzWarm(f *testing.F) {
	f.Add(int64(1), uint8(30), uint8(60), uint16(140), uint16(0))
	f.Add(int64(2), uint8(5), uint8(1), uint16(40), uint16(300))
	f.Add(int64(3), uint8(90), uint8(200), uint16(900), uint16(20))
	f.Fuzz(func(t *testing.T, seed int64, radius, height uint8, alpha, film uint16) {
		c := lethality.Cylinder{
			Radius: (5 + units.Length(radius)) * units.Millimetre, Diffusivity: (50 + units.Diffusivity(alpha%950)) * units.SquareMillimetrePerSecond / 1000,
			Film: units.FilmCoefficient(film) * units.WattPerSquareMetreKelvin, Conductivity: units.WattPerMetreKelvin / 2,
		}
		if film == 0 {
			c.Film = lethality.HeldSurface
		}
		c.Height = c.Radius/2 + c.Radius*units.Length(height)/64
		readings := walk(t, seed, 12)
		for i := range readings {
			readings[i].At = time.Duration(i) * 3 * time.Minute // every other bend falls a minute before a reading
			readings[i].Value = units.Celsius(max(0, readings[i].Value.Celsius()))
		}
		medium, err := series.New(readings)
		require.NoError(t, err)
		start := units.Celsius(10)
		out, err := c.Warm(start, medium, lethality.Point{}, 2*time.Minute)
		if err != nil {
			require.ErrorIs(t, err, units.ErrRange, "a step too fine for so great a body")
			return
		}
		low, high := start.Celsius(), start.Celsius()
		for i, n := 0, medium.Len(); i < n; i++ {
			reading, _ := medium.At(i)
			low, high = min(low, reading.Value.Celsius()), max(high, reading.Value.Celsius())
		}
		for i := 0; i < out.Len(); i++ {
			reading, _ := out.At(i)
			require.GreaterOrEqual(t, reading.Value.Celsius(), low-0.05)
			require.LessOrEqual(t, reading.Value.Celsius(), high+0.05)
		}
		first, _ := out.First()
		last, _ := out.Last()
		end, _ := medium.Last()
		require.True(t, first.Value == start && last.At == end.At)
	})
}
