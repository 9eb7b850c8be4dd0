package parasites

import (
	"testing"
	"time"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain/internal/logged"
	"github.com/stretchr/testify/require"
)

// Source: the FDA's guide ch. 5 (from memory) and an inspector's page, as each row says.
func TestParasiteLimits(t *testing.T) {
	rows := printed.Table(t, "coldchain/parasite-limits.csv")
	require.Len(t, rows, 2)
	printed.Within(t, rows[0], "value", units.In(thickest, units.Inch, 9))
	require.Equal(t, logged.Provenance(rows[0]), logged.ProvenanceOf(parasiteThick))
	require.Equal(t, logged.Provenance(rows[1]), logged.ProvenanceOf(parasiteAllowed))
	allowed := Plan{Freezer: units.Fahrenheit(-4 + rows[1].Float("value")), Stored: 168 * time.Hour}
	report, err := Check(allowed)
	require.NoError(t, err)
	require.Equal(t, verdict.NotMet, report.Verdict, "an inspector's tolerance is not ours")
}
