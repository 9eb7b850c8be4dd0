package timetable

// A search looks for starts by deciding, one after the other, which of two pieces comes first. The earliest starts
// that a network allows are the best it has; where they put too much on a lane, some piece of those there must wait
// for another.
type search struct {
	*network
	most  []int64 // by node
	lanes []lane
	pairs []pair

	steps  int // left of this try
	taken  int
	early  bool // the first clash in time is decided first, not the tightest
	active []piece
	frames frames
}

// A choice is one way out of a clash: an arc, and how much room it leaves.
type choice struct {
	arc  arc
	room int64
}

// try looks for starts by which all has ended by a time, with so many steps; the starts are those of the nodes.
func (s *search) try(until int64, steps int, early bool) (Answer, []int64) {
	mark := len(s.trail)
	defer s.back(mark)
	for node := 1; node < s.n; node++ {
		if !s.add(arc{node, 0, s.most[node] - until}) {
			return Impossible, nil
		}
	}
	s.steps, s.early = steps, early
	answer := s.descend()
	if answer != Possible {
		return answer, nil
	}
	return Possible, append([]int64(nil), s.d[:s.n]...)
}

// descend decides clash after clash. Where it finds starts it leaves the network at them.
func (s *search) descend() Answer {
	if len(s.trail) > mostTrail {
		return Undecided
	}
	if !s.settle() || s.overloaded() {
		return Impossible
	}
	choices, clash := s.clash()
	if !clash {
		return Possible
	}
	for _, c := range choices {
		if s.steps <= 0 {
			return Undecided
		}
		s.steps--
		s.taken++
		mark := len(s.trail)
		if s.add(c.arc) {
			if answer := s.descend(); answer != Impossible {
				return answer
			}
			s.back(mark)
		}
		if !s.add(arc{c.arc.to, c.arc.from, 1 - c.arc.least}) { // it does not hold: at least one unit the other way
			return Impossible
		}
	}
	return Impossible
}

// settle decides every pair of which only one order is left, until nothing changes; false where a pair has none.
func (s *search) settle() bool {
	for again := true; again; {
		again = false
		for _, p := range s.pairs {
			if s.kept(p.first) || s.kept(p.second) {
				continue
			}
			first, second := s.room(p.first) >= 0, s.room(p.second) >= 0
			switch {
			case !first && !second:
				return false
			case !first:
				again = true
				s.add(p.second)
			case !second:
				again = true
				s.add(p.first)
			}
		}
	}
	return true
}

// clash finds where the earliest starts put too much on a lane and returns the ways out of one such place: of the
// tightest, the one whose widest way out leaves the least room, or of the first in time.
func (s *search) clash() (best []choice, found bool) {
	var bestRoom, bestAt int64
	for _, l := range s.lanes {
		for _, p := range l.pieces {
			at := s.start(p.node) + p.from
			if s.early && found && at >= bestAt {
				continue
			}
			over := s.over(l, at)
			if over == nil {
				continue
			}
			choices := s.choices(over)
			room := int64(-1)
			if len(choices) > 0 {
				room = choices[0].room
			}
			if !found || s.early || room < bestRoom || room == bestRoom && at < bestAt {
				best, bestRoom, bestAt, found = choices, room, at, true
			}
			if room < 0 {
				return nil, true
			}
		}
	}
	return best, found
}

// over returns pieces that are too many for a lane at a time, and would not be with any one of them less; nil where
// there is room for all.
func (s *search) over(l lane, at int64) []piece {
	s.active = s.active[:0]
	sum := int64(0)
	for _, p := range l.pieces {
		if begins := s.start(p.node); begins+p.from <= at && at < begins+p.to {
			sum += p.count
			i := len(s.active)
			s.active = append(s.active, p)
			for ; i > 0 && s.active[i-1].count < p.count; i-- { // the greatest first
				s.active[i] = s.active[i-1]
			}
			s.active[i] = p
		}
	}
	if sum <= l.capacity {
		return nil
	}
	sum = 0
	for i, p := range s.active {
		if sum += p.count; sum > l.capacity {
			return s.active[:i+1]
		}
	}
	return nil
}

// choices are the orders of two of some pieces that the network still allows, the widest first.
func (s *search) choices(over []piece) []choice {
	var choices []choice
	for _, p := range over {
		for _, q := range over {
			a := before(p, q)
			room := s.room(a)
			if p.node == q.node || room < 0 {
				continue
			}
			i := len(choices)
			choices = append(choices, choice{})
			for ; i > 0 && choices[i-1].room < room; i-- {
				choices[i] = choices[i-1]
			}
			choices[i] = choice{a, room}
		}
	}
	return choices
}
