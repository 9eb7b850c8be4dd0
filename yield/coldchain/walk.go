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

func walked(c course, maxGap time.Duration) *walk {
	w := &walk{course: c, maxGap: maxGap, total: newLedger(), scratch: newLedger(), pieces: make([]piece, 0, len(edges))}
	w.marks = make(ledger, 0, len(w.total)*(w.record.Len()/stride+1))
	w.highest, _ = w.record.First()
	hint := 1
	var at, quanta [block + 1]int64
	for i := 1; i < w.record.Len(); i += block {
		n := w.record.Copy(i-1, at[:], quanta[:])
		hint = w.enter(i, at[:n], quanta[:n], hint)
	}
	return w
}

// enter enters the lines between readings, of which the second is number i of the record.
func (w *walk) enter(i int, at, quanta []int64, hint int) int {
	maxGap, marked := int64(w.maxGap), w.warm != nil
	hottest, hottestAt, longest := chain.Quanta(w.highest.Value), -1, int64(w.longest.Length())
	for k := 1; k < len(quanta) && k < len(at); k++ {
		if (i+k-1)%stride == 1 {
			w.marks = append(w.marks, w.total...)
		}
		v := interval{dt: at[k] - at[k-1], a: quanta[k-1], b: quanta[k]}
		if v.b > hottest {
			hottest, hottestAt = v.b, i+k-1
		}
		if v.dt > longest {
			longest, w.longest = v.dt, series.Stretch{From: time.Duration(at[k-1]), To: time.Duration(at[k])}
		}
		switch {
		case v.dt > maxGap:
			w.unknown += time.Duration(v.dt)
		case marked:
			before, _ := w.record.At(i + k - 2)
			here, _ := w.record.At(i + k - 1)
			w.total.walk(w.line(i+k-1, before, here), &hint, w.pieces)
		case v.inCell(hint):
			w.total[2*hint] += v.dt
		default:
			w.pieces, hint = v.pieces(w.pieces[:0], hint)
			for _, p := range w.pieces {
				w.total[p.cell] += p.length
			}
		}
	}
	if hottestAt >= 0 {
		w.highest, _ = w.record.At(hottestAt)
	}
	return hint
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
