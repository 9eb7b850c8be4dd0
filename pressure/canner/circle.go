package canner

import (
	"math"
	"sort"
	"strconv"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Optimality says how much is known about a packing. The zero Optimality is not stated.
type Optimality uint8

// What is known. No better packing exists where it is proven; where it is best known, one might.
const (
	BestKnown Optimality = iota + 1
	Proven
)

var optimalities = word.List[Optimality]{What: "optimality", Words: []string{"best known", "proven"}}

// ParseOptimality reads the word that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseOptimality(s string) (Optimality, error) { return optimalities.Parse(s) }

// String is the word: "best known", "proven".
func (o Optimality) String() string { return optimalities.Of(o) }

// MarshalText is String as bytes, empty when it is not set; an unknown one is a units.UnknownError.
func (o Optimality) MarshalText() ([]byte, error) { return optimalities.Marshal(o) }

// UnmarshalText is ParseOptimality, and the empty text is one that is not set.
func (o *Optimality) UnmarshalText(text []byte) error { return optimalities.Unmarshal(text, o) }

// Packing is the densest known way to stand equal circles in a circle. Ratio is the diameter of the outer circle
// over that of the inner ones, rounded to the nearest 1e-12.
type Packing struct {
	Circles    int
	Ratio      units.Ratio
	Optimality Optimality
	Citation   cite.Citation
}

// MarshalJSON writes the packing as an app shows it.
func (p Packing) MarshalJSON() ([]byte, error) { return wire.Marshal(p) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (p *Packing) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, p) }

// maxCircles is where the published table ends.
const maxCircles = len(circles)

// FindPacking returns the packing of 1 to 40 circles; any other number is a units.RangeError. The ratios of 1 to 9,
// 11, 13, 15, 18 and 19 agree with closed forms to fifteen digits. Source: Birgin and Gentil 2009, table 1, reference
// column.
func FindPacking(n int) (Packing, error) {
	if n < 1 || n > maxCircles {
		return Packing{}, units.RangeError{
			What: "number of circles", Got: strconv.Itoa(n), Low: "1", High: strconv.Itoa(maxCircles),
		}
	}
	c := circles[n-1]
	return Packing{
		Circles:    n,
		Ratio:      units.RoundTo(c.ratio, digitsPerQuantum) / digitsPerQuantum,
		Optimality: c.optimality,
		Citation: cite.Citation{
			Source: cite.BirginGentil2009, Where: "table 1, reference column, " + strconv.Itoa(n), Basis: cite.Read,
		},
	}, nil
}

// The table has sixteen decimals, a units.Ratio twelve.
const (
	tableOne         = 10_000 * units.One
	digitsPerQuantum = 10_000
)

// across returns how many circles of one diameter stand in a circle of another, and whether the table ends before
// the room does. The caller has checked both: at most 1 m, and at least 10 mm.
func across(outer, inner units.Length) (n int, beyond bool) {
	if outer < inner {
		return 0, false
	}
	available, err := units.ProrateDown(tableOne, outer, inner) // which loses nothing: the table's ratios are whole
	if err != nil {
		return 0, false
	}
	n = sort.Search(maxCircles, func(i int) bool { return circles[i].ratio > available })
	return n, n == maxCircles && outer > room(n, inner)
}

// room returns the diameter that n circles need, rounded up.
func room(n int, inner units.Length) units.Length {
	need, err := units.ProrateUp(inner, circles[n-1].ratio, tableOne)
	if err != nil {
		return math.MaxInt64 // room for nothing
	}
	return need
}
