package process_test

import (
	"fmt"
	"time"

	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
)

// A recipe for half-pints of smoked fish with 100 minutes, as some pages have it, used at 4,350 ft with the setting of sea level.
func ExampleCheck() {
	a, err := process.Check(process.Claim{
		Product: process.SmokedFish, Pack: process.AsSmoked, Jar: process.HalfPint, Gauge: process.Dial,
		Altitude: units.State(4_350 * units.Foot),
		Pressure: units.State(11 * units.PSI),
		Process:  units.State(100 * time.Minute),
		Water:    units.State(4 * units.Quart),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(a.Verdict)
	for _, f := range a.Findings {
		fmt.Println(f.Text(units.US))
	}
	fmt.Println(a.Findings[1].Citation)
	// Output:
	// not met
	// pressure: 11 psi stated, at least 13 psi published, short by 2 psi
	// process time: 100 min stated, at least 110 min published, short by 10 min (100 min for half-pints of smoked fish is in circulation; no tested source has it)
	// vent time: missing, at least 10 min published
	// USDA, Complete Guide to Home Canning, Guide 5 (AIB 539, rev. 2015), Smoked Fish, pp. 5-13 and 5-14: half-pints take the time of the pint (read)
}

// A recipe that does not say for which altitude it is can still be too short for every one.
func ExampleCheck_open() {
	a, err := process.Check(process.Claim{
		Product: process.Fish, Pack: process.RawPack, Jar: process.Pint, Gauge: process.Weighted,
		Pressure: units.State(10 * units.PSI),
		Process:  units.State(90 * time.Minute),
		Vent:     units.State(10 * time.Minute),
	})
	fmt.Println(a.Verdict, err, a.Governing == process.Schedule{})
	for _, f := range a.Findings {
		fmt.Println(f.Text(units.US))
	}
	// Output:
	// not met <nil> true
	// process time: 90 min stated, at least 100 min published, short by 10 min
	// altitude: missing
}

// What is not published is a verdict, and says what is.
func ExampleAssessment() {
	a, err := process.Check(process.Claim{Product: process.Fish, Jar: process.PintAndHalf})
	fmt.Println(a.Verdict, err)
	fmt.Println(a.Refusal)
	fmt.Println(a.Cautions[0].ID)
	// Output:
	// not published <nil>
	// no process is published for fish in 1½ pint jars; its tables are for jars: half-pint, 12 oz, pint and quart
	// process.figures-only
}
