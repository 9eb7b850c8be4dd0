package coldchain_test

import (
	"testing"
	"time"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
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
			ID:     rule.ID,
			Demand: rule.Demand, Printed: r.Text("printed"), AtMost: logged.Fahrenheit(t, r, "at_most_f"), WarmerThan: logged.Fahrenheit(t, r, "warmer_than_f"),
			NotWarmerThan: logged.Fahrenheit(t, r, "not_warmer_than_f"),
			IfGutted:      r.Has("if_gutted"), ThenIce: r.Has("then_ice"), For: rule.For, Yardstick: r.Text("use") == "yardstick", Citation: rule.Citation,
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
	seen := map[verdict.Rule]bool{"": true}
	for _, rule := range coldchain.LandingRules() {
		require.False(t, seen[rule.ID], string(rule.ID))
		seen[rule.ID] = true
	}
}

func TestCheckLanding(t *testing.T) {
	of := func(d time.Duration) units.Stated[time.Duration] { return units.State(d) }
	ice, cool := units.Celsius(0), units.Celsius(14)
	for name, c := range map[string]struct {
		landing            coldchain.Landing
		verdict, yardstick verdict.Verdict
	}{
		"in time":                       {coldchain.Landing{Gutted: of(2 * time.Hour), Iced: of(2 * time.Hour), Medium: ice, Warmest: cool}, verdict.Met, verdict.Met},
		"gutted late":                   {coldchain.Landing{Gutted: of(2*time.Hour + 1), Iced: of(time.Hour), Medium: ice, Warmest: cool, ForCanning: true}, verdict.NotMet, verdict.Met},
		"not gutted":                    {coldchain.Landing{Iced: of(time.Hour), Medium: ice, Warmest: cool}, verdict.CannotTell, verdict.Met},
		"nothing known":                 {coldchain.Landing{}, verdict.CannotTell, verdict.CannotTell},
		"gutted and never iced":         {coldchain.Landing{Gutted: of(time.Hour), Medium: ice, Warmest: cool, ForCanning: true}, verdict.CannotTell, verdict.CannotTell},
		"iced just too late":            {coldchain.Landing{Gutted: of(time.Hour), Iced: of(2*time.Hour + 1), Medium: ice, Warmest: cool, ForCanning: true}, verdict.NotMet, verdict.Met},
		"iced after a week":             {coldchain.Landing{Gutted: of(time.Hour), Iced: of(7 * chain.Day), Medium: ice, Warmest: cool}, verdict.NotMet, verdict.NotMet},
		"iced after 9 h":                {coldchain.Landing{Gutted: of(time.Hour), Iced: of(9 * time.Hour), Medium: ice, Warmest: cool}, verdict.NotMet, verdict.Met},
		"iced after more than 9 h":      {coldchain.Landing{Gutted: of(time.Hour), Iced: of(9*time.Hour + 1), Medium: ice, Warmest: cool}, verdict.NotMet, verdict.NotMet},
		"hot, iced after 6 h":           {coldchain.Landing{Gutted: of(time.Hour), Iced: of(6 * time.Hour), Medium: ice, Warmest: units.Celsius(30)}, verdict.NotMet, verdict.Met},
		"hot, iced after more than 6 h": {coldchain.Landing{Gutted: of(time.Hour), Iced: of(6*time.Hour + 1), Medium: ice, Warmest: units.Celsius(30)}, verdict.NotMet, verdict.NotMet},
		"heat unknown counts as hot":    {coldchain.Landing{Gutted: of(time.Hour), Iced: of(7 * time.Hour), Medium: ice}, verdict.NotMet, verdict.NotMet},
		"exactly 28 °C is not above":    {coldchain.Landing{Gutted: of(time.Hour), Iced: of(7 * time.Hour), Medium: ice, Warmest: units.Celsius(28)}, verdict.NotMet, verdict.Met},
		"medium unknown":                {coldchain.Landing{Gutted: of(time.Hour), Iced: of(time.Hour), Warmest: cool}, verdict.CannotTell, verdict.CannotTell},
		"medium at 40 °F":               {coldchain.Landing{Gutted: of(time.Hour), Iced: of(time.Hour), Medium: units.Fahrenheit(40), Warmest: cool}, verdict.Met, verdict.Met},
		"medium too warm":               {coldchain.Landing{Gutted: of(time.Hour), Iced: of(time.Hour), Medium: units.Fahrenheit(40).Add(1), Warmest: cool}, verdict.NotMet, verdict.NotMet},
		"for smoking":                   {coldchain.Landing{Gutted: of(time.Hour), Iced: of(time.Hour), Medium: units.Fahrenheit(38), Warmest: cool, ForSmoking: true}, verdict.Met, verdict.Met},
		"for smoking, too warm":         {coldchain.Landing{Gutted: of(time.Hour), Iced: of(time.Hour), Medium: units.Fahrenheit(39), Warmest: cool, ForSmoking: true}, verdict.NotMet, verdict.Met},
		"for smoking, not gutted":       {coldchain.Landing{Iced: of(time.Hour), Medium: ice, Warmest: cool, ForSmoking: true}, verdict.CannotTell, verdict.Met},
		"for smoking, never iced":       {coldchain.Landing{Gutted: of(time.Hour), Medium: ice, Warmest: cool, ForSmoking: true}, verdict.CannotTell, verdict.CannotTell},
	} {
		r, err := coldchain.CheckLanding(c.landing)
		require.NoError(t, err, name)
		require.Equal(t, c.verdict, r.Verdict, name)
		require.Equal(t, c.yardstick, r.Yardstick.Verdict, name)
		var ids []cite.CautionID
		for _, c := range r.Cautions {
			ids = append(ids, c.ID)
			require.NoError(t, c.Citation.Check())
		}
		require.Contains(t, ids, cite.CautionID("coldchain.histamine-never-none"))
		require.Equal(t, c.landing.ForCanning && c.verdict != verdict.Met, ids[0] == "coldchain.gutted-late", name)
		logged.Back(t, r)
		logged.Back(t, c.landing)
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
			require.Equal(t, verdict.CannotTell, line.Verdict)
		}
	}
	require.True(t, found)
}

// Later, warmer or not stated is never better.
func TestLandingSafeDirection(t *testing.T) {
	rank := map[verdict.Verdict]int{verdict.Met: 0, verdict.CannotTell: 1, verdict.NotMet: 2}
	check := func(l coldchain.Landing) [2]int {
		r, err := coldchain.CheckLanding(l)
		require.NoError(t, err)
		return [2]int{rank[r.Verdict], rank[r.Yardstick.Verdict]}
	}
	for _, gutted := range []time.Duration{0, 2 * time.Hour, 3 * time.Hour} {
		for _, iced := range []time.Duration{0, 6 * time.Hour, 9 * time.Hour, 12 * time.Hour} {
			for _, warmest := range []float64{5, 28, 28.3, 40} {
				for _, medium := range []float64{0, 3.3, 4.4, 9} {
					l := coldchain.Landing{Gutted: units.State(gutted), Iced: units.State(iced), Warmest: units.Celsius(warmest), Medium: units.Celsius(medium), ForSmoking: true}
					base := check(l)
					for _, worse := range []func(*coldchain.Landing){
						func(l *coldchain.Landing) { l.Gutted.Value += time.Second }, func(l *coldchain.Landing) { l.Iced.Value += time.Second }, func(l *coldchain.Landing) { l.Warmest = units.Celsius(50) },
						func(l *coldchain.Landing) { l.Warmest = units.Temperature{} }, func(l *coldchain.Landing) { l.Medium = l.Medium.Add(units.CelsiusDegrees) },
					} {
						changed := l
						worse(&changed)
						after := check(changed)
						require.GreaterOrEqual(t, after[0], base[0])
						require.GreaterOrEqual(t, after[1], base[1])
					}
					l.Iced = units.Stated[time.Duration]{}
					require.NotContains(t, check(l), rank[verdict.Met], "never iced")
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
		logged.Refused(t, err, name)
	}
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
}
