package coldchain_test

import (
	"fmt"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain"
)

// pinkSalmon is of ASHRAE's composition table, from memory.
func pinkSalmon() coldchain.Flesh {
	return coldchain.Flesh{
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
	cod := coldchain.Flesh{
		Water: 8122 * units.Percent / 100, Protein: 1781 * units.Percent / 100, Fat: 67 * units.Percent / 100, Ash: 116 * units.Percent / 100,
		FreezesAt: units.Celsius(-1),
	}
	heat, err := cod.Heat(units.Celsius(15), units.Celsius(-18))
	fmt.Println(units.Text(heat, units.KilocaloriePerKilogram, 1), err)
	// Output: 78.6 kcal/kg <nil>
}

func ExampleIceLaw() { fmt.Println(coldchain.TchigeovIce) /* Output: Tchigeov */ }

func ExampleFreezables() {
	for _, f := range coldchain.Freezables()[7:] {
		fmt.Println(f.Fish+":", f.FreezesAt.Text(units.CelsiusScale, 1))
	}
	// Output:
	// salmon, pink: -2.2 °C
	// fish, 70 % water: -2.0 °C
	// white fish: -1.0 °C
}

func ExampleFreezableOf() {
	f, err := coldchain.FreezableOf("Salmon, pink")
	fmt.Println(units.Text(f.Latent, units.KilojoulePerKilogram, 1), f.Citation.Basis, err)
	// Output: 255.9 kJ/kg read <nil>
}
