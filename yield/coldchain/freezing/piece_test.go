package freezing_test

import (
	"strings"
	"testing"
	"time"

	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain/freezing"
	"example.org/lakelarder/yield/coldchain/internal/logged"
)

// Source: Geankoplis, Transport Processes and Unit Operations, example 5.5-2.
func TestPlankAsInTheBook(t *testing.T) {
	printed.Table(t, "coldchain/freezing-times.csv").Each(t, func(t *testing.T, r printed.Row) {
		shape, err := freezing.ParseShape(r.Text("shape"))
		require.NoError(t, err)
		got, err := bookPiece(t, r, shape).Plank()
		require.NoError(t, err)
		printed.Within(t, r, "seconds", secondsOf(got.Time))
		printed.Within(t, r, "hours", secondsOf(got.Time).DivRound(decimal.NewFromInt(3600), 9))
	})
}

func secondsOf(d time.Duration) decimal.Decimal { return decimal.New(int64(d), -9) }

func bookPiece(t *testing.T, r printed.Row, shape freezing.Shape) freezing.Piece {
	t.Helper()
	medium, err := units.TemperatureOf(r.Decimal("medium_k"), units.KelvinScale)
	require.NoError(t, err)
	freezes, err := units.TemperatureOf(r.Decimal("freezes_at_k"), units.KelvinScale)
	require.NoError(t, err)
	f := freezing.Piece{
		Shape: shape, Medium: medium, FreezesAt: freezes, Start: freezes,
		HeatBefore: 3500 * units.JoulePerKilogramKelvin, HeatAfter: 2000 * units.JoulePerKilogramKelvin,
	}
	f.Thickness, err = units.Of(r.Decimal("thickness_m"), units.Metre)
	require.NoError(t, err)
	f.Film, err = units.Of(r.Decimal("film_w_m2k"), units.WattPerSquareMetreKelvin)
	require.NoError(t, err)
	f.Density, err = units.Of(r.Decimal("density_kg_m3"), units.KilogramPerCubicMetre)
	require.NoError(t, err)
	f.Latent, err = units.Of(r.Decimal("latent_kj_kg"), units.KilojoulePerKilogram)
	require.NoError(t, err)
	f.Conductivity, err = units.Of(r.Decimal("conductivity_w_mk"), units.WattPerMetreKelvin)
	require.NoError(t, err)
	return f
}

// Against pieces frozen by another program with the whole enthalpy: both are off as the rows say, and Pham never short
// without saying so.
func TestFreezingAgainstTheWholeHeat(t *testing.T) {
	hundred := decimal.NewFromInt(100)
	printed.Table(t, "coldchain/freezing-pieces.csv").Each(t, func(t *testing.T, r printed.Row) {
		flesh := freezing.Flesh{
			Water: sharePct(t, r, "water_pct"), Protein: sharePct(t, r, "protein_pct"), Fat: sharePct(t, r, "fat_pct"), Ash: sharePct(t, r, "ash_pct"),
			FreezesAt: units.Celsius(r.Float("freezes_at_c")),
		}
		shape, err := freezing.ParseShape(r.Text("shape"))
		require.NoError(t, err)
		thickness, err := units.Of(r.Decimal("thickness_mm"), units.Millimetre)
		require.NoError(t, err)
		film, err := units.Of(r.Decimal("film_w_m2k"), units.WattPerSquareMetreKelvin)
		require.NoError(t, err)
		piece, err := flesh.Piece(shape, thickness, units.Celsius(r.Float("start_c")), units.Celsius(r.Float("core_c")), units.Celsius(r.Float("medium_c")), film)
		require.NoError(t, err)
		pham, err := piece.Pham()
		require.NoError(t, err)
		plank, err := piece.Plank()
		require.NoError(t, err)
		seconds := r.Decimal("hours").Mul(decimal.NewFromInt(3600))
		printed.Within(t, r, "pham_pct", secondsOf(pham.Time).Mul(hundred).DivRound(seconds, 6))
		printed.Within(t, r, "plank_pct", secondsOf(plank.Time).Mul(hundred).DivRound(seconds, 6))
		said := false
		for _, c := range pham.Cautions {
			said = said || strings.Contains(c.Text, "% short")
		}
		require.Equal(t, r.Has("short") || r.Float("start_c") > 15, said, r.String())
		require.Equal(t, r.Has("short"), secondsOf(pham.Time).LessThan(seconds), r.String())
	})
}

// filletPack is an inch of lean fish in still air of a freezer at -10 °F; the film is common practice without a source.
func filletPack(t testing.TB) freezing.Piece {
	t.Helper()
	f, err := leanFish().Piece(freezing.Slab, units.Inch, units.Celsius(4), units.Celsius(-20), units.Fahrenheit(-10), 7*units.WattPerSquareMetreKelvin)
	require.NoError(t, err)
	return f
}

func TestFreezingRefuses(t *testing.T) {
	for name, tt := range map[string]struct {
		spoil func(*freezing.Piece)
		plank bool // refused by Plank too
	}{
		"no shape":              {func(f *freezing.Piece) { f.Shape = 0 }, true},
		"a shape nobody named":  {func(f *freezing.Piece) { f.Shape = 4 }, true},
		"no thickness":          {func(f *freezing.Piece) { f.Thickness = 0 }, true},
		"a metre and more":      {func(f *freezing.Piece) { f.Thickness = units.Metre + 1 }, true},
		"no film":               {func(f *freezing.Piece) { f.Film = 0 }, true},
		"negative film":         {func(f *freezing.Piece) { f.Film = -f.Film }, true},
		"no density":            {func(f *freezing.Piece) { f.Density = 0 }, true},
		"heavy as stone":        {func(f *freezing.Piece) { f.Density = 2500 * units.KilogramPerCubicMetre }, true},
		"no latent heat":        {func(f *freezing.Piece) { f.Latent = 0 }, true},
		"more than water's":     {func(f *freezing.Piece) { f.Latent = 341 * units.KilojoulePerKilogram }, true},
		"no heat before":        {func(f *freezing.Piece) { f.HeatBefore = 0 }, true},
		"kilocalories after":    {func(f *freezing.Piece) { f.HeatAfter = units.KilojoulePerKilogramKelvin / 2 }, true},
		"no conductivity":       {func(f *freezing.Piece) { f.Conductivity = 0 }, true},
		"conducts like iron":    {func(f *freezing.Piece) { f.Conductivity = 50 * units.WattPerMetreKelvin }, true},
		"no freezing point":     {func(f *freezing.Piece) { f.FreezesAt = units.Temperature{} }, true},
		"frozen before":         {func(f *freezing.Piece) { f.Start = units.Celsius(-1.1) }, true},
		"hot":                   {func(f *freezing.Piece) { f.Start = units.Celsius(41) }, true},
		"no start":              {func(f *freezing.Piece) { f.Start = units.Temperature{} }, true},
		"no medium":             {func(f *freezing.Piece) { f.Medium = units.Temperature{} }, true},
		"medium at the point":   {func(f *freezing.Piece) { f.Medium = f.FreezesAt }, true},
		"liquid nitrogen":       {func(f *freezing.Piece) { f.Medium = units.Celsius(-196) }, true},
		"core near the medium":  {func(f *freezing.Piece) { f.Core = f.Medium.Add(3*units.Kelvins - 1) }, false},
		"core beyond it":        {func(f *freezing.Piece) { f.Core = f.Medium.Add(-units.Kelvins) }, false},
		"core hardly frozen":    {func(f *freezing.Piece) { f.Core = units.Celsius(-9.9) }, false},
		"no core":               {func(f *freezing.Piece) { f.Core = units.Temperature{} }, false},
		"core too cold to tell": {func(f *freezing.Piece) { f.Medium, f.Core = units.Celsius(-60), units.Celsius(-26) }, false},
	} {
		f := filletPack(t)
		tt.spoil(&f)
		_, err := f.Pham()
		logged.Refused(t, err, name)
		_, err = f.Between(f.Film, f.Film)
		logged.Refused(t, err, name)
		_, err = f.Plank()
		if tt.plank {
			logged.Refused(t, err, name)
		} else {
			require.NoError(t, err, name)
		}
	}
	f := filletPack(t)
	for _, ends := range [][2]units.FilmCoefficient{{f.Film + 1, f.Film + 2}, {1, f.Film - 1}, {f.Film + 1, f.Film - 1}, {1, f.Film}} {
		_, err := f.Between(ends[0], ends[1])
		logged.Refused(t, err, "changed")
	}
	bad := leanFish()
	bad.Water = 0
	_, err := bad.Piece(freezing.Slab, units.Inch, units.Celsius(4), units.Celsius(-20), units.Celsius(-30), f.Film)
	logged.Refused(t, err, "changed")
	_, err = leanFish().Piece(freezing.Slab, units.Inch, units.Celsius(4), units.Celsius(-20), units.Celsius(-21), f.Film)
	logged.Refused(t, err, "changed")
}

// A home freezer that is 0 °F itself never gets the core to -20 °C, and a time is never given for that.
func TestNoTimeToBeColderThanTheFreezer(t *testing.T) {
	_, err := leanFish().Piece(freezing.Slab, units.Inch, units.Celsius(4), units.Celsius(-20), units.Fahrenheit(0), 7*units.WattPerSquareMetreKelvin)
	require.ErrorContains(t, err, "end temperature of the core -20 °C is out of range")
}

func TestFreezingSaysWhatItIsGoodFor(t *testing.T) {
	f := filletPack(t)
	good, err := f.Pham()
	require.NoError(t, err)
	require.True(t, good.Citation.Unverified())
	f.Film = units.WattPerSquareMetreKelvin
	weak, err := f.Pham()
	require.NoError(t, err)
	require.Len(t, weak.Cautions, len(good.Cautions)+1, "a Biot number of 0.01")
	require.Contains(t, weak.Cautions[len(weak.Cautions)-1].Text, "The Biot number lies outside of 0.02 to 11")
	plank, err := f.Plank()
	require.NoError(t, err)
	require.Less(t, plank.Time, weak.Time)
	f.Start = units.Celsius(15.1)
	warm, err := f.Pham()
	require.NoError(t, err)
	require.Contains(t, warm.Cautions[len(warm.Cautions)-1].Text, "chill it first")
	require.Contains(t, plank.Cautions[len(plank.Cautions)-1].Text, "understates")
}

func TestWords(t *testing.T) {
	logged.Words(t, freezing.Sphere, freezing.ParseShape)
	logged.Words(t, freezing.TchigeovIce, freezing.ParseIceLaw)
	for _, text := range []string{"no shape", "brick", "slab ball", "1"} {
		_, err := freezing.ParseShape(text)
		require.ErrorIs(t, err, units.ErrSyntax, text)
	}
}

func FuzzParseFreezingShape(f *testing.F) {
	for _, s := range []string{"slab", "Cylinder", " sphere ", "", "brick"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		s, err := freezing.ParseShape(text)
		if err != nil {
			require.ErrorIs(t, err, units.ErrSyntax)
			return
		}
		back, err := freezing.ParseShape(s.String())
		require.NoError(t, err)
		require.Equal(t, s, back)
	})
}

// Colder air or a stronger film never takes longer; thicker, warmer or colder within is never faster; the range keeps
// its order.
func FuzzFreezing(f *testing.F) {
	f.Add(uint8(1), uint16(25), uint16(7), int16(40), int16(-180), int16(-230), uint8(10), uint8(3))
	f.Add(uint8(3), uint16(150), uint16(200), int16(200), int16(-100), int16(-400), uint8(1), uint8(90))
	f.Fuzz(func(t *testing.T, shape uint8, mm, film uint16, start, core, medium int16, step, more uint8) {
		make := func(mm, film uint16, start, core, medium int16) (freezing.Piece, freezing.Time, error) {
			piece, err := leanFish().Piece(freezing.Shape(shape), units.Length(mm)*units.Millimetre, logged.Tenths(start), logged.Tenths(core), logged.Tenths(medium),
				units.FilmCoefficient(film)*units.WattPerSquareMetreKelvin)
			if err != nil {
				return piece, freezing.Time{}, err
			}
			took, err := piece.Pham()
			return piece, took, err
		}
		piece, took, err := make(mm, film, start, core, medium)
		if err != nil {
			logged.Refused(t, err, "changed")
			return
		}
		require.Positive(t, took.Time)
		s := int16(step) + 1
		if _, other, err := make(mm, film, start, core, medium-s); err == nil {
			require.LessOrEqual(t, other.Time, took.Time, "colder air")
		}
		if _, other, err := make(mm+uint16(step), film, start, core, medium); err == nil {
			require.GreaterOrEqual(t, other.Time, took.Time, "thicker")
		}
		if _, other, err := make(mm, film, start+s, core, medium); err == nil {
			require.GreaterOrEqual(t, other.Time, took.Time, "warmer fish")
		}
		if _, other, err := make(mm, film+uint16(step), start, core, medium); err == nil {
			require.LessOrEqual(t, other.Time, took.Time, "stronger film")
		}
		r, err := piece.Between(piece.Film, piece.Film+units.FilmCoefficient(more)*units.WattPerSquareMetreKelvin)
		if err == nil {
			require.LessOrEqual(t, r.Low.Time, r.Likely.Time)
			require.Equal(t, r.Likely.Time, r.High.Time)
		}
	})
}

func BenchmarkPham(b *testing.B) {
	f := filletPack(b)
	b.ReportAllocs()
	b.ResetTimer()
	for i := 0; i < b.N; i++ {
		if _, err := f.Pham(); err != nil {
			b.Fatal(err)
		}
	}
}
