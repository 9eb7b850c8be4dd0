package brine

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Saturation returns the strength of a saturated salt solution at 60 °F, 26.395 % by mass, and its citation. It
// is 100 degrees of the salometer; a trade scale whose 100 is 25 % also exists and is not meant here.
func Saturation() (units.Ratio, cite.Citation) {
	return 26_395 * units.Percent / 1_000, cite.Citation{Source: cite.BCSaltbrine, Where: "100 salometer degrees at 60 °F", Basis: cite.Read}
}

// SaturatedError says that more salt was found than the water can dissolve. Share is salt/(salt + water) all the
// same. errors.Is finds units.ErrRange.
type SaturatedError struct {
	Share      units.Ratio
	Saturation units.Ratio
}

// Error says how much salt there is and how much the water can hold.
func (e SaturatedError) Error() string {
	return "water phase salt " + e.Share.String() + " is out of range: expected at most " + e.Saturation.String() +
		", saturation; part of the salt is not dissolved, or a figure is wrong"
}

// Is reports whether target is units.ErrRange.
func (e SaturatedError) Is(target error) bool { return target == units.ErrRange }
