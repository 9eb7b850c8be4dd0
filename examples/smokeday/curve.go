package main

import (
	"fmt"
	"math"
	"strings"
	"time"

	"example.org/lakelarder/examples/internal/chart"
	"example.org/lakelarder/examples/internal/sheet"
	"example.org/lakelarder/smoke/moistair"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// moment is one row of the curve; what was not planned or not recorded then is not set.
type moment struct {
	at                          time.Duration
	stage                       string
	air, wetBulb                units.Temperature
	low, likely, high, recorded units.Temperature
	cores                       []units.Temperature
}

// moment is what was planned, expected and recorded at a time.
func (s study) moment(at time.Duration) moment {
	value := func(c series.Series[units.Temperature]) units.Temperature {
		v, _ := c.ValueAt(at) // not set where the record has nothing
		return v
	}
	m := moment{at: at, low: value(s.low), likely: value(s.likely), high: value(s.high), recorded: value(s.air)}
	began := time.Duration(0)
	for i, stage := range s.schedule.Stages {
		if at >= began && at < began+stage.For || at == s.plan.Total {
			m.stage, m.air, m.wetBulb = stage.Kind.String(), stage.Air, s.wetBulbs[i]
		}
		began += stage.For
	}
	for _, c := range s.cores {
		m.cores = append(m.cores, value(c.Series))
	}
	return m
}

func (s study) printCurve(p *sheet.Sheet) {
	p.Heading("Details: the core, expected and recorded")
	for i, c := range s.cores {
		hottest, _ := c.Series.Max()
		p.Line("%s  %s: %d readings, at most %s at %s, at the limit %s", letters[i:i+1], c.Name, c.Series.Len(),
			sheet.Down(p, hottest.Value), s.clock(hottest.At), s.reached(c.Series))
	}
	s.printLate(p)
	s.printBelief(p)
	p.Line("A wet surface settles at the wet bulb of the air, and the core cannot pass it until the surface has dried%s.", p.From(moistair.Source()))
	p.Line("Air %s; expected: thick fillet in slack air, likely, thin fillet in brisk air; figures cut, not rounded.",
		s.airIs())
	p.Line("Marks: . range expected, o likely, w wet bulb, ^ air, | limit, letters the probes, * two at one place")
	head := []any{"", "", "air", "wet", "slow", "likely", "fast"}
	format := "%5s %-5s %5s %5s %5s %6s %5s"
	for i := range s.cores {
		format += " %5s"
		head = append(head, letters[i:i+1])
	}
	scale := s.scale(p)
	p.Line(format+"  %s", append(head, scale.head(p))...)
	for at := time.Duration(0); at <= s.ends(); {
		m := s.moment(at)
		row := []any{s.clock(at), m.stage, bare(p, m.shownAir()), bare(p, m.wetBulb), bare(p, m.low), bare(p,
			m.likely), bare(p, m.high)}
		for _, core := range m.cores {
			row = append(row, bare(p, core))
		}
		p.Line(format+"  %s", append(row, scale.strip(p, m, s.strict.Limit.AtLeast))...)
		if at < s.cook.To {
			at += 15 * time.Minute
		} else {
			at += 45 * time.Minute
		}
	}
}

// reached is when a probe first came to the strictest limit.
func (s study) reached(core series.Series[units.Temperature]) string {
	at, found, _ := core.FirstAtOrAbove(s.strict.Limit.AtLeast)
	if !found {
		return "never"
	}
	return "first at " + s.clock(at)
}

// printLate says so when a probe came to the limit later than the slowest case of the model, or never.
func (s study) printLate(p *sheet.Sheet) {
	slowest := s.plan.Core.ToLimit.High
	if slowest == 0 {
		return
	}
	late := ""
	for i, c := range s.cores {
		last, _ := c.Series.Last()
		at, found, _ := c.Series.FirstAtOrAbove(s.strict.Limit.AtLeast)
		if found && at > slowest || !found && last.At > slowest {
			late += " " + letters[i:i+1]
		}
	}
	if late != "" {
		p.Line("Later than the slowest case of the plan, %s:%s. The surface stayed wet for longer than was assumed, or it is thicker, or the air slacker: believe the probe.", s.clock(slowest), late)
	}
}

func (s study) airIs() string {
	if s.air.Len() > 0 {
		return "as recorded"
	}
	return "as planned"
}

// shownAir is the air as recorded, else as planned.
func (m moment) shownAir() units.Temperature {
	if m.recorded.IsSet() {
		return m.recorded
	}
	return m.air
}

// bare is a temperature on the one scale of the table, without its unit, cut: 179.97 never looks like 180.
func bare(p *sheet.Sheet, t units.Temperature) string {
	if !t.IsSet() {
		return "-"
	}
	scale := units.FahrenheitScale
	if p.System == units.Metric {
		scale = units.CelsiusScale
	}
	return t.In(scale, 4).RoundFloor(1).StringFixed(1)
}

// scale is the row of marks beside the figures, from the lowest to the highest temperature shown, in whole tens of
// degrees, as wide as the sheet leaves room.
type scale struct {
	low, high float64
	width     int
}

func (s study) scale(p *sheet.Sheet) scale {
	lowest, highest := s.strict.Limit.AtLeast, s.strict.Limit.AtLeast
	see := func(t units.Temperature) {
		if t.IsSet() && t.Below(lowest) {
			lowest = t
		}
		if t.IsSet() && t.Above(highest) {
			highest = t
		}
	}
	for i, stage := range s.schedule.Stages {
		see(stage.Air)
		see(s.wetBulbs[i])
	}
	curves := []series.Series[units.Temperature]{s.low, s.likely, s.high, s.air}
	for _, c := range s.cores {
		curves = append(curves, c.Series)
	}
	for _, c := range curves {
		least, _ := c.Min() // not set when there is none
		most, _ := c.Max()
		see(least.Value)
		see(most.Value)
	}
	return scale{tens(p, lowest), tens(p, highest) + 10, max(10, sheet.Width-44-6*len(s.cores))}
}

func (s scale) at(p *sheet.Sheet, t units.Temperature) int {
	return int((chart.Degrees(t, p.System) - s.low) / (s.high - s.low) * float64(s.width-1))
}

func (s scale) head(p *sheet.Sheet) string {
	low, high := whole(p, s.low), whole(p, s.high)
	return low + strings.Repeat(" ", max(1, s.width-len([]rune(low))-len([]rune(high)))) + high
}

func (s scale) strip(p *sheet.Sheet, m moment, limit units.Temperature) string {
	cells := []byte(strings.Repeat(" ", s.width))
	mark := func(t units.Temperature, c byte) {
		if t.IsSet() {
			cells[s.at(p, t)] = c
		}
	}
	if m.low.IsSet() {
		slow, fast := s.at(p, m.low), s.at(p, m.high)
		for i := min(slow, fast); i <= max(slow, fast); i++ {
			cells[i] = '.'
		}
	}
	mark(limit, '|')
	mark(m.likely, 'o')
	mark(m.wetBulb, 'w')
	mark(m.shownAir(), '^')
	for i, core := range m.cores {
		c := letters[i]
		if core.IsSet() && strings.ContainsRune(letters+"*", rune(cells[s.at(p, core)])) {
			c = '*'
		}
		mark(core, c)
	}
	return strings.TrimRight(string(cells), " ")
}

// tens is a temperature cut to whole tens of degrees.
func tens(p *sheet.Sheet, t units.Temperature) float64 {
	return 10 * math.Floor(chart.Degrees(t, p.System)/10)
}

func whole(p *sheet.Sheet, degrees float64) string {
	return fmt.Sprintf("%.0f %s", degrees, chart.Scale(p.System))
}
