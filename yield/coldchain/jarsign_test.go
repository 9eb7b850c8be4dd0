package coldchain

import (
	"testing"
	"time"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"github.com/stretchr/testify/require"
)

var jarActions = map[string]JarAction{"nothing": NoAction, "process again": ProcessOrChill, "bag and bin": DiscardShut, "boil 30 min and discard": BoilThenDiscard}

// Both ways. Sources: see the rows.
func TestSpoilageSigns(t *testing.T) {
	rows := printed.Table(t, "coldchain/spoilage-signs.csv")
	all := SpoilageSigns()
	require.Len(t, all, len(rows))
	for i, r := range rows {
		require.Equal(t, JarSign(i+1), all[i].Sign, "in the order of JarSign")
		require.Equal(t, r.Text("sign"), all[i].Text)
		require.Equal(t, r.Text("sign"), all[i].Sign.String())
		want, ok := jarActions[r.Text("action")]
		require.True(t, ok, r.String())
		require.Equal(t, want, all[i].Action)
		require.Equal(t, provenance(r), provenanceOf(all[i].Citation))
		require.NoError(t, all[i].Citation.Check())
	}
	require.Equal(t, "unknown sign", JarSign(0).String())
	require.Equal(t, "unknown action", JarAction(9).String())
}

func TestJudgeJar(t *testing.T) {
	at := func(d time.Duration) units.Stated[time.Duration] { return units.State(d) }
	for name, c := range map[string]struct {
		since units.Stated[time.Duration]
		signs []JarSign
		want  JarAction
	}{
		"nothing to see":            {at(year), nil, NoAction},
		"harmless":                  {at(year), []JarSign{LowLiquid, Crystals}, NoAction},
		"unsealed the same day":     {at(24 * time.Hour), []JarSign{LidUnsealed}, ProcessOrChill},
		"unsealed a day later":      {at(24*time.Hour + 1), []JarSign{LidUnsealed}, BoilThenDiscard},
		"unsealed, nobody knows":    {units.Stated[time.Duration]{}, []JarSign{LidUnsealed}, BoilThenDiscard},
		"bulging":                   {at(month), []JarSign{LidBulging}, DiscardShut},
		"bulging and leaking":       {at(month), []JarSign{LidBulging, Leaking}, BoilThenDiscard},
		"unsealed at once, bubbles": {at(time.Hour), []JarSign{LidUnsealed, RisingBubbles}, DiscardShut},
		"spurts":                    {at(month), []JarSign{SpurtingLiquid}, BoilThenDiscard},
		"smells":                    {at(month), []JarSign{Crystals, OffOdour}, BoilThenDiscard},
	} {
		j, err := JudgeJar(c.since, c.signs...)
		require.NoError(t, err, name)
		require.Equal(t, c.want, j.Action, name)
		require.Len(t, j.Signs, len(c.signs))
		require.Contains(t, j.Cautions, noSign)
		require.Contains(t, j.Cautions, boilBefore)
	}
}

// One sign more, or a longer time, never demands less.
func TestJarSafeDirection(t *testing.T) {
	for first := LidUnsealed; first <= Crystals; first++ {
		for second := LidUnsealed; second <= Crystals; second++ {
			for _, since := range []time.Duration{0, 24 * time.Hour, 25 * time.Hour, year} {
				one, err := JudgeJar(units.State(since), first)
				require.NoError(t, err)
				both, err := JudgeJar(units.State(since), first, second)
				require.NoError(t, err)
				later, err := JudgeJar(units.State(since+1), first)
				require.NoError(t, err)
				require.GreaterOrEqual(t, both.Action, one.Action)
				require.GreaterOrEqual(t, later.Action, one.Action)
			}
		}
	}
}

func TestJudgeJarRefuses(t *testing.T) {
	for name, c := range map[string]struct {
		since time.Duration
		signs []JarSign
	}{
		"before the canning": {-1, nil}, "a generation ago": {21 * year, nil}, "no sign": {0, []JarSign{0}}, "unknown sign": {0, []JarSign{Crystals + 1}},
		"known and unknown": {0, []JarSign{Mould, 99}},
	} {
		_, err := JudgeJar(units.State(c.since), c.signs...)
		require.ErrorIs(t, err, units.ErrRange, name)
	}
}
