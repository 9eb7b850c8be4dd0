package coldchain_test

import (
	"fmt"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain"
)

// The envelope of Skinner and Larkin 1998, from memory: 8.6 days at 5 °C, and no answer at all in the frost.
func ExampleTimeToToxin() {
	at, err := coldchain.TimeToToxin(units.Celsius(5))
	fmt.Println(days(at.Time), at.Citation.Basis, err)
	_, err = coldchain.TimeToToxin(units.Celsius(0))
	fmt.Println(err)
	// Output:
	// 8.62 days recalled <nil>
	// temperature of an envelope for botulinum toxin 0 °C is out of range: expected 3 °C (towards 0 °C it runs to infinity and then turns over) to 45 °C
}

// The equation of Baker and Genigeorgis 1990, from memory, at 8 °C for a hundred spores.
func ExampleTimeToToxinInFish() {
	at, err := coldchain.TimeToToxinInFish(units.Celsius(8), 2*units.One)
	fmt.Println(days(at.Time), err)
	// Output: 6.29 days <nil>
}

// An invented catch, two days at 2 °C after five hours of chilling: almost all of the share is from those hours.
func ExampleToxinShare() {
	toxin, err := coldchain.ToxinShare(caught(), 48*time.Hour)
	fmt.Println(units.Text(toxin.Share, units.Percent, 1), "of the time to toxin", err)
	fmt.Println(toxin.Cautions[0].Text)
	// Output:
	// 11.2 % of the time to toxin <nil>
	// this is no permission to keep fish so long: hold its record against the exposure limits and go by what is stricter
}
