package process

import (
	"math"

	"example.org/lakelarder/units"
)

// NoLimit is the UpTo of a band that the print gives no upper limit.
const NoLimit units.Length = math.MaxInt64

// Band is a range of altitudes with one setting: above Over, up to and including UpTo. The print has
// 0-2,000 and 2,001-4,000 ft and leaves 2,000.5 ft nowhere; here what lies between belongs to the next,
// stricter band. The zero Band contains nothing.
type Band struct {
	Over units.Length
	UpTo units.Length // NoLimit: printed as "above", without an upper limit
}

// Contains reports whether the altitude lies in the band. Zero lies in the band that starts at zero; an
// altitude below sea level lies in none.
func (b Band) Contains(altitude units.Length) bool {
	above := altitude > b.Over || altitude == 0 && b.Over == 0
	return above && altitude <= b.UpTo && b.Over < b.UpTo
}

// String is the band in feet, as it is read here: "0 to 2,000 ft", "above 2,000 ft to 4,000 ft", "above
// 1,000 ft".
func (b Band) String() string {
	switch {
	case b == Band{}:
		return "no altitude"
	case b.UpTo == NoLimit:
		return "above " + height(b.Over)
	case b.Over == 0:
		return "0 to " + height(b.UpTo)
	}
	return "above " + height(b.Over) + " to " + height(b.UpTo)
}
