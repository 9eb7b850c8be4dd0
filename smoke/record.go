package smoke

import (
	"strconv"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// Record is what was recorded of the fish on one clock. Cores has one series a probe; MaxGap is the longest time between
// two readings in which the core is believed to have run in a straight line. The rest may be left out, and makes the
// judge stricter where it is stated: Air is that of the smoker or the oven, Piece the thinnest fish with a probe in it, of
// the temperature Start when the record begins, Site where the worst of the probes sits.
type Record struct {
	Cores  []series.Series[units.Temperature]
	MaxGap time.Duration
	Air    series.Series[units.Temperature]
	Piece  units.Stated[Slab]
	Site   Site
}

// mostProbes is how many probes are judged together.
const mostProbes = 16

// leastGap is the shortest time between readings that anybody asks for: less is a number without its unit.
const leastGap = time.Second

// check refuses what the record states about itself and cannot be; most is the longest gap that the judge allows.
func (r Record) check(most time.Duration) error {
	if r.MaxGap == 0 {
		return units.UnsetError{What: "longest gap"}
	}
	if err := units.CheckDuration("longest gap", r.MaxGap, leastGap, most); err != nil {
		return err
	}
	if err := sites.CheckIfSet(r.Site); err != nil {
		return err
	}
	if hottest, ok := r.Air.Max(); ok && hottest.Value.Above(hottestMedium) {
		return checkWarmth("air of the smoker", hottest.Value, units.Celsius(-50), hottestMedium)
	}
	if r.Piece.Given {
		return r.Piece.Value.check()
	}
	return nil
}

// checkCores refuses a record without readings and one that was not of a core.
func (r Record) checkCores() error {
	if len(r.Cores) == 0 {
		return ProbeError{Err: series.ErrEmpty}
	}
	if len(r.Cores) > mostProbes {
		return units.RangeError{What: "probes", Got: strconv.Itoa(len(r.Cores)), High: strconv.Itoa(mostProbes)}
	}
	for i, core := range r.Cores {
		highest, ok := core.Max()
		switch {
		case !ok:
			return ProbeError{Probe: i, Err: series.ErrEmpty}
		case highest.Value.Above(boiling):
			return ProbeError{Probe: i, At: highest.At, Err: inTheAir(highest.Value)}
		}
	}
	return nil
}

// inTheAir is the fault of a core that is hotter than one can be.
func inTheAir(core units.Temperature) error {
	return units.RangeError{What: "core temperature", Got: inBoth(core), High: inBoth(boiling) + ", where a moist core boils: the probe is in the air"}
}

// named is what a finding is about: the core or the hold, with its probe where there are several.
func (r Record) named(what string, probe int) string { return probed(what, probe, len(r.Cores)) }

// probed numbers a probe as a person counts, where there are several.
func probed(what string, probe, probes int) string {
	if probes < 2 {
		return what
	}
	return what + ", probe " + strconv.Itoa(probe+1)
}
