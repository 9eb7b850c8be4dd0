package coldchain_test

import (
	"fmt"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain"
)

func ExampleLandingRules() {
	for _, r := range coldchain.LandingRules()[:3] {
		fmt.Println(r.Demand, "|", r.Printed, "|", r.For)
	}
	// Output:
	// bleed and gut | at once, never later than 2 hours after the catch; then on ice until canned | fish for canning
	// bleed and gut | gut within 2 hours, ice | fish for canning
	// gutted | all fish for smoking is eviscerated; raw fish at or below 38 °F | fish for smoking
}

// Gutted after two and a half hours, for the canner.
func ExampleCheckLanding() {
	r, err := coldchain.CheckLanding(coldchain.Landing{
		Gutted: units.State(150 * time.Minute), Iced: units.State(150 * time.Minute), Medium: units.Celsius(0), Warmest: units.Celsius(16), ForCanning: true,
	})
	fmt.Println(r.Verdict, "|", r.Yardstick.Verdict, err)
	for _, f := range r.Findings {
		fmt.Println(f.Text(units.Metric))
	}
	fmt.Println(r.Cautions[0].Text)
	// Output:
	// not met | met <nil>
	// time until on ice: 150 min stated, at most 2 h published, too long by 30 min
	// time until bled and gutted: 150 min stated, at most 2 h published, too long by 30 min
	// The published canning process is for fish that was bled and gutted within 2 h and lay on ice since: can no other.
}

func ExampleLandingDemand() {
	fmt.Println(coldchain.BleedAndGut, "|", coldchain.Gutted, "|", coldchain.IntoIce)
	// Output: bleed and gut | gutted | into ice
}

func ExampleHistamineFigures() {
	for _, f := range coldchain.HistamineFigures()[5:8] {
		fmt.Println(f.Fish, f.Positive, "of", f.Samples, "up to", units.Text(f.High, units.PartsPerMillion, 1))
	}
	// Output:
	// raw rainbow trout 0 of 20 up to 0.0 ppm
	// smoked rainbow trout 1 of 13 up to 3.5 ppm
	// raw Atlantic salmon 8 of 34 up to 156.4 ppm
}
