package coldchain

import (
	"testing"
	"time"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"github.com/stretchr/testify/require"
)

// Both ways. Sources: see the rows.
func TestPowerCutRules(t *testing.T) {
	rows := printed.Table(t, "coldchain/power-cut.csv")
	all := PowerCutRules()
	require.Len(t, all, len(rows))
	for _, r := range rows {
		storage, err := ParseStorage(r.Text("storage"))
		require.NoError(t, err)
		found := false
		for _, rule := range all {
			if rule.Storage == storage && rule.Filled == r.Text("filled") {
				found = true
				require.Equal(t, hours(t, r, "hours"), rule.For)
				require.Equal(t, provenance(r), provenanceOf(rule.Citation))
				require.NoError(t, rule.Citation.Check())
			}
		}
		require.True(t, found, r.String())
	}
}

func TestJudgePowerCut(t *testing.T) {
	for name, c := range map[string]struct {
		storage Storage
		full    bool
		cut     time.Duration
		want    Verdict
	}{
		"refrigerator, 4 h":             {InRefrigerator, false, 4 * time.Hour, Within},
		"refrigerator, over 4 h":        {InRefrigerator, false, 4*time.Hour + 1, CannotTell},
		"a full refrigerator the same":  {InRefrigerator, true, 4*time.Hour + 1, CannotTell},
		"freezer, 24 h":                 {InFreezer, false, 24 * time.Hour, Within},
		"freezer, over 24 h":            {InFreezer, false, 24*time.Hour + 1, CannotTell},
		"full freezer, 48 h":            {InFreezer, true, 48 * time.Hour, Within},
		"full freezer, more than 48 h":  {InFreezer, true, 48*time.Hour + 1, CannotTell},
		"no cut":                        {InFreezer, false, 0, Within},
		"a full freezer, a day and one": {InFreezer, true, 25 * time.Hour, Within},
	} {
		p, err := JudgePowerCut(c.storage, c.full, c.cut)
		require.NoError(t, err, name)
		require.Equal(t, c.want, p.Verdict, name)
		require.Equal(t, max(p.Rule.For-c.cut, 0), p.Left, name)
		require.Contains(t, p.Cautions, doorShut)
	}
}

func TestPowerCutRefuses(t *testing.T) {
	for name, c := range map[string]struct {
		storage Storage
		cut     time.Duration
	}{"no storage": {0, time.Hour}, "a cupboard": {InCupboard, time.Hour}, "unknown": {9, time.Hour}, "negative": {InFreezer, -1}, "a season": {InFreezer, 61 * day}} {
		_, err := JudgePowerCut(c.storage, true, c.cut)
		require.ErrorIs(t, err, units.ErrRange, name)
	}
}
