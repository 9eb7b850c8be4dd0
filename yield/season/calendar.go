package season

import (
	"strconv"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

// Batch is what is preserved between two trips. By its Week it must stand on the shelf; when in the days after the
// catch it is made, the keeping time of fresh fish says, which may be two days.
type Batch struct {
	Week   int            `wire:"always"` // from which it counts as preserved
	Caught int            `wire:"always"` // the week in which its youngest fish may have been caught
	Fish   int            // preserved, those counted whole that were begun fresh
	Round  units.Mass     // of them
	Made   []ProductBatch // in the order of the larder
}

// MarshalJSON writes the batch as an object of its fields.
func (b Batch) MarshalJSON() ([]byte, error) { return wire.Marshal(b) }

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else is a units.FieldError.
func (b *Batch) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, b) }

// ProductBatch is what one product has of a Batch: Round of its fish, the Containers that are filled and the Loads of
// the canner that they take, which are none where no canner is used.
type ProductBatch struct {
	Want       Want
	Round      units.Mass
	Containers int `wire:"always"`
	Loads      int
}

// Calendar returns the batches of a plan in their order, and what is made of each: a product has its share of the
// fish by its share of the larder's round mass. Containers are filled whole; what does not fill one is counted to the
// next batch and after the last left over, so that no more are counted than the fish give. What people eat fresh is
// in no batch. A plan with other fish than the larder's, and a larder that Size did not return, are a RangeError.
func Calendar(p Plan, l Larder) ([]Batch, error) {
	if p.Year.Fish != l.Household.Fish {
		return nil, units.RangeError{
			What: "mass of a fish in the plan", Got: p.Year.Fish.String(), Low: l.Household.Fish.String(), High: l.Household.Fish.String(),
		}
	}
	if err := l.check(); err != nil {
		return nil, err
	}
	var batches []Batch
	var sum units.Mass // preserved so far
	done := make([]ProductBatch, len(l.Supplies))
	for week, w := range p.Weeks {
		if w.Preserved < 0 {
			return nil, units.RangeError{
				What: "mass preserved in week " + strconv.Itoa(week), Got: w.Preserved.String(), Low: "0 g",
			}
		}
		if w.Preserved == 0 {
			continue
		}
		var err error
		if sum, err = units.Sum(sum, w.Preserved); err != nil {
			return nil, err
		}
		b := Batch{Week: week, Caught: week - p.Year.Lag, Fish: w.Moved, Round: w.Preserved}
		if b.Made, err = l.divide(sum, done); err != nil {
			return nil, err
		}
		batches = append(batches, b)
	}
	return batches, nil
}

// divide adds to what was done of each product its part of the sum preserved so far, and returns what is new.
func (l Larder) divide(sum units.Mass, done []ProductBatch) ([]ProductBatch, error) {
	made := make([]ProductBatch, len(done))
	var taken, given units.Mass // of the sum, by this product and those before: as is their due, and so far
	for i, s := range l.Supplies {
		taken += s.Round
		upTo, err := units.Prorate(sum, taken, l.Round)
		if err != nil {
			return nil, err
		}
		round := upTo - given
		packed, err := units.ProrateDown(round, s.Want.Yield, units.One)
		if err != nil {
			return nil, err
		}
		given = upTo
		n := int(packed / s.Want.Pack)
		made[i] = ProductBatch{Want: s.Want, Round: round - done[i].Round, Containers: n - done[i].Containers}
		made[i].Loads = loads(made[i].Containers, s.Want.Load)
		done[i] = ProductBatch{Round: round, Containers: n}
	}
	return made, nil
}

// check refuses a larder that Size does not return.
func (l Larder) check() error {
	if err := l.Household.check(len(l.Supplies)); err != nil {
		return err
	}
	var sum units.Mass
	for _, s := range l.Supplies {
		err := s.Want.check()
		if err == nil {
			err = units.Check("round mass for "+s.Want.Name, s.Round, 0, l.Round)
		}
		if err == nil {
			sum, err = units.Sum(sum, s.Round)
		}
		if err != nil {
			return err
		}
	}
	if sum != l.Round || sum == 0 {
		return units.RangeError{
			What: "round mass of the larder", Got: l.Round.String(), Low: sum.String(), High: sum.String(),
		}
	}
	return nil
}

func loads(jars, load int) int {
	if load == 0 {
		return 0
	}
	return (jars + load - 1) / load
}
