package process

import "example.org/lakelarder/units"

// Ceiling is the altitude above which nothing is looked up. The weighted-gauge tables are printed without an upper limit,
// but a few hundred feet above 10,000 ft steam under 15 lb falls below 240 °F (computed from the US Standard Atmosphere
// 1976 and IAPWS-IF97), and no source speaks of canning fish up there.
const Ceiling = 10_000 * units.Foot

// leastAltitude is the least that is believed to be an altitude; a bare number is nanometres. Practice, no source.
const leastAltitude = 1 * units.Millimetre

// lastDial is where the dial-gauge tables end.
const lastDial = 8_000 * units.Foot

// noBand is the refusal of an altitude that no band of the row holds.
func noBand(r Request) NotPublishedError {
	e := NotPublishedError{Request: r, Missing: MissingAltitude}
	switch {
	case r.Altitude.Value < 0:
		e.Stated = "the tables start at 0 ft"
	case r.Gauge == Dial:
		e.Stated = "the dial-gauge tables end at " + height(lastDial)
	default:
		e.Stated = "nothing is looked up above " + height(Ceiling)
	}
	return e
}

// height is an altitude in feet as the tables print it, and exact in another unit where it is not whole hundredths.
func height(l units.Length) string {
	for places := int32(0); places <= 2; places++ {
		if text := units.Text(l, units.Foot, places); parsesTo(text, l) {
			return text
		}
	}
	return l.String()
}

func parsesTo(text string, l units.Length) bool {
	back, err := units.ParseLength(text)
	return err == nil && back == l
}
