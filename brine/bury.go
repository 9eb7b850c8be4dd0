package brine

import (
	"example.org/lakelarder/units"
)

// mostExcess catches a slip of a unit; practice, no source.
const mostExcess = 2 * units.One

// BuryCure returns the cure that fish is buried in: salt enough to saturate all of its water and an excess of that on top, so that dry
// salt is left to the end. Water is the share of water in the raw fish, 50 to 85 %, excess 0 to 200 %, the others as DryCure has
// them: otherwise a RangeError. At 71.64 % of water, raw Chinook, saturation alone takes 256.9 g per kg, and an excess of 29.7 % is the printed
// 1 part to 3. Time and rinsing decide the salt in the fish, not the excess: see FindSaltingTime.
func BuryCure(fillet units.Mass, water, excess units.Ratio, mix Mix) (Cure, error) {
	if err := units.Check("water of the raw fish", water, 50*units.Percent, 85*units.Percent); err != nil {
		return Cure{}, err
	}
	if err := units.Check("excess of salt", excess, 0, mostExcess); err != nil {
		return Cure{}, err
	}
	limit, _ := Saturation()
	salt, err := units.Prorate(water, limit, units.One-limit)
	if err != nil {
		return Cure{}, err
	}
	if salt, err = units.Prorate(salt, units.One+excess, units.One); err != nil {
		return Cure{}, err
	}
	return DryCure(fillet, salt, mix)
}
