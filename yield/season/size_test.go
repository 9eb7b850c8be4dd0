package season_test

import (
	"testing"

	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/season"
)

func massOf(t *testing.T, r printed.Row, col string, unit units.Mass) units.Mass {
	t.Helper()
	m, err := units.Of(r.Decimal(col), unit)
	require.NoError(t, err)
	return m
}

func ratioOf(t *testing.T, r printed.Row, col string) units.Ratio {
	t.Helper()
	v, err := units.Of(r.Decimal(col), units.One)
	require.NoError(t, err)
	return v
}

// TestSupply: the worked supply.
func TestSupply(t *testing.T) {
	printed.Table(t, "season/supply.csv").Each(t, func(t *testing.T, r printed.Row) {
		h := season.Household{People: int(r.Int("people")), Weeks: int(r.Int("weeks")), Fish: massOf(t, r, "mean_fish_kg", units.Kilogram)}
		l, err := season.Size(h, season.Want{
			Name: "pints", Meals: ratioOf(t, r, "meals_per_week"), Serving: massOf(t, r, "serving_oz", units.Ounce),
			Pack: massOf(t, r, "pack_g", units.Gram), Served: ratioOf(t, r, "drained"), Yield: ratioOf(t, r, "yield"), Keeps: keeping(53 * season.Week),
		})
		require.NoError(t, err)
		s := l.Supplies[0]
		printed.Within(t, r, "need_kg", units.In(s.Need, units.Kilogram, 9))
		printed.Within(t, r, "drained_per_jar_g", units.In(s.Each, units.Gram, 9))
		printed.Within(t, r, "jars_exact", units.In(s.Need, s.Each, 9))
		printed.Within(t, r, "jars", decimal.NewFromInt(int64(s.Containers)))
		printed.Within(t, r, "packed_kg", units.In(s.Packed, units.Kilogram, 9))
		printed.Within(t, r, "round_kg", units.In(s.Round, units.Kilogram, 9))
		printed.Within(t, r, "fish_exact", units.In(s.Round, h.Fish, 9))
		require.EqualValues(t, r.Int("fish_count"), s.Fish)
		require.Equal(t, s.Fish, l.Fish)
		require.Equal(t, 1, s.Makings)
	})
}

// TestServingsPerFish: a published year of a family. The fish is exactly its servings.
func TestServingsPerFish(t *testing.T) {
	printed.Table(t, "season/servings.csv").Each(t, func(t *testing.T, r printed.Row) {
		fish := units.Mass(r.Int("servings_per_fish")) * units.Kilogram
		h := season.Household{People: int(r.Int("people")), Weeks: int(r.Int("weeks")), Fish: fish}
		l, err := season.Size(h, season.Want{
			Name: "salmon", Meals: ratioOf(t, r, "meals_per_week"), Serving: units.Kilogram, Pack: units.Kilogram,
			Served: units.One, Yield: units.One, Keeps: keeping(53 * season.Week),
		})
		require.NoError(t, err)
		require.EqualValues(t, r.Int("fish_count"), l.Fish)
	})
}

// TestLoads: jars into loads by hand, and the last one.
func TestLoads(t *testing.T) {
	for _, c := range []struct{ jars, load, loads, last int }{
		{150, 9, 17, 6}, {150, 18, 9, 6}, {150, 8, 19, 6}, {150, 16, 10, 6}, {9, 9, 1, 9}, {10, 9, 2, 1}, {10, 0, 0, 0},
	} {
		want := pints()
		want.Serving, want.Meals, want.Load = want.Pack, units.One, c.load
		want.Served = units.One
		l, err := season.Size(season.Household{People: c.jars, Weeks: 1, Fish: units.Kilogram}, want)
		require.NoError(t, err)
		require.Equal(t, []int{c.jars, c.loads, c.last}, []int{l.Containers, l.Loads, l.Supplies[0].LastLoad})
	}
}

func pints() season.Want {
	return season.Want{
		Name: "pints", Meals: units.One, Serving: 4 * units.Ounce, Pack: 400 * units.Gram, Served: 79 * units.Percent,
		Yield: 70 * units.Percent, Load: 9, Keeps: keeping(365 * season.Week / 7),
	}
}

func TestSizeRefuses(t *testing.T) {
	good := season.Household{People: 4, Weeks: 52, Fish: 3400 * units.Gram}
	_, err := season.Size(good, pints())
	require.NoError(t, err)
	for name, h := range map[string]season.Household{
		"people": {Weeks: 52, Fish: units.Kilogram}, "weeks": {People: 4, Fish: units.Kilogram}, "fish": {People: 4, Weeks: 52},
		"negative": {People: -4, Weeks: 52, Fish: units.Kilogram}, "long": {People: 4, Weeks: 5301, Fish: units.Kilogram},
	} {
		_, err := season.Size(h, pints())
		require.ErrorIs(t, err, units.ErrRange, name)
	}
	_, err = season.Size(good)
	require.ErrorIs(t, err, units.ErrRange)
	for name, spoil := range map[string]func(*season.Want){
		"name": func(w *season.Want) { w.Name = " " }, "meals": func(w *season.Want) { w.Meals = 0 },
		"serving": func(w *season.Want) { w.Serving = 0 }, "pack": func(w *season.Want) { w.Pack = 0 },
		"served": func(w *season.Want) { w.Served = 0 }, "served more": func(w *season.Want) { w.Served = units.One + 1 },
		"yield": func(w *season.Want) { w.Yield = 0 }, "yield more": func(w *season.Want) { w.Yield = 2 * units.One },
		"load": func(w *season.Want) { w.Load = -1 }, "keeps": func(w *season.Want) { w.Keeps.Time = season.Week - 1 },
		"too many": func(w *season.Want) {
			w.Pack, w.Served, w.Meals, w.Serving = units.Gram, units.Percent, 21*units.One, 10*units.Kilogram
		},
	} {
		w := pints()
		spoil(&w)
		_, err := season.Size(good, w)
		require.ErrorIs(t, err, units.ErrRange, name)
	}
	w := pints()
	w.Keeps.Citation.Basis = 0
	_, err = season.Size(good, w)
	require.Error(t, err)
}

// TestMakings: what does not keep for the year is made in parts, counted from the first day of one week to the last of another.
func TestMakings(t *testing.T) {
	for _, c := range []struct{ days, makings int }{{7, 52}, {14, 26}, {20, 26}, {21, 18}, {60, 7}, {364, 1}, {363, 2}} {
		w := pints()
		w.Keeps = keeping(days(c.days))
		l, err := season.Size(season.Household{People: 4, Weeks: 52, Fish: units.Kilogram}, w)
		require.NoError(t, err)
		require.Equal(t, c.makings, l.Supplies[0].Makings, "%d days", c.days)
		require.Equal(t, c.makings > 1, len(l.Cautions) > 2)
	}
}

func TestCosts(t *testing.T) {
	h := season.Household{People: 4, Weeks: 52, Fish: 3400 * units.Gram}
	l, err := season.Size(h, pints())
	require.NoError(t, err)
	d := decimal.RequireFromString
	// By hand: 42.857142857142857 kg of round fish at 7, 75 jars at 0.4, 9 loads at 1, 5 for the rest: 300 + 30 + 9 + 5 = 344.
	c, err := season.Costs(h, l.Supplies[0], season.Prices{Kilogram: d("7"), Container: d("0.4"), Load: d("1"), Together: d("5")}, 2)
	require.NoError(t, err)
	require.True(t, c.Total.Round(6).Equal(d("344")), c.Total)
	require.True(t, c.Container.Equal(d("4.59")), c.Container) // 344/75
	require.True(t, c.Meal.Equal(d("1.65")), c.Meal)           // 344/208
	require.True(t, c.Kilogram.Equal(d("14.58")), c.Kilogram)  // 344/23.5868
	for _, p := range []season.Prices{{Kilogram: d("-1")}, {Container: d("-0.01")}, {Load: d("-1")}, {Together: d("-1")}} {
		_, err := season.Costs(h, l.Supplies[0], p, 2)
		require.ErrorIs(t, err, units.ErrRange)
	}
	_, err = season.Costs(h, season.Supply{}, season.Prices{}, 2)
	require.ErrorIs(t, err, units.ErrRange)
	_, err = season.Costs(season.Household{}, l.Supplies[0], season.Prices{}, 2)
	require.ErrorIs(t, err, units.ErrRange)
	require.ErrorContains(t, err, "number of people")
	_, err = season.Costs(h, l.Supplies[0], season.Prices{}, 9)
	require.ErrorIs(t, err, units.ErrRange)
}
