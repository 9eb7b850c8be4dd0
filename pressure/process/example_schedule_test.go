package process_test

import (
	"fmt"

	"example.org/lakelarder/pressure"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
)

func ExampleSchedule_Request() {
	s, err := process.Find(process.Request{
		Product: process.Fish, Pack: process.RawPack, Jar: process.Pint, Gauge: process.Dial, Altitude: units.State(500 * units.Foot),
	})
	fmt.Println(s.Request(), err)
	// Output: raw fish in pint jars, dial gauge, at 500 ft <nil>
}

func ExampleSchedule_Unverified() {
	request := process.Request{Product: process.Fish, Pack: process.RawPack, Jar: process.Pint, Gauge: process.Dial}
	for _, altitude := range []units.Length{7_500 * units.Foot, 8_500 * units.Foot} {
		request.Altitude = units.State(altitude)
		s, err := process.Find(request)
		if err != nil {
			s, err = process.FindExtension(request)
		}
		fmt.Println(units.Text(altitude, units.Foot, 0), s.Unverified(), err)
	}
	// Output:
	// 7,500 ft false <nil>
	// 8,500 ft true <nil>
}

// Smoked fish: USDA Complete Guide, Guide 5, rev. 2015, p. 5-13.
func ExampleSchedule_Cautions() {
	s, err := process.Find(process.Request{
		Product: process.SmokedFish, Pack: process.AsSmoked, Jar: process.Pint, Gauge: process.Weighted, Altitude: units.State(4_350 * units.Foot),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, c := range s.Cautions()[:3] {
		fmt.Println(c.Text)
	}
	// Output:
	// At least 4 quarts of cool tap water in the canner, up to the bands of pint jars: neither less nor heated.
	// Only in a canner of 16 to 22 quarts; nothing is known to be safe in a smaller one.
	// No jar larger than a pint.
}

// At the top of its band a published setting may give less than 240 °F. That is the table's own margin, not a fault to correct.
func ExampleSchedule_Margin() {
	s, err := process.Find(process.Request{
		Product: process.Fish, Pack: process.RawPack, Jar: process.Pint, Gauge: process.Dial, Altitude: units.State(2_000 * units.Foot),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	air, err := pressure.AirAt(2_000 * units.Foot)
	if err != nil {
		fmt.Println(err)
		return
	}
	m, err := s.Margin(air)
	fmt.Println(m.Steam.Text(units.FahrenheitScale, 2), units.In(m.Above, units.FahrenheitDegrees, 2), err)
	// Output: 239.29 °F -0.71 <nil>
}

// USDA Complete Guide, rev. 2015, For Safety's Sake, p. iii; the started thousand counted whole.
func ExampleBoilBeforeEating() {
	for _, altitude := range []units.Length{0, 1_000 * units.Foot, 4_350 * units.Foot} {
		boil, _, err := process.BoilBeforeEating(altitude)
		fmt.Println(units.Text(altitude, units.Foot, 0), boil, err)
	}
	// Output:
	// 0 ft 10m0s <nil>
	// 1,000 ft 11m0s <nil>
	// 4,350 ft 15m0s <nil>
}

func ExampleParseProduct() {
	p, err := process.ParseProduct("Smoked fish")
	fmt.Println(p, err, p == process.SmokedFish)
	// Output: smoked fish <nil> true
}

func ExampleProduct() {
	text, err := process.Tuna.MarshalText()
	var p process.Product
	fmt.Println(string(text), err, p.UnmarshalText(text), p, process.Product(0))
	// Output: tuna <nil> <nil> tuna not stated
}

func ExampleParsePack() {
	p, err := process.ParsePack("raw")
	fmt.Println(p, err, p == process.RawPack)
	// Output: raw <nil> true
}

func ExamplePack() {
	text, err := process.AsSmoked.MarshalText()
	var p process.Pack
	fmt.Println(string(text), err, p.UnmarshalText(text), p, process.Pack(0))
	// Output: as smoked <nil> <nil> as smoked not stated
}

func ExampleParseJar() {
	j, err := process.ParseJar("1-1/2 pint")
	fmt.Println(j, err)
	_, err = process.ParseJar("500 mL")
	fmt.Println(err)
	// Output:
	// 1½ pint <nil>
	// unknown jar "500 mL": expected half-pint, 12 oz, pint, 1½ pint, quart or half-gallon
}

func ExampleJar() {
	text, err := process.HalfPint.MarshalText()
	var j process.Jar
	fmt.Println(string(text), err, j.UnmarshalText(text), j, process.Jar(0))
	// Output: half-pint <nil> <nil> half-pint not stated
}

func ExampleJar_Volume() {
	fmt.Println(units.Text(process.Pint.Volume(), units.Millilitre, 1))
	// Output: 473.2 mL
}

func ExampleParseGauge() {
	g, err := process.ParseGauge("weighted")
	fmt.Println(g, err)
	// Output: weighted <nil>
}

func ExampleGauge() {
	text, err := process.Dial.MarshalText()
	var g process.Gauge
	fmt.Println(string(text), err, g.UnmarshalText(text), g, process.Gauge(0))
	// Output: dial <nil> <nil> dial not stated
}
