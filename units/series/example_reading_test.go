package series_test

import (
	"encoding/json"
	"fmt"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

func ExampleReading() {
	text, err := json.Marshal(series.Reading[units.Temperature]{At: 10 * time.Minute, Value: units.Celsius(60)})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(string(text))
	var back series.Reading[units.Temperature]
	fmt.Println(json.Unmarshal(text, &back), back.At, back.Value)
	// Output:
	// {"at":"10 min","value":"60 °C"}
	// <nil> 10m0s 60 °C
}
