package ice_test

import (
	"encoding/json"
	"fmt"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain/ice"
)

// What an app saves it reads back.
func ExampleChillTimes() {
	times, _ := ice.ChillTime(ice.FishOf(ice.Cylinder, 9*units.Centimetre, 11*units.Centimetre, units.Celsius(14)), ice.CrushedFilm(), units.Celsius(0), units.Celsius(4))
	text, err := json.Marshal(times)
	var back ice.ChillTimes
	fmt.Println(err, json.Unmarshal(text, &back))
	fmt.Println(back.Low < back.Likely, back.Likely < back.High)
	// Output:
	// <nil> <nil>
	// true true
}

// What an app saves it reads back.
func ExampleNeed() {
	need, _ := ice.ToChill(25*units.Kilogram, units.Celsius(14), units.Celsius(0), ice.Constant{})
	text, err := json.Marshal(need)
	var back ice.Need
	fmt.Println(err, json.Unmarshal(text, &back))
	fmt.Println(back.Mass, back.Cautions[0].ID)
	// Output:
	// <nil> <nil>
	// 3.99 kg ice.melted-only
}

// What an app saves it reads back.
func ExampleLoad() {
	load, _ := ice.Plan(trip())
	text, err := json.Marshal(load)
	var back ice.Load
	fmt.Println(err, json.Unmarshal(text, &back))
	fmt.Println(back.Total, back.Rough)
	// Output:
	// <nil> <nil>
	// 7.688 kg false
}
