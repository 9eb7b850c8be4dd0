package coldchain

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// What is made of a record; practice, with the reasons. A core that rises by more than 2 K, faster than half a kelvin in an hour,
// is warming: slower, what is around it is hardly warmer. Two hours are what the short rules allow above 70 °F (21.1 °C), so
// that a longer gap may hide all of it. A refrigerator cycles within the hour, and a probe that shows tenths of a degree
// moves with it: two dozen same readings over more than eight hours, above what melting ice and freezing fish hold, are a
// probe that stands still; of one with steps of half a degree or more, over more than a day.
const (
	rises        = 2 * units.CelsiusDegrees
	creeps       = 2 * time.Hour / time.Duration(units.CelsiusDegrees) // for each quantum
	longestBlind = 2 * time.Hour
	sameReadings = 24
	standsStill  = 8 * time.Hour
	coarseStill  = chain.Day
	coarseStep   = units.CelsiusDegrees / 2
	colderBy     = 2 * units.CelsiusDegrees
	settles      = time.Hour
)

var (
	meltingIce = units.Celsius(1) // what a probe in melting ice shows at most
	thawed     = units.Celsius(0)
)

// followed is what was seen of a record beside its times in each cell. It has exported fields to be saved with a running
// record.
type followed struct {
	Start, End time.Duration                     // of all readings
	Seen       int                               // all readings
	Taken      int                               // those that are believed
	Last       series.Reading[units.Temperature] // of these
	Dropouts   int                               // codes of a broken probe
	Fault      units.Temperature                 // the code that it shows, until it is believed again
	Doubted    int                               // readings that no core could have come to
	Away       bool                              // the last reading was one
	Moved      units.Stated[move]                // the first time that it did not come back

	Floor, High units.Temperature // of the core since it last fell
	Since       time.Duration     // it began to rise
	Warm        bool
	Frozen      bool

	In      units.Stated[time.Duration] // since when it lies in ice or a freezer
	Entered units.Temperature           // and how warm it came there

	Same      int
	SameSince time.Duration
	Stuck     units.Stated[move]

	Sparse  units.Stated[series.Stretch] // the first gap that is trusted and longer than anybody should
	Blind   time.Duration                // warming, and nobody knows in what
	Cooled  time.Duration                // of it, in ice or refrigeration
	Unseen  units.Stated[series.Stretch] // from the first to the last of it
	Against units.Stated[move]           // the core warms in what is colder than it
}

// move is two readings, or a reading and what contradicts it.
type move struct {
	When       series.Stretch
	From, Here units.Temperature
}

// believing is how a record is believed.
type believing struct {
	belief chain.Belief
	terms  *Terms
	core   bool
	still  time.Duration
}

func (t *Terms) believing() believing {
	b := believing{terms: t, core: t.Probe != WarmestPart, still: standsStill}
	switch {
	case !b.core:
		b.belief = chain.BeliefOf(0)
	case t.Thickness.Given:
		b.belief = chain.BeliefOf(t.Thickness.Value)
	default:
		b.belief = chain.BeliefOf(chain.Thinnest)
	}
	if t.Step >= coarseStep {
		b.still = coarseStill
	}
	return b
}

// taken is what became of a reading.
type taken uint8

const (
	leftOut taken = iota
	first         // believed, and the first; one before it was none
	follows       // believed, with a line from the last
)

// take takes in a reading, and says whether the core was warming before it. A reading that no fish has and no broken probe
// shows is a units.RangeError, and nothing is taken in.
func (f *followed) take(b *believing, r series.Reading[units.Temperature]) (is taken, warm bool, err error) {
	q, last := chain.Quanta(r.Value), chain.Quanta(f.Last.Value)
	if f.Taken == 0 || !b.belief.Calm(last, q) {
		if is, err := f.doubts(b, r); is != follows || err != nil {
			return is, false, err
		}
	}
	if f.Away {
		f.comesBack(r)
	}
	f.Seen, f.End, f.Fault = f.Seen+1, r.At, units.Temperature{}
	f.still(b, r, q == last)
	if gap := r.At - f.Last.At; gap > longestBlind && gap <= b.terms.MaxGap && !b.terms.Undisturbed && !f.Sparse.Given {
		if !b.terms.keptCold(f.Last.At, r.At) {
			f.Sparse = units.State(series.Stretch{From: f.Last.At, To: r.At})
		}
	}
	if b.core {
		warm = f.warms(b, r, q)
	}
	f.Taken++
	f.Last = r
	return follows, warm, nil
}

// doubts looks at a reading that is the first, or far from the last; follows is that it is believed.
func (f *followed) doubts(b *believing, r series.Reading[units.Temperature]) (taken, error) {
	sign := series.Sign(0)
	switch {
	case b.belief.IsCode(r.Value), f.Fault.IsSet() && r.Value == f.Fault:
		sign = series.FaultCode
	case f.Taken == 0 || f.Taken == 1 && b.belief.Wakes(f.Last, r):
	default:
		sign = b.belief.Sign(f.Last, r)
	}
	if sign == series.Jump && !b.core {
		return follows, chain.CheckFish(r.Value) // the warmest of several probes changes at once
	}
	if sign != series.FaultCode {
		if err := chain.CheckFish(r.Value); err != nil {
			return leftOut, err
		}
	}
	if f.Seen == 0 {
		f.Start = r.At
	}
	switch {
	case sign == series.FaultCode:
		f.Dropouts++
		f.Fault = r.Value
	case sign == series.Jump:
		f.Doubted++
		f.Away = true
	case f.Taken == 0 || f.Taken == 1 && b.belief.Wakes(f.Last, r):
		f.Dropouts += f.Taken
		f.Taken, f.Last, f.Floor, f.High, f.Since = 1, r, r.Value, r.Value, r.At
		f.Frozen, f.Same, f.SameSince, f.Away, f.Fault = r.Value.Below(chain.Frozen()), 0, r.At, false, units.Temperature{}
		f.Seen, f.End = f.Seen+1, r.At
		return first, nil
	default:
		return follows, nil
	}
	f.Seen, f.End = f.Seen+1, r.At
	return leftOut, nil
}

// comesBack is that readings were left out for a jump, and this one is believed: put back where it was, or only late enough.
func (f *followed) comesBack(r series.Reading[units.Temperature]) {
	f.Away = false
	by, err := r.Value.Sub(f.Last.Value)
	if err == nil && (by > chain.Noise || by < -chain.Noise) && !f.Moved.Given {
		f.Moved = units.State(move{series.Stretch{From: f.Last.At, To: r.At}, f.Last.Value, r.Value})
	}
}

// still counts readings that are exactly the same.
func (f *followed) still(b *believing, r series.Reading[units.Temperature], same bool) {
	if !same {
		f.Same, f.SameSince = 0, r.At
		return
	}
	f.Same++
	if f.Same+1 >= sameReadings && r.At-f.SameSince > b.still && !f.Stuck.Given && r.Value.Above(meltingIce) {
		f.Stuck = units.State(move{series.Stretch{From: f.SameSince, To: r.At}, r.Value, r.Value})
	}
}

// warms follows whether the core is warming: it rose from its floor, which creeps after it, or it thaws.
func (f *followed) warms(b *believing, r series.Reading[units.Temperature], q int64) bool {
	gap := r.At - f.Last.At
	if gap > b.terms.MaxGap { // not known, and counted nowhere
		f.rest(r)
		f.Frozen = r.Value.Below(chain.Frozen())
		return false
	}
	f.Floor = f.Floor.Add(units.TemperatureChange(gap / creeps))
	switch {
	case q <= chain.Quanta(f.Floor), q < chain.Quanta(f.High)-int64(rises):
		f.rest(r)
	case r.Value.Above(f.High):
		f.High = r.Value
	}
	switch {
	case r.Value.Below(chain.Frozen()):
		f.Frozen = true
	case r.Value.Above(thawed):
		f.Frozen = false
	}
	warm := q-chain.Quanta(f.Floor) > int64(rises) || f.Frozen && !r.Value.Below(chain.Frozen())
	if warm && !f.Warm && f.Last.At > f.Since && !b.terms.around(f.Since, f.Last.At).IsSet() { // it began before it showed
		f.blind(b, f.Since, f.Last.At)
	}
	if f.Warm && !warm {
		f.Since = r.At
	}
	f.Warm = warm
	return warm
}

// rest is that the core is not warming any more.
func (f *followed) rest(r series.Reading[units.Temperature]) {
	f.Floor, f.High, f.Since, f.Warm = r.Value, r.Value, r.At, false
}

// blind counts a time in which the core warms and nobody knows in what.
func (f *followed) blind(b *believing, from, to time.Duration) {
	f.Blind += to - from
	if s := b.terms.stayAt(from); s != nil && s.cold() {
		f.Cooled += to - from
	}
	if !f.Unseen.Given {
		f.Unseen = units.State(series.Stretch{From: from, To: to})
	}
	f.Unseen.Value.To = to
}

// edges is what is not known before the first and after the last reading that is believed: more than the longest gap.
func (f *followed) edges(start series.Reading[units.Temperature], maxGap time.Duration, longest *series.Stretch) time.Duration {
	unknown := time.Duration(0)
	for _, s := range [...]series.Stretch{{From: f.Start, To: start.At}, {From: f.Last.At, To: f.End}} {
		if s.Length() > maxGap {
			unknown += s.Length()
		}
		if s.Length() > longest.Length() {
			*longest = s
		}
	}
	return unknown
}
