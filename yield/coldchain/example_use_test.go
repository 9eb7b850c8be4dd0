package coldchain_test

import (
	"fmt"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain"
)

// icedForTwoDays is an invented trout in melting ice, a reading an hour.
func icedForTwoDays() series.Series[units.Temperature] {
	var readings []series.Reading[units.Temperature]
	for i := 0; i <= 48; i++ {
		readings = append(readings, series.Reading[units.Temperature]{At: time.Duration(i) * time.Hour, Value: units.Celsius(0)})
	}
	record, _ := series.New(readings)
	return record
}

// Two days in ice use up Yersinia's limit twice. Eaten raw that decides; in the canner it grows no more, if the run is met.
func ExampleAudit_use() {
	terms := coldchain.Terms{MaxGap: time.Hour, Product: coldchain.RawFish, Water: coldchain.Freshwater}
	for _, terms.Use = range []coldchain.Use{coldchain.EatenRaw, coldchain.Canned} {
		report, _ := coldchain.Audit(icedForTwoDays(), terms)
		fmt.Println(terms.Use, "-", report.Verdict)
		for _, f := range report.Findings {
			fmt.Println(f.Rule, f.Kind)
		}
	}
	terms.Later = units.State(verdict.NotMet)
	report, _ := coldchain.Audit(icedForTwoDays(), terms)
	fmt.Println("and the run was not met -", report.Verdict)
	// Output:
	// eaten raw - not met
	// coldchain.table-a2.yersinia too long
	// canned - met
	// coldchain.later-step missing
	// and the run was not met - not met
}

// A probe that came loose for half an hour is a gap, not -127 °C.
func ExampleAudit_dropout() {
	readings := icedForTwoDays().Readings()
	readings[7].Value = units.Celsius(-127)
	record, _ := series.New(readings)
	report, err := coldchain.Audit(record, coldchain.Terms{MaxGap: time.Hour, Use: coldchain.Canned})
	fmt.Println(report.Verdict, report.Dropouts, report.Unknown, err)
	// Output: cannot tell 1 2h0m0s <nil>
}

// From ice into a refrigerator: while the core warms, the refrigerator counts.
func ExampleRunning_Stays() {
	running, _ := coldchain.Watch(coldchain.Terms{MaxGap: time.Hour})
	running, _ = running.Next(series.Reading[units.Temperature]{At: time.Hour, Value: units.Celsius(0)})
	_, err := running.Stays(coldchain.Stay{When: series.Stretch{To: 24 * time.Hour}, In: coldchain.InRefrigerator, Air: units.Fahrenheit(38)})
	fmt.Println(err)
	_, err = running.Stays(coldchain.Stay{When: series.Stretch{From: time.Hour, To: 24 * time.Hour}, In: coldchain.InRefrigerator, Air: units.Fahrenheit(38)})
	fmt.Println(err)
	// Output:
	// start of a stay 0 min is out of range: expected at least 1 h
	// <nil>
}

func ExampleStay() {
	s := coldchain.Stay{When: series.Stretch{To: 24 * time.Hour}, In: coldchain.InRefrigerator, Air: units.Fahrenheit(38)}
	text, err := s.MarshalJSON()
	var back coldchain.Stay
	fmt.Println(string(text), err, back.UnmarshalJSON(text), back == s)
	// Output: {"when":{"to":"24 h"},"in":"refrigerator","air":"38 °F"} <nil> <nil> true
}

func ExampleUse() {
	var use coldchain.Use
	err := use.UnmarshalText([]byte("hot-smoked"))
	text, _ := use.MarshalText()
	fmt.Println(coldchain.Canned, "|", string(text), err)
	// Output:
	// canned | hot-smoked <nil>
}

func ExampleParseUse() {
	use, err := coldchain.ParseUse("hot-smoked")
	fmt.Println(use, err)
	// Output: hot-smoked <nil>
}

func ExampleWater() {
	var water coldchain.Water
	err := water.UnmarshalText([]byte("marine"))
	text, _ := water.MarshalText()
	fmt.Println(coldchain.Freshwater, "|", string(text), err)
	// Output:
	// freshwater | marine <nil>
}

func ExampleParseWater() {
	water, err := coldchain.ParseWater("marine")
	fmt.Println(water, err)
	// Output: marine <nil>
}

func ExamplePlace() {
	var place coldchain.Place
	err := place.UnmarshalText([]byte("out"))
	text, _ := place.MarshalText()
	fmt.Println(coldchain.InIce, "|", string(text), err)
	// Output:
	// ice | out <nil>
}

func ExampleParsePlace() {
	place, err := coldchain.ParsePlace("out")
	fmt.Println(place, err)
	// Output: out <nil>
}

func ExampleProbe() {
	var probe coldchain.Probe
	err := probe.UnmarshalText([]byte("warmest part"))
	text, _ := probe.MarshalText()
	fmt.Println(coldchain.Core, "|", string(text), err)
	// Output:
	// core | warmest part <nil>
}

func ExampleParseProbe() {
	probe, err := coldchain.ParseProbe("warmest part")
	fmt.Println(probe, err)
	// Output: warmest part <nil>
}

func ExampleSpared() {
	var spared coldchain.Spared
	err := spared.UnmarshalText([]byte("not in freshwater fish"))
	text, _ := spared.MarshalText()
	fmt.Println(coldchain.HeatUndoesIt, "|", string(text), err)
	// Output:
	// the heat to come undoes it | not in freshwater fish <nil>
}

func ExampleParseSpared() {
	spared, err := coldchain.ParseSpared("not in freshwater fish")
	fmt.Println(spared, err)
	// Output: not in freshwater fish <nil>
}
