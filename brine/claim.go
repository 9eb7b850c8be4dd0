package brine

import (
	"time"

	"example.org/lakelarder/brine/solution"
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

// Claim is what a recipe states about its salting. What it does not state stays zero. Salt and sugar are stated by
// weight, or by volume of a named ingredient; a dry cure also as salt to fish, a brine also as its strength by mass.
// Claims are comparable.
type Claim struct {
	Method Method
	Fish   units.Stated[units.Mass]

	Salt       units.Stated[units.Mass]
	SaltVolume units.Stated[units.Volume]
	SaltAs     Ingredient // of SaltVolume; the zero Ingredient is a salt without a name
	SaltToFish units.Stated[units.Ratio]

	Sugar       units.Stated[units.Mass]
	SugarVolume units.Stated[units.Volume]
	SugarAs     Ingredient

	Water    units.Stated[units.Volume] // of the brine
	Strength units.Stated[units.Ratio]  // of the brine, salt/(salt + water) by mass

	Time        units.Stated[time.Duration]
	Temperature units.Stated[units.Temperature]
	Thickness   units.Stated[units.Length]
	Faces       Faces
	Fatness     Fatness

	ForJars        bool // salted for jars: salt is flavour there, and only the process keeps the fish
	Smoked         Smoking
	Pack           Pack
	Loss           units.Stated[units.Ratio] // of raw weight, in drying and smoking
	WaterPhaseSalt units.Stated[units.Ratio] // measured in the loin
	Nitrite        bool

	Ungutted  bool // salted with guts, roe or milt still in
	UsedBrine bool // brine that other fish lay in, used again as it is
	MixedLoad bool // several kinds of fish, or pieces of very different size, salted together
}

// MarshalJSON writes the claim in the words that UnmarshalJSON reads.
func (c Claim) MarshalJSON() ([]byte, error) { return wire.Marshal(c) }

// UnmarshalJSON reads a claim strictly: what it does not name is not stated, and a name that is no field is refused.
func (c *Claim) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, c) }

// What a recipe can state at least, to catch figures that lost their unit, and at most. Practice, no source.
const (
	leastSalt    = units.Gram / 10
	leastVolume  = units.Millilitre / 10
	largestBrine = 1_000 * units.Litre
	leastTime    = time.Second
)

// check refuses figures that no recipe can have.
func (c *Claim) check() error {
	for _, err := range [...]error{
		methods.CheckIfSet(c.Method), faces.CheckIfSet(c.Faces), fatnesses.CheckIfSet(c.Fatness),
		smokings.CheckIfSet(c.Smoked), packs.CheckIfSet(c.Pack),
		checkStated("fish", c.Fish, smallestFillet, largestFillet),
		checkStated("salt", c.Salt, leastSalt, largestFillet),
		checkStated("sugar", c.Sugar, leastSalt, sweetest*largestFillet),
		checkStated("salt", c.SaltVolume, leastVolume, largestBrine),
		checkStated("sugar", c.SugarVolume, leastVolume, largestBrine),
		checkStated("water", c.Water, leastVolume, largestBrine),
		checkFrom0("salt to fish", c.SaltToFish.Value, smallestRatio, units.One),
		checkFrom0("brine strength", c.Strength.Value, smallestRatio, units.One),
		checkFrom0("loss", c.Loss.Value, smallestRatio, wettest), // more than all the water
		checkFrom0(inTheWater, c.WaterPhaseSalt.Value, smallestRatio, units.One),
		solution.CheckShare(inTheWater, c.WaterPhaseSalt.Value),
		checkStated("thickness", c.Thickness, thinnest, thickest),
	} {
		if err != nil {
			return err
		}
	}
	if c.Time.Given {
		if err := checkTime(c.Time.Value); err != nil {
			return err
		}
	}
	if c.Temperature.Given {
		return units.CheckTemperature("temperature", c.Temperature.Value, units.Celsius(-30), units.Celsius(60))
	}
	return nil
}

// checkTime is checkFigure of a time in salt.
func checkTime(t time.Duration) error {
	err := units.CheckDuration("time", t, leastTime, longest)
	if e, ok := err.(units.RangeError); ok && t > 0 && t < leastTime/1000 {
		e.Got += unitLeftOut
		return e
	}
	return err
}

// checkStated is checkFigure of a figure that is stated.
func checkStated[Q units.Quantity](what string, got units.Stated[Q], least, most Q) error {
	if !got.Given {
		return nil
	}
	return checkFigure(what, got.Value, least, most)
}

// method is the one stated, or else the one that the figures of the claim show.
func (c *Claim) method() Method {
	switch {
	case c.Method != 0:
		return c.Method
	case c.Water.Given || c.Strength.Given:
		return WetBrined
	case c.SaltToFish.Given || c.Fish.Given && (c.Salt.Given || c.SaltVolume.Given):
		return DrySalted
	}
	return 0
}
