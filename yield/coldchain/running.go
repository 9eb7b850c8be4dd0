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
	readings   int
	first      series.Reading[units.Temperature]
	last       series.Reading[units.Temperature]
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
	terms.Rules = append([]Rule(nil), terms.Rules...)
	terms.Hazards = append([]Hazard(nil), terms.Hazards...)
	r := Running{terms: terms, judges: terms.judges(), total: newLedger()}
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
// time and be set, as for series.New: otherwise a series.ReadingError; one below -80 or above 100 °C is a
// units.RangeError. Beside either r is as it was, so that a faulty reading may be left out; it then widens the gap. A
// Running not made by Watch is a units.UnsetError.
func (r Running) Next(reading series.Reading[units.Temperature]) (Running, error) {
	if r.watched == nil {
		return r, units.UnsetError{What: "running record"}
	}
	if err := r.follows(reading); err != nil {
		return r, err
	}
	if err := chain.CheckFish(reading.Value); err != nil {
		return r, err
	}
	next := r
	next.readings, next.last = r.readings+1, reading
	if r.readings == 0 {
		next.first, next.highest = reading, reading
		return next, nil
	}
	if reading.Value.Above(r.highest.Value) {
		next.highest = reading
	}
	gap := reading.At - r.last.At
	if gap > r.longestGap.Length() {
		next.longestGap = series.Stretch{From: r.last.At, To: reading.At}
	}
	if gap > r.terms.MaxGap {
		next.unknown += gap
		return next, nil
	}
	next.total = append(ledger(nil), r.total...)
	next.lost = append([]time.Duration(nil), r.lost...)
	next.enter(between(r.last, reading), r.last.At)
	return next, nil
}

// follows refuses a reading that cannot come after those so far.
func (r Running) follows(reading series.Reading[units.Temperature]) error {
	var fault error
	switch after := r.readings > 0; {
	case reading.At < 0:
		fault = series.ErrNegative
	case after && reading.At == r.last.At:
		fault = series.ErrRepeated
	case after && reading.At < r.last.At:
		fault = series.ErrBackward
	case !reading.Value.IsSet():
		fault = series.ErrUnset
	default:
		return nil
	}
	return series.ReadingError{Index: r.readings, At: reading.At, Err: fault}
}

// enter adds a straight line to the ledger and marks what it breaks.
func (r *Running) enter(line interval, now time.Duration) {
	pieces, _ := line.pieces(nil, 1)
	for _, p := range pieces {
		r.total[p.cell] += p.length
		for i, keeps := range r.watched {
			if r.lost[i] == stillKept && !keeps(r.total) {
				r.lost[i] = now + r.total.kept(p, keeps)
			}
		}
		now += time.Duration(p.length)
	}
}

// Report returns exactly what Audit returns for the readings so far, with its errors: series.ErrEmpty before
// the first, a units.RangeError before the second.
func (r Running) Report() (Report, error) {
	if err := chain.CheckCount(r.readings); err != nil {
		return Report{}, err
	}
	report := Report{
		Terms: r.terms, Span: r.last.At - r.first.At, Unknown: r.unknown, LongestGap: r.longestGap, Highest: r.highest,
	}
	report.judge(r.judges, r.total, r, r.first.At, r.last)
	return report, nil
}

func (r Running) aboveAt(threshold int) time.Duration { return r.lost[threshold] }

func (r Running) exceededAt(j judge) time.Duration { return r.lost[j.slot] }

func (r Running) passedAt(j judge, limit int) time.Duration { return r.lost[j.slot+1+limit] }
