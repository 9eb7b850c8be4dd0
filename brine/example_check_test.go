package brine_test

import (
	"fmt"
	"time"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/units"
)

// A recipe that is too sparing and too warm.
func ExampleCheck() {
	a, err := brine.Check(brine.Claim{
		Method:      brine.DrySalted,
		Fish:        units.State(2 * units.Kilogram),
		Salt:        units.State(40 * units.Gram),
		Time:        units.State(24 * time.Hour),
		Temperature: units.State(units.Fahrenheit(45)),
	})
	fmt.Println(a.Verdict, err)
	for _, f := range a.Findings {
		fmt.Println(f)
	}
	// Output:
	// falls short <nil>
	// salt to fish: 2.00 % stated, 3.00 % published, short by 1.00 %
	// temperature: 45 °F stated, at most 38 °F published, too warm by 7.0 °F
	// water phase salt: not stated, 3.50 % published
}

func ExampleAssessment_Cautions() {
	a, _ := brine.Check(brine.Claim{SaltToFish: units.State(3 * units.Percent)})
	fmt.Println(a.Verdict, "-", a.Cautions()[0].Text)
	// Output: cannot tell - only the figures of the salting were compared; a recipe that is not a tested one stays so
}

func ExampleFinding() {
	fmt.Println(brine.Finding{What: "time", Kind: brine.Short, Stated: "9h0m0s", Published: "12h0m0s", Difference: "3h0m0s"})
	// Output: time: 9h0m0s stated, 12h0m0s published, short by 3h0m0s
}

func ExampleVerdict() {
	fmt.Println(brine.Meets, brine.FallsShort, brine.Verdict(0))
	// Output: meets falls short no verdict
}

func ExampleKind() {
	fmt.Println(brine.Short, brine.TooWarm, brine.Kind(0))
	// Output: short too warm no finding
}

func ExampleMethod() {
	fmt.Println(brine.DrySalted, brine.WetBrined, brine.Method(0))
	// Output: dry salted wet brined method not stated
}

func ExampleSmoking() {
	fmt.Println(brine.HotSmoked, brine.ColdSmoked, brine.Smoking(0))
	// Output: hot-smoked cold-smoked smoking not stated
}

func ExampleStrictestSaltLimit() {
	l := brine.StrictestSaltLimit(brine.ColdSmoked, brine.AirPack)
	fmt.Println(l.Least, l.Place)
	fmt.Println(brine.StrictestSaltLimit(brine.ColdSmoked, brine.LowOxygenPack).Least)
	// Output:
	// 3 % Michigan
	// 3.5 %
}

func ExampleGrowthLimits() {
	l := brine.GrowthLimits()[3]
	fmt.Println(l.Organism, l.MostSalt, l.Coldest)
	fmt.Println(l.Citation.Basis)
	// Output:
	// Clostridium botulinum type E, nonproteolytic B and F 5 % 3.3 °C
	// read
}

// What 3.5 % of salt and a refrigerator at 38 °F hold back.
func ExampleConditions_Holds() {
	all, err := brine.Conditions{WaterPhaseSalt: 35 * units.PerMille, Temperature: units.Fahrenheit(38)}.Holds()
	for _, g := range all[2:7] {
		fmt.Println(g)
	}
	fmt.Println(err)
	// Output:
	// Clostridium botulinum type A, proteolytic B and F: held back by cold
	// Clostridium botulinum type E, nonproteolytic B and F: can grow
	// Clostridium perfringens: held back by cold
	// pathogenic Escherichia coli: held back by cold
	// Listeria monocytogenes: can grow
	// <nil>
}

func ExampleGrowth() {
	fmt.Println(brine.Growth{Limit: brine.GrowthLimit{Organism: "Salmonella spp."}, By: []brine.Barrier{brine.ByCold, brine.ByPH}})
	// Output: Salmonella spp.: held back by cold, pH
}

func ExampleBarrier() {
	fmt.Println(brine.BySalt, brine.ByActivity)
	// Output: salt water activity
}

func ExampleKeepLimits() {
	for _, l := range brine.KeepLimits()[:2] {
		fmt.Println(l.Salt, l.Place)
	}
	// Output:
	// 20 % Alaska
	// 17 % Maine
}

func ExampleSaltingRules() {
	for _, r := range brine.SaltingRules()[:4] {
		fmt.Println(r.Most.Text(units.FahrenheitScale, 0), r.What)
	}
	// Output:
	// 38 °F raw fish until it is salted
	// 60 °F brine at its start
	// 38 °F where fish brines for more than 4 h
	// 38 °F where dry-salted fish lies, from the start
}
