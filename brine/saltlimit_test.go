package brine

import (
	"sort"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// limitRow is a printed limit in comparable form.
type limitRow struct {
	ID                   string
	Least                units.Ratio
	Pack, Smoked         string
	Nitrite              bool
	Source, Where, Basis string
}

func TestSaltLimitsAreThePrintedOnes(t *testing.T) {
	var want, got []limitRow
	for _, r := range printed.Table(t, "brine/salt-limits.csv") {
		least, err := units.Of(r.Decimal("least_pct"), units.Percent)
		require.NoError(t, err)
		want = append(want, limitRow{
			r.Text("id"), least, r.Text("pack"), r.Text("smoked"), r.Text("nitrite") == "yes", r.Text("source"), r.Text("place"), r.Text("basis"),
		})
	}
	for _, l := range SaltLimits() {
		require.NoError(t, l.Citation.Check(), l.ID)
		require.NotEmpty(t, l.Fish)
		require.NotEmpty(t, l.Place)
		got = append(got, limitRow{
			string(l.ID), l.Least, l.Pack.String(), l.Smoked.String(), l.Nitrite, l.Citation.Source.Key(), l.Citation.Where, l.Citation.Basis.String(),
		})
	}
	for _, rows := range [][]limitRow{want, got} {
		sort.Slice(rows, func(i, j int) bool { return rows[i].ID < rows[j].ID })
	}
	require.Empty(t, cmp.Diff(want, got))
}

func TestDefaultIsTheStrictestWithoutNitrite(t *testing.T) {
	standard := DefaultSaltLimit()
	require.False(t, standard.Nitrite)
	require.Equal(t, cite.Read, standard.Citation.Basis)
	require.Equal(t, 35*units.PerMille, standard.Least)
	for _, l := range SaltLimits() {
		require.LessOrEqual(t, l.Least, standard.Least, l.ID)
	}
	SaltLimits()[0].Least = 0
	require.Equal(t, standard, DefaultSaltLimit(), "the slice is the caller's own")
}
