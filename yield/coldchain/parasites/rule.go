package parasites

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Rule is one published way to kill the parasites of fish: by cold, or by Heat. Hold is the least time at Temperature
// or below it, with Heat above it, counted by Clock without a break. Where Solid is set, the fish must first be frozen
// solid at that temperature or below. Rules are comparable.
type Rule struct {
	Name        string
	Heat        bool
	Temperature units.Temperature
	Hold        time.Duration
	Solid       units.Temperature
	Clock       Clock
	Standing    Standing
	Fish        string // what it is printed for
	Note        string
	Citation    cite.Citation
}

// Clock is from when the hold of a rule counts.
type Clock uint8

// The clocks. A fish takes hours to days to freeze through, which the first clock forgives and the others do not.
const (
	FromLoading Clock = iota // from when the fish goes into the freezer
	FromSolid                // from when it is frozen solid
	FromCore                 // from when its coldest or, with heat, hottest part to get there has the temperature
)

// String is the clock in words.
func (c Clock) String() string {
	switch c {
	case FromLoading:
		return "from loading the freezer"
	case FromSolid:
		return "from the fish being solid"
	case FromCore:
		return "from the core being there"
	}
	return "unknown clock"
}

// Standing is what a rule is good for here.
type Standing uint8

// The standings. Where sources differ the strictest decide.
const (
	Deciding Standing = iota // meeting it is enough
	Named                    // judged and shown, but a stricter rule decides
	Refused                  // too weak for fish eaten raw: shown as such and never judged by
)

// String is the standing in words.
func (s Standing) String() string {
	switch s {
	case Deciding:
		return "deciding"
	case Named:
		return "named only"
	case Refused:
		return "not to be used"
	}
	return "unknown standing"
}

// Rules returns what has been published on killing parasites in fish, cold first, in the order of the sources; the
// slice is the caller's own. Weaker figures for tapeworm alone are among them as Refused, so that nobody takes them for
// safe.
func Rules() []Rule {
	return append([]Rule(nil), ruleTable[:]...)
}

// entry is the temperature at which the hold begins.
func (r Rule) entry() units.Temperature {
	if r.Solid.IsSet() {
		return r.Solid
	}
	return r.Temperature
}

// Treatment is whether parasites may be taken for dead. The zero Treatment is that one cannot tell.
type Treatment uint8

// The treatments.
const (
	NotTold Treatment = iota // what is known is not enough to say
	NotMet
	Met
)

// String is the treatment in words: "cannot tell", "not met", "met".
func (t Treatment) String() string {
	switch t {
	case NotTold:
		return "cannot tell"
	case NotMet:
		return "not met"
	case Met:
		return "met"
	}
	return "unknown treatment"
}

// better is the better of two: one rule met is enough, and what one cannot tell may have been.
func (t Treatment) better(u Treatment) Treatment {
	switch {
	case t == Met || u == Met:
		return Met
	case t == NotTold || u == NotTold:
		return NotTold
	}
	return NotMet
}
