package brine

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Estimate is a computed share as the range it is: the published range of the diffusivity carried through. Likely is not a measurement either.
type Estimate struct {
	Low, Likely, High units.Ratio
	Citation          cite.Citation
	Cautions          []cite.Caution
}

var diffusionCitation = cite.Citation{Where: "slab diffusion series, constant surface strength", Basis: cite.Computed}

// EstimateCautions are shown beside every computed salt figure: it is an estimate, and without a laboratory the fish stays cold and is eaten
// within days, or is frozen. The slice is the caller's own.
func EstimateCautions() []cite.Caution { return append([]cite.Caution(nil), estimateCautions[:]...) }

var estimateCautions = [...]cite.Caution{
	{
		Text:     "a computed salt content is an estimate, whatever the number: without a laboratory keep the fish at or below 38 °F (3.3 °C)",
		Citation: cite.Citation{Source: cite.MichiganRegulation569, Where: "R 285.569.8(1); also Maine ch. 359 s. 3(A)", Basis: cite.Read},
	},
	{
		Text:     "eat home-smoked fish within 14 days, which is printed for storage below 36 °F (2.2 °C), or freeze it",
		Citation: cite.Citation{Source: cite.MSUEPreservingFoodSafely1997, Where: "items 01600579 and 01600580", Basis: cite.Read},
	},
	measureIt,
}

// UptakeRange is Uptake over a range of diffusivities. The range must rise: otherwise a RangeError.
func (s Slab) UptakeRange(d Diffusivities, t time.Duration) (Estimate, error) {
	return s.over(d, t, func(taken units.Ratio) (units.Ratio, error) { return taken, nil })
}

// LeftAfterSoak returns the share of its salt that a piece keeps in fresh water that stays fresh: the same physics in reverse,
// 1 − uptake. Low is the least salt left, from the greatest diffusivity. A quick rinse is not a soak: it takes the salt on the surface.
func (s Slab) LeftAfterSoak(d Diffusivities, t time.Duration) (Estimate, error) {
	e, err := s.over(d, t, func(taken units.Ratio) (units.Ratio, error) { return units.One - taken, nil })
	e.Low, e.High = e.High, e.Low
	return e, err
}

// WaterPhaseSaltRange returns the average water phase salt of a piece after a time in salt. Surface is the strength at its surface, salt by
// mass of brine: Saturation under dry salt. Most is the water phase salt that it could come to if all the salt of the cure went
// in, what Equilibrium gives; with salt in excess it is the surface again. Both 0 % to Saturation: otherwise a RangeError or a
// SaturatedError. It counts salt to water, E r/(1 + E r), up to Most, as if the surface stayed strong until the salt is used up: the
// middle of the piece has less.
func (s Slab) WaterPhaseSaltRange(surface, most units.Ratio, d Diffusivities, t time.Duration) (Estimate, error) {
	for _, share := range []units.Ratio{surface, most} {
		if err := checkShare(share); err != nil {
			return Estimate{}, err
		}
	}
	return s.over(d, t, func(taken units.Ratio) (units.Ratio, error) {
		strong, err := units.RatioOf(surface, units.One-surface)
		if err != nil {
			return 0, err
		}
		perWater, err := units.Prorate(strong, taken, units.One)
		if err != nil {
			return 0, err
		}
		share, err := units.RatioOf(perWater, units.One+perWater)
		return min(share, most), err
	})
}

// over carries the three diffusivities through to a figure of the uptake.
func (s Slab) over(d Diffusivities, t time.Duration, figure func(units.Ratio) (units.Ratio, error)) (Estimate, error) {
	if d.Low > d.Likely || d.Likely > d.High {
		return Estimate{}, units.RangeError{What: "likely diffusivity", Got: d.Likely.String(), Low: d.Low.String(), High: d.High.String()}
	}
	e := Estimate{Citation: diffusionCitation, Cautions: EstimateCautions()}
	for _, end := range []struct {
		to *units.Ratio
		d  units.Diffusivity
	}{{&e.Low, d.Low}, {&e.Likely, d.Likely}, {&e.High, d.High}} {
		taken, err := s.Uptake(end.d, t)
		if err != nil {
			return Estimate{}, err
		}
		if *end.to, err = figure(taken); err != nil {
			return Estimate{}, err
		}
	}
	return e, nil
}
