package smoke

import (
	"math"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// anyGap trusts the straight line across every gap.
const anyGap = time.Duration(math.MaxInt64)

// longestTogether returns the first of the longest stretches in which every probe is at or above the limit and no
// probe has a gap longer than maxGap; the zero Stretch when there is none of any length.
func longestTogether(probes []series.Series[units.Temperature], limit units.Temperature, maxGap time.Duration) (best series.Stretch) {
	if len(probes) == 1 && maxGap == anyGap { // the plain case, in one pass of the series
		best, _ = probes[0].LongestAtOrAbove(limit) // cannot fail: a reading and a limit that is set
		return best
	}
	spells := make([]spell, len(probes))
	for i, p := range probes {
		spells[i].core = p
		if !spells[i].next(limit, maxGap) {
			return best
		}
	}
	for {
		// The spells overlap from the latest start to the earliest end; whichever ends first gives way to its next.
		first, shared := 0, spells[0].Stretch
		for i, s := range spells[1:] {
			shared.From = max(shared.From, s.From)
			if s.To < shared.To {
				first, shared.To = i+1, s.To
			}
		}
		if shared.Length() > best.Length() {
			best = shared
		}
		if !spells[first].next(limit, maxGap) {
			return best
		}
	}
}

// spell is one unbroken stretch of a probe at or above a limit, and the place in the record behind it.
type spell struct {
	series.Stretch
	core series.Series[units.Temperature]
	i    int // the first reading not yet part of a spell
}

// next goes on to the next spell and reports whether there is one. Its ends round inward.
func (s *spell) next(limit units.Temperature, maxGap time.Duration) bool {
	b, ok := s.core.At(s.i)
	for ok && b.Value.Below(limit) {
		s.i++
		b, ok = s.core.At(s.i)
	}
	if !ok {
		return false
	}
	s.From = b.At
	if a, before := s.core.At(s.i - 1); before && a.Value.Below(limit) && b.At-a.At <= maxGap {
		s.From -= warmPart(b, a, limit)
	}
	for a := b; ; a = b {
		s.i++
		b, ok = s.core.At(s.i)
		if !ok || b.At-a.At > maxGap {
			s.To = a.At
			return true
		}
		if b.Value.Below(limit) {
			s.To = a.At + warmPart(a, b, limit)
			return true
		}
	}
}

// warmPart returns how long the straight line between two readings, either order in time, stays at or above a
// limit that lies between them, rounded down.
func warmPart(warm, cold series.Reading[units.Temperature], limit units.Temperature) time.Duration {
	return series.Beyond(max(warm.At-cold.At, cold.At-warm.At), warm.Value, cold.Value, limit)
}

// running returns how long all probes have been at or above the limit when the records end; zero when one of them
// is not, or has stopped more than maxGap before the last.
func running(probes []series.Series[units.Temperature], limit units.Temperature, maxGap time.Duration) time.Duration {
	var from, latest time.Duration
	to := anyGap
	for _, p := range probes {
		b, ok := p.Last()
		if !ok || b.Value.Below(limit) {
			return 0
		}
		to, latest = min(to, b.At), max(latest, b.At)
		start := b.At
		for i := p.Len() - 2; i >= 0; i-- {
			a, _ := p.At(i)
			if b.At-a.At > maxGap {
				break
			}
			if a.Value.Below(limit) {
				start -= warmPart(b, a, limit)
				break
			}
			b, start = a, a.At
		}
		from = max(from, start)
	}
	if latest-to > maxGap || from > to {
		return 0
	}
	return to - from
}
