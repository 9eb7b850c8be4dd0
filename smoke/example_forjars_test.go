package smoke_test

import (
	"fmt"
	"time"

	"example.org/lakelarder/smoke"
	"example.org/lakelarder/units"
)

// An invented recipe that smokes fish for jars as if it were to be eaten from the smoker.
func ExampleCheck_forJars() {
	a, err := smoke.Check(smoke.Claim{
		ForJars: true, Loss: units.State(35 * units.Percent),
		Smoking: smoke.HotSmoked, Air: units.State(units.Fahrenheit(210)), Time: units.State(5 * time.Hour), Core: units.State(units.Fahrenheit(180)),
	})
	fmt.Println(a.Verdict, err)
	fmt.Println(a.Refusal.Text)
	for _, f := range a.Findings {
		fmt.Println("-", f)
	}
	// Output:
	// not published <nil>
	// The process was tested at losses of 10 to 30 % only. Do not can this fish; cook it through and eat it, or freeze it.
	// - time in the smoker: 5 h stated, at most 2 h published, too long by 3 h
	// - loss: 35 % stated, 10 % to 30 % published, different by 5 %
	// - air of the smoker: 210 °F (98.9 °C) stated, 140 °F (60 °C) to 160 °F (71.1 °C) published, different by 50 F° (27.8 C°)
	// - core: 180 °F (82.2 °C) stated, not cooked published
}
