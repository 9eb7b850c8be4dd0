package parasites

import (
	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
)

// Step is one thing to do now with the fish. The zero Step is not set.
type Step uint8

// The steps.
const (
	UseSoon     Step = iota + 1 // parasites may be taken for dead
	NotRaw                      // not as it is
	NotShown                    // it may have been treated
	FreezeAgain                 // colder and longer
	OrHeat                      //
)

var steps = word.List[Step]{
	What:  "step",
	Words: []string{"use soon", "not raw", "not shown", "freeze again", "or heat"},
}

// ParseStep reads the words that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseStep(s string) (Step, error) { return steps.Parse(s) }

// String is the step in a few words: "not raw"; "not stated" when it is not set.
func (s Step) String() string { return steps.Of(s) }

// MarshalText is String as bytes, empty when the step is not set; an unknown one is a units.UnknownError.
func (s Step) MarshalText() ([]byte, error) { return steps.Marshal(s) }

// UnmarshalText is ParseStep, and the empty text is a step that is not set.
func (s *Step) UnmarshalText(text []byte) error { return steps.Unmarshal(text, s) }

// homeFreezer is what a home freezer is set to.
var homeFreezer = units.Fahrenheit(0)

// Text is the step in whole sentences for the person with the fish, its temperatures in a system of units; empty for a
// step that is not known.
func (s Step) Text(in units.System) string {
	switch s {
	case UseSoon:
		return "Parasites may be taken for dead. Nothing else is mended: keep the fish frozen until it is used, then cold, " +
			"and use it soon."
	case NotRaw:
		return "Do not eat this fish raw, cold-smoked, marinated or lightly salted as it is."
	case NotShown:
		return "It may have been treated, but what is known does not show it."
	case FreezeAgain:
		off := units.AmountOf(tooWarm(homeFreezer, foodCodeWeek.Temperature))
		return "Colder: at " + cold(foodCodeWeek.Temperature, in) + " for " + units.Lasting(foodCodeWeek.Hold) +
			" without a break, " + foodCodeWeek.Clock.String() + ". A home freezer at " +
			units.AmountOf(homeFreezer).Text(in, units.Nearest) + " is " + off.Text(in, units.Nearest) +
			" too warm for that: turn it down and check it with a thermometer between the packs."
	case OrHeat:
		return "Or heat: " + hot(foodCodeCooking.Temperature, in) + " at the coldest point for " +
			units.Lasting(foodCodeCooking.Hold) + " when cooked, " + hot(hotSmoking.Temperature, in) + " for " +
			units.Lasting(hotSmoking.Hold) + " when hot-smoked."
	}
	return ""
}

// next is what to do now.
func next(v verdict.Verdict) []Step {
	switch v {
	case verdict.Met:
		return []Step{UseSoon}
	case verdict.CannotTell:
		return []Step{NotRaw, NotShown, FreezeAgain, OrHeat}
	}
	return []Step{NotRaw, FreezeAgain, OrHeat}
}
