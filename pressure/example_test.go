package pressure_test

import (
	"fmt"

	"example.org/lakelarder/pressure"
	"example.org/lakelarder/units"
)

// An invented kitchen by an invented reservoir at 4,350 ft.
func ExampleAirAt() {
	air, err := pressure.AirAt(4350 * units.Foot)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(units.Text(air.Pressure(), units.Hectopascal, 1))
	fmt.Println(units.Text(air.Pressure(), units.PSI, 2))

	_, err = pressure.AirAt(40_000 * units.Foot)
	fmt.Println(err)
	// Output:
	// 863.8 hPa
	// 12.53 psi
	// altitude 40000 ft is out of range: expected -1000 m to 11000 m
}

// On a stormy day the barometer beside the canner stands 25 hPa below the standard air of 2,000 ft.
func ExampleAirReading() {
	air, err := pressure.AirReading(917 * units.Hectopascal)
	if err != nil {
		fmt.Println(err)
		return
	}
	steam, err := air.SteamUnder(11 * units.PSI)
	fmt.Println(steam.Text(units.FahrenheitScale, 1), err)
	// Output:
	// 238.5 °F <nil>
}

func ExampleAir_Pressure() {
	air, err := pressure.AirAt(0)
	fmt.Println(air.Pressure(), err)
	// Output:
	// 101.325 kPa <nil>
}

func ExampleAir_Altitude() {
	air, err := pressure.AirAt(4350 * units.Foot)
	if err != nil {
		fmt.Println(err)
		return
	}
	altitude, err := air.Altitude()
	fmt.Println(units.Text(altitude, units.Foot, 0), err)
	// Output:
	// 4,350 ft <nil>
}

// A weather report says 30.02 inHg, but the kitchen lies at 4,350 ft by the map: the report is reduced to sea level and must not be used.
func ExampleAir_Altitude_weatherReport() {
	report, err := units.ParsePressure("30.02 inHg")
	if err != nil {
		fmt.Println(err)
		return
	}
	air, err := pressure.AirReading(report)
	if err != nil {
		fmt.Println(err)
		return
	}
	altitude, err := air.Altitude()
	fmt.Println(units.Text(altitude, units.Foot, 0), err)
	// Output:
	// -91 ft <nil>
}

func ExampleAir_Cautions() {
	air, err := pressure.AirReading(917 * units.Hectopascal)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, caution := range air.Cautions() {
		fmt.Println("-", caution.Text)
	}
	// Output:
	// - This explains a published pressure setting and never replaces, lowers or corrects one. Use a tested process for your altitude.
	// - This holds for pure steam and a gauge that reads true. Air left in the canner makes it cooler at the same reading, so vent as the process says.
	// - The barometer must be station pressure, read beside the canner. Weather reports are reduced to sea level, and on high ground make the steam look hotter than it is.
}

func ExampleAir_Absolute() {
	air, err := pressure.AirAt(0)
	if err != nil {
		fmt.Println(err)
		return
	}
	absolute, err := air.Absolute(10 * units.PSI)
	fmt.Println(units.Text(absolute, units.PSI, 2), err)

	_, err = air.Absolute(-15 * units.PSI)
	fmt.Println(err)
	// Output:
	// 24.70 psi <nil>
	// gauge reading -15 psi is out of range: expected -101.325 kPa to 21962.675 kPa
}

func ExampleAir_Gauge() {
	air, err := pressure.AirAt(0)
	if err != nil {
		fmt.Println(err)
		return
	}
	gauge, err := air.Gauge(25 * units.PSI)
	fmt.Println(units.Text(gauge, units.PSI, 2), err)
	// Output:
	// 10.30 psi <nil>
}

// What two published settings give at the top of their bands: a little under 240 °F. They are not to be corrected: their
// process times were found with them.
func ExampleAir_SteamUnder() {
	for _, setting := range []struct {
		gauge    units.Pressure
		altitude units.Length
	}{
		{11 * units.PSI, 2000 * units.Foot},
		{10 * units.PSI, 1000 * units.Foot},
	} {
		air, err := pressure.AirAt(setting.altitude)
		if err != nil {
			fmt.Println(err)
			return
		}
		steam, err := air.SteamUnder(setting.gauge)
		fmt.Println(setting.gauge, "at", units.Text(setting.altitude, units.Foot, 0)+":", steam.Text(units.FahrenheitScale, 2), err)
	}
	// Output:
	// 11 psi at 2,000 ft: 239.29 °F <nil>
	// 10 psi at 1,000 ft: 238.18 °F <nil>
}

// The reading that gives 240 °F is not a setting: no process has been published for it.
func ExampleAir_GaugeFor() {
	air, err := pressure.AirAt(4350 * units.Foot)
	if err != nil {
		fmt.Println(err)
		return
	}
	gauge, err := air.GaugeFor(units.Fahrenheit(240))
	fmt.Println(units.Text(gauge, units.PSI, 2), err)
	// Output:
	// 12.46 psi <nil>
}

func ExampleAir_BoilingPoint() {
	air, err := pressure.AirAt(4350 * units.Foot)
	if err != nil {
		fmt.Println(err)
		return
	}
	boiling, err := air.BoilingPoint()
	fmt.Println(boiling.Text(units.FahrenheitScale, 1), err)
	// Output:
	// 204.0 °F <nil>
}

// IAPWS R7-97(2012), table 36: 1 MPa is 453.035 632 K. Below it, water at one atmosphere on the temperature scale of 1990.
func ExampleSteamTemperature() {
	steam, err := pressure.SteamTemperature(units.Megapascal)
	fmt.Println(steam.Text(units.KelvinScale, 6), err)
	steam, err = pressure.SteamTemperature(units.Atmosphere)
	fmt.Println(steam.Text(units.CelsiusScale, 4), err)
	// Output:
	// 453.035632 K <nil>
	// 99.9743 °C <nil>
}

// IAPWS R7-97(2012), table 35: 500 K is 2.638 897 76 MPa.
func ExampleSteamPressure() {
	steam, err := pressure.SteamPressure(units.Kelvin(500))
	fmt.Println(units.Text(steam, units.Megapascal, 8), err)

	_, err = pressure.SteamPressure(units.Temperature{})
	fmt.Println(err)
	// Output:
	// 2.63889776 MPa <nil>
	// steam temperature is not stated
}

// Why a canner is vented: with one twentieth of air in it, 11 psi at sea level is 238.7 °F and not 241.6 °F.
func ExampleSteamPart() {
	air, err := pressure.AirAt(0)
	if err != nil {
		fmt.Println(err)
		return
	}
	absolute, err := air.Absolute(11 * units.PSI)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, trapped := range []units.Ratio{0, 5 * units.Percent} {
		part, err := pressure.SteamPart(absolute, trapped)
		if err != nil {
			fmt.Println(err)
			return
		}
		steam, err := pressure.SteamTemperature(part)
		fmt.Println(trapped, "air:", steam.Text(units.FahrenheitScale, 2), err)
	}
	// Output:
	// 0 % air: 241.56 °F <nil>
	// 5 % air: 238.72 °F <nil>
}

func ExampleAtmosphereSource() {
	fmt.Println(pressure.AtmosphereSource().Source.Key())
	fmt.Println(pressure.AtmosphereSource().Where)
	// Output:
	// USStandardAtmosphere1976
	// equations 18, 23 and 33a, lowest layer
}

func ExampleSteamSource() {
	fmt.Println(pressure.SteamSource().Source.Key())
	fmt.Println(pressure.SteamSource().Where)
	// Output:
	// IAPWSR797
	// region 4, equations 29 to 31, table 34
}
