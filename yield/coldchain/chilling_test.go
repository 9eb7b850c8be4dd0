package coldchain

import (
	"testing"
	"time"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"
)

var chillShapes = map[string]ChillShape{"slab": ChilledSlab, "cylinder": ChilledCylinder}

// Source: roots and series in 30-digit arithmetic.
func TestMiddleAgainstTheFullSeries(t *testing.T) {
	for _, r := range printed.Table(t, "lethality/transient.csv") {
		s := newConduction(chillShapes[r.Text("shape")], r.Float("biot"))
		printed.WithinFloat(t, r, "theta_centre", s.middle(r.Float("fourier")))
	}
}

// Source: Cengel, Heat and Mass Transfer, table 4-2.
func TestFirstTermOfTheSeries(t *testing.T) {
	for _, r := range printed.Table(t, "lethality/one-term.csv") {
		shape, ok := chillShapes[r.Text("shape")]
		if !ok {
			require.Equal(t, "sphere", r.Text("shape"))
			continue
		}
		s := newConduction(shape, r.Float("biot"))
		printed.WithinFloat(t, r, "zeta1", s.zeta[0])
		printed.WithinFloat(t, r, "c1", s.c[0])
	}
}

// Source: roots in 30-digit arithmetic, where the table counts as far as the series does.
func TestRootsOfTheSeries(t *testing.T) {
	for _, r := range printed.Table(t, "lethality/roots.csv") {
		shape, ok := chillShapes[r.Text("shape")]
		n := int(r.Int("n"))
		if !ok || n > conductionTerms || r.Text("biot") == "held" {
			continue
		}
		require.InEpsilon(t, r.Float("root"), newConduction(shape, r.Float("biot")).zeta[n-1], 1e-12, r.String())
	}
}

// Source: Geankoplis, example 5.5-1, chilling a side of beef; the series, not the book's chart.
func TestChillingOfBeef(t *testing.T) {
	checked := false
	for _, r := range printed.Table(t, "lethality/textbook.csv") {
		if r.Text("id") != "GEA-5.5-1" {
			continue
		}
		checked = true
		half := quantity(t, r, "length_m", units.Metre)
		alpha := r.Decimal("k_w_mk").DivRound(r.Decimal("rho").Mul(r.Decimal("cp")), 18)
		diffusivity, err := units.Of(alpha, units.SquareMetrePerSecond)
		require.NoError(t, err)
		h := quantity(t, r, "h_w_m2k", units.WattPerSquareMetreKelvin)
		times, err := ChillTime(
			ChilledFish{ChilledSlab, 2 * half, 2 * half, celsius(t, r, "start_c"), quantity(t, r, "k_w_mk", units.WattPerMetreKelvin), diffusivity},
			ChillFilm{Low: h, Likely: h, High: h}, celsius(t, r, "medium_c"), celsius(t, r, "exact_c"))
		require.NoError(t, err)
		require.Equal(t, times.Low, times.High)
		squared := units.In(half, units.Metre, 9).Mul(units.In(half, units.Metre, 9))
		perSecond := alpha.DivRound(squared, 12) // the time is rounded up to the second
		over := perSecond.Mul(decimal.NewFromInt(int64(times.High / time.Second))).Sub(r.Decimal("fourier"))
		require.True(t, over.GreaterThanOrEqual(r.Tolerance("fourier").Neg()) && over.LessThan(perSecond.Add(r.Tolerance("fourier"))), over.String())
	}
	require.True(t, checked)
}

// A thicker or warmer fish, a colder aim, warmer ice or a worse film never chill sooner; a cylinder never later than a slab.
func TestChillingSafeDirection(t *testing.T) {
	const mm, w = units.Millimetre, units.WattPerSquareMetreKelvin
	for _, shape := range chillShapes {
		for _, thick := range []units.Length{2 * mm, 9 * mm, 40 * mm, 130 * mm, 299 * mm} {
			for _, h := range []units.FilmCoefficient{w, 40 * w, 900 * w, 9_999 * w} {
				chill := func(thick units.Length, h units.FilmCoefficient, from, medium, to float64) time.Duration {
					times, err := ChillTime(FishToChill(shape, thick, thick, units.Celsius(from)), ChillFilm{Low: h, Likely: h, High: h}, units.Celsius(medium), units.Celsius(to))
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
	fish := FishToChill(ChilledCylinder, 8*units.Centimetre, 11*units.Centimetre, units.Celsius(16))
	times, err := ChillTime(fish, CrushedIceFilm(), units.Celsius(0), units.Celsius(3.3))
	require.NoError(t, err)
	require.Less(t, times.Low, times.Likely)
	require.Less(t, times.Likely, times.High)
	require.NotEmpty(t, times.Cautions)
	slab := fish
	slab.Shape = ChilledSlab
	slower, err := ChillTime(slab, CrushedIceFilm(), units.Celsius(0), units.Celsius(3.3))
	require.NoError(t, err)
	require.Greater(t, slower.Low, times.Low)
	// What is barely to be chilled takes the least Fourier number.
	barely, err := ChillTime(fish, CrushedIceFilm(), units.Celsius(0), units.Celsius(15.9))
	require.NoError(t, err)
	require.Positive(t, barely.Low)
}

func TestChillTimeRefuses(t *testing.T) {
	good := FishToChill(ChilledSlab, 2*units.Centimetre, 3*units.Centimetre, units.Celsius(15))
	film := CrushedIceFilm()
	zero, four := units.Celsius(0), units.Celsius(4)
	with := func(change func(*ChilledFish)) ChilledFish { f := good; change(&f); return f }
	of := func(f ChilledFish, film ChillFilm, medium, to units.Temperature) error {
		_, err := ChillTime(f, film, medium, to)
		return err
	}
	for name, err := range map[string]error{
		"no shape":             of(with(func(f *ChilledFish) { f.Shape = 0 }), film, zero, four),
		"an unknown shape":     of(with(func(f *ChilledFish) { f.Shape = 3 }), film, zero, four),
		"too thin":             of(with(func(f *ChilledFish) { f.Thin = 0 }), film, zero, four),
		"thin above thick":     of(with(func(f *ChilledFish) { f.Thin = 4 * units.Centimetre }), film, zero, four),
		"too thick":            of(with(func(f *ChilledFish) { f.Thick = 31 * units.Centimetre }), film, zero, four),
		"frozen":               of(with(func(f *ChilledFish) { f.From = units.Celsius(-2) }), film, zero, four),
		"cooked":               of(with(func(f *ChilledFish) { f.From = units.Celsius(63) }), film, zero, four),
		"no conductivity":      of(with(func(f *ChilledFish) { f.Conductivity = 0 }), film, zero, four),
		"no diffusivity":       of(with(func(f *ChilledFish) { f.Diffusivity = 0 }), film, zero, four),
		"no film":              of(good, ChillFilm{}, zero, four),
		"film upside down":     of(good, ChillFilm{Low: film.High, Likely: film.Likely, High: film.Low}, zero, four),
		"likely above high":    of(good, ChillFilm{Low: film.Low, Likely: film.High, High: film.Likely}, zero, four),
		"medium not set":       of(good, film, units.Temperature{}, four),
		"medium freezes":       of(good, film, units.Celsius(-1.1), four),
		"aim not set":          of(good, film, zero, units.Temperature{}),
		"aim at the medium":    of(good, film, zero, zero),
		"aim above the start":  of(good, film, zero, units.Celsius(15)),
		"medium above the aim": of(good, film, units.Celsius(5), four),
	} {
		require.ErrorIs(t, err, units.ErrRange, name)
	}
}
