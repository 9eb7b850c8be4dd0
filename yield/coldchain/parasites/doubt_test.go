package parasites_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain/parasites"
)

// What contradicts physics is never a pass, and what is honest keeps its verdict.
func TestNothingImpossibleIsMet(t *testing.T) {
	day, minute := 24*time.Hour, time.Minute
	plan := func(change func(*parasites.Plan)) parasites.Plan {
		p := parasites.Plan{Freezer: units.Celsius(-23), Stored: 10 * day, Through: units.State(day), Core: units.Celsius(-20)}
		change(&p)
		return p
	}
	for name, c := range map[string]struct {
		plan parasites.Plan
		want verdict.Verdict
	}{
		"as planned":                     {plan(func(*parasites.Plan) {}), verdict.Met},
		"a core as cold as its freezer":  {plan(func(p *parasites.Plan) { p.Core = units.Celsius(-23) }), verdict.Met},
		"a freezer that swings by 6 K":   {plan(func(p *parasites.Plan) { p.Core = units.Celsius(-29) }), verdict.Met},
		"a core colder than its freezer": {plan(func(p *parasites.Plan) { p.Core = units.Celsius(-29.1) }), verdict.CannotTell},
		"frozen through in no time":      {plan(func(p *parasites.Plan) { p.Through = units.State(time.Duration(0)) }), verdict.CannotTell},
		"half an inch in half a minute":  {plan(func(p *parasites.Plan) { p.Through = units.State(30 * time.Second) }), verdict.CannotTell},
		"half an inch in a minute":       {plan(func(p *parasites.Plan) { p.Through = units.State(minute) }), verdict.Met},
		"four inches in half an hour":    {plan(func(p *parasites.Plan) { p.Through, p.Thickness = units.State(30*minute), units.State(4*units.Inch) }), verdict.CannotTell},
		"four inches in three hours":     {plan(func(p *parasites.Plan) { p.Through, p.Thickness = units.State(3*time.Hour), units.State(4*units.Inch) }), verdict.Met},
		"thicker than the rule is for": {plan(func(p *parasites.Plan) {
			p.Thickness, p.Through = units.State(7*units.Inch), units.Stated[time.Duration]{}
		}), verdict.CannotTell},
		"too warm, and a core that cannot": {plan(func(p *parasites.Plan) { p.Freezer, p.Core = units.Celsius(-18), units.Celsius(-30) }), verdict.NotMet},
		"too short, and frozen in no time": {plan(func(p *parasites.Plan) { p.Stored, p.Through = 2*day, units.State(time.Duration(0)) }), verdict.NotMet},
	} {
		r, err := parasites.Check(c.plan)
		require.NoError(t, err, name)
		require.Equal(t, c.want, r.Verdict, "%s: %v", name, r.Findings)
		if c.want == verdict.CannotTell && c.plan.Through.Given {
			require.Equal(t, parasites.RuleBelieved, r.Findings[0].Rule, name)
			require.Equal(t, verdict.Impossible, r.Findings[0].Kind, name)
		}
	}
	for name, bad := range map[string]parasites.Plan{
		"a thickness of 4":      plan(func(p *parasites.Plan) { p.Thickness = units.State[units.Length](4) }),
		"stored for 7":          plan(func(p *parasites.Plan) { p.Stored, p.Through = 7, units.Stated[time.Duration]{} }),
		"frozen through in 200": plan(func(p *parasites.Plan) { p.Through = units.State[time.Duration](200) }),
	} {
		_, err := parasites.Check(bad)
		require.ErrorIs(t, err, units.ErrRange, name)
	}
}

// A broken probe is a gap, not the coldest freezer.
func TestDropoutsAreNoCold(t *testing.T) {
	record := func(change func(hour int) (units.Temperature, bool)) series.Series[units.Temperature] {
		var all []series.Reading[units.Temperature]
		for h := 0; h <= 200; h++ {
			v := units.Celsius(-22)
			if other, ok := change(h); ok {
				v = other
			}
			all = append(all, series.Reading[units.Temperature]{At: time.Duration(h) * time.Hour, Value: v})
		}
		s, err := series.New(all)
		require.NoError(t, err)
		return s
	}
	for name, c := range map[string]struct {
		change func(int) (units.Temperature, bool)
		want   verdict.Verdict
	}{
		"cold":                        {func(int) (units.Temperature, bool) { return units.Temperature{}, false }, verdict.Met},
		"one dropout":                 {func(h int) (units.Temperature, bool) { return units.Celsius(-127), h == 90 }, verdict.Met},
		"open for a day":              {func(h int) (units.Temperature, bool) { return units.Celsius(-127), h > 90 && h < 115 }, verdict.CannotTell},
		"overflow for a day":          {func(h int) (units.Temperature, bool) { return units.Celsius(32767), h > 90 && h < 115 }, verdict.CannotTell},
		"open until the last ten":     {func(h int) (units.Temperature, bool) { return units.Celsius(-127), h < 190 }, verdict.NotMet},
		"begins with 85 °C":           {func(h int) (units.Temperature, bool) { return units.Celsius(85), h == 0 }, verdict.Met},
		"warm, and open in the night": {func(h int) (units.Temperature, bool) { return units.Celsius(-5), h%24 < 12 }, verdict.NotMet},
	} {
		r, err := parasites.Audit(record(c.change), 3*time.Hour)
		require.NoError(t, err, name)
		require.Equal(t, c.want, r.Verdict, "%s: %v", name, r.Findings)
	}
	_, err := parasites.Audit(record(func(h int) (units.Temperature, bool) { return units.Celsius(-127), h > 0 }), 3*time.Hour)
	require.ErrorIs(t, err, units.ErrRange)
}
