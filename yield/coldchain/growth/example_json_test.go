package growth_test

import (
	"encoding/json"
	"fmt"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain/growth"
)

// What an app saves it reads back.
func ExampleRawSalmonRate() {
	rate, _ := growth.ListeriaInRawSalmon(units.Celsius(5))
	text, err := json.Marshal(rate)
	var back growth.RawSalmonRate
	fmt.Println(err, json.Unmarshal(text, &back))
	fmt.Println(back.PerDay, back.Lag.Given)
	// Output:
	// <nil> <nil>
	// 25.0409271002 % true
}

func ExampleSeafood() {
	var v growth.Seafood
	err := json.Unmarshal([]byte(`{"temperature": "5 °C", "waterActivity": "98 %", "ph": "6.2", "lactic": "0.7 %"}`), &v)
	fmt.Println(v.Temperature, v.WaterActivity, v.PH, err)
	// Output:
	// 5 °C 98 % 6.2 <nil>
}

// What an app saves it reads back.
func ExampleSeafoodRate() {
	rate, _ := growth.ListeriaInSeafood(growth.Seafood{Temperature: units.Celsius(5), WaterActivity: 980 * units.PerMille, PH: 62 * units.PHUnit / 10})
	text, err := json.Marshal(rate)
	var back growth.SeafoodRate
	fmt.Println(err, json.Unmarshal(text, &back))
	fmt.Println(back.PerDay, back.Xi)
	// Output:
	// <nil> <nil>
	// 24.0842876863 % 100 %
}

// What an app saves it reads back.
func ExampleToxinTime() {
	at, _ := growth.TimeToToxin(units.Celsius(5))
	text, err := json.Marshal(at)
	var back growth.ToxinTime
	fmt.Println(err, json.Unmarshal(text, &back))
	fmt.Println(back.Time.Round(time.Hour), back.Cautions[0].ID)
	// Output:
	// <nil> <nil>
	// 207h0m0s growth.no-permission
}

// What an app saves it reads back.
func ExampleToxin() {
	share, _ := growth.ToxinShare(caught(), 48*time.Hour)
	text, err := json.Marshal(share)
	var back growth.Toxin
	fmt.Println(err, json.Unmarshal(text, &back))
	fmt.Println(back.Span, back.Highest.Value)
	// Output:
	// <nil> <nil>
	// 54h30m0s 14 °C
}
