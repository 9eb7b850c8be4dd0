package yield

import "example.org/lakelarder/units"

// Split parts a mass into the share kept and the rest, so that kept + rest is the whole to the
// quantum. Kept rounds down, by less than 1/16 ng: the safe side for a supply. The whole must not be
// negative and the share must lie in 0 to 100 %; otherwise a RangeError.
func Split(whole units.Mass, share units.Ratio) (kept, rest units.Mass, err error) {
	if whole < 0 {
		return 0, 0, units.RangeError{What: "mass", Got: whole.String(), Low: units.Mass(0).String()}
	}
	if err := units.Check("share kept", share, 0, units.One); err != nil {
		return 0, 0, err
	}
	if kept, err = units.ProrateDown(whole, share, units.One); err != nil {
		return 0, 0, err
	}
	return kept, whole - kept, nil
}
