package main

import (
	"fmt"

	"github.com/shopspring/decimal"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/units"
	larder "example.org/lakelarder/yield/season"
)

// supply is the year worked out.
type supply struct {
	wanted  larder.Larder
	plan    larder.Plan
	best    larder.Plan // with the best possible catch
	steady  units.Ratio // what every week could have, where not every week has enough
	less    larder.Plan // at that
	batches []larder.Batch
	costs   map[string]larder.Cost // by product
}

// workYear plans the year with the catch's own mean fish and shares.
func (w *worked) workYear() (err error) {
	if w.wanted, err = w.size(); err != nil {
		return fmt.Errorf("year: %w", err)
	}
	y := w.year.plan
	y.Fish, y.Weekly = w.wanted.Household.Fish, w.wanted.Weekly
	if w.plan, err = larder.Keep(y); err != nil {
		return fmt.Errorf("year: %w", err)
	}
	if !w.plan.Feasible() {
		if w.steady, w.less, err = larder.Steady(y); err != nil {
			return fmt.Errorf("year: %w", err)
		}
	}
	y.Fishing = larder.Possible
	if w.best, err = larder.Keep(y); err != nil {
		return fmt.Errorf("year: %w", err)
	}
	if w.batches, err = larder.Calendar(w.plan, w.wanted); err != nil {
		return fmt.Errorf("year: %w", err)
	}
	return w.workCosts()
}

// size is the larder, from the mean of the catch and the shares that it gave.
func (w *worked) size() (larder.Larder, error) {
	jars, smoked := w.year.jars, w.year.smoked
	var err error
	if jars.Yield, err = units.RatioOf(w.jars.kept.Likely, w.jars.whole); err != nil {
		return larder.Larder{}, fmt.Errorf("no fish of the catch goes into jars: %w", err)
	}
	if smoked.Yield, err = units.RatioOf(w.smoker.kept.Likely, w.smoker.whole); err != nil {
		return larder.Larder{}, fmt.Errorf("no fish of the catch goes to the smoker: %w", err)
	}
	mean := (w.jars.whole + w.smoker.whole) / units.Mass(len(w.Fish))
	return larder.Size(larder.Household{People: w.People, Weeks: w.year.plan.Weeks, Fish: mean}, jars, smoked)
}

// workCosts shares the price of the trips that are made out over the fish they bring.
func (w *worked) workCosts() error {
	trips := w.Year.PricePerTrip.Mul(decimal.NewFromInt(int64(w.plan.Trips())))
	kilogram := decimal.Zero
	if w.plan.Fish() > 0 {
		kilogram = trips.DivRound(units.In(units.Mass(w.plan.Fish())*w.plan.Year.Fish, units.Kilogram, 16), 8)
	}
	container := map[string]decimal.Decimal{w.year.jars.Name: w.Year.Prices.JarAndLid,
		w.year.smoked.Name: w.Year.Prices.Bag}
	w.costs = map[string]larder.Cost{}
	for _, s := range w.wanted.Supplies {
		cost, err := larder.Costs(w.wanted.Household, s, larder.Prices{Kilogram: kilogram,
			Container: container[s.Want.Name], Load: w.Year.Prices.CannerLoad}, 2)
		if err != nil {
			return fmt.Errorf("year.prices: %w", err)
		}
		w.costs[s.Want.Name] = cost
	}
	return nil
}

// supplyOf is what a product comes to in the larder.
func (w worked) supplyOf(product larder.Want) larder.Supply {
	for _, s := range w.wanted.Supplies {
		if s.Want.Name == product.Name {
			return s
		}
	}
	return larder.Supply{}
}

// madeIn is what a batch makes of a product.
func madeIn(b larder.Batch, product larder.Want) larder.ProductBatch {
	for _, made := range b.Made {
		if made.Want.Name == product.Name {
			return made
		}
	}
	return larder.ProductBatch{}
}

// made adds up what all batches make of a product.
func (w worked) made(product larder.Want) (containers, loads int) {
	for _, b := range w.batches {
		m := madeIn(b, product)
		containers, loads = containers+m.Containers, loads+m.Loads
	}
	return containers, loads
}

// cureOf is the cure of the fillets that a batch packs; none where it packs none.
func (w worked) cureOf(b larder.Batch) brine.Cure {
	cure, _ := brine.DryCure(units.Mass(madeIn(b, w.year.smoked).Containers)*w.year.smoked.Pack, w.Cure.SaltToFish,
		w.mix)
	return cure
}

// iceFor is the ice of a catch.
func (w worked) iceFor(fish int) units.Mass {
	m, _ := w.Year.IcePerFish.Of(units.Mass(fish) * w.plan.Year.Fish) // a trip's catch, far from the range
	return m
}
