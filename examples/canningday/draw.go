package main

import (
	"fmt"
	"time"

	"example.org/lakelarder/examples/internal/chart"
	"example.org/lakelarder/pressure/canner"
	"example.org/lakelarder/units"
)

// draw is the record against the kitchen's clock: the line of what is required, the stretch that counts, and where it
// sagged.
func (j judged) draw(system units.System) string {
	points, unit, required := j.curve(system)
	r := j.report
	title := fmt.Sprintf("%s: %s held of %s", j.Place, units.Lasting(r.Held.Length().Truncate(time.Second)),
		units.Lasting(r.Process))
	c := &chart.Plot{Picture: chart.New(title,
		"The recorded curve, a dashed line at what is required, the stretch that counts in light grey, sags in dark grey, and the marks. Verdict: "+
			r.Verdict.String()+".", 400), Left: 38, Top: 62, Right: chart.Width - 20, Bottom: 290}
	values := []float64{0, required}
	for _, q := range points {
		values = append(values, q.Y)
	}
	c.Y = chart.Fitted(values...)
	c.X = chart.Axis{Low: 0, High: max(1, points[len(points)-1].X)}
	c.Text(10, 20, "start", chart.Bold, title)
	c.Text(10, 36, "start", chart.Note, "Verdict: "+r.Verdict.String())
	band := func(from, to time.Duration, style string) {
		c.Rect(c.AtX(from.Minutes()), c.Top, max(1, c.AtX(to.Minutes())-c.AtX(from.Minutes())), c.Bottom-c.Top, style)
	}
	band(r.Held.From, r.Held.To, chart.Shade)
	for _, f := range r.Findings {
		if f.When.Given && f.Rule == canner.RuleSag {
			band(f.When.Value.From, f.When.Value.To, chart.Dark)
		}
	}
	c.Frame("kitchen clock", unit, ticksOf(c.X.High),
		func(v float64) string { return j.clock(time.Duration(v * float64(time.Minute)))[:5] })
	c.Line(c.Left, c.AtY(required), c.Right, c.AtY(required), chart.Limit)
	var line []chart.Point
	for _, q := range points {
		line = append(line, c.At(q.X, q.Y))
	}
	c.Curve(chart.Strong, line)
	y := c.Key(336, chart.Strong, "as recorded")
	y = c.Key(y, chart.Limit, "required: "+r.Required.Text(system, units.Up))
	y = c.Patch(y, chart.Shade, "the stretch that counts: "+j.stretch(r.Held))
	c.Patch(y, chart.Dark, "below what is required: the clock restarts")
	return c.String()
}

// ticksOf are half hours, or hours of a long record.
func ticksOf(minutes float64) []float64 {
	step := 30.0
	for minutes/step > 8 {
		step *= 2
	}
	var all []float64
	for v := 0.0; v <= minutes; v += step {
		all = append(all, v)
	}
	return all
}

// curve is the record in minutes and the unit of the picture, and what is required in it.
func (j judged) curve(system units.System) (points []chart.Point, unit string, required float64) {
	if j.byPressure() {
		of, name := units.PSI, "psi on the gauge"
		if system == units.Metric {
			of, name = units.Kilopascal, "kPa on the gauge"
		}
		for _, r := range j.pressures.Readings() {
			points = append(points, chart.Point{X: r.At.Minutes(), Y: units.Float(r.Value, of)})
		}
		need, _ := units.As[units.Pressure](j.report.Required)
		return points, name, units.Float(need, of)
	}
	for _, r := range j.temperatures.Readings() {
		points = append(points, chart.Point{X: r.At.Minutes(), Y: chart.Degrees(r.Value, system)})
	}
	need, _ := units.As[units.Temperature](j.report.Required)
	return points, chart.Scale(system) + ", steam", chart.Degrees(need, system)
}
