package coldchain

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// Running is a record in the making, for a live probe: what Audit would say of the readings so far,
// kept up to date one reading at a time without storing them, and what comes next. It is a plain value; Next
// returns the next one. The zero Running takes no reading: start with Watch.
type Running struct {
	terms      Terms
	judges     []judge
	watched    []func(ledger) bool // thresholds, then each judge and its limits: by judge.slot
	lost       []time.Duration     // when each of them was last kept; stillKept while it is
	believing  believing
	seen       followed
	first      series.Reading[units.Temperature]
	highest    series.Reading[units.Temperature]
	unknown    time.Duration
	longestGap series.Stretch
	total      ledger
}

const stillKept = time.Duration(-1)

// Watch returns a Running that has seen nothing yet. The terms must be as for Audit:
// otherwise a units.RangeError.
func Watch(terms Terms) (Running, error) {
	if err := terms.check(); err != nil {
		return Running{}, err
	}
	terms = terms.filled()
	r := Running{terms: terms, judges: terms.judges(), total: newLedger()}
	r.believing = r.terms.believing()
	r.watched = watchedBy(r.judges)
	for range r.watched {
		r.lost = append(r.lost, stillKept)
	}
	return r, nil
}

// watchedBy is everything whose last moment a Report names.
func watchedBy(judges []judge) []func(ledger) bool {
	all := make([]func(ledger) bool, 0, len(thresholds)+len(judges)+len(countedLimits))
	for i := range thresholds {
		i := i
		all = append(all, func(l ledger) bool { return neverAbove(l, i) })
	}
	for _, j := range judges {
		j := j
		all = append(all, j.met)
		for i := range j.limits {
			c := &j.limits[i]
			all = append(all, func(l ledger) bool { return j.allows(l, c) })
		}
	}
	return all
}

// Next returns the running record with one more reading of the temperature inside the fish. The reading must follow in
// time and be set, as for series.New: otherwise a series.ReadingError; one below -80 or above 100 °C that is no code of a
// broken probe is a units.RangeError. Beside either r is as it was, so that a faulty reading may be left out; it then widens
// the gap, as what is not believed does by itself. A Running not made by Watch is a units.UnsetError.
func (r Running) Next(reading series.Reading[units.Temperature]) (Running, error) {
	if r.watched == nil {
		return r, units.UnsetError{What: "running record"}
	}
	if err := r.follows(reading); err != nil {
		return r, err
	}
	next := r
	next.believing.terms = &next.terms
	is, warm, err := next.seen.take(&next.believing, reading)
	switch {
	case err != nil:
		return r, err
	case is == leftOut:
		return next, nil
	case is == first:
		next.first, next.highest = reading, reading
		return next, nil
	}
	if reading.Value.Above(r.highest.Value) {
		next.highest = reading
	}
	before := r.seen.Last
	gap := reading.At - before.At
	if gap > r.longestGap.Length() {
		next.longestGap = series.Stretch{From: before.At, To: reading.At}
	}
	if gap > r.terms.MaxGap {
		next.unknown += gap
		return next, nil
	}
	next.total = append(ledger(nil), r.total...)
	next.lost = append([]time.Duration(nil), r.lost...)
	var one [1]leg
	for _, l := range next.seen.legs(one[:0], &next.believing, before, reading, warm) {
		next.enter(l)
	}
	return next, nil
}

// Stays returns the running record with one more stay, of what is to come: it may begin no sooner than the last reading, nor
// before the last stay ended. Otherwise it is a units.RangeError, as for a stay that is not as its fields say.
func (r Running) Stays(s Stay) (Running, error) {
	if r.watched == nil {
		return r, units.UnsetError{What: "running record"}
	}
	after := r.seen.End
	if n := len(r.terms.Stays); n > 0 {
		after = max(after, r.terms.Stays[n-1].When.To)
	}
	if err := s.check(after); err != nil {
		return r, err
	}
	r.terms.Stays = append(r.terms.Stays[:len(r.terms.Stays):len(r.terms.Stays)], s)
	return r, nil
}

// follows refuses a reading that cannot come after those so far.
func (r Running) follows(reading series.Reading[units.Temperature]) error {
	var fault error
	switch after := r.seen.Seen > 0; {
	case reading.At < 0:
		fault = series.ErrNegative
	case after && reading.At == r.seen.End:
		fault = series.ErrRepeated
	case after && reading.At < r.seen.End:
		fault = series.ErrBackward
	case !reading.Value.IsSet():
		fault = series.ErrUnset
	default:
		return nil
	}
	return series.ReadingError{Index: r.seen.Seen, At: reading.At, Err: fault}
}

// enter adds a leg to the ledger and marks what it breaks.
func (r *Running) enter(one leg) {
	pieces, _ := one.pieces(nil, 1)
	now := one.from
	for _, p := range pieces {
		r.total.enter(p.cell, p.length, one.kitchen)
		for i, keeps := range r.watched {
			if r.lost[i] == stillKept && !keeps(r.total) {
				r.lost[i] = now + r.total.kept(p, one.kitchen, keeps)
			}
		}
		now += time.Duration(p.length)
	}
}

// Report returns exactly what Audit returns for the readings so far, with its errors: series.ErrEmpty before
// the first, a units.RangeError before the second.
func (r Running) Report() (Report, error) {
	if r.seen.Seen == 0 {
		return Report{}, chain.CheckCount(0)
	}
	if r.seen.Taken < 2 {
		return Report{}, chain.CheckCount(max(1, r.seen.Taken))
	}
	report := Report{Terms: r.terms.filled(), Unknown: r.unknown, LongestGap: r.longestGap, Highest: r.highest}
	report.judge(r.judges, r.total, r, &r.seen, r.first)
	return report, nil
}

func (r Running) aboveAt(threshold int) time.Duration { return r.lost[threshold] }

func (r Running) exceededAt(j judge) time.Duration { return r.lost[j.slot] }

func (r Running) passedAt(j judge, limit int) time.Duration { return r.lost[j.slot+1+limit] }
