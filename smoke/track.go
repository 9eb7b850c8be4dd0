package smoke

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// track is how long all probes were together at or above a limit, step by step.
type track struct {
	at      time.Duration
	probes  int
	cores   [mostProbes]units.Temperature // of the last step
	steps   int
	holding bool
	from    time.Duration // of the current hold
	longest series.Stretch
}

// next takes in a step.
func (t track) next(limit units.Temperature, maxGap, at time.Duration, cores []units.Temperature) track {
	from, to, together := t.overlap(limit, maxGap, at, cores)
	before := t
	t.at, t.steps, t.probes = at, t.steps+1, copy(t.cores[:], cores)
	switch {
	case !together:
		t.holding = false
	case !before.holding || from > before.at:
		t.from = from
		fallthrough
	default:
		if (series.Stretch{From: t.from, To: to}).Length() > t.longest.Length() {
			t.longest = series.Stretch{From: t.from, To: to}
		}
		t.holding = to == at && t.coldest().AtLeast(limit)
	}
	return t
}

// overlap is the part of the time since the last step, or this instant only after a gap, in which every probe is at or
// above the limit.
func (t *track) overlap(limit units.Temperature, maxGap, at time.Duration, cores []units.Temperature) (from, to time.Duration, together bool) {
	if t.steps == 0 || at-t.at > maxGap {
		for _, core := range cores {
			if core.Below(limit) {
				return 0, 0, false
			}
		}
		return at, at, true
	}
	from, to = t.at, at
	for i, core := range cores {
		a, b := series.Reading[units.Temperature]{At: t.at, Value: t.cores[i]}, series.Reading[units.Temperature]{At: at, Value: core}
		switch {
		case a.Value.Below(limit) && b.Value.Below(limit):
			return 0, 0, false
		case a.Value.Below(limit):
			from = max(from, at-warmPart(b, a, limit))
		case b.Value.Below(limit):
			to = min(to, t.at+warmPart(a, b, limit))
		}
	}
	return from, to, from <= to
}

func (t track) current() time.Duration {
	if !t.holding {
		return 0
	}
	return t.at - t.from
}

func (t track) coldest() (low units.Temperature) {
	for i, core := range t.cores[:t.probes] {
		if i == 0 || core.Below(low) {
			low = core
		}
	}
	return low
}
