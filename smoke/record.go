package smoke

import (
	"strconv"
	"time"

	"example.org/lakelarder/internal/wire"
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
	Marks  Marks // for Audit
}

// MarshalJSON writes the record in the words that UnmarshalJSON reads.
func (r Record) MarshalJSON() ([]byte, error) { return wire.Marshal(r) }

// UnmarshalJSON reads a record strictly: a name that is no field is refused, and so is one that stands twice.
func (r *Record) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, r) }

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

// extent is what all probes span together.
type extent struct {
	low, high  units.Temperature
	shortest   time.Duration
	longest    series.Stretch
	rise, fall units.TemperatureChange // from one reading to the next
}

// checkCores refuses a record without readings and one that was not of a core, and returns what it spans.
func (r Record) checkCores() (all extent, err error) {
	if len(r.Cores) == 0 {
		return all, ProbeError{Err: series.ErrEmpty}
	}
	if len(r.Cores) > mostProbes {
		return all, units.RangeError{What: "probes", Got: strconv.Itoa(len(r.Cores)), High: strconv.Itoa(mostProbes)}
	}
	for i, core := range r.Cores {
		e, ok := core.Extent()
		switch {
		case !ok:
			return all, ProbeError{Probe: i, Err: series.ErrEmpty}
		case e.High.Above(boiling):
			highest, _ := core.Max()
			return all, ProbeError{Probe: i, At: highest.At, Err: inTheAir(highest.Value)}
		case e.Low.Below(coldestCore):
			lowest, _ := core.Min()
			return all, ProbeError{Probe: i, At: lowest.At, Err: loose(lowest.Value)}
		}
		all.add(e, i == 0)
	}
	return all, nil
}

func (x *extent) add(e series.Extent[units.Temperature], first bool) {
	if first || e.Low.Below(x.low) {
		x.low = e.Low
	}
	if first || e.High.Above(x.high) {
		x.high = e.High
	}
	if first || e.Shortest > 0 && e.Shortest < x.shortest || x.shortest == 0 {
		x.shortest = e.Shortest
	}
	if e.Longest.Length() > x.longest.Length() {
		x.longest = e.Longest
	}
	rise, _ := units.As[units.TemperatureChange](e.Rise)
	fall, _ := units.As[units.TemperatureChange](e.Fall)
	x.rise, x.fall = max(x.rise, rise), max(x.fall, fall)
}

// beginsWarm reports whether a probe begins warmer than any raw fish, where the piece does not say how warm it was.
func (r Record) beginsWarm() bool {
	for _, core := range r.Cores {
		if first, _ := core.First(); !r.Piece.Given && first.Value.Celsius() > warmRoom {
			return true
		}
	}
	return false
}

// inTheAir is the fault of a core that is hotter than one can be.
func inTheAir(core units.Temperature) error {
	return units.RangeError{What: "core temperature", Got: inBoth(core), High: inBoth(boiling) + ", where a moist core boils: the probe is in the air"}
}

// coldestCore is colder than fish gets by cooling: a probe that shows -127 °C has come loose, and is neither cold fish nor raw.
var coldestCore = units.Celsius(-40)

// loose is the fault of a core that is colder than fish gets.
func loose(core units.Temperature) error {
	return units.RangeError{
		What: "core temperature", Got: inBoth(core), Low: inBoth(coldestCore) + ", below which the probe has come loose",
	}
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
