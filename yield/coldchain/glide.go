package coldchain

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// block is how many readings a tight loop takes out of a record at a time.
const block = 256

// glide takes in the readings from i on that show nothing at a glance, as take would, and returns the first that needs a
// look: a tight loop, for most of a record ends here. It takes nothing of a record that has marks, or while the fish is
// frozen or the probe was away.
func (f *followed) glide(b *believing, record series.Series[units.Temperature], i int) int {
	if f.Taken == 0 || f.Away || f.Fault.IsSet() || f.Frozen || b.terms.marked() {
		return i
	}
	g := f.gliding(b)
	var at, quanta [block]int64
	start := i
	for {
		n := record.Copy(i, at[:], quanta[:])
		done := g.over(at[:n], quanta[:n])
		if i += done; done < n || n < block {
			break
		}
	}
	if i == start {
		return i
	}
	f.Last, _ = record.At(i - 1)
	if b.core {
		f.Floor, f.High = units.FromAbsoluteZero(units.TemperatureChange(g.floor)), units.FromAbsoluteZero(units.TemperatureChange(g.top))
		f.Since = time.Duration(g.since)
	}
	if g.blind > 0 {
		f.Blind += time.Duration(g.blind)
		f.Unseen.Value.To = f.Last.At
	}
	f.Same, f.SameSince = g.same, time.Duration(g.sameSince)
	f.Seen, f.Taken, f.End = f.Seen+i-start, f.Taken+i-start, f.Last.At
	return i
}

// gliding is what a glide holds readings against, and what of followed it changes; times in nanoseconds, values in quanta.
type gliding struct {
	low, high, longest, still int64
	core, warming             bool

	last, at, floor, top, since, blind int64
	same                               int
	sameSince                          int64
}

func (f *followed) gliding(b *believing) gliding {
	low, high := b.belief.Reach()
	longest := b.terms.MaxGap
	if !b.terms.Undisturbed {
		longest = min(longest, longestBlind)
	}
	return gliding{
		low: max(low, chain.Quanta(chain.Frozen())), high: high, longest: int64(longest), still: int64(b.still), core: b.core, warming: f.Warm,
		last: chain.Quanta(f.Last.Value), at: int64(f.Last.At), floor: chain.Quanta(f.Floor), top: chain.Quanta(f.High), since: int64(f.Since),
		same: f.Same, sameSince: int64(f.SameSince),
	}
}

// over goes over readings until one needs a look, and returns how many it took.
func (g *gliding) over(at, quanta []int64) int {
	const noise, rises, creeps = int64(chain.Noise), int64(rises), int64(creeps)
	s := *g // held near
	i, step, stepOf := 0, int64(0), int64(0)
	for ; i < len(quanta) && i < len(at); i++ {
		q, now := quanta[i], at[i]
		dt := now - s.at
		if dt > s.longest || q < s.low || q > s.high || q-s.last > noise || s.last-q > noise {
			break
		}
		if q == s.last && s.same+2 >= sameReadings && now-s.sameSince > s.still {
			break // it may stand still
		}
		if s.core {
			if dt != stepOf { // most have the same
				step, stepOf = dt/creeps, dt
			}
			crept := s.floor + step
			resting := q <= crept || q < s.top-rises
			if warm := !resting && q-crept > rises; warm != s.warming {
				break
			}
			if s.warming {
				s.blind += dt
			}
			if s.floor = crept; resting {
				s.floor, s.top, s.since = q, q, now
			} else if q > s.top {
				s.top = q
			}
		}
		if s.same++; q != s.last {
			s.same, s.sameSince = 0, now
		}
		s.last, s.at = q, now
	}
	*g = s
	return i
}
