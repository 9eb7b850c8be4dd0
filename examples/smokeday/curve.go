package main

import (
	"strings"
	"time"

	"example.org/lakelarder/smoke"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// letters name the probes, in the order of the record.
const letters = "ABCDEFGH"

// strip is the row of marks beside the figures, from low to high.
const stripWidth = 46

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

func (s study) printCurve(p *page) {
	p.Heading("The core, expected and recorded")
	for i, c := range s.cores {
		hottest, _ := c.Series.Max()
		p.Line("%s  %s: %d readings, at most %s at %s, at the limit %s", letters[i:i+1], c.Name, c.Series.Len(), p.bare(hottest.Value), s.clock(hottest.At), s.reached(c.Series))
	}
	s.printLate(p)
	s.printBelief(p)
	p.Line("A wet surface settles at the wet bulb of the air, and the core cannot pass it until the surface has dried %s.", p.From(smoke.AirSource()))
	p.Line("Air %s; expected: thick fillet in slack air, likely, thin fillet in brisk air; figures cut, not rounded.", s.airIs())
	p.Line("Marks: . range expected, o likely, w wet bulb, ^ air, | limit, letters the probes, * two at one place")
	head := []any{"", "", "air", "wet", "slow", "likely", "fast"}
	format := "%5s %-5s %6s %6s  %6s %6s %6s "
	for i := range s.cores {
		format += " %6s"
		head = append(head, letters[i:i+1])
	}
	scale := s.scale(p)
	p.Line(format+"  %s", append(head, scale.head(p))...)
	for at := time.Duration(0); at <= s.ends(); {
		m := s.moment(at)
		row := []any{s.clock(at), m.stage, bare(p, m.shownAir()), bare(p, m.wetBulb), bare(p, m.low), bare(p, m.likely), bare(p, m.high)}
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
func (s study) printLate(p *page) {
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

func bare(p *page, t units.Temperature) string {
	if !t.IsSet() {
		return "-"
	}
	return p.bare(t)
}

// scale is from the lowest to the highest temperature shown, in whole tens of degrees.
type scale struct{ low, high float64 }

func (s study) scale(p *page) scale {
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
	return scale{float64(p.tens(lowest)), float64(p.tens(highest) + 10)}
}

func (s scale) at(p *page, t units.Temperature) int {
	return int((p.degrees(t) - s.low) / (s.high - s.low) * (stripWidth - 1))
}

func (s scale) head(p *page) string {
	low, high := p.whole(s.low), p.whole(s.high)
	return low + strings.Repeat(" ", max(1, stripWidth-len([]rune(low))-len([]rune(high)))) + high
}

func (s scale) strip(p *page, m moment, limit units.Temperature) string {
	cells := []byte(strings.Repeat(" ", stripWidth))
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
