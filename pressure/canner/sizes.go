package canner

import "example.org/lakelarder/units"

// The sizes that a vessel or a jar may have; beyond them a unit was lost.
const (
	smallest = 10 * units.Millimetre
	largest  = 1 * units.Metre
)

// The least that anybody measures or states of each; what is smaller and not zero is a bare number, whose unit was
// left out. Practice, no source.
const (
	leastAltitude = 1 * units.Millimetre
	leastLength   = units.Millimetre / 10
	leastMass     = 1 * units.Gram
	leastVolume   = 100 * units.Millilitre
	leastPressure = units.PSI / 1000
	leastChange   = units.CelsiusDegrees / 1000
)

// bare reports whether a quantity is so small that its unit was left out; units.CheckUnit says so in words.
func bare[Q units.Length | units.Volume](q, least Q) bool { return q != 0 && -least < q && q < least }
