package season_test

import (
	"encoding/json"
	"fmt"
	"math/rand"
	"os"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/season"
)

// golden compares what leaves the process with a reviewed file, and reads it back.
func golden[T any](t *testing.T, name string, v T) {
	t.Helper()
	text, err := json.MarshalIndent(v, "", "  ")
	require.NoError(t, err)
	want, err := os.ReadFile("../../testdata/golden/season-" + name + ".json")
	require.NoError(t, err, string(text))
	require.Empty(t, cmp.Diff(strings.TrimSpace(string(want)), string(text)))
	requireBack(t, v)
}

func requireBack[T any](t *testing.T, v T) {
	t.Helper()
	text, err := json.Marshal(v)
	require.NoError(t, err)
	require.NotContains(t, string(text), "{}")
	var back T
	require.NoError(t, json.Unmarshal(text, &back), string(text))
	require.Empty(t, cmp.Diff(v, back), string(text))
}

func TestGolden(t *testing.T) {
	y := twoDays()
	y.Trips, y.Weeks = y.Trips[:2], 4
	golden(t, "year", y)
	plan := keep(t, y)
	golden(t, "plan", plan)
	l, err := season.Size(season.Household{People: 4, Weeks: y.Weeks, Fish: y.Fish}, pints())
	require.NoError(t, err)
	golden(t, "larder", l)
	batches, err := season.Calendar(plan, l)
	require.NoError(t, err)
	golden(t, "batches", batches)
	cost, err := season.Costs(l.Household, l.Supplies[0], season.Prices{Kilogram: decimal.RequireFromString("7")}, 2)
	require.NoError(t, err)
	golden(t, "cost", cost)
}

// Years of every shape, and their plans, survive being saved.
func TestJSONComesBack(t *testing.T) {
	rng := rand.New(rand.NewSource(21))
	for i := 0; i < 60; i++ {
		y := long(rng)
		requireBack(t, y)
		p := keep(t, y)
		requireBack(t, p)
		l, err := season.Size(season.Household{People: 3, Weeks: y.Weeks, Fish: y.Fish}, pints())
		require.NoError(t, err)
		requireBack(t, l)
		batches, err := season.Calendar(p, l)
		require.NoError(t, err)
		for _, b := range batches {
			requireBack(t, b)
		}
	}
}

const (
	keeps = `{"time": "2 weeks", "citation": {"place": "label", "basis": "practice"}}`
	rest  = `"fishing": "expected", "weeks": 20, "lag": 1, "fish": "3 kg", "weekly": "3 kg", "fresh": ` + keeps + `, "keeps": ` + keeps
	rule  = `"rule": {"shape": "one day", "anglers": 1, "daily": 5}`
)

func TestJSONRefuses(t *testing.T) {
	for text, field := range map[string]string{
		`{` + rest + `}`:                            "rule",
		`{` + rule + `}`:                            "fishing",
		`{` + rule + `, ` + rest + `, "lag": 2}`:    "lag",
		`{` + rule + `, ` + rest + `, "larder": 2}`: "larder",
		`{` + rule + `, ` + rest + `, "trips": [{"week": 0, "days": 1}]}`: "trips[0].expected",
		`{` + rule + `, ` + rest + `, "trips": null}`:                     "trips",
		`{"rule": {"shape": "two days", "anglers": 1, "daily": 5}}`:       "rule.shape",
		`{"rule": {"shape": "one day", "daily": 5}}`:                      "rule.anglers",
		`{"rule": {"shape": "one day", "anglers": "1", "daily": 5}}`:      "rule.anglers",
		`{"weekly": 3}`:                  "weekly",
		`{"weekly": "3"}`:                "weekly",
		`{"fishing": "hoped for"}`:       "fishing",
		`{"keeps": {"time": "2 weeks"}}`: "keeps.citation",
		`{"keeps": {"citation": {"place": "label", "basis": "practice"}}}`: "keeps.time",
	} {
		y := season.Year{Lag: 7}
		err := json.Unmarshal([]byte(text), &y)
		var fault units.FieldError
		require.ErrorAs(t, err, &fault, text)
		require.Equal(t, field, fault.Field, text)
		require.Equal(t, season.Year{Lag: 7}, y, "stays as it was")
	}
}

func ExampleYear() {
	var y season.Year
	err := json.Unmarshal([]byte(`{
		"rule": {"shape": "everything", "anglers": 1, "daily": 5, "possession": 10},
		"trips": [{"week": 0, "days": 1, "expected": 5, "possible": 5}],
		"fishing": "expected", "weeks": 5, "lag": 1, "fish": "3 kg", "weekly": "3 kg",
		"fresh": {"time": "48 h", "citation": {"place": "the label of this example", "basis": "practice"}},
		"keeps": {"time": "8760 h", "citation": {"place": "the label of this example", "basis": "practice"}}
	}`), &y)
	fmt.Println(err)
	plan, err := season.Keep(y)
	fmt.Println(plan, err)
	err = json.Unmarshal([]byte(`{"rule": {"shape": "everything", "anglers": 1}}`), &y)
	fmt.Println(err)
	// Output:
	// <nil>
	// feasible: 5 fish kept, at most 5 held <nil>
	// rule.daily (line 1, column 10): it is required and missing
}

func ExampleHousehold() {
	var h season.Household
	err := json.Unmarshal([]byte(`{"people": 4, "weeks": 52}`), &h)
	fmt.Println(err)
	// Output:
	// fish (line 1, column 1): it is required and missing
}

func ExampleWant() {
	_, want := family()
	text, _ := json.Marshal(want)
	var back season.Want
	err := json.Unmarshal(text, &back)
	fmt.Println(back == want, err)
	// Output:
	// true <nil>
}

func ExampleLarder() {
	h, want := family()
	l, _ := season.Size(h, want)
	text, _ := json.Marshal(l)
	var back season.Larder
	err := json.Unmarshal(text, &back)
	fmt.Println(back.Containers, back.Fish, back.Weekly == l.Weekly, err)
	// Output:
	// 75 13 true <nil>
}

func ExampleBatch() {
	text, err := json.Marshal(season.Batch{Week: 1, Fish: 5, Round: 15 * units.Kilogram})
	fmt.Println(string(text), err)
	// Output:
	// {"week":1,"caught":0,"fish":5,"round":"15 kg"} <nil>
}

func ExampleCost() {
	text, err := json.Marshal(season.Cost{Total: decimal.RequireFromString("344"), Container: decimal.RequireFromString("4.59")})
	fmt.Println(string(text), err)
	// Output:
	// {"total":"344","container":"4.59"} <nil>
}

func ExampleParseFishing() {
	f, err := season.ParseFishing("Expected")
	fmt.Println(f, err)
	_, err = season.ParseFishing("hoped for")
	fmt.Println(err)
	// Output:
	// expected <nil>
	// unknown catch to plan with "hoped for": expected expected or possible
}

func ExampleParseOrder() {
	o, err := season.ParseOrder("oldest first")
	fmt.Println(o, err)
	// Output:
	// oldest first <nil>
}
