package coldchain

import (
	"time"

	"example.org/lakelarder/units"
)

// longestCooling is what the Food Code (read as adopted by a state) gives cooked food to reach 41 °F, here the end of
// believing that fish is cooling.
const longestCooling = 6 * time.Hour

// iced reports whether a record may be one of raw fish that lay in ice, and what is exceeded only for that: without a
// gap, never above 70 °F, and within everything that the guide says of raw fish, whatever was asked for, but for the
// bands that hold in melting ice. Fish above 40 °F for longer than the two-hour rule allows must have been cooling, and
// not for longer than the Food Code gives cooked food.
func (r *Report) iced(l ledger, last units.Temperature) bool {
	if r.Terms.Product != RawFish || r.Unknown > 0 || r.Highest.Value.Above(units.Fahrenheit(70)) {
		return false
	}
	cooling := last.Below(r.Highest.Value) && l.above(firstAbove(units.Fahrenheit(kitchenLow))) <= longestCooling
	all := Terms{Rules: []Rule{TableA2, RawReadyToEat, KitchenTwoHours}, HotAir: r.Terms.HotAir}
	for _, j := range all.judges() {
		if growsInIce(j.hazard) {
			j.limits = j.limits[1:]
		}
		if !j.met(l) && (j.rule != KitchenTwoHours || !cooling) {
			return false
		}
	}
	return true
}

// growsInIce reports whether a hazard of table A-2 has a limit for fish in melting ice: Listeria and Yersinia, which
// make ill by themselves and leave no toxin behind.
func growsInIce(h Hazard) bool {
	bands := a2Of(h)
	return len(bands) > 0 && bands[0].Over.Below(units.Celsius(0))
}
