package keeping_test

import (
	"fmt"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/yield/coldchain"
	"example.org/lakelarder/yield/coldchain/keeping"
)

func ExampleFrozenLives() {
	for _, l := range keeping.FrozenLives() {
		fmt.Println(l.Name, len(l.Points), l.Citation.Basis)
	}
	// Output:
	// fatty fish, glazed (1986) 3 recalled
	// lean fish (1986) 3 recalled
	// fatty fish (1972) 3 recalled
	// lean fish (1972) 3 recalled
	// flat fish (1972) 3 recalled
}

// A home freezer of 0 °F lies a little above the printed -18 °C.
func ExampleFrozenLife_At() {
	life := keeping.FrozenLives()[0]
	for _, f := range []float64{0, 10} {
		at, err := life.At(units.Fahrenheit(f))
		fmt.Println(int(at.Hours()/24), "days", err)
	}
	// Output:
	// 147 days <nil>
	// 91 days <nil>
}

// An invented freezer: two months at 0 °F, and three days at 10 °F after a power cut.
func ExampleFrozenLife_Audit() {
	day := 24 * time.Hour
	record, _ := series.New([]series.Reading[units.Temperature]{
		{At: 0, Value: units.Fahrenheit(0)}, {At: 30 * day, Value: units.Fahrenheit(0)}, {At: 31 * day, Value: units.Fahrenheit(10)},
		{At: 34 * day, Value: units.Fahrenheit(10)}, {At: 35 * day, Value: units.Fahrenheit(0)}, {At: 60 * day, Value: units.Fahrenheit(0)},
	})
	use, err := keeping.FrozenLives()[0].Audit(record, 31*day)
	fmt.Println(units.Text(use.Used, units.Percent, 1), use.Verdict, use.TooWarm, err)
	fmt.Println(use.Cautions[0].Text)
	// Output:
	// 42.4 % met 0s <nil>
	// Of quality only: no storage life says that fish is safe, and freezing stops nothing that was there.
}

func ExampleStoreLimits() {
	for _, l := range keeping.StoreLimits(keeping.InFreezer) {
		fmt.Println(l.For, l.AtMost)
	}
	// Output:
	// more than six months -30 °C
	// fatty fish -24 °C
	// fish, an encyclopaedia -23 °C
	// lean fish -18 °C
	// any food 0 °F
}

// A refrigerator of 43 °F is 3 °F too warm, and what that costs by table A-2.
func ExampleCheckStore() {
	j, err := keeping.CheckStore(keeping.InRefrigerator, units.Fahrenheit(43))
	for _, line := range j.Lines {
		fmt.Println(line.Limit.For+":", line.Verdict, err)
	}
	fmt.Println(j.Verdict, "|", j.Findings[0].Text(units.US))
	for _, c := range j.Costs {
		if c.What == coldchain.Listeria.String() || c.What == coldchain.BotulinumE.String() {
			fmt.Println(c.AtLimit, "becomes", c.Here, c.What)
		}
	}
	// Output:
	// smoked fish at home: differs <nil>
	// smoked fish, and raw fish for smoking: differs <nil>
	// any food: not met <nil>
	// not met | any food: 43 °F stated, at most 40 °F published, too warm by 3 F°
	// 168h0m0s becomes 48h0m0s Clostridium botulinum type E and non-proteolytic B, F
	// 168h0m0s becomes 24h0m0s Listeria monocytogenes
}

// Smoked fish in a vacuum pack, left shut in a refrigerator of 40 °F: the temperature is right and the pack is not.
func ExampleCheckThaw() {
	r, err := keeping.CheckThaw(keeping.ThawPlan{
		Method: keeping.ThawInRefrigerator, Medium: units.Fahrenheit(40), SealedPack: true, ReadyToEat: true,
	})
	fmt.Println(r.Verdict, err)
	for _, l := range r.Lines {
		fmt.Println(l.What+":", l.Wanted.Text(units.US)+";", l.Planned.Text(units.US)+":", l.Verdict)
	}
	// Output:
	// not met <nil>
	// around the fish: at most 41 °F; 40 °F: met
	// the sealed pack: opened before it thaws; shut: not met
}

func ExampleThawMethod() {
	fmt.Println(keeping.ThawInRefrigerator, "|", keeping.ThawInRunningWater, "|", keeping.ThawInStillWater, "|", keeping.ThawOnCounter)
	// Output: in the refrigerator | under running water | in still water | on the counter
}

func ExampleParseThawMethod() {
	m, err := keeping.ParseThawMethod("on the counter")
	fmt.Println(m, err)
	// Output: on the counter <nil>
}

func ExamplePowerCutRules() {
	for _, r := range keeping.PowerCutRules() {
		fmt.Printf("%v %q %v\n", r.Storage, r.Filled, r.For)
	}
	// Output:
	// refrigerator "" 4h0m0s
	// freezer "half full" 24h0m0s
	// freezer "full" 48h0m0s
}

// Thirty hours without power, and a freezer that is not packed full.
func ExampleCheckPowerCut() {
	p, err := keeping.CheckPowerCut(keeping.InFreezer, false, 30*time.Hour)
	fmt.Println(p.Verdict, p.Rule.For, err)
	fmt.Println(p.Findings[0].Text(units.Metric))
	fmt.Println(p.Cautions[0].Text)
	// Output:
	// cannot tell 24h0m0s <nil>
	// power cut: 30 h stated, at most 24 h published, too long by 6 h
	// Past that time measure every piece: what was above 40 °F (4.4 °C) for two hours is discarded. Without a record it cannot be known.
}
