package coldchain

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// LandingDemand is what is to be done with a fish that was caught. The zero LandingDemand is not set.
type LandingDemand uint8

// The demands.
const (
	BleedAndGut LandingDemand = iota + 1 // counted from the catch
	Gutted                               // before it is smoked, at whatever time
	IntoIce                              // counted from death
)

// String is the demand in words.
func (d LandingDemand) String() string {
	switch d {
	case 0:
		return "no demand"
	case BleedAndGut:
		return "bleed and gut"
	case Gutted:
		return "gutted"
	case IntoIce:
		return "into ice"
	}
	return "unknown demand"
}

// LandingRule is one published deadline after the catch. Within is zero where none is stated, AtMost the temperature of
// what chills the fish, or for Gutted of the fish. ThenIce says that the fish is to lie on ice from then on.
// WarmerThan, where set, is the air or water that the rule is for; IfGutted that it is for gilled and gutted fish. A
// Yardstick is printed for other fish, and is no rule for salmon and trout.
type LandingRule struct {
	Demand     LandingDemand
	Printed    string
	Within     time.Duration
	AtMost     units.Temperature
	ThenIce    bool
	WarmerThan units.Temperature
	IfGutted   bool
	For        string
	Yardstick  bool
	Citation   cite.Citation
}

// LandingRules returns the published deadlines for bleeding, gutting and chilling; those that are for salmon and trout
// first. The slice is the caller's own.
func LandingRules() []LandingRule { return append([]LandingRule(nil), landingTable[:]...) }

// Landing is what was done with a fish. Gutted is how long after the catch it was bled and gutted, Iced how long after
// death it lay in ice or in a medium no warmer than Medium; left out, it was not, or nobody knows. Warmest is the
// warmest air or water that the fish lay in before; not set, it counts as hot. ForSmoking and ForCanning say what the
// fish is for.
type Landing struct {
	Gutted     units.Stated[time.Duration]
	Iced       units.Stated[time.Duration]
	Medium     units.Temperature
	Warmest    units.Temperature
	ForSmoking bool
	ForCanning bool
}

// LandingLine is one rule held against a landing.
type LandingLine struct {
	Rule    LandingRule
	Verdict Verdict
}

// LandingReport is a landing held against the deadlines. Verdict is the worst of the rules that are for this fish;
// Yardstick that of the chill times for other species, apart: past it, salmon and trout are poorer, and no histamine is
// proven.
type LandingReport struct {
	Verdict   Verdict
	Yardstick Verdict
	Lines     []LandingLine
	Cautions  []cite.Caution
}

// longestLanding is the longest that fish is believed to lie about.
const longestLanding = 7 * chain.Day

// CheckLanding holds what was done with a fish against the published deadlines, each by itself. Bleeding and gutting is
// judged for every fish, though the canning guide is its only source, and so is the ice that the guide asks for after
// it: within the same time, in a medium of at most 40 °F, which others print beside ice. A rule for warm air or water
// holds where it was warm or nobody knows. The longer time that one source gives gutted fish is named by LandingRules
// and never used. Times must be 0 to 7 days, a stated medium -3 to 15 °C, the warmest -5 to 50 °C: otherwise a
// units.RangeError. What is left out cannot be told.
func CheckLanding(l Landing) (LandingReport, error) {
	if err := l.check(); err != nil {
		return LandingReport{}, err
	}
	r := LandingReport{Verdict: Within, Yardstick: Within, Cautions: []cite.Caution{neverNone}}
	for _, rule := range landingTable {
		if !l.falls(rule) {
			continue
		}
		line := LandingLine{rule, l.against(rule)}
		r.Lines = append(r.Lines, line)
		worst := &r.Verdict
		if rule.Yardstick {
			worst = &r.Yardstick
		}
		*worst = worse(*worst, line.Verdict)
	}
	if r.Verdict != Within && l.ForCanning {
		r.Cautions = append(r.Cautions, guttedLate)
	}
	return r, nil
}

func (l Landing) check() error {
	if err := units.CheckDuration("time until gutted", l.Gutted.Value, 0, longestLanding); err != nil {
		return err
	}
	if err := units.CheckDuration("time until iced", l.Iced.Value, 0, longestLanding); err != nil {
		return err
	}
	if l.Medium.IsSet() {
		if err := units.CheckTemperature("ice or water for the fish", l.Medium, units.Celsius(-3), units.Celsius(15)); err != nil {
			return err
		}
	}
	if l.Warmest.IsSet() {
		return units.CheckTemperature("warmest air or water", l.Warmest, units.Celsius(-5), units.Celsius(50))
	}
	return nil
}

// falls reports whether a rule is for this fish.
func (l Landing) falls(rule LandingRule) bool {
	switch {
	case rule.Demand == Gutted:
		return l.ForSmoking
	case rule.IfGutted:
		return false
	case rule.WarmerThan.IsSet():
		return !l.Warmest.IsSet() || l.Warmest.Above(rule.WarmerThan)
	}
	return true
}

// against holds a landing against a rule. Every rule asks for cold too, those for gutting beside what they say of it.
func (l Landing) against(rule LandingRule) Verdict {
	atMost := rule.AtMost
	if rule.ThenIce {
		atMost = onIce
	}
	verdict := worse(inTime(l.Iced, rule.Within), l.in(atMost))
	if rule.Demand == IntoIce {
		return verdict
	}
	return worse(verdict, inTime(l.Gutted, rule.Within))
}

// inTime is whether something was done at all and, where within is not zero, in that time.
func inTime(done units.Stated[time.Duration], within time.Duration) Verdict {
	switch {
	case !done.Given:
		return CannotTell
	case within > 0 && done.Value > within:
		return Exceeded
	}
	return Within
}

// in is whether what chilled the fish was at most that warm.
func (l Landing) in(atMost units.Temperature) Verdict {
	switch {
	case l.Medium.Above(atMost):
		return Exceeded
	case !l.Medium.IsSet():
		return CannotTell
	}
	return Within
}

var guttedLate = cite.Caution{
	Text:     "the published canning process is for fish that was bled and gutted within 2 h and lay on ice since: can no other",
	Citation: chain.ReadIn(cite.USDAGuide5Rev2015, "Fish in Pint Jars, caution, p. 5-10"),
}
