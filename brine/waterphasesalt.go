package brine

import (
	"example.org/lakelarder/brine/solution"
	"example.org/lakelarder/units"
)

// inTheWater is what a share of salt is called in errors.
const inTheWater = "water phase salt"

// WaterPhaseSalt returns salt/(salt + water), the share of salt in the water of the flesh, rounded down to 1e-12,
// the safe side. Salt and water are masses in the same piece, by analysis; fat, protein and sugar do not enter.
// Salt must not be negative and water must be above 0: otherwise a RangeError. More than solution.Saturation is a
// solution.SaturatedError that holds the figure: dried fish can show it, and then part of the salt is not in the
// water. Source: Maine ch. 359, s. 1(D).
//
// A figure worked out from table values is an estimate, and no figure makes smoked fish keep without cold.
func WaterPhaseSalt(salt, water units.Mass) (units.Ratio, error) {
	switch {
	case salt < 0:
		return 0, units.RangeError{What: "salt", Got: salt.String(), Low: "0 g"}
	case water <= 0:
		return 0, aboveZero("water", water)
	}
	both, err := units.Sum(salt, water)
	if err != nil {
		return 0, err
	}
	share, err := units.ProrateDown(units.One, salt, both) // WPS = 100 s/(s + w)
	if err != nil {
		return 0, err
	}
	if err := solution.CheckShare(inTheWater, share); err != nil {
		return 0, err
	}
	return share, nil
}

// SaltFor returns the least salt that brings the water to a water phase salt: w p/(1 - p), rounded up to the
// quantum, the safe side, so that WaterPhaseSalt of the result is never below the target. It is the salt that must
// be in the flesh at the end, not the dose. Target must be above 0 % and no more than solution.Saturation, water
// above 0: otherwise a RangeError.
func SaltFor(target units.Ratio, water units.Mass) (units.Mass, error) {
	saturated, _ := solution.Saturation()
	switch {
	case target <= 0 || target > saturated:
		return 0, units.RangeError{What: "target water phase salt", Got: target.String(), Low: "0 %", LowExclusive: true,
			High: saturated.String()}
	case water <= 0:
		return 0, aboveZero("water", water)
	}
	return units.ProrateUp(water, target, units.One-target) // s = w p/(1 - p), p = WPS/100
}

// Molar masses per mole of sodium; their quotient is 2.54212.
const (
	molarNaCl = 58_442_800 * units.Microgram
	molarNa   = 22_989_770 * units.Microgram
)

// SaltFromSodium returns the salt that would hold this sodium, 2.54212 times its mass (58.4428/22.98977), rounded
// to the quantum. Sodium must not be negative: otherwise a RangeError. It counts all sodium as salt: that of the
// flesh itself, 0.11 to 0.27 % of water phase salt in raw salmon and trout, and that of any other additive, so it
// overrates the salt. Use it to check a label or a table, not to pass a limit.
func SaltFromSodium(sodium units.Mass) (units.Mass, error) {
	if sodium < 0 {
		return 0, units.RangeError{What: "sodium", Got: sodium.String(), Low: "0 g"}
	}
	return units.Prorate(sodium, molarNaCl, molarNa)
}

// BrineEnd returns the strength at which a brine and the water of the fish in it come to rest, salt/(salt + both
// waters): the most that a long brining can bring, above the water phase salt of any shorter one. Masses not
// negative, fish water above 0; stronger than solution.Saturation is a solution.SaturatedError. It is an estimate:
// the fish stays cold.
func BrineEnd(salt, brineWater, fishWater units.Mass) (units.Ratio, error) {
	if err := units.Check("water of the brine", brineWater, 0, 100*units.Tonne); err != nil {
		return 0, err
	}
	if err := units.Check("water of the fish", fishWater, 1, largestFillet); err != nil {
		return 0, err
	}
	water, err := units.Sum(brineWater, fishWater)
	if err != nil {
		return 0, err
	}
	return WaterPhaseSalt(salt, water)
}
