package timetable

// Plan returns a Timetable: the starts that let all tasks end soonest, each as early as the others allow; or what is
// in the way. A problem that is malformed or beyond the limits named at its fields is an InputError or a
// units.RangeError. Equal problems have equal timetables. The search takes at most Problem.Steps; the parts of a
// Conflict at most as many again, and so does their relief.
func Plan(p Problem) (Timetable, error) {
	tasks, _, err := p.check()
	if err != nil {
		return Timetable{}, err
	}
	r := &planner{model: newModel(p, tasks), left: p.budget()}
	found := r.plan()
	return r.timetable(found), nil
}

// A planner spends the steps of a problem.
type planner struct {
	*model
	left  int
	taken int
}

// A finding is what the planner knows: starts by node, the end they give, and the end that none comes before.
type finding struct {
	answer   Answer
	starts   []int64
	end      int64
	noSooner int64
	conflict Conflict
}

func (r *planner) plan() finding {
	nothing := make([]int64, len(r.parts))
	s, ok := r.search(nothing)
	if !ok {
		return finding{answer: Impossible, conflict: r.conflict()}
	}
	f := finding{noSooner: s.soonest()}
	f.answer, f.starts = r.feasible(s)
	switch f.answer {
	case Impossible:
		f.conflict = r.conflict()
	case Possible:
		f.end = s.end(f.starts)
		r.shorten(s, &f)
	}
	return f
}

// end is when all nodes have ended that start so, each at its most; soonest a time that no starts beat.
func (s *search) end(starts []int64) int64 {
	end := int64(0)
	for node := 1; node < s.n; node++ {
		end = max(end, starts[node]+s.most[node])
	}
	return end
}

func (s *search) soonest() int64 { return s.end(s.d[:s.n]) }

// try runs a search on some of the steps that are left.
func (r *planner) try(s *search, until int64, steps int, early bool) (Answer, []int64) {
	s.taken = 0
	answer, starts := s.try(until, min(steps, r.left), early)
	r.left -= s.taken
	r.taken += s.taken
	return answer, starts
}

// feasible looks for any starts. A search that goes astray is given up early and made in the other order of clashes.
func (r *planner) feasible(s *search) (Answer, []int64) {
	until := int64(0)
	for node := 1; node < s.n; node++ {
		until = max(until, s.latest(node)+s.most[node])
	}
	all := r.left
	for i, share := range [...]int{8, 8, 2, 1} {
		answer, starts := r.try(s, until, max(all/share, 1), i%2 == 1)
		if answer != Undecided || r.left == 0 {
			return answer, starts
		}
	}
	return Undecided, nil
}

// shorten halves the times between what is found and what is proven; a time that is left undecided counts as not to
// be had, but is not proven. What steps remain go into the proof.
func (r *planner) shorten(s *search, f *finding) {
	for low := f.noSooner; low < f.end && r.left > 0; {
		middle := low + (f.end-low)/2
		switch r.within(s, f, middle, max(r.left/6, 1)) {
		case Impossible:
			low = middle + 1
			f.noSooner = max(f.noSooner, low)
		case Undecided:
			low = middle + 1
		}
	}
	for answer := Possible; answer == Possible && f.noSooner < f.end && r.left > 0; {
		if answer = r.within(s, f, f.end-1, r.left); answer == Impossible {
			f.noSooner = f.end
		}
	}
}

// within looks for starts by which all ends by a time, in both orders of clashes.
func (r *planner) within(s *search, f *finding, until int64, steps int) Answer {
	for _, early := range [...]bool{false, true} {
		answer, starts := r.try(s, until, (steps+1)/2, early)
		switch answer {
		case Impossible:
			return Impossible
		case Possible:
			f.starts, f.end = starts, s.end(starts)
			return Possible
		}
	}
	return Undecided
}
