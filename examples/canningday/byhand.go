package main

import (
	"io"
	"time"

	"example.org/lakelarder/examples/internal/byhand"
	"example.org/lakelarder/pressure"
	"example.org/lakelarder/pressure/canner"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// byHand is the way to the steam at the published pressure and to the longest stretch.
func (j judged) byHand(w io.Writer, system units.System) error {
	p := byhand.New(w, "the steam at the gauge, and the longest stretch at pressure")
	j.airByHand(p)
	j.steamByHand(p, system)
	j.gaugeByHand(p)
	if j.byPressure() {
		heldByHand(p, j, j.pressures, func(v units.Pressure) string { return units.In(v, units.PSI, 6).String() },
			"psi")
	} else {
		heldByHand(p, j, j.temperatures, func(t units.Temperature) string {
			return t.In(units.CelsiusScale,
				6).String()
		}, "°C")
	}
	return p.Close()
}

func (j judged) airByHand(p *byhand.Page) {
	p.Step("Air around the canner: US Standard Atmosphere", pressure.AtmosphereSource())
	if j.Barometer.Kind == canner.Station {
		p.Let("pa", units.In(j.air.Pressure(), units.Pascal, 3).String(), "Pa", "as the barometer reads")
		return
	}
	p.Let("Z", units.In(j.Altitude.Value, units.Metre, 6).String(), "m", "altitude of the stove (1 ft is 0.3048 m)")
	p.Let("r0", "6356766", "m", "radius of the earth")
	p.Work("H", "r0 × Z / (r0 + Z)", "m (geopotential; equation 18)", 10)
	p.Work("q", "1 − 0.0065 × H / 288.15", "(T over T0; equation 23)", 10)
	p.Work("k", "9.80665 × 28.9644 / (8314.32 × 0.0065)", "(exponent)", 10)
	p.Work("pa", "101325 × q^k", "Pa (equation 33a)", 8)
	p.Meets("pa", units.Float(j.air.Pressure(), units.Pascal), 0, "the air that the library takes")
}

func (j judged) steamByHand(p *byhand.Page, system units.System) {
	p.Step("Steam at the published pressure: IF97, region 4, backward equation 31", pressure.SteamSource())
	p.Let("pg", units.In(j.run.Schedule.Pressure, units.PSI, 6).String(), "psi", "published, on a true gauge")
	p.Work("p", "(pg × 6894.757293 + pa) / 1000000", "MPa absolute", 10)
	for i, n := range []string{"1167.0521452767", "-724213.16703206", "-17.073846940092", "12020.824702470",
		"-3232555.0322333",
		"14.915108613530", "-4823.2657361591", "405113.40542057", "-0.23855557567849", "650.17534844798"} {
		p.Let([]string{"n1", "n2", "n3", "n4", "n5", "n6", "n7", "n8", "n9", "n10"}[i], n, "", "table 34")
	}
	p.Work("β", "p^0.25", "", 12)
	p.Work("E", "β^2 + n3 × β + n6", "", 12)
	p.Work("F", "n1 × β^2 + n4 × β + n7", "", 12)
	p.Work("G", "n2 × β^2 + n5 × β + n8", "", 12)
	p.Work("D", "2 × G / (-F − sqrt(F^2 − 4 × E × G))", "", 12)
	p.Work("T", "(n10 + D − sqrt((n10 + D)^2 − 4 × (n9 + n10 × D))) / 2", "K", 7)
	p.Meets("T", j.margin.Steam.Kelvin(), 0, "the steam that the library finds")
	if system != units.US {
		p.Work("c", "T − 273.15", "°C", 5)
	}
	if system != units.Metric {
		p.Work("f", "(T − 273.15) × 9 / 5 + 32", "°F", 5)
	}
}

func (j judged) gaugeByHand(p *byhand.Page) {
	if j.setting.Kind != process.Dial {
		return
	}
	p.Step("What the needle must show", j.setting.Citation)
	p.Let("h", units.In(max(0, j.ReadsHigh), units.PSI, 6).String(), "psi", "that the dial reads high")
	p.Work("needle", "pg + h", "psi", 6)
	p.Meets("needle", units.Float(j.setting.AtLeast, units.PSI), 0, "the setting above")
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
