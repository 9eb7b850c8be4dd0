package yield_test

import (
	"fmt"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield"
)

// A kilogram of raw coho: USDA SR26, NDB 15081, normalised.
func coho() yield.Makeup {
	row, _ := yield.FindComposition(15081, cite.USDASR26)
	m, _ := row.Makeup(units.Kilogram)
	return m
}

// The row of wild coho, raw, adds up to 101.42 %; the piece weighs what was asked.
func ExampleComposition_Makeup() {
	row, err := yield.FindComposition(15081, cite.USDASR26)
	fmt.Println(row.Name, row.Proximate.Residual(), err)
	m, err := row.Makeup(units.Kilogram)
	for _, part := range []units.Mass{m.Water, m.Salt, m.Protein, m.Fat, m.Ash} {
		fmt.Print(units.Text(part, units.Gram, 3), "; ")
	}
	fmt.Println(err)
	// Output:
	// Fish, salmon, coho, wild, raw -1.42 % <nil>
	// 716.427 g; 1.153 g; 213.173 g; 58.470 g; 10.778 g; <nil>
}

func ExampleProximate_Makeup() {
	p := yield.Proximate{Water: 70 * units.Percent, Protein: 20 * units.Percent, Fat: 9 * units.Percent, Ash: units.Percent}
	m, err := p.Makeup(2*units.Kilogram, 50*units.PartsPerMillion*10)
	fmt.Println(m.Water, units.Text(m.Salt, units.Gram, 2), m.Protein, m.Fat, err)
	// Output: 1.4 kg 2.54 g 400 g 180 g <nil>
}

func ExampleProximate_Residual() {
	chinook, _ := yield.FindComposition(15078, cite.USDASR26)
	fmt.Println(chinook.Proximate.Residual())
	// Output: -3.33 %
}

func ExampleMakeup_Total() {
	total, err := coho().Total()
	fmt.Println(total, err)
	// Output: 1 kg <nil>
}

func ExampleMakeup_Plus() {
	m, err := coho().Plus(yield.Makeup{Salt: 20 * units.Gram})
	total, _ := m.Total()
	fmt.Println(total, err)
	// Output: 1.02 kg <nil>
}

func ExampleMakeup_Less() {
	drip := yield.Makeup{Water: 40 * units.Gram, Fat: 2 * units.Gram}
	left, err := coho().Less(drip)
	whole, _ := left.Plus(drip)
	fmt.Println(whole == coho(), err)
	// Output: true <nil>
}

func ExampleMakeup_Moisture() {
	moisture, err := coho().Moisture()
	fmt.Println(units.Text(moisture, units.Percent, 4), err)
	// Output: 71.6427 % <nil>
}

func ExampleMakeup_WaterPhaseSalt() {
	wps, err := coho().WaterPhaseSalt()
	fmt.Println(units.Text(wps, units.Percent, 3), err)
	// Output: 0.161 % <nil>
}

// Coho that took up 2 g of salt in 100 g and is dried to 60 % moisture keeps 0.75893315 of its raw mass.
func ExampleMakeup_ToMoisture() {
	x, err := coho().ToMoisture(20*units.Gram, 60*units.Percent)
	smoked, _ := coho().After(x)
	total, _ := smoked.Total()
	wps, _ := smoked.WaterPhaseSalt()
	fmt.Println(units.Text(total, units.Kilogram, 8), units.Text(wps, units.Percent, 3), err)
	// Output: 0.75893315 kg 4.439 % <nil>
}

// For 3.5 % water phase salt at 65 % moisture coho takes up 1.9244 g of salt in 100 g.
func ExampleMakeup_ToMoistureAndSalt() {
	x, err := coho().ToMoistureAndSalt(65*units.Percent, 35*units.PerMille)
	fmt.Println(units.Text(x.Gained.Salt, units.Gram, 3), units.Text(x.Lost.Water, units.Gram, 1), err)
	// Output: 19.244 g 154.1 g <nil>
}

func ExampleMakeup_ToWeight() {
	x, err := coho().ToWeight(20*units.Gram, 800*units.Gram)
	fmt.Println(x.Lost.Water, x.Gained.Salt, err)
	// Output: 220 g 20 g <nil>
}

func ExampleMakeup_After() {
	dried, err := coho().After(yield.Exchange{Lost: yield.Makeup{Water: 100 * units.Gram}})
	total, _ := dried.Total()
	fmt.Println(total, err)
	// Output: 900 g <nil>
}

func ExampleMakeup_Before() {
	x := yield.Exchange{Lost: yield.Makeup{Water: 100 * units.Gram}, Gained: yield.Makeup{Salt: 20 * units.Gram}}
	cured, _ := coho().After(x)
	raw, err := cured.Before(x)
	fmt.Println(raw == coho(), err)
	// Output: true <nil>
}

// Chinook, raw to kippered (rows 35153 and 35168): three estimates of one yield.
func ExampleTieSubstance() {
	raw, _ := yield.FindComposition(35153, cite.USDASR26)
	kippered, _ := yield.FindComposition(35168, cite.USDASR26)
	y, err := yield.TieSubstance(raw.Proximate, kippered.Proximate)
	fmt.Println(units.In(y.Protein, units.One, 3), units.In(y.DryMatter, units.One, 3), units.In(y.Fat, units.One, 3), units.Text(y.Difference, units.Percent, 1), len(y.Cautions), err)
	// Output: 0.873 0.885 0.906 3.7 % 0 <nil>
}

func ExampleFindComposition() {
	lox, err := yield.FindComposition(15179, cite.USDASR26)
	fmt.Println(lox.Name, lox.Sodium.Value, err)
	_, err = lox.Makeup(units.Kilogram)
	fmt.Println(err)
	// Output:
	// Fish, salmon, chinook, smoked, (lox), regular 2 % <nil>
	// sodium counted as salt in the ash 5.084243992 % is out of range: expected 0 % to 2.62 %
}

func ExampleCompositionError() {
	_, err := yield.FindComposition(15081, cite.USDASR28)
	fmt.Println(err)
	// Output: food 15081 is not listed here from USDA, National Nutrient Database for Standard Reference, release 28 (2015); it is listed from USDASR26
}

func ExampleCompositions() {
	all := yield.Compositions()
	fmt.Println(len(all), all[0].Name)
	// Output: 63 Fish, bass, fresh water, mixed species, raw
}

func ExampleComposition_Factors() {
	raw, _ := yield.FindComposition(15081, cite.USDASR26)
	later, _ := yield.FindComposition(15085, cite.USDASR28)
	fmt.Println(raw.Factors(), later.Factors())
	// Output: fish factors 4.27 and 9.02 general factors 4 and 9
}

func ExampleEnergyFactors_Energy() {
	energy, err := yield.FishFactors.Energy(216*units.Gram/10, 59*units.Gram/10)
	fmt.Println(units.Text(energy, units.Kilocalorie, 1), err)
	// Output: 145.5 kcal <nil>
}

func ExampleEnergyFactors() {
	fmt.Println(yield.FishFactors, yield.EnergyFactors(0))
	// Output:
	// fish factors 4.27 and 9.02 not stated
}

// A serving of 4 oz of drained sockeye from a can.
func ExampleComposition_Portion() {
	drained, _ := yield.FindComposition(15087, cite.USDASR26)
	p, err := drained.Portion(4 * units.Ounce)
	fmt.Println(units.Text(p.Energy, units.Kilocalorie, 0), units.Text(p.Protein, units.Gram, 1), units.Text(p.EPA.Value+p.DHA.Value, units.Gram, 2), units.Text(p.Sodium.Value, units.Milligram, 0), err)
	fmt.Println(p.Samples, "samples;", p.Citation)
	// Output:
	// 189 kcal 26.8 g 1.44 g 463 mg <nil>
	// 12 samples; USDA, National Nutrient Database for Standard Reference, release 26 (2013), NDB 15087 (read)
}

func ExampleServings() {
	j, err := yield.Servings(430*units.Gram, 77*units.Percent, 4*units.Ounce)
	fmt.Println(j.Drained, j.Liquid, units.Text(j.Servings, units.Percent, 0), err)
	// Output: 331.1 g 98.9 g 292 % <nil>
}

// Sockeye cans: pouring the liquid off loses a sixth of the EPA and DHA.
func ExampleSplitLiquid() {
	whole, _ := yield.FindComposition(15253, cite.USDASR26)
	drained, _ := yield.FindComposition(15087, cite.USDASR26)
	l, err := yield.SplitLiquid(whole, drained, 417*units.Gram, 337*units.Gram)
	fmt.Println(units.Text(l.Proximate.Water, units.Percent, 2), units.Text(l.Lost.Omega3.Value, units.Percent, 1), units.Text(l.Lost.Sodium.Value, units.Percent, 1), err)
	// Output: 83.71 % 16.6 % 23.9 % <nil>
}

func ExamplePortionWeights() {
	for _, w := range yield.PortionWeights(15087) {
		fmt.Println(w.Portion, w.Mean, w.Deviation, w.Samples)
	}
	// Output: drained solids with skin and bone 337 g 35.383 g 12
}

func ExampleWeightAtLength() {
	w, err := yield.WeightAtLength(yield.Coho, 700*units.Millimetre)
	fmt.Println(w.Mean, err)
	fmt.Println(w.Cautions[0].Text)
	// Output:
	// 5.589 kg <nil>
	// The source does not say which length it means. A total length gives too much.
}

func ExampleCutAcross() {
	c, err := yield.CutAcross(28*units.Inch, 65*units.Percent, 7*units.Inch/2)
	fmt.Println(c.Pieces, units.Text(c.Offcut, units.Inch, 1), units.Text(c.Ends, units.Inch, 1), err)
	// Output: 5 0.7 in 9.8 in <nil>
}

// Mercury, 0.1 µg/kg a day, 75 kg, 4 oz: 0.4630 ppm for one serving a week.
func ExampleIntake_Edge() {
	i := yield.Intake{Dose: units.PartsPerBillion / 10, Body: 75 * units.Kilogram, Meal: 4 * units.Ounce}
	edge, err := i.Edge(1, 7*24*time.Hour)
	fmt.Println(units.Text(edge, units.PartsPerMillion, 4), err)
	// Output: 0.4630 ppm <nil>
}

func ExampleIntake_Meals() {
	i := yield.Intake{Concentration: 200 * units.PartsPerBillion, Dose: units.PartsPerBillion / 10, Body: 75 * units.Kilogram, Meal: 4 * units.Ounce}
	meals, err := i.Meals(28 * 24 * time.Hour)
	fmt.Println(meals, err)
	// Output: 9 <nil>
}

func ExampleAdvise() {
	i := yield.Intake{Concentration: 200 * units.PartsPerBillion, Dose: units.PartsPerBillion / 10, Body: 75 * units.Kilogram, Meal: 4 * units.Ounce}
	a, err := yield.Advise(units.State(yield.Advisory{Meals: 1, Period: 28 * 24 * time.Hour}), i)
	fmt.Println(a.Meals, "meal in", a.Period, "rules; the arithmetic says", a.Explained, err)
	// Output: 1 meal in 672h0m0s rules; the arithmetic says 9 <nil>
}
