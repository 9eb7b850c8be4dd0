package yield_test

import (
	"encoding/json"
	"fmt"
	"os"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield"
)

// golden compares what leaves the process with a reviewed file, and reads it back.
func golden[T any](t *testing.T, name string, v T) {
	t.Helper()
	text, err := json.MarshalIndent(v, "", "  ")
	require.NoError(t, err)
	want, err := os.ReadFile("../testdata/golden/yield-" + name + ".json")
	require.NoError(t, err, string(text))
	require.Empty(t, cmp.Diff(strings.TrimSpace(string(want)), string(text)))
	requireBack(t, v)
}

func requireBack[T any](t *testing.T, v T) {
	t.Helper()
	text, err := json.Marshal(v)
	require.NoError(t, err)
	require.NotEqual(t, "{}", string(text))
	var back T
	require.NoError(t, json.Unmarshal(text, &back), string(text))
	require.Empty(t, cmp.Diff(v, back), string(text))
}

// weekly is the intake of an invented household.
func weekly() yield.Intake {
	return yield.Intake{
		Concentration: 200 * units.PartsPerBillion, Dose: units.PartsPerBillion / 10, Body: 75 * units.Kilogram, Meal: 4 * units.Ounce,
	}
}

func TestGolden(t *testing.T) {
	share, err := yield.Find(yield.YellowPerch, yield.Fillet)
	require.NoError(t, err)
	golden(t, "share", share)
	outcome, err := yield.Chain(4*units.Kilogram,
		yield.Step{Name: "gut", Kept: 88 * units.Percent, Rest: yield.Trim},
		yield.Step{Name: "dry", Kept: 90 * units.Percent, Low: 88 * units.Percent, High: 92 * units.Percent, Rest: yield.Loss})
	require.NoError(t, err)
	golden(t, "outcome", outcome)
	drained, err := yield.FindComposition(15087, cite.USDASR26)
	require.NoError(t, err)
	golden(t, "composition", drained)
	portion, err := drained.Portion(100 * units.Gram)
	require.NoError(t, err)
	golden(t, "portion", portion)
	advice, err := yield.Advise(units.State(yield.Advisory{}), weekly())
	require.NoError(t, err)
	golden(t, "meal-advice", advice)
	golden(t, "makeup", yield.Makeup{Water: 716 * units.Gram, Salt: 1153 * units.Milligram, Protein: 213 * units.Gram, Fat: 58 * units.Gram})
}

// Every row of every table survives being saved, and so does what is worked out from it.
func TestJSONComesBack(t *testing.T) {
	for _, c := range yield.Compositions() {
		requireBack(t, c)
		requireBack(t, c.Proximate)
		p, err := c.Portion(4 * units.Ounce)
		require.NoError(t, err)
		requireBack(t, p)
		if m, err := c.Makeup(units.Pound); err == nil {
			requireBack(t, m)
		}
	}
	for species := yield.Salmon; species <= yield.OtherFish; species++ {
		for _, s := range yield.Shares(species) {
			requireBack(t, s)
		}
	}
	for _, s := range yield.PlanningDefaults() {
		requireBack(t, s)
	}
	x, err := coho().ToMoisture(20*units.Gram, 60*units.Percent)
	require.NoError(t, err)
	requireBack(t, x)
	whole, err := yield.FindComposition(15253, cite.USDASR26)
	require.NoError(t, err)
	drained, err := yield.FindComposition(15087, cite.USDASR26)
	require.NoError(t, err)
	liquid, err := yield.SplitLiquid(whole, drained, 417*units.Gram, 337*units.Gram)
	require.NoError(t, err)
	requireBack(t, liquid)
	tie, err := yield.TieSubstance(whole.Proximate, drained.Proximate)
	require.NoError(t, err)
	requireBack(t, tie)
	weight, err := yield.MeanWeight(yield.Coho)
	require.NoError(t, err)
	requireBack(t, weight)
	requireBack(t, weekly())
	advice, err := yield.Advise(units.Stated[yield.Advisory]{}, weekly())
	require.NoError(t, err)
	requireBack(t, advice)
}

func TestJSONRefuses(t *testing.T) {
	const food = `"water": "70 %", "protein": "20 %", "fat": "9 %"`
	for text, field := range map[string]string{
		`{` + food + `}`:                               "ash",
		`{` + food + `, "ash": 1}`:                     "ash",
		`{` + food + `, "ash": null}`:                  "ash",
		`{` + food + `, "ash": "1"}`:                   "ash",
		`{` + food + `, "ash": "1 %", "ash": "1 %"}`:   "ash",
		`{` + food + `, "ash": "1 %", "sugar": "1 %"}`: "sugar",
		`{` + food + `, "ash": "1 g"}`:                 "ash",
	} {
		p := yield.Proximate{Water: units.One}
		requireField(t, field, json.Unmarshal([]byte(text), &p), text)
		require.Equal(t, yield.Proximate{Water: units.One}, p, "stays as it was")
	}
	var intake yield.Intake
	requireField(t, "dose", json.Unmarshal([]byte(`{"body": "75 kg", "meal": "4 oz"}`), &intake), "intake")
	var makeup yield.Makeup
	requireField(t, "sugar", json.Unmarshal([]byte(`{"water": "700 g", "sugar": "1 g"}`), &makeup), "makeup")
	requireField(t, "water", json.Unmarshal([]byte(`{"water": 700}`), &makeup), "makeup")
	var step yield.Step
	require.Error(t, json.Unmarshal([]byte(`{"rest": "sea"}`), &step))
	var outcome yield.Outcome
	requireField(t, "steps[0].step.rest", json.Unmarshal([]byte(`{"steps": [{"step": {"kept": "88 %"}}]}`), &outcome), "outcome")
}

func requireField(t *testing.T, field string, err error, text string) {
	t.Helper()
	var fault units.FieldError
	require.ErrorAs(t, err, &fault, text)
	require.Equal(t, field, fault.Field, text)
}

func ExampleExchange() {
	x, _ := coho().ToWeight(20*units.Gram, 800*units.Gram)
	text, err := json.Marshal(x)
	fmt.Println(string(text), err)
	// Output: {"lost":{"water":"220 g"},"gained":{"salt":"20 g"}} <nil>
}

func ExampleMakeup() {
	var m yield.Makeup
	err := json.Unmarshal([]byte(`{"water": "1 lb 6 oz", "salt": "2 tsp"}`), &m)
	fmt.Println(err)
	err = json.Unmarshal([]byte(`{"water": "1 lb 6 oz", "fat": "2 oz"}`), &m)
	fmt.Println(m.Water, m.Fat, err)
	// Output:
	// salt (line 1, column 32): cannot read "2 tsp" as a mass: unknown unit "tsp"; expected one of g, kg, lb, oz, mg, µg, ng, t, grain, label oz
	// 1.375 lb 2 oz <nil>
}

func ExampleProximate() {
	var p yield.Proximate
	err := json.Unmarshal([]byte(`{"water": "70 %", "protein": "20 %", "fat": "9 %"}`), &p)
	fmt.Println(err)
	// Output: ash (line 1, column 1): it is required and missing
}

func ExampleIntake() {
	var i yield.Intake
	err := json.Unmarshal([]byte(`{"concentration": "0.2 ppm", "dose": "0.1 ppb", "body": "75 kg", "meal": "4 oz"}`), &i)
	fmt.Println(i == weekly(), err)
	// Output: true <nil>
}

// Of fish that must not be eaten the meals are written, too: none.
func ExampleMealAdvice() {
	a, _ := yield.Advise(units.State(yield.Advisory{}), weekly())
	for _, c := range a.Cautions {
		fmt.Println(c.ID, c.Deciding)
	}
	fmt.Println(a.Meals, units.Lasting(a.Period) == units.Lasting(365*24*time.Hour))
	// Output:
	// yield.do-not-eat true
	// yield.mercury-stays true
	// 0 true
}

func ExampleLiquid() {
	whole, _ := yield.FindComposition(15253, cite.USDASR26)
	drained, _ := yield.FindComposition(15087, cite.USDASR26)
	l, _ := yield.SplitLiquid(whole, drained, 417*units.Gram, 337*units.Gram)
	text, _ := json.Marshal(l)
	var back yield.Liquid
	err := json.Unmarshal(text, &back)
	fmt.Println(back.Mass, back.Lost == l.Lost, err)
	// Output: 80 g true <nil>
}

func ExamplePortion() {
	drained, _ := yield.FindComposition(15087, cite.USDASR26)
	p, _ := drained.Portion(100 * units.Gram)
	text, _ := json.Marshal(p)
	var back yield.Portion
	err := json.Unmarshal(text, &back)
	fmt.Println(back.Protein, back.Sodium.Value, err)
	// Output:
	// 23.59 g 0.408 g <nil>
}

func ExampleTieYield() {
	raw, _ := yield.FindComposition(35153, cite.USDASR26)
	kippered, _ := yield.FindComposition(35168, cite.USDASR26)
	y, _ := yield.TieSubstance(raw.Proximate, kippered.Proximate)
	text, err := json.Marshal(y)
	fmt.Println(strings.HasPrefix(string(text), `{"protein":"87.`), err)
	// Output:
	// true <nil>
}

func ExampleWeight() {
	w, _ := yield.MeanWeight(yield.Coho)
	text, err := json.Marshal(w)
	fmt.Println(string(text)[:35], err)
	// Output:
	// {"species":"coho","mean":"3.4 kg"," <nil>
}

func ExampleParseDestination() {
	d, err := yield.ParseDestination("Trim")
	fmt.Println(d, err)
	_, err = yield.ParseDestination("sea")
	fmt.Println(err)
	// Output:
	// trim <nil>
	// unknown destination "sea": expected loss, trim or food
}

func ExampleParseEnergyFactors() {
	f, err := yield.ParseEnergyFactors("general factors 4 and 9")
	fmt.Println(f == yield.GeneralFactors, err)
	// Output:
	// true <nil>
}

func ExampleParseMissing() {
	m, err := yield.ParseMissing("mean weight")
	fmt.Println(m == yield.MissingWeight, err)
	// Output:
	// true <nil>
}

func ExampleParseSpread() {
	s, err := yield.ParseSpread("standard deviation")
	fmt.Println(s == yield.StandardDeviation, err)
	// Output:
	// true <nil>
}
