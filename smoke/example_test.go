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

// recorded is a record of some probes.
func recorded(maxGap time.Duration, cores ...series.Series[units.Temperature]) smoke.Record {
	return smoke.Record{Cores: cores, MaxGap: maxGap}
}

// Two invented probes: the first fillet is done, the second dips and must begin again.
func ExampleAuditHold() {
	first := core(150, 165, 172, 175, 176, 176, 177)
	second := core(140, 158, 164, 164, 156, 164, 166)
	limit, _ := smoke.FindCoreLimit(smoke.Hot160PNW)
	hold, err := smoke.AuditHold(limit, smoke.Record{Cores: []series.Series[units.Temperature]{first, second}, MaxGap: 10 * time.Minute})
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
	// - core, probe 2: 156 °F (68.8 °C) recorded, at least 160 °F (71.2 °C) published, too cold by 4 F° (2.3 C°), from minute 35 to 45
	// Pacific Northwest Extension, Smoking Fish at Home Safely, PNW 238 (1999 and 2003 printings), core temperature (read)
}

// A reading every half hour cannot show an unbroken half hour.
func ExampleAuditHold_sparse() {
	readings := []series.Reading[units.Temperature]{
		{At: 0, Value: units.Celsius(84)}, {At: 30 * time.Minute, Value: units.Celsius(85)}, {At: time.Hour, Value: units.Celsius(84)},
	}
	record, _ := series.New(readings)
	hold, _ := smoke.AuditHold(smoke.DefaultCoreLimit(), recorded(10*time.Minute, record))
	fmt.Println(hold.Verdict, hold.Held, hold.Bridged)
	fmt.Println(hold.Findings[0])
	// Output:
	// cannot tell 0s 1h0m0s
	// readings: 30 min recorded, at most 10 min wanted, not observed, from minute 0 to 30
}

// Smoker air taken for a core is refused.
func ExampleProbeError() {
	_, err := smoke.AuditHold(smoke.DefaultCoreLimit(), recorded(10*time.Minute, core(185, 190, 225)))
	fmt.Println(err)
	fmt.Println(errors.Is(err, units.ErrRange))
	// Output:
	// probe 1 at 20 min: core temperature 225 °F (107.2 °C) is out of range: expected at most 212 °F (100 °C), where a moist core boils: the probe is in the air
	// true
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
}

func ExampleDefaultCoreLimit() {
	limit := smoke.DefaultCoreLimit()
	fmt.Println(limit.ID, limit.AtLeast, limit.Hold)
	// Output: HOT-180-MSU 180 °F 30m0s
}

// The rule in print gives 145 °F and 62.8 °C; the warmer figure counts.
func ExampleFindCoreLimit() {
	limit, _ := smoke.FindCoreLimit(smoke.Hot145MI)
	fmt.Println(limit.AtLeast, limit.Home)
	_, err := smoke.FindCoreLimit(0)
	fmt.Println(err)
	// Output:
	// 145 °F false
	// core limit is not stated
}

func ExampleParseCoreLimitID() {
	id, err := smoke.ParseCoreLimitID("HOT-160-PNW")
	fmt.Println(id == smoke.Hot160PNW, err)
	_, err = smoke.ParseCoreLimitID("HOT-155")
	fmt.Println(errors.Is(err, units.ErrUnknown))
	// Output:
	// true <nil>
	// true
}

// The whole of an invented day on one clock: warmed in time, held, cooled, and then left to warm again.
func ExampleAudit() {
	r := recorded(10*time.Minute, core(40, 90, 140, 170, 185, 186, 186, 186, 150, 90, 50, 35, 35, 41, 36))
	r.Marks.Pack = smoke.AirPack
	day, err := smoke.Audit(smoke.Rules{}, r)
	fmt.Println(day.Verdict, day.Hold.Verdict, day.Cooling.Verdict, err)
	for _, f := range day.Findings {
		fmt.Println("-", f.Text(units.US))
	}
	// Output:
	// not met met met <nil>
	// - storage: 41 °F recorded, at most 36 °F published, too warm by 5 F°, at minute 130
}

// A recipe by the rules of the source that it quotes.
func ExampleCheckBy() {
	core, _ := smoke.FindCoreLimit(smoke.Hot160WSU)
	keep, _ := smoke.FindStorageRule(smoke.Store38)
	life, _ := smoke.FindStorageRule(smoke.Life21)
	a, err := smoke.CheckBy(smoke.Rules{Core: core, Keep: keep, Life: life}, smoke.Claim{
		Smoking: smoke.HotSmoked, Air: units.State(units.Fahrenheit(150)), Core: units.State(units.Fahrenheit(160)), Hold: units.State(30 * time.Minute),
		Oven: units.State(smoke.Oven{After: units.State(2 * time.Hour), Air: units.State(units.Fahrenheit(225))}),
		Pack: smoke.AirPack, Keep: units.State(units.Celsius(3.3)), Days: units.State(21),
	})
	fmt.Println(a.Verdict, a.Governing.ID, err)
	// Output: met HOT-160-WSU <nil>
}

// Half an hour in the smoker holds no half an hour of hold.
func ExampleCheck_impossible() {
	a, _ := smoke.Check(smoke.Claim{
		Smoking: smoke.HotSmoked, Air: units.State(units.Fahrenheit(225)), Time: units.State(31 * time.Minute), Core: units.State(units.Fahrenheit(180)),
		Hold: units.State(30 * time.Minute), Pack: smoke.AirPack, Keep: units.State(units.Fahrenheit(36)), Days: units.State(10),
	})
	fmt.Println(a.Verdict)
	fmt.Println(a.Findings[0])
	// Output:
	// cannot tell
	// time in all: 31 min stated, at least 37 min 48 s for warming and hold wanted, impossible
}

// Sixty degrees in a minute: the probe is not in the fish.
func ExampleAuditHold_impossible() {
	var readings []series.Reading[units.Temperature]
	for i, c := range []float64{20, 20, 85, 85, 85, 85, 85} {
		readings = append(readings, series.Reading[units.Temperature]{At: time.Duration(i*i) * time.Minute, Value: units.Celsius(c)})
	}
	record, _ := series.New(readings)
	hold, err := smoke.AuditHold(smoke.DefaultCoreLimit(), smoke.Record{Cores: []series.Series[units.Temperature]{record}, MaxGap: 15 * time.Minute})
	fmt.Println(hold.Verdict, hold.Held, err)
	fmt.Println(hold.Findings[0].Text(units.Metric))
	// Output:
	// cannot tell 32m7.692307692s <nil>
	// core: 85 °C recorded, at most 70.9 °C of a core by then wanted, impossible, from minute 1 to 36 (Put the probe into the middle of the thickest piece, and begin the record when it sits there)
}
