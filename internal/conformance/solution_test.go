package conformance

import (
	"example.org/lakelarder/brine/solution"
	"example.org/lakelarder/units"
)

var solutionExempt = map[string]string{
	"ActivityCitation": sources, "DensityCitation": sources, "SugarActivityCitation": sources, "MixedActivityCitation": sources,
	"SaturatedError.Is": faults, "CheckShare": faults,
}

func solutionGrid(r *results) {
	shares := stepped(0, 256, 8, units.PerMille)
	temperatures := degrees(5, 305, 60)
	r.sweep("Activity", solution.Activity, stepped(0, 260, 2, units.PerMille))
	r.sweep("ShareAt", solution.ShareAt, stepped(770, 999, 3, units.PerMille))
	r.sweep("Density", solution.Density, shares, temperatures)
	r.sweep("FreezingPoint", solution.FreezingPoint, stepped(0, 230, 7, units.PerMille))
	r.sweep("MakeBrine", solution.MakeBrine, these(units.Gallon, 7*units.Litre), some(shares, 4), some(temperatures, 2))
	r.sweep("StrengthOf", solution.StrengthOf, some(shares, 2), some(temperatures, 2))
	r.sweep("FromSalometer", solution.FromSalometer, stepped(0, 100, 3, units.Percent))
	r.sweep("SalometerAt60", solution.SalometerAt60, stepped(10, 90, 9, units.Percent), degrees(40, 260, 50))
	r.sweep("Saturation", solution.Saturation)
	r.sweep("FromSpecificGravity", solution.FromSpecificGravity, stepped(1_000, 1_200, 3, units.PerMille))
	r.sweep("FromBaume", solution.FromBaume, stepped(0, 240, 5, units.One/10))
	r.sweep("FromPerWater", solution.FromPerWater, stepped(0, 350, 9, units.PerMille))
	r.sweep("FromPerVolumeWater", solution.FromPerVolumeWater, stepped(1, 340, 26, units.GramPerLitre), temperatures)
	r.sweep("FromPerVolumeBrine", solution.FromPerVolumeBrine, stepped(1, 300, 26, units.GramPerLitre), temperatures)
	r.sweep("SugarActivity", solution.SugarActivity, stepped(0, 2_000, 43, units.PerMille))
	r.sweep("MixedActivity", solution.MixedActivity, stepped(0, 20, 3, units.Gram), stepped(0, 40, 7, units.Gram), these(60*units.Gram, 100*units.Gram))
}
