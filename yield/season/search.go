package season

import (
	"strconv"

	"example.org/lakelarder/units"
)

// searchSteps is how many weeks and fish a search goes through before it gives up: some tens of milliseconds. A step
// past a long shelf counts as several: it is copied in each.
const (
	searchSteps = 20_000
	longShelf   = 64
)

// choices are what a search decides: how many fish to keep in each week, and which to begin.
type choices struct {
	kept  []int
	begun []Begun
}

// search tries every number of fish to keep in a week and every fish to begin next, and keeps the way that eats the
// most. Of preserved fish only the oldest is tried: a younger one keeps longer and counts the same.
type search struct {
	year   Year
	limits Stock
	caught []int      // by week, by the daily limit
	later  []int      // caught in the week and after it
	most   units.Mass // that can be eaten at all
	best   units.Mass
	found  choices // of the best way
	path   choices // of the way that is being tried
	seen   map[string]units.Mass
	steps  int // left
}

// better returns the choices of the way that eats the most, where that is more than a mass, and whether all ways were
// tried within so many steps, from which it takes its own.
func (y Year) better(than, most units.Mass, steps *int) (found choices, complete bool) {
	q := search{
		steps: min(searchSteps, *steps), year: y, limits: y.Rule.limits(), most: most, best: than, seen: map[string]units.Mass{},
		caught: make([]int, y.Weeks), later: make([]int, y.Weeks+1), path: choices{kept: make([]int, y.Weeks)},
	}
	for _, t := range y.Trips {
		q.caught[t.Week] += t.catch(y.Fishing, y.Rule)
	}
	for week := y.Weeks - 1; week >= 0; week-- {
		q.later[week] = q.later[week+1] + q.caught[week]
	}
	before := q.steps
	q.week(y.shelf(), 0, 0)
	*steps -= before - q.steps
	return q.found, q.steps >= 0
}

// counted is a list with neighbours that are alike counted together; nil where there are none.
func counted(begun []Begun) []Begun {
	var all []Begun
	for _, b := range begun {
		if last := len(all) - 1; last >= 0 && alike(all[last], b) {
			all[last].Fish += b.Fish
			continue
		}
		all = append(all, b)
	}
	return all
}

func alike(a, b Begun) bool {
	return a.Week == b.Week && a.Caught == b.Caught && a.Preserved == b.Preserved
}

// over reports whether there is no use in trying on.
func (q *search) over() bool { return q.steps < 0 || q.best >= q.most }

// step counts what it costs to go past a shelf.
func (q *search) step(s shelf) { q.steps -= 1 + len(s.lots)/longShelf }

func (q *search) week(s shelf, week int, eaten units.Mass) {
	if week == q.year.Weeks {
		if eaten > q.best {
			q.best, q.found = eaten, choices{kept: append([]int(nil), q.path.kept...), begun: counted(q.path.begun)}
		}
		return
	}
	q.step(s)
	if q.over() || eaten+q.ahead(s, week) <= q.best || q.known(s, week, eaten) {
		return
	}
	s = s.copy()
	s.preserve(week-q.year.Lag, q.quota(s))
	for n := min(q.caught[week], q.year.lawful(s, q.limits), q.year.room(s, q.limits, week)); n >= 0 && !q.over(); n-- {
		now := s.copy()
		if n > 0 {
			now.keep(week, n, week+q.year.keeps(), q.year.Fish)
		}
		q.path.kept[week] = n
		q.eat(now, week, q.year.Weekly, eaten)
	}
}

// eat goes on with the fish that is begun, and tries each that may be begun next.
func (q *search) eat(s shelf, week int, rest, eaten units.Mass) {
	bite := s.bite(rest)
	rest, eaten = rest-bite, eaten+bite
	tried := false
	if q.step(s); rest > 0 {
		preserved := false
		for i, l := range s.lots {
			for _, b := range [...]Begun{
				{Week: week, Caught: l.week, Fish: l.fresh}, {Week: week, Caught: l.week, Fish: l.preserved, Preserved: true},
			} {
				if b.Fish == 0 || b.Preserved && preserved || q.over() {
					continue
				}
				tried, preserved = true, preserved || b.Preserved
				next := s.copy()
				next.beginLot(i, !b.Preserved)
				begun := q.path.begun
				b.Fish = 1
				q.path.begun = append(begun, b)
				q.eat(next, week, rest, eaten)
				q.path.begun = begun
			}
		}
	}
	if !tried && !q.over() && q.sound(s, week) {
		q.week(s, week+1, eaten)
	}
}

// sound reports whether nothing is left that is too old in the week after this one, preserved or fresh.
func (q *search) sound(s shelf, week int) bool {
	if week+1 == q.year.Weeks {
		return true
	}
	next := s.copy()
	next.preserve(week+1-q.year.Lag, q.quota(s))
	keeps, waits := week+1-q.year.keeps(), week+1-q.year.fresh()
	if s.open > 0 && (next.openWeek < keeps || next.openFresh && next.openWeek < waits) {
		return false
	}
	for _, l := range next.lots {
		if l.fresh+l.preserved > 0 && l.week < keeps || l.fresh > 0 && l.week < waits {
			return false
		}
	}
	return true
}

// quota is how many more fish may be preserved.
func (q *search) quota(s shelf) int {
	if q.limits.Preserved > 0 {
		return q.limits.Preserved - s.stock().Preserved
	}
	return s.kept
}

// ahead is what can be eaten from a week on at the most: the wish, and no more than there is and will be caught.
func (q *search) ahead(s shelf, week int) units.Mass {
	wish := q.year.Weekly * units.Mass(q.year.Weeks-week)
	fish := s.kept - s.done + q.later[week]
	if units.Mass(fish) > wish/q.year.Fish {
		return wish
	}
	return units.Mass(fish) * q.year.Fish
}

// known reports whether this shelf was reached in this week before, with no less eaten, and notes it.
func (q *search) known(s shelf, week int, eaten units.Mass) bool {
	key := strconv.AppendInt(nil, int64(week), 36)
	add := func(n int) { key = strconv.AppendInt(append(key, ','), int64(n), 36) }
	if q.year.Rule.Annual > 0 {
		add(s.kept)
	}
	if s.open > 0 {
		key = strconv.AppendInt(append(key, 'p'), int64(s.open), 36)
		if s.openFresh {
			key = append(key, 'f')
		}
		add(s.openWeek)
	}
	for _, l := range s.lots {
		if l.fresh+l.preserved > 0 {
			key = append(key, ';')
			add(l.week)
			add(l.fresh)
			add(l.preserved)
		}
	}
	before, ok := q.seen[string(key)]
	if ok && before >= eaten {
		return true
	}
	q.seen[string(key)] = eaten
	return false
}
