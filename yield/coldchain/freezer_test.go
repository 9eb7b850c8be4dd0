package coldchain

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
)

// Both ways. Source: extension services and household freezer manuals, as each row says.
func TestFreezerRules(t *testing.T) {
	rules := FreezerRules()
	rows := printed.Table(t, "coldchain/freezer-rules.csv")
	require.Len(t, rows, len(rules)+1)
	for i, r := range rows[:len(rules)] {
		rule := rules[i]
		require.Equal(t, r.Text("for"), rule.For, r.String())
		require.True(t, units.In(rule.PerCubicFoot, units.Pound, 9).Equal(r.Decimal("lb_per_cubic_foot")), r.String())
		require.Equal(t, r.Text("used") == "named", rule.Named, r.String())
		require.Equal(t, provenance(r), provenanceOf(rule.Citation), r.String())
		want := time.Duration(0)
		if r.Has("hours") {
			want = hours(t, r, "hours")
		}
		require.Equal(t, want, rule.Within, r.String())
	}
	last := rows[len(rules)]
	require.Equal(t, provenance(last), provenanceOf(freezerSet))
	require.Equal(t, last.Int("setting_f"), int64(freezerSetting))
	require.Equal(t, hours(t, last, "hours"), freezerAhead)
}

// Source: household freezer manuals; 2 to 3 lb to the cubic foot is 32 to 48 g to the litre.
func TestFreezerLoads(t *testing.T) {
	printed.Table(t, "coldchain/freezer-loads.csv").Each(t, func(t *testing.T, r printed.Row) {
		room, err := units.Of(r.Decimal("room_cubic_feet"), units.CubicFoot)
		require.NoError(t, err)
		d, err := FreezerPlan{Room: room, Catch: units.Pound}.Days()
		require.NoError(t, err)
		require.True(t, units.In(d.PerDay, units.Pound, 12).Equal(r.Decimal("fish_or_meat_lb")), "exactly: %s", d.PerDay)
		require.True(t, units.In(d.PerDayOther, units.Pound, 12).Equal(r.Decimal("vegetables_lb")), "exactly: %s", d.PerDayOther)
		full, err := FreezerPlan{Room: room, Catch: d.PerDay}.Days()
		require.NoError(t, err)
		require.Equal(t, 1, full.Days)
		more, err := FreezerPlan{Room: room, Catch: d.PerDay + 1}.Days()
		require.NoError(t, err)
		require.Equal(t, 2, more.Days, "a speck more is another day")
	})
}

func TestFreezerHolds(t *testing.T) {
	const room = 10 * units.CubicFoot
	for _, tt := range []struct{ held, catch, over units.Mass }{
		{300 * units.Pound, 50 * units.Pound, 0},
		{300 * units.Pound, 50*units.Pound + 1, 1},
		{400 * units.Pound, 10 * units.Pound, 60 * units.Pound},
		{0, 350 * units.Pound, 0},
	} {
		d, err := FreezerPlan{Room: room, Held: tt.held, Catch: tt.catch}.Days()
		require.NoError(t, err)
		require.Equal(t, 350*units.Pound, d.Holds)
		require.Equal(t, tt.over, d.Over)
		require.Equal(t, units.Fahrenheit(-10), d.Setting)
	}
}

func TestFreezerRefuses(t *testing.T) {
	for name, p := range map[string]FreezerPlan{
		"no room":        {Catch: units.Pound},
		"negative room":  {Room: -units.Litre, Catch: units.Pound},
		"a cold store":   {Room: 5001 * units.Litre, Catch: units.Pound},
		"no catch":       {Room: units.CubicFoot},
		"negative catch": {Room: units.CubicFoot, Catch: -1},
		"a trawler":      {Room: units.CubicFoot, Catch: 11_000 * units.Kilogram},
		"negative food":  {Room: units.CubicFoot, Catch: 1, Held: -1},
		"tonnes of food": {Room: units.CubicFoot, Catch: 1, Held: 11_000 * units.Kilogram},
	} {
		_, err := p.Days()
		require.ErrorIs(t, err, units.ErrRange, name)
	}
}

// The days are enough and no day is to spare; more room never takes longer, more fish never fewer days.
func FuzzFreezerDays(f *testing.F) {
	f.Add(int64(15*units.CubicFoot), int64(100*units.Pound), int64(units.Pound))
	f.Add(int64(units.Litre), int64(1), int64(1))
	f.Fuzz(func(t *testing.T, room, catch, more int64) {
		p := FreezerPlan{Room: units.Volume(room), Catch: units.Mass(catch)}
		d, err := p.Days()
		if err != nil {
			require.ErrorIs(t, err, units.ErrRange)
			return
		}
		require.GreaterOrEqual(t, d.PerDay*units.Mass(d.Days), p.Catch)
		require.Less(t, d.PerDay*units.Mass(d.Days-1), p.Catch)
		if more <= 0 || more > int64(units.Kilogram) {
			return
		}
		p.Catch += units.Mass(more)
		if fuller, err := p.Days(); err == nil {
			require.GreaterOrEqual(t, fuller.Days, d.Days)
			require.GreaterOrEqual(t, fuller.Over, d.Over)
			p.Room += units.Volume(more)
			if roomier, err := p.Days(); err == nil {
				require.LessOrEqual(t, roomier.Days, fuller.Days)
				require.LessOrEqual(t, roomier.Over, fuller.Over)
			}
		}
	})
}
