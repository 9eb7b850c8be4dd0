package timetable

import "sort"

// overloaded reports whether some lane has more to do between two times than it can: each piece counts where it can
// only be between them.
func (s *search) overloaded() bool {
	for _, l := range s.lanes {
		if s.overfull(l) {
			return true
		}
	}
	return false
}

// A frame is when a piece can be at all, how long it is, and what it takes.
type frame struct {
	from, to, long, count int64
	closed                bool // hours that are closed, not a piece of a task
}

// frames are in order of the last end.
type frames []frame

func (f frames) Len() int           { return len(f) }
func (f frames) Less(i, j int) bool { return f[i].to < f[j].to }
func (f frames) Swap(i, j int)      { f[i], f[j] = f[j], f[i] }

// overfull looks at every two times between which a lane might be asked too much, in two ways: by the work of all
// pieces, and by how many of the shortest piece fit between the hours at which none can run, of which a remainder is
// of no use.
func (s *search) overfull(l lane) bool {
	s.frames = s.frames[:0]
	for _, p := range l.pieces {
		from, to := s.start(p.node)+p.from, s.latest(p.node)+p.to
		s.frames = append(s.frames, frame{from, to, p.to - p.from, p.count, p.node == 0})
	}
	sort.Sort(s.frames)
	for i, first := range s.frames {
		if i > 0 && s.frames[i-1].from == first.from {
			continue
		}
		work, many := int64(0), int64(0)
		shortest, least := givesAll, givesAll
		for _, f := range s.frames {
			if f.from < first.from {
				continue
			}
			work += f.count * f.long
			if work > l.capacity*(f.to-first.from) {
				return true
			}
			if f.closed {
				continue
			}
			many, shortest, least = many+1, min(shortest, f.long), min(least, f.count)
			if many > l.capacity/least*l.fitting(first.from, f.to, shortest) {
				return true
			}
		}
	}
	return false
}

// fitting is how many pieces of a length fit one after the other between two times, outside the hours that are shut
// to all of the lane.
func (l lane) fitting(from, to, long int64) int64 {
	if len(l.shut) == 0 {
		return (to - from) / long
	}
	fit := int64(0)
	for _, w := range l.shut {
		if w.to <= from || w.from >= to {
			continue
		}
		if w.from > from {
			fit += (w.from - from) / long
		}
		from = w.to
	}
	if to > from {
		fit += (to - from) / long
	}
	return fit
}

// shutHours are the closed hours, of any lane, in which no piece of this lane can be: those that are too much for a
// piece of its own node that lasts at least as long, for all pieces of the lane.
func shutHours(l lane, lanes []lane) []piece {
	var shut []piece
	for _, other := range lanes {
		for _, w := range other.pieces {
			if w.node == 0 && allShut(l, other, w) {
				shut = append(shut, piece{from: w.from, to: w.to, count: 1})
			}
		}
	}
	return cover(0, shut)
}

func allShut(l, other lane, w piece) bool {
	for _, p := range l.pieces {
		out := p.node == 0
		for _, q := range other.pieces {
			out = out || q.node == p.node && q.from <= p.from && p.to <= q.to && q.count+w.count > other.capacity
		}
		if !out {
			return false
		}
	}
	return true
}
