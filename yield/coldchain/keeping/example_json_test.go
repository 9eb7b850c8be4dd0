package keeping_test

import (
	"encoding/json"
	"fmt"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/yield/coldchain/keeping"
)

// What an app saves it reads back.
func ExampleReport() {
	r, _ := keeping.Check(keeping.Smoked, keeping.InRefrigerator, units.Fahrenheit(34), 9*24*time.Hour)
	text, err := json.Marshal(r)
	var back keeping.Report
	fmt.Println(err, json.Unmarshal(text, &back))
	fmt.Println(back.Verdict, back.Quality.Verdict, back.Held)
	// Output:
	// <nil> <nil>
	// met not published 216h0m0s
}

// What an app saves it reads back.
func ExampleFrozenReport() {
	record, _ := series.New([]series.Reading[units.Temperature]{{Value: units.Celsius(-18)}, {At: 30 * 24 * time.Hour, Value: units.Celsius(-18)}})
	r, _ := keeping.FrozenLives()[0].Audit(record, 31*24*time.Hour)
	text, err := json.Marshal(r)
	var back keeping.FrozenReport
	fmt.Println(err, json.Unmarshal(text, &back))
	fmt.Println(back.Verdict, back.Used)
	// Output:
	// <nil> <nil>
	// met 20 %
}

// What an app saves it reads back.
func ExampleJarReport() {
	r, _ := keeping.CheckJar(units.State(30*24*time.Hour), keeping.LidBulging)
	text, err := json.Marshal(r)
	var back keeping.JarReport
	fmt.Println(err, json.Unmarshal(text, &back))
	fmt.Println(back.Verdict, back.Action)
	// Output:
	// <nil> <nil>
	// not met discard shut
}

// What an app saves it reads back.
func ExamplePowerCutReport() {
	r, _ := keeping.CheckPowerCut(keeping.InFreezer, true, 30*time.Hour)
	text, err := json.Marshal(r)
	var back keeping.PowerCutReport
	fmt.Println(err, json.Unmarshal(text, &back))
	fmt.Println(back.Verdict, back.Left)
	// Output:
	// <nil> <nil>
	// met 18h0m0s
}

// What an app saves it reads back.
func ExampleStoreReport() {
	r, _ := keeping.CheckStore(keeping.InFreezer, units.Fahrenheit(5))
	text, err := json.Marshal(r)
	var back keeping.StoreReport
	fmt.Println(err, json.Unmarshal(text, &back))
	fmt.Println(back.Verdict, back.Findings[0].Text(units.US))
	// Output:
	// <nil> <nil>
	// not met any food: 5 °F stated, at most 0 °F published, too warm by 5 F°
}

func ExampleThawPlan() {
	var v keeping.ThawPlan
	err := json.Unmarshal([]byte(`{"method": "in the refrigerator", "medium": "40 °F", "sealedPack": true}`), &v)
	fmt.Println(v.Method, v.Medium, v.SealedPack, err)
	// Output:
	// in the refrigerator 40 °F true <nil>
}

// What an app saves it reads back.
func ExampleThawReport() {
	r, _ := keeping.CheckThaw(keeping.ThawPlan{Method: keeping.ThawInRefrigerator, Medium: units.Fahrenheit(45)})
	text, err := json.Marshal(r)
	var back keeping.ThawReport
	fmt.Println(err, json.Unmarshal(text, &back))
	fmt.Println(back.Verdict, back.Findings[0].Text(units.Metric))
	// Output:
	// <nil> <nil>
	// not met around the fish: 7.3 °C stated, at most 5 °C published, too warm by 2.3 C°
}

// What an app saves it reads back.
func ExampleTimes() {
	times, _ := keeping.Find(keeping.Cooked, keeping.InRefrigerator)
	text, err := json.Marshal(times)
	var back keeping.Times
	fmt.Println(err, json.Unmarshal(text, &back))
	fmt.Println(back.Safety[0].Printed, back.Safety[0].High)
	// Output:
	// <nil> <nil>
	// 3-4 days 96h0m0s
}

// What an app saves it reads back.
func ExampleRule() {
	times, _ := keeping.Find(keeping.Cooked, keeping.InRefrigerator)
	text, err := json.Marshal(times.Safety[0].Rule)
	var back keeping.Rule
	fmt.Println(err, json.Unmarshal(text, &back))
	fmt.Println(back.Printed, units.Lasting(back.Low))
	// Output:
	// <nil> <nil>
	// 3-4 days 72 h
}

// What an app saves it reads back.
func ExamplePowerCutRule() {
	rule := keeping.PowerCutRules()[0]
	text, err := json.Marshal(rule)
	var back keeping.PowerCutRule
	fmt.Println(err, json.Unmarshal(text, &back))
	fmt.Println(back == rule)
	// Output:
	// <nil> <nil>
	// true
}

// What an app saves it reads back.
func ExampleFrozenLife() {
	life := keeping.FrozenLives()[0]
	text, err := json.Marshal(life)
	var back keeping.FrozenLife
	fmt.Println(err, json.Unmarshal(text, &back))
	fmt.Println(back.Name, len(back.Points))
	// Output:
	// <nil> <nil>
	// fatty fish, glazed (1986) 3
}
