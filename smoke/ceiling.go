package smoke

import (
	"example.org/lakelarder/smoke/moistair"
	"example.org/lakelarder/units"
)

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
	s := "a wet surface in this air of " + inBoth(e.Air) + " does not get above its wet bulb, "
	if e.Dry {
		s = "even a dry surface does not get above this air, "
	}
	ceiling, limit := units.Apart(units.Exactly(e.Ceiling), units.AtLeast(e.Limit), units.Both)
	s += ceiling + "; the core must reach " + limit
	if e.Humidity > 0 {
		return s + ": a relative humidity of " + units.Text(units.CeilTo(e.Humidity, units.PerMille), units.Percent, 1) + " would allow it, or a surface that has dried, or an oven"
	}
	return s + ": no humidity helps, the air must be hotter"
}

// Is reports whether target is units.ErrRange.
func (e CeilingError) Is(target error) bool { return target == units.ErrRange }

// reach refuses a Cook stage under whose ceiling the limit does not lie.
func (s Schedule) reach(stage Stage, air moistair.Air, wetBulb units.Temperature) error {
	limit := s.Limit.AtLeast
	if stage.Kind != Cook || wetBulb.Above(limit) {
		return nil
	}
	e := CeilingError{Limit: limit, Ceiling: wetBulb, Air: stage.Air}
	if stage.wet() < stage.For {
		if stage.Air.Above(limit) {
			return nil
		}
		e.Ceiling, e.Dry = stage.Air, true
		return e
	}
	if !stage.Air.Above(limit) {
		return e
	}
	if humid, err := moistair.ByWetBulb(stage.Air, limit, air.Pressure()); err == nil {
		e.Humidity, _ = humid.RelativeHumidity()
	}
	return e
}
