package ice_test

import (
	"testing"
	"time"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain/ice"
	"example.org/lakelarder/yield/coldchain/internal/logged"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"
)

var chillShapes = map[string]ice.Shape{"slab": ice.Slab, "cylinder": ice.Cylinder}

// Source: Geankoplis, example 5.5-1, chilling a side of beef; the series, not the book's chart.
func TestChillingOfBeef(t *testing.T) {
	checked := false
	for _, r := range printed.Table(t, "lethality/textbook.csv") {
		if r.Text("id") != "GEA-5.5-1" {
			continue
		}
		checked = true
		half := logged.Quantity(t, r, "length_m", units.Metre)
		alpha := r.Decimal("k_w_mk").DivRound(r.Decimal("rho").Mul(r.Decimal("cp")), 18)
		diffusivity, err := units.Of(alpha, units.SquareMetrePerSecond)
		require.NoError(t, err)
		h := logged.Quantity(t, r, "h_w_m2k", units.WattPerSquareMetreKelvin)
		times, err := ice.ChillTime(
			ice.Fish{ice.Slab, 2 * half, 2 * half, logged.Celsius(t, r, "start_c"), logged.Quantity(t, r, "k_w_mk", units.WattPerMetreKelvin), diffusivity},
			ice.Film{Low: h, Likely: h, High: h}, logged.Celsius(t, r, "medium_c"), logged.Celsius(t, r, "exact_c"))
		require.NoError(t, err)
		require.Equal(t, times.Low, times.High)
		squared := units.In(half, units.Metre, 9).Mul(units.In(half, units.Metre, 9))
		perSecond := alpha.DivRound(squared, 12) // the time is rounded up to the second
		over := perSecond.Mul(decimal.NewFromInt(int64(times.High / time.Second))).Sub(r.Decimal("fourier"))
		require.True(t, over.GreaterThanOrEqual(r.Tolerance("fourier").Neg()) && over.LessThan(perSecond.Add(r.Tolerance("fourier"))), over.String())
	}
	require.True(t, checked)
}

// A thicker or warmer fish, a colder aim, warmer ice or a worse film never chill sooner; a cylinder never later than a
// slab.
func TestChillingSafeDirection(t *testing.T) {
	const mm, w = units.Millimetre, units.WattPerSquareMetreKelvin
	for _, shape := range chillShapes {
		for _, thick := range []units.Length{2 * mm, 9 * mm, 40 * mm, 130 * mm, 299 * mm} {
			for _, h := range []units.FilmCoefficient{w, 40 * w, 900 * w, 9_999 * w} {
				chill := func(thick units.Length, h units.FilmCoefficient, from, medium, to float64) time.Duration {
					times, err := ice.ChillTime(ice.FishOf(shape, thick, thick, units.Celsius(from)), ice.Film{Low: h, Likely: h, High: h}, units.Celsius(medium), units.Celsius(to))
					require.NoError(t, err)
					return times.High
				}
				base := chill(thick, h, 15, 0, 4)
				require.Positive(t, base)
				require.GreaterOrEqual(t, chill(thick+mm, h, 15, 0, 4), base)
				require.LessOrEqual(t, chill(thick, h+w, 15, 0, 4), base)
				require.GreaterOrEqual(t, chill(thick, h, 16, 0, 4), base)
				require.GreaterOrEqual(t, chill(thick, h, 15, 1, 4), base)
				require.GreaterOrEqual(t, chill(thick, h, 15, 0, 3), base)
			}
		}
	}
}

func TestChillTimesAreARange(t *testing.T) {
	fish := ice.FishOf(ice.Cylinder, 8*units.Centimetre, 11*units.Centimetre, units.Celsius(16))
	times, err := ice.ChillTime(fish, ice.CrushedFilm(), units.Celsius(0), units.Celsius(3.3))
	require.NoError(t, err)
	require.Less(t, times.Low, times.Likely)
	require.Less(t, times.Likely, times.High)
	require.NotEmpty(t, times.Cautions)
	slab := fish
	slab.Shape = ice.Slab
	slower, err := ice.ChillTime(slab, ice.CrushedFilm(), units.Celsius(0), units.Celsius(3.3))
	require.NoError(t, err)
	require.Greater(t, slower.Low, times.Low)
	// What is barely to be chilled takes the least Fourier number.
	barely, err := ice.ChillTime(fish, ice.CrushedFilm(), units.Celsius(0), units.Celsius(15.9))
	require.NoError(t, err)
	require.Positive(t, barely.Low)
}

func TestChillTimeRefuses(t *testing.T) {
	good := ice.FishOf(ice.Slab, 2*units.Centimetre, 3*units.Centimetre, units.Celsius(15))
	film := ice.CrushedFilm()
	zero, four := units.Celsius(0), units.Celsius(4)
	with := func(change func(*ice.Fish)) ice.Fish { f := good; change(&f); return f }
	of := func(f ice.Fish, film ice.Film, medium, to units.Temperature) error {
		_, err := ice.ChillTime(f, film, medium, to)
		return err
	}
	for name, err := range map[string]error{
		"no shape":             of(with(func(f *ice.Fish) { f.Shape = 0 }), film, zero, four),
		"an unknown shape":     of(with(func(f *ice.Fish) { f.Shape = 3 }), film, zero, four),
		"too thin":             of(with(func(f *ice.Fish) { f.Thin = 0 }), film, zero, four),
		"thin above thick":     of(with(func(f *ice.Fish) { f.Thin = 4 * units.Centimetre }), film, zero, four),
		"too thick":            of(with(func(f *ice.Fish) { f.Thick = 31 * units.Centimetre }), film, zero, four),
		"frozen":               of(with(func(f *ice.Fish) { f.From = units.Celsius(-2) }), film, zero, four),
		"cooked":               of(with(func(f *ice.Fish) { f.From = units.Celsius(63) }), film, zero, four),
		"no conductivity":      of(with(func(f *ice.Fish) { f.Conductivity = 0 }), film, zero, four),
		"no diffusivity":       of(with(func(f *ice.Fish) { f.Diffusivity = 0 }), film, zero, four),
		"no film":              of(good, ice.Film{}, zero, four),
		"film upside down":     of(good, ice.Film{Low: film.High, Likely: film.Likely, High: film.Low}, zero, four),
		"likely above high":    of(good, ice.Film{Low: film.Low, Likely: film.High, High: film.Likely}, zero, four),
		"medium not set":       of(good, film, units.Temperature{}, four),
		"medium freezes":       of(good, film, units.Celsius(-1.1), four),
		"aim not set":          of(good, film, zero, units.Temperature{}),
		"aim at the medium":    of(good, film, zero, zero),
		"aim above the start":  of(good, film, zero, units.Celsius(15)),
		"medium above the aim": of(good, film, units.Celsius(5), four),
	} {
		logged.Refused(t, err, name)
	}
}

func TestShapeWords(t *testing.T) {
	logged.Words(t, ice.Cylinder, ice.ParseShape)
}
