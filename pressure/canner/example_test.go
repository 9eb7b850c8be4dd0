package canner_test

import (
	"fmt"
	"time"

	"example.org/lakelarder/pressure/canner"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// raw returns the published process for raw fish at 4,350 ft.
func raw(jar process.Jar, gauge process.Gauge) process.Schedule {
	s, _ := process.Find(process.Request{Product: process.Fish, Pack: process.RawPack, Jar: jar, Gauge: gauge, Altitude: units.State(4350 * units.Foot)})
	return s
}

// An invented canner of 12 inches across.
var kitchen = canner.Vessel{
	Diameter: 12 * units.Inch, Height: 12 * units.Inch, Rack: units.Inch / 2, Divider: units.Inch / 8, Capacity: 22 * units.Quart,
}

// Seven circles stand in one of three times their size.
func ExampleFindPacking() {
	p, _ := canner.FindPacking(7)
	fmt.Println(p.Circles, units.In(p.Ratio, units.One, 4), p.Optimality)
	_, err := canner.FindPacking(41)
	fmt.Println(err)
	// Output:
	// 7 3 proven
	// number of circles 41 is out of range: expected 1 to 40
}

func ExampleOptimality_String() {
	p, _ := canner.FindPacking(18)
	fmt.Println(p.Optimality)
	// Output: best known
}

// USDA Complete Guide, Guide 1, rev. 2015, p. 1-17: large canners hold 18 pints in two layers and still only 7 quarts.
func ExampleFit() {
	pint, _ := canner.FindJarSize("pint regular")
	quart, _ := canner.FindJarSize("quart regular")
	pints, _ := canner.Fit(raw(process.Pint, process.Dial), kitchen, pint, 0)
	quarts, _ := canner.Fit(raw(process.Quart, process.Dial), kitchen, quart, 0)
	fmt.Println(pints.Jars, "pints in", pints.Layers, "layers")
	fmt.Println(quarts.Jars, "quarts in", quarts.Layers, "layer by", quarts.LayersBy)
	small := kitchen
	small.Diameter = 9 * units.Inch
	_, err := canner.Fit(raw(process.Pint, process.Dial), small, pint, 0)
	fmt.Println(err)
	// Output:
	// 18 pints in 2 layers
	// 7 quarts in 1 layer by the published rule
	// vessel is unsuitable: 3 quart jars upright on the rack under the lid, required at least 4 (USDA, Complete Guide to Home Canning, Guide 1 (AIB 539, rev. 2015), Recommended canners, p. 1-17 (read))
}

func ExampleLayerLimit_String() {
	fmt.Println(canner.ByDivider)
	// Output: no divider
}

func ExampleUnsuitableError_Error() {
	fmt.Println(canner.UnsuitableError{What: "dial gauge", Got: "off by 3 psi", Required: "2 psi at most"})
	// Output: dial gauge is unsuitable: off by 3 psi, required 2 psi at most (no citation)
}

func ExampleContradictionError_Error() {
	pint, _ := canner.FindJarSize("pint wide")
	_, err := canner.Fit(raw(process.Quart, process.Dial), kitchen, pint, 0)
	fmt.Println(err)
	// Output: jar pint does not fit: expected a schedule and its jar, quart
}

func ExampleLoad_Loads() {
	pint, _ := canner.FindJarSize("pint regular")
	l, _ := canner.Fit(raw(process.Pint, process.Dial), kitchen, pint, 0)
	b, _ := l.Loads(50)
	fmt.Println(b.Loads, "loads, the last of", b.Last)
	// Output: 3 loads, the last of 14
}

func ExampleLoad_Cautions() {
	pint, _ := canner.FindJarSize("pint regular")
	l, _ := canner.Fit(raw(process.Pint, process.Dial), kitchen, pint, 0)
	for _, c := range l.Cautions() {
		fmt.Println(c.Text)
	}
	// Output:
	// Jars stand upright on the rack, and steam must be able to pass between them. Try the load with empty jars.
	// USDA sets no least number of jars for a load. With few jars, jars of water may fill the room.
	// A rack goes between the two layers.
	// Three layers are not tested.
}

func ExampleJarSizes() {
	for _, j := range canner.JarSizes() {
		fmt.Println(j.Name, units.Text(j.Diameter, units.Inch, 2), j.Citation.Basis)
	}
	// Output:
	// half-pint regular 2.75 in practice
	// half-pint wide squat 3.60 in practice
	// 12 oz regular 2.75 in practice
	// pint regular 3.20 in practice
	// pint wide 3.50 in practice
	// 1.5 pint wide 3.50 in practice
	// quart regular 3.80 in practice
	// quart wide 3.85 in practice
}

func ExampleFindJarSize() {
	j, _ := canner.FindJarSize("half-pint regular")
	fmt.Println(j.Jar, units.Kitchen(j.Diameter, 4, units.Inch), "across")
	// Output: half-pint 2 3/4 in across
}

// A pound does not fit into a wide-mouth pint below an inch of headspace.
func ExampleJarSize_CheckFill() {
	j, _ := canner.FindJarSize("pint wide")
	fill, _ := j.CheckFill(units.Pound, units.Inch, canner.FleshDensity)
	fmt.Println(fill.Possible, "at most", units.Text(fill.Most, units.Gram, 0), "over by", units.Text(fill.Over, units.Gram, 0))
	// Output: false at most 401 g over by 53 g
}

func ExampleJarSize_Cut() {
	for _, name := range []string{"pint wide", "12 oz regular"} {
		j, _ := canner.FindJarSize(name)
		cut, _ := j.Cut(units.Inch)
		fmt.Println(name, units.Kitchen(cut.Length, 4, units.Inch), cut.Citation.Basis)
	}
	// Output:
	// pint wide 3 1/2 in read
	// 12 oz regular 4 in practice
}

func ExampleCut_Pieces() {
	n, _ := canner.Cut{Length: 7 * units.Inch / 2}.Pieces(28*units.Inch, 65*units.Percent)
	fmt.Println(n)
	// Output: 5
}

// USDA Complete Guide, Guide 1, rev. 2015, p. 1-20: a gauge may be adjusted for up to 2 lb high or low.
func ExampleGauge_Setting() {
	s := raw(process.Pint, process.Dial)
	for _, error := range []units.Pressure{units.PSI, -units.PSI, 3 * units.PSI} {
		set, err := canner.Gauge{ReadsHigh: error}.Setting(s)
		if err != nil {
			fmt.Println(err)
			continue
		}
		fmt.Println("at least", units.Text(set.AtLeast, units.PSI, 0), "or, corrected,", units.Text(set.Corrected, units.PSI, 0))
	}
	// Output:
	// at least 14 psi or, corrected, 14 psi
	// at least 13 psi or, corrected, 12 psi
	// dial gauge is unsuitable: off by 3 psi (20.7 kPa), required 2 psi at most; replace the gauge (USDA, Complete Guide to Home Canning, Guide 1 (AIB 539, rev. 2015), Pressure canners, p. 1-20 (read))
}

// An invented run: the pressure sags for a moment, and nobody starts the timer again.
func ExampleAudit() {
	report, _ := canner.Audit(saggingRun(), sagging())
	fmt.Println(report.Verdict, "held", report.Held.Length())
	for _, f := range report.Findings {
		fmt.Println(f.Rule, f.Text(units.US))
	}
	for _, s := range report.Next {
		fmt.Println(s.Action)
	}
	// Output:
	// not met held 1h0m0s
	// canner.hold time at pressure: 1 h recorded, at least 100 min without a break published, short by 40 min, from minute 30 to 90
	// canner.sag pressure: 12 psi recorded, at least 13 psi published, short by 1 psi, from minute 90 to 100
	// reprocess
	// refrigerate
	// discard
}

func ExampleAction_String() {
	fmt.Println(canner.KeepGoing)
	// Output: keep going
}

func ExampleStep_String() {
	fmt.Println(canner.Step{Action: canner.Wait, Text: "Let the pressure fall by itself."})
	// Output: Let the pressure fall by itself.
}

// live is an invented run under way: closed at minute 24, at pressure from minute 29.
func live() canner.Live[units.Pressure] {
	l, _ := canner.Watch[units.Pressure](canner.Run{
		Schedule: raw(process.Pint, process.Dial), Altitude: units.State(4350 * units.Foot), MaxGap: 5 * time.Minute,
		Marks: canner.Marks{VentClosed: units.State(24 * time.Minute)},
	})
	return l
}

func ExampleWatch() {
	fmt.Println(live().Clock().Owed)
	// Output: 1h40m0s
}

func ExampleLive_Next() {
	l, _ := live().Next(series.Reading[units.Pressure]{At: 30 * time.Minute, Value: 13 * units.PSI})
	_, err := l.Next(series.Reading[units.Pressure]{At: 29 * time.Minute, Value: 13 * units.PSI})
	fmt.Println(err)
	// Output: reading 1 at 29m0s: the time runs backward
}

func ExampleLive_Clock() {
	l := live()
	for minute, psi := range []units.Pressure{13, 13, 12, 13, 13} {
		l, _ = l.Next(series.Reading[units.Pressure]{At: time.Duration(29+minute) * time.Minute, Value: psi * units.PSI})
		fmt.Println(29+minute, l.Clock().Owed)
	}
	// Output:
	// 29 1h40m0s
	// 30 1h39m0s
	// 31 1h40m0s
	// 32 1h40m0s
	// 33 1h39m0s
}

func ExampleLive_Now() {
	l, _ := live().Next(series.Reading[units.Pressure]{At: 29 * time.Minute, Value: 13 * units.PSI})
	fmt.Println(l.Now())
	// Output: Keep going: the clock runs from minute 29. Another 100 min if nothing sags, until minute 129.
}

func ExampleLive_LargestGap() {
	l := live()
	for _, minute := range []time.Duration{29, 31, 35} {
		l, _ = l.Next(series.Reading[units.Pressure]{At: minute * time.Minute, Value: 13 * units.PSI})
	}
	fmt.Println(l.LargestGap().Length())
	// Output: 4m0s
}

func ExampleCycleOf() {
	c, _ := canner.CycleOf(raw(process.Pint, process.Dial))
	fmt.Println(c.Total.Least, "to", c.Total.Most)
	// Output: 2h35m0s to 3h20m0s
}

func ExampleCycle_Day() {
	c, _ := canner.CycleOf(raw(process.Pint, process.Dial))
	one, _ := c.Day(3, 1, 20*time.Minute)
	two, _ := c.Day(3, 2, 20*time.Minute)
	fmt.Println("one canner ", one.Least, "to", one.Most)
	fmt.Println("two canners", two.Least, "to", two.Most)
	// Output:
	// one canner  8h25m0s to 10h40m0s
	// two canners 5h30m0s to 7h0m0s
}
