package spoilage_test

import (
	"fmt"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/yield/coldchain/spoilage"
)

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

const day = 24 * time.Hour

func days(d time.Duration) string {
	n, _ := units.RatioOf(units.Ratio(d), units.Ratio(day))
	return units.In(n, units.One, 2).StringFixed(2) + " days"
}

// An invented catch of two and a quarter days is worth almost four on ice.
func ExampleIceDays() {
	spoiled, err := spoilage.IceDays(caught(), spoilage.FreshFish, 48*time.Hour)
	fmt.Println(days(spoiled.Span), "are worth", days(spoiled.Used), "on ice", err)
	fmt.Println(spoiled.Cautions[0])
	// Output:
	// 2.27 days are worth 3.94 days on ice <nil>
	// This is smell and taste, not safety: fish can be dangerous before it smells. Hold the record against the exposure limits as well.
}

// Of the lives published of trout the shortest counts. What is left on ice is less in a refrigerator at 38 °F.
func ExampleAge_Left() {
	spoiled, _ := spoilage.IceDays(caught(), spoilage.FreshFish, 48*time.Hour)
	lives, _ := spoilage.FindLives("rainbow trout", units.State(true))
	left, err := spoiled.Left(lives[0])
	fmt.Println(days(left.Low), "to", days(left.High), "left on ice", err)
	chilled, _ := spoilage.LifeAt(left.Low, spoilage.FreshFish, units.Fahrenheit(38))
	fmt.Println(days(chilled), "at 38 °F")
	// Output:
	// 5.06 days to 7.06 days left on ice <nil>
	// 2.85 days at 38 °F
}

// FAO Fisheries Technical Paper 348: at 10 °C fish spoils four times as fast as on ice.
func ExampleRate() {
	rate, err := spoilage.Rate(spoilage.FreshFish, units.Celsius(10))
	fmt.Println(units.In(rate, units.One, 2), err)
	// Output: 4 <nil>
}

func ExampleHolds() {
	fmt.Println(spoilage.Holds(units.Celsius(10)), spoilage.Holds(units.Celsius(-18)))
	// Output: true false
}

// FAO Fisheries Technical Paper 348, predicted lives: 14 days on ice are 6.2 at 5 °C.
func ExampleLifeAt() {
	life, err := spoilage.LifeAt(14*day, spoilage.FreshFish, units.Celsius(5))
	fmt.Println(days(life), err)
	// Output: 6.22 days <nil>
}

func ExampleLaw() {
	fmt.Println(spoilage.FreshFish, "|", spoilage.TropicalFish, "|", spoilage.ColdSmokedSalmon)
	// Output: fresh fish | tropical fish | cold-smoked salmon
}

func ExampleLaw_Citation() {
	fmt.Println(spoilage.FreshFish.Citation())
	// Output:
	// Huss, Fisheries Technical Paper 348, Quality and Quality Changes in Fresh Fish (FAO, 1995), equation (1 + 0.1 T)^2 (recalled: check the document before relying on it)
}

func ExampleLives() {
	for _, l := range spoilage.Lives() {
		if l.Gutted.Given {
			fmt.Println(l.Fish, l.Gutted.Value, days(l.Low), l.Citation.Basis)
		}
	}
	// Output:
	// rainbow trout true 21.00 days read
	// rainbow trout false 14.00 days read
	// cod true 15.00 days read
}

// A lake trout has no row of its own: those of trout stand for it, the shortest first.
func ExampleFindLives() {
	lives, err := spoilage.FindLives("lake trout", units.State(true))
	for _, l := range lives {
		fmt.Println(l.Fish, l.Waters, days(l.Low), "to", days(l.High), l.Citation.Basis)
	}
	fmt.Println(err)
	// Output:
	// trout temperate 9.00 days to 11.00 days recalled
	// trout tropical 16.00 days to 24.00 days recalled
	// <nil>
}

func ExampleParseLaw() {
	law, err := spoilage.ParseLaw("fresh fish")
	fmt.Println(law, err)
	// Output: fresh fish <nil>
}
