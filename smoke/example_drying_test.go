package smoke_test

import (
	"fmt"
	"time"

	"example.org/lakelarder/smoke"
	"example.org/lakelarder/smoke/moistair"
	"example.org/lakelarder/units"
)

// One kilogram of fillets on a rack, air of 30 °C and 50 % at 4,350 ft.
func ExampleDryPellicle() {
	a, _ := moistair.ByRelativeHumidity(units.Celsius(30), 50*units.Percent, 86_300*units.Pascal)
	p, err := smoke.DryPellicle(units.Kilogram, 800*units.SquareCentimetre, a, moistair.SmokerFilm(), 98*units.Percent)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("tacky after", p.Tacky.Low.Round(time.Minute), "to", p.Tacky.High.Round(time.Minute))
	fmt.Println("smoke on it before", p.Stop.Low.Round(time.Minute))
	fmt.Println(p.Cautions[1])
	// Output:
	// tacky after 10m0s to 31m0s
	// smoke on it before 1h3m0s
	// Start the smoke while the surface is still moist or tacky: smoke does not take on a skin that has sealed. (State of Michigan, Michigan Administrative Code, Regulation 569, Smoked Fish (R 285.569), R 285.569.6 (read))
}

func ExampleFallingRates() {
	for _, f := range smoke.FallingRates() {
		fmt.Println(f.Air, f.Initial, "to", f.Final, f.Time, f.Citation.Basis)
	}
	// Output:
	// 35 °C 71.87 % to 25 % 35h0m0s read
	// 45 °C 71.87 % to 25 % 28h0m0s read
	// 55 °C 71.87 % to 25 % 14h0m0s read
	// 65 °C 71.87 % to 25 % 11h0m0s read
}

func ExampleFallingRate_PerHour() {
	k, err := smoke.FallingRates()[0].PerHour()
	fmt.Println(units.In(k, units.One, 4), "per hour", err)
	// Output: 0.0582 per hour <nil>
}

func ExampleFallingRate_Moisture() {
	m, err := smoke.FallingRates()[3].Moisture(7187*units.Percent/100, 11*time.Hour)
	fmt.Println(units.Text(m, units.Percent, 2), err)
	// Output: 25.00 % <nil>
}

func ExampleFallingRate_TimeTo() {
	d, err := smoke.FallingRates()[2].TimeTo(7187*units.Percent/100, 60*units.Percent)
	fmt.Println(d.Round(time.Minute), err)
	// Output: 3h40m0s <nil>
}

// A cured fillet of 70 % water and 2 % salt has a water phase salt of 2.78 %.
func ExampleLossForWaterPhaseSalt() {
	d, err := smoke.LossForWaterPhaseSalt(100*units.Gram, 2*units.Gram, 70*units.Gram, 35*units.PerMille)
	fmt.Println(units.Text(d.Mass, units.Gram, 3), d.BeyondPublished, err)
	d, _ = smoke.LossForWaterPhaseSalt(100*units.Gram, 1*units.Gram, 70*units.Gram, 35*units.PerMille)
	fmt.Println(units.Text(d.Mass, units.Gram, 3), d.BeyondPublished)
	fmt.Println(d.Cautions[1])
	// Output:
	// 14.857 g false <nil>
	// 42.429 g true
	// The greatest loss of smoked trout in print is 28.8 %. Drying cannot be counted on for more: the fish needs more salt. (Dimitriadou et al., steamed trout fillets with liquid smoke (Food Science and Technology International 14, 2008), abstract (read))
}
