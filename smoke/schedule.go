package smoke

import (
	"fmt"
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/smoke/moistair"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Schedule is a smoking as planned: the batch, its stages in turn, the air outside, which also says how high the place lies, the film in the
// smoker and the core limit to reach.
type Schedule struct {
	Batch   Batch
	Stages  []Stage
	Outside moistair.Air
	Film    moistair.Film
	Limit   CoreLimit
}

// MarshalJSON writes the schedule in the words that UnmarshalJSON reads.
func (s Schedule) MarshalJSON() ([]byte, error) { return wire.Marshal(s) }

// UnmarshalJSON reads a schedule strictly: a name that is no field is refused, and so is one that stands twice.
func (s *Schedule) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, s) }

// Plan is what a schedule comes to. Fits says that even in the slowest case of the model the core is at the limit or above for the whole hold, without a
// break and looked at every minute, before the cooking ends. OverDried says that by the first smoke the surface is stated to have dried, or that the
// batch may have lost more than the 3 % of a pellicle. Losses are of the whole batch, over the range of the film; cooling and what drips are not in them.
type Plan struct {
	Timetable   []Entry
	Total       time.Duration
	Phases      []Phase // what the surface sees, for CoreCurve
	Core        Warming
	Fits        bool
	BeforeSmoke units.Range[units.Mass] // lost when the first smoke begins
	OverDried   bool
	Loss        units.Range[units.Mass]
	Final       units.Range[units.Mass] // Low is after the high loss
	Cautions    []cite.Caution
}

// MarshalJSON writes the plan as an app shows it.
func (p Plan) MarshalJSON() ([]byte, error) { return wire.Marshal(p) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (p *Plan) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, p) }

// StageError says which stage of a schedule, counted from zero, is refused and why.
type StageError struct {
	Stage int
	Kind  StageKind
	Err   error
}

// Error names the stage as a person counts, and the fault.
func (e StageError) Error() string { return fmt.Sprintf("stage %d (%v): %v", e.Stage+1, e.Kind, e.Err) }

// Unwrap returns the fault.
func (e StageError) Unwrap() error { return e.Err }

// Plan works the schedule through. The fillet warms by WarmCore's model, its surface at the wet bulb while it is wet and at the air once dry. It loses
// water at the constant rate of Evaporate while wet, and then ever more slowly, in proportion to the water left, at the slowest to the fastest constant
// of FallingRates but no faster than from a wet surface; air as wet as the surface dries nothing. Stages follow in order, with at least one Cook and
// nothing after Cool; in all 48 h at most. A Cook stage that cannot bring the surface to the limit is a CeilingError; any stage that is refused comes as a
// StageError around the reason. It plans and never proves: the probe decides.
func (s Schedule) Plan() (Plan, error) {
	if err := s.check(); err != nil {
		return Plan{}, err
	}
	var p Plan
	d := s.Batch.drying()
	firstSmoke, cooked := s.first(Smoke), 0
	for i, stage := range s.Stages {
		air, err := s.airOf(stage)
		var wetBulb units.Temperature
		if err == nil {
			wetBulb, err = air.WetBulb()
		}
		if err == nil {
			err = s.reach(stage, air, wetBulb)
		}
		if err == nil && stage.Kind != Cool {
			err = d.through(air, s.Film, s.Batch, stage)
		}
		if err != nil {
			return Plan{}, StageError{Stage: i, Kind: stage.Kind, Err: err}
		}
		if i == firstSmoke-1 {
			p.BeforeSmoke, _ = d.masses(s.Batch.Mass)
		}
		p.Timetable = append(p.Timetable, stage.entries(i, p.Total)...)
		p.Phases = append(p.Phases, stage.phases(wetBulb)...)
		p.Total += stage.For
		if stage.Kind == Cook {
			cooked = len(p.Phases)
		}
	}
	p.Timetable = append(p.Timetable, Entry{At: p.Total, Event: End, Stage: len(s.Stages) - 1})
	var err error
	if p.Core, err = WarmCore(s.Batch.Slab, s.Film, s.Limit.AtLeast, p.Phases...); err != nil {
		return Plan{}, err
	}
	slowest := s.Batch.Slab.cases(s.Film)[0]
	p.Fits = slowest.holds(s.Limit.AtLeast.Celsius(), s.Limit.Hold, p.Phases[:cooked])
	most, err := mostPellicle.Of(s.Batch.Mass)
	if err != nil {
		return Plan{}, err
	}
	p.OverDried = p.BeforeSmoke.High > most || s.sealed(firstSmoke)
	p.Loss, p.Final = d.masses(s.Batch.Mass)
	warm, _, reached := slowest.warm(warmSoon.Celsius(), p.Phases)
	p.Cautions = p.cautions(s.Film, reached && warm <= chamberRules[ReachIn6-1].Within)
	return p, nil
}

// warmSoon is what REACH-6-8 is about, whatever the limit of the schedule.
var warmSoon = units.Fahrenheit(160)

// first is the place of the first stage of a kind, -1 when there is none.
func (s Schedule) first(kind StageKind) int {
	for i, stage := range s.Stages {
		if stage.Kind == kind {
			return i
		}
	}
	return -1
}

// sealed reports whether the surface is stated to have dried by the start of the first smoke.
func (s Schedule) sealed(firstSmoke int) bool {
	if firstSmoke < 0 {
		return false
	}
	dryAfter := s.Stages[firstSmoke].DryAfter
	if dryAfter.Given && dryAfter.Value == 0 {
		return true
	}
	return firstSmoke > 0 && s.Stages[firstSmoke-1].wet() < s.Stages[firstSmoke-1].For
}

func (s Schedule) check() error {
	if err := s.Limit.check(); err != nil {
		return err
	}
	if !s.Outside.IsSet() {
		return units.UnsetError{What: "air outside"}
	}
	if err := s.Batch.check(); err != nil {
		return err
	}
	if err := s.Film.Check(); err != nil {
		return err
	}
	var last StageKind // but for a glaze, which may come between
	total := time.Duration(0)
	for i, stage := range s.Stages {
		err := stage.check()
		if err == nil && (last == Cool || stage.Kind < last) {
			err = units.RangeError{What: "order of stages", Got: stage.Kind.String() + " after " + last.String(), Low: "dry, smoke, cook, cool with glaze where it is wanted"}
		}
		if stage.Kind != Glaze {
			last = stage.Kind
		}
		if total += stage.For; err == nil {
			err = units.CheckDuration("whole schedule", total, time.Minute, longestSmoking)
		}
		if err != nil {
			return StageError{Stage: i, Kind: stage.Kind, Err: err}
		}
	}
	if s.first(Cook) < 0 {
		return units.UnsetError{What: "a stage that cooks the fish to its core"}
	}
	return nil
}

// airOf is the air of a stage: as measured, or the outside air heated, with the water that is in it.
func (s Schedule) airOf(stage Stage) (moistair.Air, error) {
	switch {
	case stage.Humidity.Given:
		return moistair.ByRelativeHumidity(stage.Air, stage.Humidity.Value, s.Outside.Pressure())
	case stage.Kind == Cool: // its water does not matter
		return moistair.ByHumidityRatio(stage.Air, 0, s.Outside.Pressure())
	}
	return s.Outside.Heated(stage.Air)
}
