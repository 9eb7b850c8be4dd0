package timetable

import "time"

// A model is a checked problem in whole units of its own, the greatest common divisor of its times, so that all that
// is added and compared is whole. Its nodes are the plan (0), the tasks from 1 on in their order, and the spare slot
// as the last.
type model struct {
	p     Problem
	unit  time.Duration
	until int64
	spans []span // by node
	spare int    // its node, 0 without one
	parts []part
	usage [][]piece // by resource: of tasks and spare
}

// A span is when the steps of a node start after it, at the least and at the most; the last is the end.
type span struct{ least, most []int64 }

func (s span) longest() int64 { return s.most[len(s.most)-1] }

// An arc says that node to starts not before node from and least.
type arc struct {
	from, to int
	least    int64
}

// A part is what can give way: see Conflict. A part that gives way by x weakens its arcs by x.
type part struct {
	kind  PartKind
	index int   // of the bound or the resource
	arcs  []arc // of a bound, and of the room for a second run
}

// givesAll, in place of how far a part gives way, takes it away.
const givesAll = int64(1) << 60

func newModel(p Problem, tasks names) *model {
	m := &model{p: p, unit: p.unit(), spans: []span{{[]int64{0}, []int64{0}}}}
	m.until = m.whole(p.Until)
	for _, t := range p.Tasks {
		s := span{[]int64{0}, []int64{0}}
		for k, step := range t.Steps {
			s.least = append(s.least, s.least[k]+m.whole(step.Takes.Least))
			s.most = append(s.most, s.most[k]+m.whole(step.Takes.Most))
		}
		m.spans = append(m.spans, s)
	}
	var again []int
	for _, name := range p.Restart.Tasks {
		again = append(again, tasks[name]+1)
	}
	if len(again) > 0 {
		m.addSpare(again)
	}
	m.parts = append(m.parts, part{kind: OfEnd})
	for i, b := range p.Bounds {
		m.parts = append(m.parts, part{OfBound, i, m.boundArcs(b, tasks, again)})
	}
	for i, r := range p.Resources {
		m.usage = append(m.usage, m.usageOf(r.Name, again))
		m.parts = append(m.parts, part{kind: OfCapacity, index: i})
		if len(r.Closed) > 0 {
			m.parts = append(m.parts, part{kind: OfHours, index: i})
		}
	}
	if m.spare > 0 {
		m.parts = append(m.parts, part{kind: OfRestart, arcs: m.restartArcs(again)})
	}
	return m
}

func (m *model) whole(d time.Duration) int64 { return int64(d / m.unit) }

// unit is the greatest common divisor of all times of the problem.
func (p Problem) unit() time.Duration {
	unit := p.Until
	with := func(d time.Duration) {
		for d != 0 {
			unit, d = d, unit%d
		}
	}
	for _, t := range p.Tasks {
		for _, s := range t.Steps {
			with(s.Takes.Least)
			with(s.Takes.Most)
		}
	}
	for _, r := range p.Resources {
		for _, w := range r.Closed {
			with(w.From)
			with(w.To)
		}
	}
	for _, b := range p.Bounds {
		with(b.Gap)
	}
	with(p.Restart.Within.Value)
	return max(unit, -unit)
}

func (m *model) addSpare(again []int) {
	m.spare = len(m.spans)
	var s span
	for _, node := range again {
		if s.most == nil || m.spans[node].longest() > s.longest() {
			s = m.spans[node]
		}
	}
	m.spans = append(m.spans, s)
}

// boundArcs are the arc of a bound, and those by which it holds for the second run of a task that may be restarted.
func (m *model) boundArcs(b Bound, tasks names, again []int) []arc {
	to, from := node(b.To, tasks), node(b.From, tasks)
	arcs := []arc{m.arc(b, to, from, to, from)}
	switch toAgain, fromAgain := holds(again, to), holds(again, from); {
	case toAgain && !fromAgain && b.To.Edge == End:
		arcs = append(arcs, m.arc(b, to, from, m.spare, from))
	case fromAgain && !toAgain && b.From.Edge == End:
		arcs = append(arcs, m.arc(b, to, from, to, m.spare))
	}
	return arcs
}

// arc is a bound between the moments of two nodes, held by the starts of two others: a moment of a task lies between
// its least and its most after the start, so the bound is held against the worst of both.
func (m *model) arc(b Bound, to, from, heldTo, heldFrom int) arc {
	toLeast, toMost := m.moment(to, b.To)
	fromLeast, fromMost := m.moment(from, b.From)
	gap := m.whole(b.Gap)
	if b.Sense == NotBefore {
		return arc{heldFrom, heldTo, fromMost + gap - toLeast}
	}
	return arc{heldTo, heldFrom, toMost - fromLeast - gap}
}

// moment is when a moment comes after the start of its node, at the least and at the most.
func (m *model) moment(node int, at Moment) (least, most int64) {
	if node == 0 {
		return 0, 0
	}
	s, first, last := m.spans[node], 0, len(m.spans[node].most)-1
	if at.Step != "" {
		first = m.p.Tasks[node-1].step(at.Step)
		last = first + 1
	}
	if at.Edge == Start {
		return s.least[first], s.most[first]
	}
	return s.least[last], s.most[last]
}

func (m *model) usageOf(resource string, again []int) []piece {
	var all, second []piece
	for i, t := range m.p.Tasks {
		of := m.spans[i+1].pieces(i+1, t, resource)
		all = append(all, of...)
		if holds(again, i+1) {
			second = append(second, of...)
		}
	}
	return append(all, cover(m.spare, second)...)
}

func (m *model) restartArcs(again []int) []arc {
	var arcs []arc
	for _, node := range again {
		s := m.spans[node]
		arcs = append(arcs, arc{node, m.spare, s.longest()})
		if m.p.Restart.Within.Given {
			arcs = append(arcs, arc{m.spare, node, s.longest() - s.least[len(s.least)-1] - m.whole(m.p.Restart.Within.Value)})
		}
	}
	return arcs
}

// node is that of a moment: 0 for the plan.
func node(at Moment, tasks names) int {
	if at.Task == "" {
		return 0
	}
	return tasks[at.Task] + 1
}

func holds(nodes []int, n int) bool {
	for _, one := range nodes {
		if one == n {
			return true
		}
	}
	return false
}
