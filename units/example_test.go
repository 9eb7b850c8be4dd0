package units_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"time"

	"github.com/shopspring/decimal"

	"example.org/lakelarder/units"
)

// Two thousand feet is 609.6 m, as one value by either route.
func ExampleLength() {
	fmt.Println(2000*units.Foot == 609_600*units.Millimetre)
	fmt.Println(units.Inch/64, 3*units.Inch+units.Inch/2, 2000*units.Foot)
	// Output:
	// true
	// 0.015625 in 3.5 in 2000 ft
}

func ExampleParseLength() {
	for _, text := range []string{"4,350 ft", "3 1/2 in", "5 ft 3 in", "1325.88 m"} {
		l, err := units.ParseLength(text)
		fmt.Println(l, err)
	}
	_, err := units.ParseLength("4350")
	fmt.Println(err)
	// Output:
	// 4350 ft <nil>
	// 3.5 in <nil>
	// 5.25 ft <nil>
	// 4350 ft <nil>
	// cannot read "4350" as a length: the unit is missing; expected one of m, ft, mm, cm, in, km, yd, mi, µm, nm
}

func ExampleArea() {
	fmt.Println(80*units.SquareInch, 144*units.SquareInch == units.SquareFoot)
	// Output: 516.128 cm² true
}

func ExampleParseArea() {
	a, err := units.ParseArea("0.05 m2")
	fmt.Println(a, err)
	// Output: 500 cm² <nil>
}

func ExampleMass() {
	fmt.Println(units.Pound+6*units.Ounce, 16*units.Ounce == units.Pound, 11*units.Kilogram)
	// Output:
	// 1.375 lb true 11 kg
}

func ExampleParseMass() {
	m, err := units.ParseMass("1 lb 6 oz")
	fmt.Println(m, err)
	_, err = units.ParseMass("6 oz 1 lb")
	fmt.Println(err)
	// Output:
	// 1.375 lb <nil>
	// cannot read "6 oz 1 lb" as a mass: the parts must go from larger to smaller units
}

func ExampleVolume() {
	fmt.Println(units.Pint, 3*units.Teaspoon == units.Tablespoon, 3*(units.Cup/3) == units.Cup)
	// Output:
	// 2 cup true true
}

func ExampleParseVolume() {
	v, err := units.ParseVolume("½ cup")
	fmt.Println(v, v == 8*units.Tablespoon, err)
	_, err = units.ParseVolume("2 T")
	fmt.Println(errors.Is(err, units.ErrSyntax)) // tablespoon or teaspoon? refused
	// Output:
	// 0.5 cup true <nil>
	// true
}

// A gauge division is exact, and so is a barometer in kilopascals.
func ExamplePressure() {
	fmt.Println(11*units.PSI, units.PSI/4, units.Atmosphere)
	// Output: 11 psi 0.25 psi 101.325 kPa
}

func ExampleParsePressure() {
	p, err := units.ParsePressure("75.8 kPa")
	fmt.Println(units.Text(p, units.PSI, 2), err)
	_, err = units.ParsePressure("11 psig")
	fmt.Println(errors.Is(err, units.ErrSyntax)) // the type keeps no reference, so the text must not
	// Output:
	// 10.99 psi <nil>
	// true
}

// The boiling point of water at one atmosphere, as the two scales name it, is one value.
func ExampleTemperature() {
	var forgotten units.Temperature
	fmt.Println(units.Fahrenheit(212) == units.Celsius(100), units.Fahrenheit(240), forgotten)
	// Output: true 240 °F not set
}

func ExampleParseTemperature() {
	for _, text := range []string{"121.1 °C", "-18C", "240F"} {
		t, err := units.ParseTemperature(text)
		fmt.Println(t, err)
	}
	_, err := units.ParseTemperature("121,1 °C")
	fmt.Println(err)
	// Output:
	// 121.1 °C <nil>
	// -18 °C <nil>
	// 240 °F <nil>
	// cannot read "121,1 °C" as a temperature: commas group thousands as in 2,000; a decimal mark is a point
}

func ExampleCelsius() {
	fmt.Println(units.Celsius(62.8), units.Celsius(-300).IsSet())
	// Output: 62.8 °C false
}

func ExampleFahrenheit() {
	fmt.Println(units.Fahrenheit(250).Text(units.CelsiusScale, 4)) // not 121.1
	// Output: 121.1111 °C
}

func ExampleKelvin() {
	fmt.Println(units.Kelvin(273.15) == units.Celsius(0))
	// Output: true
}

func ExampleTemperatureOf() {
	t, err := units.TemperatureOf(decimal.RequireFromString("37.9"), units.FahrenheitScale)
	fmt.Println(t, err)
	_, err = units.TemperatureOf(decimal.NewFromInt(-274), units.CelsiusScale)
	fmt.Println(err)
	// Output:
	// 37.9 °F <nil>
	// temperature -274 °C is out of range: expected more than -273.15 °C and at most 5e11 °C
}

func ExampleFromAbsoluteZero() {
	fmt.Println(units.FromAbsoluteZero(300*units.Kelvins), units.FromAbsoluteZero(0))
	// Output: 26.85 °C not set
}

func ExampleTemperature_AboveAbsoluteZero() {
	fmt.Println(units.Celsius(0).AboveAbsoluteZero())
	// Output: 273.15 K
}

func ExampleTemperature_IsSet() {
	fmt.Println(units.Celsius(0).IsSet(), units.Temperature{}.IsSet())
	// Output: true false
}

func ExampleTemperature_Equal() {
	fmt.Println(units.Fahrenheit(212).Equal(units.Celsius(100)))
	// Output: true
}

func ExampleTemperature_AtLeast() {
	limit := units.Fahrenheit(145)
	fmt.Println(units.Celsius(62.8).AtLeast(limit), units.Temperature{}.AtLeast(limit))
	// Output: true false
}

func ExampleTemperature_Above() {
	fmt.Println(units.Fahrenheit(40).Above(units.Fahrenheit(40)), units.Fahrenheit(40.1).Above(units.Fahrenheit(40)))
	// Output: false true
}

func ExampleTemperature_Below() {
	fmt.Println(units.Fahrenheit(37).Below(units.Fahrenheit(38)), units.Temperature{}.Below(units.Fahrenheit(38)))
	// Output: true false
}

func ExampleTemperature_Sub() {
	margin, err := units.Fahrenheit(239.29).Sub(units.Fahrenheit(240))
	fmt.Println(margin, err)
	_, err = units.Temperature{}.Sub(units.Fahrenheit(240))
	fmt.Println(err)
	// Output:
	// -0.71 F° <nil>
	// temperature is not stated
}

func ExampleTemperature_Add() {
	fmt.Println(units.Celsius(10).Add(9 * units.FahrenheitDegrees))
	// Output: 15 °C
}

func ExampleTemperature_Celsius() {
	fmt.Printf("%.2f\n", units.Fahrenheit(145).Celsius())
	// Output: 62.78
}

func ExampleTemperature_Fahrenheit() {
	fmt.Printf("%.2f\n", units.Celsius(62.8).Fahrenheit())
	// Output: 145.04
}

func ExampleTemperature_Kelvin() {
	fmt.Printf("%.2f\n", units.Celsius(100).Kelvin())
	// Output: 373.15
}

func ExampleTemperature_In() {
	fmt.Println(units.Celsius(121.1).In(units.FahrenheitScale, 2))
	// Output: 249.98
}

func ExampleTemperature_Text() {
	fmt.Println(units.Celsius(62.8).Text(units.FahrenheitScale, 1))
	// Output: 145.0 °F
}

func ExampleScale() {
	fmt.Println(units.CelsiusScale, units.FahrenheitScale, units.KelvinScale)
	// Output: °C °F K
}

// A difference has no 32 in it.
func ExampleTemperatureChange() {
	fmt.Println(9*units.FahrenheitDegrees, units.FahrenheitDegrees)
	// Output:
	// 5 K 1 F°
}

func ExampleParseTemperatureChange() {
	c, err := units.ParseTemperatureChange("1.8 °F")
	fmt.Println(c, err)
	// Output: 1 K <nil>
}

func ExampleRatio() {
	fmt.Println(35*units.PerMille, units.Percent/2, 100*units.PartsPerMillion)
	// Output: 3.5 % 0.5 % 0.01 %
}

func ExampleParseRatio() {
	r, err := units.ParseRatio("3.5 %")
	fmt.Println(r, err)
	_, err = units.ParseRatio("0.035") // a share or a percentage?
	fmt.Println(errors.Is(err, units.ErrSyntax))
	// Output:
	// 3.5 % <nil>
	// true
}

// Thirty grams of salt to the kilogram, for this fillet.
func ExampleRatio_Of() {
	salt, err := (30 * units.PerMille).Of(850 * units.Gram)
	fmt.Println(salt, err)
	// Output: 25.5 g <nil>
}

func ExampleRatioOf() {
	wps, err := units.RatioOf(2*units.Gram, 72*units.Gram)
	fmt.Println(units.Text(wps, units.Percent, 3), err)
	// Output: 2.778 % <nil>
}

func ExampleProrate() {
	salt, err := units.Prorate(30*units.Gram, 850*units.Gram, units.Kilogram)
	fmt.Println(salt, err)
	_, err = units.Prorate(30*units.Gram, 850*units.Gram, 0)
	fmt.Println(err)
	// Output:
	// 25.5 g <nil>
	// whole of a proportion 0 is out of range: expected at least a quantum
}

func ExampleTimes() {
	jars, err := units.Times(units.Pint, 9)
	fmt.Println(units.Text(jars, units.Litre, 2), err)
	// Output: 4.26 L <nil>
}

func ExampleSum() {
	catch, err := units.Sum(3200*units.Gram, 2950*units.Gram, 4*units.Pound)
	fmt.Println(units.Text(catch, units.Kilogram, 3), err)
	// Output: 7.964 kg <nil>
}

func ExampleOf() {
	step, err := units.Of(decimal.RequireFromString("0.25"), units.PSI)
	fmt.Println(step, 4*step == units.PSI, err)
	// Output: 0.25 psi true <nil>
}

func ExampleOfFloat() {
	h, err := units.OfFloat(0.0889, units.Metre)
	fmt.Println(h == 3*units.Inch+units.Inch/2, err)
	// Output: true <nil>
}

func ExampleIn() {
	fmt.Println(units.In(11*units.PSI, units.Kilopascal, 2))
	// Output: 75.84
}

func ExampleFloat() {
	fmt.Printf("%.4f\n", units.Float(units.Atmosphere, units.PSI))
	// Output: 14.6959
}

func ExampleRoundTo() {
	fmt.Println(units.RoundTo(25_437*units.Milligram, units.Gram/2))
	// Output: 25.5 g
}

// What is available rounds down.
func ExampleFloorTo() {
	fmt.Println(units.FloorTo(401_700*units.Milligram, units.Gram))
	// Output: 401 g
}

// What is required rounds up.
func ExampleCeilTo() {
	fmt.Println(units.CeilTo(1110*units.PSI/100, units.PSI/4))
	// Output: 11.25 psi
}

func ExampleText() {
	fmt.Println(units.Text(609_600*units.Millimetre, units.Foot, 0), "·", units.Text(units.Pound, units.Gram, 1))
	// Output: 2,000 ft · 453.6 g
}

func ExampleKitchen() {
	fmt.Println(units.Kitchen(625*units.Gram, 4, units.Pound, units.Ounce))
	fmt.Println(units.Kitchen(units.Cup/2+units.Tablespoon, 4, units.Cup, units.Tablespoon, units.Teaspoon))
	fmt.Println(units.Kitchen(889*units.Millimetre/10, 16, units.Inch))
	// Output:
	// 1 lb 6 oz
	// 9 tbsp
	// 3 1/2 in
}

func ExampleCheck() {
	fmt.Println(units.Check("altitude", 12_000*units.Metre, 0, 11_000*units.Metre))
	// Output: altitude 12000 m is out of range: expected 0 mm to 11000 m
}

func ExampleCheckTemperature() {
	fmt.Println(units.CheckTemperature("core", units.Celsius(160), units.Celsius(-40), units.Celsius(150)))
	fmt.Println(units.CheckTemperature("limit", units.Celsius(10), units.Fahrenheit(145), units.Celsius(100)))
	fmt.Println(units.CheckTemperature("core", units.Temperature{}, units.Celsius(-40), units.Celsius(150)))
	// Output:
	// core 160 °C is out of range: expected -40 °C to 150 °C
	// limit 10 °C is out of range: expected 145 °F to 212 °F
	// core is not stated
}

func ExampleCheckDuration() {
	fmt.Println(units.CheckDuration("vent", -time.Minute, 0, time.Hour))
	// Output: vent -1 min is out of range: expected 0 min to 1 h
}

// Sea level and no altitude are two things.
func ExampleState() {
	fmt.Println(units.State(units.Length(0)) == units.Stated[units.Length]{})
	// Output: false
}

func ExampleRangeError() {
	_, err := units.Times(units.Tonne, 1000)
	var out units.RangeError
	fmt.Println(errors.As(err, &out), errors.Is(err, units.ErrRange), out.What)
	// Output: true true mass
}

func ExampleParseError() {
	_, err := units.ParseMass("six ounces")
	var bad units.ParseError
	fmt.Println(errors.As(err, &bad), errors.Is(err, units.ErrSyntax), bad.Text)
	// Output: true true six ounces
}

// In JSON every quantity is its text.
func ExampleLength_MarshalText() {
	data, err := json.Marshal(map[string]units.Length{"altitude": 4350 * units.Foot})
	fmt.Println(string(data), err)
	// Output:
	// {"altitude":"4350 ft"} <nil>
}

func ExampleDensity() {
	fmt.Println(1055*units.KilogramPerCubicMetre, units.GramPerMillilitre)
	// Output: 1055 kg/m³ 1000 kg/m³
}

func ExampleParseDensity() {
	d, err := units.ParseDensity("1.055 g/mL")
	fmt.Println(d, err)
	// Output: 1055 kg/m³ <nil>
}

func ExampleSpeed() {
	fmt.Println(300*units.FootPerMinute, 10*units.MilePerHour)
	// Output: 1.524 m/s 4.4704 m/s
}

func ExampleParseSpeed() {
	v, err := units.ParseSpeed("5.4 km/h")
	fmt.Println(v, err)
	// Output: 1.5 m/s <nil>
}

func ExampleDiffusivity() {
	fmt.Println(units.SquareCentimetrePerSecond / 1000)
	// Output: 0.1 mm²/s
}

func ExampleParseDiffusivity() {
	d, err := units.ParseDiffusivity("1.4e-7 m²/s")
	fmt.Println(d, err)
	// Output: 0.14 mm²/s <nil>
}

func ExampleConductivity() {
	fmt.Println(units.WattPerMetreKelvin / 2)
	// Output: 0.5 W/(m K)
}

func ExampleParseConductivity() {
	k, err := units.ParseConductivity("0.5 W/mK")
	fmt.Println(k, err)
	// Output: 0.5 W/(m K) <nil>
}

func ExampleFilmCoefficient() {
	fmt.Println(20 * units.WattPerSquareMetreKelvin)
	// Output: 20 W/(m² K)
}

func ExampleParseFilmCoefficient() {
	h, err := units.ParseFilmCoefficient("20 W/m2K")
	fmt.Println(h, err)
	// Output: 20 W/(m² K) <nil>
}

func ExampleSpecificHeat() {
	fmt.Println(units.KilocaloriePerKilogramKelvin)
	// Output: 4186.8 J/(kg K)
}

func ExampleParseSpecificHeat() {
	c, err := units.ParseSpecificHeat("0.86 Btu/(lb °F)")
	fmt.Println(c, err)
	// Output: 3600.648 J/(kg K) <nil>
}

func ExampleEnergy() {
	fmt.Println(units.Kilocalorie, units.BTU)
	// Output: 4.184 kJ 1.05505585262 kJ
}

func ExampleParseEnergy() {
	e, err := units.ParseEnergy("250 kcal")
	fmt.Println(e, err)
	// Output: 1046 kJ <nil>
}

func ExampleSpecificEnergy() {
	fmt.Println(144 * units.BTUPerPound)
	// Output: 334.944 kJ/kg
}

func ExampleParseSpecificEnergy() {
	e, err := units.ParseSpecificEnergy("80 kcal/kg")
	fmt.Println(e, err)
	// Output: 334.944 kJ/kg <nil>
}

func ExamplePH() {
	fmt.Println(4600 * units.PHUnit / 1000)
	// Output: 4.6
}

func ExampleParsePH() {
	p, err := units.ParsePH("pH 6.2")
	fmt.Println(p, err)
	// Output: 6.2 <nil>
}
