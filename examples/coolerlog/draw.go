package main

import (
	"fmt"
	"math"
	"time"

	"example.org/lakelarder/examples/internal/chart"
	"example.org/lakelarder/units"
)

// drawn are the temperatures that limits begin at, and whose they are.
var drawn = [...]struct {
	fahrenheit float64
	what       string
}{{38, "smokehouse rules"}, {40, "kitchen: 2 h above"}, {50, "raw fish: 5 h above"}, {70, "raw fish: 2 h above"}}

// lines are the styles of the fish, told apart without colours.
var lines = [...]string{chart.Strong, chart.Second, `stroke="#000" stroke-width="1.2" stroke-dasharray="1 3"`,
	`stroke="#777" stroke-width="2.4"`}

// draw is the record of every fish over the temperatures at which limits begin, and below it how much of its tightest
// allowance is used, and which that is. A gap in the record is left blank in both.
func (v verdicts) draw(system units.System) string {
	title := "From the boat to the jar: the inside of the fish"
	height := 560 + 46*len(v.fish)
	c := chart.New(title, "Above, the recorded temperatures with the temperatures that limits begin at; below, the share used of the allowance that governs. Gaps are blank. "+
		v.verdictText(), height)
	c.Text(10, 20, "start", chart.Bold, title)
	c.Text(10, 36, "start", chart.Note, v.Place+". "+v.verdictText())
	end, high := time.Hour, units.Fahrenheit(80)
	for _, j := range v.fish {
		last, _ := j.record.Last()
		end = max(end, last.At)
		if j.report.Highest.Value.Above(high) {
			high = j.report.Highest.Value
		}
	}
	x := chart.Axis{Low: 0, High: math.Ceil(end.Hours())}
	above := &chart.Plot{Picture: c, Left: 38, Top: 62, Right: chart.Width - 20, Bottom: 280, X: x,
		Y: chart.Axis{Low: math.Floor(chart.Degrees(units.Celsius(-2), system)),
			High: math.Ceil(chart.Degrees(high, system))}}
	above.Frame("hours since the record began", "inside the fish, "+chart.Scale(system), nil, nil)
	for _, l := range drawn {
		y := above.AtY(chart.Degrees(units.Fahrenheit(l.fahrenheit), system))
		above.Line(above.Left, y, above.Right, y, chart.Limit)
		shift := -3.
		if l.fahrenheit == 38 { // close below the next
			shift = 10
		}
		above.Text(above.Right, y+shift, "end", chart.Halo, scaleText(units.Fahrenheit(l.fahrenheit),
			system)+" "+l.what)
	}
	below := &chart.Plot{Picture: c, Left: 38, Top: 348, Right: chart.Width - 20, Bottom: 500, X: x,
		Y: chart.Axis{Low: 0, High: 200}}
	below.Frame("hours since the record began", "% used of the allowance that governs (at most 200 shown)", nil, nil)
	below.Line(below.Left, below.AtY(100), below.Right, below.AtY(100), chart.Limit)
	y := 545.
	for i, j := range v.fish {
		style := lines[i%len(lines)]
		j.curves(above, below, style, float64(18*(i%2)), system)
		y = below.Key(y, style, fmt.Sprintf("%s: %s; events %s1 to %s%d", j.name, j.all.Verdict, j.name[:1],
			j.name[:1], len(j.events)))
		c.Text(70, y, "start", chart.Small, "governs: "+name(tightest(j.report))+", "+units.Text(tightest(j.report).Used, units.Percent, 0))
		y += 20
	}
	return c.String()
}

// scaleText is a temperature on the one scale of the picture.
func scaleText(t units.Temperature, system units.System) string {
	if system == units.Both {
		system = units.US
	}
	return units.AmountOf(t).Text(system, units.Nearest)
}

func (v verdicts) verdictText() string { return "Verdict: " + v.together().Verdict.String() + "." }

// curves draws one fish, with its events as numbers on the curve.
func (j judged) curves(above, below *chart.Plot, style string, shift float64, system units.System) {
	var warm []chart.Point
	gap, before := j.report.Terms.MaxGap, time.Duration(0)
	for i, r := range j.record.Readings() {
		if i > 0 && r.At-before > gap { // what is not recorded is not drawn
			above.Curve(style, warm)
			warm = nil
		}
		before = r.At
		warm = append(warm, above.At(r.At.Hours(), math.Max(chart.Degrees(r.Value, system), above.Y.Low)))
	}
	above.Curve(style, warm)
	for _, part := range j.used {
		var used []chart.Point
		for _, s := range part {
			used = append(used, below.At(s.at.Hours(), math.Min(units.Float(s.used, units.Percent), below.Y.High)))
		}
		below.Curve(style, used)
	}
	for i, s := range j.stages {
		value, err := j.record.ValueAt(s.At)
		if err != nil || !recorded(j.record, s.At, gap) {
			continue // an event in a gap has no place on the curve
		}
		q := above.At(s.At.Hours(), math.Max(chart.Degrees(value, system), above.Y.Low))
		above.Line(q.X, q.Y-5, q.X, q.Y+5, style)
		above.Text(q.X+3, q.Y-7+shift, "start", chart.Halo, fmt.Sprint(j.name[:1], i+1))
	}
}
