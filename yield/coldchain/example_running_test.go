package coldchain_test

import (
	"fmt"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/yield/coldchain"
)

// watched is an invented trout on the deck, read every half hour: it warms to 62 °F in air of 65 °F and stays there.
func watched() coldchain.Running {
	running, _ := coldchain.Watch(coldchain.Terms{
		MaxGap: time.Hour, Rules: []coldchain.Rule{coldchain.RawReadyToEat},
		Stays: []coldchain.Stay{{When: series.Stretch{To: 12 * time.Hour}, In: coldchain.Out, Air: units.Fahrenheit(65)}},
	})
	for i, f := range []float64{48, 54, 60, 62, 62} {
		running, _ = running.Next(series.Reading[units.Temperature]{At: time.Duration(i) * 30 * time.Minute, Value: units.Fahrenheit(f)})
	}
	return running
}

func ExampleWatch() {
	_, err := coldchain.Watch(coldchain.Terms{})
	fmt.Println(err)
	// Output:
	// longest gap trusted is not stated
}

// The same words as Exposure, so far.
func ExampleRunning_Report() {
	report, err := watched().Report()
	fmt.Println(report.Verdict, units.Text(report.Allowances[0].Used, units.Percent, 0), "used", err)
	// Output:
	// met 40 % used <nil>
}

// How long it may stay as it is: five hours above 50 °F, of which two have gone, for while the core warms the air counts.
func ExampleRunning_AtThisRate() {
	for _, f := range watched().AtThisRate() {
		fmt.Println(f.Rule, f.Verdict, f.Left.Round(time.Second), "left, until", f.At.Round(time.Second))
	}
	// Output:
	// raw ready-to-eat met 3h0m0s left, until 5h0m0s
}

// A reading that does not follow is refused, and the exposure stays as it was.
func ExampleRunning_Next() {
	_, err := watched().Next(series.Reading[units.Temperature]{At: time.Hour, Value: units.Fahrenheit(40)})
	fmt.Println(err != nil)
	// Output: true
}
