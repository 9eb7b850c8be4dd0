package yield

import (
	"fmt"
	"math"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// PortionWeight is one published weight of a portion of a food: what is in a can, drained or not, or a fillet.
// Deviation is the standard deviation; it and Samples are zero where none are stated.
type PortionWeight struct {
	Number    int
	Portion   string
	Mean      units.Mass
	Samples   int
	Deviation units.Mass
	Citation  cite.Citation
}

// PortionWeights returns the published weights of a food's portions, by the food number of the composition data, in the
// order of the table; nil where there are none. Cans are commercial ones: a home jar was not weighed. The slice
// is the caller's own.
func PortionWeights(number int) []PortionWeight {
	var all []PortionWeight
	for _, r := range portionWeightTable {
		if r.number == number {
			all = append(all, PortionWeight{
				Number: r.number, Portion: r.portion, Mean: grams(r.mean), Samples: r.samples, Deviation: grams(r.deviation),
				Citation: cite.Citation{Source: cite.USDASR26, Where: fmt.Sprintf("weight table, NDB %05d", r.number), Basis: cite.Read},
			})
		}
	}
	return all
}

// portionWeightRow is one printed row, in grams.
type portionWeightRow struct {
	number    int
	portion   string
	mean      float64
	samples   int
	deviation float64
}

func grams(x float64) units.Mass { return units.Mass(math.Round(float64(x * float64(units.Gram)))) }
