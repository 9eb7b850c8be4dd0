package main

import (
	"io"
	"time"

	"example.org/lakelarder/examples/internal/byhand"
	"example.org/lakelarder/pressure/canner"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
)

// byHand is the way to the steam at the published pressure and to the longest stretch.
func (j judged) byHand(w io.Writer, system units.System) error {
	p := byhand.New(w, "the steam at the gauge, and the longest stretch at pressure")
	if j.Barometer.Kind == canner.Station {
		p.Step("Air around the canner", cite.Citation{})
		p.Let("pa", units.In(j.air.Pressure(), units.Pascal, 3).String(), "Pa", "as the barometer reads")
	} else {
		p.Air(j.Altitude.Value, j.air.Pressure())
	}
	p.Steam(j.run.Schedule.Pressure, "published, on a true gauge", j.margin.Steam, system)
	j.gaugeByHand(p, system)
	if j.byPressure() {
		of, unit := pressureUnit(system)
		heldByHand(p, j, j.pressures, func(v units.Pressure) string { return units.In(v, of, 6).String() }, unit)
		return p.Close()
	}
	scale := units.FahrenheitScale
	if system == units.Metric {
		scale = units.CelsiusScale
	}
	digits := func(t units.Temperature) string { return t.In(scale, 6).String() }
	heldByHand(p, j, j.temperatures, digits, scale.String())
	return p.Close()
}

// pressureUnit is the unit of pressures by hand.
func pressureUnit(system units.System) (units.Pressure, string) {
	if system == units.Metric {
		return units.Kilopascal, "kPa"
	}
	return units.PSI, "psi"
}

func (j judged) gaugeByHand(p *byhand.Page, system units.System) {
	if j.setting.Kind != process.Dial {
		return
	}
	of, unit := pressureUnit(system)
	p.Step("What the needle must show", j.setting.Citation)
	p.Let("h", units.In(max(0, j.ReadsHigh), of, 6).String(), unit, "that the dial reads high")
	p.Work("needle", "pg + h", unit, 6)
	p.Meets("needle", units.Float(j.setting.AtLeast, of), 0, "the setting above")
}

// heldByHand is the straight line through the limit at both ends of the longest stretch.
func heldByHand[T series.Value](p *byhand.Page, j judged, s series.Series[T], digits func(T) string, unit string) {
	p.Step("The longest stretch at or above what is required: straight lines between readings", j.run.Schedule.Citation)
	held := j.report.Held
	if held == (series.Stretch{}) {
		p.Note("There is none.")
		return
	}
	need, _ := units.As[T](j.report.Required)
	p.Let("L", digits(need), unit, "required")
	crossing(p, "from", s, held.From, need, digits, unit)
	crossing(p, "to", s, held.To, need, digits, unit)
	p.Work("held", "to − from", "min", 6)
	p.Meets("held", held.Length().Minutes(), 1e-5, "the longest stretch above")
	p.Let("whole", byhand.Digits(j.report.Process.Minutes(), 4), "min", "published")
	p.Work("short", "whole − held", "min (negative: longer than published)", 6)
}

// crossing is where the line of the record meets the limit; a moment that a reading or a mark decides is taken as it
// is.
func crossing[T series.Value](p *byhand.Page, name string, s series.Series[T], at time.Duration, need T,
	digits func(T) string, unit string) {
	readings := s.Readings()
	for i := 1; i < len(readings); i++ {
		a, b := readings[i-1], readings[i]
		if at <= a.At || at >= b.At || a.Value == b.Value {
			continue
		}
		if crosses, ok := meets(a, b, need); !ok || (crosses-at).Abs() > time.Microsecond {
			break
		}
		p.Crossing(name, "L", byhand.Digits(a.At.Minutes(), 6), byhand.Digits(b.At.Minutes(), 6), digits(a.Value),
			digits(b.Value), "min", unit)
		return
	}
	p.Let(name, byhand.Digits(at.Minutes(), 8), "min", "a reading or a mark")
}

// meets is when the straight line between two readings is at a value.
func meets[T series.Value](a, b series.Reading[T], need T) (time.Duration, bool) {
	below, above := a, b
	if c, _ := units.AmountOf(a.Value).Compare(units.AmountOf(b.Value)); c > 0 {
		below, above = b, a
	}
	low, _ := units.AmountOf(need).Compare(units.AmountOf(below.Value))
	high, _ := units.AmountOf(need).Compare(units.AmountOf(above.Value))
	if low < 0 || high > 0 {
		return 0, false
	}
	held := series.Beyond(b.At-a.At, above.Value, below.Value, need)
	if above == a {
		return a.At + held, true
	}
	return b.At - held, true
}
