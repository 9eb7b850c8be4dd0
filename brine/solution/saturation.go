package solution

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// saturation is 100 degrees of the salometer at 60 °F; mostPercent is the same as a plain number.
const (
	saturation  = 26_395 * units.Percent / 1_000
	mostPercent = 26.395
)

// Saturation returns the strength of a saturated salt solution at 60 °F, 26.395 % by mass, and its citation. It is
// 100 degrees of the salometer; a trade scale whose 100 is 25 % also exists and is not meant here.
func Saturation() (units.Ratio, cite.Citation) {
	return saturation, cite.Citation{Source: cite.BCSaltbrine, Where: "100 salometer degrees at 60 °F", Basis: cite.Read}
}

// SaturatedError says that more salt was found than the water can dissolve. What names the figure; Share is
// salt/(salt + water) all the same. errors.Is finds units.ErrRange.
type SaturatedError struct {
	What       string
	Share      units.Ratio
	Saturation units.Ratio
}

// Error says how much salt there is and how much the water can hold.
func (e SaturatedError) Error() string {
	return e.What + " " + e.Share.String() + " is out of range: expected at most " + e.Saturation.String() +
		", saturation; part of the salt is not dissolved, or a figure is wrong"
}

// Is reports whether target is units.ErrRange.
func (e SaturatedError) Is(target error) bool { return target == units.ErrRange }

// CheckShare returns nil for a share, salt/(salt + water) by mass, of 0 % to Saturation, a units.RangeError for one
// below zero and a SaturatedError for more than dissolves. The errors name what.
func CheckShare(what string, share units.Ratio) error {
	if 0 <= share && share <= saturation { // short, so that the compiler inlines it
		return nil
	}
	return outside(what, share)
}

func outside(what string, share units.Ratio) error {
	if share > saturation {
		return SaturatedError{What: what, Share: share, Saturation: saturation}
	}
	return units.Check(what, share, 0, saturation)
}
