package process

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// BoilBeforeEating returns how long to boil home-canned low-acid food before anyone tastes it, where there is any
// doubt that it was canned exactly as published: 10 min below 1,000 ft, and 1 min more for each 1,000 ft
// from there on, a started one counted whole (the print leaves that open; whole is the safer reading). An
// altitude below 0 ft is a units.RangeError; the print gives no upper limit. Boiling does not make food
// that shows signs of spoilage fit to eat. Source: USDA Complete Guide, rev. 2015, For Safety's Sake, p. iii.
func BoilBeforeEating(altitude units.Length) (time.Duration, cite.Citation, error) {
	if altitude < 0 {
		return 0, cite.Citation{}, units.RangeError{What: "altitude", Got: altitude.String(), Low: "0 ft"}
	}
	const step = 1_000 * units.Foot
	minutes := int64(10)
	if altitude >= step {
		minutes += int64((altitude-1)/step) + 1
	}
	return time.Duration(minutes) * time.Minute, boilingRule, nil
}

var boilingRule = cite.Citation{
	Source: cite.USDAGuide1Rev2015,
	Where:  "For Safety's Sake, p. iii; a started 1,000 ft counted whole",
	Basis:  cite.Read,
}
