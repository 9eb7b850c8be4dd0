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
	ventSource = cite.Citation{Source: cite.USDAGuide1Rev2015, Where: "Pressure canners, p. 1-20, and Using pressure canners, step 3, p. 1-22", Basis: cite.Read}
	// 20 min on high, longer until steam is steady, then 10 min of it; heating and venting never under 30 min.
	quartProcedure  = cite.Citation{Source: cite.USDAGuide5Rev2015, Where: "Fish in Quart Jars, processing change, p. 5-12", Basis: cite.Read}
	smokedProcedure = cite.Citation{Source: cite.USDAGuide5Rev2015, Where: "Smoked Fish, processing change, p. 5-13", Basis: cite.Read}
	generalWater    = cite.Citation{Source: cite.USDAGuide1Rev2015, Where: "Using pressure canners, step 1, p. 1-21", Basis: cite.Read}
)

// packing returns where filling the jar and its headspace are printed for a load.
func packing(product Product, jar Jar) cite.Citation {
	c := cite.Citation{Source: cite.USDAGuide5Rev2015, Where: "Fish in Pint Jars, p. 5-10", Basis: cite.Read}
	switch {
	case product == SmokedFish:
		c.Where = "Smoked Fish, p. 5-13"
	case product == Tuna:
		c.Where = "Tuna, p. 5-14"
	case jar == Quart:
		c.Where = "Fish in Quart Jars, p. 5-11"
	}
	return c
}

// waterOf returns the water for a load; what has no amount of its own takes the general depth.
func waterOf(product Product, jar Jar) (Water, cite.Citation) {
	switch {
	case product == SmokedFish:
		return Water{Volume: 4 * units.Quart, AtLeast: true}, smokedProcedure
	case jar == Quart:
		return Water{Volume: 3 * units.Quart}, quartProcedure
	}
	return Water{Shallow: 2 * units.Inch, Deep: 3 * units.Inch}, generalWater
}
