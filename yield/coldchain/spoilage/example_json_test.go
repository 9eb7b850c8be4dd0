package spoilage_test

import (
	"encoding/json"
	"fmt"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain/spoilage"
)

// What an app saves it reads back.
func ExampleLifeLeft() {
	aged, _ := spoilage.IceDays(caught(), spoilage.FreshFish, 72*time.Hour)
	lives, _ := spoilage.FindLives("rainbow trout", units.State(true))
	left, _ := aged.Left(lives[0])
	text, err := json.Marshal(left)
	var back spoilage.LifeLeft
	fmt.Println(err, json.Unmarshal(text, &back))
	fmt.Println(back.Life.Fish, days(back.Low))
	// Output:
	// <nil> <nil>
	// trout 5.06 days
}

// What an app saves it reads back.
func ExampleLife() {
	life := spoilage.Lives()[0]
	text, err := json.Marshal(life)
	var back spoilage.Life
	fmt.Println(err, json.Unmarshal(text, &back))
	fmt.Println(back == life)
	// Output:
	// <nil> <nil>
	// true
}
