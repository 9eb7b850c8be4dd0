package solution

import (
	"math"

	"example.org/lakelarder/internal/portable"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Norrish: aw = Xw exp(−K Xs²), K of sucrose.
const norrishSucrose = 6.47

// Moles in a kilogram, sucrose and water.
const (
	sucrosePerKilogram = 1000 / 342.2965
	waterPerKilogram   = 1000 / 18.01528
)

// mostSugar is the sugar to water that the equation is checked to, 6 mol/kg.
const mostSugar = 2_054 * units.PerMille

var (
	sugarCitation = cite.Citation{Source: cite.Norrish1966, Where: "sucrose, K = 6.47", Basis: cite.Recalled}
	mixedCitation = cite.Citation{
		Source: cite.Ross1975, Where: "product of the activities of each solute in all the water", Basis: cite.Recalled,
	}
)

// SugarActivity returns the water activity of sucrose in water. PerWater is sugar to a mass of water, 0 to 2.054 (6
// mol/kg): otherwise a RangeError. Rounded up to 1e-12; within 0.001 of measured values to 5 mol/kg. Invert sugars
// and honey lower it more by weight, so that brown sugar taken as sucrose is on the safe side. Source: Norrish
// 1966.
func SugarActivity(perWater units.Ratio) (units.Ratio, error) {
	if err := units.Check("sugar to water", perWater, 0, mostSugar); err != nil {
		return 0, err
	}
	return units.OfFloat(math.Ceil(sucrose(units.Float(perWater, units.One))*1e12)/1e12, units.One)
}

// MixedActivity returns the water activity of salt and sugar in one water: the product of each one's in all the
// water (Ross). Masses must not be negative, water above 0; what Activity and SugarActivity refuse is refused.
// Rounded up to 1e-12. Sugar adds little and never counts as water phase salt.
func MixedActivity(salt, sugar, water units.Mass) (units.Ratio, error) {
	if water <= 0 {
		return 0, units.RangeError{What: "water", Got: water.String(), Low: "0 g", LowExclusive: true}
	}
	if salt < 0 {
		return 0, units.RangeError{What: "salt", Got: salt.String(), Low: "0 g"}
	}
	both, err := units.Sum(salt, water)
	if err != nil {
		return 0, err
	}
	share, err := units.ProrateDown(units.One, salt, both)
	if err != nil {
		return 0, err
	}
	if err := CheckShare(saltByMass, share); err != nil {
		return 0, err
	}
	perWater, err := units.RatioOf(sugar, water)
	if err != nil {
		return 0, err
	}
	if err := units.Check("sugar to water", perWater, 0, mostSugar); err != nil {
		return 0, err
	}
	aw := activity(molality(units.Float(share, units.One))) * sucrose(units.Float(perWater, units.One))
	return units.OfFloat(math.Ceil(aw*1e12)/1e12, units.One)
}

// SugarActivityCitation returns where SugarActivity is from: form read, constant from memory.
func SugarActivityCitation() cite.Citation { return sugarCitation }

// MixedActivityCitation returns where MixedActivity is from, beside ActivityCitation and SugarActivityCitation.
func MixedActivityCitation() cite.Citation { return mixedCitation }

func sucrose(perWater float64) float64 {
	sugar := float64(perWater * sucrosePerKilogram)
	xs := sugar / (sugar + waterPerKilogram)
	return (1 - xs) * portable.Exp(-norrishSucrose*xs*xs)
}
