package season_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/season"
)

const edgeHead = "day,event,batch,from,taken,count,product,round,audit,after\n2026-04-06,kept,C1,,,5,,15 kg,,\n"

func entered(t *testing.T, l season.Ledger, lines, on string) season.State {
	t.Helper()
	var err error
	l.Entries, err = season.ParseEntries([]byte(edgeHead + lines))
	require.NoError(t, err)
	return audit(t, l, day(t, on))
}

func lotOf(t *testing.T, s season.State, batch string) season.Lot {
	t.Helper()
	for _, l := range s.Lots {
		if l.Batch == batch {
			return l
		}
	}
	require.Fail(t, "nothing is left of "+batch)
	return season.Lot{}
}

// What comes out of a load that failed its audit is no food either, and once eaten the load is not made good.
func TestFailedLoadsStayFailed(t *testing.T) {
	const load = "2026-04-07,canned,P1,C1,3,18,pints,,not met,\n2026-04-08,sealed,P1,,,18,,,,\n"
	s := entered(t, kitchen(t), load+"2026-04-20,refrigerated,R1,P1,2,2,opened,,,\n", "2026-04-20")
	require.Equal(t, verdict.NotMet, lotOf(t, s, "R1").Verdict)
	require.Zero(t, lotOf(t, s, "R1").Food)
	s = entered(t, kitchen(t), load+"2026-04-20,eaten,P1,,,18,,,,\n", "2026-04-20")
	for _, f := range s.Findings {
		require.Equal(t, verdict.NotMet, f.Verdict, "%v", f)
	}
	require.Len(t, s.Findings, 2)
}

// An opened jar keeps no longer than the jar would have.
func TestOpenedKeepsNoLonger(t *testing.T) {
	l := kitchen(t)
	l.Products[0].Keeps = keeping(days(20))
	const load = "2026-04-07,canned,P1,C1,3,18,pints,,met,\n2026-04-08,sealed,P1,,,18,,,,\n"
	s := entered(t, l, load+"2026-04-25,refrigerated,R1,P1,1,1,opened,,,\n", "2026-04-25")
	require.Equal(t, "2026-04-26", lotOf(t, s, "R1").Until.String())
	require.Equal(t, "2026-04-26", lotOf(t, s, "P1").Until.String())
	s = entered(t, l, load+"2026-04-10,refrigerated,R1,P1,1,1,opened,,,\n", "2026-04-10")
	require.Equal(t, "2026-04-12", lotOf(t, s, "R1").Until.String())
}

// 24 h is in time and a second more is not; hours that the days contradict are believed neither way.
func TestWithin24Hours(t *testing.T) {
	const load = "2026-04-07,canned,P1,C1,3,18,pints,,met,\n2026-04-08,failed,P1,,,18,,,,\n"
	for after, want := range map[string]verdict.Verdict{
		"0 s": verdict.Met, "24 h": verdict.Met, "24 h 1 s": verdict.NotMet, "48 h": verdict.NotMet, "48 h 1 s": verdict.CannotTell, "9 d": verdict.CannotTell,
	} {
		s := entered(t, kitchen(t), load+"2026-04-08,reprocessed,P2,P1,18,18,pints,,met,"+after+"\n", "2026-04-08")
		require.Equal(t, want, lotOf(t, s, "P2").Verdict, after)
		require.Equal(t, want, s.Verdict, after)
	}
	s := entered(t, kitchen(t), load+"2026-04-09,reprocessed,P2,P1,18,18,pints,,met,24 h\n", "2026-04-09")
	require.Equal(t, verdict.Met, s.Verdict, "late on the first day to early on the third")
}

// A limit is each angler's; one that stays passed is said once, and again when it is passed by more.
func TestLimits(t *testing.T) {
	l := kitchen(t)
	const more = "2026-04-07,kept,C2,,,6,,18 kg,,\n2026-04-09,kept,C3,,,1,,3 kg,,\n2026-04-10,eaten,C3,,,1,,,,\n2026-04-11,caught,C9,,,1,,,,\n"
	s := entered(t, l, more, "2026-04-12")
	require.Equal(t, []verdict.Rule{season.RuleDaily, season.RulePossession, season.RulePossession}, rules(s))
	l.Rule.Anglers = 2
	require.Empty(t, rules(entered(t, l, more, "2026-04-12")))
	l.Rule = season.Rule{Shape: season.ProcessedQuota, Anglers: 1, Daily: 6, Processed: 2}
	s = entered(t, l, "2026-04-07,frozen,F1,C1,3,6,frozen,,,\n2026-04-08,kept,C2,,,6,,18 kg,,\n", "2026-04-08")
	require.Equal(t, []verdict.Rule{season.RuleQuota, season.RulePossession, season.RuleFresh}, rules(s))
	l.Rule = season.Rule{Shape: season.Unpreserved, Anglers: 1, Daily: 6, Possession: 6}
	s = entered(t, l, "2026-04-07,frozen,F1,C1,3,6,frozen,,,\n2026-04-08,kept,C2,,,4,,12 kg,,\n", "2026-04-08")
	require.Empty(t, rules(s), "two and four fresh, three in the freezer")
	l.Start = day(t, "2026-04-08")
	require.Equal(t, 4, entered(t, l, "2026-04-08,kept,C2,,,4,,12 kg,,\n", "2026-04-08").Used, "what was kept before the start is of another year")
}

func rules(s season.State) []verdict.Rule {
	var all []verdict.Rule
	for _, f := range s.Findings {
		all = append(all, f.Rule)
	}
	return all
}

// What keeps to the last day before the plan, or has no room before it spoils, is no food of the plan.
func TestStartsFromTheLastDay(t *testing.T) {
	l := kitchen(t)
	l.Products[1].Keeps = keeping(days(6)) // smoked on the 7th, kept to the 12th, the last day of week 0
	s := entered(t, l, "2026-04-07,smoked,S1,C1,5,10,smoked,,,\n2026-04-11,kept,C2,,,2,,6 kg,,\n2026-04-12,kept,C3,,,1,,3 kg,,\n", "2026-04-12")
	y := twoDays()
	y.Rule = l.Rule
	rest, err := s.YearFrom(y)
	require.NoError(t, err)
	require.Equal(t, []season.Holding{
		{Caught: -1, Last: -1, Fish: 5, Preserved: true},
		{Caught: -1, Last: -1, Fish: 2},
		{Caught: -1, Last: 50, Fish: 1, Each: 3 * units.Kilogram},
	}, rest.Start.Holdings)

	full := season.Year{
		Rule:    season.Rule{Shape: season.ProcessedQuota, Anglers: 1, Daily: 5, Processed: 2},
		Fishing: season.Expected, Weeks: 6, Lag: 1, Fish: units.Kilogram, Weekly: units.Kilogram / 2, Fresh: onIce, Keeps: inJars,
		Start: season.Start{Holdings: []season.Holding{{Caught: -1, Last: 40, Fish: 5, Each: units.Kilogram}}},
	}
	p := keep(t, full)
	require.Equal(t, 2, p.Weeks[0].Moved)
	require.Equal(t, 3*units.Kilogram, p.Weeks[0].Thrown, "no room for three before they spoil")
	require.Equal(t, 2*units.Kilogram, p.Eaten)
}
