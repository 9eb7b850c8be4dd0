package coldchain

import (
	"testing"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/yield/coldchain/internal/logged"
	"github.com/stretchr/testify/require"
)

// No time of a record is lost or made by the ledger.
func FuzzLedgerKeepsTheTime(f *testing.F) {
	f.Add([]byte{10, 200, 120, 3, 230, 90, 40, 80, 90, 200, 1, 255, 60, 255})
	f.Add([]byte{80, 255, 80, 255, 120, 255, 80, 255})
	f.Fuzz(func(t *testing.T, data []byte) {
		readings := logged.Drawn(data)
		if len(readings) < 2 {
			return
		}
		s := logged.Made(t, readings)
		total := time.Duration(0)
		for _, t := range walkedBy(t, s).total[:cells] {
			total += time.Duration(t)
		}
		require.Equal(t, s.Span(), total)
	})
}

func walkedBy(t *testing.T, s series.Series[units.Temperature]) *walk {
	t.Helper()
	w, err := (&Terms{MaxGap: 100 * time.Hour, Probe: WarmestPart, Undisturbed: true}).walked(s)
	require.NoError(t, err)
	return w
}
