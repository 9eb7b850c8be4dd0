package process

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// The figures that go with the tables.
const (
	ventTime    = 10 * time.Minute
	quartComeUp = 30 * time.Minute
	headspace   = 1 * units.Inch
)

var (
	// The clock starts when steam flows steadily, not when heating starts.
	ventCitation = cite.Citation{Source: cite.USDAGuide1Rev2015, Where: "pp. 1-20 and 1-22, step 3", Basis: cite.Read}
	// 20 min on high, then 10 min of steady steam; longer until steam is steady, never less than 30 min in all.
	quartProcedure  = cite.Citation{Source: cite.USDAGuide5Rev2015, Where: "Fish in Quart Jars, p. 5-12, processing change for quart jars", Basis: cite.Read}
	smokedProcedure = cite.Citation{Source: cite.USDAGuide5Rev2015, Where: "Smoked Fish, p. 5-13, processing change for smoked fish", Basis: cite.Read}
	waterCitation   = cite.Citation{Source: cite.USDAGuide1Rev2015, Where: "p. 1-21, step 1", Basis: cite.Read}
)

var (
	quartWater   = Water{Volume: 3 * units.Quart}
	smokedWater  = Water{Volume: 4 * units.Quart, AtLeast: true}
	generalWater = Water{Shallow: 2 * units.Inch, Deep: 3 * units.Inch}
)

// waterOf returns the water for a load; what has no amount of its own takes the general depth.
func waterOf(product Product, jar Jar) (Water, cite.Citation) {
	switch {
	case product == SmokedFish:
		return smokedWater, smokedProcedure
	case jar == Quart:
		return quartWater, quartProcedure
	}
	return generalWater, waterCitation
}

// headspaceOf returns where the inch of headspace is printed for a load.
func headspaceOf(product Product, jar Jar) cite.Citation {
	c := cite.Citation{Source: cite.USDAGuide5Rev1994, Where: "Fish", Basis: cite.Read}
	switch {
	case product == Tuna:
		c.Where = "Tuna"
	case product == SmokedFish:
		c = cite.Citation{Source: cite.NCHFPSmokedFish, Where: "pieces packed to within 1 inch of the rim", Basis: cite.Read}
	}
	return c
}
