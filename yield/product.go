package yield

import (
	"math/big"

	"example.org/lakelarder/units"
)

// Product returns the share that several steps keep together, the product of their shares: conversion
// factors and percentages chain so, never by adding what the steps lose. Computed exactly and rounded
// once to the nearest 1e-12. Each must lie in 0 to 100 %, otherwise a RangeError; none gives 100 %.
func Product(shares ...units.Ratio) (units.Ratio, error) {
	num, den, one := big.NewInt(int64(units.One)), big.NewInt(1), big.NewInt(int64(units.One))
	for _, share := range shares {
		if err := units.Check("share kept", share, 0, units.One); err != nil {
			return 0, err
		}
		num.Mul(num, big.NewInt(int64(share)))
		den.Mul(den, one)
	}
	num.Add(num.Lsh(num, 1), den) // half up: (2·num + den) / (2·den)
	return units.Ratio(num.Quo(num, den.Lsh(den, 1)).Int64()), nil
}

// Remaining returns the share left after several losses in turn, each of what came to it: the product of
// 1 − loss. Losses of 3, 6, 14 and 1.5 % leave 77.238578 %; adding them up would say 75.5 %. Rounded once
// to the nearest 1e-12. Each loss must lie in 0 to 100 %, otherwise a RangeError.
func Remaining(losses ...units.Ratio) (units.Ratio, error) {
	shares := make([]units.Ratio, len(losses))
	for i, loss := range losses {
		if err := units.Check("loss", loss, 0, units.One); err != nil {
			return 0, err
		}
		shares[i] = units.One - loss
	}
	return Product(shares...)
}

// AfterLoss returns the mass left when a share of it is lost, such as water in drying or drip in thawing.
// It rounds down, by less than 1/16 ng: the safe side for a supply and for a target weight of drying. The
// mass must not be negative and the loss must be 0 % or more and less than 100 %; otherwise a RangeError.
// A gain is not a negative loss.
func AfterLoss(mass units.Mass, loss units.Ratio) (units.Mass, error) {
	if loss < 0 || loss >= units.One {
		return 0, units.RangeError{
			What: "loss", Got: loss.String(), Low: "0 %", High: units.One.String(), HighExclusive: true,
		}
	}
	kept, _, err := Split(mass, units.One-loss)
	return kept, err
}
