package smoke

import (
	"math"
	"slices"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// A probe that shows exactly one value from the start of its record on is not read, or is broken: a core that is heated
// moves. There is no time for which that is believed: a sensor that was never read shows 85.0 °C at once. The first other
// reading, within the noise of a probe, says that the probe lives; one further off, that it did not before.

// stillAt is how many readings of a core, from the first on, show the same value.
func stillAt(core series.Series[units.Temperature]) int {
	first, _ := core.First()
	for i := 1; i < core.Len(); i++ {
		if a, _ := core.At(i); a.Value != first.Value {
			return i
		}
	}
	return core.Len()
}

// leaps reports whether a core that stood still at or above a limit comes to another value further off than noise.
func leaps(from, to, limit units.Temperature) bool {
	return from.AtLeast(limit) && math.Abs(quanta(to)-quanta(from)) > probeNoise
}

// stands adds to a doubt the probes that stand still at or above a limit: for the whole record, or until they leap.
func (d doubt) stands(cores []series.Series[units.Temperature], limit units.Temperature) doubt {
	for i, core := range cores {
		n := stillAt(core)
		first, _ := core.First()
		next, more := core.At(n)
		if n < 2 || first.Value.Below(limit) || more && !leaps(first.Value, next.Value, limit) {
			continue
		}
		last, _ := core.At(n - 1)
		when := series.Stretch{From: first.At, To: last.At}
		d.why = append(d.why, disbelief{probe: i, of: still, when: when, worst: first.Value})
		if !more {
			d.dead = true
			continue
		}
		d.hot = slices.Clone(d.hot)
		for _, a := range core.Readings()[:n] {
			d.hot = append(d.hot, a.At)
		}
		slices.Sort(d.hot)
		d.hot = slices.Compact(d.hot)
	}
	return d
}

// owed is how long a hold that is not met must go on, where all probes have been at the limit or above for some time:
// the whole hold again where that was long enough and is not believed.
func (l CoreLimit) owed(current time.Duration) time.Duration {
	if current >= l.Hold {
		return l.Hold
	}
	return l.Hold - current
}
