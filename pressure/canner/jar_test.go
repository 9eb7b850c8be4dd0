package canner

import (
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
)

func TestJarSizesAreTheCopiedOnes(t *testing.T) {
	rows := printed.Table(t, "canner/jar-sizes.csv")
	require.Len(t, rows, len(JarSizes()))
	rows.Each(t, func(t *testing.T, r printed.Row) {
		j := size(t, r.Text("jar"))
		require.Equal(t, length(t, r, "diameter_in"), j.Diameter)
		require.Equal(t, length(t, r, "height_in"), j.Height)
		require.Equal(t, length(t, r, "glass_in"), j.Glass)
		require.Equal(t, length(t, r, "bore_in"), j.Bore)
		require.Equal(t, r.Text("source"), j.Citation.Source.Key())
		require.Equal(t, r.Text("basis"), j.Citation.Basis.String())
	})
}

func TestNominalVolumes(t *testing.T) {
	names := map[string]process.Jar{"half-pint": process.HalfPint, "12 oz": process.TwelveOunce, "pint": process.Pint, "1.5 pint": process.PintAndHalf, "quart": process.Quart}
	printed.Table(t, "canner/jar-volumes.csv").Each(t, func(t *testing.T, r printed.Row) {
		v := names[r.Text("jar")].Volume()
		require.True(t, r.Decimal("ml").Equal(units.In(v, units.Millilitre, 12)), "exact")
		require.True(t, r.Decimal("fl_oz").Equal(units.In(v, units.FluidOunce, 12)), "exact")
	})
}

func TestMostThatAJarHolds(t *testing.T) {
	printed.Table(t, "canner/fish-mass.csv").Each(t, func(t *testing.T, r printed.Row) {
		fill, err := size(t, r.Text("jar")).CheckFill(0, units.Inch, FleshDensity)
		require.NoError(t, err)
		printed.Within(t, r, "most_g", units.In(fill.Most, units.Gram, 1))
		printed.Within(t, r, "most_lb", units.In(fill.Most, units.Pound, 6))
	})
}

func TestAPoundIsTooMuchForAWideMouthPint(t *testing.T) {
	wide := size(t, "pint wide")
	fill, err := wide.CheckFill(units.Pound, units.Inch, FleshDensity)
	require.NoError(t, err)
	require.False(t, fill.Possible)
	require.Equal(t, units.Pound-fill.Most, fill.Over)
	at, err := wide.CheckFill(fill.Most, units.Inch, FleshDensity)
	require.NoError(t, err)
	require.True(t, at.Possible)
	require.Zero(t, at.Over)
	above, err := wide.CheckFill(fill.Most+1, units.Inch, FleshDensity)
	require.NoError(t, err)
	require.False(t, above.Possible)
	less, err := wide.CheckFill(0, 5*units.Inch/4, FleshDensity)
	require.NoError(t, err)
	require.Less(t, less.Most, fill.Most, "more headspace holds less")
}

func TestCuts(t *testing.T) {
	printed.Table(t, "canner/cuts.csv").Each(t, func(t *testing.T, r printed.Row) {
		j := size(t, r.Text("jar"))
		require.Equal(t, length(t, r, "glass_in"), j.Glass)
		cut, err := j.Cut(length(t, r, "headspace_in"))
		require.NoError(t, err)
		require.Equal(t, length(t, r, "cut_in"), cut.Length)
		require.Equal(t, length(t, r, "geometry_in"), j.Glass-base-length(t, r, "headspace_in"))
		require.NoError(t, cut.Citation.Check())
		if r.Text("basis") == "read" {
			require.Equal(t, r.Text("source"), cut.Citation.Source.Key())
		}
	})
	short := size(t, "pint wide")
	short.Glass = 45 * units.Inch / 10
	cut, err := short.Cut(units.Inch)
	require.NoError(t, err)
	require.Equal(t, 325*units.Inch/100, cut.Length, "the published cut does not fit this jar")
}

func TestPieces(t *testing.T) {
	printed.Table(t, "canner/pieces.csv").Each(t, func(t *testing.T, r printed.Row) {
		n, err := Cut{Length: length(t, r, "cut_in")}.Pieces(length(t, r, "fish_in"), quantity(t, r, "usable", units.One))
		require.NoError(t, err)
		require.EqualValues(t, r.Int("pieces"), n)
	})
}

func TestJarsRefused(t *testing.T) {
	for _, name := range []string{"", "pint", "Pint wide", "500 ml", "half-gallon"} {
		_, err := FindJarSize(name)
		require.ErrorIs(t, err, units.ErrUnknown, name)
	}
	pint := size(t, "pint wide")
	noBore, noGlass, noJar := pint, pint, pint
	noBore.Bore, noGlass.Glass, noJar.Jar = 0, 0, 0
	for name, try := range map[string]func() error{
		"negative fill":        func() error { _, err := pint.CheckFill(-1, units.Inch, FleshDensity); return err },
		"too much of a fill":   func() error { _, err := pint.CheckFill(101*units.Kilogram, units.Inch, FleshDensity); return err },
		"fill, a bare number":  func() error { _, err := pint.CheckFill(454, units.Inch, FleshDensity); return err },
		"headspace, bare":      func() error { _, err := pint.CheckFill(0, 1, FleshDensity); return err },
		"cut, bare headspace":  func() error { _, err := pint.Cut(1); return err },
		"negative headspace":   func() error { _, err := pint.CheckFill(0, -1, FleshDensity); return err },
		"headspace in feet":    func() error { _, err := pint.CheckFill(0, units.Foot, FleshDensity); return err },
		"no density":           func() error { _, err := pint.CheckFill(0, units.Inch, 0); return err },
		"density of lead":      func() error { _, err := pint.CheckFill(0, units.Inch, 11*units.GramPerMillilitre); return err },
		"no bore":              func() error { _, err := noBore.CheckFill(0, units.Inch, FleshDensity); return err },
		"no volume":            func() error { _, err := noJar.CheckFill(0, units.Inch, FleshDensity); return err },
		"cut without glass":    func() error { _, err := noGlass.Cut(units.Inch); return err },
		"cut, no headspace":    func() error { _, err := pint.Cut(-1); return err },
		"cut, all headspace":   func() error { _, err := pint.Cut(5 * units.Inch); return err },
		"pieces of nothing":    func() error { _, err := Cut{}.Pieces(units.Foot, units.One); return err },
		"pieces of no fish":    func() error { _, err := Cut{Length: units.Inch}.Pieces(0, units.One); return err },
		"more than the fish":   func() error { _, err := Cut{Length: units.Inch}.Pieces(units.Foot, units.One+1); return err },
		"less than no share":   func() error { _, err := Cut{Length: units.Inch}.Pieces(units.Foot, -1); return err },
		"fish longer than 3 m": func() error { _, err := Cut{Length: units.Inch}.Pieces(10*units.Foot, units.One); return err },
	} {
		require.ErrorIs(t, try(), units.ErrRange, name)
	}
}
