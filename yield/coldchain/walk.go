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
	record  series.Series[units.Temperature]
	maxGap  time.Duration
	total   ledger
	marks   ledger // one ledger after the other
	unknown time.Duration
	highest series.Reading[units.Temperature]
	lowest  units.Temperature
	scratch ledger
	pieces  []piece
}

const stride = 32 // measured: fewer readings to walk again for each moment, for 60 kB more on ten thousand

func walked(record series.Series[units.Temperature], maxGap time.Duration) *walk {
	w := &walk{
		record: record, maxGap: maxGap, total: newLedger(), scratch: newLedger(), pieces: make([]piece, 0, len(edges)),
	}
	w.marks = make(ledger, 0, len(w.total)*(record.Len()/stride+1))
	before, _ := record.First()
	w.highest, w.lowest = before, before.Value
	hint := 1
	for i := 1; i < record.Len(); i++ {
		if i%stride == 1 {
			w.marks = append(w.marks, w.total...)
		}
		next, _ := record.At(i)
		if next.Value.Above(w.highest.Value) {
			w.highest = next
		} else if next.Value.Below(w.lowest) {
			w.lowest = next.Value
		}
		switch v := between(before, next); {
		case next.At-before.At > maxGap:
			w.unknown += next.At - before.At
		case v.inCell(hint):
			w.total[2*hint] += v.dt
		default:
			w.pieces, hint = v.pieces(w.pieces[:0], hint)
			for _, p := range w.pieces {
				w.total[p.cell] += p.length
			}
		}
		before = next
	}
	return w
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
			w.pieces, hint = between(before, next).pieces(w.pieces[:0], hint)
			now := before.At
			for _, p := range w.pieces {
				if w.scratch[p.cell] += p.length; !keeps(w.scratch) {
					return now + w.scratch.kept(p, keeps)
				}
				now += time.Duration(p.length)
			}
		}
		before = next
	}
	return before.At
}

// kept is how much of a piece, entered as a whole, a ledger keeps: the last nanosecond before it breaks. The
// ledger is left as it was.
func (l ledger) kept(p piece, keeps func(ledger) bool) time.Duration {
	start := l[p.cell] - p.length
	low, high := int64(0), p.length
	for low+1 < high {
		middle := low + (high-low)/2
		l[p.cell] = start + middle
		if keeps(l) {
			low = middle
		} else {
			high = middle
		}
	}
	l[p.cell] = start + p.length
	return time.Duration(low)
}
