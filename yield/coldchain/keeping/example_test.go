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
	fmt.Println(c.Verdict, err)
	for _, f := range c.Findings {
		fmt.Println(f.Text(units.US))
	}
	for _, l := range c.Lines[:3] {
		fmt.Println(l.Rule.Printed, l.Rule.AtMost.Text(units.FahrenheitScale, 0), l.Verdict, l.Left)
	}
	// Output:
	// not met <nil>
	// warmest in storage: 38 °F stated, below 36 °F published, too warm by 2 F°
	// 10 days 40 °F met 24h0m0s
	// 14 days 36 °F not met 0s
	// 14 days 40 °F met 120h0m0s
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

func ExampleParseConcern() {
	c, err := keeping.ParseConcern("Safety")
	fmt.Println(c, err)
	// Output: safety <nil>
}
