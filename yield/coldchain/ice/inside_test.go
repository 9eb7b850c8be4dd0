package ice

import (
	"testing"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain/internal/chain"
	"example.org/lakelarder/yield/coldchain/internal/logged"
	"github.com/stretchr/testify/require"
)

// Source: roots and series in 30-digit arithmetic.
func TestMiddleAgainstTheFullSeries(t *testing.T) {
	for _, r := range printed.Table(t, "lethality/transient.csv") {
		s := newConduction(shapesNamed[r.Text("shape")], r.Float("biot"))
		printed.WithinFloat(t, r, "theta_centre", s.middle(r.Float("fourier")))
	}
}

// Source: Cengel, Heat and Mass Transfer, table 4-2.
func TestFirstTermOfTheSeries(t *testing.T) {
	for _, r := range printed.Table(t, "lethality/one-term.csv") {
		shape, ok := shapesNamed[r.Text("shape")]
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
		shape, ok := shapesNamed[r.Text("shape")]
		n := int(r.Int("n"))
		if !ok || n > conductionTerms || r.Text("biot") == "held" {
			continue
		}
		require.InEpsilon(t, r.Float("root"), newConduction(shape, r.Float("biot")).zeta[n-1], 1e-12, r.String())
	}
}

// Sources: FAO Fisheries Technical Papers 331 and 436, Icelandic guidance, a trade page; see the rows.
func TestIceConstants(t *testing.T) {
	rows := map[string]printed.Row{}
	for _, r := range printed.Table(t, "coldchain/ice-constants.csv") {
		rows[r.Text("what")] = r
	}
	all := Constants()
	for i, c := range all {
		r, ok := rows["constant: "+c.Name]
		require.True(t, ok, c.Name)
		printed.Within(t, r, "value", units.In(c.PerDegree, units.One, 6))
		require.Equal(t, logged.Provenance(r), logged.ProvenanceOf(c.Citation))
		require.NoError(t, c.Citation.Check())
		require.True(t, i == 0 || c.PerDegree < all[i-1].PerDegree, "largest first")
		delete(rows, "constant: "+c.Name)
	}
	take := func(what string) printed.Row {
		r, ok := rows[what]
		require.True(t, ok, what)
		delete(rows, what)
		return r
	}
	fresh, sea := take("latent heat, fresh ice"), take("latent heat, sea-water ice")
	printed.Within(t, fresh, "value", units.In(Fresh, units.KilocaloriePerKilogram, 6))
	printed.Within(t, sea, "value", units.In(SeaWater, units.KilocaloriePerKilogram, 6))
	for what, name := range map[string]string{"specific heat of lean fish": "lean fish", "specific heat implied by the table for 10 kg": "table for 10 kg of fish"} {
		c, err := ConstantOf(logged.Quantity(t, take(what), "value", units.KilocaloriePerKilogramKelvin), Fresh)
		require.NoError(t, err)
		for _, known := range all {
			require.True(t, known.Name != name || known.PerDegree == c.PerDegree, name)
		}
	}
	// Fish that is fatter holds less heat and never needs more ice.
	before, err := ConstantOf(8*units.KilocaloriePerKilogramKelvin/10, Fresh)
	require.NoError(t, err)
	for _, what := range []string{"specific heat of medium fish", "specific heat of fatty fish"} {
		c, err := ConstantOf(logged.Quantity(t, take(what), "value", units.KilocaloriePerKilogramKelvin), Fresh)
		require.NoError(t, err)
		require.Less(t, c.PerDegree, before.PerDegree)
		before = c
	}
	keeping := take("keeping rule")
	printed.Within(t, keeping, "value", units.In(keepingPerDegree, units.One, 6))
	require.Equal(t, logged.Provenance(keeping), logged.ProvenanceOf(keepingCitation))
	slurry, err := Slurry(units.Kilogram, 33*units.Percent)
	require.NoError(t, err)
	printed.Within(t, take("slurry of 33 % ice for its ice"), "value", units.In(slurry.Mass, units.Kilogram, 6))
	require.Empty(t, rows, "every printed row is held against the code")
}

// What no Mass can hold is said to be that, and is no mass.
func TestMoreIceThanCanBeStated(t *testing.T) {
	_, err := MeltRate{PerHour: mostFish}.Hold(units.Celsius(60), 30*chain.Day)
	require.ErrorIs(t, err, units.ErrRange)
	require.EqualError(t, err, "amount of ice too large is out of range: expected at most 576 t")
}

var shapesNamed = map[string]Shape{"slab": Slab, "cylinder": Cylinder}
