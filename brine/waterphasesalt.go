package brine

import (
	"math/bits"

	"example.org/lakelarder/units"
)

// WaterPhaseSalt returns salt/(salt + water), the share of salt in the water of the flesh, rounded down to 1e-12,
// the safe side. Salt and water are masses in the same piece, by analysis; fat, protein and sugar do not enter.
// Salt must not be negative and water must be above 0: otherwise a RangeError. More than Saturation is a
// SaturatedError that holds the figure: dried fish can show it, and then part of the salt is not in the water.
// Source: Maine ch. 359, s. 1(D).
//
// A figure worked out from table values is an estimate, and no figure makes smoked fish keep without cold.
func WaterPhaseSalt(salt, water units.Mass) (units.Ratio, error) {
	switch {
	case salt < 0:
		return 0, units.RangeError{What: "salt", Got: salt.String(), Low: "0 g"}
	case water <= 0:
		return 0, units.RangeError{What: "water", Got: water.String(), Low: "more than 0 g"}
	}
	both, err := units.Sum(salt, water)
	if err != nil {
		return 0, err
	}
	hi, lo := bits.Mul64(uint64(salt), uint64(units.One)) // WPS = 100 s/(s + w)
	q, _ := bits.Div64(hi, lo, uint64(both))
	share := units.Ratio(q)
	if limit, _ := Saturation(); share > limit {
		return 0, SaturatedError{Share: share, Saturation: limit}
	}
	return share, nil
}

// SaltFor returns the least salt that brings the water to a water phase salt: w p/(1 - p), rounded up to the
// quantum, the safe side, so that WaterPhaseSalt of the result is never below the target. It is the salt that
// must be in the flesh at the end, not the dose. Target must be above 0 % and no more than Saturation, water above
// 0: otherwise a RangeError.
func SaltFor(target units.Ratio, water units.Mass) (units.Mass, error) {
	limit, _ := Saturation()
	switch {
	case target <= 0 || target > limit:
		return 0, units.RangeError{What: "target water phase salt", Got: target.String(), Low: "more than 0 %", High: limit.String()}
	case water <= 0:
		return 0, units.RangeError{What: "water", Got: water.String(), Low: "more than 0 g"}
	}
	hi, lo := bits.Mul64(uint64(water), uint64(target)) // s = w p/(1 - p), p = WPS/100
	salt, rest := bits.Div64(hi, lo, uint64(units.One-target))
	if rest > 0 {
		salt++
	}
	return units.Mass(salt), nil
}
