package parasites_test

import (
	"fmt"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/yield/coldchain/freezing"
	"example.org/lakelarder/yield/coldchain/parasites"
)

// A kokanee (invented) two weeks in a home freezer at 0 °F.
func ExampleCheck() {
	plan := parasites.Plan{Freezer: units.Fahrenheit(0), Stored: 14 * 24 * time.Hour}
	report, err := parasites.Check(plan)
	fmt.Println(report.Treatment, err)
	fmt.Println(report.Findings[0].Would)

	plan.Freezer = units.Fahrenheit(-10)
	report, err = parasites.Check(plan)
	fmt.Println(report.Treatment, err)
	for _, f := range report.Findings {
		fmt.Printf("%s: %v (%v)\n", f.Rule.Name, f.Treatment, f.Rule.Standing)
	}
	// Output:
	// not met <nil>
	// 4 °F (2.2 °C) too warm: keep it at -20 °C (-4 °F) or below for 168 h without a break, from loading the freezer
	// met <nil>
	// Food Code, 7 days: met (deciding)
	// Food Code, 15 hours: not met (deciding)
	// Food Code, 24 hours: not met (deciding)
	// EU, 24 hours: cannot tell (named only)
	// EU, 15 hours: not met (named only)
	// Codex, 24 hours: cannot tell (named only)
}

// Eight inches of whole trout (invented), frozen at -10 °F: too thick for time from loading, so the week counts from
// when the core is cold.
func ExampleCheck_thick() {
	piece, _ := pinkSalmon().Piece(freezing.Cylinder, 8*units.Inch, units.Celsius(4), units.Celsius(-20), units.Fahrenheit(-10), 7*units.WattPerSquareMetreKelvin)
	r, _ := piece.Between(5*units.WattPerSquareMetreKelvin, 10*units.WattPerSquareMetreKelvin)
	plan := parasites.Plan{Freezer: piece.Medium, Stored: 168 * time.Hour, Thickness: units.State(piece.Thickness)}
	report, _ := parasites.Check(plan)
	fmt.Println("a week from loading:", report.Treatment)

	plan.Stored += r.High.Time
	plan.Through, plan.Core = units.State(r.High.Time), piece.Core
	report, err := parasites.Check(plan)
	fmt.Printf("%.0f h until the core is at -20 °C and a week more: %v %v\n", r.High.Time.Hours(), report.Treatment, err)
	// Output:
	// a week from loading: cannot tell
	// 66 h until the core is at -20 °C and a week more: met <nil>
}

// The record of a probe (invented): through -20 °C after 12 h, cold for five days, an open door, cold again.
func ExampleAudit() {
	hour := func(n int, c float64) series.Reading[units.Temperature] {
		return series.Reading[units.Temperature]{At: time.Duration(n) * time.Hour, Value: units.Celsius(c)}
	}
	record, _ := series.New([]series.Reading[units.Temperature]{
		hour(0, 4), hour(12, -20), hour(14, -24), hour(132, -24), hour(134, -16), hour(136, -24), hour(200, -24),
	})
	report, err := parasites.Audit(record, 120*time.Hour)
	fmt.Println(report.Treatment, err)
	week := report.Findings[0]
	fmt.Println(week.Rule.Name+":", units.Lasting(week.Held), "held,", units.Lasting(week.Short), "missing")
	// Output:
	// not met <nil>
	// Food Code, 7 days: 121 h held, 47 h missing
}

func ExampleRules() {
	for _, r := range parasites.Rules() {
		if r.Standing == parasites.Refused {
			fmt.Println(r.Temperature.Text(units.FahrenheitScale, 0), units.Lasting(r.Hold), r.Standing)
		}
	}
	// Output:
	// 0 °F 48 h not to be used
	// 0 °F 24 h not to be used
	// 14 °F 24 h not to be used
	// 122 °F 10 min not to be used
}

func ExampleClock() { fmt.Println(parasites.FromSolid) /* Output: from the fish being solid */ }

func ExampleStanding() { fmt.Println(parasites.Named) /* Output: named only */ }

func ExampleTreatment() { fmt.Println(parasites.NotTold) /* Output: cannot tell */ }

func ExampleCarriers() {
	fmt.Println(len(parasites.Carriers()), parasites.Carriers()[0].Fish)
	// Output: 11 pike
}

func ExampleCarriersOf() {
	for _, c := range parasites.CarriersOf("rainbow trout")[:2] {
		fmt.Println(c.Parasite+",", c.Waters+":", c.Note)
	}
	// Output:
	// Diphyllobothrium nihonkaiense, Alaska, reported 2017: wild fish
	// Diphyllobothrium ditremum, Superior, Huron, Ontario: several fish families
}

func ExampleExempt() {
	fmt.Println(parasites.Exempt())
	// Output: exempt from freezing are farmed fish fed on pellets alone, molluscs, the tunas named there and washed roe: no wild fish of a lake (US FDA, Food Code (edition not stated), 3-402.11(B) (read))
}

// pinkSalmon is of ASHRAE's composition table, from memory.
func pinkSalmon() freezing.Flesh {
	return freezing.Flesh{
		Water: 7635 * units.Percent / 100, Protein: 1994 * units.Percent / 100, Fat: 345 * units.Percent / 100, Ash: 122 * units.Percent / 100,
		FreezesAt: units.Fahrenheit(28),
	}
}
