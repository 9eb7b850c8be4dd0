package coldchain_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/yield/coldchain"
)

func ExampleTerms() {
	var v coldchain.Terms
	err := json.Unmarshal([]byte(`{"maxGap": "30 min", "product": "raw fish", "hazards": ["Listeria monocytogenes"]}`), &v)
	fmt.Println(v.MaxGap, v.Product, v.Hazards, err)
	// Output:
	// 30m0s raw fish [Listeria monocytogenes] <nil>
}

func ExampleLanding() {
	var v coldchain.Landing
	err := json.Unmarshal([]byte(`{"gutted": "90 min", "iced": "100 min", "medium": "0 °C", "forCanning": true}`), &v)
	fmt.Println(v.Gutted.Value, v.Medium, v.ForCanning, err)
	// Output:
	// 1h30m0s 0 °C true <nil>
}

// What an app saves it reads back.
func ExampleLandingReport() {
	r, _ := coldchain.CheckLanding(coldchain.Landing{Gutted: units.State(3 * time.Hour), Iced: units.State(time.Hour), Medium: units.Celsius(0)})
	text, err := json.Marshal(r)
	var back coldchain.LandingReport
	fmt.Println(err, json.Unmarshal(text, &back))
	fmt.Println(back.Verdict, back.Findings[0].Text(units.US))
	// Output:
	// <nil> <nil>
	// not met time until bled and gutted: 3 h stated, at most 2 h published, too long by 1 h
}

// What an app saves it reads back.
func ExampleReport() {
	r, _ := watched().Report()
	text, err := json.Marshal(r)
	var back coldchain.Report
	fmt.Println(err, json.Unmarshal(text, &back))
	fmt.Println(back.Verdict, back.Next, len(back.Allowances))
	// Output:
	// <nil> <nil>
	// met [keep cold add times] 1
}

func ExampleHazard_Rule() {
	fmt.Println(coldchain.Listeria.Rule())
	// Output:
	// coldchain.table-a2.listeria
}

func ExampleStep() {
	fmt.Println(coldchain.ChillNow)
	// Output:
	// chill now
}

func ExampleStep_Text() {
	fmt.Println(coldchain.ChillNow.Text(units.Metric))
	fmt.Println(coldchain.ChillNow.Text(units.US))
	// Output:
	// Chill it to 3.3 °C or below now.
	// Chill it to 38 °F or below now.
}

func ExampleParseStep() {
	s, err := coldchain.ParseStep("discard")
	fmt.Println(s, err)
	// Output:
	// discard <nil>
}

func ExampleParseLandingDemand() {
	d, err := coldchain.ParseLandingDemand("into ice")
	fmt.Println(d, err)
	// Output:
	// into ice <nil>
}

func ExampleParseProduct() {
	p, err := coldchain.ParseProduct("cooked fish")
	fmt.Println(p, err)
	// Output:
	// cooked fish <nil>
}

func ExampleParseReading() {
	r, err := coldchain.ParseReading("nested")
	fmt.Println(r, err)
	// Output:
	// nested <nil>
}

// A probe's app saves what was seen so far, is closed, and goes on later.
func ExampleRunning_MarshalJSON() {
	text, err := json.Marshal(watched())
	fmt.Println(len(text) > 0, err)
	_, err = json.Marshal(coldchain.Running{})
	fmt.Println(errors.Is(err, units.ErrUnset))
	// Output:
	// true <nil>
	// true
}

func ExampleRunning_UnmarshalJSON() {
	text, _ := json.Marshal(watched())
	var saved coldchain.Running
	err := json.Unmarshal(text, &saved)
	saved, _ = saved.Next(series.Reading[units.Temperature]{At: 4 * time.Hour, Value: units.Fahrenheit(60)})
	report, _ := saved.Report()
	fmt.Println(report.Span, err)
	err = json.Unmarshal([]byte(`{"terms": {"maxGap": "1 h"}, "seen": {"seen": 2, "taken": 2}}`), &saved)
	fmt.Println(err)
	// Output:
	// 4h0m0s <nil>
	// temperature of the fish is not stated
}

// What an app saves it reads back.
func ExampleLimit() {
	limit, _ := coldchain.FindLimit(coldchain.Listeria, units.Fahrenheit(60))
	text, err := json.Marshal(limit)
	var back coldchain.Limit
	fmt.Println(err, json.Unmarshal(text, &back))
	fmt.Println(back.Hazard, units.Lasting(back.Allowed))
	// Output:
	// <nil> <nil>
	// Listeria monocytogenes 7 h
}

// What an app saves it reads back.
func ExampleForecast() {
	forecast := watched().AtThisRate()[0]
	text, err := json.Marshal(forecast)
	var back coldchain.Forecast
	fmt.Println(err, json.Unmarshal(text, &back))
	fmt.Println(back == forecast)
	// Output:
	// <nil> <nil>
	// true
}

// What an app saves it reads back.
func ExampleLandingRule() {
	rule := coldchain.LandingRules()[0]
	text, err := json.Marshal(rule)
	var back coldchain.LandingRule
	fmt.Println(err, json.Unmarshal(text, &back))
	fmt.Println(back == rule)
	// Output:
	// <nil> <nil>
	// true
}
