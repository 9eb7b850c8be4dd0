package coldchain

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// ledger is the time spent in each cell between and on the edges, in nanoseconds: every limit reads what
// it needs off it, and the record is walked once.
type ledger []int64

// cells is how many there are; behind them a ledger has what only the kitchen's rule counts otherwise.
var cells = 2 * len(edges)

// The extras of a ledger, behind its cells: time above 40 °F in ice or refrigeration, time out of it at 40 °F or below,
// and time in hot air.
const (
	extraCold = iota
	extraOut
	extraHot
	extras
)

func newLedger() ledger { return make(ledger, cells+extras) }

func (l ledger) extra(which int) time.Duration { return time.Duration(l[cells+which]) }

func (l ledger) in(s span) time.Duration {
	total := int64(0)
	for _, t := range l[s.first : s.last+1] {
		total += t
	}
	return time.Duration(total)
}

// above is the time in a cell and all warmer ones.
func (l ledger) above(first int) time.Duration { return l.in(span{first, cells - 1}) }

// enter adds a time to a cell, and to what the kitchen's rule makes of it.
func (l ledger) enter(cell int, length int64, kitchen kitchenTime) {
	l[cell] += length
	if kitchen == byCore {
		return
	}
	counted := cell >= kitchenBand.first && cell <= kitchenBand.last
	switch {
	case kitchen == inCold && counted:
		l[cells+extraCold] += length
	case kitchen != inCold && cell < kitchenBand.first:
		l[cells+extraOut] += length
	}
	if kitchen == inHotAir {
		l[cells+extraHot] += length
	}
}

// kitchenBand is what the kitchen's rule counts by the core.
var kitchenBand = span{firstAbove(units.Fahrenheit(kitchenLow)), cellAt(units.Fahrenheit(kitchenTop))}

// interval is the line between two readings: dt nanoseconds from a to b quanta.
type interval struct{ dt, a, b int64 }

// piece is the part of an interval in one cell.
type piece struct {
	cell   int
	length int64
}

// inCell reports whether the whole interval lies strictly between an edge and the one below.
func (v interval) inCell(edge int) bool {
	low, high := edges[edge-1], edges[edge]
	return v.a > low && v.b > low && v.a < high && v.b < high
}

// pieces appends the interval's pieces in the order of time, and returns the edge above its cooler end, the
// hint for the next. A crossing rounds so that the warmer side gets the rest: the safe side.
func (v interval) pieces(to []piece, hint int) ([]piece, int) {
	lo, hi := v.a, v.b
	if lo > hi {
		lo, hi = hi, lo
	}
	first := edgeAbove(lo, hint)
	if lo == hi && lo == edges[first-1] {
		return append(to, piece{2*first - 1, v.dt}), first
	}
	start, done := len(to), int64(0) // done is the time below the last edge
	i := first
	for ; edges[i] < hi; i++ {
		below := chain.Part(v.dt, edges[i]-lo, hi-lo)
		to = append(to, piece{2 * i, below - done})
		done = below
	}
	to = append(to, piece{2 * i, v.dt - done})
	if v.a > v.b { // the cooler end comes last
		for a, b := start, len(to)-1; a < b; a, b = a+1, b-1 {
			to[a], to[b] = to[b], to[a]
		}
	}
	return to, first
}

// edgeAbove is the index of the first edge above x, looked for from a hint.
func edgeAbove(x int64, hint int) int {
	i := hint
	for x >= edges[i] {
		i++
	}
	for x < edges[i-1] {
		i--
	}
	return i
}
