package brine

import (
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// weighing is a row of the print in comparable form.
type weighing struct {
	Name   string
	Volume units.Volume
	Mass   units.Mass
	Source string
	Where  string
	Basis  string
}

func TestWeighingsAreThePrintedOnes(t *testing.T) {
	var want, got []weighing
	for _, r := range printed.Table(t, "brine/weighings.csv") {
		v, err := units.ParseVolume(r.Text("measure"))
		require.NoError(t, err)
		m, err := units.Of(r.Decimal("weight_g"), units.Gram)
		require.NoError(t, err)
		printed.Within(t, r, "volume_ml", units.In(v, units.Millilitre, 6))
		want = append(want, weighing{r.Text("ingredient"), v, m, r.Text("source"), r.Text("place"), r.Text("basis")})
	}
	for _, w := range Weighings() {
		got = append(got, weighing{w.Name, w.Volume, w.Mass, w.Citation.Source.Key(), w.Citation.Where, w.Citation.Basis.String()})
		require.NoError(t, w.Citation.Check())
		_, err := w.Density()
		require.NoError(t, err)
	}
	require.Empty(t, cmp.Diff(want, got))
}

// The print disagrees with itself; this says which row is used, and that it is the safe one for salt.
func TestOneWeighingInUsePerName(t *testing.T) {
	seen := map[string]bool{}
	for _, used := range Ingredients() {
		require.False(t, seen[used.Name], "%s twice", used.Name)
		seen[used.Name] = true
		found, err := FindIngredient("  " + used.Name + " ")
		require.NoError(t, err)
		require.Equal(t, used, found)
		if used.Substance == Sugar {
			require.Equal(t, units.Cup, used.Volume, used.Name)
		}
	}
	for _, w := range Weighings() {
		require.True(t, seen[w.Name])
		if w.Substance != Salt {
			continue
		}
		used, err := FindIngredient(w.Name)
		require.NoError(t, err)
		d, err := used.Density()
		require.NoError(t, err)
		other, err := w.Density()
		require.NoError(t, err)
		require.LessOrEqual(t, d, other, "the lightest row of %s", w.Name)
	}
	salt, err := FindIngredient("Table Salt")
	require.NoError(t, err)
	cup, err := salt.MassOf(units.Cup)
	require.NoError(t, err)
	require.Equal(t, 288*units.Gram, cup, "48 teaspoons")
}

// Every salt but table salt is refused; the message shows by how much they differ.
func TestSaltsWithoutAWeightAreRefused(t *testing.T) {
	rows := printed.Table(t, "brine/salt-weighings.csv")
	low, high := rows[0], rows[0]
	for _, r := range rows {
		_, err := FindIngredient(r.Text("salt"))
		require.ErrorIs(t, err, units.ErrUnknown, r.Text("salt"))
		require.Equal(t, "1/4 cup", r.Text("measure"))
		if r.Decimal("weight_g").LessThan(low.Decimal("weight_g")) {
			low = r
		}
		if r.Decimal("weight_g").GreaterThan(high.Decimal("weight_g")) {
			high = r
		}
	}
	require.Contains(t, weighIt.Text, "seven salts weighed from "+low.Text("weight_g")+" g to "+high.Text("weight_g")+" g")
	require.Len(t, rows, 7)
	require.True(t, high.Decimal("weight_g").GreaterThan(low.Decimal("weight_g").Mul(decimal.NewFromInt(2))), "more than twofold")
	require.Equal(t, cite.KindUnofficial, spreadCitation.Source.Document().Kind)

	for _, name := range []string{"", "salt", "kosher salt", "pickling salt", "brown sugar", "sugar", "table  salt", "maple syrup"} {
		_, err := FindIngredient(name)
		var unknown units.UnknownError
		require.ErrorAs(t, err, &unknown)
		require.Equal(t, name, unknown.Got)
		require.Len(t, unknown.Known, len(Ingredients()))
		require.NotErrorIs(t, err, units.ErrRange)
	}
}

func TestWeighingsAreTheCallersOwn(t *testing.T) {
	Weighings()[0].Mass = 0
	Ingredients()[0].Mass = 0
	require.Equal(t, 6*units.Gram, Weighings()[0].Mass)
	require.Equal(t, 6*units.Gram, Ingredients()[0].Mass)
}
