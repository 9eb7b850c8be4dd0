package season_test

import (
	"fmt"
	"math/rand"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/season"
)

// randomLedger is a ledger of some weeks, in which some entries contradict others.
func randomLedger(t testing.TB, rng *rand.Rand, n int) season.Ledger {
	l := kitchen(t)
	l.Unsealed = season.Counting(1 + rng.Intn(2))
	if rng.Intn(2) == 0 {
		l.Rule = season.Rule{Shape: season.ProcessedQuota, Anglers: 2, Daily: 5, Processed: 8}
	}
	names, on := []string{"K0"}, l.Start-20
	events := []season.Event{
		season.Kept, season.Kept, season.Canned, season.Canned, season.Smoked, season.Frozen, season.Reprocessed, season.Refrigerated,
		season.Sealed, season.Sealed, season.Failed, season.Eaten, season.Eaten, season.Eaten, season.GivenAway, season.ThrownOut, season.Caught,
	}
	for i := 0; i < n; i++ {
		on += season.Day(rng.Intn(2))
		e := season.Entry{Day: on, Event: events[rng.Intn(len(events))], Count: 1 + rng.Intn(6), Batch: names[max(0, len(names)-1-rng.Intn(8))]}
		switch e.Event {
		case season.Kept:
			e.Batch, e.Round = fmt.Sprintf("K%d", i), units.Mass(1+rng.Int63n(int64(20*units.Kilogram)))+units.Gram*10
			e.Round = min(e.Round, units.Mass(e.Count)*100*units.Kilogram)
			names = append(names, e.Batch)
		case season.Canned, season.Smoked, season.Frozen, season.Reprocessed, season.Refrigerated:
			e.From, e.Batch, e.Taken = e.Batch, fmt.Sprintf("B%d", i-rng.Intn(2)), 1+rng.Intn(3)
			e.Product = l.Products[rng.Intn(len(l.Products))].Name
			if e.Event == season.Canned || e.Event == season.Reprocessed {
				e.Audit = units.State([]verdict.Verdict{verdict.Met, verdict.Met, verdict.Met, verdict.NotMet}[rng.Intn(4)])
			}
			if rng.Intn(2) == 0 {
				e.After = units.State(time.Duration(rng.Intn(30)) * time.Hour)
			}
			names = append(names, e.Batch)
		}
		l.Entries = append(l.Entries, e)
	}
	return l
}

// The order of entries does not matter, not of those of one day either: days order them, and what is made of what.
func TestLedgerOrderDoesNotMatter(t *testing.T) {
	rng := rand.New(rand.NewSource(41))
	contradict, clean := 0, 0
	for i := 0; i < 400; i++ {
		l := randomLedger(t, rng, 5+rng.Intn(60))
		if i%4 == 0 {
			l = clearLedger(t, rng, 12)
		}
		on := l.Start + season.Day(rng.Intn(60)) - 15
		want := audit(t, l, on)
		if want.Verdict.Passes() {
			clean++
		} else {
			contradict++
		}
		mixed := l
		mixed.Entries = append([]season.Entry(nil), l.Entries...)
		rng.Shuffle(len(mixed.Entries), func(a, b int) { mixed.Entries[a], mixed.Entries[b] = mixed.Entries[b], mixed.Entries[a] })
		require.Empty(t, cmp.Diff(want, audit(t, mixed, on)), "%d", i)

		var past []season.Entry
		for _, e := range l.Entries {
			if e.Day <= on {
				past = append(past, e)
			}
		}
		l.Entries = past
		got := audit(t, l, on)
		require.Equal(t, want.Held, got.Held)
		require.Equal(t, want.Left, got.Left)
	}
	require.Greater(t, contradict, 50)
	require.Greater(t, clean, 20)
}

// clearLedger returns a random ledger without what contradicts: entries that lead to a finding of that kind are left
// out.
func clearLedger(t *testing.T, rng *rand.Rand, n int) season.Ledger {
	all := randomLedger(t, rng, n)
	l := all
	l.Entries = nil
	for _, e := range all.Entries {
		with := l
		with.Entries = append(l.Entries[:len(l.Entries):len(l.Entries)], e)
		s := audit(t, with, e.Day)
		fine := true
		for _, f := range s.Findings {
			switch f.Rule {
			case season.RuleBatch, season.RuleOrder, season.RuleAmount, season.RuleNotFood:
				fine = false
			}
		}
		if fine {
			l = with
		}
	}
	return l
}

// A batch that is split into two of half the jars, with everything that happens to it halved, changes nothing but its
// name.
func TestSplittingABatchChangesNothing(t *testing.T) {
	rng := rand.New(rand.NewSource(42))
	split := 0
	for i := 0; i < 300; i++ {
		whole := clearLedger(t, rng, 40)
		for k := range whole.Entries { // so that halves are whole
			e := &whole.Entries[k]
			e.Count *= 2
			e.Taken *= 2
			e.Round *= 2
		}
		var halves []season.Entry
		for _, e := range whole.Entries {
			e.Count /= 2
			e.Taken /= 2
			if e.Event == season.Kept || e.Event == season.Caught || e.Batch[0] == 'K' {
				e.Count *= 2
				halves = append(halves, e)
				continue
			}
			for _, part := range []string{"a", "b"} {
				h := e
				h.Batch += part
				if h.From != "" && h.From[0] != 'K' {
					h.From += part
				}
				halves = append(halves, h)
			}
		}
		apart := whole
		apart.Entries = halves
		on := whole.Start + 30
		a, b := audit(t, whole, on), audit(t, apart, on)
		require.Equal(t, a.Held, b.Held, "%d", i)
		require.Equal(t, a.Used, b.Used)
		require.Equal(t, a.Verdict, b.Verdict)
		require.Equal(t, eatable(a), eatable(b))
		for _, pair := range [][2]units.Mass{{a.Left, b.Left}, {a.Eaten, b.Eaten}, {a.GivenAway, b.GivenAway}, {a.ThrownOut, b.ThrownOut}} {
			apart := pair[0] - pair[1]
			require.LessOrEqual(t, max(apart, -apart), units.Mass(2*len(halves)), "a quantum at each share")
		}
		split += len(halves) - len(whole.Entries)
	}
	require.Greater(t, split, 300, "hardly a batch was split: the test says nothing")
}

// eatable is what may be eaten, by product and last day.
func eatable(s season.State) map[string]int {
	all := map[string]int{}
	for _, f := range s.EatFirst {
		all[f.Product+f.Until.String()] += f.Count
	}
	return all
}

// followed are the entries of someone who does what a plan says, whole fish a jar each.
func followed(t testing.TB, start season.Day, p season.Plan) []season.Entry {
	var all []season.Entry
	type lot struct {
		catch, jars string
		n           int
	}
	var fresh, jars []lot
	for week, w := range p.Weeks {
		on := start + 7*season.Day(week)
		for moved, k := w.Moved, 0; moved > 0; k++ {
			n := min(moved, fresh[0].n)
			name := fmt.Sprintf("P%d-%d", week, k)
			all = append(all,
				season.Entry{Day: on, Event: season.Canned, Batch: name, From: fresh[0].catch, Taken: n, Count: n, Product: "pints", Audit: units.State(verdict.Met)},
				season.Entry{Day: on + 1, Event: season.Sealed, Batch: name, Count: n})
			jars = append(jars, lot{jars: name, n: n})
			if moved, fresh[0].n = moved-n, fresh[0].n-n; fresh[0].n == 0 {
				fresh = fresh[1:]
			}
		}
		if w.Kept > 0 {
			name := fmt.Sprintf("C%d", week)
			all = append(all, season.Entry{Day: on + 2, Event: season.Kept, Batch: name, Count: w.Kept, Round: units.Mass(w.Kept) * p.Year.Fish})
			fresh = append(fresh, lot{catch: name, n: w.Kept})
		}
		for rest := int(w.Eaten / p.Year.Fish); rest > 0; {
			from := &jars
			if len(fresh) > 0 && (p.Order == season.FreshFirst || len(jars) == 0) {
				from = &fresh
			}
			n := min(rest, (*from)[0].n)
			all = append(all, season.Entry{Day: on + 6, Event: season.Eaten, Batch: (*from)[0].catch + (*from)[0].jars, Count: n})
			if rest, (*from)[0].n = rest-n, (*from)[0].n-n; (*from)[0].n == 0 {
				*from = (*from)[1:]
			}
		}
	}
	return all
}

// The entries of a plan that is followed give the plan's own state in every week, and from any week on the plan's own
// rest.
func TestAPlanThatIsFollowed(t *testing.T) {
	rng := rand.New(rand.NewSource(43))
	weeks, rests := 0, 0
	for i := 0; i < 200; i++ {
		y := long(rng)
		y.Weeks, y.Lag, y.Fishing = min(y.Weeks, 45), 1, season.Expected
		y.Weekly = units.Mass(1+rng.Intn(2)) * y.Fish
		y.Fresh, y.Keeps = keeping(days(60)), keeping(days(7*60))
		for k := 0; k < len(y.Trips); k++ {
			if y.Trips[k].Week >= y.Weeks {
				y.Trips = y.Trips[:k]
			}
		}
		p := keep(t, y)
		l := kitchen(t)
		l.Rule, l.Fresh = y.Rule, y.Fresh
		l.Products[0].Keeps = keeping(days(7 * 61))
		l.Entries = followed(t, l.Start, p)
		s := audit(t, l, l.Start+7*season.Day(y.Weeks)-1)
		require.True(t, only(s, season.RuleDaily), "%v", s.Findings)
		require.Len(t, s.Weeks, y.Weeks)
		require.Empty(t, s.Parted(p))
		require.Equal(t, p.Fish(), s.Used)
		require.Equal(t, p.Eaten, s.Eaten)
		require.Equal(t, p.Left, s.Left)
		weeks += len(s.Weeks)

		at := 1 + rng.Intn(y.Weeks-1)
		now := audit(t, l, l.Start+7*season.Day(at)-1)
		rest, err := now.YearFrom(y)
		require.NoError(t, err)
		require.Equal(t, y.Weeks-at, rest.Weeks)
		tail := keep(t, rest)
		for k, w := range tail.Weeks {
			require.Equal(t, p.Weeks[at+k].Kept, w.Kept, "%d: week %d of %d", i, at+k, at)
			require.Equal(t, p.Weeks[at+k].Held, w.Held)
			require.Equal(t, p.Weeks[at+k].Eaten, w.Eaten)
			require.Equal(t, p.Weeks[at+k].End, w.End)
		}
		require.Zero(t, tail.Thrown)
		if len(rest.Start.Holdings) > 0 {
			rests++
		}
	}
	require.Greater(t, weeks, 2000)
	require.Greater(t, rests, 60)
}

// only reports whether a state has no finding but of a rule: a plan may fish for several days of a week, and the test
// writes one.
func only(s season.State, rule verdict.Rule) bool {
	for _, f := range s.Findings {
		if f.Rule != rule {
			return false
		}
	}
	return true
}

// What is planned from the midst of a year breaks no limit, eats nothing too old, and accounts for every quantum,
// whatever is there.
func TestPlanFromAnyState(t *testing.T) {
	rng := rand.New(rand.NewSource(44))
	planned, thrown := 0, 0
	for i := 0; i < 400; i++ {
		l := randomLedger(t, rng, 60)
		if i%2 == 0 {
			l = clearLedger(t, rng, 60)
		}
		y := twoDays()
		y.Rule, y.Weeks, y.Fresh, y.Weekly = l.Rule, 40, l.Fresh, units.Mass(1+rng.Intn(20))*units.Kilogram/10
		at := 1 + rng.Intn(4)
		s := audit(t, l, l.Start+7*season.Day(at)-1)
		rest, err := s.YearFrom(y)
		require.NoError(t, err)
		held, food := season.Stock{}, units.Mass(0)
		for _, h := range rest.Start.Holdings {
			held.All += h.Fish
			if h.Preserved {
				held.Preserved += h.Fish
			} else {
				held.Fresh += h.Fish
			}
			food += units.Mass(h.Fish) * h.Each
		}
		require.Equal(t, s.Held, held, "what is held is what the plan begins with")
		require.LessOrEqual(t, food, s.Left)
		p := keep(t, rest)
		kept, limits := 0, p.Limits
		for _, w := range p.Weeks {
			if kept += w.Kept; w.Kept == 0 {
				continue
			}
			require.True(t, limits.All == 0 || w.Held.All <= limits.All, "%+v of %+v", w.Held, limits)
			require.True(t, limits.Fresh == 0 || w.Held.Fresh <= limits.Fresh, "%+v of %+v", w.Held, limits)
		}
		require.True(t, y.Rule.Annual == 0 || kept+s.Used <= max(s.Used, y.Rule.Annual*y.Rule.Anglers))
		usable := units.Mass(0)
		for _, h := range rest.Start.Holdings {
			if h.Last >= 0 {
				usable += units.Mass(h.Fish) * h.Each
			}
		}
		require.Equal(t, usable+units.Mass(kept)*y.Fish, p.Eaten+p.Left+p.Thrown)
		planned += kept
		if p.Thrown > 0 {
			thrown++
		}
	}
	require.Greater(t, planned, 500)
	require.Greater(t, thrown, 10)
}
