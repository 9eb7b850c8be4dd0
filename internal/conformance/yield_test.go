package conformance

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield"
)

var yieldExempt = map[string]string{"CompositionError.Is": faults, "NotPublishedError.Is": faults}

func yieldGrid(r *results) {
	sharesGrid(r)
	makeupGrid(r)
	foodGrid(r)
	fishGrid(r)
}

func sharesGrid(r *results) {
	shares := stepped(7, 97, 15, units.Percent)
	masses := these(350*units.Gram+7, 1_217*units.Gram+123_456, 9*units.Pound)
	r.sweep("Product", yield.Product, shares, shares)
	r.sweep("Remaining", yield.Remaining, some(shares, 2), shares)
	r.sweep("AfterLoss", yield.AfterLoss, masses, shares)
	r.sweep("Split", yield.Split, masses, shares)
	r.sweep("PlanningDefaults", yield.PlanningDefaults)
	r.sweep("SmokingLosses", yield.SmokingLosses)
	for _, share := range yield.PlanningDefaults() {
		r.sweep("PlanningDefault", yield.PlanningDefault, these(share.To))
		r.sweep("Share.Of", yield.Share.Of, these(share), masses)
		r.sweep("Share.After", yield.Share.After, these(yield.PlanningDefaults()[len(yield.PlanningDefaults())-1]), these(share))
	}
	for species := yield.Species(1); species <= yield.LakeWhitefish; species++ {
		r.sweep("Shares", yield.Shares, these(species))
		for _, share := range yield.Shares(species) {
			r.sweep("Find", yield.Find, these(species), these(share.To))
			r.sweep("Share.Of", yield.Share.Of, these(share), masses)
		}
	}
	r.sweep("Stage.IsPart", yield.Stage.IsPart, kinds(yield.Gonad))
	for kept := units.Ratio(50); kept <= 95; kept += 5 {
		chains := r.sweep("Chain", yield.Chain, masses,
			these(yield.Step{Name: "gut", Kept: kept * units.Percent, Rest: yield.Trim}), these(yield.Step{Name: "roe", Kept: 95 * units.Percent, Rest: yield.Food}),
			these(yield.Step{Name: "dry", Kept: 90 * units.Percent, Low: 88 * units.Percent, High: 92 * units.Percent, Rest: yield.Loss}))
		r.sweep("Outcome.Left", yield.Outcome.Left, chains, these(yield.Trim, yield.Food, yield.Loss))
	}
}

func makeupGrid(r *results) {
	foods := yield.Compositions()
	for i, food := range foods {
		p := food.Proximate
		r.sweep("Proximate.Residual", yield.Proximate.Residual, these(p))
		r.sweep("Proximate.Makeup", yield.Proximate.Makeup, these(p), these(units.Kilogram+7), these(units.Ratio(0), 75*units.Ratio(i)*units.PartsPerMillion))
		if food.Sodium.Given {
			stuff := r.sweep("Composition.Makeup", yield.Composition.Makeup, these(food), these(units.Kilogram, 417*units.Gram))
			exchangeGrid(r, stuff)
		}
		for j := i + 1; j < len(foods); j += 5 {
			if foods[j].Proximate.Water < p.Water {
				r.sweep("TieSubstance", yield.TieSubstance, these(p), these(foods[j].Proximate))
			}
		}
	}
}

func exchangeGrid(r *results, stuff []any) {
	for _, one := range stuff {
		m := one.(yield.Makeup)
		of := these(m)
		r.sweep("Makeup.Total", yield.Makeup.Total, of)
		r.sweep("Makeup.Moisture", yield.Makeup.Moisture, of)
		r.sweep("Makeup.WaterPhaseSalt", yield.Makeup.WaterPhaseSalt, of)
		r.sweep("Makeup.Plus", yield.Makeup.Plus, of, these(yield.Makeup{Salt: 20 * units.Gram}))
		r.sweep("Makeup.Less", yield.Makeup.Less, of, these(yield.Makeup{Water: m.Water / 7, Fat: m.Fat / 9}))
		x := these(yield.Exchange{Lost: yield.Makeup{Water: m.Water / 11}, Gained: yield.Makeup{Salt: m.Protein / 13}})
		after := r.sweep("Makeup.After", yield.Makeup.After, of, x)
		r.sweep("Makeup.Before", yield.Makeup.Before, after, x)
		total, _ := m.Total()
		moisture, _ := m.Moisture()
		r.sweep("Makeup.ToWeight", yield.Makeup.ToWeight, of, these(units.Mass(0), m.Protein/10), these(total*4/5))
		r.sweep("Makeup.ToMoisture", yield.Makeup.ToMoisture, of, these(m.Protein/10), these(moisture*9/10))
		r.sweep("Makeup.ToMoistureAndSalt", yield.Makeup.ToMoistureAndSalt, of, these(moisture*8/10), these(45*units.PerMille, 60*units.PerMille))
	}
}

func foodGrid(r *results) {
	r.sweep("Compositions", yield.Compositions)
	for _, food := range yield.Compositions() {
		r.sweep("FindComposition", yield.FindComposition, these(food.Number), these(food.Citation.Source))
		r.sweep("Composition.Factors", yield.Composition.Factors, these(food))
		r.sweep("Composition.Portion", yield.Composition.Portion, these(food), these(units.Mass(85_000_007), 4*units.Ounce))
		r.sweep("PortionWeights", yield.PortionWeights, these(food.Number))
	}
	r.sweep("EnergyFactors.Energy", yield.EnergyFactors.Energy, kinds(yield.EnergyFactors(2)), stepped(10, 30, 7, units.Gram), stepped(0, 20, 7, units.Gram))
	r.sweep("Servings", yield.Servings, these(430*units.Gram, 227*units.Gram), stepped(60, 100, 7, units.Percent), these(4*units.Ounce, 85*units.Gram))
	whole, drained := find(r, 15253), find(r, 15087)
	r.sweep("SplitLiquid", yield.SplitLiquid, these(whole), these(drained), these(417*units.Gram), stepped(310, 350, 9, units.Gram))
}

func find(r *results, number int) yield.Composition {
	for _, food := range yield.Compositions() {
		if food.Number == number {
			return food
		}
	}
	r.t.Fatal(number)
	return yield.Composition{}
}

func fishGrid(r *results) {
	for _, species := range []yield.Species{yield.Chinook, yield.Coho, yield.Pink, yield.RainbowTrout} {
		r.sweep("MeanWeight", yield.MeanWeight, these(species))
		r.sweep("WeightAtLength", yield.WeightAtLength, these(species), stepped(310, 900, 59, units.Millimetre))
	}
	r.sweep("CutAcross", yield.CutAcross, stepped(15, 35, 4, units.Inch), stepped(50, 80, 15, units.Percent), these(7*units.Inch/2, 76*units.Millimetre))
	for c := units.Ratio(5); c <= 2_000; c += 199 {
		intake := these(yield.Intake{Concentration: c * units.PartsPerBillion, Dose: units.PartsPerBillion / 10, Body: 70 * units.Kilogram, Meal: 8 * units.Ounce})
		r.sweep("Intake.Meals", yield.Intake.Meals, intake, stepped(7, 365, 91, 24*time.Hour))
		r.sweep("Intake.Edge", yield.Intake.Edge, intake, these(1, 4), stepped(7, 365, 91, 24*time.Hour))
		r.sweep("Advise", yield.Advise, these(units.State(yield.Advisory{Meals: 4, Period: 28 * 24 * time.Hour})), intake)
	}
}
