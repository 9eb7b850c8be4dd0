package season

import (
	"cmp"
	"slices"
	"strings"
)

// placed is an entry with what it is ordered by: its day, whether something leaves by it, how often what it concerns
// was made of something else, and its event.
type placed struct {
	key uint64
	i   int // of the entry
	lot int // that it is of; below 0 where there is none
}

// arrange finds what the ledger begins, and returns its entries in the order in which they are taken: by day, and
// within a day so that what is made of a batch comes after it. Entries that are alike in all of that go by what else
// they state, so that their order in the ledger does not matter.
func (r *replay) arrange() []placed {
	entries := r.ledger.Entries
	r.names = make(map[string]int, len(entries)/2)
	for i := range entries {
		if e := &entries[i]; e.Event == Kept || e.Event.makes() {
			at, ok := r.names[e.Batch]
			if !ok {
				r.names[e.Batch] = len(r.lots)
				r.lots = append(r.lots, stored{entry: e, parent: -1, depth: unknown})
			} else if compare(e, r.lots[at].entry) < 0 {
				r.lots[at].entry = e
			}
		}
	}
	for i := range r.lots {
		r.trace(i)
	}
	all := make([]placed, len(entries))
	for i := range entries {
		all[i] = r.place(i)
	}
	order := func(a, b placed) int {
		if a.key != b.key {
			return cmp.Compare(a.key, b.key)
		}
		return compare(&entries[a.i], &entries[b.i])
	}
	if !slices.IsSortedFunc(all, order) {
		slices.SortFunc(all, order)
	}
	return all
}

// unknown is a depth not yet found, tracing one that is being looked for.
const (
	unknown = -1
	tracing = -2
)

// trace finds of what a lot is made, how deep, and its catch. A lot that is made of itself, or of nothing known, is
// its own.
func (r *replay) trace(i int) int {
	x := &r.lots[i]
	if x.depth == tracing {
		return 0
	}
	if x.depth != unknown {
		return x.depth
	}
	x.depth, x.root = tracing, i
	depth := 0
	if at, ok := r.names[x.entry.From]; ok && x.entry.Event.makes() {
		depth = min(r.trace(at)+1, deepest)
		x = &r.lots[i]
		x.parent, x.root = at, r.lots[at].root
	}
	x.depth = depth
	return depth
}

// deepest is as deep as the order reckons; what is deeper has no place in a kitchen.
const deepest = 1<<16 - 1

// place finds the lot of an entry and its order.
func (r *replay) place(i int) placed {
	e := &r.ledger.Entries[i]
	p := placed{i: i, lot: -1}
	depth, leaves := 0, uint64(0)
	if at, ok := r.names[e.Batch]; ok {
		p.lot, depth = at, r.lots[at].depth
	}
	if e.Event.leaves() {
		leaves, depth = 1, 0
	}
	p.key = uint64(e.Day)<<32 | leaves<<24 | uint64(depth)<<8 | uint64(e.Event)
	return p
}

// compare orders entries by everything they state.
func compare(a, b *Entry) int {
	switch {
	case a.Day != b.Day:
		return cmp.Compare(a.Day, b.Day)
	case a.Event != b.Event:
		return cmp.Compare(a.Event, b.Event)
	case a.Batch != b.Batch:
		return strings.Compare(a.Batch, b.Batch)
	case a.From != b.From:
		return strings.Compare(a.From, b.From)
	case a.Taken != b.Taken:
		return cmp.Compare(a.Taken, b.Taken)
	case a.Count != b.Count:
		return cmp.Compare(a.Count, b.Count)
	case a.Product != b.Product:
		return strings.Compare(a.Product, b.Product)
	case a.Round != b.Round:
		return cmp.Compare(a.Round, b.Round)
	case a.Audit.Value != b.Audit.Value:
		return cmp.Compare(b.Audit.Value, a.Audit.Value)
	case a.After.Value != b.After.Value:
		return cmp.Compare(a.After.Value, b.After.Value)
	case a.Audit.Given != b.Audit.Given:
		return first(b.Audit.Given)
	case a.After.Given != b.After.Given:
		return first(b.After.Given)
	}
	return 0
}

func first(yes bool) int {
	if yes {
		return -1
	}
	return 1
}
