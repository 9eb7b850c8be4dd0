package smoke

import (
	"strconv"
	"time"

	"example.org/lakelarder/units"
)

// Method is how a recipe smokes. The zero Method is not set.
type Method uint8

// The methods.
const (
	HotSmoke  Method = iota + 1 // cooks the fish
	ColdSmoke                   // leaves it raw
)

// String is the method in words: "hot smoke".
func (m Method) String() string {
	switch m {
	case 0:
		return "unset method"
	case HotSmoke:
		return "hot smoke"
	case ColdSmoke:
		return "cold smoke"
	}
	return "Method(" + strconv.Itoa(int(m)) + ")"
}

// Claim is what a recipe states about its smoking and what it does with the fish then. What it does not state stays zero. Claims are comparable.
type Claim struct {
	Method Method
	Air    units.Stated[units.Temperature] // the hottest air of the smoker, which is never the core
	Time   units.Stated[time.Duration]     // in the smoker in all
	Core   units.Stated[units.Temperature] // of the thickest piece
	Hold   units.Stated[time.Duration]     // at that core without a break
	Pack   Pack
	Keep   units.Stated[units.Temperature]
	Days   units.Stated[int]
}

// check refuses figures that nothing can be.
func (c Claim) check() error {
	if c.Method > ColdSmoke {
		return units.RangeError{What: "method", Got: c.Method.String(), Low: HotSmoke.String(), High: ColdSmoke.String()}
	}
	if c.Pack > VacuumPack {
		return units.RangeError{What: "pack", Got: c.Pack.String(), Low: AirPack.String(), High: VacuumPack.String()}
	}
	for _, t := range []struct {
		what   string
		stated units.Stated[units.Temperature]
		high   units.Temperature
	}{{"air of the smoker", c.Air, units.Celsius(300)}, {"core", c.Core, boiling}, {"storage", c.Keep, units.Celsius(50)}} {
		if t.stated.Given {
			if err := units.CheckTemperature(t.what, t.stated.Value, units.Celsius(-50), t.high); err != nil {
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
	}
	return nil
}

// frozen reports whether the recipe freezes the fish: 0 °F or below.
func (c Claim) frozen() bool { return c.Keep.Given && !c.Keep.Value.Above(units.Fahrenheit(0)) }
