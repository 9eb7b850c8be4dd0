package wire_test

import (
	"fmt"
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

// A batch of an invented recipe.
type batch struct {
	Name     string
	Altitude units.Stated[units.Length] `wire:"required"`
	Vent     time.Duration
	Jars     int `wire:"always"`
	Loads    []units.Mass
}

func ExampleMarshal() {
	out, err := wire.Marshal(batch{Altitude: units.State(0 * units.Foot), Vent: 10 * time.Minute, Loads: []units.Mass{3 * units.Kilogram}})
	fmt.Println(string(out), err)
	// Output: {"altitude":"0 mm","vent":"10 min","jars":0,"loads":["3 kg"]} <nil>
}

func ExampleUnmarshal() {
	var b batch
	fmt.Println(wire.Unmarshal([]byte(`{"altitude": "2,000 ft", "vent": "10 min"}`), &b), b.Altitude.Value, b.Vent)
	fmt.Println(wire.Unmarshal([]byte(`{"vent": "10 min"}`), &b))
	fmt.Println(wire.Unmarshal([]byte(`{"altitude": 2000}`), &b))
	fmt.Println(wire.Unmarshal([]byte("{\"altitude\": \"0 ft\",\n \"loads\": [\"3 kg\", \"3\"]}"), &b))
	fmt.Println(wire.Unmarshal([]byte(`{"alltitude": "2,000 ft"}`), &b))
	// Output:
	// <nil> 2000 ft 10m0s
	// altitude (line 1, column 1): it is required and missing
	// altitude (line 1, column 14): expected text with a unit, such as "2000 ft", not the number 2000
	// loads[1] (line 2, column 20): cannot read "3" as a mass: the unit is missing; expected one of g, kg, lb, oz, mg, µg, ng, t, grain, label oz
	// alltitude (line 1, column 2): unknown field; expected name, altitude, vent, jars, loads
}

func ExampleIndent() {
	out, err := wire.Indent([]byte(`{"name":"A","jars":7}`))
	fmt.Println(string(out), err)
	// Output:
	// {
	//   "name": "A",
	//   "jars": 7
	// } <nil>
}
