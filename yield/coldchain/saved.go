package coldchain

import (
	"slices"
	"strconv"
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// saved is a Running as it is written. Spent is the time in each cell of the ledger that has any, Lost when each moment
// that a Report names was. Both go by temperatures and rules, not by their numbers, so that a change of the tables is
// found.
type saved struct {
	Terms      Terms
	Seen       followed
	First      series.Reading[units.Temperature]
	Highest    series.Reading[units.Temperature]
	Unknown    time.Duration
	LongestGap series.Stretch
	Spent      []spent
	Lost       []lost

	InCold, LeftOut, InHotAir time.Duration // what the kitchen's rule counts otherwise
}

// spent is the time at one temperature, or strictly between two.
type spent struct {
	Low, High units.Temperature
	Time      time.Duration
}

// lost is when something was last kept.
type lost struct {
	What string
	At   time.Duration `wire:"always"`
}

// MarshalJSON writes the running record with all that it needs to go on. One that was not made by Watch is a
// units.UnsetError.
func (r Running) MarshalJSON() ([]byte, error) {
	if r.watched == nil {
		return nil, units.UnsetError{What: "running record"}
	}
	s := saved{
		Terms: r.terms, Seen: r.seen, First: r.first, Highest: r.highest,
		Unknown: r.unknown, LongestGap: r.longestGap,
	}
	for cell, time := range r.total[:cells] {
		if time > 0 {
			s.Spent = append(s.Spent, spentIn(cell, time))
		}
	}
	s.InCold, s.LeftOut, s.InHotAir = r.total.extra(extraCold), r.total.extra(extraOut), r.total.extra(extraHot)
	names := momentNames(r.judges)
	for i, at := range r.lost {
		if at != stillKept {
			s.Lost = append(s.Lost, lost{names[i], at})
		}
	}
	return wire.Marshal(s)
}

// UnmarshalJSON reads what MarshalJSON writes, strictly, and refuses what no record can have come to: times that do not
// add up, a limit that is said to be kept or passed and is not. On an error the value stays as it was.
func (r *Running) UnmarshalJSON(data []byte) error {
	var s saved
	if err := wire.Unmarshal(data, &s); err != nil {
		return err
	}
	read, err := Watch(s.Terms)
	if err != nil {
		return err
	}
	read.seen, read.first, read.highest = s.Seen, s.First, s.Highest
	read.unknown, read.longestGap = s.Unknown, s.LongestGap
	if err := read.spend(s.Spent); err != nil {
		return err
	}
	read.total[cells+extraCold], read.total[cells+extraOut], read.total[cells+extraHot] = int64(s.InCold), int64(s.LeftOut), int64(s.InHotAir)
	if err := read.lose(s.Lost); err != nil {
		return err
	}
	if err := read.consistent(); err != nil {
		return err
	}
	*r = read
	return nil
}

// spentIn is the time in a cell with the edges that it lies at or between; beyond the first and the last there is none.
func spentIn(cell int, nanoseconds int64) spent {
	s := spent{Time: time.Duration(nanoseconds)}
	low, high := cell/2-1, cell/2
	if cell%2 == 1 {
		low = high
	}
	if low > 0 {
		s.Low = units.FromAbsoluteZero(units.TemperatureChange(edges[low]))
	}
	if high < len(edges)-1 {
		s.High = units.FromAbsoluteZero(units.TemperatureChange(edges[high]))
	}
	return s
}

// spend enters the times by cell.
func (r *Running) spend(all []spent) error {
	for _, s := range all {
		cell := -1
		for i := range r.total[:cells] {
			if spentIn(i, int64(s.Time)) == s {
				cell = i
			}
		}
		switch {
		case cell < 0:
			return faulty("it has time between temperatures that are those of no limit")
		case s.Time <= 0 || r.total[cell] != 0:
			return faulty("it has a time twice, or below zero")
		}
		r.total[cell] = int64(s.Time)
	}
	return nil
}

// momentNames name the moments that a running record watches, in their order.
func momentNames(judges []judge) []string {
	var all []string
	for _, t := range thresholds {
		all = append(all, "above "+units.Fahrenheit(t.over).String())
	}
	for _, j := range judges {
		all = append(all, string(j.id()))
		for i := range j.limits {
			all = append(all, string(j.id())+", limit "+strconv.Itoa(i+1))
		}
	}
	return all
}

// lose enters when the moments were.
func (r *Running) lose(all []lost) error {
	names := momentNames(r.judges)
	for _, l := range all {
		i := slices.Index(names, l.What)
		for i >= 0 && r.lost[i] != stillKept { // a rule that was asked for twice
			next := slices.Index(names[i+1:], l.What)
			if next < 0 {
				return faulty("it has a moment twice")
			}
			i += 1 + next
		}
		if i < 0 {
			return faulty("it has a moment of no limit that it watches")
		}
		r.lost[i] = l.At
	}
	return nil
}

// consistent refuses what no record can have come to.
func (r *Running) consistent() error {
	if r.seen.Taken == 0 {
		return r.blank()
	}
	for _, t := range [...]units.Temperature{r.first.Value, r.seen.Last.Value, r.highest.Value} {
		if err := chain.CheckFish(t); err != nil {
			return err
		}
	}
	last := r.seen.Last
	start, end := r.first.At, last.At
	within := func(at time.Duration) bool { return start <= at && at <= end }
	gap := r.longestGap.Length()
	switch {
	case r.seen.Taken < 0 || start < 0 || start > end || (r.seen.Taken == 1) != (start == end),
		r.seen.Taken == 1 && r.first != last:
		return faulty("its first and last reading contradict each other")
	case !within(r.highest.At) || r.first.Value.Above(r.highest.Value) || last.Value.Above(r.highest.Value):
		return faulty("its highest reading is none")
	case !r.terms.marked() && r.total.above(cellOf(r.highest.Value)+1) > 0:
		return faulty("it has time above its highest reading")
	case r.seen.Taken > 1 && (gap <= 0 || !within(r.longestGap.From) || !within(r.longestGap.To)):
		return faulty("its longest gap lies outside of it")
	case r.unknown < 0 || (r.unknown > 0) != (gap > r.terms.MaxGap) || r.unknown > 0 && r.unknown < gap:
		return faulty("its gaps contradict each other")
	case r.total.above(0) != end-start-r.unknown:
		return faulty("its times do not add up")
	}
	if err := r.seen.consistent(start, r.total); err != nil {
		return err
	}
	for i, keeps := range r.watched {
		if keeps(r.total) != (r.lost[i] == stillKept) || r.lost[i] != stillKept && !within(r.lost[i]) {
			return faulty("it says of a limit that it is kept or passed, and its times say otherwise")
		}
	}
	return nil
}

// blank refuses what a record cannot have come to of which no reading is believed.
func (r *Running) blank() error {
	blank, err := Watch(r.terms)
	f := r.seen
	empty := followed{Start: f.Start, End: f.End, Seen: f.Seen, Dropouts: f.Dropouts, Fault: f.Fault}
	if err != nil || r.first != blank.first || r.highest != blank.highest || r.unknown != 0 || r.longestGap != blank.longestGap ||
		!slices.Equal(r.total, blank.total) || !slices.Equal(r.lost, blank.lost) || f != empty || f.Seen != f.Dropouts {
		return faulty("it has no readings and yet what they came to")
	}
	return nil
}

// consistent refuses what cannot have been seen of a record whose first believed reading is at a time.
func (f *followed) consistent(start time.Duration, l ledger) error {
	switch {
	case f.Seen < f.Taken+f.Doubted || f.Seen != f.Taken+f.Doubted+f.Dropouts || f.Doubted < 0 || f.Dropouts < 0:
		return faulty("its readings do not add up")
	case f.Start < 0 || f.Start > start || f.End < f.Last.At || f.Since > f.Last.At || f.SameSince > f.Last.At || f.Same < 0 || f.Same >= f.Taken:
		return faulty("its readings contradict each other")
	case f.Away && f.End == f.Last.At:
		return faulty("its last reading is believed and not believed")
	case f.Cooled < 0 || f.Cooled > f.Blind || f.Blind > f.Last.At-start || (f.Blind > 0) != f.Unseen.Given:
		return faulty("the time in which the core warmed unseen contradicts the record")
	case l.extra(extraCold) < 0 || l.extra(extraCold) > l.in(kitchenBand) || l.extra(extraOut) < 0 || l.extra(extraOut) > l.above(0) ||
		l.extra(extraHot) < 0 || l.extra(extraHot) > l.above(0):
		return faulty("its times in ice and out of it do not add up")
	}
	return nil
}

func faulty(why string) error {
	return units.ParseError{Quantity: "running record", Text: "saved", Reason: why}
}
