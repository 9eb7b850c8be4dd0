package lethality

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
)

// Result is what one run did to the centre of one jar.
type Result struct {
	Medium, Centre series.Series[units.Temperature] // a reading of the centre every two seconds or so
	SteamOff       time.Duration                    // when the heat went off
	AtSteamOff     units.Temperature                // of the centre then
	Peak           series.Reading[units.Temperature]
	F              Parts // ComeUp and Hold arrived before the heat went off, Cooling after it
	Reference      Reference
	Cautions       []cite.Caution
	Citation       cite.Citation
}

// BeforeSteamOff returns the F that had arrived when the heat went off.
func (r Result) BeforeSteamOff() time.Duration { return r.F.ComeUp + r.F.Hold }

// Follow returns the centre of a jar through a run and until it has cooled (twice fh after the medium has), with its
// lethality against a reference. For a given solid the F is good to a part in ten thousand; what the solid leaves
// out, and the diffusivity, are worth a factor of two. It explains a published process and never shortens or replaces
// one. Ranges as for Factors, Medium and F; otherwise a RangeError.
func (c Cylinder) Follow(run Run, r Reference) (Result, error) {
	if err := r.check(); err != nil {
		return Result{}, err
	}
	factors, err := c.Factors(Point{})
	if err != nil {
		return Result{}, err
	}
	medium, err := run.Medium(2 * factors.Fh)
	if err != nil {
		return Result{}, err
	}
	if err := c.checkRun(run.Start, medium, Point{}); err != nil {
		return Result{}, err
	}
	// So close that chords of the curve cost F less than a part in a million, and with a reading at steam off. What
	// outlives ten steps alone is carried: in slow cooling that is right to 0.001 K, in the quickest to 0.2 K for
	// some seconds.
	step := max(c.fourier(0.0002), medium.Span()/20_000)
	if step < run.SteamOff() {
		step = run.SteamOff() / (run.SteamOff()/step + 1)
	}
	centre, err := c.warm(run.Start, medium, Point{}, step, 10*step)
	if err != nil {
		return Result{}, err
	}
	out := Result{Medium: medium, Centre: centre, SteamOff: run.SteamOff(), Reference: r, Cautions: c.cautions()}
	out.Citation = cite.Citation{Where: "conduction into a finite cylinder, Duhamel's integral over the double series", Basis: cite.Computed}
	if out.F, err = Divide(centre, r, series.Stretch{From: run.ComeUp, To: run.SteamOff()}); err != nil {
		return Result{}, err
	}
	out.AtSteamOff, err = centre.ValueAt(run.SteamOff())
	out.Peak, _ = centre.Max()
	return out, err
}

// Band is the same run for what heats slowest and what heats quickest of all that may be true.
type Band struct {
	Low, High Result
}

// FollowBand returns Follow for two diffusivities: the answer as a band, since a food's diffusivity is not known
// better. The cylinder's own is not used; low must not be above high. FollowBetween takes glass and film in as well.
func (c Cylinder) FollowBand(low, high units.Diffusivity, run Run, r Reference) (Band, error) {
	if err := units.Check("low diffusivity", low, 1, high); err != nil {
		return Band{}, err
	}
	slow, quick := c, c
	slow.Diffusivity, quick.Diffusivity = low, high
	return FollowBetween(slow, quick, run, r)
}
