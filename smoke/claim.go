package smoke

import (
	"strconv"
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

// Claim is what a recipe states about its smoking and what it does with the fish then. What it does not state stays zero.
// Fish ForJars is another product: smoked lightly, not cooked, and canned within a day; Loss is of the weight that enters
// the smoker, and is judged only there. Claims are comparable.
type Claim struct {
	Smoking Smoking
	ForJars bool
	Loss    units.Stated[units.Ratio]
	Air     units.Stated[units.Temperature] // the hottest air of the smoker, which is never the core
	Time    units.Stated[time.Duration]     // in the smoker in all
	Core    units.Stated[units.Temperature] // of the thickest piece
	Hold    units.Stated[time.Duration]     // at that core without a break
	Pack    Pack
	Keep    units.Stated[units.Temperature]
	Days    units.Stated[int]
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
	}{{"air of the smoker", c.Air, units.Celsius(300)}, {"core", c.Core, boiling}, {"storage", c.Keep, units.Celsius(50)}} {
		if t.stated.Given {
			if err := checkWarmth(t.what, t.stated.Value, units.Celsius(-50), t.high); err != nil {
				return err
			}
		}
	}
	switch {
	case c.Time.Value < 0:
		return units.RangeError{What: "time", Got: units.Lasting(c.Time.Value), Low: "0 min"}
	case c.Hold.Value < 0:
		return units.RangeError{What: "hold", Got: units.Lasting(c.Hold.Value), Low: "0 min"}
	case c.Days.Value < 0:
		return units.RangeError{What: "days", Got: strconv.Itoa(c.Days.Value), Low: "0"}
	case c.Loss.Given:
		return units.Check("loss in smoking", c.Loss.Value, 0, units.One)
	}
	return nil
}

// frozen reports whether the recipe freezes the fish: 0 °F or below.
func (c Claim) frozen() bool { return c.Keep.Given && !c.Keep.Value.Above(units.Fahrenheit(0)) }
