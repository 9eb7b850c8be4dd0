package brine

import "example.org/lakelarder/units"

// Molar masses per mole of sodium; their quotient is 2.54212.
const (
	molarNaCl = 58_442_800 * units.Microgram
	molarNa   = 22_989_770 * units.Microgram
)

// SaltFromSodium returns the salt that would hold this sodium, 2.54212 times its mass (58.4428/22.98977), rounded
// to the quantum. Sodium must not be negative: otherwise a RangeError. It counts all sodium as salt: the flesh's
// own, 0.11 to 0.27 % of water phase salt in raw salmon and trout, and that of any other additive, so it
// overrates the salt. Use it to check a label or a table, not to pass a limit.
func SaltFromSodium(sodium units.Mass) (units.Mass, error) {
	if sodium < 0 {
		return 0, units.RangeError{What: "sodium", Got: sodium.String(), Low: "0 g"}
	}
	return units.Prorate(sodium, molarNaCl, molarNa)
}
