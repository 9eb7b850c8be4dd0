package process

import "example.org/lakelarder/units"

// Band is a range of altitudes with one setting: above Over, up to and including UpTo. The print has
// 0-2,000 and 2,001-4,000 ft and leaves 2,000.5 ft nowhere; here what lies between belongs to the next,
// stricter band. An UpTo of zero means that the print gives no upper limit.
type Band struct {
	Over units.Length
	UpTo units.Length
}

// Contains reports whether the altitude lies in the band. Zero lies in the band that starts at zero; an
// altitude below sea level lies in none.
func (b Band) Contains(altitude units.Length) bool {
	above := altitude > b.Over || altitude == 0 && b.Over == 0
	return above && (b.Open() || altitude <= b.UpTo)
}

// Open reports whether the print gives the band no upper limit.
func (b Band) Open() bool { return b.UpTo == 0 }

// String is the band in feet, as it is read here: "0 to 2,000 ft", "above 2,000 ft to 4,000 ft", "above
// 1,000 ft".
func (b Band) String() string {
	switch {
	case b.Open():
		return "above " + feet(b.Over)
	case b.Over == 0:
		return "0 to " + feet(b.UpTo)
	}
	return "above " + feet(b.Over) + " to " + feet(b.UpTo)
}

// feet is a printed altitude: whole feet print whole.
func feet(l units.Length) string { return units.Text(l, units.Foot, 0) }
