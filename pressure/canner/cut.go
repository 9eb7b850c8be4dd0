package canner

import (
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Cut is how long the pieces are for a jar.
type Cut struct {
	Length   units.Length
	Citation cite.Citation
}

// MarshalJSON writes the cut as an app shows it.
func (c Cut) MarshalJSON() ([]byte, error) { return wire.Marshal(c) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (c *Cut) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, c) }

// Cut returns the length of cut for the jar below a headspace: the published 3 1/2 in for a pint at 1 in, otherwise
// the height of the glass less a base of 1/4 in and the headspace. The height of the glass must be 10 mm to 1 m and
// leave something: otherwise a units.RangeError. Exact, from typical or measured sizes. Source: USDA Complete Guide,
// Guide 5, rev. 1994; else Practice.
func (j JarSize) Cut(headspace units.Length) (Cut, error) {
	if err := units.Check("height of the glass", j.Glass, smallest, largest); err != nil {
		return Cut{}, err
	}
	if err := units.CheckUnit("headspace", headspace, leastLength); err != nil {
		return Cut{}, err
	}
	if err := units.Check("headspace", headspace, 0, j.Glass-base); err != nil {
		return Cut{}, err
	}
	length := j.Glass - base - headspace
	if j.Jar == process.Pint && headspace == units.Inch && length >= pintCut {
		return Cut{Length: pintCut, Citation: pintCutSource}, nil
	}
	return Cut{Length: length, Citation: cutSource}, nil
}

// Pieces returns how many pieces of this length a fish of a length gives when a share of it can be used; the rest is
// head, tail and the last piece, too short. Lengths must be 10 mm to 3 m, the share 0 to 100 %: otherwise a
// units.RangeError. Rounded down. About 65 % is usable as a rule, Practice.
func (c Cut) Pieces(fish units.Length, usable units.Ratio) (int, error) {
	if err := units.Check("cut", c.Length, smallest, 3*units.Metre); err != nil {
		return 0, err
	}
	if err := units.Check("fish", fish, smallest, 3*units.Metre); err != nil {
		return 0, err
	}
	if err := units.Check("usable share", usable, 0, units.One); err != nil {
		return 0, err
	}
	part, err := units.Prorate(fish, usable, units.One)
	return int(part / c.Length), err
}

const (
	base    = units.Inch / 4
	pintCut = 7 * units.Inch / 2
)

var (
	pintCutSource = cite.Citation{
		Source: cite.USDAGuide5Rev1994, Where: "Fish, length of cut for pints", Basis: cite.Read,
	}
	cutSource = cite.Citation{
		Where: "height of the glass less base and headspace, typical sizes", Basis: cite.Practice,
	}
)
