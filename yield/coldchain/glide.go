package coldchain

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// glided is what a glide goes through: the line stays between two edges, strictly.
type glided struct {
	low, high int64 // the edges
	spent     int64
	highest   series.Reading[units.Temperature]
	longest   series.Stretch
}

// glide takes in the readings from i on and before end that show nothing at a glance, as take would, and returns the first
// that needs a look: a tight loop, for most of a record ends here. It takes nothing while the fish is frozen or the probe
// was away, nor across an edge.
func (f *followed) glide(b *believing, record series.Series[units.Temperature], i, end int, g *glided) int {
	if f.Taken == 0 || f.Away || f.Fault.IsSet() || f.Frozen {
		return i
	}
	longest := b.terms.MaxGap
	if !b.terms.Undisturbed {
		longest = min(longest, longestBlind)
	}
	low, high := b.belief.Reach()
	low, high = max(low-1, chain.Quanta(chain.Frozen())-1, g.low), min(high+1, g.high)
	noise, core, still, warming := int64(chain.Noise), b.core, b.still, f.Warm
	last, at := chain.Quanta(f.Last.Value), f.Last.At
	if last <= g.low || last >= g.high {
		return i
	}
	hottest, hottestAt := chain.Quanta(g.highest.Value), time.Duration(-1)
	gap, gapTo := g.longest.Length(), g.longest.To
	floor, top, since, blind := chain.Quanta(f.Floor), chain.Quanta(f.High), f.Since, time.Duration(0)
	same, sameSince := f.Same, f.SameSince
	start := i
	for ; i < end; i++ {
		r, _ := record.At(i)
		q, dt := chain.Quanta(r.Value), r.At-at
		if dt > longest || q <= low || q >= high || q-last > noise || last-q > noise {
			break
		}
		if q == last && same+2 >= sameReadings && r.At-sameSince > still {
			break // it may stand still
		}
		if core {
			crept := floor + int64(dt/creeps)
			resting := q <= crept || q < top-int64(rises)
			if warm := !resting && q-crept > int64(rises); warm != warming {
				break
			}
			if warming {
				blind += dt
			}
			if floor = crept; resting {
				floor, top, since = q, q, r.At
			} else if q > top {
				top = q
			}
		}
		if same++; q != last {
			same, sameSince = 0, r.At
		}
		if q > hottest {
			hottest, hottestAt = q, r.At
		}
		if dt > gap {
			gap, gapTo = dt, r.At
		}
		last, at = q, r.At
	}
	if i == start {
		return i
	}
	g.spent += int64(at - f.Last.At)
	if hottestAt >= 0 {
		g.highest = series.Reading[units.Temperature]{At: hottestAt, Value: units.FromAbsoluteZero(units.TemperatureChange(hottest))}
	}
	g.longest = series.Stretch{From: gapTo - gap, To: gapTo}
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
