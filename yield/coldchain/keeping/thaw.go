package keeping

import (
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
)

// ThawMethod is how frozen fish is thawed. The zero ThawMethod is not set.
type ThawMethod uint8

// The methods. Published limits were found only for the first two.
const (
	ThawInRefrigerator ThawMethod = iota + 1
	ThawInRunningWater
	ThawInStillWater
	ThawOnCounter
)

var thawMethods = word.List[ThawMethod]{What: "method of thawing", Words: []string{
	"in the refrigerator", "under running water", "in still water", "on the counter",
}}

// ParseThawMethod reads the words that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseThawMethod(s string) (ThawMethod, error) { return thawMethods.Parse(s) }

// String is the method in words: "in the refrigerator"; "not stated" when it is not set.
func (m ThawMethod) String() string { return thawMethods.Of(m) }

// MarshalText is String as bytes, empty when the method is not set; an unknown one is a units.UnknownError.
func (m ThawMethod) MarshalText() ([]byte, error) { return thawMethods.Marshal(m) }

// UnmarshalText is ParseThawMethod, and the empty text is a method that is not set.
func (m *ThawMethod) UnmarshalText(text []byte) error { return thawMethods.Unmarshal(text, m) }

// ThawPlan is how fish is to be thawed, or was. Medium is the warmest of the air or water around it. FishAbove41 is the
// longest that any of the fish is warmer than 41 °F, with the thawing, the handling and the chilling after it; left
// out, it is not known. SealedPack says that it was frozen in a vacuum or any pack that keeps the air out; Opened that
// the pack is opened before the thawing begins. ReadyToEat fish, smoked fish among it, is not cooked any more.
type ThawPlan struct {
	Method      ThawMethod        `wire:"required"`
	Medium      units.Temperature `wire:"required"`
	FishAbove41 units.Stated[time.Duration]
	SealedPack  bool
	Opened      bool
	ReadyToEat  bool
	ForSmoking  bool
}

// MarshalJSON writes the plan in the words that UnmarshalJSON reads.
func (p ThawPlan) MarshalJSON() ([]byte, error) { return wire.Marshal(p) }

// UnmarshalJSON reads a plan strictly; the method and the medium must be there.
func (p *ThawPlan) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, p) }

// The rules that a plan of thawing is held against.
const (
	RuleThawMethod       verdict.Rule = "keeping.thaw.method"
	RuleThawRefrigerator verdict.Rule = "keeping.thaw.refrigerator"
	RuleThawWater        verdict.Rule = "keeping.thaw.running-water"
	RuleThawWarmTime     verdict.Rule = "keeping.thaw.warm-time"
	RuleThawSmoking      verdict.Rule = "keeping.thaw.for-smoking"
	RuleThawPack         verdict.Rule = "keeping.thaw.sealed-pack"
)
