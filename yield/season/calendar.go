package season

import "example.org/lakelarder/units"

// Batch is what is preserved between two trips. By its Week it must stand on the shelf; when in the days after the catch it is
// made, the keeping time of fresh fish says, which may be two days.
type Batch struct {
	Week   int          // from which it counts as preserved
	Caught int          // the week in which its youngest fish may have been caught
	Fish   int          // preserved, those counted whole that were begun fresh
	Round  units.Mass   // of them
	Rounds []units.Mass // the same by product, in the order of the larder
	Made   []int        // containers filled, by product
	Loads  []int        // of the canner, by product
}

// Calendar returns the batches of a plan in their order, and what is made of each: a product has its share of the fish by its share
// of the larder's round mass. Containers are filled whole; what does not fill one is counted to the next batch and after the last left over, so that no
// more are counted than the fish give. What people eat fresh is in no batch. A plan with other fish than the larder's is a RangeError.
func Calendar(p Plan, l Larder) ([]Batch, error) {
	if l.Round <= 0 || p.Year.Fish != l.Household.Fish {
		return nil, units.RangeError{
			What: "mass of a fish in the plan", Got: p.Year.Fish.String(), Low: l.Household.Fish.String(), High: l.Household.Fish.String(),
		}
	}
	var batches []Batch
	var sum units.Mass // preserved so far
	given, made := make([]units.Mass, len(l.Supplies)), make([]int, len(l.Supplies))
	for week, w := range p.Weeks {
		if w.Preserved == 0 {
			continue
		}
		sum += w.Preserved
		b := Batch{Week: week, Caught: week - p.Year.Lag, Fish: w.Moved, Round: w.Preserved}
		var taken units.Mass // of the sum, by the products before
		for i, s := range l.Supplies {
			taken += s.Round
			upTo, err := units.Prorate(sum, taken, l.Round)
			if err != nil {
				return nil, err
			}
			own := upTo - before(given, i)
			b.Rounds = append(b.Rounds, own-given[i])
			given[i] = own
			n := int(share(own, s.Want.Yield)/s.Want.Pack) - made[i]
			made[i] += n
			b.Made = append(b.Made, n)
			b.Loads = append(b.Loads, loads(n, s.Want.Load))
		}
		batches = append(batches, b)
	}
	return batches, nil
}

// before is what the products before one have been given.
func before(given []units.Mass, i int) units.Mass {
	var sum units.Mass
	for _, m := range given[:i] {
		sum += m
	}
	return sum
}

func loads(jars, load int) int {
	if load == 0 {
		return 0
	}
	return (jars + load - 1) / load
}
