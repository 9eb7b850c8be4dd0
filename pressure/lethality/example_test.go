package lethality_test

import (
	"errors"
	"fmt"
	"time"

	"example.org/lakelarder/pressure/lethality"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// demo is an invented record of a jar's centre.
func demo() series.Series[units.Temperature] {
	s, err := series.New([]series.Reading[units.Temperature]{
		{At: 0, Value: units.Celsius(60)}, {At: 20 * time.Minute, Value: units.Celsius(116)},
		{At: 40 * time.Minute, Value: units.Celsius(116)}, {At: 60 * time.Minute, Value: units.Celsius(60)},
	})
	if err != nil {
		panic(err)
	}
	return s
}

func ExampleF0() {
	r := lethality.F0()
	rate, err := r.Rate(units.Celsius(111.1))
	fmt.Println(r, "|", plain(lethality.Number(rate), 3), err)
	// Output: 121.1 °C, z 10 K | 0.100 <nil>
}

func ExampleF0Fahrenheit() {
	f, _ := lethality.F0().Worth(units.Fahrenheit(240), 100*time.Minute)
	g, _ := lethality.F0Fahrenheit().Worth(units.Fahrenheit(240), 100*time.Minute)
	fmt.Printf("%.3f and %.3f min\n", f.F.Minutes(), g.F.Minutes())
	// Output: 27.897 and 27.826 min
}

func ExampleReference_Rate() {
	rate, err := lethality.F0().Rate(units.Celsius(101.1))
	fmt.Println(rate, err)
	// Output: 1 % <nil>
}

// Geankoplis, example 9.12-1: each step's time by its rate.
func ExampleReference_Worth() {
	var f time.Duration
	for _, step := range []struct {
		minutes int
		at      units.Temperature
	}{{20, units.Fahrenheit(160)}, {20, units.Fahrenheit(210)}, {33, units.Fahrenheit(230)}} {
		part, err := lethality.F0Fahrenheit().Worth(step.at, time.Duration(step.minutes)*time.Minute)
		if err != nil {
			fmt.Println(err)
			return
		}
		f += part.F
	}
	fmt.Printf("%.2f min\n", f.Minutes())
	// Output: 2.68 min
}

func ExampleReference_TimeAt() {
	d, err := lethality.F0().TimeAt(units.Celsius(115.6), 3*time.Minute)
	fmt.Printf("%.2f min %v\n", d.Time.Minutes(), err)
	fmt.Println(d.Cautions[0])
	// Output:
	// 10.64 min <nil>
	// None of this shortens, replaces or confirms a published process. Follow the tested schedule for the product, jar, gauge and altitude.
}

func ExampleF() {
	f, err := lethality.F(demo(), lethality.F0())
	fmt.Printf("%.4f min against %s %v\n", f.F.Minutes(), f.Reference, err)
	// Output: 7.1392 min against 121.1 °C, z 10 K <nil>
}

func ExampleDivide() {
	p, err := lethality.Divide(demo(), lethality.F0(), series.Stretch{From: 20 * time.Minute, To: 40 * time.Minute})
	fmt.Printf("%.2f + %.2f + %.2f min %v, longest gap %v\n", p.ComeUp.Minutes(), p.Hold.Minutes(), p.Cooling.Minutes(), err, p.LongestGap.Length())
	// Output: 0.48 + 6.18 + 0.48 min <nil>, longest gap 20m0s
}

func ExampleFBy() {
	for _, rule := range []lethality.Rule{lethality.Exact, lethality.Trapezoid} {
		f, err := lethality.FBy(demo(), lethality.F0(), rule)
		fmt.Printf("%s: %.2f min %v\n", rule, f.F.Minutes(), err)
	}
	// Output:
	// exact on straight lines: 7.14 min <nil>
	// trapezoid: 12.36 min <nil>
}

func ExampleStart() {
	running, err := lethality.Start(lethality.F0())
	for _, reading := range demo().Readings() {
		if running, err = running.Next(reading); err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%d readings, %.2f min\n", running.Len(), running.F().F.Minutes())
	}
	fmt.Println(running.LongestGap().Length())
	// Output:
	// 1 readings, 0.00 min
	// 2 readings, 0.48 min
	// 3 readings, 6.66 min
	// 4 readings, 7.14 min
	// 20m0s
}

func ExampleRunning_Next() {
	running, _ := lethality.Start(lethality.F0())
	running, _ = running.Next(series.Reading[units.Temperature]{At: time.Minute, Value: units.Celsius(116)})
	_, err := running.Next(series.Reading[units.Temperature]{At: 2 * time.Minute})
	fmt.Println(err)
	// Output: reading 1 at 2m0s: the value is not set
}

func ExampleRunning_F() {
	running, _ := lethality.Start(lethality.F0())
	running, _ = running.Next(series.Reading[units.Temperature]{At: 0, Value: units.Celsius(121.1)})
	running, _ = running.Next(series.Reading[units.Temperature]{At: 3 * time.Minute, Value: units.Celsius(121.1)})
	fmt.Println(running.F().F)
	// Output: 3m0s
}

func ExampleRunning_Len() {
	running, _ := lethality.Start(lethality.F0())
	fmt.Println(running.Len())
	// Output: 0
}

func ExampleRunning_LongestGap() {
	running, _ := lethality.Start(lethality.F0())
	fmt.Println(running.LongestGap())
	// Output: {0s 0s}
}

// Geankoplis, example 9.12-3.
func ExampleReductions() {
	logs, err := lethality.Reductions(9*time.Minute, 36*time.Second)
	fmt.Println(logs.Reductions, err)
	// Output: 15.0 <nil>
}

func ExampleTarget() {
	f, err := lethality.Target(12600*time.Millisecond, lethality.Logs(12*lethality.One))
	fmt.Printf("%.2f min %v\n", f.Time.Minutes(), err)
	// Output: 2.52 min <nil>
}

func ExampleSurvivors() {
	logs, _ := lethality.Reductions(2880*time.Millisecond, 1500*time.Millisecond)
	left, err := lethality.Survivors(10, logs.Reductions)
	fmt.Println(plain(left.Left, 6), err)
	// Output: 0.120226 <nil>
}

func ExampleLogCount() {
	logs, err := lethality.LogCount(300_000)
	f, _ := lethality.Target(90*time.Second, logs+lethality.Logs(3*lethality.One))
	fmt.Printf("%.1f min for one spoiled can in a thousand %v\n", f.Time.Minutes(), err)
	// Output: 12.7 min for one spoiled can in a thousand <nil>
}

func ExampleDFromCounts() {
	d, err := lethality.DFromCounts(4600, 160, 5*time.Minute)
	fmt.Printf("%.2f min %v\n", d.Time.Minutes(), err)
	// Output: 3.43 min <nil>
}

func ExampleResistances() {
	for _, r := range lethality.Resistances()[:3] {
		fmt.Println(r.Organism, r.Temperature, r.D, r.Citation.Basis)
	}
	// Output:
	// C. botulinum (proteolytic, 12D design) 121.1 °C 12.6s read
	// C. botulinum 121.1 °C 12.24s recalled
	// C. botulinum 121.1 °C 15s recalled
}

func ExampleKillTimesAt() {
	for _, row := range lethality.KillTimesAt(units.Celsius(86), lethality.BotulinumUK, lethality.BotulinumA4) {
		fmt.Println(row.Table, row.Time, row.Citation.Basis)
	}
	// Output:
	// non-proteolytic botulinum, US FDA A-4 37m0s read
	// non-proteolytic botulinum, UK 28m0s read
}

func ExampleKillTimes() {
	fmt.Println(len(lethality.KillTimes()), "printed rows")
	// Output: 127 printed rows
}

func ExampleKillTable_Citation() {
	fmt.Println(lethality.BotulinumUK.Citation())
	// Output: UK Food Standards Agency, vacuum packing training, module 3 section 2, module 3, section 2 (read)
}

func ExampleKillTable_Cautions() {
	for _, c := range lethality.Salmonella1999.Cautions() {
		fmt.Println(c.Text)
	}
	// Output:
	// This is for cooked beef and not for fish. Later revisions supersede it and ask for humidity as well.
	// 0 s means at once when that temperature is reached, which is not no heat.
}

func ExampleNonProteolytic() {
	us, _ := lethality.NonProteolytic().TimeAt(units.Celsius(86))
	uk, _ := lethality.NonProteolyticUK().TimeAt(units.Celsius(86))
	fmt.Printf("%.1f and %.1f min\n", us.Time.Minutes(), uk.Time.Minutes())
	// Output: 37.3 and 27.8 min
}

func ExampleNonProteolyticUK() {
	fmt.Println(lethality.NonProteolyticUK())
	// Output: non-proteolytic botulinum, z 9 K below 90 °C
}

func ExampleListeria() {
	at, d := lethality.Listeria().SixD()
	fmt.Println(lethality.Listeria(), at, d)
	// Output: Listeria, z 7.5 K 70 °C 2m0s
}

func ExamplePasteurisation_SixD() {
	at, d := lethality.NonProteolytic().SixD()
	fmt.Println(at, d)
	// Output: 90 °C 10m0s
}

func ExamplePasteurisation_Citation() {
	fmt.Println(lethality.Listeria().Citation().Where)
	// Output:
	// Appendix 4, table A-3, p. 422
}

func ExamplePasteurisation_TimeAt() {
	d, err := lethality.Listeria().TimeAt(units.Celsius(63))
	fmt.Printf("%.2f min %v\n", d.Time.Minutes(), err)
	// Output: 17.15 min <nil>
}

func ExamplePasteurisation_Value() {
	v, err := lethality.NonProteolytic().Value(demo(), lethality.Moist)
	fmt.Printf("P %.0f min, %s log10, from %s to %s %v\n", v.P.Minutes(), v.Reductions, v.Span.From, v.Span.To, err)
	fmt.Printf("%.0f min below and %.0f min above count for nothing\n", v.Below.Time.Minutes(), v.Above.Time.Minutes())
	_, err = lethality.NonProteolytic().Value(demo(), lethality.DrySmoke)
	fmt.Println(err != nil)
	// Output:
	// P 30 min, 17.8 log10, from 85 °C to 100 °C <nil>
	// 18 min below and 31 min above count for nothing
	// true
}

func ExampleDrySmokeError() {
	_, err := lethality.NonProteolyticUK().Value(demo(), lethality.DrySmoke)
	var dry lethality.DrySmokeError
	fmt.Println(errors.As(err, &dry), dry.Target, dry.Citation.Basis)
	// Output: true non-proteolytic botulinum, z 9 K below 90 °C read
}

func ExampleShape() {
	fmt.Println(lethality.Slab, lethality.InfiniteCylinder, lethality.Sphere)
	// Output: slab cylinder sphere
}

func ExampleHeat() {
	fmt.Println(lethality.Moist, lethality.DrySmoke, lethality.Slab, lethality.Simpson, lethality.ListeriaUK)
	// Output: moist heat dry smoke slab Simpson Listeria, UK short list
}

// plain prints a number without a unit.
func plain(n lethality.Number, places int32) string {
	return units.In(units.Ratio(n), units.One, places).StringFixed(places)
}

// A Biot number is no percentage, and reductions round down.
func ExampleNumber() {
	fmt.Println(75*lethality.One/10, lethality.Logs(6*lethality.One), lethality.Logs(6*lethality.One-1))
	// Output: 7.5 6.0 5.9
}

func ExampleLogs() {
	fmt.Println(lethality.Logs(12 * lethality.One))
	// Output: 12.0
}

// Two weeks in a larder at 40 °C are no pasteurisation.
func ExamplePasteurisation_Span() {
	span := lethality.Listeria().Span()
	warm, _ := series.New([]series.Reading[units.Temperature]{{At: 0, Value: units.Celsius(40)}, {At: 14 * 24 * time.Hour, Value: units.Celsius(40)}})
	v, err := lethality.Listeria().Value(warm, lethality.Moist)
	fmt.Println(span.From, "to", span.To, "|", v.P, v.Reductions, err)
	fmt.Println(v.Cautions[len(v.Cautions)-1].Text)
	// Output:
	// 63 °C to 85 °C | 0s 0.0 <nil>
	// The record was colder than the printed table for a time. Nothing was counted there, where germs may grow.
}
