package coldchain_test

import (
	"encoding/json"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain"
	"example.org/lakelarder/yield/coldchain/internal/logged"
)

// Every report survives being saved, and so do the terms that it was made by.
func TestReportsComeBack(t *testing.T) {
	for _, s := range logged.Histories(t, "coldchain/records/histories.csv") {
		for _, terms := range []coldchain.Terms{
			{MaxGap: logged.Longest}, {MaxGap: time.Second, Product: coldchain.RawFish}, {MaxGap: hour, HotAir: true},
			{MaxGap: logged.Longest, Rules: []coldchain.Rule{coldchain.TableA2}, Hazards: []coldchain.Hazard{coldchain.Listeria}},
		} {
			logged.Back(t, terms)
			r, err := coldchain.Audit(s, terms)
			require.NoError(t, err)
			logged.Back(t, r)
			for _, f := range r.Findings {
				require.NotEmpty(t, f.Rule)
				require.NotEmpty(t, f.Text(units.Metric))
			}
		}
	}
}

// A finding and its allowance have one name; every allowance that is not met has a finding, and a gap has one.
func TestFindingsNameTheirAllowances(t *testing.T) {
	s := logged.Record(t, logged.Flat(9*hour, 75), logged.Flat(2*hour, 60))
	r := exposed(t, s, coldchain.Terms{MaxGap: 9 * hour})
	found := map[verdict.Rule]verdict.Finding{}
	for _, f := range r.Findings {
		found[f.Rule] = f
		require.Equal(t, verdict.NotMet, f.Verdict)
		require.Equal(t, verdict.TooLong, f.Kind)
		require.Equal(t, s.Span(), f.When.Value.To)
	}
	for _, a := range r.Allowances {
		f, ok := found[a.ID]
		require.Equal(t, a.Verdict == verdict.NotMet, ok, a.ID)
		if ok {
			require.Equal(t, a.ExceededAt, f.When.Value.From)
			require.True(t, f.By.IsStated())
			require.NoError(t, f.Citation.Check())
		}
	}
	gap := exposed(t, s, coldchain.Terms{MaxGap: hour}).Findings
	require.Equal(t, coldchain.RuleRecorded, gap[len(gap)-1].Rule)
	require.Equal(t, verdict.CannotTell, gap[len(gap)-1].Verdict)
}

// A running record goes on after it was saved as if it had not been, at every reading.
func TestRunningComesBack(t *testing.T) {
	for _, terms := range []coldchain.Terms{
		{MaxGap: 5 * hour}, {MaxGap: hour, Product: coldchain.RawFish},
		{MaxGap: logged.Longest, Rules: []coldchain.Rule{coldchain.KitchenTwoHours, coldchain.KitchenTwoHours}, Reading: coldchain.Nested},
	} {
		for _, s := range logged.Histories(t, "coldchain/records/histories.csv") {
			live, err := coldchain.Watch(terms)
			require.NoError(t, err)
			saved := live
			for _, reading := range s.Readings() {
				text, err := json.Marshal(saved)
				require.NoError(t, err)
				var read coldchain.Running
				require.NoError(t, json.Unmarshal(text, &read), string(text))
				saved, err = read.Next(reading)
				require.NoError(t, err)
				live, err = live.Next(reading)
				require.NoError(t, err)
				require.Equal(t, live.AtThisRate(), saved.AtThisRate())
			}
			want, err := live.Report()
			require.NoError(t, err)
			got, err := saved.Report()
			require.NoError(t, err)
			require.Equal(t, want, got)
		}
	}
}

// What contradicts itself is not taken for a record.
func TestRunningRefusesWhatWasChanged(t *testing.T) {
	live := watching(t, coldchain.Terms{MaxGap: 2 * hour, Rules: []coldchain.Rule{coldchain.KitchenTwoHours}},
		series.Reading[units.Temperature]{Value: units.Fahrenheit(45)},
		series.Reading[units.Temperature]{At: 2 * hour, Value: units.Fahrenheit(45)},
		series.Reading[units.Temperature]{At: 3 * hour, Value: units.Fahrenheit(45)})
	good, err := json.Marshal(live)
	require.NoError(t, err)
	for name, change := range map[string][2]string{
		"more time":             {`"time":"3 h"`, `"time":"4 h"`},
		"less time":             {`"time":"3 h"`, `"time":"1 h"`},
		"no time":               {`"time":"3 h"`, `"time":"0 h"`},
		"other cell":            {`"high":"8 °C"`, `"high":"9 °C"`},
		"a limit of no rule":    {`"what":"coldchain.kitchen-two-hours"`, `"what":"coldchain.kitchen"`},
		"a limit lost too late": {`"at":"2 h"},{"what":"coldchain.kitchen-two-hours, limit 1"`, `"at":"9 h"},{"what":"coldchain.kitchen-two-hours, limit 1"`},
		"highest too low":       {`"highest":{"value":"45 °F"}`, `"highest":{"value":"44 °F"}`},
		"last before the first": {`"last":{"at":"3 h"`, `"last":{"at":"1 h"`},
		"no gap trusted":        {`"maxGap":"2 h",`, ``},
		"one reading":           {`"taken":3`, `"taken":1`},
		"none":                  {`"taken":3`, `"taken":0`},
		"fewer than none":       {`"taken":3`, `"taken":-3`},
		"unknown field":         {`"taken":3`, `"taken":3,"shown":1`},
		"loose probe":           {`"last":{"at":"3 h","value":"45 °F"}`, `"last":{"at":"3 h","value":"-127 °C"}`},
		"more seen":             {`"seen":3,`, `"seen":4,`},
		"dropouts":              {`"taken":3,`, `"taken":3,"dropouts":1,`},
		"same more than seen":   {`"same":2`, `"same":3`},
		"warmed unseen":         {`"same":2`, `"same":2,"blind":"1 h"`},
		"left out":              {`"lost":`, `"leftOut":"9 h","lost":`},
		"away":                  {`"taken":3,`, `"taken":3,"away":true,`},
		"ends before the last":  {`"end":"3 h"`, `"end":"2 h"`},
		"a gap from nowhere":    {`"longestGap":{"to":"2 h"}`, `"longestGap":{"to":"4 h"}`},
		"unknown time":          {`"longestGap":`, `"unknown":"1 h","longestGap":`},
		"nothing":               {string(good), `{}`},
		"null":                  {string(good), `null`},
	} {
		bad := strings.Replace(string(good), change[0], change[1], 1)
		require.NotEqual(t, string(good), bad, name)
		r := live
		require.Error(t, json.Unmarshal([]byte(bad), &r), name)
		require.Equal(t, live.AtThisRate(), r.AtThisRate(), "stays as it was")
	}
	_, err = json.Marshal(coldchain.Running{})
	require.ErrorIs(t, err, units.ErrUnset)
}

func TestTermsAndLandingRefuse(t *testing.T) {
	logged.Unreadable(t, coldchain.Terms{MaxGap: hour}, map[string]string{
		`{}`:                                       "maxGap",
		`{"maxGap": null}`:                         "maxGap",
		`{"maxGap": 3600}`:                         "maxGap",
		`{"maxGap": ""}`:                           "maxGap",
		`{"maxGap": "1 h", "maxGap": "2 h"}`:       "maxGap",
		`{"maxGap": "1 h", "product": "fish"}`:     "product",
		`{"maxGap": "1 h", "rules": ["A-2"]}`:      "rules[0]",
		`{"maxGap": "1 h", "fish": "raw"}`:         "fish",
		`{"maxGap": "1 h", "reading": 1}`:          "reading",
		`{"maxGap": "1 h", "hazards": "Listeria"}`: "hazards",
	})
	logged.Unreadable(t, coldchain.Landing{ForCanning: true}, map[string]string{
		`{"gutted": 2}`:                          "gutted",
		`{"gutted": null}`:                       "gutted",
		`{"iced": "2"}`:                          "iced",
		`{"medium": "4"}`:                        "medium",
		`{"forcanning": true}`:                   "forcanning",
		`{"forCanning": "yes"}`:                  "forCanning",
		`{"warmest": "5 °C", "warmest": "6 °C"}`: "warmest",
	})
}

func TestGolden(t *testing.T) {
	s := logged.Record(t, logged.Ramp(90*time.Minute, units.Celsius(14), units.Celsius(14)), logged.Ramp(5*hour, units.Celsius(14), units.Celsius(2)))
	r := exposed(t, s, coldchain.Terms{MaxGap: 6 * hour, Product: coldchain.RawFish, Hazards: []coldchain.Hazard{coldchain.Listeria}})
	logged.Golden(t, "coldchain-report", r)
	l, err := coldchain.CheckLanding(coldchain.Landing{Gutted: units.State(150 * time.Minute), Iced: units.State(150 * time.Minute), Warmest: units.Celsius(16), ForCanning: true})
	require.NoError(t, err)
	logged.Golden(t, "coldchain-landing", l)
}
