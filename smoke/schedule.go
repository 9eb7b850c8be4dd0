package smoke

import (
	"fmt"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Batch is the fish of one smoking: as the heat sees its thickest fillet, and as the drying sees all of it.
type Batch struct {
	Slab          Slab
	Mass          units.Mass
	Area          units.Area  // wet surface of all of it
	Water         units.Ratio // share of the mass
	WaterActivity units.Ratio // of the surface: 1 unsalted, about 0.98 at a water phase salt of 3.5 %
}

// Schedule is a smoking as planned: the batch, its stages in turn, the air outside, which also says how high the place lies, the film in the
// smoker and the core limit to reach.
type Schedule struct {
	Batch   Batch
	Stages  []Stage
	Outside Air
	Film    Film
	Limit   CoreLimit
}

// Event is what happens at a time of the timetable.
type Event uint8

// The events.
const (
	Begin Event = iota + 1 // of a stage
	Baste
	End // of the schedule
)

// Entry is one line of the timetable. At counts from the start of the first stage; Stage counts from zero.
type Entry struct {
	At    time.Duration
	Event Event
	Stage int
}

// Plan is what a schedule comes to. Fits says that even the slowest case of the model has the limit and its hold before the cooking ends. Loss and
// Final are of the whole batch, over the range of the film; cooling and what drips are not in them.
type Plan struct {
	Timetable []Entry
	Total     time.Duration
	Phases    []Phase // what the surface sees, for CoreCurve
	Core      Warming
	Fits      bool
	Loss      Masses
	Final     Masses // Low is after the high loss
	Cautions  []cite.Caution
}

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

// CeilingError says that no time in this air brings the surface, and so the core, to the limit. Humidity is the least relative humidity at
// the same dry bulb whose wet bulb is the limit; it is zero where the air itself is too cold or no humidity does.
type CeilingError struct {
	Limit    units.Temperature
	Ceiling  units.Temperature // the wet bulb, or the air for a dry surface
	Air      units.Temperature
	Dry      bool
	Humidity units.Ratio
}

// Error says what the ceiling is and which humidity would do.
func (e CeilingError) Error() string {
	s := "a wet surface in this air of " + bothScales(e.Air) + " does not get above its wet bulb, "
	if e.Dry {
		s = "even a dry surface does not get above this air, "
	}
	s += bothScales(e.Ceiling) + "; the core must reach " + bothScales(e.Limit)
	if e.Humidity > 0 {
		return s + ": a relative humidity of " + units.Text(units.CeilTo(e.Humidity, units.PerMille), units.Percent, 1) + " would allow it, or a surface that has dried, or an oven"
	}
	return s + ": no humidity helps, the air must be hotter"
}

// Is reports whether target is units.ErrRange.
func (e CeilingError) Is(target error) bool { return target == units.ErrRange }

// Plan works the schedule through. The fillet warms by WarmCore's model, its surface at the wet bulb while it is wet and at the air once dry. It loses
// water at the constant rate of Evaporate while wet, and then ever more slowly, in proportion to the water left, at the slowest to the fastest constant
// of FallingRates but no faster than from a wet surface; air as wet as the surface dries nothing. Stages follow in order, with at least one Cook, no two Cool, and nothing after Cool; in all 48 h at most. A Cook stage that cannot bring the surface to the
// limit is a CeilingError; any stage that is refused comes as a StageError around the reason. It plans and never proves: the probe decides.
func (s Schedule) Plan() (Plan, error) {
	if err := s.check(); err != nil {
		return Plan{}, err
	}
	p := Plan{Cautions: planCautions(s.Film)}
	d := s.Batch.drying()
	cookEnds := time.Duration(0)
	for i, stage := range s.Stages {
		air, err := s.airOf(stage)
		if err == nil {
			err = s.reach(stage, air)
		}
		if err == nil && stage.Kind != Cool {
			err = d.through(air, s.Film, s.Batch, stage)
		}
		if err != nil {
			return Plan{}, StageError{Stage: i, Kind: stage.Kind, Err: err}
		}
		p.Timetable = append(p.Timetable, stage.entries(i, p.Total)...)
		p.Phases = append(p.Phases, stage.phases(air)...)
		p.Total += stage.For
		if stage.Kind == Cook {
			cookEnds = p.Total
		}
	}
	p.Timetable = append(p.Timetable, Entry{At: p.Total, Event: End, Stage: len(s.Stages) - 1})
	var err error
	if p.Core, err = WarmCore(s.Batch.Slab, s.Film, s.Limit.AtLeast, p.Phases...); err != nil {
		return Plan{}, err
	}
	p.Fits = p.Core.Reached && p.Core.ToLimit.High+s.Limit.Hold <= cookEnds
	if !p.Fits {
		p.Cautions = append(p.Cautions, cite.Caution{
			Text: "by the model the slowest fillet is not through its hold when the cooking ends: plan a hotter or longer stage, or the oven within 2 h", Citation: finishInOven.Citation,
		})
	}
	p.Loss, p.Final = d.masses(s.Batch.Mass)
	return p, nil
}

func (s Schedule) check() error {
	if err := s.Limit.check(); err != nil {
		return err
	}
	if err := s.Outside.check(); err != nil {
		return err
	}
	if err := s.Batch.check(); err != nil {
		return err
	}
	if err := s.Film.check(); err != nil {
		return err
	}
	cooks, total := 0, time.Duration(0)
	for i, stage := range s.Stages {
		err := stage.check()
		if err == nil && i > 0 && (s.Stages[i-1].Kind == Cool || stage.Kind < s.Stages[i-1].Kind && s.Stages[i-1].Kind != Glaze) {
			err = units.RangeError{What: "order of stages", Got: stage.Kind.String() + " after " + s.Stages[i-1].Kind.String(), Low: "dry, smoke, cook, cool with glaze where it is wanted"}
		}
		if total += stage.For; err == nil {
			err = units.CheckDuration("whole schedule", total, time.Minute, longestSmoking)
		}
		if err != nil {
			return StageError{Stage: i, Kind: stage.Kind, Err: err}
		}
		if stage.Kind == Cook {
			cooks++
		}
	}
	if cooks == 0 {
		return units.RangeError{What: "stages", Got: "none that cooks", Low: "one cook stage: hot-smoked fish is cooked to its core"}
	}
	return nil
}

// airOf is the air of a stage: as measured, or the outside air heated, with the water that is in it.
func (s Schedule) airOf(stage Stage) (Air, error) {
	switch {
	case stage.Humidity.Given:
		return AirByRelativeHumidity(stage.Air, stage.Humidity.Value, s.Outside.pressure)
	case stage.Kind == Cool: // its water does not matter
		return AirByHumidityRatio(stage.Air, 0, s.Outside.pressure)
	}
	return s.Outside.Heated(stage.Air)
}

// reach refuses a Cook stage under whose ceiling the limit does not lie.
func (s Schedule) reach(stage Stage, air Air) error {
	limit := s.Limit.AtLeast
	wetBulb, err := air.WetBulb()
	if err != nil || stage.Kind != Cook || wetBulb.Above(limit) {
		return err
	}
	e := CeilingError{Limit: limit, Ceiling: wetBulb, Air: stage.Air}
	if stage.wet() < stage.For {
		if stage.Air.Above(limit) {
			return nil
		}
		e.Ceiling, e.Dry = stage.Air, true
		return e
	}
	if humid, err := AirByWetBulb(stage.Air, limit, air.pressure); err == nil {
		e.Humidity, _ = humid.RelativeHumidity()
	}
	return e
}

// String is what to do in one word: "baste".
func (e Event) String() string {
	if e >= Begin && e <= End {
		return [...]string{Begin: "begin", Baste: "baste", End: "end"}[e]
	}
	return "unset event"
}
