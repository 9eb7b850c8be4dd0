package coldchain

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// walk is a record entered into a ledger, with a copy of the ledger at every stride-th reading so that a
// moment can be found again without walking from the start.
type walk struct {
	course
	maxGap  time.Duration
	total   ledger
	marks   ledger // one ledger after the other
	unknown time.Duration
	longest series.Stretch // between two readings
	highest series.Reading[units.Temperature]
	scratch ledger
	pieces  []piece
	legs    []leg
}

const stride = 32 // measured: fewer readings to walk again for each moment, for 60 kB more on ten thousand

// walked goes through a record: in one pass, and where a reading is left out or legs are not lines, in two.
func (t *Terms) walked(record series.Series[units.Temperature]) (*walk, error) {
	if !t.marked() {
		w := newWalk(course{record: record, believing: t.believing()}, t.MaxGap)
		if straight, err := w.straight(); straight || err != nil {
			return w, err
		}
	}
	c, err := t.believed(record)
	if err != nil {
		return nil, err
	}
	w := newWalk(c, t.MaxGap)
	w.legged()
	return w, nil
}

func newWalk(c course, maxGap time.Duration) *walk {
	w := &walk{course: c, maxGap: maxGap, total: newLedger(), scratch: newLedger(), pieces: make([]piece, 0, len(edges))}
	w.marks = make(ledger, 0, len(w.total)*(w.record.Len()/stride+1))
	w.highest, _ = w.record.First()
	return w
}

// straight walks a record whose legs are its lines, and follows it; false where a reading is not believed.
func (w *walk) straight() (bool, error) {
	record, n, hint := w.record, w.record.Len(), 1
	g := glided{highest: w.highest}
	for i := 0; i < n; i++ {
		if i%stride == 1 {
			w.marks = append(w.marks, w.total...)
		}
		if i > 0 {
			g.low, g.high, g.spent = edges[hint-1], edges[hint], 0
			j := w.seen.glide(&w.believing, record, i, min(n, i+stride-(i-1)%stride), &g)
			if w.total[2*hint] += g.spent; j > i {
				i = j - 1
				continue
			}
		}
		before := w.seen.Last
		r, _ := record.At(i)
		is, warm, err := w.seen.take(&w.believing, r)
		if err != nil || is == leftOut || is == first && i > 0 {
			return false, err
		}
		if is == follows {
			w.enter(before, r, warm, &g, &hint)
		}
	}
	w.highest, w.longest = g.highest, g.longest
	return true, nil
}

// enter enters the line between two readings that do not glide.
func (w *walk) enter(before, r series.Reading[units.Temperature], warm bool, g *glided, hint *int) {
	if r.Value.Above(g.highest.Value) {
		g.highest = r
	}
	gap := series.Stretch{From: before.At, To: r.At}
	if gap.Length() > g.longest.Length() {
		g.longest = gap
	}
	if gap.Length() > w.maxGap {
		w.unknown += gap.Length()
		return
	}
	w.legs = w.seen.legs(w.legs[:0], &w.believing, before, r, warm)
	w.total.walk(w.legs, hint, w.pieces)
}

// legged walks a record by its legs, as it was believed.
func (w *walk) legged() {
	hint := 1
	before, _ := w.record.First()
	for i := 1; i < w.record.Len(); i++ {
		if i%stride == 1 {
			w.marks = append(w.marks, w.total...)
		}
		next, _ := w.record.At(i)
		if next.Value.Above(w.highest.Value) {
			w.highest = next
		}
		if gap := next.At - before.At; gap > w.maxGap {
			w.unknown += gap
		} else {
			w.total.walk(w.line(i, before, next), &hint, w.pieces)
		}
		before = next
	}
	w.longest = w.record.LongestGap()
}

// line is the legs between reading i and the one before.
func (w *walk) line(i int, before, next series.Reading[units.Temperature]) []leg {
	if w.warm == nil {
		w.legs = append(w.legs[:0], leg{interval: between(before, next), from: before.At})
		return w.legs
	}
	w.legs = w.again.legs(w.legs[:0], &w.believing, before, next, w.warm[i/64]>>(i%64)&1 == 1)
	return w.legs
}

// walk enters legs.
func (l ledger) walk(legs []leg, hint *int, scratch []piece) {
	for _, one := range legs {
		scratch, *hint = one.pieces(scratch[:0], *hint)
		for _, p := range scratch {
			l.enter(p.cell, p.length, one.kitchen)
		}
	}
}

func between(a, b series.Reading[units.Temperature]) interval {
	return interval{dt: int64(b.At - a.At), a: chain.Quanta(a.Value), b: chain.Quanta(b.Value)}
}

// mark is the ledger before the first interval of a block.
func (w *walk) mark(block int) ledger { return w.marks[block*len(w.total) : (block+1)*len(w.total)] }

func (w *walk) aboveAt(threshold int) time.Duration {
	return w.lastKept(func(l ledger) bool { return neverAbove(l, threshold) })
}

func (w *walk) exceededAt(j judge) time.Duration { return w.lastKept(j.met) }

func (w *walk) passedAt(j judge, limit int) time.Duration {
	return w.lastKept(func(l ledger) bool { return j.allows(l, &j.limits[limit]) })
}

// lastKept returns the last moment at which the ledger so far still keeps what the whole record does not;
// once broken it must stay broken.
func (w *walk) lastKept(keeps func(ledger) bool) time.Duration {
	low, high := 0, len(w.marks)/len(w.total)-1 // the block to search; its mark still keeps
	for low < high {
		middle := (low + high + 1) / 2
		if keeps(w.mark(middle)) {
			low = middle
		} else {
			high = middle - 1
		}
	}
	copy(w.scratch, w.mark(low))
	before, _ := w.record.At(low * stride)
	hint := 1
	for i := low*stride + 1; i < w.record.Len(); i++ {
		next, _ := w.record.At(i)
		if next.At-before.At <= w.maxGap {
			for _, one := range w.line(i, before, next) {
				w.pieces, hint = one.pieces(w.pieces[:0], hint)
				now := one.from
				for _, p := range w.pieces {
					if w.scratch.enter(p.cell, p.length, one.kitchen); !keeps(w.scratch) {
						return now + w.scratch.kept(p, one.kitchen, keeps)
					}
					now += time.Duration(p.length)
				}
			}
		}
		before = next
	}
	return before.At
}

// kept is how much of a piece, entered as a whole, a ledger keeps: the last nanosecond before it breaks. The
// ledger is left as it was.
func (l ledger) kept(p piece, kitchen kitchenTime, keeps func(ledger) bool) time.Duration {
	low, high, now := int64(0), p.length, p.length
	for low+1 < high {
		middle := low + (high-low)/2
		l.enter(p.cell, middle-now, kitchen)
		if now = middle; keeps(l) {
			low = middle
		} else {
			high = middle
		}
	}
	l.enter(p.cell, p.length-now, kitchen)
	return time.Duration(low)
}
