package coldchain_test

import (
	"testing"
	"time"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain"
	"example.org/lakelarder/yield/coldchain/internal/chain"
	"example.org/lakelarder/yield/coldchain/internal/logged"
	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"
)

// Both ways; a superseded row must not come out. Sources: see the rows.
func TestLandingRules(t *testing.T) {
	rules := map[string]coldchain.LandingRule{}
	for _, rule := range coldchain.LandingRules() {
		require.NoError(t, rule.Citation.Check())
		rules[rule.Printed] = rule
	}
	for _, r := range printed.Table(t, "coldchain/landing.csv") {
		rule, ok := rules[r.Text("printed")]
		if use := r.Text("use"); use == "superseded" || use == "left out" {
			require.False(t, ok, r.String())
			continue
		}
		require.True(t, ok, r.String())
		delete(rules, r.Text("printed"))
		want := coldchain.LandingRule{
			Demand: rule.Demand, Printed: r.Text("printed"), AtMost: logged.Fahrenheit(t, r, "at_most_f"), WarmerThan: logged.Fahrenheit(t, r, "warmer_than_f"),
			IfGutted: r.Has("if_gutted"), ThenIce: r.Has("then_ice"), For: rule.For, Yardstick: r.Text("use") == "yardstick", Citation: rule.Citation,
		}
		if r.Has("within_h") {
			want.Within = logged.Hours(t, r, "within_h")
		}
		if r.Has("at_most_c") {
			want.AtMost = logged.Celsius(t, r, "at_most_c")
		}
		if r.Has("warmer_than_c") {
			want.WarmerThan = logged.Celsius(t, r, "warmer_than_c")
		}
		require.Empty(t, cmp.Diff(want, rule))
		require.Equal(t, r.Text("demand"), rule.Demand.String())
		require.Equal(t, logged.Provenance(r), logged.ProvenanceOf(rule.Citation))
	}
	require.Empty(t, rules, "every rule is printed")
}

func TestCheckLanding(t *testing.T) {
	of := func(d time.Duration) units.Stated[time.Duration] { return units.State(d) }
	ice, cool := units.Celsius(0), units.Celsius(14)
	for name, c := range map[string]struct {
		landing            coldchain.Landing
		verdict, yardstick coldchain.Verdict
	}{
		"in time":                       {coldchain.Landing{Gutted: of(2 * time.Hour), Iced: of(2 * time.Hour), Medium: ice, Warmest: cool}, coldchain.Within, coldchain.Within},
		"gutted late":                   {coldchain.Landing{Gutted: of(2*time.Hour + 1), Iced: of(time.Hour), Medium: ice, Warmest: cool, ForCanning: true}, coldchain.Exceeded, coldchain.Within},
		"not gutted":                    {coldchain.Landing{Iced: of(time.Hour), Medium: ice, Warmest: cool}, coldchain.CannotTell, coldchain.Within},
		"nothing known":                 {coldchain.Landing{}, coldchain.CannotTell, coldchain.CannotTell},
		"gutted and never iced":         {coldchain.Landing{Gutted: of(time.Hour), Medium: ice, Warmest: cool, ForCanning: true}, coldchain.CannotTell, coldchain.CannotTell},
		"iced just too late":            {coldchain.Landing{Gutted: of(time.Hour), Iced: of(2*time.Hour + 1), Medium: ice, Warmest: cool, ForCanning: true}, coldchain.Exceeded, coldchain.Within},
		"iced after a week":             {coldchain.Landing{Gutted: of(time.Hour), Iced: of(7 * chain.Day), Medium: ice, Warmest: cool}, coldchain.Exceeded, coldchain.Exceeded},
		"iced after 9 h":                {coldchain.Landing{Gutted: of(time.Hour), Iced: of(9 * time.Hour), Medium: ice, Warmest: cool}, coldchain.Exceeded, coldchain.Within},
		"iced after more than 9 h":      {coldchain.Landing{Gutted: of(time.Hour), Iced: of(9*time.Hour + 1), Medium: ice, Warmest: cool}, coldchain.Exceeded, coldchain.Exceeded},
		"hot, iced after 6 h":           {coldchain.Landing{Gutted: of(time.Hour), Iced: of(6 * time.Hour), Medium: ice, Warmest: units.Celsius(30)}, coldchain.Exceeded, coldchain.Within},
		"hot, iced after more than 6 h": {coldchain.Landing{Gutted: of(time.Hour), Iced: of(6*time.Hour + 1), Medium: ice, Warmest: units.Celsius(30)}, coldchain.Exceeded, coldchain.Exceeded},
		"heat unknown counts as hot":    {coldchain.Landing{Gutted: of(time.Hour), Iced: of(7 * time.Hour), Medium: ice}, coldchain.Exceeded, coldchain.Exceeded},
		"exactly 28 °C is not above":    {coldchain.Landing{Gutted: of(time.Hour), Iced: of(7 * time.Hour), Medium: ice, Warmest: units.Celsius(28)}, coldchain.Exceeded, coldchain.Within},
		"medium unknown":                {coldchain.Landing{Gutted: of(time.Hour), Iced: of(time.Hour), Warmest: cool}, coldchain.CannotTell, coldchain.CannotTell},
		"medium at 40 °F":               {coldchain.Landing{Gutted: of(time.Hour), Iced: of(time.Hour), Medium: units.Fahrenheit(40), Warmest: cool}, coldchain.Within, coldchain.Within},
		"medium too warm":               {coldchain.Landing{Gutted: of(time.Hour), Iced: of(time.Hour), Medium: units.Fahrenheit(40).Add(1), Warmest: cool}, coldchain.Exceeded, coldchain.Exceeded},
		"for smoking":                   {coldchain.Landing{Gutted: of(time.Hour), Iced: of(time.Hour), Medium: units.Fahrenheit(38), Warmest: cool, ForSmoking: true}, coldchain.Within, coldchain.Within},
		"for smoking, too warm":         {coldchain.Landing{Gutted: of(time.Hour), Iced: of(time.Hour), Medium: units.Fahrenheit(39), Warmest: cool, ForSmoking: true}, coldchain.Exceeded, coldchain.Within},
		"for smoking, not gutted":       {coldchain.Landing{Iced: of(time.Hour), Medium: ice, Warmest: cool, ForSmoking: true}, coldchain.CannotTell, coldchain.Within},
		"for smoking, never iced":       {coldchain.Landing{Gutted: of(time.Hour), Medium: ice, Warmest: cool, ForSmoking: true}, coldchain.CannotTell, coldchain.CannotTell},
	} {
		r, err := coldchain.CheckLanding(c.landing)
		require.NoError(t, err, name)
		require.Equal(t, c.verdict, r.Verdict, name)
		require.Equal(t, c.yardstick, r.Yardstick, name)
		require.Contains(t, r.Cautions, coldchain.HistamineCautions()[0])
		require.Equal(t, c.landing.ForCanning && c.verdict != coldchain.Within, len(r.Cautions) == 2, name)
	}
}

// A cold medium that the fish was never laid into does not chill it.
func TestSmokingAsksForColdFish(t *testing.T) {
	r, err := coldchain.CheckLanding(coldchain.Landing{Gutted: units.State(time.Hour), Medium: units.Celsius(0), ForSmoking: true})
	require.NoError(t, err)
	found := false
	for _, line := range r.Lines {
		if line.Rule.Demand == coldchain.Gutted {
			found = true
			require.Equal(t, coldchain.CannotTell, line.Verdict)
		}
	}
	require.True(t, found)
}

// Later, warmer or not stated is never better.
func TestLandingSafeDirection(t *testing.T) {
	rank := map[coldchain.Verdict]int{coldchain.Within: 0, coldchain.CannotTell: 1, coldchain.Exceeded: 2}
	check := func(l coldchain.Landing) [2]int {
		r, err := coldchain.CheckLanding(l)
		require.NoError(t, err)
		return [2]int{rank[r.Verdict], rank[r.Yardstick]}
	}
	for _, gutted := range []time.Duration{0, 2 * time.Hour, 3 * time.Hour} {
		for _, iced := range []time.Duration{0, 6 * time.Hour, 9 * time.Hour, 12 * time.Hour} {
			for _, warmest := range []float64{5, 28, 28.3, 40} {
				for _, medium := range []float64{0, 3.3, 4.4, 9} {
					l := coldchain.Landing{Gutted: units.State(gutted), Iced: units.State(iced), Warmest: units.Celsius(warmest), Medium: units.Celsius(medium), ForSmoking: true}
					base := check(l)
					for _, worse := range []func(*coldchain.Landing){
						func(l *coldchain.Landing) { l.Gutted.Value++ }, func(l *coldchain.Landing) { l.Iced.Value++ }, func(l *coldchain.Landing) { l.Warmest = units.Celsius(50) },
						func(l *coldchain.Landing) { l.Warmest = units.Temperature{} }, func(l *coldchain.Landing) { l.Medium = l.Medium.Add(units.CelsiusDegrees) },
					} {
						changed := l
						worse(&changed)
						after := check(changed)
						require.GreaterOrEqual(t, after[0], base[0])
						require.GreaterOrEqual(t, after[1], base[1])
					}
					l.Iced = units.Stated[time.Duration]{}
					require.NotContains(t, check(l), rank[coldchain.Within], "never iced")
				}
			}
		}
	}
}

func TestLandingRefuses(t *testing.T) {
	for name, l := range map[string]coldchain.Landing{
		"gutted before the catch": {Gutted: units.State(-time.Hour)},
		"gutted after a month":    {Gutted: units.State(30 * chain.Day)},
		"iced before death":       {Iced: units.State(-time.Hour)},
		"iced after a month":      {Iced: units.State(30 * chain.Day)},
		"frozen":                  {Medium: units.Celsius(-18)},
		"a warm bath":             {Medium: units.Celsius(16)},
		"winter":                  {Warmest: units.Celsius(-6)},
		"fire":                    {Warmest: units.Celsius(51)},
	} {
		_, err := coldchain.CheckLanding(l)
		require.ErrorIs(t, err, units.ErrRange, name)
	}
	require.Equal(t, "no demand", coldchain.LandingDemand(0).String())
	require.Equal(t, "unknown demand", coldchain.LandingDemand(9).String())
}

// Both ways. Sources: see the rows.
func TestHistamineFigures(t *testing.T) {
	figures := coldchain.HistamineFigures()
	rows := printed.Table(t, "coldchain/histamine.csv")
	require.Len(t, figures, len(rows))
	for i, r := range rows {
		want := coldchain.HistamineFigure{What: r.Text("what"), Fish: r.Text("fish"), Citation: figures[i].Citation}
		for col, to := range map[string]*units.Ratio{"low_mg_kg": &want.Low, "high_mg_kg": &want.High} {
			if r.Has(col) {
				*to = logged.Quantity(t, r, col, units.PartsPerMillion)
			}
		}
		if r.Has("samples") {
			want.Positive, want.Samples = int(r.Int("positive")), int(r.Int("samples"))
		}
		require.Equal(t, want, figures[i])
		require.Equal(t, logged.Provenance(r), logged.ProvenanceOf(figures[i].Citation))
		require.NoError(t, figures[i].Citation.Check())
	}
	for _, c := range coldchain.HistamineCautions() {
		require.NoError(t, c.Citation.Check())
	}
}
