package coldchain

import (
	"math"
	"sort"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// The tops, degrees Fahrenheit: the guide counts up to 135 °F, the kitchen's danger zone ends at 140 °F.
const (
	guideTop   = 135
	kitchenTop = 140
	kitchenLow = 40
	hotAir     = 90
)

// counted is a limit with the cells of a ledger that it counts.
type counted struct {
	Limit
	band   span // what the limit counts
	nested span // the same from its floor to the top of the table
	ever   int  // first cell above EverAbove; zero without one
	never  int  // first cell above NeverAbove; zero without one
	hot    int  // first cell above HotAir; zero without one
	single bool // a row of one temperature: it holds by itself and is not added to the others
}

// span is a run of cells, both ends included.
type span struct{ first, last int }

// allLimits is every printed limit, in the order of the rules and of the document.
func allLimits() []Limit {
	var all []Limit
	for _, r := range a2Table {
		l := Limit{
			Rule: TableA2, Hazard: r.hazard, Over: units.Fahrenheit(r.low), OrAt: true, UpTo: units.Fahrenheit(guideTop),
			Allowed: r.allowed, PrintedLow: units.Fahrenheit(r.low), Note: r.note, Citation: r.citation,
		}
		if r.high != 0 {
			l.PrintedHigh = units.Fahrenheit(r.high)
			l.UpTo = l.PrintedHigh
		}
		if n := len(all); n > 0 && all[n-1].Hazard == r.hazard { // bands touch
			l.Over, l.OrAt = all[n-1].UpTo, false
		}
		all = append(all, l)
	}
	for _, r := range quickTable {
		l := Limit{
			Rule: r.rule, Over: units.Fahrenheit(r.over), UpTo: units.Fahrenheit(guideTop), Allowed: r.allowed,
			PrintedLow: units.Fahrenheit(r.over), PrintedHigh: units.Fahrenheit(guideTop),
			Alternative: r.alternative, AureusOnly: r.aureusOnly, Note: r.note, Citation: r.citation,
		}
		if r.everAbove != 0 {
			l.EverAbove = units.Fahrenheit(r.everAbove)
		}
		if r.neverAbove != 0 {
			l.NeverAbove = units.Fahrenheit(r.neverAbove)
		}
		all = append(all, l)
	}
	two := Limit{
		Rule: KitchenTwoHours, Over: units.Fahrenheit(kitchenLow), UpTo: units.Fahrenheit(kitchenTop), Allowed: 2 * time.Hour,
		PrintedLow: units.Fahrenheit(kitchenLow), PrintedHigh: units.Fahrenheit(kitchenTop), Citation: kitchen,
	}
	one := two
	one.HotAir, one.Allowed = units.Fahrenheit(hotAir), time.Hour
	return append(all, two, one)
}

// edges are all the temperatures at which some count begins or ends, rising, with one below and one above
// everything. Cell 2i is what lies between edge i-1 and edge i, cell 2i+1 exactly edge i.
var edges = edgesOf(allLimits())

func edgesOf(limits []Limit) []int64 {
	set := map[int64]bool{-1: true, math.MaxInt64: true}
	for _, l := range limits {
		for _, t := range []units.Temperature{l.Over, l.UpTo, l.EverAbove, l.NeverAbove, l.HotAir} {
			if t.IsSet() {
				set[chain.Quanta(t)] = true
			}
		}
	}
	for _, t := range thresholds {
		set[chain.Quanta(units.Fahrenheit(t.over))] = true
	}
	sorted := make([]int64, 0, len(set))
	for e := range set {
		sorted = append(sorted, e)
	}
	sort.Slice(sorted, func(i, j int) bool { return sorted[i] < sorted[j] })
	return sorted
}

// cellAt is the cell that holds exactly the temperature of an edge; the next one is what lies above it.
func cellAt(t units.Temperature) int {
	return 2*sort.Search(len(edges), func(i int) bool { return edges[i] >= chain.Quanta(t) }) + 1
}

// cellOf is the cell that holds a temperature.
func cellOf(t units.Temperature) int {
	i := sort.Search(len(edges), func(i int) bool { return edges[i] >= chain.Quanta(t) })
	if edges[i] == chain.Quanta(t) {
		return 2*i + 1
	}
	return 2 * i
}

// firstAbove is the first cell above a temperature, zero for one that is not set.
func firstAbove(t units.Temperature) int {
	if !t.IsSet() {
		return 0
	}
	return cellAt(t) + 1
}

var countedLimits = count(allLimits())

func count(limits []Limit) []counted {
	all := make([]counted, 0, len(limits))
	for _, l := range limits {
		c := counted{Limit: l, ever: firstAbove(l.EverAbove), never: firstAbove(l.NeverAbove), hot: firstAbove(l.HotAir)}
		c.band = span{firstAbove(l.Over), cellAt(l.UpTo)}
		if l.OrAt {
			c.band.first--
		}
		c.nested, c.single = c.band, l.Over == l.UpTo
		if l.Rule == TableA2 {
			c.nested.last = cellAt(units.Fahrenheit(guideTop))
		}
		all = append(all, c)
	}
	return all
}

// limitsOf are a rule's limits as they stand in countedLimits, those of one hazard for table A-2.
func limitsOf(rule Rule, hazard Hazard) []counted {
	first, last := 0, 0
	for i := range countedLimits {
		if countedLimits[i].Rule == rule && countedLimits[i].Hazard == hazard {
			if last == 0 {
				first = i
			}
			last = i + 1
		}
	}
	return countedLimits[first:last:last]
}

func a2Of(hazard Hazard) []counted { return limitsOf(TableA2, hazard) }
