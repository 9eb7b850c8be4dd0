package brine

import (
	"example.org/lakelarder/brine/solution"
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Cure is the dry cure for one weight of fish. Total is Salt + Sugar and the Others to the quantum.
type Cure struct {
	Fillet   units.Mass
	Ratio    units.Ratio // salt to fish by mass
	Salt     units.Mass
	Sugar    units.Mass
	Others   []Portion
	Total    units.Mass
	Cautions []cite.Caution
}

// Portion is how much of a named ingredient goes into a cure.
type Portion struct {
	Name string
	Mass units.Mass `wire:"always"`
}

// MarshalJSON writes the cure as an app shows it.
func (c Cure) MarshalJSON() ([]byte, error) { return wire.Marshal(c) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (c *Cure) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, c) }

// What a cure is asked for at least and at most, to catch slips of units: nobody salts less than a gram of fish or
// weighs a ten-thousandth of it, and one to one by mass buries the fish. All practice, no source.
const (
	smallestFillet = units.Gram
	largestFillet  = 100 * units.Kilogram
	smallestRatio  = units.Percent / 100
	largestRatio   = units.One
)

// DryCure returns the salt and sugar for a weight of fish: salt is the fillet times salt, a mass of salt to a mass
// of raw fish such as 30*units.PerMille; sugar follows by the mix. Fillet must be 1 g to 100 kg, salt 0.01 % to 100
// %, the mix needs salt, and no more than 20 parts of sugar to 1: otherwise a RangeError or an UnsetError. Both are
// rounded to the quantum, 1/16 ng; on a scale round salt up. It is a plan, never a proof of the salt in the flesh.
//
// Published doses: 30 g per kg (Foods 2020, 9:1048), 1:4 (trade book), 1:3 (Michigan State University Extension
// 1997). Nothing tested was found between the first two.
func DryCure(fillet units.Mass, salt units.Ratio, mix Mix) (Cure, error) {
	if err := checkFigure("fillet", fillet, smallestFillet, largestFillet); err != nil {
		return Cure{}, err
	}
	if err := checkFigure("salt to fish", salt, smallestRatio, largestRatio); err != nil {
		return Cure{}, err
	}
	if err := mix.check(); err != nil {
		return Cure{}, err
	}
	c := Cure{Fillet: fillet, Ratio: salt}
	var err error
	if c.Salt, err = units.Prorate(fillet, salt, units.One); err != nil {
		return Cure{}, err
	}
	if c.Sugar, err = mix.of(c.Salt, mix.Sugar); err != nil {
		return Cure{}, err
	}
	c.Total = c.Salt + c.Sugar // below 100 kg × 21, and 16 others of 2,000 kg: far inside the range
	for _, other := range mix.Others {
		portion := Portion{Name: other.Name}
		if portion.Mass, err = mix.of(c.Salt, other.Parts); err != nil {
			return Cure{}, err
		}
		c.Others = append(c.Others, portion)
		c.Total += portion.Mass
	}
	c.Cautions = cureCautions(salt, c.Sugar)
	return c, nil
}

// of is what goes with so much salt.
func (m Mix) of(salt units.Mass, parts int64) (units.Mass, error) {
	return units.Prorate(salt, units.Ratio(parts), units.Ratio(m.Salt))
}

// mostExcess catches a slip of a unit; practice, no source.
const mostExcess = 2 * units.One

// BuryCure returns the cure that fish is buried in: salt enough to saturate all of its water and an excess of that
// on top, so that dry salt is left to the end. Water is the share of water in the raw fish, 50 to 85 %, excess 0 to
// 200 %, the others as DryCure has them: otherwise a RangeError. At 71.64 % of water, raw Chinook, saturation alone
// takes 256.9 g per kg, and an excess of 29.7 % is the printed 1 part to 3. Time and rinsing decide the salt in the
// fish, not the excess: see FindSaltingTime.
func BuryCure(fillet units.Mass, water, excess units.Ratio, mix Mix) (Cure, error) {
	if err := units.Check("water of the raw fish", water, 50*units.Percent, 85*units.Percent); err != nil {
		return Cure{}, err
	}
	if err := units.Check("excess of salt", excess, 0, mostExcess); err != nil {
		return Cure{}, err
	}
	saturated, _ := solution.Saturation()
	salt, err := units.Prorate(water, saturated, units.One-saturated)
	if err != nil {
		return Cure{}, err
	}
	if salt, err = units.Prorate(salt, units.One+excess, units.One); err != nil {
		return Cure{}, err
	}
	return DryCure(fillet, salt, mix)
}
