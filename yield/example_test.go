package yield_test

import (
	"fmt"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield"
)

// Abdollahi and Rezaei 2014, abstract: farmed rainbow trout, skin-on fillet 56.69 ± 3.26 % of the whole fish.
func ExampleFind() {
	fillet, err := yield.Find(yield.RainbowTrout, yield.SkinOnFillet)
	fmt.Println(fillet.Likely, fillet.Low, fillet.High, fillet.Spread, err)
	fmt.Println(fillet.Citation)

	_, err = yield.Find(yield.RainbowTrout, yield.Headed)
	fmt.Println(err)
	// Output:
	// 56.69 % 53.43 % 59.95 % standard deviation <nil>
	// Abdollahi and Rezaei, yields of farmed rainbow trout (Journal of Fisheries Science and Technology 2(4):23-34, 2014), abstract (read)
	// no share of the whole fish is published for rainbow trout, headed; published are: gutted, skin-on fillet, skinless fillet, head, viscera
}

// FAO/CWP Handbook of Fishery Statistics, indicative conversion factors: steaks 1.60, that is 62.5 %.
func ExampleShares() {
	for _, s := range yield.Shares(yield.Salmon) {
		fmt.Println(s.To, units.In(s.Factor, units.One, 2), units.Text(s.Likely, units.Percent, 1))
	}
	// Output:
	// gutted 1.13 88.5 %
	// headed 1.3 76.9 %
	// fillet 2 50.0 %
	// steaks 1.6 62.5 %
	// salted 1.5 66.7 %
}

func ExampleShare_Of() {
	fillet, _ := yield.Find(yield.RainbowTrout, yield.SkinOnFillet)
	e, err := fillet.Of(2 * units.Kilogram)
	fmt.Println(e.Low, e.Likely, e.High, err)
	// Output: 1.0686 kg 1.1338 kg 1.199 kg <nil>
}

func ExampleShare_After() {
	gutted, _ := yield.PlanningDefault(yield.Gutted)
	headed, _ := yield.PlanningDefault(yield.Headed)
	step, err := headed.After(gutted)
	fmt.Println(units.Text(step, units.Percent, 2), err)
	// Output: 85.23 % <nil>
}

func ExamplePlanningDefault() {
	ready, err := yield.PlanningDefault(yield.CanningReady)
	fmt.Println(ready.Likely, err)
	fmt.Println(ready.Citation)
	fmt.Println(ready.Cautions[0].Text)
	// Output:
	// 70 % <nil>
	// judged within the range of the published shares (common practice of the trade, no published source)
	// This is a planning default for lake-run salmon, judged and not measured. Weigh your own fish and use that.
}

func ExamplePlanningDefaults() {
	for _, s := range yield.PlanningDefaults() {
		fmt.Println(s.Stock, s.To, s.Low, s.High)
	}
	// Output:
	// lake-run bled 98 % 98 %
	// lake-run gutted 88 % 88 %
	// lake-run headed 75 % 75 %
	// lake-run canning-ready 70 % 70 %
	// lake-run skin-on fillet 57 % 57 %
	// lake-run skinless fillet 50 % 50 %
	// lake-run, ripe hen gutted 75 % 82 %
}

func ExampleSplit() {
	kept, rest, err := yield.Split(9*units.Pound, 88*units.Percent)
	fmt.Println(units.Text(kept, units.Gram, 1), units.Text(rest, units.Gram, 1), kept+rest == 9*units.Pound, err)
	// Output: 3,592.5 g 489.9 g true <nil>
}

// A fish of 4 kg, gutted, its roe taken and what is left dried; the shares are invented but for the first, a planning default.
func ExampleChain() {
	o, err := yield.Chain(4*units.Kilogram,
		yield.Step{Name: "gut", Kept: 88 * units.Percent, Rest: yield.Trim},
		yield.Step{Name: "take the roe", Kept: 95 * units.Percent, Rest: yield.Food},
		yield.Step{Name: "dry", Kept: 90 * units.Percent, Low: 88 * units.Percent, High: 92 * units.Percent, Rest: yield.Loss},
	)
	fmt.Println(o.Kept.Low, o.Kept.Likely, o.Kept.High, o.Share, err)
	fmt.Println(o.Left(yield.Trim), o.Left(yield.Food), o.Left(yield.Loss))
	// Output:
	// 2.94272 kg 3.0096 kg 3.07648 kg 75.24 % <nil>
	// 480 g 176 g 334.4 g
}

func ExampleOutcome_Left() {
	o, _ := yield.Chain(units.Kilogram, yield.Step{Name: "head", Kept: 85 * units.Percent, Rest: yield.Trim})
	fmt.Println(o.Left(yield.Trim), o.Left(yield.Food))
	// Output: 150 g 0 g
}

func ExampleProduct() {
	share, err := yield.Product(88*units.Percent, 57*units.Percent)
	fmt.Println(share, err)
	// Output: 50.16 % <nil>
}

func ExampleRemaining() {
	share, err := yield.Remaining(3*units.Percent, 6*units.Percent, 14*units.Percent, 15*units.PerMille)
	fmt.Println(share, err)
	// Output: 77.238578 % <nil>
}

// Dimitriadou et al. 2008, abstract: trout fillets lost 23.7 % in the whole process.
func ExampleAfterLoss() {
	left, err := yield.AfterLoss(500*units.Gram, 237*units.PerMille)
	fmt.Println(left, err)
	// Output: 381.5 g <nil>
}

func ExampleSmokingLosses() {
	for _, l := range yield.SmokingLosses() {
		fmt.Printf("%s, %s: %v to %v (%v)\n", l.Product, l.Step, l.Low, l.High, l.Citation.Basis)
	}
	// Output:
	// cold-smoked salmon fillet, salting and smoking together: 16 % to 18 % (read)
	// cold-smoked salmon fillet, dry salted, smoking: 7 % to 9 % (read)
	// cold-smoked salmon fillet, dry salted, salting: 9.7 % to 9.9 % (computed)
	// rainbow trout fillet, whole process, not dried first: 23.7 % to 23.7 % (read)
	// rainbow trout fillet, whole process, dried for 4 h first: 28.8 % to 28.8 % (read)
	// hot-smoked salmon, whole process: 20 % to 30 % (recalled)
	// hot-smoked salmon, brining: -2 % to 3 % (recalled)
	// hot-smoked salmon, air drying: 2 % to 6 % (recalled)
	// hot-smoked salmon, smoking and cooking: 12 % to 22 % (recalled)
	// hot-smoked salmon, cooling: 1 % to 2 % (recalled)
}

func ExampleMeanWeight() {
	coho, err := yield.MeanWeight(yield.Coho)
	fmt.Println(coho.Mean, err)
	fmt.Println(coho.Cautions[0].Text)
	// Output:
	// 3.4 kg <nil>
	// This is a mean of fish of the ocean. Fish of a lake differ: weigh your own.
}

func ExampleParseSpecies() {
	species, err := yield.ParseSpecies("Lake Trout")
	text, _ := species.MarshalText()
	fmt.Println(species, string(text), err)
	// Output: lake trout lake trout <nil>
}

func ExampleParseStage() {
	stage, err := yield.ParseStage("skin-on fillet")
	fmt.Println(stage, err)
	// Output: skin-on fillet <nil>
}

func ExampleStage_IsPart() {
	fmt.Println(yield.Gutted.IsPart(), yield.Head.IsPart())
	// Output: false true
}

func ExampleSpecies() {
	var species yield.Species
	err := species.UnmarshalText([]byte("coho"))
	text, _ := species.MarshalText()
	fmt.Println(species, string(text), err)
	// Output: coho coho <nil>
}

func ExampleStage() {
	var stage yield.Stage
	err := stage.UnmarshalText([]byte("canning-ready"))
	text, _ := stage.MarshalText()
	fmt.Println(stage, string(text), err)
	// Output: canning-ready canning-ready <nil>
}

func ExampleSpread() {
	fmt.Println(yield.Spread(0), yield.PrintedRange, yield.StandardDeviation, yield.JudgedRange)
	// Output: not stated printed range standard deviation judged range
}

func ExampleDestination() {
	fmt.Println(yield.Loss, yield.Trim, yield.Food)
	// Output: loss trim food
}

func ExampleMissing() {
	fmt.Println(yield.MissingSpecies, yield.MissingStage, yield.MissingWeight)
	// Output: species stage mean weight
}

func ExampleNotPublishedError() {
	_, err := yield.MeanWeight(yield.LakeTrout)
	fmt.Println(err)
	// Output: no mean weight is published for lake trout; published are: sockeye, pink, chum, coho, chinook
}
