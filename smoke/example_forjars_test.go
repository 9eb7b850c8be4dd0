package smoke_test

import (
	"fmt"
	"time"

	"example.org/lakelarder/smoke"
	"example.org/lakelarder/units"
)

// An invented recipe that smokes fish for jars as if it were to be eaten from the smoker.
func ExampleCheckForJars() {
	a, err := smoke.CheckForJars(smoke.Claim{
		Method: smoke.HotSmoke, Air: units.State(units.Fahrenheit(210)), Time: units.State(5 * time.Hour), Core: units.State(units.Fahrenheit(180)),
	}, units.State(35*units.Percent))
	fmt.Println(a.Verdict, err)
	fmt.Println(a.Refusal)
	for _, f := range a.Findings {
		fmt.Println("-", f)
	}
	// Output:
	// not published <nil>
	// the process was tested at losses of 10 to 30 % alone: do not can this fish; cook it through and eat it, or freeze it
	// - time in the smoker: 5 h stated, at most 2 h published, too long by 3 h
	// - loss: 35 % stated, 10 % to 30 % published, different by 5 %
	// - air of the smoker: 210.00 °F (98.89 °C) stated, 140.00 °F (60.00 °C) to 160.00 °F (71.11 °C) published, different by 50.00 °F (27.78 K)
	// - core: 180.00 °F (82.22 °C) stated, not cooked published, different
}
