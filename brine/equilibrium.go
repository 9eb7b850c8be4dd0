package brine

import (
	"example.org/lakelarder/brine/solution"
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Curing is a cure as masses: a raw piece and the water in it, the salt put on it, the water that salt draws out as
// drip, and the water that drying and smoking take later. Water of raw salmon and trout is 649 to 757 g per kg in
// USDA tables.
type Curing struct {
	Raw    units.Mass `wire:"required"`
	Water  units.Mass `wire:"required"`
	Salt   units.Mass
	Drip   units.Mass
	Drying units.Mass
}

// MarshalJSON writes the masses in the words that UnmarshalJSON reads.
func (c Curing) MarshalJSON() ([]byte, error) { return wire.Marshal(c) }

// UnmarshalJSON reads the masses strictly; without the raw piece and its water it is refused.
func (c *Curing) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, c) }

// Equilibrium is what becomes of a Curing when all the salt that can dissolve has, and drip and flesh water are
// equally strong. Salt is conserved to the quantum: the salt put on is Kept + InDrip + LeftOver.
type Equilibrium struct {
	Kept      units.Mass  `wire:"always"` // salt in the fish
	InDrip    units.Mass  `wire:"always"` // salt gone with the drip
	LeftOver  units.Mass  `wire:"always"` // salt not dissolved
	Cured     units.Ratio `wire:"always"` // water phase salt after the cure
	CuredMass units.Mass
	Final     units.Ratio `wire:"always"` // after drying
	FinalMass units.Mass
	Citation  cite.Citation
	Cautions  []cite.Caution
}

// MarshalJSON writes the result as an app shows it.
func (e Equilibrium) MarshalJSON() ([]byte, error) { return wire.Marshal(e) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (e *Equilibrium) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, e) }

var equilibriumCitation = cite.Citation{
	Where: "equilibrium cure: drip and flesh water at one strength", Basis: cite.Computed,
}

// Equilibrium returns the end of the cure, if it is given all the time it needs; a cure cut short ends below. Raw
// must be 1 g to 100 kg, water above 0 and below the raw mass, the others not negative, and drip and drying less
// than the water: otherwise a RangeError. Drying past saturation is a solution.SaturatedError. Water phase salt is
// rounded down.
func (c Curing) Equilibrium() (Equilibrium, error) {
	left, err := c.waterLeft()
	if err != nil {
		return Equilibrium{}, err
	}
	saturated, _ := solution.Saturation()
	dissolves, err := units.Prorate(c.Water, saturated, units.One-saturated)
	if err != nil {
		return Equilibrium{}, err
	}
	e := Equilibrium{Citation: equilibriumCitation, Cautions: estimateCautions()}
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
	if err := checkFigure("raw fish", c.Raw, smallestFillet, largestFillet); err != nil {
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

// SaltToEnd returns the least salt to put on so that Equilibrium ends at a water phase salt, with the drip and the
// drying of c, whose Salt does not count. Rounded up. Target above 0 % to solution.Saturation, and what Equilibrium
// refuses: otherwise a RangeError; more than the water of the raw fish dissolves is a solution.SaturatedError. The
// fish must get the time to take it up, and it is an estimate.
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
	if c.Salt, err = units.ProrateUp(keep, c.Water, c.Water-c.Drip); err != nil { // S = K W0/(W0 − D)
		return 0, err
	}
	if _, err := WaterPhaseSalt(c.Salt, c.Water); err != nil {
		return 0, err
	}
	e, err := c.Equilibrium()
	if err == nil && e.Final < target { // saturated to the quantum
		saturated, _ := solution.Saturation()
		err = solution.SaturatedError{What: inTheWater, Share: target, Saturation: saturated}
	}
	if err != nil {
		return 0, err
	}
	return c.Salt, nil
}

// SaltBeforeLoss returns the salt that a piece must hold now so that its water phase salt reaches a target once it
// has lost a share of its weight as water, rounded up: 18.73 g per kg of raw Chinook salmon for 3.5 % at 20 % loss.
// Piece, from 1 g, and water are its masses now; loss is of the weight of the piece, not of its water, 0 % to less
// than all the water: otherwise a RangeError.
func SaltBeforeLoss(target units.Ratio, piece, water units.Mass, loss units.Ratio) (units.Mass, error) {
	if err := checkFigure("piece", piece, smallestFillet, largestFillet); err != nil {
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
		return 0, units.RangeError{
			What: "water lost", Got: lost.String(), Low: "0 g", High: water.String(), HighExclusive: true,
		}
	}
	return SaltFor(target, water-lost)
}
