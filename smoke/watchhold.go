package smoke

import (
	"strconv"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// RunningHold is a hold in the making, for live probes that are read together: what AuditHold would say of the readings so
// far, one step at a time and without storing them. It is a plain value; Next returns the next one. The zero RunningHold
// takes no reading: start with WatchHold.
type RunningHold struct {
	limit   CoreLimit
	maxGap  time.Duration
	at      time.Duration
	probes  int
	cores   [mostProbes]units.Temperature // of the last step
	steps   int
	holding bool
	from    time.Duration // of the current hold
	longest series.Stretch
}

var errNotWatched = units.UnsetError{What: "running hold"}

// WatchHold returns a RunningHold that has seen nothing yet. Limit and MaxGap must be as for AuditHold: otherwise a
// units.RangeError, or a units.UnsetError for what is not stated. The record must have no readings, which come by Next.
func WatchHold(limit CoreLimit, r Record) (RunningHold, error) {
	if err := limit.check(); err != nil {
		return RunningHold{}, err
	}
	if err := r.checkGap(limit.Hold / 2); err != nil {
		return RunningHold{}, err
	}
	if len(r.Cores) > 0 {
		return RunningHold{}, units.RangeError{What: "probes recorded before the watch", Got: strconv.Itoa(len(r.Cores)), High: "0"}
	}
	return RunningHold{limit: limit, maxGap: r.MaxGap}, nil
}

// Next returns the hold after one more reading of every probe, in the same order each time. The time must be later than the one before, every
// core set and at most 100 °C, and their number that of the step before: otherwise a ProbeError, and h as it was, so that a faulty step
// may be left out; a RunningHold not made by WatchHold is a units.UnsetError. What a step shows above the limit counts from where the straight
// line from the step before crosses it; a gap longer than maxGap begins anew.
func (h RunningHold) Next(at time.Duration, cores ...units.Temperature) (RunningHold, error) {
	if err := h.checkStep(at, cores); err != nil {
		return h, err
	}
	next := h
	next.at, next.steps = at, h.steps+1
	next.probes = copy(next.cores[:], cores)
	from, to, together := h.overlap(at, cores)
	switch {
	case !together:
		next.holding = false
	case !h.holding || from > h.at:
		next.from = from
		fallthrough
	default:
		if (series.Stretch{From: next.from, To: to}).Length() > h.longest.Length() {
			next.longest = series.Stretch{From: next.from, To: to}
		}
		next.holding = to == at && next.coldest().AtLeast(h.limit.AtLeast)
	}
	return next, nil
}

// overlap is the part of the time since the last step, or this instant alone after a gap, in which every probe is at or above the limit.
func (h RunningHold) overlap(at time.Duration, cores []units.Temperature) (from, to time.Duration, together bool) {
	limit := h.limit.AtLeast
	if h.steps == 0 || at-h.at > h.maxGap {
		for _, core := range cores {
			if core.Below(limit) {
				return 0, 0, false
			}
		}
		return at, at, true
	}
	from, to = h.at, at
	for i, core := range cores {
		a, b := series.Reading[units.Temperature]{At: h.at, Value: h.cores[i]}, series.Reading[units.Temperature]{At: at, Value: core}
		switch {
		case a.Value.Below(limit) && b.Value.Below(limit):
			return 0, 0, false
		case a.Value.Below(limit):
			from = max(from, at-warmPart(b, a, limit))
		case b.Value.Below(limit):
			to = min(to, h.at+warmPart(a, b, limit))
		}
	}
	return from, to, from <= to
}

func (h RunningHold) checkStep(at time.Duration, cores []units.Temperature) error {
	switch {
	case h.maxGap == 0:
		return errNotWatched
	case at < 0:
		return ProbeError{At: at, Err: series.ErrNegative}
	case h.steps > 0 && at == h.at:
		return ProbeError{At: at, Err: series.ErrRepeated}
	case h.steps > 0 && at < h.at:
		return ProbeError{At: at, Err: series.ErrBackward}
	case len(cores) == 0:
		return ProbeError{At: at, Err: series.ErrEmpty}
	case len(cores) > mostProbes:
		return units.RangeError{What: "probes", Got: strconv.Itoa(len(cores)), High: strconv.Itoa(mostProbes)}
	case h.steps > 0 && len(cores) != h.probes:
		return ProbeError{Probe: min(len(cores), h.probes), At: at, Err: series.ErrMissing}
	}
	for i, core := range cores {
		if !core.IsSet() {
			return ProbeError{Probe: i, At: at, Err: series.ErrUnset}
		}
		if core.Above(boiling) {
			return ProbeError{Probe: i, At: at, Err: inTheAir(core)}
		}
	}
	return nil
}

// Met reports whether the hold has been long enough once; nothing later takes that back.
func (h RunningHold) Met() bool { return h.maxGap > 0 && h.longest.Length() >= h.limit.Hold }

// Held returns the longest unbroken hold of all probes so far, and Current the one that still runs.
func (h RunningHold) Held() time.Duration { return h.longest.Length() }

// Current returns how long all probes have been at or above the limit without a break until the last step; zero when one is below.
func (h RunningHold) Current() time.Duration {
	if !h.holding {
		return 0
	}
	return h.at - h.from
}

// Owed returns how long every probe must still stay at or above the limit from the last step on; zero when Met.
func (h RunningHold) Owed() time.Duration {
	if h.Met() {
		return 0
	}
	return h.limit.Hold - h.Current()
}

// Coldest returns the lowest core of the last step, which decides; not set before the first.
func (h RunningHold) Coldest() units.Temperature { return h.coldest() }

func (h RunningHold) coldest() (low units.Temperature) {
	for i, core := range h.cores[:h.probes] {
		if i == 0 || core.Below(low) {
			low = core
		}
	}
	return low
}

// String is what to say to whoever stands by the smoker: "12 minutes still owed". Started minutes count whole.
func (h RunningHold) String() string {
	if h.Met() {
		return "the hold is met"
	}
	owed := int64((h.Owed() + time.Minute - 1) / time.Minute)
	if owed == 1 {
		return "1 minute still owed"
	}
	return strconv.FormatInt(owed, 10) + " minutes still owed"
}
