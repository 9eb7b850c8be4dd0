package process_test

import (
	"errors"
	"fmt"

	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
)

// Raw trout in pints, dial gauge, at 4,350 ft: USDA Complete Guide, Guide 5, rev. 2015, p. 5-10.
func ExampleFind() {
	s, err := process.Find(process.Request{
		Product: process.Fish, Pack: process.RawPack, Jar: process.Pint, Gauge: process.Dial, Altitude: units.State(4_350 * units.Foot),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(units.Text(s.Pressure, units.PSI, 0), s.Process, s.Band)
	fmt.Println(s.Citation)
	// Output:
	// 13 psi 1h40m0s above 4,000 ft to 6,000 ft
	// USDA, Complete Guide to Home Canning, Guide 5 (AIB 539, rev. 2015), Fish in Pint Jars, p. 5-10 (read)
}

func ExampleNotPublishedError() {
	_, err := process.Find(process.Request{
		Product: process.SmokedFish, Pack: process.AsSmoked, Jar: process.Quart, Gauge: process.Dial, Altitude: units.State(4_350 * units.Foot),
	})
	fmt.Println(err)
	var refusal process.NotPublishedError
	fmt.Println(errors.As(err, &refusal), refusal.Missing)
	// Output:
	// no process is published for smoked fish in quart jars; its tables are for jars: half-pint and pint
	// true jar
}

func ExampleMissing() {
	fmt.Println(process.MissingAltitude)
	// Output: altitude
}

func ExampleFindExtension() {
	request := process.Request{Product: process.Fish, Pack: process.RawPack, Jar: process.Pint, Gauge: process.Dial, Altitude: units.State(9_000 * units.Foot)}
	_, err := process.Find(request)
	fmt.Println(err)
	s, err := process.FindExtension(request)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(units.Text(s.Pressure, units.PSI, 0), s.Process, s.Extension)
	fmt.Println(s.Cautions()[0].Text)
	// Output:
	// no process is published for raw fish in pint jars, dial gauge, at 9,000 ft; the dial-gauge tables end at 8,000 ft
	// 15 psi 1h40m0s true
	// 15 psi above 8,000 ft is in no USDA table: it is an extension rule carried on by one band. Ask the local extension service first.
}

func ExampleRequest() {
	fmt.Println(process.Request{
		Product: process.Fish, Pack: process.RawPack, Jar: process.HalfPint, Gauge: process.Weighted, Altitude: units.State(1_325_880 * units.Millimetre),
	})
	// Output: raw fish in half-pint jars, weighted gauge, at 4,350 ft
}

// 609.6 m is 2,000 ft: the lower band. A nanometre more is the next.
func ExampleBand_Contains() {
	band := process.Band{Over: 0, UpTo: 2_000 * units.Foot}
	edge := 609_600 * units.Millimetre
	fmt.Println(band, band.Contains(edge), band.Contains(edge+units.Nanometre))
	fmt.Println(process.Band{Over: 1_000 * units.Foot, UpTo: process.NoLimit})
	// Output:
	// 0 to 2,000 ft true false
	// above 1,000 ft
}

func ExampleSchedules() {
	for _, s := range process.Schedules() {
		if s.Product == process.Fish && s.Jar == process.Quart {
			fmt.Println(s.Gauge, s.Band, units.Text(s.Pressure, units.PSI, 0), s.Process, s.ComeUp)
		}
	}
	// Output:
	// dial 0 to 2,000 ft 11 psi 2h40m0s 30m0s
	// dial above 2,000 ft to 4,000 ft 12 psi 2h40m0s 30m0s
	// dial above 4,000 ft to 6,000 ft 13 psi 2h40m0s 30m0s
	// dial above 6,000 ft to 8,000 ft 14 psi 2h40m0s 30m0s
	// weighted 0 to 1,000 ft 10 psi 2h40m0s 30m0s
	// weighted above 1,000 ft 15 psi 2h40m0s 30m0s
}
