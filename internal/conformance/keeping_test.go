package conformance

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain/keeping"
	"example.org/lakelarder/yield/coldchain/parasites"
	"example.org/lakelarder/yield/coldchain/spoilage"
)

const day = 24 * time.Hour

var keepingExempt = map[string]string{"JarAction.Instruction": "hands out words"}

func keepingGrid(r *results) {
	storages := kinds(keeping.InFreezer)
	r.sweep("FrozenLives", keeping.FrozenLives)
	r.sweep("PowerCutRules", keeping.PowerCutRules)
	r.sweep("SpoilageSigns", keeping.SpoilageSigns)
	r.sweep("StoreLimits", keeping.StoreLimits, storages)
	foods := these(keeping.Raw, keeping.RawLean, keeping.RawFatty, keeping.RawTrout, keeping.Cooked, keeping.Smoked)
	r.sweep("Find", keeping.Find, foods, storages)
	r.sweep("Check", keeping.Check, foods, these(keeping.InRefrigerator), degrees(0, 70, 23), stepped(1, 40, 13, day))
	r.sweep("Check", keeping.Check, foods, these(keeping.InFreezer), degrees(-250, -100, 75), stepped(20, 420, 200, day))
	r.sweep("CheckStore", keeping.CheckStore, these(keeping.InRefrigerator), degrees(-30, 120, 7))
	r.sweep("CheckStore", keeping.CheckStore, these(keeping.InFreezer), degrees(-300, -50, 17))
	r.sweep("CheckPowerCut", keeping.CheckPowerCut, storages, these(true, false), stepped(1, 61, 6, time.Hour))
	for sign := keeping.JarSign(1); sign <= keeping.Leaking; sign++ {
		r.sweep("CheckJar", keeping.CheckJar, stated[time.Duration](stepped(1, 400, 57, day)), these(sign))
	}
	for c := int64(-20); c <= 200; c += 20 {
		for method := keeping.ThawInRefrigerator; method <= keeping.ThawOnCounter; method++ {
			r.sweep("CheckThaw", keeping.CheckThaw, these(keeping.ThawPlan{
				Method: method, Medium: tenths(c), FishAbove41: units.State(time.Duration(c+40) * time.Minute), SealedPack: c%40 == 0, ForSmoking: c > 100,
			}))
		}
	}
	lives := every(keeping.FrozenLives())
	r.sweep("FrozenLife.At", keeping.FrozenLife.At, lives, degrees(-290, -90, 29))
	r.sweep("FrozenLife.Audit", keeping.FrozenLife.Audit, lives, scrawls(r, 12, -280, -60, 3*day), these(31*day))
}

var parasitesExempt map[string]string

func parasitesGrid(r *results) {
	r.sweep("Carriers", parasites.Carriers)
	for _, carrier := range parasites.Carriers() {
		r.sweep("FindCarriers", parasites.FindCarriers, these(carrier.Fish))
	}
	r.sweep("Rules", parasites.Rules)
	r.sweep("Step.Text", parasites.Step.Text, kinds(parasites.Step(4)), these(units.US, units.Metric))
	for c := int64(-400); c <= -100; c += 17 {
		for held := time.Duration(10); held <= 250; held += 40 {
			reports := r.sweep("Check", parasites.Check, these(parasites.Plan{
				Freezer: tenths(c), Store: tenths(-200), Stored: held * time.Hour, Through: units.State(held * time.Hour / 2), Core: tenths(c + 5), Thickness: units.State(units.Inch),
			}))
			for _, report := range reports {
				if held == 50 {
					r.sweep("Line.Would", parasites.Line.Would, every(report.(parasites.Report).Lines), these(units.Metric))
				}
			}
		}
	}
	r.sweep("Audit", parasites.Audit, scrawls(r, 30, -380, -100, 3*time.Hour), these(4*time.Hour))
	r.sweep("Audit", parasites.Audit, scrawls(r, 20, 300, 800, 5*time.Minute), these(10*time.Minute))
}

var spoilageExempt = map[string]string{"Law.Citation": sources}

func spoilageGrid(r *results) {
	laws := kinds(spoilage.ColdSmokedSalmon)
	r.sweep("Lives", spoilage.Lives)
	for _, life := range spoilage.Lives() {
		r.sweep("FindLives", spoilage.FindLives, these(life.Fish), these(life.Gutted))
	}
	r.sweep("Holds", spoilage.Holds, degrees(-300, 300, 50))
	r.sweep("Rate", spoilage.Rate, laws, degrees(-10, 150, 3))
	r.sweep("LifeAt", spoilage.LifeAt, stepped(5, 20, 5, day), laws, degrees(-10, 150, 7))
	aged := r.sweep("IceDays", spoilage.IceDays, scrawls(r, 40, -10, 140, time.Hour), laws, these(2*time.Hour))
	for _, life := range spoilage.Lives() {
		r.sweep("Age.Left", spoilage.Age.Left, some(aged, 9), these(life))
	}
}
