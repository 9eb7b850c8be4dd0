package season

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
)

// Audit returns what a ledger comes to at the end of a day: what is held by the rule, what is left of each batch and
// until when it keeps, what to eat first, and the findings where entries contradict or a limit was passed. Entries of
// later days are not taken. Those of one day may stand in any order: batches are begun and seals checked before
// anything is eaten.
//
// An entry that contradicts what there is, such as more eaten than made, is a finding, is not counted, and its batch
// is no food. Jars are food once their load's audit passes and their seal was checked. Fish of a batch counts by its
// share of its catch's round mass, and of each catch what is fresh and what is preserved is rounded up to whole fish.
// A ledger or an entry with a figure missing or out of range is a units.FieldError that names the entry, a
// units.RangeError or a units.UnsetError.
func Audit(l Ledger, on Day) (State, error) {
	if err := l.check(on); err != nil {
		return State{}, err
	}
	r := replay{ledger: &l, limits: l.Rule.limits(), on: on, week: PastWeek{}}
	for _, p := range r.arrange() {
		e := &l.Entries[p.i]
		if e.Day > on {
			break
		}
		r.advance(e.Day)
		r.take(e, p.lot)
	}
	r.advance(on + 1)
	if r.err != nil {
		return State{}, r.err
	}
	return r.state(), nil
}

// stored is a catch or a batch on the way through a ledger. Of a catch good counts the whole fish, of what is no jar
// the packages.
type stored struct {
	entry                   *Entry // that begins it
	parent, root            int    // of what it is made, and its catch; itself where it is one
	depth                   int    // 0 for a catch
	begun                   bool
	until                   Day
	quality                 bool
	product                 int
	good, unchecked, failed int
	round                   units.Mass      // when it was begun
	fish, load              verdict.Verdict // of what went in, and of the audit
	eatenBad                bool            // some of it was eaten although it is no food

	there     units.Mass // of what is left
	counted   units.Mass // what of it counts as fish held
	landed    int        // of a catch, where it is stated
	preserved units.Mass // of a catch: what was made of it and counts
	held      int        // of a catch: the fish of that
}

func (x *stored) left() int { return x.good + x.unchecked + x.failed }

func (x *stored) verdict() verdict.Verdict { return verdict.Worst(x.fish, x.load) }

// replay is the way through a ledger, day by day.
type replay struct {
	ledger *Ledger
	limits Stock
	on     Day
	lots   []stored
	names  map[string]int

	day           Day   // in hand, 0 before the first
	morning, held Stock // when it began, and now
	kept          int   // on it
	used          int
	over          [3]int // by how much a limit was last reported as passed: all, fresh, preserved
	week          PastWeek
	weeks         []PastWeek

	in, eaten, given, thrown units.Mass
	findings                 []verdict.Finding
	err                      error
}

// advance ends the day in hand, and the weeks that are over, before another.
func (r *replay) advance(to Day) {
	if to == r.day {
		return
	}
	if r.day != 0 {
		r.endDay()
	}
	for start := r.ledger.Start; to >= start+7*Day(r.week.Week+1); {
		r.week.End = r.held
		r.weeks = append(r.weeks, r.week)
		r.week = PastWeek{Week: r.week.Week + 1}
	}
	r.day, r.morning, r.kept = to, r.held, 0
}

// recount weighs what is left of a lot, and brings what counts of it into its catch and into what is held.
func (r *replay) recount(i int) {
	x := &r.lots[i]
	n := x.left()
	if !x.entry.Event.makes() {
		x.there = r.share(x, n)
		return
	}
	if r.ledger.Unsealed == UntilFailed {
		n -= x.failed
	}
	now := r.share(x, n)
	if x.there = now; n < x.left() {
		x.there = r.share(x, x.left())
	}
	root := &r.lots[x.root]
	root.preserved += now - x.counted
	x.counted = now
	fish, err := wholeFish(root.preserved, root.entry)
	if err != nil {
		r.err = err
	}
	r.held.Preserved += fish - root.held
	r.held.All += fish - root.held
	root.held = fish
}

// rounding is more than all that shares of a catch lose or gain by being whole quanta, and less than a flake of fish.
const rounding = 10 * units.Microgram

// wholeFish is how many whole fish of a catch a round mass is, rounded up.
func wholeFish(m units.Mass, catch *Entry) (int, error) {
	if m == 0 {
		return 0, nil
	}
	n, err := units.ProrateUp(units.Mass(catch.Count), max(1, m-rounding), catch.Round)
	return int(n), err
}

// share is the round mass of so many of a lot.
func (r *replay) share(x *stored, n int) units.Mass {
	m, err := units.ProrateDown(x.round, units.Mass(n), units.Mass(x.entry.Count))
	if err != nil {
		r.err = err
	}
	return m
}

// out takes so many from a lot, from its pools in their order, and returns their round mass.
func (r *replay) out(i, n int, pools ...*int) units.Mass {
	x := &r.lots[i]
	before := x.there
	if !x.entry.Event.makes() {
		r.held.Fresh -= n
		r.held.All -= n
	}
	for _, pool := range pools {
		some := min(n, *pool)
		*pool -= some
		n -= some
	}
	r.recount(i)
	return before - x.there
}
