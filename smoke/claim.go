package smoke

import (
	"strconv"
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

// Claim is what a recipe states about its smoking and what it does with the fish then. What it does not state stays zero.
// Fish ForJars is another product: smoked lightly, not cooked, and canned within a day; Loss, of the weight that enters the
// smoker, and Wait are judged only there. Claims are comparable.
type Claim struct {
	Smoking Smoking
	ForJars bool
	Loss    units.Stated[units.Ratio]
	Air     units.Stated[units.Temperature] // the hottest air of the smoker, which is never the core
	Time    units.Stated[time.Duration]     // in the smoker in all
	ToCore  units.Stated[time.Duration]     // from the start of the smoking until the core is there
	Core    units.Stated[units.Temperature] // of the thickest piece
	Hold    units.Stated[time.Duration]     // at that core without a break
	Oven    units.Stated[Oven]              // where the fish is finished in one
	Cooling [2]CoolingStep                  // as stated, zero for none
	Pack    Pack
	Keep    units.Stated[units.Temperature]
	Days    units.Stated[int]

	Wait         units.Stated[time.Duration] // from the smoker to the canner
	Refrigerated bool                        // for that wait, where no temperature is stated
}

// Oven is what a recipe states about finishing fish in an oven. The whole hold is in it.
type Oven struct {
	After units.Stated[time.Duration]     // from the smoker into it
	Air   units.Stated[units.Temperature] // of the oven
	Time  units.Stated[time.Duration]     // in it
}

// MarshalJSON writes the claim in the words that UnmarshalJSON reads.
func (c Claim) MarshalJSON() ([]byte, error) { return wire.Marshal(c) }

// UnmarshalJSON reads a claim strictly: what it does not name is not stated, and a name that is no field is refused.
func (c *Claim) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, c) }

// check refuses figures that nothing can be.
func (c Claim) check() error {
	if err := smokings.CheckIfSet(c.Smoking); err != nil {
		return err
	}
	if err := packs.CheckIfSet(c.Pack); err != nil {
		return err
	}
	for _, t := range []struct {
		what   string
		stated units.Stated[units.Temperature]
		high   units.Temperature
	}{
		{"air of the smoker", c.Air, units.Celsius(300)}, {"air of the oven", c.Oven.Value.Air, units.Celsius(300)},
		{"core", c.Core, boiling}, {"storage", c.Keep, units.Celsius(50)},
	} {
		if t.stated.Given {
			if err := checkWarmth(t.what, t.stated.Value, units.Celsius(-50), t.high); err != nil {
				return err
			}
		}
	}
	for _, t := range []struct {
		what string
		time time.Duration
	}{
		{"time in the smoker", c.Time.Value}, {"time to the core", c.ToCore.Value}, {"hold", c.Hold.Value}, {"wait before canning", c.Wait.Value},
		{"time from the smoker to the oven", c.Oven.Value.After.Value}, {"time in the oven", c.Oven.Value.Time.Value},
	} {
		if err := checkStatedTime(t.what, t.time); err != nil {
			return err
		}
	}
	if c.Days.Value < 0 {
		return units.RangeError{What: "days", Got: strconv.Itoa(c.Days.Value), Low: "0"}
	}
	if c.Cooling != ([2]CoolingStep{}) {
		if err := (CoolingRule{Steps: c.Cooling}).check(); err != nil {
			return err
		}
	}
	if c.Loss.Given {
		if err := units.CheckUnit("loss in smoking", c.Loss.Value, leastLoss); err != nil {
			return err
		}
		return units.Check("loss in smoking", c.Loss.Value, 0, units.One)
	}
	return nil
}

// What is smaller than anybody weighs or times is a number without its unit.
const (
	leastLoss = units.Percent / 100
	leastTime = time.Second
)

// checkStatedTime refuses a time below zero, and one that is a bare number.
func checkStatedTime(what string, d time.Duration) error {
	switch {
	case d < 0:
		return units.RangeError{What: what, Got: units.Lasting(d), Low: "0 min"}
	case d > 0 && d < leastTime:
		return units.UnitError{What: what, Got: strconv.FormatInt(int64(d), 10) + " (" + units.Lasting(d) + ")", Least: units.Lasting(leastTime)}
	}
	return nil
}

// frozen reports whether the recipe freezes the fish: 0 °F or below.
func (c Claim) frozen() bool { return c.Keep.Given && !c.Keep.Value.Above(units.Fahrenheit(0)) }
