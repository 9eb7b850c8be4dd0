package smoke

import (
	"strconv"
	"time"

	"example.org/lakelarder/smoke/moistair"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// RunningHold is a hold in the making, for live probes that are read together: what AuditHold would say of the readings so
// far, one step at a time and without storing them. It is a plain value; Next returns the next one. The zero RunningHold
// takes no reading: start with WatchHold.
type RunningHold struct {
	limit     CoreLimit
	maxGap    time.Duration
	piece     units.Stated[Slab]
	reach     reach
	probes    int
	seen      track // every step
	believed  track // the steps in which every probe showed what a core can be
	envelopes [mostProbes]envelope
	air       airMet
	moved     uint32 // the probes that showed more than one value, one bit each
	unlike    uint32 // the probes that showed something else than the air, one bit each
}

var errNotWatched = units.UnsetError{What: "running hold"}

// WatchHold returns a RunningHold that has seen nothing yet. Limit and MaxGap must be as for AuditHold: otherwise a
// units.RangeError, or a units.UnsetError for what is not stated. The record must have no readings, which come by Next.
func WatchHold(limit CoreLimit, r Record) (RunningHold, error) {
	if err := limit.check(); err != nil {
		return RunningHold{}, err
	}
	if err := r.check(limit.Hold / 2); err != nil {
		return RunningHold{}, err
	}
	if before := len(r.Cores) + r.Air.Len(); before > 0 {
		return RunningHold{}, units.RangeError{What: "records before the watch", Got: strconv.Itoa(before), High: "0"}
	}
	fast := reachOf(r.Piece, moistair.SmokerFilm().Coefficient.High)
	return RunningHold{limit: limit, maxGap: r.MaxGap, piece: r.Piece, reach: fast}, nil
}

// Next returns the hold after one more reading of every probe, in the same order each time. The time must be later than
// the one before, every core set and of -40 to 100 °C, and their number that of the step before: otherwise a ProbeError,
// and h as it was, so that a faulty step may be left out; a RunningHold not made by WatchHold is a units.UnsetError. What a
// step shows above the limit counts from where the straight line from the step before crosses it; a gap longer than MaxGap
// begins anew. A step in which a probe shows more than a core can be counts for nothing.
func (h RunningHold) Next(at time.Duration, cores ...units.Temperature) (RunningHold, error) {
	return h.NextInAir(at, units.Temperature{}, cores...)
}

// NextInAir is Next with the air of the smoker or the oven, which no core is hotter than and none follows at once; an air
// that is not set was not recorded in this step. One above 200 °C is a units.RangeError.
func (h RunningHold) NextInAir(at time.Duration, air units.Temperature, cores ...units.Temperature) (RunningHold, error) {
	if err := h.checkStep(at, cores); err != nil {
		return h, err
	}
	if air.IsSet() {
		if air.Above(hottestMedium) {
			return h, checkWarmth("air of the smoker", air, units.Celsius(-50), hottestMedium)
		}
		h.air = airMet{at: at, most: warmest(h.air.most, air)}
	}
	h.probes = len(cores)
	medium, _ := h.air.medium(at, h.maxGap)
	going, doubted := pace{reach: h.reach}, false
	for i, core := range cores {
		if is := h.envelopes[i].step(&going, at, quanta(core), medium); is == tooHot || is == swinging {
			doubted = true
		}
		if h.moved>>i&1 == 0 && h.seen.steps > 0 && core != h.seen.cores[i] {
			h.moved |= 1 << i
			if h.seen.steps > 1 && leaps(h.seen.cores[i], core, h.limit.AtLeast) {
				h.believed = track{}
			}
		}
		if !asTheAir(core, air) {
			h.unlike |= 1 << i
		}
	}
	h.seen = h.seen.next(h.limit.AtLeast, h.maxGap, at, cores)
	if !doubted {
		h.believed = h.believed.next(h.limit.AtLeast, h.maxGap, at, cores)
	}
	return h, nil
}

func (h RunningHold) checkStep(at time.Duration, cores []units.Temperature) error {
	last, steps := h.seen.at, h.seen.steps
	switch {
	case h.maxGap == 0:
		return errNotWatched
	case at < 0:
		return ProbeError{At: at, Err: series.ErrNegative}
	case steps > 0 && at == last:
		return ProbeError{At: at, Err: series.ErrRepeated}
	case steps > 0 && at < last:
		return ProbeError{At: at, Err: series.ErrBackward}
	case len(cores) == 0:
		return ProbeError{At: at, Err: series.ErrEmpty}
	case len(cores) > mostProbes:
		return units.RangeError{What: "probes", Got: strconv.Itoa(len(cores)), High: strconv.Itoa(mostProbes)}
	case steps > 0 && len(cores) != h.probes:
		return ProbeError{Probe: min(len(cores), h.probes), At: at, Err: series.ErrMissing}
	}
	for i, core := range cores {
		if !core.IsSet() {
			return ProbeError{Probe: i, At: at, Err: series.ErrUnset}
		}
		if core.Above(boiling) {
			return ProbeError{Probe: i, At: at, Err: inTheAir(core)}
		}
		if core.Below(coldestCore) {
			return ProbeError{Probe: i, At: at, Err: loose(core)}
		}
	}
	return nil
}

// Met reports whether the hold has been long enough once, in steps that are believed; nothing later takes that back.
func (h RunningHold) Met() bool {
	return h.maxGap > 0 && h.seen.longest.Length() >= h.limit.Hold && h.believed.longest.Length() >= h.limit.Hold && !h.onlyAir() && h.allMoved()
}

// allMoved reports whether every probe has shown more than one value so far.
func (h RunningHold) allMoved() bool { return h.moved == 1<<h.probes-1 }

// onlyAir reports whether a probe has shown nothing but the air so far.
func (h RunningHold) onlyAir() bool { return h.air.most.IsSet() && h.unlike != 1<<h.probes-1 }

// Doubted reports whether a probe shows more than the core can be, in the last step, or has shown nothing but the air so
// far: then it is not in the core, and what it shows does not count.
func (h RunningHold) Doubted() bool {
	return h.seen.steps > 0 && (h.believed.at != h.seen.at || h.onlyAir())
}

// Held returns the longest unbroken hold of all probes so far, and Current the one that still runs.
func (h RunningHold) Held() time.Duration { return h.seen.longest.Length() }

// Current returns how long all probes have been believed to be at or above the limit without a break until the last step
// that is believed; zero when one is below.
func (h RunningHold) Current() time.Duration { return min(h.believed.current(), h.seen.current()) }

// Owed returns how long every probe must still stay at or above the limit from the last step on; zero when Met.
func (h RunningHold) Owed() time.Duration {
	if h.Met() {
		return 0
	}
	return h.limit.owed(h.Current())
}

// Coldest returns the lowest core of the last step, which decides; not set before the first.
func (h RunningHold) Coldest() units.Temperature { return h.seen.coldest() }

// String is what to say to whoever stands by the smoker: "12 minutes still owed". Started minutes count whole.
func (h RunningHold) String() string {
	if h.Met() {
		return "the hold is met"
	}
	owed := int64((h.Owed() + time.Minute - 1) / time.Minute)
	text := strconv.FormatInt(owed, 10) + " minutes still owed"
	if owed == 1 {
		text = "1 minute still owed"
	}
	if h.Doubted() {
		return "a probe is not in the core; " + text
	}
	return text
}
