package brine

import "example.org/lakelarder/units"

// checkFigure returns a RangeError naming what unless least ≤ got ≤ most. Of a value above zero that is a thousand
// times too small the error asks whether the unit was left out: in code a bare 3 is 3e-12, not 3 %.
func checkFigure[Q units.Quantity](what string, got, least, most Q) error {
	if least <= got && got <= most { // short, so that the compiler inlines it
		return nil
	}
	return refused(what, got, least, most)
}

// unitLeftOut asks what is likely.
const unitLeftOut = " (was the unit left out?)"

func refused[Q units.Quantity](what string, got, least, most Q) error {
	err := units.Check(what, got, least, most)
	if e, ok := err.(units.RangeError); ok && got > 0 && got < least/1000 {
		e.Got += unitLeftOut
		return e
	}
	return err
}

// checkFrom0 is checkFigure with zero accepted.
func checkFrom0[Q units.Quantity](what string, got, least, most Q) error {
	if got == 0 {
		return nil
	}
	return checkFigure(what, got, least, most)
}

// aboveZero says that a mass must be more than nothing.
func aboveZero(what string, got units.Mass) error {
	return units.RangeError{What: what, Got: got.String(), Low: "0 g", LowExclusive: true}
}
