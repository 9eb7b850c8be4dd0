package main

import (
	"fmt"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/units"
)

// weight is what the batch lost and what water phase salt that implies; the figures by the scales are zero when it was not weighed, those of the
// salt when it was not stated.
type weight struct {
	water              units.Mass // before the smoking
	loss               units.Ratio
	saltLow, saltHigh  units.Ratio
	saltBefore, saltBy units.Ratio // by the scales
}

func (s *study) weigh() (w weight, err error) {
	batch := s.schedule.Batch
	if w.water, err = batch.Water.Of(batch.Mass); err != nil {
		return w, err
	}
	lost := batch.Mass - s.weighed.Value
	if s.weighed.Given {
		if err := units.Check("weight after the smoking", s.weighed.Value, batch.Mass-w.water+units.Gram, batch.Mass); err != nil {
			return w, fmt.Errorf("weighed: %w", err)
		}
		if w.loss, err = units.RatioOf(lost, batch.Mass); err != nil {
			return w, err
		}
	}
	if !s.salt.Given {
		return w, nil
	}
	for _, one := range []struct {
		salt  *units.Ratio
		water units.Mass
	}{
		{&w.saltBefore, w.water}, {&w.saltLow, w.water - s.plan.Loss.Low}, {&w.saltHigh, w.water - s.plan.Loss.High}, {&w.saltBy, w.water - lost},
	} {
		if one.salt == &w.saltBy && !s.weighed.Given {
			continue
		}
		if *one.salt, err = brine.WaterPhaseSalt(s.salt.Value, one.water); err != nil {
			return w, fmt.Errorf("batch.salt: %w", err)
		}
	}
	return w, nil
}

func (s study) printWeight(p *page) {
	p.Heading("Weight and salt")
	batch := s.schedule.Batch
	p.Line("%s of %s in, %s of it water; the plan expects a loss of %s to %s, likely %s (%s to %s),", p.mass(batch.Mass), s.fish, percent(batch.Water, 0), p.mass(s.plan.Loss.Low),
		p.mass(s.plan.Loss.High), p.mass(s.plan.Loss.Likely), share(s.plan.Loss.Low, batch.Mass), share(s.plan.Loss.High, batch.Mass))
	p.Line("and so %s to %s out, likely %s %s. What drips and what the cooling takes is not in it.", p.mass(s.plan.Final.Low), p.mass(s.plan.Final.High), p.mass(s.plan.Final.Likely),
		p.From(s.schedule.Film.Citation))
	if s.weighed.Given {
		against := "within the range"
		switch {
		case s.takenOut.Given && s.takenOut.Value < s.cook.To:
			against = "taken out before the planned end, so not held against that range"
		case s.weighed.Value < s.plan.Final.Low:
			against = "less than the range: believe the scales, not the model"
		case s.weighed.Value > s.plan.Final.High:
			against = "more than the range: believe the scales, not the model"
		}
		p.Line("Weighed: %s, a loss of %s: %s.", p.mass(s.weighed.Value), percent(s.weight.loss, 1), against)
	}
	if s.salt.Given {
		s.printSalt(p)
	}
}

func (s study) printSalt(p *page) {
	limit := brine.DefaultSaltLimit()
	p.Line("%s of salt in it is a water phase salt of %s before the smoking and %s to %s after it, if all that is lost is water %s.", p.little(s.salt.Value), cut(s.weight.saltBefore),
		cut(s.weight.saltLow), cut(s.weight.saltHigh), p.From(balance))
	if s.weighed.Given {
		p.Line("By the weighing: %s.", cut(s.weight.saltBy))
	}
	p.Line("The strictest published least is %s %s, measured in the loin of the thickest fish: this is an average of all, an estimate and no measurement.", percent(limit.Least, 1), p.From(limit.Citation))
	least := s.weight.saltLow
	if s.weighed.Given {
		least = s.weight.saltBy
	}
	if least < limit.Least {
		p.Line("BELOW that it may be: salt is no barrier here, cold is.")
	}
}
