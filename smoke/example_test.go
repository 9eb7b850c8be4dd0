package smoke_test

import (
	"errors"
	"fmt"
	"time"

	"example.org/lakelarder/smoke"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// core is an invented record: °F every ten minutes.
func core(degrees ...float64) series.Series[units.Temperature] {
	var readings []series.Reading[units.Temperature]
	for i, f := range degrees {
		readings = append(readings, series.Reading[units.Temperature]{At: time.Duration(i) * 10 * time.Minute, Value: units.Fahrenheit(f)})
	}
	s, _ := series.New(readings)
	return s
}

// Two invented probes: the first fillet is done, the second dips and must begin again.
func ExampleCheckHold() {
	first := core(150, 165, 172, 175, 176, 176, 177)
	second := core(140, 158, 164, 164, 156, 164, 166)
	limit, _ := smoke.FindCoreLimit("HOT-160-PNW")
	hold, err := smoke.CheckHold(limit, 10*time.Minute, first, second)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(hold.Verdict)
	fmt.Println("held", hold.Held.Round(time.Second), "from", hold.Began.Round(time.Second))
	fmt.Println("still to hold", hold.Owed.Round(time.Second))
	for _, finding := range hold.Findings {
		fmt.Println("-", finding)
	}
	fmt.Println(hold.Limit.Citation)
	// Output:
	// not met
	// held 21m40s from 13m20s
	// still to hold 15m0s
	// - probe 1 dipped from 35m0s to 45m0s: 156.00 °F (68.89 °C), expected at least 160.00 °F (71.11 °C)
	// Pacific Northwest Extension, Smoking Fish at Home Safely, PNW 238 (1999 and 2003 printings), core temperature (read)
}

// A reading every half hour cannot show an unbroken half hour.
func ExampleCheckHold_sparse() {
	readings := []series.Reading[units.Temperature]{
		{At: 0, Value: units.Celsius(84)}, {At: 30 * time.Minute, Value: units.Celsius(85)}, {At: time.Hour, Value: units.Celsius(84)},
	}
	record, _ := series.New(readings)
	hold, _ := smoke.CheckHold(smoke.DefaultCoreLimit(), 10*time.Minute, record)
	fmt.Println(hold.Verdict, hold.Held, hold.Bridged)
	fmt.Println(hold.Findings[0])
	// Output:
	// cannot tell 0s 1h0m0s
	// probe 0 unobserved from 0s to 30m0s
}

// Smoker air taken for a core is refused.
func ExampleProbeError() {
	_, err := smoke.CheckHold(smoke.DefaultCoreLimit(), 10*time.Minute, core(185, 190, 225))
	fmt.Println(err)
	fmt.Println(errors.Is(err, units.ErrRange))
	// Output:
	// probe 0 at 20m0s: core temperature 225 °F is out of range: expected at most 100 °C, where a moist core boils: the probe is in the air
	// true
}

func ExampleFinding() {
	hold, _ := smoke.CheckHold(smoke.DefaultCoreLimit(), 10*time.Minute, core(90, 118, 131))
	fmt.Println(hold.Findings[0])
	fmt.Println(hold.Findings[0].Kind == smoke.NeverReached)
	// Output:
	// probe 0 never reached at 20m0s: 131.00 °F (55.00 °C), expected at least 180.00 °F (82.22 °C)
	// true
}

func ExampleFindingKind() {
	fmt.Println(smoke.Dipped, "or", smoke.Stopped)
	// Output: dipped or stopped
}

func ExampleVerdict() {
	var none smoke.Hold
	fmt.Println(none.Verdict, smoke.NotMet, smoke.Met)
	// Output: cannot tell not met met
}

func ExampleCoreLimits() {
	for _, l := range smoke.CoreLimits() {
		if l.Home {
			fmt.Println(l.AtLeast.Text(units.FahrenheitScale, 1), l.Hold, l.Place, l.Citation.Basis)
		}
	}
	// Output:
	// 180.0 °F 30m0s Michigan (1997) read
	// 180.0 °F 30m0s Oregon (older) read
	// 160.0 °F 30m0s Pacific Northwest read
	// 160.0 °F 30m0s Wisconsin read
	// 160.0 °F 30m0s Washington read
	// 150.1 °F 30m0s Pacific Northwest recalled
}

func ExampleDefaultCoreLimit() {
	limit := smoke.DefaultCoreLimit()
	fmt.Println(limit.ID, limit.AtLeast, limit.Hold)
	// Output: HOT-180-MSU 180 °F 30m0s
}

// The rule in print gives 145 °F and 62.8 °C; the warmer figure counts.
func ExampleFindCoreLimit() {
	limit, _ := smoke.FindCoreLimit("HOT-145-MI")
	fmt.Println(limit.AtLeast, limit.Home)
	_, err := smoke.FindCoreLimit("HOT-155")
	fmt.Println(errors.As(err, &smoke.UnknownCoreLimitError{}))
	// Output:
	// 62.8 °C false
	// true
}

func ExampleUnknownCoreLimitError() {
	fmt.Println(smoke.UnknownCoreLimitError{ID: "HOT-155"})
	// Output: no core limit "HOT-155": expected HOT-180-MSU, HOT-180-OSU, HOT-160-PNW, HOT-160-WI, HOT-160-WSU, HOT-160-CHUB, HOT-150-PNW, HOT-145-MI, HOT-145-ME, HOT-145-GL, HOT-145-FDA, HOT-145-STATES
}

func ExampleHold_Cautions() {
	pnw, _ := smoke.FindCoreLimit("HOT-160-PNW")
	warm := units.Fahrenheit(165)
	record, _ := series.New([]series.Reading[units.Temperature]{{At: 0, Value: warm}, {At: 15 * time.Minute, Value: warm}, {At: 30 * time.Minute, Value: warm}})
	hold, err := smoke.CheckHold(pnw, 15*time.Minute, record)
	fmt.Println(hold.Verdict, err)
	for _, c := range hold.Cautions()[2:] {
		fmt.Println("-", c.Text)
	}
	// Output:
	// met <nil>
	// - the strictest published figure for home smoking is 180 °F (82.2 °C) for 30 min; this limit is lower
}
