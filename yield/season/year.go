package season

import (
	"strconv"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

// Year is what a plan is made from. Weekly is what people eat in a week and Fish the mean of a fish, both in round
// mass: whole fish as caught (Larder.Weekly turns meals into it). Lag is after how many weeks a fish is preserved: 1
// is before the next week's trip. Trips stand in the order of their weeks.
type Year struct {
	Rule    Rule `wire:"required"`
	Trips   []Trip
	Fishing Fishing    `wire:"required"`
	Weeks   int        `wire:"required"`
	Lag     int        `wire:"required"`
	Fish    units.Mass `wire:"required"`
	Weekly  units.Mass `wire:"required"`
	Fresh   Keeping    `wire:"required"` // of fish not yet preserved, which may wait past the Lag where the quota is full
	Keeps   Keeping    `wire:"required"` // of preserved fish, counted from the week of the catch
	Start   Start      // what is there already
}

// MarshalJSON writes the year as an object of its fields.
func (y Year) MarshalJSON() ([]byte, error) { return wire.Marshal(y) }

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else, a figure that is missing too, is a
// units.FieldError. Only trips and the start may be left out.
func (y *Year) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, y) }

// century is the longest plan, in weeks.
const century = 5300

func (y Year) check() error {
	if err := y.Rule.check(); err != nil {
		return err
	}
	if err := within("weeks of the plan", y.Weeks, 1, century); err != nil {
		return err
	}
	if err := y.Start.check(); err != nil {
		return err
	}
	first, days := 0, 0
	for i, t := range y.Trips {
		if err := t.check(i, first, y.Weeks); err != nil {
			return err
		}
		if t.Week > first {
			days = 0
		}
		first, days = t.Week, days+t.Days
		if err := within("days of fishing in week "+strconv.Itoa(t.Week), days, 1, 7); err != nil {
			return err
		}
	}
	if err := fishings.Check(y.Fishing); err != nil {
		return err
	}
	if err := units.Check("mass of a fish", y.Fish, units.Gram, units.Tonne/10); err != nil {
		return err
	}
	if err := units.Check("mass eaten a week", y.Weekly, units.Gram, 400*units.Tonne/units.Mass(y.Weeks)); err != nil {
		return err
	}
	return y.checkKeeping()
}

func (y Year) checkKeeping() error {
	if err := y.Keeps.check("preserved fish", Week); err != nil {
		return err
	}
	if err := y.Fresh.check("fresh fish", 1); err != nil {
		return err
	}
	if waits := y.fresh() + 1; y.Lag < 1 || y.Lag > waits {
		return units.RangeError{
			What: "weeks until fish is preserved, while fresh fish keeps " + units.Lasting(y.Fresh.Time),
			Got:  strconv.Itoa(y.Lag), Low: "1", High: strconv.Itoa(waits),
		}
	}
	return nil
}

// fresh is after how many weeks a fish must have been preserved or eaten by the week that follows. Fish that keeps
// for less than two weeks is not held over a second one; that it is dealt with in time within its first week is for
// the caller.
func (y Year) fresh() int { return max(0, y.Fresh.weeks()) }

// keeps is the greatest age in weeks at which a fish is eaten.
func (y Year) keeps() int { return y.Keeps.weeks() }
