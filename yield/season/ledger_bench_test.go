package season_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/season"
)

// tenThousand is a ledger of 10,000 entries over four years: every catch becomes a batch of jars, eaten by twos.
func tenThousand(t testing.TB) season.Ledger {
	l := kitchen(t)
	l.Rule = season.Rule{Shape: season.Everything, Anglers: 4, Daily: 5, Possession: 200}
	for i := 0; len(l.Entries) < 10_000; i++ {
		on := l.Start + season.Day(2*i)
		catch, jars := fmt.Sprintf("C%d", i), fmt.Sprintf("P%d", i)
		l.Entries = append(l.Entries,
			season.Entry{Day: on, Event: season.Kept, Batch: catch, Count: 4, Round: 12 * units.Kilogram},
			season.Entry{Day: on, Event: season.Canned, Batch: jars, From: catch, Taken: 4, Count: 24, Product: "pints", Audit: units.State(verdict.Met)},
			season.Entry{Day: on + 1, Event: season.Sealed, Batch: jars, Count: 24})
		for k := 0; k < 12; k++ {
			l.Entries = append(l.Entries, season.Entry{Day: on + 2 + season.Day(k), Event: season.Eaten, Batch: jars, Count: 2})
		}
	}
	l.Entries = l.Entries[:10_000]
	return l
}

func TestTenThousandEntries(t *testing.T) {
	l := tenThousand(t)
	s := audit(t, l, l.Start+1400)
	require.Equal(t, verdict.Met, s.Verdict)
	require.Equal(t, 4*667, s.Used)
}

func BenchmarkAudit10000(b *testing.B) {
	l := tenThousand(b)
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		if _, err := season.Audit(l, l.Start+1400); err != nil {
			b.Fatal(err)
		}
	}
}
