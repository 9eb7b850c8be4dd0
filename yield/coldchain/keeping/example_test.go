package keeping_test

import (
	"fmt"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain/keeping"
)

// Trout is fatty in one chart and lean in another: both are returned, the strictest first.
func ExampleFind() {
	trout, err := keeping.Find(keeping.RawTrout, keeping.InFreezer)
	for _, r := range trout.Quality {
		fmt.Println(r.Printed, "for", r.Food)
	}
	fmt.Println(trout.Safety[0].Printed, err)
	fmt.Println(trout.Quality[0].Citation)
	// Output:
	// 2-3 months for raw fatty fish
	// 2-3 months for raw fatty fish
	// 2-3 months for raw trout
	// 3-8 months for raw fish
	// 4-6 months for raw trout
	// 6 months for raw lean fish
	// 6-8 months for raw lean fish
	// 6-9 months for raw trout
	// indefinitely <nil>
	// US FDA, refrigerator and freezer storage chart, chart (read)
}

// Smoked fish in a loose bag, nine days in a refrigerator of 38 °F.
func ExampleCheck() {
	c, err := keeping.Check(keeping.Smoked, keeping.InRefrigerator, units.Fahrenheit(38), 9*24*time.Hour)
	fmt.Println(c.Safety, err)
	for _, l := range c.Lines[:3] {
		fmt.Println(l.Rule.Printed, l.Rule.AtMost.Text(units.FahrenheitScale, 0), l.Standing, l.Left)
	}
	// Output:
	// too warm for the rule <nil>
	// 10 days 40 °F within 24h0m0s
	// 14 days 36 °F too warm for the rule 0s
	// 14 days 40 °F within 120h0m0s
}

func ExampleParseFood() {
	food, err := keeping.ParseFood("Raw trout")
	fmt.Println(food, err)
	// Output: raw trout <nil>
}

func ExampleParseStorage() {
	storage, err := keeping.ParseStorage("freezer")
	fmt.Println(storage, err)
	// Output: freezer <nil>
}

func ExampleFood() {
	var food keeping.Food
	err := food.UnmarshalText([]byte("home-canned fish"))
	text, _ := food.MarshalText()
	fmt.Println(food, string(text), err)
	// Output: home-canned fish home-canned fish <nil>
}

func ExampleStorage() {
	var storage keeping.Storage
	err := storage.UnmarshalText([]byte("cupboard"))
	text, _ := storage.MarshalText()
	fmt.Println(storage, string(text), err)
	// Output: cupboard cupboard <nil>
}

func ExampleConcern() {
	fmt.Println(keeping.Safety, "|", keeping.Quality)
	// Output: safety | quality
}

func ExampleStanding() {
	fmt.Println(keeping.NotPublished, "|", keeping.KeptWithin, "|", keeping.KeptToTheEnd, "|", keeping.KeptTooWarm, "|", keeping.KeptBeyond)
	// Output: not published | within | past the shorter end | too warm for the rule | beyond
}
