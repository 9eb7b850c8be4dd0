package freezing_test

import (
	"encoding/json"
	"fmt"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain/freezing"
)

// What an app saves it reads back.
func ExampleThermal() {
	thermal, _ := pinkSalmon().Thermal(units.Celsius(-18))
	text, err := json.Marshal(thermal)
	var back freezing.Thermal
	fmt.Println(err, json.Unmarshal(text, &back))
	fmt.Println(back.Ice, back.Citation.Basis)
	// Output:
	// <nil> <nil>
	// 59.3628817671 % quoted
}

func ExampleLoad() {
	var v freezing.Load
	err := json.Unmarshal([]byte(`{"room": "52 gal", "catch": "40 lb"}`), &v)
	fmt.Println(v.Room, v.Catch, err)
	// Output:
	// 52 gal 40 lb <nil>
}

// What an app saves it reads back.
func ExampleLoads() {
	loads, _ := freezing.Plan(freezing.Load{Room: 7 * units.CubicFoot, Catch: 40 * units.Pound})
	text, err := json.Marshal(loads)
	var back freezing.Loads
	fmt.Println(err, json.Unmarshal(text, &back))
	fmt.Println(back.Days, back.PerDay)
	// Output:
	// <nil> <nil>
	// 3 14 lb
}

func ExampleFlesh() {
	var v freezing.Flesh
	err := json.Unmarshal([]byte(`{"water": "76.35 %", "protein": "19.94 %", "fat": "3.45 %", "ash": "1.22 %", "freezesAt": "28 °F"}`), &v)
	fmt.Println(v.Water, v.FreezesAt, err)
	// Output:
	// 76.35 % 28 °F <nil>
}

// What an app saves it reads back.
func ExampleLoadRule() {
	rule := freezing.LoadRules()[0]
	text, err := json.Marshal(rule)
	var back freezing.LoadRule
	fmt.Println(err, json.Unmarshal(text, &back))
	fmt.Println(back == rule)
	// Output:
	// <nil> <nil>
	// true
}
