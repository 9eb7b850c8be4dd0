package timetable

// A network holds, for every two nodes, by how much the start of one comes at least after that of the other, all
// paths between them reckoned with: d[a*n+b] is the least of b after a. It remembers what it was, so that a search
// can step back.
type network struct {
	n     int
	d     []int64
	trail []change
}

type change struct {
	at  int
	was int64
}

// mostTrail bounds the memory of a search, some 64 MB; one that needs more is undecided.
const mostTrail = 4_000_000

// newNetwork has every node start at or after the plan's start and end, at the most it takes, by a time.
func newNetwork(most []int64, until int64) *network {
	n := len(most)
	w := &network{n: n, d: make([]int64, n*n)}
	for a := 1; a < n; a++ {
		for b := 0; b < n; b++ {
			if a != b {
				w.d[a*n+b] = most[a] - until // over the plan's start
			}
		}
	}
	return w
}

// start is the earliest start of a node, and latest the last.
func (w *network) start(node int) int64  { return w.d[node] }
func (w *network) latest(node int) int64 { return -w.d[node*w.n] }

// room is by how much an arc could still be longer; below zero it cannot be added.
func (w *network) room(a arc) int64 { return -w.d[a.to*w.n+a.from] - a.least }

// kept reports whether an arc holds already.
func (w *network) kept(a arc) bool { return w.d[a.from*w.n+a.to] >= a.least }

// add makes an arc hold and carries it to all paths; it reports false, and changes nothing, where that cannot be.
func (w *network) add(a arc) bool {
	n, d := w.n, w.d
	if w.kept(a) {
		return true
	}
	if w.room(a) < 0 {
		return false
	}
	after := d[a.to*n : a.to*n+n]
	for i := 0; i < n; i++ {
		row := d[i*n : i*n+n]
		via := row[a.from] + a.least
		if via <= row[a.to] {
			continue
		}
		for j, further := range after {
			if via+further > row[j] {
				w.trail = append(w.trail, change{i*n + j, row[j]})
				row[j] = via + further
			}
		}
	}
	return true
}

// back undoes all changes since the trail was so long.
func (w *network) back(mark int) {
	for i := len(w.trail) - 1; i >= mark; i-- {
		w.d[w.trail[i].at] = w.trail[i].was
	}
	w.trail = w.trail[:mark]
}
