package brine

import (
	"math/bits"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Curing is a cure as masses: a raw piece and the water in it, the salt put on it, the water that salt draws out as drip, and the water
// that drying and smoking take later. Water of raw salmon and trout is 649 to 757 g per kg in USDA tables.
type Curing struct {
	Raw, Water, Salt, Drip, Drying units.Mass
}

// Equilibrium is what becomes of a Curing when all the salt that can dissolve has, and drip and flesh water are equally strong. Salt is
// conserved to the quantum: the salt put on is Kept + InDrip + LeftOver.
type Equilibrium struct {
	Kept, InDrip, LeftOver units.Mass  // salt in the fish, gone with the drip, not dissolved
	Cured                  units.Ratio // water phase salt after the cure
	CuredMass              units.Mass
	Final                  units.Ratio // after drying
	FinalMass              units.Mass
	Citation               cite.Citation
	Cautions               []cite.Caution
}

var equilibriumCitation = cite.Citation{Where: "equilibrium cure: drip and flesh water at one strength", Basis: cite.Computed}

// Equilibrium returns the end of the cure, if it is given all the time it needs; a cure cut short ends below. Water must be above 0
// and below the raw mass, the others not negative, and drip and drying less than the water: otherwise a RangeError. Drying past saturation
// is a SaturatedError. Water phase salt is rounded down.
func (c Curing) Equilibrium() (Equilibrium, error) {
	left, err := c.waterLeft()
	if err != nil {
		return Equilibrium{}, err
	}
	limit, _ := Saturation()
	dissolves, err := units.Prorate(c.Water, limit, units.One-limit)
	if err != nil {
		return Equilibrium{}, err
	}
	e := Equilibrium{Citation: equilibriumCitation, Cautions: EstimateCautions()}
	dissolved := min(c.Salt, dissolves)
	e.LeftOver = c.Salt - dissolved
	if e.Kept, err = units.Prorate(dissolved, c.Water-c.Drip, c.Water); err != nil { // K = S (W0 − D)/W0
		return Equilibrium{}, err
	}
	e.InDrip = dissolved - e.Kept
	if e.Cured, err = WaterPhaseSalt(dissolved, c.Water); err != nil { // 100 S/(S + W0)
		return Equilibrium{}, err
	}
	if e.Final, err = WaterPhaseSalt(e.Kept, left); err != nil { // 100 K/(K + W0 − D − L)
		return Equilibrium{}, err
	}
	e.CuredMass = c.Raw + e.Kept - c.Drip
	e.FinalMass = e.CuredMass - c.Drying
	return e, nil
}

// waterLeft checks the cure and returns the water of the flesh at the end.
func (c Curing) waterLeft() (units.Mass, error) {
	if err := units.Check("raw fish", c.Raw, 1, largestFillet); err != nil {
		return 0, err
	}
	if err := units.Check("water of the raw fish", c.Water, 1, c.Raw-1); err != nil {
		return 0, err
	}
	if err := units.Check("salt", c.Salt, 0, largestFillet); err != nil {
		return 0, err
	}
	if err := units.Check("drip", c.Drip, 0, c.Water-1); err != nil {
		return 0, err
	}
	if err := units.Check("water lost in drying", c.Drying, 0, c.Water-c.Drip-1); err != nil {
		return 0, err
	}
	return c.Water - c.Drip - c.Drying, nil
}

// SaltToEnd returns the least salt to put on so that Equilibrium ends at a water phase salt, with the drip and the drying of c; the Salt of
// c is not looked at. Rounded up. Target above 0 % to Saturation, and what Equilibrium refuses: otherwise a RangeError; more than the
// water of the raw fish dissolves is a SaturatedError. The fish must get the time to take it up, and it is an estimate.
func (c Curing) SaltToEnd(target units.Ratio) (units.Mass, error) {
	c.Salt = 0
	left, err := c.waterLeft()
	if err != nil {
		return 0, err
	}
	keep, err := SaltFor(target, left)
	if err != nil {
		return 0, err
	}
	hi, lo := bits.Mul64(uint64(keep), uint64(c.Water)) // S = K W0/(W0 − D), rounded up
	if hi >= uint64(c.Water-c.Drip) {
		return 0, units.RangeError{What: "drip", Got: c.Drip.String(), Low: "0 g", High: "less than nearly all of the water"}
	}
	dose, rest := bits.Div64(hi, lo, uint64(c.Water-c.Drip))
	if rest > 0 {
		dose++
	}
	c.Salt = units.Mass(dose)
	if _, err := WaterPhaseSalt(c.Salt, c.Water); err != nil {
		return 0, err
	}
	e, err := c.Equilibrium()
	if err == nil && e.Final < target { // saturated to the quantum
		limit, _ := Saturation()
		err = SaturatedError{Share: target, Saturation: limit}
	}
	if err != nil {
		return 0, err
	}
	return c.Salt, nil
}

// SaltBeforeLoss returns the salt that a piece must hold now so that its water phase salt reaches a target once it has lost a share of its
// weight as water, rounded up: 18.73 g per kg of raw Chinook salmon for 3.5 % at 20 % loss. Piece and water are its masses now, loss is of
// the piece's weight, not of its water, 0 % to less than all the water: otherwise a RangeError.
func SaltBeforeLoss(target units.Ratio, piece, water units.Mass, loss units.Ratio) (units.Mass, error) {
	if err := units.Check("piece", piece, 1, largestFillet); err != nil {
		return 0, err
	}
	if err := units.Check("water", water, 1, piece); err != nil {
		return 0, err
	}
	if err := units.Check("loss", loss, 0, units.One); err != nil {
		return 0, err
	}
	lost, err := loss.Of(piece)
	if err != nil {
		return 0, err
	}
	if lost >= water {
		return 0, units.RangeError{What: "water lost", Got: lost.String(), Low: "0 g", High: "less than the water, " + water.String()}
	}
	return SaltFor(target, water-lost)
}
