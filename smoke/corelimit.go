package smoke

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// CoreLimit is one published rule: the coldest core at AtLeast or above for Hold without a break. The figures of
// different rules are different regimes, not roundings of each other: what is not Home is a commercial process
// with measured water phase salt and recorded cold storage.
type CoreLimit struct {
	ID       string
	AtLeast  units.Temperature
	Hold     time.Duration
	Home     bool
	Fish     string // what it applies to
	Place    string // where, or who says so
	Citation cite.Citation
}

// CoreLimits returns the published rules, the strictest first. Where a rule gives Celsius and Fahrenheit, AtLeast is
// the warmer of the two figures: 62.8 °C for 145 °F, 180 °F for 82.2 °C. The slice is the caller's own.
func CoreLimits() []CoreLimit { return append([]CoreLimit(nil), coreLimits[:]...) }

// DefaultCoreLimit returns the strictest published rule for home smoking, 180 °F (82.2 °C) for 30 min: at home
// neither salt nor storage is measured, so the margin must be in the heat. Later home guides ask for 160 °F; take
// one by its name with FindCoreLimit. Source: Michigan State University Extension 1997.
func DefaultCoreLimit() CoreLimit { return coreLimits[0] }

// FindCoreLimit returns the rule with exactly this ID, such as "HOT-160-PNW"; CoreLimits has them all. Any other is
// an UnknownCoreLimitError: none is taken for the nearest.
func FindCoreLimit(id string) (CoreLimit, error) {
	for i := range coreLimits {
		if coreLimits[i].ID == id {
			return coreLimits[i], nil
		}
	}
	return CoreLimit{}, UnknownCoreLimitError{ID: id}
}

// UnknownCoreLimitError says that no published rule has this ID.
type UnknownCoreLimitError struct {
	ID string
}

// Error names the ID and those there are.
func (e UnknownCoreLimitError) Error() string {
	s := "no core limit \"" + e.ID + "\": expected"
	for i := range coreLimits {
		if i > 0 {
			s += ","
		}
		s += " " + coreLimits[i].ID
	}
	return s
}

// What a hold may be judged against. No published rule is below 145 °F for 30 min; a moist core does not get above
// the boiling point. A day is far beyond any rule.
var (
	coldestLimit = units.Fahrenheit(145)
	boiling      = units.Celsius(100)
)

const (
	shortestHold = 30 * time.Minute
	longestHold  = 24 * time.Hour
)

// check refuses what no rule asks for; a caller's own limit goes through it as well.
func (l CoreLimit) check() error {
	if err := units.CheckTemperature("core limit", l.AtLeast, coldestLimit, boiling); err != nil {
		return err
	}
	return units.CheckDuration("hold", l.Hold, shortestHold, longestHold)
}
