package smoke

import (
	"time"

	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// CoreLimitID names a published core limit. The zero CoreLimitID is not stated: that of a caller's own limit.
type CoreLimitID uint8

// The published limits, in the order of CoreLimits: the core in °F, then who says so.
const (
	Hot180MSU CoreLimitID = iota + 1
	Hot180OSU
	Hot160PNW
	Hot160WI
	Hot160WSU
	Hot160Chub
	Hot145MI
	Hot145ME
	Hot145GL
	Hot145FDA
	Hot145States
)

var coreLimitIDs = word.List[CoreLimitID]{What: "core limit", Words: []string{
	"HOT-180-MSU", "HOT-180-OSU", "HOT-160-PNW", "HOT-160-WI", "HOT-160-WSU", "HOT-160-CHUB",
	"HOT-145-MI", "HOT-145-ME", "HOT-145-GL", "HOT-145-FDA", "HOT-145-STATES",
}}

// ParseCoreLimitID reads a name that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseCoreLimitID(s string) (CoreLimitID, error) { return coreLimitIDs.Parse(s) }

// String is the name of the limit: "HOT-160-PNW".
func (id CoreLimitID) String() string { return coreLimitIDs.Of(id) }

// MarshalText is String as bytes, empty when it is not set; an unknown one is a units.UnknownError.
func (id CoreLimitID) MarshalText() ([]byte, error) { return coreLimitIDs.Marshal(id) }

// UnmarshalText is ParseCoreLimitID, and the empty text is one that is not set.
func (id *CoreLimitID) UnmarshalText(text []byte) error { return coreLimitIDs.Unmarshal(text, id) }

// CoreLimit is one published rule: the coldest core at AtLeast or above for Hold without a break. The figures of
// different rules are different regimes, not roundings of each other: what is not Home is a commercial process
// with measured water phase salt and recorded cold storage. A record is held to AtLeast, the reading in the source's own
// scale; a recipe meets either reading that is printed.
type CoreLimit struct {
	ID       CoreLimitID
	AtLeast  units.Temperature
	Printed  units.Figure // AtLeast as it is printed, in both scales
	Hold     time.Duration
	Home     bool
	Fish     string // what it applies to
	Place    string // where, or who says so
	Citation cite.Citation
}

// CoreLimits returns the published rules, the strictest first. Where a rule prints Celsius beside Fahrenheit, AtLeast is
// the figure in its own scale: 145 °F, not 62.8 °C. The slice is the caller's own.
func CoreLimits() []CoreLimit { return append([]CoreLimit(nil), coreLimits[:]...) }

// DefaultCoreLimit returns the strictest published rule for home smoking, 180 °F (82.2 °C) for 30 min: at home
// neither salt nor storage is measured, so the margin must be in the heat. Later home guides ask for 160 °F; take
// one by its name with FindCoreLimit. Source: Michigan State University Extension 1997.
func DefaultCoreLimit() CoreLimit { return coreLimits[Hot180MSU-1] }

// FindCoreLimit returns the published rule with this name, such as Hot160PNW. One that is not stated is a
// units.UnsetError, any other unknown one a units.UnknownError: none is taken for the nearest.
func FindCoreLimit(id CoreLimitID) (CoreLimit, error) {
	if err := coreLimitIDs.Check(id); err != nil {
		return CoreLimit{}, err
	}
	return coreLimits[id-1], nil
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
	if err := checkWarmth("core limit", l.AtLeast, coldestLimit, boiling); err != nil {
		return err
	}
	if err := checkPair("core limit", l.AtLeast, l.Printed.LowAlso); err != nil {
		return err
	}
	if l.Hold == 0 {
		return units.UnsetError{What: "hold"}
	}
	return units.CheckDuration("hold", l.Hold, shortestHold, longestHold)
}

// wanted is the limit as a recipe meets it: as printed, or as the caller's own.
func (l CoreLimit) wanted() units.Figure { return printedOr(l.Printed, units.AtLeast(l.AtLeast)) }
