package season_test

import (
	"math"
	"math/rand"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/season"
)

func days(n int) time.Duration { return time.Duration(n) * 24 * time.Hour }

// long is a random year of realistic length.
func long(rng *rand.Rand) season.Year {
	y := small(rng)
	y.Weeks = 20 + rng.Intn(100)
	y.Rule.Daily, y.Trips = 1+rng.Intn(6), nil
	if y.Rule.Annual > 0 {
		y.Rule.Annual = 1 + rng.Intn(60)
	}
	y.Keeps = keeping(timesWeek(1 + rng.Intn(y.Weeks)))
	for week := 0; week < y.Weeks; week++ {
		if rng.Intn(4) == 0 {
			n := rng.Intn(12)
			y.Trips = append(y.Trips, season.Trip{Week: week, Days: 1 + rng.Intn(3), Expected: n, Possible: n + rng.Intn(5)})
		}
	}
	return y
}

func keep(t *testing.T, y season.Year) season.Plan {
	t.Helper()
	p, err := season.Keep(y)
	require.NoError(t, err)
	return p
}

// hold checks that a plan breaks no limit in any week, eats nothing too old, and accounts for every quantum.
func hold(t *testing.T, y season.Year, p season.Plan) {
	t.Helper()
	r := y.Rule
	var eaten, byAge, preserved units.Mass
	kept := 0
	for week, w := range p.Weeks {
		kept += w.Kept
		eaten += w.Eaten
		preserved += w.Preserved
		h := w.Held
		require.Equal(t, h.All, h.Fresh+h.Preserved)
		switch r.Shape {
		case season.Everything:
			require.LessOrEqual(t, h.All, r.Anglers*r.Possession)
		case season.OneDay:
			require.LessOrEqual(t, h.All, r.Anglers*r.Daily)
		case season.ProcessedQuota:
			require.LessOrEqual(t, h.Fresh, r.Anglers*r.Daily)
			require.LessOrEqual(t, h.Preserved, r.Anglers*r.Processed)
		case season.Unpreserved:
			require.LessOrEqual(t, h.Fresh, r.Anglers*r.Possession)
		}
		require.LessOrEqual(t, w.Kept, w.Caught)
		require.LessOrEqual(t, w.Eaten, y.Weekly)
		require.LessOrEqual(t, eaten, units.Mass(kept)*y.Fish)
		require.GreaterOrEqual(t, min(w.End.Fresh, w.End.Preserved), 0)
		// Fish on the shelf: kept less eaten up, so that the shelf holds at least the mass that is left.
		left := units.Mass(kept)*y.Fish - eaten
		require.GreaterOrEqual(t, units.Mass(w.End.All)*y.Fish, left, "week %d", week)
		require.Less(t, units.Mass(w.End.All)*y.Fish-left, y.Fish, "week %d", week)
	}
	for _, m := range p.Ages {
		byAge += m
	}
	require.Equal(t, p.Eaten, eaten)
	require.Equal(t, p.Eaten, byAge)
	require.Equal(t, p.Fish(), kept)
	require.LessOrEqual(t, preserved, units.Mass(kept)*y.Fish)
	require.Equal(t, units.Mass(kept)*y.Fish, p.Eaten+p.Left)
	require.Less(t, p.Left, y.Fish, "a fish is kept that nobody begins")
	require.LessOrEqual(t, timesWeek(p.Oldest()+1), y.Keeps.Time)
	require.Equal(t, p.Eaten, p.EatenWithin(y.Keeps.Time))
	if r.Annual > 0 {
		require.LessOrEqual(t, kept, r.Anglers*r.Annual)
	}
}

// TestNoLimitIsPassed: under random rules, in any week.
func TestNoLimitIsPassed(t *testing.T) {
	rng := rand.New(rand.NewSource(2))
	feasible := 0
	for i := 0; i < 1000; i++ {
		y := long(rng)
		p := keep(t, y)
		hold(t, y, p)
		if p.Feasible() {
			feasible++
		}
		require.Equal(t, p.Feasible(), p.Missing() == 0)
	}
	require.Greater(t, feasible, 10)
}

// TestMoreTripsNeverWorsen: one more trip, or one more fish on a trip, lets no less be eaten up to any week.
func TestMoreTripsNeverWorsen(t *testing.T) {
	rng := rand.New(rand.NewSource(3))
	better := 0
	for i := 0; i < 1000; i++ {
		y := long(rng)
		before := keep(t, y)
		more := y
		at, week := 0, rng.Intn(y.Weeks)
		for at < len(y.Trips) && y.Trips[at].Week <= week {
			at++
		}
		more.Trips = append(append(append([]season.Trip(nil), y.Trips[:at]...), season.Trip{Week: week, Days: 1, Expected: 3, Possible: 3}), y.Trips[at:]...)
		after := keep(t, more)
		hold(t, more, after)
		var a, b units.Mass
		for w := range before.Weeks {
			a += before.Weeks[w].Eaten
			b += after.Weeks[w].Eaten
			require.GreaterOrEqual(t, b, a, "week %d of %+v", w, y)
		}
		if b > a {
			better++
		}
		y.Fishing = season.Possible
		require.GreaterOrEqual(t, keep(t, y).Eaten, before.Eaten)
	}
	require.Greater(t, better, 100)
}

// TestSteady: the share found holds, the next one does not.
func TestSteady(t *testing.T) {
	rng := rand.New(rand.NewSource(4))
	found := 0
	for i := 0; i < 200; i++ {
		y := long(rng)
		y.Trips = append([]season.Trip{{Week: 0, Days: 2, Expected: 8, Possible: 8}}, y.Trips...)
		share, p, err := season.Steady(y)
		require.NoError(t, err)
		if share == 0 {
			require.False(t, p.Feasible())
			continue
		}
		require.True(t, p.Feasible())
		hold(t, p.Year, p)
		if share < units.One {
			found++
			next := y
			next.Weekly, err = units.Prorate(y.Weekly, share+units.Percent, units.One)
			require.NoError(t, err)
			require.False(t, keep(t, next).Feasible())
		}
	}
	require.Greater(t, found, 20)
	// By hand: 99 fish in the first week of a hundred.
	y := season.Year{
		Rule: season.Rule{Shape: season.OneDay, Anglers: 1, Daily: 100}, Trips: []season.Trip{{Days: 1, Expected: 99, Possible: 99}},
		Fishing: season.Expected, Weeks: 100, Lag: 1, Fish: units.Kilogram, Weekly: units.Kilogram, Fresh: keeping(days(2)), Keeps: keeping(100 * season.Week),
	}
	share, p, err := season.Steady(y)
	require.NoError(t, err)
	require.Equal(t, 99*units.Percent, share)
	require.Equal(t, 99, p.Fish())
	share, p, err = season.Steady(season.Year{})
	require.ErrorIs(t, err, units.ErrRange)
	require.Zero(t, share)
	require.False(t, p.Feasible(), "no plan holds no year")
	require.Equal(t, "no plan", p.String())
}

// TestCalendar: every quantum preserved is given to a product, and no more containers are filled than it fills.
func TestCalendar(t *testing.T) {
	rng := rand.New(rand.NewSource(5))
	smoked := season.Want{
		Name: "smoked", Meals: units.One / 4, Serving: 100 * units.Gram, Pack: units.Kilogram, Served: 75 * units.Percent,
		Yield: 57 * units.Percent, Keeps: keeping(days(60)),
	}
	batches := 0
	for i := 0; i < 300; i++ {
		y := long(rng)
		l, err := season.Size(season.Household{People: 1 + rng.Intn(40), Weeks: y.Weeks, Fish: y.Fish}, pints(), smoked)
		require.NoError(t, err)
		y.Weekly = l.Weekly
		p := keep(t, y)
		all, err := season.Calendar(p, l)
		require.NoError(t, err)
		given, made := make([]units.Mass, 2), make([]int, 2)
		for _, b := range all {
			require.Equal(t, p.Weeks[b.Week].Preserved, b.Round)
			require.Equal(t, b.Week-y.Lag, b.Caught)
			require.Equal(t, b.Round, b.Made[0].Round+b.Made[1].Round)
			for k := range given {
				require.Equal(t, l.Supplies[k].Want, b.Made[k].Want)
				require.GreaterOrEqual(t, b.Made[k].Containers, 0)
				given[k] += b.Made[k].Round
				made[k] += b.Made[k].Containers
				fish, err := l.Supplies[k].Want.Yield.Of(given[k])
				require.NoError(t, err)
				over := fish - units.Mass(made[k])*l.Supplies[k].Want.Pack
				require.GreaterOrEqual(t, over, units.Mass(0))
				require.LessOrEqual(t, over, l.Supplies[k].Want.Pack)
			}
			require.Equal(t, (b.Made[0].Containers+8)/9, b.Made[0].Loads)
			require.Zero(t, b.Made[1].Loads)
			batches++
		}
	}
	require.Greater(t, batches, 500)
	_, err := season.Calendar(season.Plan{}, season.Larder{})
	require.ErrorIs(t, err, units.ErrRange)
}

// A plan or a larder that no function of the package returned, as a file may hold it, is refused and does not fail.
func TestCalendarRefuses(t *testing.T) {
	y := twoDays()
	l, err := season.Size(season.Household{People: 4, Weeks: y.Weeks, Fish: y.Fish}, pints())
	require.NoError(t, err)
	plan := keep(t, y)
	_, err = season.Calendar(plan, l)
	require.NoError(t, err)
	for name, spoil := range map[string]func(p *season.Plan, l *season.Larder){
		"other fish":         func(p *season.Plan, _ *season.Larder) { p.Year.Fish++ },
		"nothing wanted":     func(_ *season.Plan, l *season.Larder) { l.Supplies = nil },
		"no pack":            func(_ *season.Plan, l *season.Larder) { l.Supplies[0].Want.Pack = 0 },
		"yield above all":    func(_ *season.Plan, l *season.Larder) { l.Supplies[0].Want.Yield = math.MaxInt64 },
		"another round mass": func(_ *season.Plan, l *season.Larder) { l.Round++ },
		"no round mass":      func(_ *season.Plan, l *season.Larder) { l.Round, l.Supplies[0].Round = 0, 0 },
		"negative round":     func(_ *season.Plan, l *season.Larder) { l.Supplies[0].Round = -1 },
		"negative preserved": func(p *season.Plan, _ *season.Larder) { p.Weeks[1].Preserved = -1 },
		"preserved too much": func(p *season.Plan, _ *season.Larder) {
			p.Weeks[1].Preserved, p.Weeks[2].Preserved = math.MaxInt64, math.MaxInt64
		},
	} {
		p, larder := plan, l
		p.Weeks = append([]season.PlannedWeek(nil), plan.Weeks...)
		larder.Supplies = append([]season.Supply(nil), l.Supplies...)
		spoil(&p, &larder)
		batches, err := season.Calendar(p, larder)
		require.ErrorIs(t, err, units.ErrRange, name)
		require.Nil(t, batches, name)
	}
}

// TestKeepRefuses: one fault at a time in a good year.
func TestKeepRefuses(t *testing.T) {
	good := func() season.Year {
		return season.Year{
			Rule:    season.Rule{Shape: season.Everything, Anglers: 1, Daily: 5, Possession: 10},
			Trips:   []season.Trip{{Week: 0, Days: 1, Expected: 3, Possible: 5}, {Week: 2, Days: 1, Expected: 3, Possible: 5}},
			Fishing: season.Expected, Weeks: 20, Lag: 1, Fish: units.Kilogram, Weekly: units.Kilogram, Fresh: keeping(days(2)), Keeps: keeping(days(365)),
		}
	}
	keep(t, good())
	for name, spoil := range map[string]func(*season.Year){
		"no shape": func(y *season.Year) { y.Rule.Shape = 0 }, "fishing not stated": func(y *season.Year) { y.Fishing = 0 },
		"no anglers": func(y *season.Year) { y.Rule.Anglers = 0 }, "no daily limit": func(y *season.Year) { y.Rule.Daily = 0 },
		"no possession limit": func(y *season.Year) { y.Rule.Possession = 0 }, "a quota that counts for nothing": func(y *season.Year) { y.Rule.Processed = 10 },
		"one day with a possession limit": func(y *season.Year) { y.Rule.Shape = season.OneDay },
		"quota missing":                   func(y *season.Year) { y.Rule.Shape, y.Rule.Possession = season.ProcessedQuota, 0 },
		"unpreserved without a limit":     func(y *season.Year) { y.Rule.Shape, y.Rule.Possession = season.Unpreserved, 0 },
		"negative cap":                    func(y *season.Year) { y.Rule.Annual = -1 }, "too many anglers": func(y *season.Year) { y.Rule.Anglers = 1001 },
		"no weeks": func(y *season.Year) { y.Weeks = 0 }, "more than a century": func(y *season.Year) { y.Weeks = 5301 },
		"trip after the end": func(y *season.Year) { y.Trips[1].Week = 20 }, "trip before the start": func(y *season.Year) { y.Trips[0].Week = -1 },
		"trips out of order": func(y *season.Year) { y.Trips[0].Week = 3 }, "no days": func(y *season.Year) { y.Trips[0].Days = 0 },
		"two trips of eight days in a week": func(y *season.Year) { y.Trips[0].Week, y.Trips[0].Days, y.Trips[1].Days = 2, 4, 4 },
		"eight days":                        func(y *season.Year) { y.Trips[0].Days = 8 }, "expects more than possible": func(y *season.Year) { y.Trips[0].Expected = 6 },
		"negative catch": func(y *season.Year) { y.Trips[0].Expected = -1 },
		"no lag":         func(y *season.Year) { y.Lag = 0 }, "fresh fish does not keep for the lag": func(y *season.Year) { y.Lag = 2 },
		"no fish": func(y *season.Year) { y.Fish = 0 }, "no appetite": func(y *season.Year) { y.Weekly = 0 },
		"too much": func(y *season.Year) { y.Weekly = 30 * units.Tonne }, "keeps for no week": func(y *season.Year) { y.Keeps.Time = season.Week - 1 },
		"fresh keeps not at all": func(y *season.Year) { y.Fresh.Time = 0 }, "keeps for ever": func(y *season.Year) { y.Keeps.Time = 1<<63 - 1 },
	} {
		y := good()
		spoil(&y)
		_, err := season.Keep(y)
		require.ErrorIs(t, err, units.ErrRange, name)
	}
	for _, spoil := range []func(*season.Year){
		func(y *season.Year) { y.Rule.Shape = 5 }, func(y *season.Year) { y.Fishing = 3 },
	} {
		y := good()
		spoil(&y)
		_, err := season.Keep(y)
		require.ErrorIs(t, err, units.ErrUnknown)
	}
	for _, spoil := range []func(*season.Year){
		func(y *season.Year) { y.Keeps.Citation = cite.Citation{} }, func(y *season.Year) { y.Fresh.Citation = cite.Citation{} },
	} {
		y := good()
		spoil(&y)
		_, err := season.Keep(y)
		var incomplete cite.IncompleteError
		require.ErrorAs(t, err, &incomplete)
	}
}

// TestCautions: what must be said is said when it holds and not otherwise.
func TestCautions(t *testing.T) {
	y := season.Year{
		Rule:    season.Rule{Shape: season.OneDay, Anglers: 1, Daily: 5},
		Trips:   []season.Trip{{Week: 0, Days: 1, Expected: 3, Possible: 5}},
		Fishing: season.Expected, Weeks: 3, Lag: 1, Fish: units.Kilogram, Weekly: units.Kilogram,
		Fresh: season.Keeping{Time: days(15), Citation: cite.Citation{Source: cite.FDAStorageChart, Where: "chart", Basis: cite.Read}},
	}
	y.Keeps = season.Keeping{Time: days(365), Citation: y.Fresh.Citation}
	least := keep(t, y)
	require.Equal(t, []cite.CautionID{"season.limits-change", "season.empty-shelf", "season.counted-whole", "season.keeps-as-stored"}, ids(least))
	require.Equal(t, season.OneDay.Citation(), least.Cautions[0].Citation)
	for id, change := range map[cite.CautionID]func(*season.Year){
		"season.within-the-week": func(y *season.Year) { y.Fresh.Time = days(2) }, "season.best-catch": func(y *season.Year) { y.Fishing = season.Possible },
		"season.keeping-unverified": func(y *season.Year) { y.Keeps.Citation.Basis = cite.Recalled }, "season.cannot-be-held": func(y *season.Year) { y.Weeks = 4 },
		"season.shape-from-memory": func(y *season.Year) {
			y.Rule = season.Rule{Shape: season.Unpreserved, Anglers: 1, Daily: 5, Possession: 10}
		},
	} {
		changed := y
		change(&changed)
		require.ElementsMatch(t, append(ids(least), id), ids(keep(t, changed)))
	}
}

// ids are those of a plan's cautions, in their order.
func ids(p season.Plan) []cite.CautionID {
	var all []cite.CautionID
	for _, c := range p.Cautions {
		all = append(all, c.ID)
	}
	return all
}

// FuzzKeep: no year makes it fail otherwise than by an error, and every plan holds.
func FuzzKeep(f *testing.F) {
	for seed := int64(0); seed < 20; seed++ {
		f.Add(seed, uint8(seed), uint16(40+seed), int64(units.Kilogram), uint16(300))
	}
	f.Fuzz(func(t *testing.T, seed int64, lag uint8, weeks uint16, weekly int64, keeps uint16) {
		y := long(rand.New(rand.NewSource(seed)))
		y.Lag, y.Weeks, y.Weekly, y.Keeps = int(lag), int(weeks), units.Mass(weekly), keeping(days(int(keeps)))
		p, err := season.Keep(y)
		if err != nil {
			require.ErrorIs(t, err, units.ErrRange)
			return
		}
		hold(t, y, p)
	})
}
