package brine

import (
	"time"

	"example.org/lakelarder/brine/solution"
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Estimate is a computed water phase salt as the range it is: the published range of the diffusivity carried
// through. Likely is not a measurement either.
type Estimate struct {
	units.Range[units.Ratio]
	Citation cite.Citation
	Cautions []cite.Caution
}

// MarshalJSON writes the estimate as an app shows it.
func (e Estimate) MarshalJSON() ([]byte, error) { return wire.Marshal(e) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (e *Estimate) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, e) }

var diffusionCitation = cite.Citation{Where: "slab diffusion series, constant surface strength", Basis: cite.Computed}

// WaterPhaseSaltRange returns the average water phase salt of a piece after a time in salt. Surface is the strength
// at its surface, salt by mass of brine: solution.Saturation under dry salt. Most is the water phase salt with all
// the salt of the cure in it, what Equilibrium or BrineEnd gives, and the range never goes above it. Both 0 % to
// solution.Saturation, and the range of diffusivities must rise: otherwise a RangeError or a
// solution.SaturatedError. It counts salt to water, E r/(1 + E r), as if the surface stayed strong until the salt
// is used up: the middle of the piece has less.
func (s Slab) WaterPhaseSaltRange(surface, most units.Ratio, d Diffusivities, t time.Duration) (Estimate, error) {
	share, err := s.waterPhaseSalt(surface, most, d, t)
	if err != nil {
		return Estimate{}, err
	}
	return Estimate{Range: share, Citation: diffusionCitation, Cautions: estimateCautions()}, nil
}

// waterPhaseSalt carries the three diffusivities through.
func (s Slab) waterPhaseSalt(
	surface, most units.Ratio, d Diffusivities, t time.Duration,
) (units.Range[units.Ratio], error) {
	var r units.Range[units.Ratio]
	if err := solution.CheckShare("strength at the surface", surface); err != nil {
		return r, err
	}
	if err := solution.CheckShare("most water phase salt", most); err != nil {
		return r, err
	}
	if err := units.Check("likely diffusivity", d.Likely, d.Low, d.High); err != nil {
		return r, err
	}
	strong, err := perWater(surface)
	if err != nil {
		return r, err
	}
	for _, end := range [...]struct {
		to *units.Ratio
		d  units.Diffusivity
	}{{&r.Low, d.Low}, {&r.Likely, d.Likely}, {&r.High, d.High}} {
		taken, err := s.Uptake(end.d, t)
		if err != nil {
			return units.Range[units.Ratio]{}, err
		}
		salt, err := units.Prorate(strong, taken, units.One)
		if err != nil {
			return units.Range[units.Ratio]{}, err
		}
		share, err := units.RatioOf(salt, units.One+salt)
		if err != nil {
			return units.Range[units.Ratio]{}, err
		}
		*end.to = min(share, most)
	}
	return r, nil
}

// perWater is salt to water of a share.
func perWater(share units.Ratio) (units.Ratio, error) { return units.RatioOf(share, units.One-share) }
