package smoke

import (
	"sort"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
)

// clock is how a step went on one probe: from when to when it ran, whether its start was seen and its end reached, and the
// longest gap while it ran.
type clock struct {
	series.Stretch
	all         series.Stretch // with the times before and after that count too, not all of it does
	seen, there bool
	gap         series.Stretch
}

// took times one step of one cooling on one probe. first is how the step before went, whose end starts this one at the
// latest; the way to new heat counts as well.
func (r CoolingRule) took(part cooling, i int, maxGap time.Duration, first *clock) (CoolingTook, clock) {
	core, step := part.core, r.Steps[i]
	t := CoolingTook{Step: step}
	from := step.From
	if step.InAll {
		from = r.Steps[0].From
	}
	began, seen := fellBelow(core, from)
	if first != nil && !step.InAll && first.there && first.To < began {
		began, seen = first.To, first.seen || seen
	}
	ended, there := downTo(core, step.To, began+step.Within)
	if ended > began {
		t.Took = ended - began
	}
	went := clock{Stretch: series.Stretch{From: began, To: max(began, ended)}, seen: seen, there: there}
	went.all = went.Stretch
	if before := spent(core, part.cooked, began, from, step.To); before > 0 {
		t.Took += before
		went.all.From = part.cooked
	}
	if last, heated := part.again.Last(); heated {
		cold, _ := part.again.First()
		if after := spent(part.again, cold.At, last.At, from, step.To); after > 0 {
			t.Took += after
			went.all.To = max(went.all.To, last.At)
		}
	}
	went.gap = longestGapIn(core, series.Stretch{From: began, To: ended})
	switch {
	case t.Took > step.Within:
		t.Verdict = verdict.NotMet
	case seen && there && went.gap.Length() <= maxGap:
		t.Verdict = verdict.Met
	}
	return t, went
}

// spent is how long the core of cooked fish was above to and below from between two moments, below any rule's core where
// from is not set: heat does not take that back.
func spent(core series.Series[units.Temperature], cooked, began time.Duration, from, to units.Temperature) time.Duration {
	if !from.IsSet() {
		from = coldestLimit
	}
	if cooked >= began || !from.Above(to) {
		return 0
	}
	between, err := core.Slice(cooked, began)
	if err != nil {
		return 0
	}
	above, _ := between.Above(to) // cannot fail: the slice has readings
	hot, _ := between.AtOrAbove(from)
	return above - hot
}

// cookedAt is when the core had been as warm and for as long as the least that any rule asks for, or was at 160 °F, which no
// fish comes to on the way up and leaves again for hours; where it never was, when it was warmest, and false.
func cookedAt(core series.Series[units.Temperature]) (time.Duration, bool) {
	hot, cooked, _ := core.FirstAtOrAbove(warmSoon) // cannot fail: readings and a limit that is set
	s := spell{core: core}
	for s.next(coldestLimit, anyGap) {
		if s.Length() < shortestHold {
			continue
		}
		if at := s.From + shortestHold; !cooked || at < hot {
			hot = at
		}
		return hot, true
	}
	if cooked {
		return hot, true
	}
	highest, _ := core.Max()
	return highest.At, false
}

// cooling is a part of a record with one cooling in it. cooked is when the fish was cooked, in it or before; again is the way
// from the last cold reading to the heat that followed it, empty where none did.
type cooling struct {
	core, again series.Series[units.Temperature]
	cooked      time.Duration
}

// coolings splits a record after the fish was cooked wherever it had come to the end of the rule and was heated again.
func (r CoolingRule) coolings(core series.Series[units.Temperature]) (parts []cooling) {
	end := r.Steps[0].To
	if r.Steps[1].To.IsSet() {
		end = r.Steps[1].To
	}
	cooked, _ := cookedAt(core)
	i := sort.Search(core.Len(), func(i int) bool { a, _ := core.At(i); return a.At >= cooked })
	from, cold := 0, -1
	for ; i < core.Len(); i++ {
		a, _ := core.At(i)
		switch {
		case !a.Value.Above(end):
			cold = i
		case cold >= 0 && a.Value.AtLeast(r.again()):
			parts = append(parts, cooling{readings(core, from, cold), readings(core, cold, i), cooked})
			last, _ := core.At(cold)
			from, cold, cooked = cold, -1, last.At
		}
	}
	if from > 0 {
		core = readings(core, from, core.Len()-1)
	}
	return append(parts, cooling{core: core, cooked: cooked})
}

// again is how warm fish is that was heated again: where the clock of the rule would begin anew.
func (r CoolingRule) again() units.Temperature {
	if from := r.Steps[0].From; from.IsSet() {
		return from
	}
	return coldestLimit
}

// readings is the part of a record from one reading to another.
func readings(core series.Series[units.Temperature], from, to int) series.Series[units.Temperature] {
	part, _ := series.New(core.Readings()[from : to+1])
	return part
}

// fellBelow returns when the core falls below a temperature after its highest reading, that reading itself when none is set, and false when
// the heat before was not seen: none at or above it, or with none set, no end of a heating; then it is the start of the record.
func fellBelow(core series.Series[units.Temperature], from units.Temperature) (time.Duration, bool) {
	first, _ := core.First()
	highest, _ := core.Max()
	switch {
	case !from.IsSet() && highest.At > first.At && highest.Value.AtLeast(coldestLimit): // else it begins on the way down, or was never cooked
		return highest.At, true
	case !from.IsSet() || highest.Value.Below(from):
		return first.At, false
	}
	for i := 1; ; i++ {
		a, _ := core.At(i - 1)
		b, more := core.At(i)
		switch {
		case !more:
			return a.At, true
		case a.At >= highest.At && b.Value.Below(from):
			return a.At + warmPart(a, b, from), true
		}
	}
}

// downTo returns when the core comes to a temperature or below and stays until the time is up, or, when it is not there by then, for good; and
// false when the record ends before that; then it is the end of the record.
func downTo(core series.Series[units.Temperature], to units.Temperature, due time.Duration) (time.Duration, bool) {
	last := core.Len() - 1
	if then, err := core.ValueAt(due); err == nil && !then.Above(to) { // what comes after is storage
		last = sort.Search(last, func(i int) bool { r, _ := core.At(i); return r.At >= due })
		if r, _ := core.At(last); r.Value.Above(to) {
			last-- // it rises through due and after it
		}
	}
	b, _ := core.At(last)
	if b.Value.Above(to) {
		return b.At, false
	}
	for i := last - 1; i >= 0; i-- {
		a, _ := core.At(i)
		if a.Value.Above(to) {
			return min(b.At, a.At+warmPart(a, b, to)+1), true // warmPart rounds down
		}
		b = a
	}
	return b.At, true
}
