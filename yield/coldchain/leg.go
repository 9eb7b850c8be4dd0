package coldchain

import (
	"sort"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// leg is a line of the record, or the part of one within a stay, as it counts: where the core warms in something warmer, that.
type leg struct {
	interval
	from    time.Duration
	kitchen kitchenTime
}

// kitchenTime is how the kitchen's two-hour rule counts a leg.
type kitchenTime uint8

const (
	byCore   kitchenTime = iota // above 40 °F
	inCold                      // not
	leftOver                    // all of it
	inHotAir                    // all of it, and the hour of hot air
)

// marked reports whether legs differ from the lines between readings.
func (t *Terms) marked() bool { return len(t.Stays) > 0 || len(t.Air) > 0 }

// stayAt is the stay that holds a moment and what follows it, nil for none.
func (t *Terms) stayAt(at time.Duration) *Stay {
	for i := range t.Stays {
		if s := &t.Stays[i]; s.When.From <= at && at < s.When.To {
			return s
		}
	}
	return nil
}

// keptCold reports whether stays in ice or refrigeration cover a stretch.
func (t *Terms) keptCold(from, to time.Duration) bool {
	for from < to {
		s := t.stayAt(from)
		if s == nil || !s.cold() {
			return false
		}
		from = s.When.To
	}
	return true
}

// around is the warmest that was around the fish in a stretch: as recorded, or as stated of the stay at its start. Not set is
// not known.
func (t *Terms) around(from, to time.Duration) units.Temperature {
	if warmest := t.recorded(from, to); warmest.IsSet() {
		return warmest
	}
	if s := t.stayAt(from); s != nil {
		return s.around()
	}
	return units.Temperature{}
}

// recorded is the warmest reading of the air in a stretch, not set where the record has a gap in it.
func (t *Terms) recorded(from, to time.Duration) (warmest units.Temperature) {
	i := sort.Search(len(t.Air), func(i int) bool { return t.Air[i].At > from }) - 1
	if i < 0 {
		return warmest
	}
	for ; ; i++ {
		if !warmest.IsSet() || t.Air[i].Value.Above(warmest) {
			warmest = t.Air[i].Value
		}
		if t.Air[i].At >= to {
			return warmest
		}
		if i+1 == len(t.Air) || t.Air[i+1].At-t.Air[i].At > t.MaxGap {
			return units.Temperature{}
		}
	}
}

// coldest is the coldest reading of the air in a stretch, not set where the record has a gap in it.
func (t *Terms) coldest(from, to time.Duration) (coldest units.Temperature) {
	if !t.recorded(from, to).IsSet() {
		return coldest
	}
	for i := sort.Search(len(t.Air), func(i int) bool { return t.Air[i].At > from }) - 1; i < len(t.Air); i++ {
		if !coldest.IsSet() || t.Air[i].Value.Below(coldest) {
			coldest = t.Air[i].Value
		}
		if t.Air[i].At >= to {
			break
		}
	}
	return coldest
}

// legs appends the legs of a line. Where the core is warming and what is around it is not known, followed counts it.
func (f *followed) legs(to []leg, b *believing, before, next series.Reading[units.Temperature], warm bool) []leg {
	line := between(before, next)
	t := b.terms
	if !t.marked() {
		if warm {
			f.blind(b, before.At, next.At)
		}
		return append(to, leg{interval: line, from: before.At})
	}
	for from, a := before.At, line.a; from < next.At; {
		until, stay := t.until(from, next.At)
		end := line.b
		if until < next.At {
			end = line.at(int64(until - before.At))
		}
		l := leg{interval: interval{dt: int64(until - from), a: a, b: end}, from: from, kitchen: stay.kitchen()}
		switch {
		case warm:
			f.surround(b, &l, stay)
		case b.core:
			f.tooCold(b, &l, until, stay)
		}
		if b.core {
			f.uncooled(&l, until, stay)
		}
		to = append(to, l)
		from, a = until, end
	}
	return to
}

// until is where the stay at a moment ends, or the time between two stays, and the stay.
func (t *Terms) until(from, end time.Duration) (time.Duration, *Stay) {
	for i := range t.Stays {
		s := &t.Stays[i]
		switch {
		case s.When.From > from:
			return min(s.When.From, end), nil
		case from < s.When.To:
			return min(s.When.To, end), s
		}
	}
	return end, nil
}

// surround makes of a warming leg what is around it, where that is warmer.
func (f *followed) surround(b *believing, l *leg, stay *Stay) {
	end := l.from + time.Duration(l.dt)
	air := b.terms.around(l.from, end)
	if !air.IsSet() {
		f.blind(b, l.from, end)
		return
	}
	f.contradicted(b, l, end, air, stay)
	q := chain.Quanta(air)
	l.a, l.b = max(l.a, q), max(l.b, q)
}

// contradicted is that the core goes on warming in what has been colder than it for an hour.
func (f *followed) contradicted(b *believing, l *leg, end time.Duration, air units.Temperature, stay *Stay) {
	if f.Against.Given || l.b <= l.a || l.b < chain.Quanta(f.High) || l.b <= chain.Quanta(air.Add(colderBy)) {
		return
	}
	warmest := b.terms.recorded(l.from-settles, end)
	if !warmest.IsSet() && stay != nil && l.from-stay.When.From >= settles {
		warmest = air
	}
	if warmest.IsSet() && l.b > chain.Quanta(warmest.Add(colderBy)) {
		here := units.FromAbsoluteZero(units.TemperatureChange(l.b))
		f.Against = units.State(move{series.Stretch{From: l.from, To: end}, warmest, here})
	}
}

// tooCold is that the core falls, or in ice stays for half a day, below everything that was around it for an hour.
func (f *followed) tooCold(b *believing, l *leg, end time.Duration, stay *Stay) {
	if f.Against.Given || l.b >= chain.Quanta(chain.Frozen()) {
		return
	}
	coldest := b.terms.coldest(l.from-settles, end)
	inIce := stay != nil && stay.In == InIce && l.from-stay.When.From >= thawsInIce
	if !coldest.IsSet() && stay != nil && stay.In != Out && !stay.Air.IsSet() && l.from-stay.When.From >= settles {
		coldest, _ = stay.believed()
	}
	if inIce || l.b < l.a && coldest.IsSet() && l.b < chain.Quanta(coldest.Add(-colderBy)) {
		if !coldest.IsSet() {
			coldest, _ = stay.believed()
		}
		here := units.FromAbsoluteZero(units.TemperatureChange(l.b))
		f.Against = units.State(move{series.Stretch{From: l.from, To: end}, coldest, here})
	}
}

// uncooled is that the core does not fall in ice or in a freezer, warm as it is.
func (f *followed) uncooled(l *leg, end time.Duration, stay *Stay) {
	if stay == nil || stay.In != InIce && stay.In != InFreezer {
		return
	}
	if in := units.State(stay.When.From); f.In != in {
		f.In, f.Entered = in, units.FromAbsoluteZero(units.TemperatureChange(l.a))
	}
	_, warmest := stay.believed()
	if t := stay.around(); t.IsSet() {
		warmest = t
	}
	if f.Against.Given || end-stay.When.From < coolsWithin || l.b <= chain.Quanta(warmest.Add(farAbove)) ||
		l.b < chain.Quanta(f.Entered.Add(-coolsBy)) {
		return
	}
	here := units.FromAbsoluteZero(units.TemperatureChange(l.b))
	f.Against = units.State(move{series.Stretch{From: stay.When.From, To: end}, f.Entered.Add(-coolsBy - colderBy), here})
}

// The thickest fish that a home cools is a kelvin colder in its middle after four hours, when it is 5 K warmer than what is
// around it.
const (
	coolsWithin = 4 * time.Hour
	coolsBy     = units.CelsiusDegrees
	farAbove    = 5 * units.CelsiusDegrees
)

// thawsInIce is how long frozen fish is believed to stay below Frozen in melting ice.
const thawsInIce = 12 * time.Hour

// at is the line a time after its start, rounded to the warmer side.
func (v interval) at(dt int64) int64 {
	if v.b >= v.a {
		up, _ := units.ProrateUp(units.Ratio(v.b-v.a), units.Ratio(dt), units.Ratio(v.dt)) // no more than the whole
		return v.a + int64(up)
	}
	return v.a - chain.Part(v.a-v.b, dt, v.dt)
}

// kitchen is how the kitchen's rule counts time in a stay.
func (s *Stay) kitchen() kitchenTime {
	switch {
	case s == nil:
		return byCore
	case s.cold():
		return inCold
	case s.Air.Above(units.Fahrenheit(hotAir)):
		return inHotAir
	}
	return leftOver
}
