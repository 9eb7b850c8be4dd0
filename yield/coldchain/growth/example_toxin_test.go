package growth_test

import (
	"fmt"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/yield/coldchain/growth"
)

// The envelope of Skinner and Larkin 1998, from memory: 8.6 days at 5 °C, and no answer at all in the frost.
func ExampleTimeToToxin() {
	at, err := growth.TimeToToxin(units.Celsius(5))
	fmt.Println(days(at.Time), at.Citation.Basis, err)
	_, err = growth.TimeToToxin(units.Celsius(0))
	fmt.Println(err)
	// Output:
	// 8.62 days recalled <nil>
	// temperature of an envelope for botulinum toxin 0 °C is out of range: expected 3 °C to 45 °C
}

// The equation of Baker and Genigeorgis 1990, from memory, at 8 °C for a hundred spores.
func ExampleTimeToToxinInFish() {
	at, err := growth.TimeToToxinInFish(units.Celsius(8), 2*units.One)
	fmt.Println(days(at.Time), err)
	// Output: 6.29 days <nil>
}

// An invented catch, two days at 2 °C after five hours of chilling: almost all of the share is from those hours.
func ExampleToxinShare() {
	toxin, err := growth.ToxinShare(caught(), 48*time.Hour)
	fmt.Println(units.Text(toxin.Share, units.Percent, 1), "of the time to toxin", err)
	fmt.Println(toxin.Cautions[0].Text)
	// Output:
	// 11.2 % of the time to toxin <nil>
	// This is no permission to keep fish so long: hold its record against the exposure limits and go by what is stricter.
}

// days prints a time in days, to a hundredth.
func days(d time.Duration) string {
	n, _ := units.RatioOf(units.Ratio(d), units.Ratio(24*time.Hour))
	return units.In(n, units.One, 2).StringFixed(2) + " days"
}

// caught is an invented record: a trout at 14 °C for an hour and a half, chilled to 2 °C over five, kept there for two
// days.
func caught() series.Series[units.Temperature] {
	record, _ := series.New([]series.Reading[units.Temperature]{
		{At: 0, Value: units.Celsius(14)},
		{At: 90 * time.Minute, Value: units.Celsius(14)},
		{At: 390 * time.Minute, Value: units.Celsius(2)},
		{At: 54*time.Hour + 30*time.Minute, Value: units.Celsius(2)},
	})
	return record
}
