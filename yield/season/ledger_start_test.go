package season_test

import (
	"math"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/season"
)

// TestKeepRefusesStarts: one fault at a time in a good start.
func TestKeepRefusesStarts(t *testing.T) {
	good := season.Holding{Caught: -1, Last: 20, Fish: 2, Preserved: true, Each: units.Kilogram}
	y := twoDays()
	y.Start = season.Start{Used: 5, Holdings: []season.Holding{good}}
	keep(t, y)
	for name, spoil := range map[string]func(s *season.Start, h *season.Holding){
		"caught in the plan":  func(_ *season.Start, h *season.Holding) { h.Caught = 0 },
		"caught long ago":     func(_ *season.Start, h *season.Holding) { h.Caught = math.MinInt32 },
		"keeps for ever":      func(_ *season.Start, h *season.Holding) { h.Last = math.MaxInt32 },
		"no fish":             func(_ *season.Start, h *season.Holding) { h.Fish = 0 },
		"fewer than no fish":  func(_ *season.Start, h *season.Holding) { h.Fish = -1 },
		"too many fish":       func(_ *season.Start, h *season.Holding) { h.Fish = 1_000_001 },
		"negative mass":       func(_ *season.Start, h *season.Holding) { h.Each = -1 },
		"whales":              func(_ *season.Start, h *season.Holding) { h.Each = units.Tonne },
		"more than sums hold": func(_ *season.Start, h *season.Holding) { h.Fish, h.Each = 900_000, 90*units.Kilogram },
		"negative cap":        func(s *season.Start, _ *season.Holding) { s.Used = -1 },
		"fish in many holdings": func(s *season.Start, h *season.Holding) {
			h.Fish = 600_000
			h.Each = units.Gram
			s.Holdings = append(s.Holdings, *h)
		},
	} {
		bad, h := y, good
		bad.Start = season.Start{Used: 5}
		spoil(&bad.Start, &h)
		bad.Start.Holdings = append(bad.Start.Holdings, h)
		_, err := season.Keep(bad)
		require.ErrorIs(t, err, units.ErrRange, name)
	}
}

// What is there counts from the first week on, is eaten within its time, and is thrown out past it; what is no food is held to the end.
func TestStartIsHeld(t *testing.T) {
	y := twoDays() // ten fish at most, a fish of 3 kg a week
	y.Start = season.Start{Holdings: []season.Holding{
		{Caught: -5, Last: 1, Fish: 4, Preserved: true, Each: 3 * units.Kilogram},
		{Caught: -9, Last: -1, Fish: 3, Preserved: true},
	}}
	p := keep(t, y)
	require.Equal(t, 3, p.Kept[0], "ten less seven")
	require.Equal(t, season.Stock{All: 10, Fresh: 3, Preserved: 7}, p.Weeks[0].Held)
	require.Equal(t, 6*units.Kilogram, p.Thrown, "two of four are eaten in weeks 0 and 1")
	require.Equal(t, p.Thrown, p.Weeks[2].Thrown)
	require.False(t, p.Proven)
	require.Contains(t, ids(p), cite.CautionID("season.start-thrown-out"))
	require.NotContains(t, ids(p), cite.CautionID("season.empty-shelf"))
	for _, w := range p.Weeks {
		require.GreaterOrEqual(t, w.End.Preserved, 3)
	}

	y.Rule.Annual, y.Start = 8, season.Start{Used: 5}
	require.Equal(t, 3, keep(t, y).Fish(), "eight a year less five")
	y.Start.Used = 9
	require.Zero(t, keep(t, y).Fish())
}

// A plan's own middle is a start from which the rest is planned as before, to the last figure and as well proven.
func TestStartInTheMidstOfAPlan(t *testing.T) {
	y := twoDays()
	whole := keep(t, y)
	rest := y
	rest.Weeks, rest.Trips = 16, nil
	for _, trip := range y.Trips[4:] {
		trip.Week -= 4
		rest.Trips = append(rest.Trips, trip)
	}
	end := whole.Weeks[3].End // by then fish caught in week 3 are preserved next week
	rest.Start = season.Start{Used: 13, Holdings: []season.Holding{
		{Caught: -2, Last: 49, Fish: end.Preserved, Preserved: true, Each: y.Fish},
		{Caught: -1, Last: 50, Fish: max(1, end.Fresh), Each: y.Fish},
	}}
	if end.Fresh == 0 {
		rest.Start.Holdings = rest.Start.Holdings[:1]
	}
	p := keep(t, rest)
	require.Empty(t, cmp.Diff(whole.Kept[4:], p.Kept))
	require.True(t, p.Proven)
	require.Equal(t, []int{15}, p.Short)
}

// A jar that did not seal counts until it is thrown out, or until it failed, as stated; made again it counts once.
func TestUnsealedCounts(t *testing.T) {
	l := kitchen(t)
	l.Entries, _ = season.ParseEntries([]byte(`day,event,batch,from,taken,count,product,round,audit,after
2026-04-06,kept,C1,,,3,,9 kg,,
2026-04-07,canned,P1,C1,3,18,pints,,met,
2026-04-08,sealed,P1,,,10,,,,
2026-04-08,failed,P1,,,8,,,,
2026-04-09,thrown out,P1,,,2,,,,
`))
	for _, c := range []struct {
		on                  string
		untilThrown, failed int
	}{{"2026-04-07", 3, 3}, {"2026-04-08", 3, 2}, {"2026-04-09", 3, 2}} {
		l.Unsealed = season.UntilThrownOut
		require.Equal(t, c.untilThrown, audit(t, l, day(t, c.on)).Held.All, c.on)
		l.Unsealed = season.UntilFailed
		require.Equal(t, c.failed, audit(t, l, day(t, c.on)).Held.All, c.on)
	}
	again := season.Entry{Day: day(t, "2026-04-07"), Event: season.Reprocessed, Batch: "P2", From: "P1", Taken: 8, Count: 8, Product: "pints"}
	l.Entries = append(l.Entries[:4:4], again)
	l.Entries[3].Day = again.Day
	require.Equal(t, 3, audit(t, l, day(t, "2026-04-08")).Held.All, "16 of 18 sealed or made again, two of them to be checked")
}

// TestYearFromRefuses: a state of another day or rule, and one that no function returned, is refused and does not fail.
func TestYearFromRefuses(t *testing.T) {
	l := spring()
	y := twoDays()
	good := audit(t, l, day(t, "2026-05-03"))
	_, err := good.YearFrom(y)
	require.NoError(t, err)
	for name, spoil := range map[string]func(s *season.State, y *season.Year){
		"another rule":         func(_ *season.State, y *season.Year) { y.Rule.Possession = 12 },
		"no year":              func(_ *season.State, y *season.Year) { *y = season.Year{} },
		"the midst of a week":  func(s *season.State, _ *season.Year) { s.Day -= 2 },
		"before the start":     func(s *season.State, _ *season.Year) { s.Day -= 70 },
		"after the end":        func(s *season.State, _ *season.Year) { s.Day += 700 },
		"nothing left of it":   func(s *season.State, _ *season.Year) { s.Lots[0].Left = 0 },
		"more food than left":  func(s *season.State, _ *season.Year) { s.Lots[0].Food = 99 },
		"no fish in the catch": func(s *season.State, _ *season.Year) { s.Lots[0].OfFish = 0 },
		"no mass in the catch": func(s *season.State, _ *season.Year) { s.Lots[0].OfRound = 0 },
		"more than the catch":  func(s *season.State, _ *season.Year) { s.Lots[0].Round = units.Tonne },
		"holds more than left": func(s *season.State, _ *season.Year) { s.Lots[0].Held = units.Tonne },
		"no day of the catch":  func(s *season.State, _ *season.Year) { s.Lots[0].Caught = 0 },
		"no last day":          func(s *season.State, _ *season.Year) { s.Lots[0].Until = 0 },
		"caught later":         func(s *season.State, _ *season.Year) { s.Lots[0].Caught += 700 },
		"caps long used":       func(s *season.State, _ *season.Year) { s.Used = -3 },
	} {
		s, year := good, y
		s.Lots = append([]season.Lot(nil), good.Lots...)
		spoil(&s, &year)
		_, err := s.YearFrom(year)
		require.ErrorIs(t, err, units.ErrRange, name)
	}
	_, err = good.ToMake(season.Larder{})
	require.ErrorIs(t, err, units.ErrRange)
	require.Empty(t, season.State{}.Parted(season.Plan{}))
}

func TestDays(t *testing.T) {
	for text, days := range map[string]season.Day{
		"1970-01-01": 719_163, "1900-01-01": 693_596, "2199-12-31": 803_168, "2026-03-01": 739_676, "2024-02-29": 738_945,
	} {
		d := day(t, text)
		require.Equal(t, days, d, text)
		require.Equal(t, text, d.String())
		back, err := d.MarshalText()
		require.NoError(t, err)
		var read season.Day
		require.NoError(t, read.UnmarshalText(back))
		require.Equal(t, d, read)
	}
	for d := day(t, "1999-12-01"); d < day(t, "2000-03-05"); d++ {
		require.Equal(t, d, day(t, d.String()))
	}
	for _, bad := range []string{
		"", "2026-2-3", "2026-02-30", "2100-02-29", "1899-12-31", "2200-01-01", "26-02-03", "2026-02-03 ", "03.02.2026", "2026/02/03", "20260203",
		"2026-02-03T00:00:00Z", "not stated", "２026-02-03",
	} {
		_, err := season.ParseDay(bad)
		require.ErrorIs(t, err, units.ErrSyntax, bad)
	}
	d := day(t, "2026-02-03")
	require.ErrorIs(t, d.UnmarshalText([]byte("3 February")), units.ErrSyntax)
	require.Equal(t, "2026-02-03", d.String(), "stays as it was")
	require.NoError(t, d.UnmarshalText(nil))
	require.Zero(t, d)
	require.Equal(t, "not stated", d.String())
	text, err := d.MarshalText()
	require.NoError(t, err)
	require.Empty(t, text)
	for _, bad := range []season.Day{-1, 1, 693_595, 803_169, math.MaxInt32, math.MinInt32} {
		_, err := bad.MarshalText()
		require.ErrorIs(t, err, units.ErrRange)
	}
}
