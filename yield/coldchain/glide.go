package coldchain

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// glide takes in the readings from i on that show nothing at a glance, as take would, and returns the first that needs a
// look: a tight loop, for most of a record ends here. It takes nothing of a record that has marks, or while the fish is
// frozen or the probe was away.
func (f *followed) glide(b *believing, record series.Series[units.Temperature], i int) int {
	if f.Taken == 0 || f.Away || f.Fault.IsSet() || f.Frozen || b.terms.marked() {
		return i
	}
	longest := b.terms.longestGlance()
	low, high := b.belief.Reach()
	low = max(low, chain.Quanta(chain.Frozen()))
	noise, core, still, warming := int64(chain.Noise), b.core, b.still, f.Warm
	last, at := chain.Quanta(f.Last.Value), f.Last.At
	floor, top, since, blind := chain.Quanta(f.Floor), chain.Quanta(f.High), f.Since, time.Duration(0)
	same, sameSince := f.Same, f.SameSince
	step, stepOf, start := int64(0), time.Duration(0), i
	for ; i < record.Len(); i++ {
		nanoseconds, q := record.QuantaAt(i)
		now := time.Duration(nanoseconds)
		dt := now - at
		if dt > longest || q < low || q > high || q-last > noise || last-q > noise {
			break
		}
		if q == last && same+2 >= sameReadings && now-sameSince > still {
			break // it may stand still
		}
		if core {
			if dt != stepOf { // most have the same
				step, stepOf = int64(dt/creeps), dt
			}
			crept := floor + step
			resting := q <= crept || q < top-int64(rises)
			if warm := !resting && q-crept > int64(rises); warm != warming {
				break
			}
			if warming {
				blind += dt
			}
			if floor = crept; resting {
				floor, top, since = q, q, now
			} else if q > top {
				top = q
			}
		}
		if same++; q != last {
			same, sameSince = 0, now
		}
		last, at = q, now
	}
	if i == start {
		return i
	}
	f.Last, _ = record.At(i - 1)
	if b.core {
		f.Floor, f.High, f.Since = units.FromAbsoluteZero(units.TemperatureChange(floor)), units.FromAbsoluteZero(units.TemperatureChange(top)), since
	}
	if blind > 0 {
		f.Blind += blind
		f.Unseen.Value.To = f.Last.At
	}
	f.Same, f.SameSince = same, sameSince
	f.Seen, f.Taken, f.End = f.Seen+i-start, f.Taken+i-start, f.Last.At
	return i
}

// longestGlance returns the longest gap that needs no look: the one accepted, and in a disturbed place no longer than
// longestBlind.
func (t Terms) longestGlance() time.Duration {
	if t.Undisturbed {
		return t.MaxGap
	}
	return min(t.MaxGap, longestBlind)
}
