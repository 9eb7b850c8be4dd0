package timetable

import "sort"

// A piece is a resource occupied from and to times after the start of a node, as it must be reckoned with: by the
// shortest that can come before and the longest that can come after. Node 0 is the plan itself.
type piece struct {
	node     int
	from, to int64
	count    int64
}

// cover is what pieces of one node take at every time where only one of them is real at once: the greatest count. The
// result is in order of time, and no two of it overlap.
func cover(node int, parts []piece) []piece {
	var cuts []int64
	for _, p := range parts {
		cuts = append(cuts, p.from, p.to)
	}
	sort.Slice(cuts, func(i, j int) bool { return cuts[i] < cuts[j] })
	var covered []piece
	for i := 1; i < len(cuts); i++ {
		p := piece{node: node, from: cuts[i-1], to: cuts[i]}
		for _, part := range parts {
			if part.from <= p.from && p.to <= part.to {
				p.count = max(p.count, part.count)
			}
		}
		last := len(covered) - 1
		switch {
		case p.from == p.to || p.count == 0:
		case last >= 0 && covered[last].to == p.from && covered[last].count == p.count:
			covered[last].to = p.to
		default:
			covered = append(covered, p)
		}
	}
	return covered
}

// uses is the count that a list of uses has of a resource.
func uses(list []Use, resource string) int64 {
	for _, u := range list {
		if u.Resource == resource {
			return int64(u.Count)
		}
	}
	return 0
}

// pieces are what a task takes of a resource. Step k runs at some time between the least that comes before it and the
// most to its end.
func (s span) pieces(node int, t Task, resource string) []piece {
	var parts []piece
	for k, step := range t.Steps {
		count := uses(t.Uses, resource) + uses(step.Uses, resource)
		parts = append(parts, piece{from: s.least[k], to: s.most[k+1], count: count})
	}
	return cover(node, parts)
}
