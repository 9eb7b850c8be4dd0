package main

import (
	"fmt"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/examples/internal/sheet"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// weight is what the batch lost and what water phase salt that implies; the figures by the scales are zero when it
// was not weighed, those of the salt when it was not stated.
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
	lost := batch.Mass - s.Weighed.Value
	if s.Weighed.Given {
		if err := units.Check("weight after the smoking", s.Weighed.Value, batch.Mass-w.water+units.Gram,
			batch.Mass); err != nil {
			return w, fmt.Errorf("weighed: %w", err)
		}
		if w.loss, err = units.RatioOf(lost, batch.Mass); err != nil {
			return w, err
		}
	}
	if !s.Batch.Salt.Given {
		return w, nil
	}
	for _, one := range []struct {
		salt  *units.Ratio
		water units.Mass
	}{
		{&w.saltBefore, w.water}, {&w.saltLow, w.water - s.plan.Loss.Low}, {&w.saltHigh,
			w.water - s.plan.Loss.High}, {&w.saltBy, w.water - lost},
	} {
		if one.salt == &w.saltBy && !s.Weighed.Given {
			continue
		}
		if *one.salt, err = brine.WaterPhaseSalt(s.Batch.Salt.Value, one.water); err != nil {
			return w, fmt.Errorf("batch.salt: %w", err)
		}
	}
	return w, nil
}

func (s study) printWeight(p *sheet.Sheet) {
	p.Heading("Details: weight and salt")
	batch := s.schedule.Batch
	p.Line("%s of %s in, %s of it water; the plan expects a loss of %s to %s, likely %s (%s to %s), "+
		"and so %s to %s out, likely %s%s. What drips and what the cooling takes is not in it.", sheet.Text(p,
		batch.Mass), s.Batch.Fish, percent(batch.Water, 0), sheet.Text(p, s.plan.Loss.Low),
		sheet.Text(p, s.plan.Loss.High), sheet.Text(p, s.plan.Loss.Likely), share(s.plan.Loss.Low,
			batch.Mass), share(s.plan.Loss.High, batch.Mass),
		sheet.Text(p, s.plan.Final.Low), sheet.Text(p, s.plan.Final.High), sheet.Text(p, s.plan.Final.Likely),
		p.From(s.schedule.Film.Citation))
	if s.Weighed.Given {
		against := "within the range"
		switch {
		case s.takenOut.Given && s.takenOut.Value < s.cook.To:
			against = "taken out before the planned end, so not held against that range"
		case s.Weighed.Value < s.plan.Final.Low:
			against = "less than the range: believe the scales, not the model"
		case s.Weighed.Value > s.plan.Final.High:
			against = "more than the range: believe the scales, not the model"
		}
		p.Line("Weighed: %s, a loss of %s: %s.", sheet.Text(p, s.Weighed.Value), percent(s.weight.loss, 1), against)
	}
	if s.Batch.Salt.Given {
		s.printSalt(p)
	}
}

func (s study) printSalt(p *sheet.Sheet) {
	limit := brine.DefaultSaltLimit()
	p.Line("%s of salt in it is a water phase salt of %s before the smoking and %s to %s after it, if all that is lost is water%s.", sheet.Text(p, s.Batch.Salt.Value), cut(s.weight.saltBefore),
		cut(s.weight.saltLow), cut(s.weight.saltHigh), p.From(balance))
	if s.Weighed.Given {
		p.Line("By the weighing: %s.", cut(s.weight.saltBy))
	}
	p.Line("The strictest published least is %s%s, measured in the loin of the thickest fish: this is an average of all, an estimate and no measurement.", percent(limit.Least, 1), p.From(limit.Citation))
	least := s.weight.saltLow
	if s.Weighed.Given {
		least = s.weight.saltBy
	}
	if least < limit.Least {
		p.Line("BELOW that it may be: salt is no barrier here, cold is.")
	}
}

var balance = cite.Citation{Where: "mass balance: the salt stays, the water goes", Basis: cite.Computed}

func percent(r units.Ratio, places int32) string { return units.Text(r, units.Percent, places) }

// cut is a water phase salt, never rounded up to a limit.
func cut(r units.Ratio) string { return percent(units.FloorTo(r, units.PerMille), 1) }

// share is part of a whole that was checked not to be zero.
func share(part, whole units.Mass) string {
	r, _ := units.RatioOf(part, whole)
	return percent(r, 0)
}
