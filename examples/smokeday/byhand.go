package main

import (
	"io"
	"time"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/examples/internal/byhand"
	"example.org/lakelarder/examples/internal/chart"
	"example.org/lakelarder/pressure"
	"example.org/lakelarder/smoke"
	"example.org/lakelarder/smoke/moistair"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// byHand is the way to the longest hold, the wet bulb that held the fish back, the loss and the salt.
func (s study) byHand(w io.Writer, system units.System) error {
	p := byhand.New(w, "the longest hold, the wet bulb of the hottest air, the loss and the salt")
	s.holdByHand(p, system)
	if err := s.wetBulbByHand(p, system); err != nil {
		return err
	}
	s.lossByHand(p)
	return p.Close()
}

// onScale is a temperature in the digits of a scale.
func onScale(t units.Temperature, system units.System) string {
	if system == units.Metric {
		return t.In(units.CelsiusScale, 6).String()
	}
	return t.In(units.FahrenheitScale, 4).String()
}

func celsius(t units.Temperature) string { return t.In(units.CelsiusScale, 6).String() }

// holdByHand shows where the probe that begins the hold, and the one that ends it, meet the limit.
func (s study) holdByHand(p *byhand.Page, system units.System) {
	p.Step("The longest hold of all probes together: straight lines between readings", s.strict.Limit.Citation)
	p.Let("L", onScale(s.strict.Limit.AtLeast, system), chart.Scale(system), "the limit")
	if s.strict.Held == 0 {
		p.Note("There is none.")
		return
	}
	s.edge(p, "from", s.strict.Began, system)
	s.edge(p, "to", s.strict.Began+s.strict.Held, system)
	p.Work("held", "to − from", "min", 6)
	p.Meets("held", s.strict.Held.Minutes(), 1e-5, "the longest hold above")
	p.Let("whole", byhand.Digits(s.strict.Limit.Hold.Minutes(), 4), "min", "published")
	p.Work("short", "whole − held", "min (negative: longer than published)", 6)
}

// edge is one end of the hold: where the record of a probe crosses the limit there, else a reading.
func (s study) edge(p *byhand.Page, name string, at time.Duration, system units.System) {
	limit := s.strict.Limit.AtLeast
	for _, c := range s.cores {
		readings := c.Series.Readings()
		for i := 1; i < len(readings); i++ {
			a, b := readings[i-1], readings[i]
			near := func(t units.Temperature) bool {
				d, _ := t.Sub(limit)
				return d < units.Kelvins/1000 && d > -units.Kelvins/1000
			}
			if at <= a.At || at >= b.At || a.Value == b.Value || !near(series.Along(a, b, at)) {
				continue
			}
			p.Note("%s, by %s:", name, c.Name)
			p.Crossing(name, "L", byhand.Digits(a.At.Minutes(), 6), byhand.Digits(b.At.Minutes(), 6),
				onScale(a.Value, system), onScale(b.Value, system), "min", chart.Scale(system))
			return
		}
	}
	p.Let(name, byhand.Digits(at.Minutes(), 8), "min", "a reading or the end of one of the records")
}

// wetBulbByHand shows that the wet bulb of the hottest cooking stage is one: by it the air holds the water that the
// air outside holds.
func (s study) wetBulbByHand(p *byhand.Page, system units.System) error {
	hottest := -1
	for i, stage := range s.schedule.Stages {
		if stage.Kind == smoke.Cook && !stage.Humidity.Given && (hottest < 0 ||
			stage.Air.Above(s.schedule.Stages[hottest].Air)) {
			hottest = i
		}
	}
	if hottest < 0 || s.wetBulbs[hottest].Below(units.Celsius(0)) || s.Outside.Temperature.Below(units.Celsius(0)) {
		return nil
	}
	p.Step("Water in the air outside: p(t) = exp(c8/T + c9 + c10 T + c11 T² + c12 T³ + c13 ln T), W = 0.621945 pw/(p − pw)", moistair.Source(), pressure.AtmosphereSource())
	p.Let("P", units.In(s.schedule.Outside.Pressure(), units.Pascal, 3).String(), "Pa", "standard air at the altitude")
	p.Let("φ", units.In(s.Outside.Humidity, units.One, 6).String(), "", "relative humidity outside")
	p.Let("to", celsius(s.Outside.Temperature), "°C", "air outside")
	for i, c := range []string{"-5800.2206", "1.3914993", "-0.048640239", "4.1764768e-5", "-1.4452093e-8",
		"6.5459673"} {
		p.Let([]string{"c8", "c9", "c10", "c11", "c12", "c13"}[i], c, "", "over water")
	}
	saturation := func(symbol, of string) {
		p.Work("T_"+of, of+" + 273.15", "K", 9)
		p.Work(symbol, "exp(c8 / T_"+of+" + c9 + c10 × T_"+of+" + c11 × T_"+of+"^2 + c12 × T_"+of+"^3 + c13 × ln(T_"+of+"))", "Pa", 8)
	}
	saturation("po", "to")
	p.Work("W", "0.621945 × φ × po / (P − φ × po)", "kg of water to a kg of dry air", 7)
	p.Meets("W", units.Float(s.schedule.Outside.HumidityRatio(), units.One), 1e-5,
		"the humidity ratio that the library takes")
	p.Step("The wet bulb of that air heated to the hottest stage, found by trying: W* = ((2501 − 2.326 t*) Ws − 1.006 (t − t*)) / (2501 + 1.86 t − 4.186 t*)", moistair.Source())
	p.Let("t", celsius(s.schedule.Stages[hottest].Air), "°C", "air of the stage")
	p.Let("tw", celsius(s.wetBulbs[hottest]), "°C", "wet bulb")
	saturation("pw", "tw")
	p.Work("Ws", "0.621945 × pw / (P − pw)", "kg/kg, saturated at the wet bulb", 8)
	p.Work("W2", "((2501 − 2.326 × tw) × Ws − 1.006 × (t − tw)) / (2501 + 1.86 × t − 4.186 × tw)", "kg/kg", 6)
	p.Meets("W2", units.Float(s.schedule.Outside.HumidityRatio(), units.One), 2e-5,
		"the water outside again, so that it is the wet bulb")
	if system != units.Metric {
		p.Work("f", "tw × 9 / 5 + 32", "°F, the most that a wet surface reaches", 5)
	}
	return nil
}

// lossByHand is the mass balance of the batch by the scales.
func (s study) lossByHand(p *byhand.Page) {
	if !s.Weighed.Given {
		return
	}
	grams := func(m units.Mass) string { return units.In(m, units.Gram, 4).String() }
	p.Step("The loss by the scales", balance)
	p.Let("m1", grams(s.Batch.Mass), "g", "before the smoking")
	p.Let("m2", grams(s.Weighed.Value), "g", "after it")
	p.Work("loss", "(m1 − m2) / m1", "(1 is all)", 5)
	p.Meets("loss", units.Float(s.weight.loss, units.One), 0, "the loss above")
	if !s.Batch.Salt.Given {
		return
	}
	p.Step("The water phase salt by the scales, if all that is lost is water: salt/(salt + water)", balance,
		brine.DefaultSaltLimit().Citation)
	p.Let("x", units.In(s.Batch.Water, units.One, 6).String(), "", "water in the fish before")
	p.Let("salt", grams(s.Batch.Salt.Value), "g", "salt in all of it")
	p.Work("water", "m1 × x − (m1 − m2)", "g left", 7)
	p.Work("wps", "salt / (salt + water)", "(1 is all)", 5)
	p.Meets("wps", units.Float(s.weight.saltBy, units.One), 2e-5, "the water phase salt by the weighing")
}
