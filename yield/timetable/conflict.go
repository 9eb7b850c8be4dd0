package timetable

import (
	"sort"
	"time"
)

// Conflict is what cannot hold together in an Impossible timetable: with all other bounds, capacities and hours taken
// away, these parts still leave no starts. First come deadlines that would do by themselves, by how little, then
// other parts, in the order of the problem.
type Conflict struct {
	Parts   []Part
	Minimal bool // proven of every part: without it the others can hold. Otherwise there may be parts too many
}

// Part is one part of a conflict, and the relief that would make the whole problem possible if all else stays as it
// is.
type Part struct {
	Kind     PartKind
	Bound    Bound  // of a bound
	Resource string // of a capacity or of hours
	Relief   Relief
}

// Relief is by how much one part would have to give way. Possible is enough by this part: a deadline later By, Units
// more of a resource, hours or the room to restart taken away. Impossible: no relief of this part is enough by
// itself. A bound that is "not before" is not asked: cooling and salting take what they take.
type Relief struct {
	Answer Answer
	By     time.Duration
	Units  int
	Least  bool // proven: less is not enough
}

// conflict finds parts that contradict, by leaving away what can be left away while the proof still stands.
func (r *planner) conflict() Conflict {
	gives := make([]int64, len(r.parts))
	minimal := true
	r.left = r.p.budget()
	for size := (len(r.parts) + 1) / 2; ; size = (size + 1) / 2 {
		for from := 0; from < len(r.parts); from += size {
			proven := r.leaveAway(gives, from, min(from+size, len(r.parts)))
			if size == 1 && !proven {
				minimal = false
			}
		}
		if size == 1 {
			break
		}
	}
	c := Conflict{Minimal: minimal}
	r.left = r.p.budget()
	for i := range r.parts {
		if gives[i] == 0 {
			c.Parts = append(c.Parts, r.part(i))
		}
	}
	sort.SliceStable(c.Parts, func(i, j int) bool { return c.Parts[i].Relief.before(c.Parts[j].Relief) })
	return c
}

// leaveAway takes parts away if what remains is still proven impossible. It reports false where that is open.
func (r *planner) leaveAway(gives []int64, from, to int) bool {
	some := false
	before := append([]int64(nil), gives...)
	for i := from; i < to; i++ {
		some = some || gives[i] == 0
		gives[i] = givesAll
	}
	if !some {
		return true
	}
	answer, _, _ := r.variant(gives)
	if answer != Impossible {
		copy(gives, before)
	}
	return answer != Undecided
}

// variant asks whether the problem can be planned if parts give way, in a fifth of the steps that are left.
func (r *planner) variant(gives []int64) (Answer, *search, []int64) {
	s, ok := r.search(gives)
	if !ok {
		return Impossible, nil, nil
	}
	until := int64(0)
	for node := 1; node < s.n; node++ {
		until = max(until, s.latest(node)+s.most[node])
	}
	share := r.left / 10
	for _, early := range [...]bool{false, true} {
		if answer, starts := r.try(s, until, share, early); answer != Undecided {
			return answer, s, starts
		}
	}
	return Undecided, nil, nil
}

func (r *planner) part(i int) Part {
	p := r.parts[i]
	part := Part{Kind: p.kind}
	switch p.kind {
	case OfBound:
		part.Bound = r.p.Bounds[p.index]
	case OfCapacity, OfHours:
		part.Resource = r.p.Resources[p.index].Name
	}
	if p.kind == OfBound && part.Bound.Sense == NotBefore {
		return part
	}
	gives := make([]int64, len(r.parts))
	gives[i] = givesAll
	answer, s, starts := r.variant(gives)
	part.Relief.Answer = answer
	if answer != Possible {
		return part
	}
	switch p.kind {
	case OfBound, OfEnd:
		by, least := r.relief(i, r.missed(p, s, starts))
		part.Relief.By, part.Relief.Least = r.time(by), least
	case OfCapacity:
		more := max(lane{pieces: r.usage[p.index]}.demand(), 1)
		by, least := r.relief(i, more)
		part.Relief.Units, part.Relief.Least = int(by), least
	default:
		part.Relief.Least = true
	}
	return part
}

// missed is by how much starts miss a part that was taken away.
func (r *planner) missed(p part, s *search, starts []int64) int64 {
	if p.kind == OfEnd {
		return s.end(starts) - r.until
	}
	by := int64(0)
	for _, a := range p.arcs {
		if a.from < s.n && a.to < s.n {
			by = max(by, a.least-(starts[a.to]-starts[a.from]))
		}
	}
	return by
}

// relief is the least by which part i has to give way, between nothing and what is enough, and whether it is proven.
func (r *planner) relief(i int, enough int64) (by int64, least bool) {
	gives := make([]int64, len(r.parts))
	least = true
	for low := int64(1); low < enough; {
		gives[i] = low + (enough-low)/2
		switch answer, s, starts := r.variant(gives); answer {
		case Possible:
			enough = gives[i]
			if r.parts[i].kind != OfCapacity {
				enough = min(enough, max(low, r.missed(r.parts[i], s, starts)))
			}
		case Undecided:
			least = false
			low = gives[i] + 1
		default:
			low = gives[i] + 1
			least = true
		}
	}
	return enough, least
}

// before puts what is enough first, deadlines by how little, then what is not asked, then what is not enough.
func (r Relief) before(other Relief) bool {
	if r.rank() != other.rank() {
		return r.rank() < other.rank()
	}
	return r.By < other.By
}

func (r Relief) rank() int {
	switch {
	case r.Answer == Possible && r.By > 0:
		return 0
	case r.Answer == Possible:
		return 1
	case r.Answer == Undecided:
		return 2
	case r.Answer == Impossible:
		return 3
	}
	return 4
}
