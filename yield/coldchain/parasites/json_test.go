package parasites_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain/internal/logged"
	"example.org/lakelarder/yield/coldchain/parasites"
)

func TestWords(t *testing.T) {
	logged.Words(t, parasites.FromCore, parasites.ParseClock)
	logged.Words(t, parasites.Refused, parasites.ParseStanding)
	logged.Words(t, parasites.OrHeat, parasites.ParseStep)
	for s := parasites.UseSoon; s <= parasites.OrHeat; s++ {
		require.NotEmpty(t, s.Text(units.US))
	}
	require.Empty(t, parasites.Step(9).Text(units.US))
}

// Every rule has a name of its own.
func TestRuleNames(t *testing.T) {
	seen := map[verdict.Rule]bool{"": true}
	for _, r := range parasites.Rules() {
		require.False(t, seen[r.ID], string(r.ID))
		seen[r.ID] = true
	}
}

// The findings are those of the deciding rules that decide, and say what would be enough.
func TestFindings(t *testing.T) {
	for name, c := range map[string]struct {
		plan parasites.Plan
		kind verdict.Kind
		n    int
	}{
		"too warm":  {parasites.Plan{Freezer: units.Fahrenheit(0), Stored: 500 * time.Hour}, verdict.TooWarm, 3},
		"too short": {parasites.Plan{Freezer: units.Celsius(-36), Stored: time.Hour}, verdict.Short, 3},
		"no probe":  {parasites.Plan{Freezer: units.Celsius(-36), Stored: 25 * time.Hour}, verdict.Missing, 2},
		"met":       {parasites.Plan{Freezer: units.Celsius(-20), Stored: 168 * time.Hour}, 0, 0},
	} {
		r, err := parasites.Check(c.plan)
		require.NoError(t, err)
		require.Len(t, r.Findings, c.n, name)
		require.Equal(t, c.n == 0, r.Verdict.Passes(), name)
		for _, f := range r.Findings {
			require.Equal(t, c.kind, f.Kind, name)
			require.Equal(t, r.Verdict, f.Verdict, name)
			require.NoError(t, f.Citation.Check())
		}
		logged.Back(t, r)
		logged.Back(t, c.plan)
	}
}

func TestRecordsComeBack(t *testing.T) {
	for _, pairs := range [][]float64{{0, -18, 500, -18}, {0, -25, 1, -25, 169, -25, 170, -25}, {0, 4, 1, 70, 1.01, 70}} {
		r, err := parasites.Audit(coreOf(t, pairs...), time.Hour)
		require.NoError(t, err)
		logged.Back(t, r)
		for _, f := range r.Findings {
			require.NotEmpty(t, f.Text(units.Both))
		}
	}
}

func TestPlanJSONRefuses(t *testing.T) {
	logged.Unreadable(t, parasites.Plan{Freezer: units.Celsius(-20)}, map[string]string{
		`{"stored": "168 h"}`:                                           "freezer",
		`{"freezer": "-20 °C"}`:                                         "stored",
		`{"freezer": "-20", "stored": "168 h"}`:                         "freezer",
		`{"freezer": -20, "stored": "168 h"}`:                           "freezer",
		`{"freezer": null, "stored": "168 h"}`:                          "freezer",
		`{"freezer": "-20 °C", "stored": "168 h", "days": 7}`:           "days",
		`{"freezer": "-20 °C", "stored": "168 h", "core": "-20 C°"}`:    "core",
		`{"freezer": "-20 °C", "freezer": "-30 °C", "stored": "168 h"}`: "freezer",
	})
}

func TestGolden(t *testing.T) {
	r, err := parasites.Check(parasites.Plan{Freezer: units.Fahrenheit(0), Stored: 14 * 24 * time.Hour})
	require.NoError(t, err)
	logged.Golden(t, "parasites-report", r)
	logged.Golden(t, "parasites-plan", parasites.Plan{Freezer: units.Fahrenheit(-10), Stored: 168 * time.Hour, Thickness: units.State(2 * units.Inch)})
}
