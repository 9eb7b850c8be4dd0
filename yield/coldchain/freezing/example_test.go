package freezing_test

import (
	"fmt"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain/freezing"
)

// pinkSalmon is of ASHRAE's composition table, from memory.
func pinkSalmon() freezing.Flesh {
	return freezing.Flesh{
		Water: 7635 * units.Percent / 100, Protein: 1994 * units.Percent / 100, Fat: 345 * units.Percent / 100, Ash: 122 * units.Percent / 100,
		FreezesAt: units.Fahrenheit(28),
	}
}

func ExampleFlesh_Thermal() {
	for _, c := range []float64{20, -18} {
		p, err := pinkSalmon().Thermal(units.Celsius(c))
		fmt.Println(units.Text(p.Ice, units.Percent, 1)+" ice,", units.Text(p.Density, units.KilogramPerCubicMetre, 0)+",",
			units.Text(p.ConductivityLow, units.WattPerMetreKelvin, 2), "to", units.Text(p.ConductivityHigh, units.WattPerMetreKelvin, 2), err)
	}
	// Output:
	// 0.0 % ice, 1,051 kg/m³, 0.43 W/(m K) to 0.52 W/(m K) <nil>
	// 59.4 % ice, 1,002 kg/m³, 0.58 W/(m K) to 1.65 W/(m K) <nil>
}

func ExampleFlesh_IceAt() {
	ice, err := pinkSalmon().IceAt(units.Celsius(-5))
	fmt.Println(units.Text(ice, units.Percent, 0), err)
	// Output: 38 % <nil>
}

// FAO V3630E, chapter 19, table 30 prints 78.9 kcal/kg for white fish from 15 to -18 °C.
func ExampleFlesh_Heat() {
	cod := freezing.Flesh{
		Water: 8122 * units.Percent / 100, Protein: 1781 * units.Percent / 100, Fat: 67 * units.Percent / 100, Ash: 116 * units.Percent / 100,
		FreezesAt: units.Celsius(-1),
	}
	heat, err := cod.Heat(units.Celsius(15), units.Celsius(-18))
	fmt.Println(units.Text(heat, units.KilocaloriePerKilogram, 1), err)
	// Output: 78.6 kcal/kg <nil>
}

func ExampleIceLaw() { fmt.Println(freezing.TchigeovIce) /* Output: Tchigeov */ }

func ExampleIceLaw_Citation() {
	fmt.Println(freezing.TchigeovIce.Citation().Unverified())
	// Output: true
}

func ExampleFishes() {
	for _, f := range freezing.Fishes()[7:] {
		fmt.Println(f.Name+":", f.FreezesAt.Text(units.CelsiusScale, 1))
	}
	// Output:
	// salmon, pink: -2.2 °C
	// fish, 70 % water: -2.0 °C
	// white fish: -1.0 °C
}

func ExampleFindFish() {
	f, err := freezing.FindFish("Salmon, pink")
	fmt.Println(units.Text(f.Latent, units.KilojoulePerKilogram, 1), f.Citation.Basis, err)
	// Output: 255.9 kJ/kg read <nil>
}

// Geankoplis, Transport Processes and Unit Operations, example 5.5-2, prints 2.394e4 s (6.65 h). The book gives no specific heats: Plank needs none.
func ExamplePiece_Plank() {
	slab := freezing.Piece{
		Shape: freezing.Slab, Thickness: 635 * units.Millimetre / 10, Film: 17 * units.WattPerSquareMetreKelvin,
		Start: units.Kelvin(270.4), FreezesAt: units.Kelvin(270.4), Medium: units.Kelvin(244.3),
		Density: 1057 * units.KilogramPerCubicMetre, Latent: 335 * units.KilojoulePerKilogram * 75 / 100, Conductivity: 1038 * units.WattPerMetreKelvin / 1000,
		HeatBefore: 3500 * units.JoulePerKilogramKelvin, HeatAfter: 2000 * units.JoulePerKilogramKelvin,
	}
	t, err := slab.Plank()
	fmt.Printf("%.1f s, %.2f h %v\n", t.Time.Seconds(), t.Time.Hours(), err)
	// Output: 23944.4 s, 6.65 h <nil>
}

func ExampleFlesh_Piece() {
	piece, err := pinkSalmon().Piece(freezing.Slab, units.Inch, units.Celsius(4), units.Celsius(-20), units.Fahrenheit(-10), 7*units.WattPerSquareMetreKelvin)
	fmt.Println(units.Text(piece.Latent, units.KilojoulePerKilogram, 1), units.Text(piece.Conductivity, units.WattPerMetreKelvin, 2), err)
	// Output: 253.3 kJ/kg 1.14 W/(m K) <nil>
}

// Pink salmon an inch thick into a freezer at -10 °F, the film of still air as common practice has it.
func ExamplePiece_Pham() {
	piece, _ := pinkSalmon().Piece(freezing.Slab, units.Inch, units.Celsius(4), units.Celsius(-20), units.Fahrenheit(-10), 7*units.WattPerSquareMetreKelvin)
	t, err := piece.Pham()
	fmt.Printf("%.1f h, Biot %s, %v\n", t.Time.Hours(), units.In(t.Biot, units.One, 2), err)
	fmt.Println(t.Cautions[len(t.Cautions)-1].Text)
	// Output:
	// 10.0 h, Biot 0.08, <nil>
	// Pham's time came out 0 to 42 % long for fish put in at 15 °C (59 °F) or colder: the safe side.
}

// The time until the middle is cold goes, at its High, into the plan against parasites.
func ExamplePiece_Between() {
	piece, _ := pinkSalmon().Piece(freezing.Slab, units.Inch, units.Celsius(4), units.Celsius(-20), units.Fahrenheit(-10), 7*units.WattPerSquareMetreKelvin)
	r, err := piece.Between(5*units.WattPerSquareMetreKelvin, 10*units.WattPerSquareMetreKelvin)
	fmt.Printf("%.0f, %.0f, %.0f h %v\n", r.Low.Time.Hours(), r.Likely.Time.Hours(), r.High.Time.Hours(), err)
	// Output: 7, 10, 14 h <nil>
}

func ExampleParseShape() {
	_, err := freezing.ParseShape("brick")
	fmt.Println(err)
	// Output:
	// unknown shape of what freezes "brick": expected slab, cylinder or sphere
}

func ExampleShape() {
	text, err := freezing.Cylinder.MarshalText()
	fmt.Println(string(text), err)
	// Output: cylinder <nil>
}

func ExampleParseIceLaw() {
	law, err := freezing.ParseIceLaw("ideal solution")
	fmt.Println(law, err)
	// Output: ideal solution <nil>
}
