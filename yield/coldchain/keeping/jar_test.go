package keeping_test

import (
	"testing"
	"time"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain/internal/chain"
	"example.org/lakelarder/yield/coldchain/internal/logged"
	"example.org/lakelarder/yield/coldchain/keeping"
	"github.com/stretchr/testify/require"
)

var jarActions = map[string]keeping.JarAction{"nothing": keeping.NoAction, "process again": keeping.ProcessOrChill, "bag and bin": keeping.DiscardShut, "boil 30 min and discard": keeping.BoilThenDiscard}

// Both ways. Sources: see the rows.
func TestSpoilageSigns(t *testing.T) {
	rows := printed.Table(t, "coldchain/spoilage-signs.csv")
	all := keeping.SpoilageSigns()
	require.Len(t, all, len(rows))
	for i, r := range rows {
		require.Equal(t, keeping.JarSign(i+1), all[i].Sign, "in the order of JarSign")
		require.Equal(t, r.Text("sign"), all[i].Sign.String())
		want, ok := jarActions[r.Text("action")]
		require.True(t, ok, r.String())
		require.Equal(t, want, all[i].Action)
		require.Equal(t, logged.Provenance(r), logged.ProvenanceOf(all[i].Citation))
		require.NoError(t, all[i].Citation.Check())
	}
	seen := map[verdict.Rule]bool{"": true}
	for _, s := range all {
		require.False(t, seen[s.ID], string(s.ID))
		seen[s.ID] = true
	}
	for a := keeping.NoAction; a <= keeping.BoilThenDiscard; a++ {
		require.NotEmpty(t, a.Instruction())
	}
	require.Empty(t, keeping.JarAction(9).Instruction())
}

// One sign more, or a longer time, never demands less.
func TestJarSafeDirection(t *testing.T) {
	for first := keeping.LidUnsealed; first <= keeping.Crystals; first++ {
		for second := keeping.LidUnsealed; second <= keeping.Crystals; second++ {
			for _, since := range []time.Duration{0, 24 * time.Hour, 25 * time.Hour, chain.Year} {
				one, err := keeping.CheckJar(units.State(since), first)
				require.NoError(t, err)
				both, err := keeping.CheckJar(units.State(since), first, second)
				require.NoError(t, err)
				later, err := keeping.CheckJar(units.State(since+1), first)
				require.NoError(t, err)
				require.GreaterOrEqual(t, both.Action, one.Action)
				require.GreaterOrEqual(t, later.Action, one.Action)
			}
		}
	}
}

func TestCheckJarRefuses(t *testing.T) {
	for name, c := range map[string]struct {
		since time.Duration
		signs []keeping.JarSign
	}{
		"before the canning": {-1, nil}, "a generation ago": {21 * chain.Year, nil}, "no sign": {0, []keeping.JarSign{0}}, "unknown sign": {0, []keeping.JarSign{keeping.Crystals + 1}},
		"known and unknown": {0, []keeping.JarSign{keeping.Mould, 99}},
	} {
		_, err := keeping.CheckJar(units.State(c.since), c.signs...)
		logged.Refused(t, err, name)
	}
}
