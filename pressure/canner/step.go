package canner

import (
	"strconv"
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
)

// Action is a thing to do. The zero Action is not stated.
type Action uint8

// The actions.
const (
	KeepGoing   Action = iota + 1 // hold the pressure; the clock counts from Step.At
	StartAgain                    // this run cannot be mended: let it cool by itself and begin again, vent and all
	Wait                          // let it cool, then open in order
	Keep                          // cool the jars, check the seals, store
	Reprocess                     // for the full time, until Step.At
	Refrigerate                   // or freeze, until Step.At
	Discard                       // from Step.At on
	PutRight                      // something is missing or contradicts the rest: the run would not be judged met
)

var actions = word.List[Action]{
	What:  "action",
	Words: []string{"keep going", "start again", "wait", "keep", "reprocess", "refrigerate", "discard", "put right"},
}

// ParseAction reads the word that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseAction(s string) (Action, error) { return actions.Parse(s) }

// String is the action in words: "keep going".
func (a Action) String() string { return actions.Of(a) }

// MarshalText is String as bytes, empty when it is not set; an unknown one is a units.UnknownError.
func (a Action) MarshalText() ([]byte, error) { return actions.Marshal(a) }

// UnmarshalText is ParseAction, and the empty text is an action that is not set.
func (a *Action) UnmarshalText(text []byte) error { return actions.Unmarshal(text, a) }

// Step is what to do: the rule whose finding it answers, none where it answers the whole, the action, its moment on
// the record's clock, in words, and where it is from.
type Step struct {
	Rule     verdict.Rule
	Action   Action
	At       time.Duration
	Text     string
	Citation cite.Citation
}

// String is the text.
func (s Step) String() string { return s.Text }

// MarshalJSON writes the step as an app shows it.
func (s Step) MarshalJSON() ([]byte, error) { return wire.Marshal(s) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (s *Step) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, s) }

// reprocessWithin is how long jars that did not pass may be processed again.
const reprocessWithin = 24 * time.Hour

func keepGoing(c Clock) Step {
	s := Step{Action: KeepGoing, At: c.From, Citation: restartSource}
	owed := units.AmountOf(c.Owed).Text(units.Both, units.Up)
	switch {
	case !c.Running:
		s.Text = "Bring the canner to pressure. The clock starts from zero when it is there: " + owed +
			" without a break."
	case c.Owed > 0:
		s.Text = "Keep going: the clock runs from minute " + minute(c.From) + ". Another " + owed +
			" if nothing sags, until minute " + minute(c.Done) + "."
	default:
		s.Text = "The time is full. Turn off the heat and let the pressure fall by itself."
		s.Citation = coolSource
	}
	return s
}

// minute prints a moment as minutes and seconds of the record, a started second counted whole: "63", "63:20".
func minute(d time.Duration) string {
	d = (d + time.Second - 1).Truncate(time.Second)
	text := strconv.FormatInt(int64(d/time.Minute), 10)
	if seconds := int64(d % time.Minute / time.Second); seconds != 0 {
		text += ":" + strconv.FormatInt(100+seconds, 10)[1:]
	}
	return text
}

var (
	startAgain = Step{Action: StartAgain, Citation: restartSource,
		Text: "This run cannot be mended. Turn off the heat, let the pressure fall by itself, and begin again: heat, vent in " +
			"full, hold the full time."}
	putRight = Step{Action: PutRight, Citation: usualCaution,
		Text: "As it stands this run would not be judged met: something is missing or contradicts the rest. Hold the pressure, " +
			"put right what the findings name, or let it cool by itself and begin again."}
	wait = Step{Action: Wait, Citation: coolSource,
		Text: "Let the pressure fall by itself: no water, no opened vent. Then take off the weight, wait 10 minutes, take off " +
			"the lid. Write down each moment."}
	keep = Step{Action: Keep, Citation: sealSource,
		Text: "Let the jars cool 12 to 24 hours, do not tighten the bands, then check every seal before storing."}
)

// next returns what to do now.
func (j *judgement[T]) next(r verdict.Report) []Step {
	switch v := r.Verdict; {
	case !j.over && v == verdict.NotMet:
		return []Step{startAgain}
	case !j.over && j.clock.Running && j.clock.Owed == 0 && !soFarMet(r.Findings):
		return []Step{putRight}
	case !j.over:
		return []Step{keepGoing(j.clock)}
	case v.Passes():
		return []Step{keep}
	case v == verdict.CannotTell && j.pending():
		return []Step{wait}
	}
	return salvage(&j.run, min(j.walk.Last.At, j.to))
}

// soFarMet reports whether nothing was found that would keep the run from being met when the heat is turned off and
// the rest is done without fault.
func soFarMet(findings []verdict.Finding) bool {
	for i := range findings {
		if !findings[i].Verdict.Passes() {
			return false
		}
	}
	return true
}

// pending reports whether all that is missing are the moments of a cooling that still goes on.
func (j *judgement[T]) pending() bool {
	if j.run.Marks.LidOff.Given || !j.run.Marks.HeatOff.Given {
		return false
	}
	for i := range j.findings {
		f := &j.findings[i]
		if !f.Verdict.Passes() && (f.Kind != verdict.Missing || f.Rule != RuleCooling && f.Rule != RuleWait) {
			return false
		}
	}
	return true
}

// stepsAfter are, when the run is over, one answer to all that does not pass.
func (r *Report) stepsAfter() {
	r.Steps = nil
	for i := range r.Findings {
		f := &r.Findings[i]
		if _, said := r.StepFor(f.Rule); said || f.Verdict.Passes() {
			continue
		}
		s := r.Next[0]
		s.Rule = f.Rule
		r.Steps = append(r.Steps, s)
	}
}

// salvage is what can be done with jars that the record does not vouch for. The print has the 24 hours for jars that
// did not seal; jars whose process is in doubt are held to them here.
func salvage(run *Run, ended time.Duration) []Step {
	until := ended + reprocessWithin
	discard := Step{Action: Discard, At: until, Citation: discardSource,
		Text: "Jars that stood unrefrigerated for 24 hours after the heat are thrown away. Do not taste them."}
	if run.Asked.Given && run.Asked.Value > until {
		return []Step{discard}
	}
	return []Step{
		{Action: Reprocess, At: until, Citation: reprocessSource,
			Text: "Within 24 hours after the heat: open the jars, wipe the rims, put on new lids, and process again by the same " +
				"schedule for the full " + units.Lasting(run.Schedule.Process) + ", vent and all."},
		{Action: Refrigerate, At: until, Citation: refrigerateSource,
			Text: "Or put the jars into the refrigerator at once and eat the fish within several days, or freeze it."},
		discard,
	}
}
