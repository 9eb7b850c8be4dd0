package freezing_test

import (
	"fmt"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain/freezing"
)

// A household's share of a good day (invented), 70 lb of fillets, into a freezer of 15 cubic feet that holds 200 lb
// already.
func ExamplePlan() {
	plan := freezing.Load{Room: 15 * units.CubicFoot, Held: 200 * units.Pound, Catch: 70 * units.Pound}
	d, err := freezing.Plan(plan)
	fmt.Println(units.Text(d.PerDay, units.Pound, 0), "a day for", d.Days, "days", err)
	fmt.Println("holds", units.Text(d.Holds, units.Pound, 0)+",", "over by", units.Text(d.Over, units.Pound, 0))
	fmt.Println(d.Cautions[1].Text)
	// Output:
	// 30 lb a day for 3 days <nil>
	// holds 525 lb, over by 0 lb
	// Set the freezer to -10 °F (-23.3 °C) 24 h before a large load.
}

func ExampleLoadRules() {
	r := freezing.LoadRules()[0]
	fmt.Println(r.For+":", units.Text(r.PerCubicFoot, units.Pound, 0), "to the cubic foot in", units.Lasting(r.Within))
	// Output: fish or meat: 2 lb to the cubic foot in 24 h
}
