package units_test

import (
	"errors"
	"fmt"
	"time"

	"example.org/lakelarder/units"
)

// What was typed is shown again in plain figures, to be confirmed.
func ExampleReadTyped() {
	fish, err := units.ReadTyped[units.Mass]("7 lbs. 4 oz.")
	fmt.Println(fish.Text, "·", fish.Value, err)
	oven, err := units.ReadTyped[units.Temperature]("350 degrees F")
	fmt.Println(oven.Text, err)
	long, err := units.ReadTyped[time.Duration]("1½ hrs")
	fmt.Println(long.Text, err)
	cure, err := units.ReadTyped[units.Parts]("one to four")
	fmt.Println(cure.Text, err)
	// Output:
	// 7 lb 4 oz · 7.25 lb <nil>
	// 350 °F <nil>
	// 90 min <nil>
	// 1:4 <nil>
}

// What may mean two things comes back as choices.
func ExampleReadTyped_choices() {
	_, err := units.ReadTyped[units.Mass]("1,500 kg")
	fmt.Println(err)
	var unclear units.ParseError
	fmt.Println(errors.As(err, &unclear), len(unclear.Choices), unclear.Choices[1])
	// Output:
	// cannot read "1,500 kg" as a mass: the comma may group thousands or mark decimals; write 1500 kg or 1.5 kg
	// true 2 1.5 kg
}
