package canner

import (
	"strconv"
	"time"

	"example.org/lakelarder/units/cite"
)

// Action is a thing to do. The zero Action is nothing.
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
)

// String is the action in words: "keep going".
func (a Action) String() string {
	names := [...]string{"nothing", "keep going", "start again", "wait", "keep", "reprocess", "refrigerate", "discard"}
	if int(a) < len(names) {
		return names[a]
	}
	return "Action(" + strconv.Itoa(int(a)) + ")"
}

// Step is what to do: the action, its moment on the record's clock, in words, and where it is from.
type Step struct {
	Action   Action
	At       time.Duration
	Text     string
	Citation cite.Citation
}

// String is the text.
func (s Step) String() string { return s.Text }

// reprocessWithin is how long jars that did not pass may be processed again.
const reprocessWithin = 24 * time.Hour

func keepGoing(c Clock) Step {
	s := Step{Action: KeepGoing, At: c.From, Citation: restartSource}
	switch {
	case !c.Running:
		s.Text = "Bring the canner to pressure. The clock starts from zero when it is there: " + minutes(c.Owed) + " without a break."
	case c.Owed > 0:
		s.Text = "Keep going: the clock runs from minute " + minute(c.From) + ". Another " + minutes(c.Owed) + " if nothing sags, until minute " + minute(c.Done) + "."
	default:
		s.Text = "The time is full. Turn off the heat and let the pressure fall by itself."
		s.Citation = coolSource
	}
	return s
}

var (
	startAgain = Step{Action: StartAgain, Citation: restartSource,
		Text: "This run cannot be mended. Turn off the heat, let the pressure fall by itself, and begin again: heat, vent in full, hold the full time."}
	wait = Step{Action: Wait, Citation: coolSource,
		Text: "Let the pressure fall by itself: no water, no opened vent. Then take off the weight, wait 10 minutes, take off the lid. Write down each moment."}
	keep = Step{Action: Keep, Citation: sealSource,
		Text: "Let the jars cool 12 to 24 hours, do not tighten the bands, then check every seal before storing."}
)

// salvage is what can be done with jars that the record does not vouch for. The print has the 24 hours for jars that did
// not seal; jars whose process is in doubt are held to them here.
func salvage(run Run, ended time.Duration) []Step {
	until := ended + reprocessWithin
	discard := Step{Action: Discard, At: until, Citation: discardSource,
		Text: "Jars that stood unrefrigerated for 24 hours after the heat are thrown away. Do not taste them."}
	if run.Asked.Given && run.Asked.Value > until {
		return []Step{discard}
	}
	return []Step{
		{Action: Reprocess, At: until, Citation: reprocessSource, Text: "Within 24 hours after the heat: open the jars, wipe the rims, put on new lids, " +
			"and process again by the same schedule for the full " + minutes(run.Schedule.Process) + ", vent and all."},
		{Action: Refrigerate, At: until, Citation: refrigerateSource,
			Text: "Or put the jars into the refrigerator at once and eat the fish within several days, or freeze it."},
		discard,
	}
}

func guide1(where string) cite.Citation {
	return cite.Citation{Source: cite.USDAGuide1Rev2015, Where: where, Basis: cite.Read}
}

var (
	restartSource     = guide1("Using pressure canners, step 5, p. 1-22")
	coolSource        = guide1("Using pressure canners, steps 6 and 7, p. 1-22")
	sealSource        = cite.Citation{Source: cite.MSUEPreservingFoodSafely1997, Where: "items 01600950 and 01600951", Basis: cite.Read}
	reprocessSource   = guide1("Reprocessing unsealed jars, p. 1-26")
	refrigerateSource = cite.Citation{Source: cite.MSUEPreservingFoodSafely1997, Where: "item 01600593", Basis: cite.Read}
	discardSource     = cite.Citation{Source: cite.AskExtension889422, Where: "unsealed jars after 24 hours", Basis: cite.Read}
)
