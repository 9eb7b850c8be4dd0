package brine

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
)

// judged reads a row of figures with all that a claim can state, and judges it, against a limit where the row names one.
func judged(t *testing.T, r printed.Row) Assessment {
	t.Helper()
	c := claim(t, r)
	if r.Has("pack") {
		var err error
		c.Pack, err = ParsePack(r.Text("pack"))
		require.NoError(t, err)
	}
	c.Ungutted, c.UsedBrine, c.MixedLoad = r.Text("ungutted") == "yes", r.Text("used_brine") == "yes", r.Text("mixed") == "yes"
	var a Assessment
	var err error
	if r.Has("against") {
		a, err = CheckAgainst(c, SaltLimitID(r.Text("against")))
	} else {
		a, err = Check(c)
	}
	require.NoError(t, err)
	return a
}

// requireJudged holds an assessment against the verdict and the findings of its row, and returns its kinds.
func requireJudged(t *testing.T, r printed.Row, a Assessment) []verdict.Kind {
	t.Helper()
	var found []string
	var kinds []verdict.Kind
	for _, f := range a.Findings {
		found = append(found, strings.TrimSpace(f.What+" "+f.Kind.String()+" "+f.By.Text(units.US, units.Up)))
		kinds = append(kinds, f.Kind)
	}
	require.Equal(t, r.Text("verdict")+": "+r.Text("findings"), a.Verdict.String()+": "+strings.Join(found, "; "), "%v", a.Findings)
	return kinds
}

// What is printed meets its own rule, in either scale.
func TestRecipesAsPrinted(t *testing.T) {
	printed.Table(t, "brine/recipes.csv").Each(t, func(t *testing.T, r printed.Row) {
		require.Empty(t, requireJudged(t, r, judged(t, r)))
		require.Equal(t, "met", r.Text("verdict"))
	})
}

// A figure less, a degree more or another pack, and it is no pass.
func TestUnsoundRecipes(t *testing.T) {
	rows := printed.Table(t, "brine/unsound.csv")
	require.GreaterOrEqual(t, len(rows), 15)
	rows.Each(t, func(t *testing.T, r printed.Row) {
		a := judged(t, r)
		require.NotContains(t, requireJudged(t, r, a), verdict.Impossible)
		require.False(t, a.Verdict.Passes())
	})
}

// What contradicts physics or itself is never believed, and nothing else cries wolf.
func TestImpossibleRecipes(t *testing.T) {
	rows := printed.Table(t, "brine/impossible.csv")
	require.GreaterOrEqual(t, len(rows), 15)
	rows.Each(t, func(t *testing.T, r printed.Row) {
		a := judged(t, r)
		require.Contains(t, requireJudged(t, r, a), verdict.Impossible)
		require.False(t, a.Verdict.Passes())
		for _, f := range a.Findings {
			require.NoError(t, f.Citation.Check(), f.String())
		}
	})
}

func TestHonestRecipes(t *testing.T) {
	rows := printed.Table(t, "brine/honest.csv")
	require.GreaterOrEqual(t, len(rows), 10)
	rows.Each(t, func(t *testing.T, r printed.Row) {
		a := judged(t, r)
		require.NotContains(t, requireJudged(t, r, a), verdict.Impossible)
		require.True(t, a.Verdict.Passes())
	})
}

// More than 20 times as much sugar as salt is doubted as DryCure refuses it, with the salt stated in any way.
func TestTooMuchSugarIsImpossible(t *testing.T) {
	kg, salt := units.State(units.Kilogram), 30*units.Gram
	for name, c := range map[string]Claim{
		"salt by weight":   {Fish: kg, Salt: units.State(salt)},
		"salt by dose":     {Fish: kg, SaltToFish: units.State(30 * units.PerMille)},
		"salt by strength": {Water: units.State(270 * units.Millilitre), Strength: units.State(10 * units.Percent)},
	} {
		for sugar, wrong := range map[units.Mass]bool{10 * units.Kilogram: true, 601 * units.Gram: true, 590 * units.Gram: false} {
			c.Sugar = units.State(sugar)
			a, err := Check(c)
			require.NoError(t, err, name)
			found := false
			for _, f := range a.Findings {
				found = found || f.Rule == RuleSugar && f.Kind == verdict.Impossible
			}
			require.Equal(t, wrong, found, "%s, %v: %v", name, sugar, a.Findings)
			require.False(t, wrong && a.Verdict.Passes(), name)
		}
	}
	a, err := Check(Claim{Fish: kg, Sugar: units.State(21 * units.Kilogram)})
	require.NoError(t, err)
	var rules []verdict.Rule
	for _, f := range a.Findings {
		rules = append(rules, f.Rule)
	}
	require.Contains(t, rules, RuleSugar)
	_, err = DryCure(units.Kilogram, 30*units.PerMille, Mix{Salt: 30, Sugar: 601})
	require.ErrorIs(t, err, units.ErrRange)
}
