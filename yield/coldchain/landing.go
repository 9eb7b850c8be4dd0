package coldchain

import (
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// Landing is what was done with a fish. Gutted is how long after the catch it was bled and gutted, Iced how long after
// death it lay in ice or in a medium no warmer than Medium; left out, it was not, or it is not known. Warmest is the
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

// MarshalJSON writes the landing in the words that UnmarshalJSON reads.
func (l Landing) MarshalJSON() ([]byte, error) { return wire.Marshal(l) }

// UnmarshalJSON reads a landing strictly: what it does not name is not known.
func (l *Landing) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, l) }

// LandingLine is one rule held against a landing.
type LandingLine struct {
	Rule    LandingRule
	Verdict verdict.Verdict `wire:"always"`
}

// LandingReport is a landing held against the deadlines. Its verdict is the worst of the rules that are for this fish;
// Yardstick is that of the chill times for other species, apart: past it, salmon and trout are poorer, and no histamine
// is proven. Lines are all the rules that were judged.
type LandingReport struct {
	verdict.Report
	Yardstick verdict.Report
	Lines     []LandingLine
}

// MarshalJSON writes the report as an app shows it.
func (r LandingReport) MarshalJSON() ([]byte, error) { return wire.Marshal(r) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (r *LandingReport) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, r) }

// longestLanding is the longest that fish is believed to lie about.
const longestLanding = 7 * chain.Day

// CheckLanding holds what was done with a fish against the published deadlines, each by itself. Bleeding and gutting is
// judged for every fish, though the canning guide is its only source, and so is the ice that the guide asks for after
// it: within the same time, in a medium of at most 40 °F, which others print beside ice. A rule for warm air or water
// holds where it was warm or that is not known. The longer time that one source gives gutted fish is named by
// LandingRules and never used. Times must be 0 or 1 s to 7 days, a stated medium -3 to 15 °C, the warmest -5 to 50 °C:
// otherwise a units.RangeError. What is left out is CannotTell.
func CheckLanding(l Landing) (LandingReport, error) {
	if err := l.check(); err != nil {
		return LandingReport{}, err
	}
	var r LandingReport
	var deciding, yardstick []verdict.Finding
	for _, rule := range landingTable {
		if !l.isFor(rule) {
			continue
		}
		findings := &deciding
		if rule.Yardstick {
			findings = &yardstick
		}
		worst := verdict.Met
		for _, f := range l.against(nil, rule) {
			worst = verdict.Worst(worst, f.Verdict)
			*findings = chain.SayOnce(*findings, f)
		}
		r.Lines = append(r.Lines, LandingLine{rule, worst})
	}
	r.Yardstick = verdict.Of(yardstick, nil)
	r.Report = verdict.Of(deciding, nil)
	if r.Verdict != verdict.Met && l.ForCanning {
		r.Cautions = append(r.Cautions, guttedLate)
	}
	r.Cautions = append(r.Cautions, neverNone, chillAnyway, heatStays, countsFromDeath)
	return r, nil
}

func (l Landing) check() error {
	for _, err := range [...]error{chain.CheckTime("time until gutted", l.Gutted.Value), chain.CheckTime("time until iced", l.Iced.Value)} {
		if err != nil {
			return err
		}
	}
	if err := units.CheckDuration("time until gutted", l.Gutted.Value, 0, longestLanding); err != nil {
		return err
	}
	if err := units.CheckDuration("time until iced", l.Iced.Value, 0, longestLanding); err != nil {
		return err
	}
	if l.Medium.IsSet() {
		err := units.CheckTemperature("ice or water for the fish", l.Medium, units.Celsius(-3), units.Celsius(15))
		if err != nil {
			return err
		}
	}
	if l.Warmest.IsSet() {
		return units.CheckTemperature("warmest air or water", l.Warmest, units.Celsius(-5), units.Celsius(50))
	}
	return nil
}

// isFor reports whether a rule is for this fish.
func (l Landing) isFor(rule LandingRule) bool {
	switch {
	case rule.Demand == Gutted:
		return l.ForSmoking
	case rule.IfGutted:
		return false
	case rule.NotWarmerThan.IsSet() && l.Warmest.IsSet() && l.Warmest.Above(rule.NotWarmerThan):
		return false // the rule for warmer air or water holds, which is shorter
	case rule.WarmerThan.IsSet():
		return !l.Warmest.IsSet() || l.Warmest.Above(rule.WarmerThan)
	}
	return true
}

// against holds a landing against a rule and adds what it finds. Every rule asks for cold too, those for gutting beside
// what they say of it.
func (l Landing) against(all []verdict.Finding, rule LandingRule) []verdict.Finding {
	atMost := rule.AtMost
	if rule.ThenIce {
		atMost = onIce
	}
	all = rule.inTime(all, "time until on ice", l.Iced)
	all = rule.coldEnough(all, l.Medium, atMost)
	if rule.Demand == IntoIce {
		return all
	}
	return rule.inTime(all, "time until bled and gutted", l.Gutted)
}

// inTime finds whether something was done at all and, where the rule states a time, in that.
func (r LandingRule) inTime(all []verdict.Finding, what string, done units.Stated[time.Duration]) []verdict.Finding {
	f := verdict.Finding{Rule: r.ID, What: what, Citation: r.Citation}
	if r.Within > 0 {
		f.Wanted = units.AtMost(r.Within)
	}
	switch {
	case !done.Given:
		f.Kind, f.Verdict = verdict.Missing, verdict.CannotTell
	case r.Within > 0 && done.Value > r.Within:
		f.Kind, f.Verdict, f.Stated = verdict.TooLong, verdict.NotMet, units.Exactly(done.Value)
		f.By = units.AmountOf(done.Value - r.Within)
	default:
		return all
	}
	return append(all, f)
}

// coldEnough finds whether what chilled the fish was at most that warm.
func (r LandingRule) coldEnough(all []verdict.Finding, medium, atMost units.Temperature) []verdict.Finding {
	f := verdict.Finding{
		Rule: r.ID, What: "ice or water around the fish", Wanted: units.AtMost(atMost), Citation: r.Citation,
	}
	switch {
	case !medium.IsSet():
		f.Kind, f.Verdict = verdict.Missing, verdict.CannotTell
	case medium.Above(atMost):
		f.Kind, f.Verdict, f.Stated = verdict.TooWarm, verdict.NotMet, units.Exactly(medium)
		f.By = units.AmountOf(medium).Minus(units.AmountOf(atMost))
	default:
		return all
	}
	return append(all, f)
}

var guttedLate = cite.Caution{
	ID: "coldchain.gutted-late", Deciding: true,
	Text: "The published canning process is for fish that was bled and gutted within 2 h and lay on ice since: " +
		"can no other.",
	Citation: chain.ReadIn(cite.USDAGuide5Rev2015, "Fish in Pint Jars, caution, p. 5-10"),
}
