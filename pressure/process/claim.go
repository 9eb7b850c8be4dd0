package process

import (
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

// MarshalJSON writes the claim in the words that UnmarshalJSON reads.
func (c Claim) MarshalJSON() ([]byte, error) { return wire.Marshal(c) }

// UnmarshalJSON reads a claim strictly: what it does not name is not stated, and a name that is no field is refused.
func (c *Claim) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, c) }

// Claim is what a recipe states about its process. What it does not state stays zero: a Product, Pack, Jar or Gauge
// that is not set, a figure not given. Claims are comparable.
type Claim struct {
	Product Product
	Pack    Pack
	Jar     Jar
	Gauge   Gauge

	Altitude  units.Stated[units.Length]
	Pressure  units.Stated[units.Pressure] // on the gauge
	Process   units.Stated[time.Duration]  // at pressure
	Vent      units.Stated[time.Duration]  // of steady steam
	ComeUp    units.Stated[time.Duration]  // heating and venting together, as the quart procedure counts it
	Headspace units.Stated[units.Length]
	Water     units.Stated[units.Volume]
}

// request is the claim as a request, with zero for what is not stated.
func (c Claim) request() Request {
	return Request{Product: c.Product, Pack: c.Pack, Jar: c.Jar, Gauge: c.Gauge, Altitude: c.Altitude}
}

// check refuses a figure below zero, and one so small that its unit was left out; an altitude below zero is for the tables to refuse.
func (c Claim) check() error {
	for _, t := range []struct {
		what string
		time units.Stated[time.Duration]
	}{{"process time", c.Process}, {"vent time", c.Vent}, {"come-up time", c.ComeUp}} {
		if t.time.Value < 0 {
			return units.RangeError{What: t.what, Got: units.Lasting(t.time.Value), Low: "0 min"}
		}
	}
	for _, err := range [...]error{
		units.CheckUnit("altitude", max(0, c.Altitude.Value), leastAltitude), units.CheckUnit("headspace", c.Headspace.Value, units.Millimetre),
		units.CheckUnit("pressure", c.Pressure.Value, units.PSI/1000), units.CheckUnit("water", c.Water.Value, units.Millilitre),
	} {
		if err != nil {
			return err
		}
	}
	switch {
	case c.Pressure.Value < 0:
		return units.RangeError{What: "pressure", Got: c.Pressure.Value.String(), Low: "0 psi"}
	case c.Headspace.Value < 0:
		return units.RangeError{What: "headspace", Got: c.Headspace.Value.String(), Low: "0 in"}
	case c.Water.Value < 0:
		return units.RangeError{What: "water", Got: c.Water.Value.String(), Low: "0 qt"}
	}
	return nil
}

// mostRows is room for every printed row.
const mostRows = 32

// candidates appends to fitting the official processes that the claim may mean: those that agree with every part it
// states.
func (c Claim) candidates(fitting []Schedule) ([]Schedule, *NotPublishedError) {
	rows, refusal := narrow(make([]*row, 0, mostRows), c.request(), true)
	if refusal != nil {
		return nil, refusal
	}
	for _, line := range rows {
		if c.Altitude.Given {
			if cell := line.at(c.Altitude.Value); cell != nil {
				fitting = append(fitting, line.schedule(cell, c.Altitude))
			}
			continue
		}
		for i := range line.settings {
			fitting = append(fitting, line.schedule(&line.settings[i], c.Altitude))
		}
	}
	if len(fitting) == 0 {
		e := noBand(c.request())
		return nil, &e
	}
	return fitting, nil
}
