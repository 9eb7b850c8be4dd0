package yield

import (
	"fmt"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

// Step is one thing done to the fish. Kept is the share of what comes in that goes on; Low and High are
// its spread, both zero when none is known. What does not go on goes to Rest.
type Step struct {
	Name string
	Kept units.Ratio `wire:"required"`
	Low  units.Ratio
	High units.Ratio
	Rest Destination `wire:"required"`
}

// Passed is what a step did: In came to it, Kept went on and Left went to the step's Rest. Kept + Left
// is In to the quantum.
type Passed struct {
	Step Step
	In   units.Mass
	Kept units.Mass
	Left units.Mass
}

// Outcome is a whole mass led through a chain. Kept.Likely is what the last step keeps; with what left at
// all steps it is the Whole to the quantum. Kept.Low and Kept.High are what remains if every step keeps
// its lowest or its highest share, so they lie wider than the fish of a batch together will. Share is the
// product of the shares kept.
type Outcome struct {
	Whole units.Mass
	Steps []Passed
	Kept  units.Range[units.Mass]
	Share units.Ratio
}

// MarshalJSON writes the outcome as an object of its fields.
func (o Outcome) MarshalJSON() ([]byte, error) { return wire.Marshal(o) }

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else is a units.FieldError.
func (o *Outcome) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, o) }

// Left returns the likely mass that went to a destination, all steps together.
func (o Outcome) Left(to Destination) units.Mass {
	var total units.Mass
	for _, p := range o.Steps {
		if p.Step.Rest == to {
			total += p.Left
		}
	}
	return total
}

// Chain leads a whole mass through steps, each keeping its share of what the one before kept: shares
// multiply. Masses kept round down at every step, by less than 1/16 ng. The whole must not be negative;
// every step must keep more than 0 and at most 100 %, with Low ≤ Kept ≤ High where a spread is given; otherwise a
// RangeError that names the step. A Rest that is not set is a units.UnsetError, one that is not known a
// units.UnknownError. No steps keep everything.
func Chain(whole units.Mass, steps ...Step) (Outcome, error) {
	if whole < 0 {
		return Outcome{}, units.RangeError{
			What: "mass of the whole fish", Got: whole.String(), Low: units.Mass(0).String(),
		}
	}
	o := Outcome{Whole: whole, Kept: units.Range[units.Mass]{Low: whole, Likely: whole, High: whole}}
	shares := make([]units.Ratio, 0, len(steps))
	for i, step := range steps {
		if err := step.check(i + 1); err != nil {
			return Outcome{}, err
		}
		passed := Passed{Step: step, In: o.Kept.Likely}
		next, err := step.share().Of(passed.In)
		if err != nil {
			return Outcome{}, err
		}
		passed.Kept, passed.Left = next.Likely, passed.In-next.Likely
		if o.Kept.Low, _, err = Split(o.Kept.Low, step.share().Low); err != nil {
			return Outcome{}, err
		}
		if o.Kept.High, _, err = Split(o.Kept.High, step.share().High); err != nil {
			return Outcome{}, err
		}
		o.Kept.Likely = passed.Kept
		o.Steps = append(o.Steps, passed)
		shares = append(shares, step.Kept)
	}
	share, err := Product(shares...)
	o.Share = share
	return o, err
}

// share is the step's share with the spread filled in.
func (s Step) share() Share {
	if s.Low == 0 && s.High == 0 {
		return Share{Likely: s.Kept, Low: s.Kept, High: s.Kept}
	}
	return Share{Likely: s.Kept, Low: s.Low, High: s.High}
}

func (s Step) check(number int) error {
	spread := s.share()
	what := fmt.Sprintf("share kept by step %d (%s)", number, s.Name)
	switch {
	case s.Kept <= 0 || s.Kept > units.One:
		return units.RangeError{
			What: what, Got: s.Kept.String(), Low: "0 %", LowExclusive: true, High: units.One.String(),
		}
	case spread.Low < 0 || spread.Low > s.Kept:
		return units.RangeError{What: "lowest " + what, Got: s.Low.String(), Low: "0 %", High: s.Kept.String()}
	case spread.High < s.Kept || spread.High > units.One:
		return units.RangeError{
			What: "highest " + what, Got: s.High.String(), Low: s.Kept.String(), High: units.One.String(),
		}
	}
	left := fmt.Sprintf("destination of what step %d (%s) leaves", number, s.Name)
	switch {
	case s.Rest == 0:
		return units.UnsetError{What: left}
	case !destinations.Known(s.Rest):
		return units.UnknownError{What: left, Got: s.Rest.String(), Known: destinations.Words}
	}
	return nil
}
