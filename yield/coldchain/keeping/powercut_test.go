package keeping_test

import (
	"testing"
	"time"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/yield/coldchain/internal/chain"
	"example.org/lakelarder/yield/coldchain/internal/logged"
	"example.org/lakelarder/yield/coldchain/keeping"
	"github.com/stretchr/testify/require"
)

// Both ways. Sources: see the rows.
func TestPowerCutRules(t *testing.T) {
	rows := printed.Table(t, "coldchain/power-cut.csv")
	all := keeping.PowerCutRules()
	require.Len(t, all, len(rows))
	for _, r := range rows {
		storage, err := keeping.ParseStorage(r.Text("storage"))
		require.NoError(t, err)
		found := false
		for _, rule := range all {
			if rule.Storage == storage && rule.Filled == r.Text("filled") {
				found = true
				require.Equal(t, logged.Hours(t, r, "hours"), rule.For)
				require.Equal(t, logged.Provenance(r), logged.ProvenanceOf(rule.Citation))
				require.NoError(t, rule.Citation.Check())
			}
		}
		require.True(t, found, r.String())
	}
}

func TestPowerCutRefuses(t *testing.T) {
	for name, c := range map[string]struct {
		storage keeping.Storage
		cut     time.Duration
	}{"no storage": {0, time.Hour}, "a cupboard": {keeping.InCupboard, time.Hour}, "unknown": {9, time.Hour}, "negative": {keeping.InFreezer, -1}, "a season": {keeping.InFreezer, 61 * chain.Day}} {
		_, err := keeping.CheckPowerCut(c.storage, true, c.cut)
		logged.Refused(t, err, name)
	}
}
