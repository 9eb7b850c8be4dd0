package lethality_test

import (
	"fmt"
	"time"

	"example.org/lakelarder/pressure/lethality"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

func ExampleTransient_Eigenvalues() {
	roots, err := lethality.Transient{Shape: lethality.Sphere, Biot: lethality.One}.Eigenvalues(2)
	fmt.Println(plain(roots[0], 6), plain(roots[1], 6), err)
	// Output: 1.570796 4.712389 <nil>
}

// Cengel, table 4-2: 0.8603 and 1.1191.
func ExampleTransient_OneTerm() {
	zeta, c, err := lethality.Transient{Shape: lethality.Slab, Biot: lethality.One}.OneTerm()
	fmt.Println(plain(zeta, 4), plain(c, 4), err)
	// Output: 0.8603 1.1191 <nil>
}

func ExampleTransient_At() {
	b := lethality.Transient{Shape: lethality.InfiniteCylinder, Biot: 5 * lethality.One}
	centre, err := b.At(lethality.One/10, 0)
	surface, _ := b.At(lethality.One/10, units.One)
	fmt.Println(plain(lethality.Number(centre), 6), plain(lethality.Number(surface), 6), err)
	// Output: 0.926486 0.255748 <nil>
}

func ExampleTransient_Mean() {
	mean, err := lethality.Transient{Shape: lethality.Slab, Biot: lethality.One / 2}.Mean(lethality.One / 10)
	fmt.Println(plain(lethality.Number(mean), 6), err)
	// Output: 0.955377 <nil>
}

// jar is a pint drawn as an even solid.
func jar() lethality.Cylinder {
	return lethality.Cylinder{Radius: 75 * units.Millimetre / 2, Height: 115 * units.Millimetre, Diffusivity: 14 * units.SquareMillimetrePerSecond / 100, Film: lethality.HeldSurface}
}

func ExampleCylinder_Factors() {
	f, err := jar().Factors(lethality.Point{})
	fmt.Printf("fh %.1f min, jch %s %v\n", f.Fh.Minutes(), plain(f.Jch, 3), err)
	// Output: fh 56.4 min, jch 2.040 <nil>
}

// The can of pea purée of Geankoplis, example 5.3-4: 106.6 °C by chart, 108.39 °C by the series.
func ExampleCylinder_Warm() {
	can := lethality.Cylinder{
		Radius: 3405 * units.Centimetre / 1000, Height: 1016 * units.Millimetre / 10, Film: 4540 * units.WattPerSquareMetreKelvin,
		Diffusivity: 2007 * units.SquareMillimetrePerSecond / 10_000, Conductivity: 83 * units.WattPerMetreKelvin / 100,
	}
	steam, err := series.New([]series.Reading[units.Temperature]{{At: 0, Value: units.Celsius(115.6)}, {At: 45 * time.Minute, Value: units.Celsius(115.6)}})
	if err != nil {
		fmt.Println(err)
		return
	}
	centre, err := can.Warm(units.Celsius(29.4), steam, lethality.Point{}, time.Minute)
	last, _ := centre.Last()
	fmt.Println(last.Value.Text(units.CelsiusScale, 2), err)
	// Output: 108.39 °C <nil>
}

func run() lethality.Run {
	return lethality.Run{
		Start: units.Celsius(10), Steam: units.Celsius(116), End: units.Celsius(20), ComeUp: 15 * time.Minute, Hold: 100 * time.Minute, Cooling: units.Kelvins,
	}
}

func ExampleCylinder_Follow() {
	r, err := jar().Follow(run(), lethality.F0())
	fmt.Printf("%s at steam off, F0 %.2f min then and %.2f min in all %v\n",
		r.AtSteamOff.Text(units.CelsiusScale, 2), r.BeforeSteamOff().Minutes(), r.F.Total.Minutes(), err)
	fmt.Println(r.Cautions[0])
	// Output:
	// 113.27 °C at steam off, F0 3.27 min then and 9.12 min in all <nil>
	// None of this shortens, replaces or confirms a published process. Follow the tested schedule for the product, jar, gauge and altitude.
}

func ExampleResult_BeforeSteamOff() {
	r, err := jar().Follow(run(), lethality.F0())
	fmt.Printf("%.0f %% arrives in the cooling %v\n", 100*(1-r.BeforeSteamOff().Minutes()/r.F.Total.Minutes()), err)
	// Output: 64 % arrives in the cooling <nil>
}

func ExampleCylinder_FollowBand() {
	salmon := lethality.Composition{Water: 7635 * units.Percent / 100, Protein: 1994 * units.Percent / 100, Fat: 345 * units.Percent / 100, Ash: 122 * units.Percent / 100}
	p, err := salmon.At(units.Celsius(80))
	if err != nil {
		fmt.Println(err)
		return
	}
	b, err := jar().FollowBand(p.DiffusivityLow, p.DiffusivityHigh, run(), lethality.F0())
	fmt.Printf("F0 %.1f to %.1f min %v\n", b.Low.F.Total.Minutes(), b.High.F.Total.Minutes(), err)
	// Output: F0 7.4 to 11.1 min <nil>
}

func ExampleRun_Medium() {
	medium, err := run().Medium(time.Hour)
	fmt.Println(medium.Len(), medium.Span(), err)
	// Output: 5 4h31m0s <nil>
}

func ExampleRun_SteamOff() {
	fmt.Println(run().SteamOff())
	// Output: 1h55m0s
}

func ExampleFormula_Lethality() {
	f, _ := jar().Factors(lethality.Point{})
	answer, err := lethality.Formula{Medium: units.Celsius(116), Start: units.Celsius(10), Fh: f.Fh, Jch: f.Jch, ComeUp: 15 * time.Minute}.Lethality(100 * time.Minute)
	fmt.Printf("g %s, F %.1f min %v\n", units.Text(answer.G, units.FahrenheitDegrees, 1), answer.F.Minutes(), err)
	// Output:
	// g 5.1 F°, F 3.7 min <nil>
}

func ExampleFormula_Process() {
	f, _ := jar().Factors(lethality.Point{})
	answer, err := lethality.Formula{Medium: units.Celsius(116), Start: units.Celsius(10), Fh: f.Fh, Jch: f.Jch, ComeUp: 15 * time.Minute}.Process(6 * time.Minute)
	fmt.Printf("%.0f min %v\n", answer.Operator.Minutes(), err)
	// Output: 113 min <nil>
}

func ExampleGTable() {
	logG, source, err := lethality.GTable(10 * lethality.One)
	fmt.Println(plain(logG, 3), source.Where, err)
	// Output: 0.955 table 38.6 <nil>
}

func ExampleComposition_At() {
	salmon := lethality.Composition{Water: 7635 * units.Percent / 100, Protein: 1994 * units.Percent / 100, Fat: 345 * units.Percent / 100, Ash: 122 * units.Percent / 100}
	p, err := salmon.At(units.Celsius(20))
	fmt.Println(units.Text(p.Density, units.KilogramPerCubicMetre, 1), units.Text(p.SpecificHeat, units.JoulePerKilogramKelvin, 0), err)
	fmt.Printf("%.3f to %.3f mm²/s\n", units.Float(p.DiffusivityLow, units.SquareMillimetrePerSecond), units.Float(p.DiffusivityHigh, units.SquareMillimetrePerSecond))
	// Output:
	// 1,051.1 kg/m³ 3,642 J/(kg K) <nil>
	// 0.112 to 0.136 mm²/s
}

// Steam on a jar of 3 mm of glass: the glass is most of what holds the heat up.
func ExampleThrough() {
	film, err := lethality.Through(5_000*units.WattPerSquareMetreKelvin, 3*units.Millimetre, units.WattPerMetreKelvin)
	fmt.Printf("%.1f W/(m² K) %v\n", units.Float(film, units.WattPerSquareMetreKelvin), err)
	// Output: 312.5 W/(m² K) <nil>
}

func ExampleFollowBetween() {
	slow, quick := jar(), jar()
	slow.Film, slow.Conductivity = 312*units.WattPerSquareMetreKelvin, units.WattPerMetreKelvin/2
	slow.Diffusivity = 12 * units.SquareMillimetrePerSecond / 100
	b, err := lethality.FollowBetween(slow, quick, run(), lethality.F0())
	fmt.Printf("F0 %.1f to %.1f min %v\n", b.Low.F.Total.Minutes(), b.High.F.Total.Minutes(), err)
	// Output: F0 4.9 to 9.1 min <nil>
}
