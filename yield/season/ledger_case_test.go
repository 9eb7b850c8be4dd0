package season_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/yield/season"
)

func day(t testing.TB, text string) season.Day {
	t.Helper()
	d, err := season.ParseDay(text)
	require.NoError(t, err)
	return d
}

// kitchen is the ledger of an invented household, without entries.
func kitchen(t testing.TB) season.Ledger {
	return season.Ledger{
		Rule:     season.Rule{Shape: season.Everything, Anglers: 1, Daily: 5, Possession: 10, Annual: 30},
		Unsealed: season.UntilThrownOut, Start: day(t, "2026-04-06"), Fresh: keeping(days(2)),
		Products: []season.Product{
			{Name: "pints", Keeps: keeping(days(365)), Quality: true}, {Name: "smoked", Keeps: keeping(days(14))},
			{Name: "frozen", Keeps: keeping(days(60)), Quality: true}, {Name: "smoked frozen", Keeps: keeping(days(60)), Quality: true},
			{Name: "opened", Keeps: keeping(days(3))},
		},
	}
}

func audit(t testing.TB, l season.Ledger, on string) season.State {
	t.Helper()
	s, err := season.Audit(l, day(t, on))
	require.NoError(t, err)
	return s
}

func TestX(t *testing.T) {
	l := kitchen(t)
	var err error
	l.Entries, err = season.ParseEntries(printed.File(t, "season/records/ledger-year.csv"))
	require.NoError(t, err)
	for _, on := range []string{"2026-04-06", "2026-04-07", "2026-04-08", "2026-04-12", "2026-04-21", "2026-05-04"} {
		s := audit(t, l, on)
		fmt.Println(on, s.Verdict, s.Held, s.Used, s.Kept, s.Left, s.Eaten, s.GivenAway, s.ThrownOut)
		for _, f := range s.Findings { fmt.Println("   F", f) }
		for _, f := range s.Lots { fmt.Printf("   L %+v\n", f) }
		for _, f := range s.EatFirst { fmt.Println("   E", f) }
		for _, f := range s.Aside { fmt.Println("   A", f) }
	}
}
