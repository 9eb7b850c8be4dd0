package ice_test

import (
	"encoding/json"
	"fmt"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain/ice"
)

func ExampleConstants() {
	for _, c := range ice.Constants() {
		fmt.Println(c.Name, units.Text(c.PerDegree, units.Percent, 3), c.Citation.Basis)
	}
	// Output:
	// Icelandic guidance 1.140 % read
	// table for 10 kg of fish 1.125 % computed
	// lean fish 1.000 % computed
}

// FAO Fisheries Technical Paper 331: lean fish of 0.8 kcal/(kg °C) in ice of 80 kcal/kg.
func ExampleConstantOf() {
	c, err := ice.ConstantOf(8*units.KilocaloriePerKilogramKelvin/10, ice.Fresh)
	fmt.Println(units.Text(c.PerDegree, units.Percent, 2), err)
	// Output: 1.00 % <nil>
}

// A trade page prints 1.7 kg of ice for 10 kg of fish at 15 °C; the largest constant in circulation gives a little more.
func ExampleToChill() {
	ice, err := ice.ToChill(10*units.Kilogram, units.Celsius(15), units.Celsius(0), ice.Constant{})
	fmt.Println(ice.Mass, err)
	fmt.Println(ice.Citation)
	// Output:
	// 1.71 kg <nil>
	// Iceland, guidance on handling fish with ice, ice rules (read)
}

// A box with 50 mm of foam, 1.2 m² of it, in air of 25 °C.
func ExampleWall() {
	w := units.WattPerSquareMetreKelvin
	u, citation, err := ice.Wall(10*w, 100*w, ice.Layer{Thickness: 50 * units.Millimetre, Conductivity: 35 * units.WattPerMetreKelvin / 1000})
	fmt.Println(units.Text(u, w, 3), citation.Basis, err)
	// Output: 0.650 W/(m² K) recalled <nil>
}

// The same box, its wall given in the unit of an old table: 0.56 kcal/(m² h °C).
func ExampleMeltRateOf() {
	rate, err := ice.MeltRateOf(56*ice.KilocaloriePerSquareMetreHour/100, 12*units.SquareMetre/10, ice.Fresh)
	fmt.Println(units.Text(rate.PerHour, units.Gram, 1), err)
	ice, err := rate.Hold(units.Celsius(25), 24*time.Hour)
	fmt.Println(ice.Mass, err)
	// Output:
	// 8.4 g <nil>
	// 5.04 kg <nil>
}

// An invented test: 10 kg of ice, 6.4 kg of it left after a day at 20 °C.
func ExampleMeltTest() {
	rate, err := ice.MeltTest(10*units.Kilogram, 6400*units.Gram, units.Celsius(20), 24*time.Hour)
	fmt.Println(units.Text(rate.PerHour, units.Gram, 1), rate.Citation.Basis, err)
	// Output: 7.5 g recalled <nil>
}

func ExampleMeltRate_Hold() {
	ice, err := ice.MeltRate{PerHour: 9 * units.Gram}.Hold(units.Celsius(25), 24*time.Hour)
	fmt.Println(ice.Mass, err)
	// Output: 5.4 kg <nil>
}

// 25 kg of fish for a day at 25 °C: nearly twice what a well insulated box melts.
func ExampleRoughHold() {
	ice, err := ice.RoughHold(25*units.Kilogram, units.Celsius(25), 24*time.Hour)
	fmt.Println(ice.Mass, err)
	fmt.Println(ice.Cautions[0].Text)
	// Output:
	// 9.375 kg <nil>
	// A rough rule that knows nothing of the box: weigh the ice of your own box once.
}

// Slurry of 33 % ice: three times the mass.
func ExampleSlurry() {
	slurry, err := ice.Slurry(5*units.Kilogram, 33*units.Percent)
	fmt.Println(slurry.Mass, err)
	// Output: 15.152 kg <nil>
}

// An invented day: 25 kg of fish from water of 14 °C, ten hours at 24 °C, a box that was weighed, a quarter of the ice to be left over.
func ExamplePlan() {
	ice, err := ice.Plan(ice.Trip{
		Fish: 25 * units.Kilogram, From: units.Celsius(14), To: units.Celsius(0),
		Box: ice.MeltRate{PerHour: 9 * units.Gram}, Outside: units.Celsius(24), For: 10 * time.Hour, Spare: 25 * units.Percent,
	})
	fmt.Println(ice.Chill, "+", ice.Hold, "+", ice.Spare, "=", ice.Total, err)
	// Output: 3.99 kg + 2.16 kg + 1.538 kg = 7.688 kg <nil>
}

// A round fish of 9 to 11 cm from 16 °C to 38 °F in its middle: hours, not minutes.
func ExampleChillTime() {
	fish := ice.FishOf(ice.Cylinder, 9*units.Centimetre, 11*units.Centimetre, units.Celsius(16))
	times, err := ice.ChillTime(fish, ice.CrushedFilm(), units.Celsius(0), units.Fahrenheit(38))
	fmt.Println(times.Low.Round(time.Minute), times.Likely.Round(time.Minute), times.High.Round(time.Minute), err)
	// Output: 1h50m0s 2h28m0s 3h24m0s <nil>
}

func ExampleFishOf() {
	fish := ice.FishOf(ice.Slab, 2*units.Centimetre, 3*units.Centimetre, units.Celsius(12))
	fmt.Println(fish.Shape, fish.Conductivity, fish.Diffusivity)
	// Output: slab 0.5 W/(m K) 0.12 mm²/s
}

func ExampleCrushedFilm() {
	film := ice.CrushedFilm()
	fmt.Println(film.Low, film.Likely, film.High, film.Citation.Basis)
	// Output: 50 W/(m² K) 100 W/(m² K) 200 W/(m² K) practice
}

func ExampleShape() {
	fmt.Println(ice.Slab, "|", ice.Cylinder)
	// Output: slab | cylinder
}

func ExampleParseShape() {
	shape, err := ice.ParseShape("cylinder")
	fmt.Println(shape, err)
	// Output: cylinder <nil>
}

func ExampleTrip() {
	var trip ice.Trip
	err := json.Unmarshal([]byte(`{"fish": "25 kg", "from": "14 °C", "to": "0 °C", "outside": "24 °C", "for": "10 h"}`), &trip)
	load, _ := ice.Plan(trip)
	fmt.Println(load.Total, load.Rough, err)
	// Output:
	// 7.74 kg true <nil>
}
