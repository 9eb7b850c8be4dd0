package parasites

import (
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// thickest is the thickness up to which the guide takes its freezing rules to fit.
const thickest = 6 * units.Inch

// Plan is how fish is to be frozen, or was, where its core was not measured.
type Plan struct {
	Freezer units.Temperature `wire:"required"` // the warmest it gets while the fish freezes, by a thermometer in it
	Store   units.Temperature // the warmest it is kept at once frozen; not set, the same
	Stored  time.Duration     `wire:"required"` // from loading the freezer to taking the fish out
	// Through is the time from loading until the middle of the thickest fish is down at Core, by a probe or the High of
	// freezing.Piece.Between. Where either is left out, or Core is above a rule's temperature, nothing is said of the
	// rules whose clock starts there.
	Through units.Stated[time.Duration]
	Core    units.Temperature
	// Thickness is that of the thickest piece. Above 6 in (15.2 cm) time from loading is not relied on.
	Thickness units.Stated[units.Length]
}

// MarshalJSON writes the plan in the words that UnmarshalJSON reads.
func (p Plan) MarshalJSON() ([]byte, error) { return wire.Marshal(p) }

// UnmarshalJSON reads a plan strictly; the freezer and the time in it must be there.
func (p *Plan) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, p) }

// Check judges a plan by each published rule of freezing: met, not met or cannot tell, how much too warm or short it
// is, and what would do. The freezer must be from -90 to 40 °C, Stored and Through 0 to 10 years and Through at most
// Stored, a thickness 1 mm to 2 m: otherwise a units.RangeError. A core colder than its freezer, or fish frozen through
// faster than any is, is never a pass. A freezer exactly at a rule's temperature, for exactly
// its time, meets it.
func Check(p Plan) (Report, error) {
	if !p.Store.IsSet() {
		p.Store = p.Freezer
	}
	if err := p.check(); err != nil {
		return Report{}, err
	}
	all := make([]judged, 0, len(ruleTable))
	for _, rule := range ruleTable {
		if !rule.Heat && rule.Standing != Refused {
			all = append(all, p.judge(rule))
		}
	}
	if f, ok := p.contradicts(); ok {
		doubt(all, f)
	}
	return reported(all, false), nil
}

// What a plan is believed to do; practice, with the reasons. A freezer is a few degrees colder than the warmest it gets. Fish
// that is frozen through gave off the heat of its water, 200 MJ/m³ at least, through frozen flesh of 2 W/(m K) at most; a
// ball freezes fastest, and its surface is no colder than the freezer.
const (
	freezerSwings  = 6 * units.CelsiusDegrees
	heatToFreeze   = 2e8
	frozenCarries  = 2.
	ballOfItsWidth = 24
)

// contradicts is what of a plan cannot be: a core colder than its freezer, or frozen through in no time.
func (p Plan) contradicts() (verdict.Finding, bool) {
	f := verdict.Finding{Rule: RuleBelieved, Kind: verdict.Impossible, Verdict: verdict.CannotTell, Citation: inNoTime}
	if p.Core.IsSet() && p.Core.Below(p.Freezer.Add(-freezerSwings)) {
		f.What, f.Stated = "core", units.Exactly(p.Core)
		f.Wanted = units.AtLeast(p.Freezer.Add(-freezerSwings)).With("in that freezer")
		return f, true
	}
	if !p.Through.Given || !p.Core.IsSet() || !p.Core.Below(chain.Frozen()) {
		return f, false
	}
	d := units.Float(chain.Thinnest, units.Metre)
	if p.Thickness.Given {
		d = units.Float(p.Thickness.Value, units.Metre)
	}
	colder := -1 - p.Freezer.Celsius()
	if colder <= 0 {
		colder = 1
	}
	least := time.Duration(heatToFreeze * float64(d*d) / (ballOfItsWidth * frozenCarries * colder) * float64(time.Second))
	if p.Through.Value >= least {
		return f, false
	}
	f.What, f.Stated = "time until frozen through", units.Exactly(p.Through.Value)
	f.Wanted = units.AtLeast(least.Round(time.Second)).With("for that thickness")
	return f, true
}

var inNoTime = cite.Citation{Where: "Plank's equation for a ball whose surface is held", Basis: cite.Computed}

func (p Plan) check() error {
	const decade = 10 * 365 * 24 * time.Hour
	for _, err := range [...]error{chain.CheckTime("time in the freezer", p.Stored), chain.CheckTime("time until frozen through", p.Through.Value)} {
		if err != nil {
			return err
		}
	}
	low, high := units.Celsius(-90), units.Celsius(40)
	if err := units.CheckTemperature("temperature of the freezer", p.Freezer, low, high); err != nil {
		return err
	}
	if err := units.CheckTemperature("temperature of the store", p.Store, low, high); err != nil {
		return err
	}
	if err := units.CheckDuration("time in the freezer", p.Stored, 0, decade); err != nil {
		return err
	}
	if p.Through.Given {
		if err := units.CheckDuration("time until frozen through", p.Through.Value, 0, p.Stored); err != nil {
			return err
		}
	}
	if p.Core.IsSet() {
		if err := units.CheckTemperature("temperature of the core", p.Core, low, high); err != nil {
			return err
		}
	}
	if err := units.CheckUnit("thickness", p.Thickness.Value, units.Millimetre); err != nil {
		return err
	}
	if p.Thickness.Given {
		return units.Check("thickness", p.Thickness.Value, units.Millimetre, 2*units.Metre)
	}
	return nil
}

// judge judges by one rule of freezing.
func (p Plan) judge(rule Rule) judged {
	l := Line{Rule: rule, Verdict: verdict.Met, Held: p.Stored}
	fromLoading := rule.Clock == FromLoading && !(p.Thickness.Given && p.Thickness.Value > thickest)
	if !fromLoading {
		l.Held -= p.Through.Value
	}
	frozen, kept := tooWarm(p.Freezer, rule.entry()), tooWarm(p.Store, rule.Temperature)
	l.Beyond, l.Short = max(frozen, kept), max(rule.Hold-l.Held, 0)
	f := verdict.Finding{Rule: rule.ID, Citation: rule.Citation}
	switch {
	case l.Beyond > 0: // time that is too warm does not count
		l.Verdict, l.Held, l.Short = verdict.NotMet, 0, rule.Hold
		f.What, f.Kind, f.By = "freezer", verdict.TooWarm, units.AmountOf(l.Beyond)
		f.Stated, f.Wanted = units.Exactly(p.Freezer), rule.bound()
		if kept > frozen {
			f.What, f.Stated, f.Wanted = "store", units.Exactly(p.Store), units.AtMost(rule.Temperature)
		}
	case l.Short > 0:
		l.Verdict = verdict.NotMet
		f.What, f.Kind, f.By = "time at the temperature", verdict.Short, units.AmountOf(l.Short)
		f.Stated, f.Wanted = units.Exactly(l.Held), units.AtLeast(rule.Hold)
	case !fromLoading && (!p.Through.Given || !p.Core.IsSet() || p.Core.Above(rule.Temperature)):
		l.Verdict = verdict.CannotTell
		f.What, f.Kind, f.Wanted = "time until the core is there", verdict.Missing, units.AtMost(p.Stored-rule.Hold)
	}
	f.Verdict = l.Verdict
	return judged{l, f}
}

// tooWarm is how far one temperature lies above another, both set.
func tooWarm(t, limit units.Temperature) units.TemperatureChange {
	over, err := t.Sub(limit)
	if err != nil {
		return 0
	}
	return max(over, 0)
}
