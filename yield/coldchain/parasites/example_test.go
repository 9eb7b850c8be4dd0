package parasites_test

import (
	"encoding/json"
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
	fmt.Println(report.Verdict, err)
	fmt.Println(report.Lines[0].Would(units.Both))

	plan.Freezer = units.Fahrenheit(-10)
	report, err = parasites.Check(plan)
	fmt.Println(report.Verdict, err)
	for _, f := range report.Lines {
		fmt.Printf("%s: %v (%v)\n", f.Rule.Name, f.Verdict, f.Rule.Standing)
	}
	// Output:
	// not met <nil>
	// 4 F° (2.3 C°) too warm: keep it at -4 °F (-20 °C) or below for 7 days without a break, from loading the freezer
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
	fmt.Println("a week from loading:", report.Verdict)

	plan.Stored += r.High.Time
	plan.Through, plan.Core = units.State(r.High.Time), piece.Core
	report, err := parasites.Check(plan)
	fmt.Printf("%.0f h until the core is at -20 °C and a week more: %v %v\n", r.High.Time.Hours(), report.Verdict, err)
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
	fmt.Println(report.Verdict, err)
	week := report.Lines[0]
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

func ExampleParseClock() {
	c, err := parasites.ParseClock("from the core being there")
	fmt.Println(c, err)
	// Output: from the core being there <nil>
}

func ExampleParseStanding() {
	_, err := parasites.ParseStanding("enough")
	fmt.Println(err)
	// Output: unknown standing "enough": expected deciding, named only or not to be used
}

func ExampleParseStep() {
	s, err := parasites.ParseStep("use soon")
	fmt.Println(s, err)
	// Output: use soon <nil>
}

func ExampleStep_Text() {
	fmt.Println(parasites.FreezeAgain.Text(units.Metric))
	// Output:
	// Colder: at -20 °C or below for 168 h without a break, from loading the freezer. A home freezer at -17.8 °C is 2.2 C° too warm for that: turn it down and check it with a thermometer between the packs.
}

func ExampleLine_Would() {
	report, _ := parasites.Check(parasites.Plan{Freezer: units.Fahrenheit(0), Stored: 14 * 24 * time.Hour})
	fmt.Println(report.Lines[0].Would(units.US))
	// Output:
	// 4 F° too warm: keep it at -4 °F or below for 7 days without a break, from loading the freezer
}

func ExampleReport() {
	report, _ := parasites.Check(parasites.Plan{Freezer: units.Fahrenheit(0), Stored: 14 * 24 * time.Hour})
	for _, f := range report.Findings[:1] {
		fmt.Println(f.Text(units.US))
	}
	// Output:
	// freezer: 0 °F stated, at most -4 °F published, too warm by 4 F°
}

func ExamplePlan() {
	var p parasites.Plan
	err := json.Unmarshal([]byte(`{"freezer": "-10 °F", "stored": "168 h"}`), &p)
	fmt.Println(p.Freezer, p.Stored, err)
	// Output:
	// -10 °F 168h0m0s <nil>
}

func ExampleClock() { fmt.Println(parasites.FromSolid) /* Output: from the fish being solid */ }

func ExampleStanding() { fmt.Println(parasites.Named) /* Output: named only */ }

func ExampleCarriers() {
	fmt.Println(len(parasites.Carriers()), parasites.Carriers()[0].Fish)
	// Output: 11 pike
}

func ExampleFindCarriers() {
	for _, c := range parasites.FindCarriers("rainbow trout")[:2] {
		fmt.Println(c.Parasite+",", c.Waters+":", c.Note)
	}
	// Output:
	// Diphyllobothrium nihonkaiense, Alaska, reported 2017: wild fish
	// Diphyllobothrium ditremum, Superior, Huron, Ontario: several fish families
}

// pinkSalmon is of ASHRAE's composition table, from memory.
func pinkSalmon() freezing.Flesh {
	return freezing.Flesh{
		Water: 7635 * units.Percent / 100, Protein: 1994 * units.Percent / 100, Fat: 345 * units.Percent / 100, Ash: 122 * units.Percent / 100,
		FreezesAt: units.Fahrenheit(28),
	}
}

// What an app saves it reads back.
func ExampleRule() {
	rule := parasites.Rules()[0]
	text, err := json.Marshal(rule)
	var back parasites.Rule
	fmt.Println(err, json.Unmarshal(text, &back))
	fmt.Println(back == rule)
	// Output:
	// <nil> <nil>
	// true
}
