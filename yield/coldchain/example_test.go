package coldchain_test

import (
	"fmt"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain"
)

// A lake-run catch (invented): 14 °C for 1.5 h, chilled to 2 °C over 5 h, then kept at 2 °C for 12 h. Nobody wrote down more,
// so that somebody vouches for the time between.
func ExampleAudit() {
	record, _ := series.New([]series.Reading[units.Temperature]{
		{At: 0, Value: units.Celsius(14)},
		{At: 90 * time.Minute, Value: units.Celsius(14)},
		{At: 390 * time.Minute, Value: units.Celsius(2)},
		{At: 1110 * time.Minute, Value: units.Celsius(2)},
	})
	report, err := coldchain.Audit(record, coldchain.Terms{
		MaxGap:  12 * time.Hour,
		Product: coldchain.RawFish,
		Hazards: []coldchain.Hazard{coldchain.Listeria},

		Undisturbed: true,
	})
	fmt.Println(report.Verdict, err)
	for _, h := range report.Hours {
		fmt.Printf("above %s: %v\n", h.Above.Text(units.FahrenheitScale, 0), h.Time.Round(time.Second))
	}
	for _, f := range report.Allowances {
		fmt.Printf("%v: %v, %s used", f.Rule, f.Verdict, units.Text(f.Used, units.Percent, 1))
		if f.Verdict == verdict.NotMet {
			fmt.Printf(", exceeded at %v", f.ExceededAt)
		}
		fmt.Println()
	}
	for _, f := range report.Findings {
		fmt.Println(f.Text(units.US))
	}
	// Output:
	// not met <nil>
	// above 38 °F: 5h56m40s
	// above 40 °F: 5h28m53s
	// above 50 °F: 3h10m0s
	// above 70 °F: 0s
	// above 80 °F: 0s
	// table A-2: met, 61.8 % used
	// raw ready-to-eat: met, 63.3 % used
	// kitchen two hours: not met, 274.1 % used, exceeded at 2h0m0s
	// kitchen two hours: 5 h 28 min 54 s recorded, at most 2 h published, too long by 3 h 28 min 54 s, from minute 120 to 1110
}

// A logger that fell silent for nine hours: what it did not see is not known to be cold.
func ExampleAudit_gap() {
	record, _ := series.New([]series.Reading[units.Temperature]{
		{At: 0, Value: units.Fahrenheit(34)},
		{At: 30 * time.Minute, Value: units.Fahrenheit(34)},
		{At: 570 * time.Minute, Value: units.Fahrenheit(36)},
	})
	report, err := coldchain.Audit(record, coldchain.Terms{MaxGap: time.Hour})
	fmt.Println(report.Verdict, report.Unknown, err)
	fmt.Println(report.Next[0].Text(units.Metric))
	// Output:
	// cannot tell 9h0m0s <nil>
	// Part of the time is not recorded: treat the fish as past its limit unless another record shows that it stayed cold.
}

// FDA Fish and Fishery Products Hazards and Controls Guidance, printing of March 2020, Appendix 4, table A-2.
func ExampleLimits() {
	for _, l := range coldchain.Limits(coldchain.TableA2) {
		if l.Hazard == coldchain.BotulinumE {
			fmt.Println(l.Over.Text(units.FahrenheitScale, 1), l.UpTo.Text(units.FahrenheitScale, 1), l.Allowed, l.Citation.Basis)
		}
	}
	// Output:
	// 37.9 °F 41.0 °F 168h0m0s read
	// 41.0 °F 50.0 °F 48h0m0s read
	// 50.0 °F 70.0 °F 11h0m0s read
	// 70.0 °F 135.0 °F 6h0m0s read
}

// The print has bands up to 41 °F and from 42 °F: 41 °F is still in the lower, 41.1 °F in the stricter.
func ExampleFindLimit() {
	on, _ := coldchain.FindLimit(coldchain.Listeria, units.Fahrenheit(41))
	above, _ := coldchain.FindLimit(coldchain.Listeria, units.Fahrenheit(41.1))
	fmt.Println(on.Allowed, above.Allowed)
	_, err := coldchain.FindLimit(coldchain.Listeria, units.Fahrenheit(30))
	fmt.Println(err)
	// Output:
	// 168h0m0s 24h0m0s
	// temperature in the bands of Listeria monocytogenes 30 °F is out of range: expected 31.3 °F to 135 °F
}

func ExampleHazards() {
	all := coldchain.Hazards()
	fmt.Println(len(all), all[0], "to", all[len(all)-1])
	// Output: 14 Bacillus cereus to Yersinia enterocolitica
}

func ExampleParseHazard() {
	hazard, err := coldchain.ParseHazard("salmonella")
	fmt.Println(hazard, err)
	// Output: Salmonella <nil>
}

func ExampleParseRule() {
	rule, err := coldchain.ParseRule("table A-2")
	fmt.Println(rule, err)
	// Output: table A-2 <nil>
}

func ExampleHazard() {
	var hazard coldchain.Hazard
	err := hazard.UnmarshalText([]byte("Shigella"))
	text, _ := hazard.MarshalText()
	fmt.Println(hazard, string(text), err)
	// Output: Shigella Shigella <nil>
}

func ExampleRule() {
	var rule coldchain.Rule
	err := rule.UnmarshalText([]byte("kitchen two hours"))
	text, _ := rule.MarshalText()
	fmt.Println(rule, string(text), err)
	// Output: kitchen two hours kitchen two hours <nil>
}

func ExampleProduct() {
	fmt.Println(coldchain.AnyFish, "|", coldchain.RawFish, "|", coldchain.CookedFish)
	// Output:
	// not stated | raw fish | cooked fish
}

func ExampleReading() {
	fmt.Println(coldchain.SumOfFractions, "|", coldchain.Nested, "|", coldchain.EachBand)
	// Output: sum of fractions | nested | each band
}

// Two hours at 45 °F use one band of Listeria, and the way to 60 °F another: both stand on one page.
func ExampleAllowance_Citations() {
	record, _ := series.New([]series.Reading[units.Temperature]{
		{At: 0, Value: units.Fahrenheit(45)}, {At: 2 * time.Hour, Value: units.Fahrenheit(45)}, {At: 3 * time.Hour, Value: units.Fahrenheit(60)},
	})
	report, err := coldchain.Audit(record, coldchain.Terms{
		MaxGap: 2 * time.Hour, Rules: []coldchain.Rule{coldchain.TableA2}, Hazards: []coldchain.Hazard{coldchain.Listeria},
	})
	for _, c := range report.Allowances[0].Citations() {
		fmt.Println(c.Basis, err)
	}
	// Output:
	// read <nil>
}
