package timetable

import "sort"

// A lane is one resource of a search: what occupies it, the closed hours of node 0 included.
type lane struct {
	capacity int64
	pieces   []piece
	shut     []piece // hours in which no piece of it can be, in order
}

// A pair is two pieces that are never on a lane together: one of two arcs holds.
type pair struct{ first, second arc }

// search builds the search for a variant of the problem, in which each part gives way by so much. It reports false
// where the bounds by themselves already contradict.
func (m *model) search(gives []int64) (*search, bool) {
	until, nodes := m.until, len(m.spans)
	for i, p := range m.parts {
		switch {
		case p.kind == OfEnd && gives[i] == givesAll:
			until = m.forever()
		case p.kind == OfEnd:
			until += gives[i]
		case p.kind == OfRestart && gives[i] == givesAll:
			nodes-- // the spare is the last
		}
	}
	most := make([]int64, nodes)
	for node := range most {
		most[node] = m.spans[node].longest()
		if most[node] > until {
			return nil, false
		}
	}
	s := &search{network: newNetwork(most, until), most: most, lanes: m.lanes(gives, nodes)}
	arcs := m.arcs(gives, nodes)
	for _, a := range append(arcs, alike(nodes, arcs, m.spans, s.lanes)...) {
		if !s.add(a) {
			return nil, false
		}
	}
	s.pairs = pairsOf(s.lanes)
	return s, true
}

// forever is time enough for anything that can be done at all: all steps, and a gap before each task, one after the
// other, behind all windows.
func (m *model) forever() int64 { return m.whole(longest * (mostSteps + mostTasks + 10)) }

// arcs are those of all parts, as far as they hold in a variant.
func (m *model) arcs(gives []int64, nodes int) []arc {
	var arcs []arc
	for i, p := range m.parts {
		if gives[i] == givesAll {
			continue
		}
		for _, a := range p.arcs {
			if a.from < nodes && a.to < nodes {
				a.least -= gives[i]
				arcs = append(arcs, a)
			}
		}
	}
	return arcs
}

// lanes are the resources of a variant. More of one adds to its capacity, not to what is left of it in a window.
func (m *model) lanes(gives []int64, nodes int) []lane {
	lanes := make([]lane, len(m.usage))
	for i, used := range m.usage {
		lanes[i].capacity = int64(m.p.Resources[i].Capacity)
		for _, p := range used {
			if p.node < nodes {
				lanes[i].pieces = append(lanes[i].pieces, p)
			}
		}
	}
	for i, p := range m.parts {
		if p.kind == OfCapacity {
			lanes[p.index].capacity += min(gives[i], lanes[p.index].demand())
		}
	}
	for i, p := range m.parts {
		if p.kind == OfHours && gives[i] != givesAll {
			l := &lanes[p.index]
			l.pieces = append(l.pieces, m.closed(m.p.Resources[p.index], l.capacity)...)
		}
	}
	for i := range lanes {
		lanes[i].shut = shutHours(lanes[i], lanes)
	}
	return lanes
}

// demand is what all pieces of a lane take together.
func (l lane) demand() int64 {
	sum := int64(0)
	for _, p := range l.pieces {
		sum += p.count
	}
	return sum
}

func (m *model) closed(r Resource, capacity int64) []piece {
	var shut []piece
	for _, w := range r.Closed {
		shut = append(shut, piece{from: m.whole(w.From), to: m.whole(w.To), count: capacity - int64(w.Left)})
	}
	return cover(0, shut)
}

// pairsOf are the pairs of pieces that are too much for their lane together, each once.
func pairsOf(lanes []lane) []pair {
	var pairs []pair
	for _, l := range lanes {
		for i, p := range l.pieces {
			for _, q := range l.pieces[i+1:] {
				switch {
				case p.node == q.node || p.count+q.count <= l.capacity:
				case p.node < q.node:
					pairs = append(pairs, pair{before(p, q), before(q, p)})
				default:
					pairs = append(pairs, pair{before(q, p), before(p, q)})
				}
			}
		}
	}
	sort.Slice(pairs, func(i, j int) bool {
		a, b := pairs[i], pairs[j]
		switch {
		case a.first.from != b.first.from:
			return a.first.from < b.first.from
		case a.first.to != b.first.to:
			return a.first.to < b.first.to
		case a.first.least != b.first.least:
			return a.first.least > b.first.least
		}
		return a.second.least > b.second.least
	})
	var each []pair
	for i, p := range pairs {
		if i == 0 || p != pairs[i-1] {
			each = append(each, p)
		}
	}
	return each
}

// before is the arc by which one piece has ended when another begins.
func before(p, q piece) arc { return arc{p.node, q.node, p.to - q.from} }

// alike are arcs that put tasks into order between which nothing tells the difference: whatever can be planned can be
// planned so.
func alike(nodes int, arcs []arc, spans []span, lanes []lane) []arc {
	const none = -givesAll
	direct := make([]int64, nodes*nodes)
	for i := range direct {
		direct[i] = none
	}
	for _, a := range arcs {
		at := a.from*nodes + a.to
		direct[at] = max(direct[at], a.least)
	}
	same := func(a, b int) bool {
		for k := 0; k < nodes; k++ {
			if k != a && k != b && (direct[a*nodes+k] != direct[b*nodes+k] || direct[k*nodes+a] != direct[k*nodes+b]) {
				return false
			}
		}
		return direct[a*nodes+b] == direct[b*nodes+a] && spans[a].longest() == spans[b].longest() && sameUse(lanes, a, b)
	}
	var order []arc
	for b := 2; b < nodes; b++ {
		for a := b - 1; a > 0; a-- {
			if same(a, b) {
				order = append(order, arc{a, b, 0})
				break
			}
		}
	}
	return order
}

// sameUse reports whether two nodes have the same pieces on every lane.
func sameUse(lanes []lane, a, b int) bool {
	for _, l := range lanes {
		var of [2][]piece
		for _, p := range l.pieces {
			for side, node := range [2]int{a, b} {
				if p.node == node {
					p.node = 0
					of[side] = append(of[side], p)
					p.node = node
				}
			}
		}
		if len(of[0]) != len(of[1]) {
			return false
		}
		for i := range of[0] {
			if of[0][i] != of[1][i] {
				return false
			}
		}
	}
	return true
}
