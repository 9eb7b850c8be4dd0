package yield

import (
	"math"
	"testing"
	"time"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"
)

const day = 24 * time.Hour

// Dose equation of the FDA/EPA technical page, and the same with the bodies and meals of the Great Lakes advisories.
func TestEdgesOfBands(t *testing.T) {
	printed.Table(t, "yield/advisory-edges.csv").Each(t, func(t *testing.T, r printed.Row) {
		var i Intake
		var err error
		i.Dose, err = units.Of(r.Decimal("dose_ug_per_kg_day"), units.PartsPerBillion)
		require.NoError(t, err)
		i.Body, err = units.Of(r.Decimal("body_kg"), units.Kilogram)
		require.NoError(t, err)
		i.Meal, err = units.Of(r.Decimal("meal_g"), units.Gram)
		require.NoError(t, err)
		period := time.Duration(r.Decimal("days").Mul(decimal.NewFromInt(int64(day))).IntPart())
		meals := int(r.Int("meals"))
		edge, err := i.Edge(meals, period)
		require.NoError(t, err)
		printed.Within(t, r, "concentration_ppm", units.In(edge, units.PartsPerMillion, 9))

		i.Concentration = edge
		got, err := i.Meals(period)
		require.NoError(t, err)
		require.Equal(t, int64(meals), got, "at the edge")
		i.Concentration = edge + edge/1000
		got, err = i.Meals(period)
		require.NoError(t, err)
		require.Equal(t, int64(meals)-1, got, "above the edge")
	})
}

func TestMealsAreMonotone(t *testing.T) {
	i := Intake{Dose: units.PartsPerBillion / 10, Body: 70 * units.Kilogram, Meal: 227 * units.Gram}
	last := int64(math.MaxInt64)
	for i.Concentration = 1; i.Concentration <= units.Percent; i.Concentration *= 3 {
		meals, err := i.Meals(365 * day)
		require.NoError(t, err)
		require.LessOrEqual(t, meals, last)
		last = meals
	}
	require.Zero(t, last)
	exact := Intake{Concentration: units.PartsPerMillion, Dose: units.PartsPerBillion, Body: 100 * units.Kilogram, Meal: 100 * units.Gram}
	meals, err := exact.Meals(7 * day)
	require.NoError(t, err)
	require.Equal(t, int64(7), meals, "0.7 mg by 0.1 mg a meal")
}

func TestIntakeRefuses(t *testing.T) {
	good := Intake{Concentration: units.PartsPerMillion / 2, Dose: units.PartsPerBillion / 10, Body: 70 * units.Kilogram, Meal: 227 * units.Gram}
	for name, by := range map[string]func(*Intake){
		"no concentration": func(i *Intake) { i.Concentration = 0 }, "negative concentration": func(i *Intake) { i.Concentration = -1 }, "a percentage": func(i *Intake) { i.Concentration = 2 * units.Percent },
		"no dose": func(i *Intake) { i.Dose = 0 }, "negative dose": func(i *Intake) { i.Dose = -1 }, "a large dose": func(i *Intake) { i.Dose = units.PerMille },
		"no body": func(i *Intake) { i.Body = 0 }, "a whale": func(i *Intake) { i.Body = units.Tonne }, "no meal": func(i *Intake) { i.Meal = 0 }, "a feast": func(i *Intake) { i.Meal = 3 * units.Kilogram },
	} {
		bad := good
		by(&bad)
		_, err := bad.Meals(7 * day)
		require.ErrorIs(t, err, units.ErrRange, name)
		_, err = Advise(units.State(Advisory{Meals: 1, Period: 7 * day}), bad)
		require.ErrorIs(t, err, units.ErrRange, name)
	}
	for _, period := range []time.Duration{0, -day, day - 1, 4000 * day, math.MaxInt64} {
		_, err := good.Meals(period)
		require.ErrorIs(t, err, units.ErrRange)
	}
	for _, meals := range []int{0, -1, 10_001, math.MaxInt32} {
		_, err := good.Edge(meals, 7*day)
		require.ErrorIs(t, err, units.ErrRange)
	}
	for _, local := range []Advisory{{Meals: -1, Period: 7 * day}, {Meals: 1}, {Meals: 1, Period: -day}} {
		_, err := Advise(units.State(local), good)
		require.ErrorIs(t, err, units.ErrRange)
	}
}

// The local advisory rules whatever is worked out, and without one it is the published advice for such fish.
func TestAdvise(t *testing.T) {
	i := Intake{Concentration: units.PartsPerMillion / 2, Dose: units.PartsPerBillion / 10, Body: 70 * units.Kilogram, Meal: 227 * units.Gram}
	month := 30 * day // the arithmetic gives 210 µg by 113.5 µg a meal: 1
	for name, c := range map[string]struct {
		local  units.Stated[Advisory]
		meals  int
		period time.Duration
		warned int
	}{
		"fewer than worked out":  {units.State(Advisory{0, month}), 0, month, 2},
		"as worked out":          {units.State(Advisory{1, month}), 1, month, 1},
		"more than worked out":   {units.State(Advisory{4, month}), 4, month, 2},
		"no advisory looked up":  {units.Stated[Advisory]{}, 1, 7 * day, 3},
		"do not eat, for a year": {units.State(Advisory{0, 365 * day}), 0, 365 * day, 2},
		"do not eat":             {units.State(Advisory{}), 0, 365 * day, 2},
	} {
		a, err := Advise(c.local, i)
		require.NoError(t, err, name)
		require.Equal(t, []any{c.meals, c.period}, []any{a.Meals, a.Period}, name)
		require.Len(t, a.Cautions, c.warned, name)
		require.NoError(t, a.Citation.Check(), name)
	}
}
