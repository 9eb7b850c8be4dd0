package smoke

import (
	"sort"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
)

// took times one step on one probe.
func took(core series.Series[units.Temperature], first, step CoolingStep, maxGap time.Duration) (CoolingTook, clock) {
	t := CoolingTook{Step: step}
	from := step.From
	if step.InAll {
		from = first.From
	}
	began, seen := fellBelow(core, from)
	ended, there := downTo(core, step.To, began+step.Within)
	if ended > began {
		t.Took = ended - began
	}
	went := clock{Stretch: series.Stretch{From: began, To: max(began, ended)}, seen: seen, there: there}
	went.gap = longestGapIn(core, series.Stretch{From: began, To: ended})
	switch {
	case t.Took > step.Within:
		t.Verdict = verdict.NotMet
	case seen && there && went.gap.Length() <= maxGap:
		t.Verdict = verdict.Met
	}
	return t, went
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
