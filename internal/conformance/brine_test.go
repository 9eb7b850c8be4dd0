package conformance

import (
	"time"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/units"
)

var brineExempt = map[string]string{"FilletError.Unwrap": faults}

func brineGrid(r *results) {
	masses := these(350*units.Gram, 1_217*units.Gram+123_456, 3*units.Pound)
	mixes := these(brine.Mix{Salt: 1}, brine.Mix{Salt: 1, Sugar: 3}, brine.Mix{Salt: 7, Sugar: 4, Others: []brine.Part{{Name: "pepper", Parts: 1}}})
	shares := stepped(20, 60, 7, units.PerMille)
	cures := r.sweep("DryCure", brine.DryCure, masses, shares, mixes)
	cures = append(cures, r.sweep("BuryCure", brine.BuryCure, masses, stepped(62, 78, 8, units.Percent), stepped(5, 30, 25, units.Percent), mixes)...)
	batches := r.sweep("CureEach", brine.CureEach, these([]units.Mass{800 * units.Gram, 1_200*units.Gram + 1, 950 * units.Gram}), shares, mixes)
	r.sweep("Batch.Layers", brine.Batch.Layers, batches, these(1, 2))
	ingredientGrid(r, cures)
	saltGrid(r)
	uptakeGrid(r)
	brineTables(r)
	claimGrid(r)
}

func ingredientGrid(r *results, cures []any) {
	salts := r.sweep("WeighedSalt", brine.WeighedSalt, these("own"), these(units.Cup, 100*units.Millilitre), these(131*units.Gram, 181*units.Gram, 7*units.Ounce))
	sugars := r.sweep("WeighedSugar", brine.WeighedSugar, these("own"), these(units.Cup, 200*units.Millilitre), these(181*units.Gram, 220*units.Gram))
	r.sweep("Cure.Volumes", brine.Cure.Volumes, some(cures, 3), some(salts, 3), some(sugars, 3))
	r.sweep("MixOfVolumes", brine.MixOfVolumes, stepped(1, 3, 1, units.Cup), some(salts, 2), stepped(2, 4, 1, units.Cup), some(sugars, 2))
	r.sweep("MixOf", brine.MixOf, stepped(20, 60, 20, units.Gram), stepped(0, 120, 40, units.Gram))
	all := every(brine.Ingredients())
	r.sweep("Weighings", brine.Weighings)
	r.sweep("Ingredients", brine.Ingredients)
	for _, one := range brine.Ingredients() {
		r.sweep("FindIngredient", brine.FindIngredient, these(one.Name))
	}
	r.sweep("Ingredient.Density", brine.Ingredient.Density, all)
	r.sweep("Ingredient.MassOf", brine.Ingredient.MassOf, all, stepped(1, 7, 3, units.Teaspoon))
	r.sweep("Ingredient.VolumeOf", brine.Ingredient.VolumeOf, all, stepped(10, 70, 30, units.Gram))
}

func saltGrid(r *results) {
	waters := stepped(450, 790, 68, units.Gram)
	r.sweep("WaterPhaseSalt", brine.WaterPhaseSalt, stepped(1, 60, 7, 1_234_567*units.Microgram), waters)
	r.sweep("SaltFor", brine.SaltFor, stepped(10, 90, 9, units.PerMille), waters)
	r.sweep("SaltFromSodium", brine.SaltFromSodium, stepped(10, 2_000, 199, units.Milligram))
	r.sweep("BrineEnd", brine.BrineEnd, stepped(40, 400, 90, units.Gram), stepped(2, 8, 3, units.Kilogram), waters)
	r.sweep("SaltBeforeLoss", brine.SaltBeforeLoss, stepped(20, 60, 13, units.PerMille), these(units.Kilogram), waters, stepped(0, 30, 10, units.Percent))
	for raw := units.Mass(900); raw <= 1_100; raw += 99 {
		for salt := units.Mass(0); salt <= 60; salt += 13 {
			for drip := units.Mass(0); drip <= 80; drip += 27 {
				c := these(brine.Curing{Raw: raw * units.Gram, Water: raw * 7 * units.Gram / 10, Salt: salt * units.Gram, Drip: drip * units.Gram, Drying: salt * 2 * units.Gram})
				r.sweep("Curing.Equilibrium", brine.Curing.Equilibrium, c)
				r.sweep("Curing.SaltToEnd", brine.Curing.SaltToEnd, c, stepped(20, 50, 15, units.PerMille))
			}
		}
	}
}

func uptakeGrid(r *results) {
	var slabs []any
	for _, faces := range []brine.Faces{brine.OneFace, brine.TwoFaces} {
		for _, thick := range stepped(10, 40, 10, units.Millimetre) {
			slabs = append(slabs, brine.Slab{Thickness: thick.(units.Length), Faces: faces})
		}
	}
	flesh := brine.FleshDiffusivity()
	times := stepped(1, 240, 47, time.Hour)
	r.sweep("Slab.Uptake", brine.Slab.Uptake, slabs, these(flesh.Low, flesh.Likely, flesh.High), times)
	r.sweep("Slab.CoreUptake", brine.Slab.CoreUptake, slabs, these(flesh.Low, flesh.High), times)
	r.sweep("Slab.WaterPhaseSaltRange", brine.Slab.WaterPhaseSaltRange, slabs, these(21*units.Percent), these(5*units.Percent, 21*units.Percent), these(flesh), times)
}

func brineTables(r *results) {
	r.sweep("GrowthLimits", brine.GrowthLimits)
	r.sweep("KeepLimits", brine.KeepLimits)
	r.sweep("SaltingRules", brine.SaltingRules)
	r.sweep("NitriteLimits", brine.NitriteLimits)
	r.sweep("SaltLimits", brine.SaltLimits)
	r.sweep("DefaultSaltLimit", brine.DefaultSaltLimit)
	r.sweep("FleshDiffusivity", brine.FleshDiffusivity)
	r.sweep("StrictestSaltLimit", brine.StrictestSaltLimit, kinds(brine.ColdSmoked), kinds(brine.LowOxygenPack))
	r.sweep("FindSaltingTime", brine.FindSaltingTime, these(units.Inch/2, units.Inch), kinds(brine.LeanFish))
	for _, limit := range brine.SaltLimits() {
		r.sweep("FindSaltLimit", brine.FindSaltLimit, these(limit.ID))
	}
	for salt := units.Ratio(10); salt <= 100; salt += 15 {
		for f := 33.0; f <= 75; f += 7 {
			r.sweep("Conditions.Holds", brine.Conditions.Holds, these(brine.Conditions{WaterPhaseSalt: salt * units.PerMille, Temperature: units.Fahrenheit(f)}))
		}
	}
}

func claimGrid(r *results) {
	var claims []any
	for i := int64(1); i <= 24; i++ {
		claims = append(claims, brine.Claim{
			Method: brine.DrySalted, Fish: units.State(units.Mass(900+31*i) * units.Gram), Salt: units.State(units.Mass(20+3*i) * units.Gram),
			Time: units.State(time.Duration(6*i) * time.Hour), Temperature: units.State(units.Fahrenheit(float64(33 + i/2))),
			Thickness: units.State(units.Length(12+i) * units.Millimetre), Faces: brine.TwoFaces, Smoked: brine.Smoking(1 + i%2), Pack: brine.Pack(1 + i/2%2),
			Loss: units.State(units.Ratio(i) * units.Percent),
		})
	}
	r.sweep("Check", brine.Check, claims)
	r.sweep("CheckAgainst", brine.CheckAgainst, claims, these(brine.DefaultSaltLimit().ID, brine.MichiganAir))
}
