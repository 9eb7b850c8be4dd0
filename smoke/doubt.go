package smoke

import (
	"math"
	"slices"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
)

// doubt is what of a record is not believed.
type doubt struct {
	why  []disbelief
	hot  []time.Duration   // times at which a probe showed more than a core can be, rising
	lost [][]time.Duration // by probe, times at which it showed more or less than that
	dead bool              // a probe shows one value from the first reading to the last
	same int               // the first probe that shows its air at every reading, -1 for none
}

// disbelief is a time in which a probe showed what the core in front of it cannot be.
type disbelief struct {
	probe   int
	of      belief
	when    series.Stretch
	worst   units.Temperature // the warmest or the coldest reading of it
	bound   units.Temperature // what the core could be at the start of it
	withAir bool
}

// doubt looks for readings that no core can have in a record that spans so much.
func (r Record) doubt(fast reach, all extent) doubt {
	d := doubt{same: -1}
	if r.Air.Len() == 0 && !r.Piece.Given && all.plain(fast) {
		return d
	}
	d.lost = make([][]time.Duration, len(r.Cores))
	for i := range r.Cores {
		d.look(r, fast, i)
	}
	slices.Sort(d.hot)
	d.hot = slices.Compact(d.hot)
	return d
}

// plain reports at a glance whether no probe ever changes faster than any core can, whatever it is in: most records do not.
// It asks of the greatest change whether a core can do it in the shortest time between readings, from where it is slowest.
func (x extent) plain(fast reach) bool {
	up := (hottestOven - x.high.Celsius()) * share(fast.warming, x.shortest)
	down := (x.low.Celsius() - coldestPlace) * share(fast.cooling, x.shortest)
	mayTurn := float64(x.fall)*float64(turnTime/max(x.shortest, 1)+1) > probeNoise
	return !mayTurn && units.Float(x.rise, units.Kelvins) <= up && units.Float(x.fall, units.Kelvins) <= down
}

// look goes through the readings of one probe.
func (d *doubt) look(r Record, fast reach, probe int) {
	core := r.Cores[probe]
	var e envelope
	going := pace{reach: fast}
	met := airOf{air: r.Air}
	same, last := r.Air.Len() > 0, believed
	for i := 0; i < core.Len(); i++ {
		a, _ := core.At(i)
		medium, withAir := met.until(a.At, r.MaxGap)
		before := e.at
		is := e.step(&going, a.At, quanta(a.Value), medium)
		if is != believed {
			if is != last {
				d.why = append(d.why, disbelief{probe: probe, of: is, when: series.Stretch{From: before}, worst: a.Value, bound: e.bound(), withAir: withAir})
			}
			d.goesOn(a)
		}
		last = is
		if same {
			air, err := r.Air.ValueAt(a.At)
			same = err == nil && asTheAir(a.Value, air)
		}
	}
	if same && d.same < 0 {
		d.same = probe
	}
}

// goesOn adds a reading to the last disbelief.
func (d *doubt) goesOn(a series.Reading[units.Temperature]) {
	w := &d.why[len(d.why)-1]
	w.when.To = a.At
	d.lost[w.probe] = append(d.lost[w.probe], a.At)
	if w.of != outside {
		d.hot = append(d.hot, a.At)
	}
	if w.of != outside && a.Value.Above(w.worst) || w.of == outside && a.Value.Below(w.worst) {
		w.worst = a.Value
	}
}

// asTheAir reports whether a probe shows the air that was recorded with it, but for the error of two thermometers.
func asTheAir(core, air units.Temperature) bool {
	return air.IsSet() && math.Abs(quanta(core)-quanta(air)) <= airTolerance
}

// airOf follows the air of a record.
type airOf struct {
	air  series.Series[units.Temperature]
	next int
	met  airMet
}

// until is the hottest that a core has met until a time, in quanta, and whether that was recorded.
func (h *airOf) until(at, maxGap time.Duration) (most float64, recorded bool) {
	for a, ok := h.air.At(h.next); ok && a.At <= at; a, ok = h.air.At(h.next) {
		h.met = airMet{at: a.At, most: warmest(h.met.most, a.Value)}
		h.next++
	}
	return h.met.medium(at, maxGap)
}

// airMet is the hottest air that was recorded so far, not set while none was, and when air was last recorded.
type airMet struct {
	at   time.Duration
	most units.Temperature
}

// medium is what a core may have met by a time, in quanta: the hottest air, and the hottest oven there is where the air was not
// recorded for longer than a gap that is believed.
func (m airMet) medium(at, maxGap time.Duration) (most float64, recorded bool) {
	if !m.most.IsSet() || at-m.at > maxGap {
		return hottest, false
	}
	return quanta(m.most) + airTolerance, true
}

func warmest(most, air units.Temperature) units.Temperature {
	if !most.IsSet() || air.Above(most) {
		return air
	}
	return most
}

// without is the record without the readings at the times at which any probe shows more than a core can be: then nothing
// is known.
func (d doubt) without(cores []series.Series[units.Temperature]) []series.Series[units.Temperature] {
	if d.hot == nil {
		return cores
	}
	kept := make([]series.Series[units.Temperature], len(cores))
	for i, core := range cores {
		kept[i] = leftOut(core, d.hot)
	}
	return kept
}

// believedOnly is the record without every reading that its own probe cannot have shown in the core.
func (d doubt) believedOnly(cores []series.Series[units.Temperature]) []series.Series[units.Temperature] {
	kept := make([]series.Series[units.Temperature], len(cores))
	for i, core := range cores {
		kept[i] = core
		if d.lost != nil && d.lost[i] != nil {
			kept[i] = leftOut(core, d.lost[i])
		}
	}
	return kept
}

// leftOut is a record without the readings at some times, which rise; empty when none is left.
func leftOut(core series.Series[units.Temperature], times []time.Duration) series.Series[units.Temperature] {
	var kept []series.Reading[units.Temperature]
	for _, a := range core.Readings() {
		if _, out := slices.BinarySearch(times, a.At); !out {
			kept = append(kept, a)
		}
	}
	left, _ := series.New(kept)
	return left
}

// tooHot is the doubt with only what is in the air, too hot for a core or swinging: a probe that was taken out ends a hold anyway.
func (d doubt) tooHot() doubt {
	d.why = slices.DeleteFunc(slices.Clone(d.why), func(w disbelief) bool { return w.of == outside })
	return d
}

// findings say what contradicts what.
func (d doubt) findings(r Record) (all []verdict.Finding) {
	for _, w := range d.why {
		f := impossible(r.named("core", w.probe), w.when, units.Exactly(w.worst))
		switch {
		case w.of == outside:
			f.Wanted = units.AtLeast(w.bound).With("of a core by then")
		case w.of == still:
			f.Wanted = units.InWords("a core that moves while it is heated")
		case w.of == swinging:
			f.Wanted = units.InWords("a core that does not go up and down within minutes")
		case w.withAir:
			f.Wanted = units.AtMost(w.bound).With("of a core in its air by then")
		default:
			f.Wanted = units.AtMost(w.bound).With("of a core by then")
		}
		all = append(all, f)
	}
	if d.same >= 0 {
		first, _ := r.Cores[d.same].First()
		last, _ := r.Cores[d.same].Last()
		f := impossible(r.named("core", d.same), series.Stretch{From: first.At, To: last.At}, units.InWords("what the air shows, within 2 K, at every reading"))
		f.Wanted = units.InWords("readings of its own")
		all = append(all, f)
	}
	return all
}

// impossible is a finding about a probe that is not in the core.
func impossible(what string, when series.Stretch, stated units.Figure) verdict.Finding {
	return verdict.Finding{
		Rule: RuleDoubt, What: what, Kind: verdict.Impossible, Verdict: verdict.CannotTell, When: units.State(when), Stated: stated,
		Citation: beliefCitation, Known: notInCore,
	}
}
