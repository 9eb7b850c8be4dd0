package season

import "example.org/lakelarder/units"

// lot is what is left of one trip's fish, not yet begun: so many of each state, of the mass each, which are eaten in
// the week until at the latest. Those that were there when the plan began stand before all others.
type lot struct {
	week, fresh, preserved int
	until                  int
	each                   units.Mass
	there                  bool
}

// shelf is the state of the walk. Fish leave the fresh ones in the order of their catch, so counts since the start tell
// how many are in each state: kept − left are fresh, left − done preserved.
type shelf struct {
	kept, left, done int
	lots             []lot
	open             units.Mass // what is left of the fish that is begun; zero when none is
	openWeek         int        // when it was caught
	openFresh        bool
	openUntil        int
	openThere        bool
	fresh, preserved int        // the first lots that may have such fish
	before           int        // fish that were there when the plan began, less those that count against the cap
	food, raw        units.Mass // of all that may be eaten, and of the fresh part of it
}

func (s *shelf) stock() Stock {
	return Stock{All: s.kept - s.done, Fresh: s.kept - s.left, Preserved: s.left - s.done}
}

// preserve moves the fish caught up to a week out of the fresh ones, oldest first, at most room of them.
func (s *shelf) preserve(caught, room int) int {
	moved := 0
	if s.open > 0 && s.openFresh && s.openWeek <= caught && room > 0 {
		s.openFresh = false
		s.raw -= s.open
		moved++
	}
	for ; s.fresh < len(s.lots) && (s.lots[s.fresh].week <= caught || s.lots[s.fresh].fresh == 0); s.fresh++ {
		l := &s.lots[s.fresh]
		n := max(0, min(l.fresh, room-moved))
		s.raw -= l.each * units.Mass(n)
		l.fresh -= n
		l.preserved += n
		moved += n
		if l.fresh > 0 {
			break
		}
	}
	s.left += moved
	return moved
}

func (s *shelf) keep(week, n, until int, fish units.Mass) {
	s.kept += n
	s.food += fish * units.Mass(n)
	s.raw += fish * units.Mass(n)
	if last := len(s.lots) - 1; last >= 0 && s.lots[last].week == week {
		s.lots[last].fresh += n
		return
	}
	s.lots = append(s.lots, lot{week: week, fresh: n, until: until, each: fish})
}

// eat takes a mass from the fish begun and the next ones, and adds it to what was eaten at each age.
func (s *shelf) eat(week int, mass units.Mass, order Order, ages []units.Mass) units.Mass {
	rest := mass
	for rest > 0 && (s.open > 0 || s.begin(order)) {
		age := week - s.openWeek
		bite := s.bite(rest)
		ages[age] += bite
		rest -= bite
	}
	return mass - rest
}

// eatListed is eat with the fish to begin as a search chose them.
func (s *shelf) eatListed(week int, mass units.Mass, begun []Begun, ages []units.Mass) units.Mass {
	eaten := s.eaten(week, mass, ages)
	for _, b := range begun {
		for n := 0; b.Week == week && n < b.Fish; n++ {
			s.beginListed(b)
			eaten += s.eaten(week, mass-eaten, ages)
		}
	}
	return eaten
}

// eaten is what is eaten of the fish that is begun, added to what was eaten at its age.
func (s *shelf) eaten(week int, most units.Mass, ages []units.Mass) units.Mass {
	age := week - s.openWeek
	bite := s.bite(most)
	if bite > 0 {
		ages[age] += bite
	}
	return bite
}

// bite eats of the fish that is begun, at most a mass.
func (s *shelf) bite(most units.Mass) units.Mass {
	if s.open == 0 {
		return 0
	}
	bite := min(most, s.open)
	s.food -= bite
	if s.openFresh {
		s.raw -= bite
	}
	if s.open -= bite; s.open == 0 {
		s.done++
		if s.openFresh {
			s.left++
		}
	}
	return bite
}

// begin opens the next fish and reports whether there is one.
func (s *shelf) begin(order Order) bool {
	for ; s.fresh < len(s.lots) && s.lots[s.fresh].fresh == 0; s.fresh++ {
	}
	for ; s.preserved < len(s.lots) && s.lots[s.preserved].preserved == 0 && s.preserved < s.fresh; s.preserved++ {
	}
	fresh, preserved := s.fresh < len(s.lots), s.preserved < len(s.lots) && s.lots[s.preserved].preserved > 0
	switch {
	case fresh && (order == FreshFirst || !preserved):
		s.beginLot(s.fresh, true)
	case preserved:
		s.beginLot(s.preserved, false)
	default:
		return false
	}
	return true
}

// beginLot opens a fish of a lot, which has one.
func (s *shelf) beginLot(i int, fresh bool) {
	l := &s.lots[i]
	if fresh {
		l.fresh--
	} else {
		l.preserved--
	}
	s.open, s.openWeek, s.openFresh, s.openUntil, s.openThere = l.each, l.week, fresh, l.until, l.there
}

// beginListed opens a fish that a search chose.
func (s *shelf) beginListed(b Begun) {
	for i := range s.lots {
		if s.lots[i].week == b.Caught {
			s.beginLot(i, !b.Preserved)
			return
		}
	}
}

// copy is a shelf of its own, with room for one more lot.
func (s shelf) copy() shelf {
	s.lots = append(make([]lot, 0, len(s.lots)+1), s.lots...)
	return s
}
