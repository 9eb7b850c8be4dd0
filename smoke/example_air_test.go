package smoke_test

import (
	"fmt"
	"time"

	"example.org/lakelarder/smoke"
	"example.org/lakelarder/units"
)

// smoker is a hot, dry smoker at 4,350 ft: summer air heated to 225 °F.
func smoker() smoke.Air {
	outside, _ := smoke.AirByRelativeHumidity(units.Celsius(20), 50*units.Percent, 86_300*units.Pascal)
	a, _ := outside.Heated(units.Fahrenheit(225))
	return a
}

func ExampleAirSource() {
	fmt.Println(smoke.AirSource())
	// Output: ASHRAE, Handbook of Fundamentals, chapter 1, Psychrometrics (SI) (2017 ed.), ch. 1, ideal-gas equations (computed)
}

// ASHRAE Handbook of Fundamentals 2017, chapter 1, example 1: 40 °C dry bulb, 20 °C wet bulb.
func ExampleAirByWetBulb() {
	a, err := smoke.AirByWetBulb(units.Celsius(40), units.Celsius(20), units.Atmosphere)
	if err != nil {
		fmt.Println(err)
		return
	}
	humidity, _ := a.RelativeHumidity()
	dew, _ := a.DewPoint()
	heat, _ := a.Enthalpy()
	volume, _ := a.Volume()
	fmt.Println("W", units.In(a.HumidityRatio(), units.One, 4), "kg/kg, RH", units.Text(humidity, units.Percent, 0))
	fmt.Println("dew point", dew.Text(units.CelsiusScale, 1))
	fmt.Println(units.Text(heat, units.KilojoulePerKilogram, 1), "and", units.Text(volume, units.Litre, 0), "to the kilogram of dry air")
	// Output:
	// W 0.0064 kg/kg, RH 14 %
	// dew point 7.4 °C
	// 56.7 kJ/kg and 896 L to the kilogram of dry air
}

func ExampleAirByHumidityRatio() {
	a, _ := smoke.AirByHumidityRatio(units.Fahrenheit(225), 10*units.PerMille, units.Atmosphere)
	ceiling, _ := a.WetBulb()
	fmt.Println("air", a.DryBulb(), "wet surface", ceiling.Text(units.FahrenheitScale, 1))
	_, err := smoke.AirByHumidityRatio(units.Celsius(20), 20*units.PerMille, units.Atmosphere)
	fmt.Println(err)
	// Output:
	// air 225 °F wet surface 97.7 °F
	// humidity ratio 2 % is out of range: expected at most 1.469505165 %, saturation at 20 °C
}

func ExampleAirByRelativeHumidity() {
	a, _ := smoke.AirByRelativeHumidity(units.Celsius(20), 50*units.Percent, units.Atmosphere)
	fmt.Println(units.Text(a.HumidityRatio(), units.PerMille, 2))
	// Output: 7.26 ‰
}

func ExampleAirByDewPoint() {
	a, _ := smoke.AirByDewPoint(units.Celsius(20), units.Celsius(9.27), units.Atmosphere)
	humidity, _ := a.RelativeHumidity()
	fmt.Println(units.Text(humidity, units.Percent, 0))
	// Output: 50 %
}

func ExampleAirByEnthalpy() {
	a, _ := smoke.AirByEnthalpy(units.Celsius(40), 56_700*units.JoulePerKilogram, units.Atmosphere)
	fmt.Println(units.In(a.HumidityRatio(), units.One, 4))
	// Output: 0.0064
}

func ExampleAirByVolume() {
	a, _ := smoke.AirByVolume(units.Celsius(40), 896*units.Litre, units.Atmosphere)
	fmt.Println(units.In(a.HumidityRatio(), units.One, 3))
	// Output: 0.006
}

func ExampleAir_DryBulb() {
	fmt.Println(smoker().DryBulb())
	// Output: 225 °F
}

func ExampleAir_Pressure() {
	fmt.Println(smoker().Pressure())
	// Output: 86.3 kPa
}

func ExampleAir_HumidityRatio() {
	fmt.Println(units.Text(smoker().HumidityRatio(), units.PerMille, 2))
	// Output: 8.54 ‰
}

func ExampleAir_RelativeHumidity() {
	humidity, err := smoker().RelativeHumidity()
	fmt.Println(units.Text(humidity, units.Percent, 2), err)
	// Output: 0.90 % <nil>
}

func ExampleAir_DewPoint() {
	dew, err := smoker().DewPoint()
	fmt.Println(dew.Text(units.CelsiusScale, 1), err)
	// Output: 9.3 °C <nil>
}

// The smoker's air is not the fish: in dry air of 225 °F a wet fillet stays below blood heat.
func ExampleAir_WetBulb() {
	ceiling, err := smoker().WetBulb()
	fmt.Println(ceiling.Text(units.FahrenheitScale, 1), err)
	// Output: 92.3 °F <nil>
}

func ExampleAir_Enthalpy() {
	heat, err := smoker().Enthalpy()
	fmt.Println(units.Text(heat, units.KilojoulePerKilogram, 1), err)
	// Output: 130.9 kJ/kg <nil>
}

func ExampleAir_Volume() {
	volume, err := smoker().Volume()
	fmt.Println(units.Text(volume, units.Litre, 0), err)
	// Output: 1,283 L <nil>
}

func ExampleAir_Density() {
	density, err := smoker().Density()
	fmt.Println(units.Text(density, units.KilogramPerCubicMetre, 3), err)
	// Output: 0.786 kg/m³ <nil>
}

func ExampleAir_Heated() {
	cooler, err := smoker().Heated(units.Celsius(40))
	humidity, _ := cooler.RelativeHumidity()
	fmt.Println(units.Text(humidity, units.Percent, 1), err)
	// Output: 15.8 % <nil>
}

func ExampleFilmAlong() {
	f, err := smoke.FilmAlong(smoker(), units.MetrePerSecond)
	fmt.Println(units.Text(f.Low, units.WattPerSquareMetreKelvin, 1), "to", units.Text(f.High, units.WattPerSquareMetreKelvin, 1), f.Extrapolated, err)
	cold, _ := smoker().Heated(units.Celsius(15))
	f, _ = smoke.FilmAlong(cold, units.MetrePerSecond)
	fmt.Println(units.Text(f.Low, units.WattPerSquareMetreKelvin, 1), "to", units.Text(f.High, units.WattPerSquareMetreKelvin, 1), f.Extrapolated)
	// Output:
	// 8.8 W/(m² K) to 14.7 W/(m² K) false <nil>
	// 7.4 W/(m² K) to 22.1 W/(m² K) true
}

func ExampleSmokerFilm() {
	f := smoke.SmokerFilm()
	fmt.Println(f.Low, f.Likely, f.High, f.Citation.Basis)
	// Output: 10 W/(m² K) 20 W/(m² K) 30 W/(m² K) practice
}

func ExampleFilm_Cautions() {
	cold, _ := smoker().Heated(units.Celsius(15))
	f, _ := smoke.FilmAlong(cold, units.MetrePerSecond)
	for _, c := range f.Cautions() {
		fmt.Println(c.Text)
	}
	// Output:
	// the film coefficient is an estimate: take the range, not its middle, and believe the scale and the probe
	// the film coefficient is extrapolated: the equation was printed for air of 45 to 150 °C at 0.61 to 7.6 m/s
}

// Geankoplis, Transport Processes and Unit Operations, example 9.6-3: a pan of 0.457 m by 0.457 m in air of 65.6 °C at 6.1 m/s.
// The book has 28.9 °C, 3.39 kg/(m² h) and 0.708 kg/h.
func ExampleEvaporate() {
	a, _ := smoke.AirByHumidityRatio(units.Celsius(65.6), 10*units.PerMille, units.Atmosphere)
	film, _ := smoke.FilmAlong(a, 6100*units.MetrePerSecond/1000)
	e, err := smoke.Evaporate(a, film, units.One)
	if err != nil {
		fmt.Println(err)
		return
	}
	pan := 457 * 457 * units.SquareMillimetre
	lost, _ := e.Lost(pan, time.Hour)
	fmt.Println(e.Surface.Text(units.CelsiusScale, 1), units.Text(e.PerMetreHour.Likely, units.Kilogram, 2), units.Text(lost.Likely, units.Kilogram, 3))
	// Output: 28.9 °C 3.39 kg 0.708 kg
}

func ExampleEvaporation_Lost() {
	a, _ := smoke.AirByRelativeHumidity(units.Celsius(30), 50*units.Percent, 86_300*units.Pascal)
	e, _ := smoke.Evaporate(a, smoke.SmokerFilm(), 98*units.Percent)
	lost, err := e.Lost(600*units.SquareCentimetre, time.Hour)
	fmt.Println(units.Text(lost.Low, units.Gram, 1), "to", units.Text(lost.High, units.Gram, 1), err)
	// Output: 7.2 g to 21.5 g <nil>
}

func ExampleEvaporation_TimeTo() {
	a, _ := smoke.AirByRelativeHumidity(units.Celsius(30), 50*units.Percent, 86_300*units.Pascal)
	e, _ := smoke.Evaporate(a, smoke.SmokerFilm(), 98*units.Percent)
	times, err := e.TimeTo(10*units.Gram, 600*units.SquareCentimetre)
	fmt.Println(times.Low.Round(time.Minute), "to", times.High.Round(time.Minute), err)
	// Output: 28m0s to 1h24m0s <nil>
}

// One kilogram of fillets on a rack, air of 30 °C and 50 % at 4,350 ft.
func ExampleDryPellicle() {
	a, _ := smoke.AirByRelativeHumidity(units.Celsius(30), 50*units.Percent, 86_300*units.Pascal)
	p, err := smoke.DryPellicle(units.Kilogram, 800*units.SquareCentimetre, a, smoke.SmokerFilm(), 98*units.Percent)
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
	// start the smoke while the surface is still moist or tacky: smoke does not take on a skin that has sealed (State of Michigan, Michigan Administrative Code, Regulation 569, Smoked Fish (R 285.569), R 285.569.6 (read))
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
	// the greatest loss of smoked trout in print is 28.8 %: drying cannot be counted on for more; the fish needs more salt (Dimitriadou et al., steamed trout fillets with liquid smoke (Food Science and Technology International 14, 2008), abstract (read))
}
