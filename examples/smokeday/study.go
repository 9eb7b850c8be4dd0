package main

import (
	"fmt"
	"time"

	"example.org/lakelarder/smoke"
	"example.org/lakelarder/smoke/moistair"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
)

// study is the day worked out: what was planned and expected, and what the records say.
type study struct {
	day
	plan              smoke.Plan
	wetBulbs          []units.Temperature // of the air of each stage
	low, likely, high series.Series[units.Temperature]
	cook              series.Stretch // from the start of the first cooking stage to the end of the last
	strict, other     smoke.Hold
	whenOut, otherOut smoke.Hold // by the two limits, the record cut when the fish was taken out; zero when it was not
	cooling           smoke.Cooling
	listeria          smoke.Pasteurisation
	weight            weight
	keep              smoke.Storage
	canning           canning
	all               verdict.Report              // the hold while the fish is in the smoker, the whole day afterwards
	backAt            units.Stated[time.Duration] // when it went back into the heat, later than it may
}

// study works everything out, so that nothing is printed before a fault.
func (d day) study() (study, error) {
	s := study{day: d}
	var err error
	if s.plan, err = d.schedule.Plan(); err != nil {
		return s, err
	}
	if err = s.expect(); err != nil {
		return s, err
	}
	if err = s.judge(); err != nil {
		return s, err
	}
	if s.weight, err = s.weigh(); err != nil {
		return s, err
	}
	if s.keep, err = smoke.FindStorage(d.Pack); err != nil {
		return s, err
	}
	s.canning, err = s.can()
	return s, err
}

// expect is the core of the plan, every five minutes: the slowest fillet, the likely one and the fastest; and how
// warm a wet surface gets.
func (s *study) expect() error {
	const every = 5 * time.Minute
	slab, film := s.schedule.Batch.Slab, s.schedule.Film
	thick, thin, least, most := slab, slab, film, film
	thick.Thin, thin.Thick = slab.Thick, slab.Thin
	least.Coefficient.Likely, least.Coefficient.High = film.Coefficient.Low, film.Coefficient.Low
	most.Coefficient.Likely, most.Coefficient.Low = film.Coefficient.High, film.Coefficient.High
	for _, one := range []struct {
		curve *series.Series[units.Temperature]
		slab  smoke.Slab
		film  moistair.Film
	}{{&s.low, thick, least}, {&s.likely, slab, film}, {&s.high, thin, most}} {
		var err error
		if *one.curve, err = smoke.CoreCurve(one.slab, one.film, every, s.plan.Phases...); err != nil {
			return err
		}
	}
	began := time.Duration(0)
	for i, stage := range s.schedule.Stages {
		wetBulb, err := s.wetBulb(stage)
		if err != nil {
			return fmt.Errorf("stages[%d]: %w", i, err)
		}
		s.wetBulbs = append(s.wetBulbs, wetBulb)
		if stage.Kind == smoke.Cook {
			if s.cook.To == 0 {
				s.cook.From = began
			}
			s.cook.To = began + stage.For
		}
		began += stage.For
	}
	return nil
}

// wetBulb is that of a stage's air: as wet as measured, or outside air heated; of the cooling none.
func (s *study) wetBulb(stage smoke.Stage) (units.Temperature, error) {
	outside := s.schedule.Outside
	air, err := outside.Heated(stage.Air)
	switch {
	case stage.Kind == smoke.Cool:
		return units.Temperature{}, nil
	case stage.Humidity.Given:
		air, err = moistair.ByRelativeHumidity(stage.Air, stage.Humidity.Value, outside.Pressure())
	}
	if err != nil {
		return units.Temperature{}, err
	}
	return air.WetBulb()
}

// judge holds the records against the strictest limit and the alternative; once the fish is out and cooked, the whole
// day against its rules, the cooling and the way to an oven among them.
func (s *study) judge() error {
	whole, err := s.record(units.Stated[time.Duration]{})
	if err != nil {
		return err
	}
	if s.strict, err = smoke.AuditHold(s.schedule.Limit, whole); err != nil {
		return fmt.Errorf("core: %w", err)
	}
	if s.other, err = smoke.AuditHold(s.alternative, whole); err != nil {
		return err
	}
	s.all = s.strict.Report
	if s.listeria, err = smoke.Pasteurise(whole.Cores...); err != nil || !s.takenOut.Given {
		return err
	}
	cut, err := s.record(s.takenOut)
	if err != nil {
		return err
	}
	if s.whenOut, err = smoke.AuditHold(s.schedule.Limit, cut); err != nil {
		return err
	}
	if s.otherOut, err = smoke.AuditHold(s.alternative, cut); err != nil || !s.cooked() {
		return err
	}
	whole.Marks = smoke.Marks{OutOfSmoker: s.takenOut, InOven: s.inOven(), Handled: s.Handled.On(s.Started),
		Pack: s.Pack}
	day, err := smoke.Audit(smoke.Rules{Core: s.schedule.Limit, Cooling: smoke.DefaultCoolingRule()}, whole)
	if err != nil {
		return err
	}
	s.cooling, s.all = day.Cooling, day.Report
	if in := whole.Marks.InOven; in.Given && in.Value > s.takenOut.Value+ovenWithin {
		s.backAt = in
	}
	return nil
}

// inOven is when the fish went into an oven: as noted, else as the record shows that it went back into the heat.
func (s study) inOven() units.Stated[time.Duration] {
	if s.InOven.Given {
		return s.InOven.On(s.Started)
	}
	back, went := s.back(s.strict, s.whenOut)
	if !s.strict.Verdict.Passes() && s.byOther() {
		back, went = s.back(s.other, s.otherOut)
	}
	return units.Stated[time.Duration]{Value: back, Given: went}
}

// cooked reports whether the fish was in the smoker after the cooking began, or came to a core that is cooked without
// it.
func (s study) cooked() bool {
	var last time.Duration
	for _, c := range s.cores {
		if hottest, _ := c.Series.Max(); hottest.Value.AtLeast(cookedCore) {
			return true
		}
		end, _ := c.Series.Last()
		last = max(last, end.At)
	}
	if s.takenOut.Given {
		last = s.takenOut.Value
	}
	return last > s.cook.From
}

// cookedCore is the lowest core that a published rule asks of hot-smoked fish.
var cookedCore = units.Fahrenheit(145)

// back is when a fish whose hold was met only after it was taken out went back into the heat: the last time before
// that hold at which a core was within 2 K of its coldest. It is false where the hold needed no going back.
func (s study) back(whole, whenOut smoke.Hold) (back time.Duration, went bool) {
	if !s.takenOut.Given || !whole.Verdict.Passes() || whenOut.Verdict.Passes() || whole.Began <= s.takenOut.Value {
		return 0, false
	}
	for _, c := range s.cores {
		var out []series.Reading[units.Temperature]
		for _, r := range c.Series.Readings() {
			if r.At >= s.takenOut.Value && r.At <= whole.Began {
				out = append(out, r)
			}
		}
		coldest := whole.Limit.AtLeast
		for _, r := range out {
			if r.Value.Below(coldest) {
				coldest = r.Value
			}
		}
		for _, r := range out {
			if !r.Value.Above(coldest.Add(2 * units.Kelvins)) {
				back = max(back, r.At)
			}
		}
	}
	return back, true
}

// coldest is the lowest core at a time, and false when a probe has no reading around it.
func (s study) coldest(at time.Duration) (lowest units.Temperature, all bool) {
	for _, c := range s.cores {
		v, err := c.Series.ValueAt(at)
		if err != nil {
			return units.Temperature{}, false
		}
		if !lowest.IsSet() || v.Below(lowest) {
			lowest = v
		}
	}
	return lowest, true
}

// ends is the end of the schedule or of the last record, whichever is later.
func (s study) ends() time.Duration {
	end := s.plan.Total
	for _, c := range s.cores {
		if last, ok := c.Series.Last(); ok && last.At > end {
			end = last.At
		}
	}
	return end
}
