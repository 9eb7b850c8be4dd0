package moistair_test

import (
	"encoding/json"
	"fmt"
	"time"

	"example.org/lakelarder/smoke/moistair"
	"example.org/lakelarder/units"
)

// smoker is a hot, dry smoker at 4,350 ft: summer air heated to 225 °F.
func smoker() moistair.Air {
	outside, _ := moistair.ByRelativeHumidity(units.Celsius(20), 50*units.Percent, 86_300*units.Pascal)
	a, _ := outside.Heated(units.Fahrenheit(225))
	return a
}

func ExampleSource() {
	fmt.Println(moistair.Source())
	// Output: ASHRAE, Handbook of Fundamentals, chapter 1, Psychrometrics (SI) (2017 ed.), ch. 1, ideal-gas equations (computed)
}

// ASHRAE Handbook of Fundamentals 2017, chapter 1, example 1: 40 °C dry bulb, 20 °C wet bulb.
func ExampleByWetBulb() {
	a, err := moistair.ByWetBulb(units.Celsius(40), units.Celsius(20), units.Atmosphere)
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

func ExampleByHumidityRatio() {
	a, _ := moistair.ByHumidityRatio(units.Fahrenheit(225), 10*units.PerMille, units.Atmosphere)
	ceiling, _ := a.WetBulb()
	fmt.Println("air", a.DryBulb(), "wet surface", ceiling.Text(units.FahrenheitScale, 1))
	_, err := moistair.ByHumidityRatio(units.Celsius(20), 20*units.PerMille, units.Atmosphere)
	fmt.Println(err)
	// Output:
	// air 225 °F wet surface 97.7 °F
	// humidity ratio 2 % is out of range: expected at most 1.469505165 %, saturation at 20 °C
}

func ExampleByRelativeHumidity() {
	a, _ := moistair.ByRelativeHumidity(units.Celsius(20), 50*units.Percent, units.Atmosphere)
	fmt.Println(units.Text(a.HumidityRatio(), units.PerMille, 2))
	// Output: 7.26 ‰
}

func ExampleByDewPoint() {
	a, _ := moistair.ByDewPoint(units.Celsius(20), units.Celsius(9.27), units.Atmosphere)
	humidity, _ := a.RelativeHumidity()
	fmt.Println(units.Text(humidity, units.Percent, 0))
	// Output: 50 %
}

func ExampleByEnthalpy() {
	a, _ := moistair.ByEnthalpy(units.Celsius(40), 56_700*units.JoulePerKilogram, units.Atmosphere)
	fmt.Println(units.In(a.HumidityRatio(), units.One, 4))
	// Output: 0.0064
}

func ExampleByVolume() {
	a, _ := moistair.ByVolume(units.Celsius(40), 896*units.Litre, units.Atmosphere)
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
	f, err := moistair.FilmAlong(smoker(), units.MetrePerSecond)
	fmt.Println(units.Text(f.Coefficient.Low, units.WattPerSquareMetreKelvin, 1), "to", units.Text(f.Coefficient.High, units.WattPerSquareMetreKelvin, 1), f.Extrapolated, err)
	cold, _ := smoker().Heated(units.Celsius(15))
	f, _ = moistair.FilmAlong(cold, units.MetrePerSecond)
	fmt.Println(units.Text(f.Coefficient.Low, units.WattPerSquareMetreKelvin, 1), "to", units.Text(f.Coefficient.High, units.WattPerSquareMetreKelvin, 1), f.Extrapolated)
	// Output:
	// 8.8 W/(m² K) to 14.7 W/(m² K) false <nil>
	// 7.4 W/(m² K) to 22.1 W/(m² K) true
}

func ExampleSmokerFilm() {
	f := moistair.SmokerFilm()
	fmt.Println(f.Coefficient.Low, f.Coefficient.Likely, f.Coefficient.High, f.Citation.Basis)
	// Output: 10 W/(m² K) 20 W/(m² K) 30 W/(m² K) practice
}

func ExampleFilm_Cautions() {
	cold, _ := smoker().Heated(units.Celsius(15))
	f, _ := moistair.FilmAlong(cold, units.MetrePerSecond)
	for _, c := range f.Cautions() {
		fmt.Println(c.Text)
	}
	// Output:
	// The film coefficient is an estimate. Take the range, not its middle, and believe the scale and the probe.
	// The film coefficient is extrapolated: its equation was printed for air of 45 to 150 °C at 0.61 to 7.6 m/s.
}

// Geankoplis, Transport Processes and Unit Operations, example 9.6-3: a pan of 0.457 m by 0.457 m in air of 65.6 °C at 6.1 m/s.
// The book has 28.9 °C, 3.39 kg/(m² h) and 0.708 kg/h.
func ExampleEvaporate() {
	a, _ := moistair.ByHumidityRatio(units.Celsius(65.6), 10*units.PerMille, units.Atmosphere)
	film, _ := moistair.FilmAlong(a, 6100*units.MetrePerSecond/1000)
	e, err := moistair.Evaporate(a, film, units.One)
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
	a, _ := moistair.ByRelativeHumidity(units.Celsius(30), 50*units.Percent, 86_300*units.Pascal)
	e, _ := moistair.Evaporate(a, moistair.SmokerFilm(), 98*units.Percent)
	lost, err := e.Lost(600*units.SquareCentimetre, time.Hour)
	fmt.Println(units.Text(lost.Low, units.Gram, 1), "to", units.Text(lost.High, units.Gram, 1), err)
	// Output: 7.2 g to 21.5 g <nil>
}

func ExampleEvaporation_TimeTo() {
	a, _ := moistair.ByRelativeHumidity(units.Celsius(30), 50*units.Percent, 86_300*units.Pascal)
	e, _ := moistair.Evaporate(a, moistair.SmokerFilm(), 98*units.Percent)
	times, err := e.TimeTo(10*units.Gram, 600*units.SquareCentimetre)
	fmt.Println(times.Low.Round(time.Minute), "to", times.High.Round(time.Minute), err)
	// Output: 28m0s to 1h24m0s <nil>
}

// A surface that is salted settles above the wet bulb.
func ExampleAir_WetSurface() {
	a, _ := moistair.ByRelativeHumidity(units.Celsius(30), 50*units.Percent, units.Atmosphere)
	wet, _ := a.WetBulb()
	salted, err := a.WetSurface(98 * units.Percent)
	fmt.Println(wet.Text(units.CelsiusScale, 1), salted.Text(units.CelsiusScale, 1), err)
	// Output:
	// 22.0 °C 22.2 °C <nil>
}

func ExampleAir_IsSet() {
	fmt.Println(smoker().IsSet(), moistair.Air{}.IsSet())
	// Output: true false
}

func ExampleFilm_Check() {
	fmt.Println(moistair.SmokerFilm().Check())
	fmt.Println(moistair.Film{}.Check())
	// Output:
	// <nil>
	// film coefficient is not stated
}

func ExampleAir_MarshalJSON() {
	text, err := json.Marshal(smoker())
	fmt.Println(string(text), err)
	// Output:
	// {"dryBulb":"225 °F","humidityRatio":"0.854338686 %","pressure":"86.3 kPa"} <nil>
}

func ExampleAir_UnmarshalJSON() {
	var a moistair.Air
	err := json.Unmarshal([]byte(`{"dryBulb": "30 °C", "humidityRatio": "13.4 ‰", "pressure": "86.3 kPa"}`), &a)
	wet, _ := a.WetBulb()
	fmt.Println(wet.Text(units.CelsiusScale, 1), err)
	// Output:
	// 20.2 °C <nil>
}

func ExampleFilm_MarshalJSON() {
	text, err := json.Marshal(moistair.SmokerFilm())
	fmt.Println(string(text), err)
	// Output:
	// {"coefficient":{"low":"10 W/(m² K)","likely":"20 W/(m² K)","high":"30 W/(m² K)"},"citation":{"place":"film coefficient assumed for slow smoker air","basis":"practice"}} <nil>
}

func ExampleFilm_UnmarshalJSON() {
	var f moistair.Film
	err := json.Unmarshal([]byte(`{"coefficient": {"low": "10 W/(m² K)", "likely": "20 W/(m² K)", "high": "30 W/(m² K)"}}`), &f)
	fmt.Println(f.Coefficient, err)
	// Output:
	// 10 W/(m² K) to 30 W/(m² K), likely 20 W/(m² K) <nil>
}

func ExampleEvaporation_MarshalJSON() {
	a, _ := moistair.ByRelativeHumidity(units.Celsius(30), 50*units.Percent, 86_300*units.Pascal)
	e, _ := moistair.Evaporate(a, moistair.SmokerFilm(), 98*units.Percent)
	text, err := json.Marshal(e)
	fmt.Println(string(text), err)
	// Output:
	// {"surface":"21.882602 °C","perMetreHour":{"low":"119.271131711 g","likely":"238.542263423 g","high":"357.813395134 g"},"film":{"coefficient":{"low":"10 W/(m² K)","likely":"20 W/(m² K)","high":"30 W/(m² K)"},"citation":{"place":"film coefficient assumed for slow smoker air","basis":"practice"}},"waterActivity":"98 %","citation":{"document":"course text and worked page on drying, heat transfer to air along a wet surface","source":"DryingCourseText","place":"constant-rate period","basis":"computed"}} <nil>
}

func ExampleEvaporation_UnmarshalJSON() {
	var e moistair.Evaporation
	err := json.Unmarshal([]byte(`{"surface": "22 °C", "perMetreHour": {"low": "120 g", "likely": "240 g", "high": "360 g"}}`), &e)
	fmt.Println(e.PerMetreHour, err)
	// Output:
	// 4.23 oz (120 g) to 12.7 oz (360 g), likely 8.47 oz (240 g) <nil>
}
