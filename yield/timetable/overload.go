package timetable

import "sort"

// overloaded reports whether some lane has more to do between two times than it can: each piece counts where it
// can only be between them.
func (s *search) overloaded() bool {
	for _, l := range s.lanes {
		if s.overfull(l) {
			return true
		}
	}
	return false
}

// A frame is when a piece can be at all, and what it takes.
type frame struct{ from, to, work int64 }

func (s *search) overfull(l lane) bool {
	s.frames = s.frames[:0]
	for _, p := range l.pieces {
		s.frames = append(s.frames, frame{s.start(p.node) + p.from, s.latest(p.node) + p.to, p.count * (p.to - p.from)})
	}
	sort.Sort(s.frames)
	for i, first := range s.frames {
		if i > 0 && s.frames[i-1].from == first.from {
			continue
		}
		work := int64(0)
		for _, f := range s.frames { // by their last end
			if f.from >= first.from {
				work += f.work
				if work > l.capacity*(f.to-first.from) {
					return true
				}
			}
		}
	}
	return false
}

// frames are in order of the last end.
type frames []frame

func (f frames) Len() int           { return len(f) }
func (f frames) Less(i, j int) bool { return f[i].to < f[j].to }
func (f frames) Swap(i, j int)      { f[i], f[j] = f[j], f[i] }
