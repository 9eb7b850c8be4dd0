package freezing_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain/freezing"
	"example.org/lakelarder/yield/coldchain/internal/logged"
)

// Source: household freezer manuals; 2 to 3 lb to the cubic foot is 32 to 48 g to the litre.
func TestFreezerLoads(t *testing.T) {
	printed.Table(t, "coldchain/freezer-loads.csv").Each(t, func(t *testing.T, r printed.Row) {
		room, err := units.Of(r.Decimal("room_cubic_feet"), units.CubicFoot)
		require.NoError(t, err)
		d, err := freezing.Plan(freezing.Load{Room: room, Catch: units.Pound})
		require.NoError(t, err)
		require.True(t, units.In(d.PerDay, units.Pound, 12).Equal(r.Decimal("fish_or_meat_lb")), "exactly: %s", d.PerDay)
		require.True(t, units.In(d.PerDayOther, units.Pound, 12).Equal(r.Decimal("vegetables_lb")), "exactly: %s", d.PerDayOther)
		full, err := freezing.Plan(freezing.Load{Room: room, Catch: d.PerDay})
		require.NoError(t, err)
		require.Equal(t, 1, full.Days)
		more, err := freezing.Plan(freezing.Load{Room: room, Catch: d.PerDay + 1})
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
		d, err := freezing.Plan(freezing.Load{Room: room, Held: tt.held, Catch: tt.catch})
		require.NoError(t, err)
		require.Equal(t, 350*units.Pound, d.Holds)
		require.Equal(t, tt.over, d.Over)
		require.Equal(t, units.Fahrenheit(-10), d.Setting)
	}
}

func TestFreezerRefuses(t *testing.T) {
	for name, p := range map[string]freezing.Load{
		"no room":        {Catch: units.Pound},
		"negative room":  {Room: -units.Litre, Catch: units.Pound},
		"a cold store":   {Room: 5001 * units.Litre, Catch: units.Pound},
		"no catch":       {Room: units.CubicFoot},
		"negative catch": {Room: units.CubicFoot, Catch: -1},
		"a trawler":      {Room: units.CubicFoot, Catch: 11_000 * units.Kilogram},
		"negative food":  {Room: units.CubicFoot, Catch: 1, Held: -1},
		"tonnes of food": {Room: units.CubicFoot, Catch: 1, Held: 11_000 * units.Kilogram},
	} {
		_, err := freezing.Plan(p)
		logged.Refused(t, err, name)
	}
}

// The days are enough and no day is to spare; more room never takes longer, more fish never fewer days.
func FuzzFreezerDays(f *testing.F) {
	f.Add(int64(15*units.CubicFoot), int64(100*units.Pound), int64(units.Pound))
	f.Add(int64(units.Litre), int64(1), int64(1))
	f.Fuzz(func(t *testing.T, room, catch, more int64) {
		p := freezing.Load{Room: units.Volume(room), Catch: units.Mass(catch)}
		d, err := freezing.Plan(p)
		if err != nil {
			logged.Refused(t, err, "changed")
			return
		}
		require.GreaterOrEqual(t, d.PerDay*units.Mass(d.Days), p.Catch)
		require.Less(t, d.PerDay*units.Mass(d.Days-1), p.Catch)
		if more <= 0 || more > int64(units.Kilogram) {
			return
		}
		p.Catch += units.Mass(more)
		if fuller, err := freezing.Plan(p); err == nil {
			require.GreaterOrEqual(t, fuller.Days, d.Days)
			require.GreaterOrEqual(t, fuller.Over, d.Over)
			p.Room += units.Volume(more)
			if roomier, err := freezing.Plan(p); err == nil {
				require.LessOrEqual(t, roomier.Days, fuller.Days)
				require.LessOrEqual(t, roomier.Over, fuller.Over)
			}
		}
	})
}
