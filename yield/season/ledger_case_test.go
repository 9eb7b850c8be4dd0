package season_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
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
			{Name: "frozen", Keeps: keeping(days(60)), Quality: true},
			{Name: "smoked frozen", Keeps: keeping(days(60)), Quality: true}, {Name: "opened", Keeps: keeping(days(3))},
		},
	}
}

// halfYear is the invented ledger of a household.
func halfYear(t testing.TB) season.Ledger {
	l := kitchen(t)
	var err error
	l.Entries, err = season.ParseEntries(printed.File(t, "season/records/ledger-year.csv"))
	require.NoError(t, err)
	return l
}

func audit(t testing.TB, l season.Ledger, on season.Day) season.State {
	t.Helper()
	s, err := season.Audit(l, on)
	require.NoError(t, err)
	conserves(t, l, s)
	return s
}

// conserves checks that every quantum and every container of a state is somewhere, and that what is eaten first may be
// eaten.
func conserves(t testing.TB, l season.Ledger, s season.State) {
	t.Helper()
	var left units.Mass
	food, aside, lots := 0, 0, map[string]season.Lot{}
	for _, lot := range s.Lots {
		left += lot.Round
		lots[lot.Batch] = lot
		require.Positive(t, lot.Left)
		require.LessOrEqual(t, lot.Left, lot.Count)
		require.LessOrEqual(t, lot.Held, lot.Round)
		food += lot.Left
	}
	for i, f := range s.EatFirst {
		lot := lots[f.Batch]
		require.True(t, lot.Verdict.Passes(), "%v", f)
		require.Equal(t, lot.Food, f.Count)
		require.LessOrEqual(t, s.Day, f.Until)
		require.Equal(t, int(f.Until-s.Day), f.Days)
		if i > 0 {
			require.LessOrEqual(t, s.EatFirst[i-1].Days, f.Days)
		}
		aside += f.Count
	}
	for _, n := range s.Aside {
		aside += n.Count
	}
	require.Equal(t, food, aside, "what is left is food or set aside")
	require.Equal(t, s.Left, left)
	require.Equal(t, s.Kept, s.Left+s.Eaten+s.GivenAway+s.ThrownOut)
	require.Equal(t, s.Held.All, s.Held.Fresh+s.Held.Preserved)
}

// TestLedgerYear: the invented half year, day by day, worked by hand.
func TestLedgerYear(t *testing.T) {
	l := halfYear(t)
	printed.Table(t, "season/ledger-states.csv").Each(t, func(t *testing.T, r printed.Row) {
		s := audit(t, l, day(t, r.Text("on")))
		require.Equal(t, r.Text("verdict"), s.Verdict.String())
		for col, got := range map[string]int64{
			"held_fish": int64(s.Held.All), "fresh_fish": int64(s.Held.Fresh), "preserved_fish": int64(s.Held.Preserved),
			"used_fish": int64(s.Used), "kept_g": int64(s.Kept / units.Gram), "left_g": int64(s.Left / units.Gram),
			"eaten_g": int64(s.Eaten / units.Gram), "given_away_g": int64(s.GivenAway / units.Gram),
			"thrown_out_g": int64(s.ThrownOut / units.Gram),
		} {
			require.Equal(t, r.Int(col), got, col)
		}
		var first, aside []string
		for _, f := range s.EatFirst {
			first = append(first, fmt.Sprintf("%s %d %d", f.Batch, f.Count, f.Days))
		}
		for _, n := range s.Aside {
			aside = append(aside, fmt.Sprintf("%s %d %s", n.Batch, n.Count, n.Why))
		}
		require.Equal(t, r.Text("eat_first"), strings.Join(first, "; "))
		require.Equal(t, r.Text("aside"), strings.Join(aside, "; "))
	})
}

// ledgerCases are the entries of each invented case, as the file has them but for the name of the case.
func ledgerCases(t testing.TB) map[string][]byte {
	text := string(printed.File(t, "season/records/ledger-cases.csv"))
	lines := strings.Split(strings.TrimSpace(text), "\n")
	header := strings.TrimPrefix(lines[0], "case,") + "\n"
	all := map[string][]byte{}
	for _, line := range lines[1:] {
		name, rest, _ := strings.Cut(line, ",")
		if strings.HasPrefix(line, `"`) {
			name, rest, _ = strings.Cut(line[1:], `",`)
		}
		if all[name] == nil {
			all[name] = []byte(header)
		}
		all[name] = append(all[name], rest+"\n"...)
	}
	return all
}

// TestLedgerCases: what contradicts is found and never mended, and what does not is no finding.
func TestLedgerCases(t *testing.T) {
	cases, passes, fails := ledgerCases(t), 0, 0
	printed.Table(t, "season/ledger-verdicts.csv").Each(t, func(t *testing.T, r printed.Row) {
		l := kitchen(t)
		var err error
		l.Entries, err = season.ParseEntries(cases[r.Text("case")])
		require.NoError(t, err)
		s := audit(t, l, day(t, r.Text("on")))
		require.Equal(t, r.Text("verdict"), s.Verdict.String(), "%v", s.Findings)
		rule := verdict.Rule("")
		if s.Verdict.Passes() {
			passes++
		} else {
			fails++
			rule = s.Findings[0].Rule
		}
		require.Equal(t, r.Text("rule"), string(rule), "%v", s.Findings)
		food, aside := 0, 0
		for _, f := range s.EatFirst {
			food += f.Count
		}
		for _, n := range s.Aside {
			aside += n.Count
		}
		require.EqualValues(t, r.Int("food_containers"), food, "%v", s.Findings)
		require.EqualValues(t, r.Int("aside_containers"), aside, "%v", s.Aside)
		require.EqualValues(t, r.Int("held_fish"), s.Held.All)
	})
	require.GreaterOrEqual(t, fails, passes)
}
