package growth_test

import (
	"fmt"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain/growth"
)

// FDA and FSIS risk assessment 2003, appendix 8: 0.0952 log10 a day on cold-smoked salmon at 4 °C are 0.136 at 5 °C.
func ExampleListeriaRate() {
	g, err := growth.ListeriaRate(952*units.PerMille/10, units.Celsius(4), units.Celsius(5))
	fmt.Println(units.In(g.PerDay, units.One, 3), err)
	// Output: 0.136 <nil>
}

// The published output of the model: 0.09583964 an hour at 15 °C.
func ExampleListeriaInSeafood() {
	g, err := growth.ListeriaInSeafood(growth.Seafood{
		Temperature: units.Celsius(15), WaterActivity: 980 * units.PerMille, PH: 7 * units.PHUnit,
		Phenol: 3 * units.PartsPerMillion, Sorbic: 6000 * units.PartsPerMillion,
	})
	fmt.Println(units.In(g.PerHour, units.One, 8), units.In(g.Xi, units.One, 1), err)
	// Output: 0.09583964 1 <nil>
}

func ExampleSeafoodActivity() {
	activity, err := growth.SeafoodActivity(35 * units.PerMille)
	fmt.Println(units.In(activity, units.One, 4), err)
	// Output: 0.9798 <nil>
}

func ExampleListeriaInRawSalmon() {
	g, err := growth.ListeriaInRawSalmon(units.Celsius(5))
	fmt.Println(units.In(g.PerDay, units.One, 2), "log10 a day after", days(g.Lag.Value), err)
	// Output: 0.25 log10 a day after 6.05 days <nil>
}

// A smoked fish in a refrigerator at 5 °C, where Listeria grows by 0.15 log10 a day: two weeks are more than a hundredfold.
func ExampleRate_Over() {
	g, _ := growth.ListeriaRate(150*units.PerMille, units.Celsius(5), units.Celsius(5))
	logs, err := g.Over(14 * 24 * time.Hour)
	fmt.Println(units.In(logs, units.One, 1), err)
	// Output: 2.1 <nil>
}
