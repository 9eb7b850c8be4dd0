package coldchain

import (
	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
)

// Step is one thing to do now with the fish of a record. The zero Step is not set.
type Step uint8

// The steps.
const (
	KeepCold          Step = iota + 1
	AddTimes               // the limits count all time since the catch together
	TreatAsExceeded        // part of the record is missing
	ChillNow               //
	LookUp                 // what is exceeded is known from memory only
	WaitCold               // until it is looked up
	Discard                //
	HeatDoesNotMend        // toxins may have formed
	DiscardIfOutOfIce      // the two-hour rule asks where the fish lay
	NotRaw                 // table A-2 asks how it will be eaten
	AskBeforeCooking       //
	MeetLaterStep          // the use that was stated relies on it
)

var steps = word.List[Step]{What: "step", Words: []string{
	"keep cold", "add times", "treat as exceeded", "chill now", "look up", "wait cold", "discard", "heat does not mend it",
	"discard if it lay out of ice", "not raw", "ask before cooking", "meet the later step",
}}

// ParseStep reads the words that String writes, in capitals or not; anything else is a units.UnknownError that lists
// them.
func ParseStep(s string) (Step, error) { return steps.Parse(s) }

// String is the step in a few words, such as "chill now"; "not stated" when it is not set.
func (s Step) String() string { return steps.Of(s) }

// MarshalText is String as bytes, empty when the step is not set; an unknown one is a units.UnknownError.
func (s Step) MarshalText() ([]byte, error) { return steps.Marshal(s) }

// UnmarshalText is ParseStep, and the empty text is a step that is not set.
func (s *Step) UnmarshalText(text []byte) error { return steps.Unmarshal(text, s) }

const discardIt = "discard it where neither people nor animals get at it"

// Text is the step in whole sentences for the person with the fish, its temperatures in a system of units; empty for a
// step that is not known.
func (s Step) Text(in units.System) string {
	at := func(fahrenheit float64) string {
		return units.AmountOf(units.Fahrenheit(fahrenheit)).Text(in, units.Down)
	}
	switch s {
	case KeepCold:
		return "Keep the fish at " + at(38) + " or below, on ice, from now on."
	case AddTimes:
		return "The limits count all time since the catch together: add what comes after this record, never start anew."
	case TreatAsExceeded:
		return "Part of the time is not recorded: treat the fish as past its limit unless another record shows " +
			"that it stayed cold."
	case ChillNow:
		return "Chill it to " + at(38) + " or below now."
	case LookUp:
		return "What this fish exceeds is known here only from memory: look the limit up in the document, " +
			"or ask the extension service, before the fish is used or thrown away."
	case WaitCold:
		return "Until then keep it at " + at(38) + " or below, and neither eat nor preserve it."
	case Discard:
		return "Do not eat, smoke, dry, can or freeze this fish: " + discardIt + "."
	case HeatDoesNotMend:
		return "Heat does not mend it: toxins may have formed that cooking and canning leave in the fish."
	case DiscardIfOutOfIce:
		return "The two-hour rule is for time out of the cold; counted here is how long the inside was above " + at(40) +
			", in ice or not. If the fish lay out of ice, or in a refrigerator above " + at(40) +
			", for longer than the rule allows in all: " + discardIt + "."
	case NotRaw:
		return "The limit of table A-2 is for fish that is eaten without further cooking: do not eat this fish raw, " +
			"lightly salted or cold-smoked."
	case AskBeforeCooking:
		return "Keep it at " + at(38) + " or below, and ask the extension service before it is cooked or preserved."
	case MeetLaterStep:
		return "Use it only for what was stated, and judge that step: where it is not met, judge this record again for fish " +
			"that is eaten raw."
	}
	return ""
}

// next is what to do now. Iced says that the record is one of raw fish that lay in ice.
func (r *Report) next(iced bool) []Step {
	all := make([]Step, 0, 4)
	switch r.Verdict {
	case verdict.NotMet:
		return r.exceeded(all, iced)
	case verdict.CannotTell:
		return append(all, TreatAsExceeded, ChillNow)
	}
	all = append(all, KeepCold, AddTimes)
	if r.Terms.relaxed() && !r.Terms.Later.Given {
		all = append(all, MeetLaterStep)
	}
	return all
}

// exceeded is what to do with fish that is past a limit.
func (r *Report) exceeded(all []Step, iced bool) []Step {
	if r.FromMemory {
		all = append(all, LookUp)
	}
	switch {
	case iced:
		return r.exceededInIce(all)
	case r.FromMemory:
		return append(all, WaitCold)
	}
	all = append(all, Discard)
	for i := range r.Allowances {
		if a := &r.Allowances[i]; a.Verdict == verdict.NotMet && a.Spared == 0 && !growsInIce(a.Hazard) {
			return append(all, HeatDoesNotMend)
		}
	}
	return all
}

// exceededInIce is what to do with raw fish in ice that is past the two-hour rule, which asks where the fish lay, or
// past a limit of table A-2, which asks how it will be eaten. The record tells neither.
func (r *Report) exceededInIce(all []Step) []Step {
	if r.exceeds(KitchenTwoHours) {
		all = append(all, DiscardIfOutOfIce)
	}
	if r.exceeds(TableA2) {
		all = append(all, NotRaw)
	}
	return append(all, AskBeforeCooking)
}

// exceeds reports whether a rule is exceeded.
func (r *Report) exceeds(rule Rule) bool {
	for i := range r.Allowances {
		if a := &r.Allowances[i]; a.Rule == rule && a.Verdict == verdict.NotMet && a.Spared == 0 {
			return true
		}
	}
	return false
}
